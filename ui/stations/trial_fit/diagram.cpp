// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/trial_fit/diagram.h>

#include <QCoreApplication>
#include <algorithm>
#include <assessment/specified.h>
#include <assessment/work_order.h>
#include <session/look.h>
#include <session/filled.h>
#include <stations/common/station_text.h>
#include <work/tightening.h>
#include <tables/column.h>

namespace caprail {

namespace {

class TrialDiagramText {
    Q_DECLARE_TR_FUNCTIONS(TrialDiagramText)
};

const Check* trialCheck(const Assessment& assessment, const TrialId& id) {
    const auto at = std::ranges::find_if(assessment.checks, [&](const Check& check) {
        const auto* subject = std::get_if<TrialId>(&check.subject);
        return check.kind == CheckKind::trialFit && subject != nullptr && *subject == id;
    });
    return at == assessment.checks.end() ? nullptr : &*at;
}

/// One mark for the items of one place: the clearance where it was measured, and a sign for each item.
PlanMark trialMark(const RecordSession& session, const QString& place, const std::vector<TrialId>& items) {
    PlanMark mark;
    mark.place = place;
    mark.state = CheckState::good;
    QStringList notes;
    for (const TrialId& item : items) {
        const Check* check = trialCheck(session.assessment(), item);
        const CheckState state = check == nullptr ? CheckState::notDone : check->state;
        mark.state = worse(mark.state, state); // a mark that stands for several shows the worst
        const auto result = session.facts().trialFits.find(item);
        if (result == session.facts().trialFits.end()) {
            continue;
        }
        if (result->second.what.clearance) {
            const Length read = result->second.what.clearance->value;
            mark.figure = qtText(formatShort(read, session.units()));
            mark.spoken = TrialDiagramText::tr("clearance %1").arg(qtText(format(read, session.units())));
        } else {
            notes << qtShown(result->second.what.result);
        }
    }
    mark.note = notes.join(QStringLiteral(", "));
    mark.spoken = joined({mark.spoken, mark.note});
    return mark;
}

} // namespace

namespace {

PlanContent nutsContent(const Facts& facts) {
    PlanContent content = planContent(facts);
    content.layers = PlanLayer::girdle | PlanLayer::cutout | PlanLayer::girdleNuts | PlanLayer::sequence;
    int number = 0;
    for (const FastenerId f : tighteningOrder(facts, FastenerKind::girdleNut)) {
        PlanMark mark;
        mark.place = qtText(code(f));
        mark.state = isTightAsSpecified(facts, f) ? CheckState::good : CheckState::notDone;
        content.sequence[mark.place] = ++number;
        content.order << mark.place;
        content.marks.push_back(std::move(mark));
    }
    if (const auto next = nutsAtTorque(facts).next) {
        content.selected = qtText(code(*next));
    }
    return content;
}

QString selectedOf(const TrialTask& task) {
    const auto* place = std::get_if<TrialId>(&task);
    if (place == nullptr) {
        return {};
    }
    return place->second != 0                      ? QStringLiteral("throw-%1").arg(place->second)
           : place->first == TrialItem::pickupTube ? QStringLiteral("pickup")
           : place->first == TrialItem::dipstick   ? QStringLiteral("dipstick")
                                                   : QString();
}

} // namespace

PlanContent trialFitContent(const RecordSession& session, const TrialTask& task) {
    if (std::holds_alternative<GirdleNuts>(task)) {
        return nutsContent(session.facts());
    }
    PlanContent content = planContent(session.facts());
    content.layers =
        PlanLayer::girdle | PlanLayer::cutout | PlanLayer::pickup | PlanLayer::dipstick | PlanLayer::throws;
    for (int number = 1; number <= content.layout.throws(); ++number) {
        content.marks.push_back(trialMark(session, QStringLiteral("throw-%1").arg(number),
                                          {{TrialItem::counterweights, number}, {TrialItem::rodBolts, number}}));
    }
    content.marks.push_back(trialMark(session, QStringLiteral("pickup"), {{TrialItem::pickupTube, 0}}));
    content.marks.push_back(trialMark(session, QStringLiteral("dipstick"), {{TrialItem::dipstick, 0}}));
    content.selected = selectedOf(task);
    return content;
}

} // namespace caprail
