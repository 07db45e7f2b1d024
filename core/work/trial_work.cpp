// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/trial_work.h>

#include <algorithm>
#include <assessment/own_check.h>
#include <assessment/specified.h>
#include <assessment/work_order.h>
#include <work/tightening.h>

namespace caprail {

std::vector<TrialTask> trialTasks(const Facts& facts) {
    std::vector<TrialTask> tasks;
    for (OwnPlace& place : ownPlaces(facts, OwnCheckHolds::trialFit)) {
        tasks.emplace_back(std::move(place));
    }
    tasks.emplace_back(TurningStage::beforeGirdle);
    tasks.emplace_back(GirdleNuts{});
    for (const auto& entry : allWords<TrialItem>()) {
        if (!isPerThrow(entry.value)) {
            tasks.emplace_back(TrialId{entry.value, 0});
        }
        for (int number = 1; isPerThrow(entry.value) && facts.layout && number <= facts.layout->throws(); ++number) {
            tasks.emplace_back(TrialId{entry.value, number});
        }
        if (entry.value == TrialItem::turnsFreely) {
            tasks.emplace_back(TurningStage::girdleAtTorque);
        }
    }
    return tasks;
}

CheckState trialTaskState(const Facts& facts, const Assessment& assessment, const TrialTask& task) {
    if (std::holds_alternative<GirdleNuts>(task)) {
        const NutsAtTorque nuts = nutsAtTorque(facts);
        return nuts.all > 0 && nuts.tight == nuts.all ? CheckState::good : CheckState::notDone;
    }
    const Subject subject = std::visit(
        [](const auto& one) -> Subject {
            if constexpr (std::is_same_v<std::decay_t<decltype(one)>, GirdleNuts>) {
                return {};
            } else {
                return one;
            }
        },
        task);
    const auto check = std::ranges::find(assessment.checks, subject, &Check::subject);
    return check == assessment.checks.end() ? CheckState::notDone : check->state;
}

NutsAtTorque nutsAtTorque(const Facts& facts) {
    NutsAtTorque nuts;
    for (const FastenerId f : tighteningOrder(facts, FastenerKind::girdleNut)) {
        ++nuts.all;
        if (isTightAsSpecified(facts, f)) {
            ++nuts.tight;
        } else if (!nuts.next) {
            nuts.next = f;
        }
    }
    return nuts;
}

} // namespace caprail
