// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle_diagram.h>

#include <QCoreApplication>
#include <algorithm>
#include <session/look.h>
#include <stations/girdle_words.h>
#include <stations/station_text.h>

namespace caprail {

namespace {

class GirdleDiagramText {
    Q_DECLARE_TR_FUNCTIONS(GirdleDiagramText)
};

CheckState stateOf(const Assessment& assessment, const char* kind, Position p) {
    const Check* check = assessment.find(kind + code(p));
    return check == nullptr ? CheckState::notDone : check->state;
}

/// Worse comes later: a mark that stands for several checks shows the worst of them.
int badness(CheckState state) {
    switch (state) {
    case CheckState::good:
        return 0;
    case CheckState::notDone:
        return 1;
    case CheckState::tooCloseToCall:
        return 2;
    case CheckState::notProven:
        return 3;
    case CheckState::stale:
        return 4;
    case CheckState::out:
        break;
    }
    return 5;
}

const Check* trialCheck(const Assessment& assessment, const TrialPlace& place) {
    const auto at = std::ranges::find_if(assessment.checks, [&](const Check& check) {
        const auto* subject = std::get_if<TrialPlace>(&check.subject);
        return check.kind == CheckKind::trialFit && subject != nullptr && *subject == place;
    });
    return at == assessment.checks.end() ? nullptr : &*at;
}

/// One mark for the items of one place: the clearance where it was measured, and a sign for each item.
PlanMark trialMark(const RecordSession& session, const QString& place, const std::vector<TrialPlace>& items) {
    PlanMark mark;
    mark.place = place;
    mark.state = CheckState::good;
    QStringList notes;
    for (const TrialPlace& item : items) {
        const Check* check = trialCheck(session.assessment(), item);
        const CheckState state = check == nullptr ? CheckState::notDone : check->state;
        if (badness(state) > badness(mark.state)) {
            mark.state = state;
        }
        const auto result = session.facts().trialFits.find(item);
        if (result == session.facts().trialFits.end()) {
            continue;
        }
        if (result->second.what.clearance) {
            mark.figure = qtText(formatShort(result->second.what.clearance->value, session.units()));
        } else {
            notes << qtShown(result->second.what.result);
        }
    }
    mark.note = notes.join(QStringLiteral(", "));
    return mark;
}

} // namespace

PlanContent gapContent(const RecordSession& session, const std::vector<Position>& order) {
    const Assessment& assessment = session.assessment();
    PlanContent content = planContent(session.facts());
    content.layers =
        PlanLayer::positions | PlanLayer::girdle | PlanLayer::cutout | PlanLayer::pickup | PlanLayer::dipstick;
    for (const Position p : content.layout.positions()) {
        PlanMark mark;
        mark.place = qtText(code(p));
        mark.state = stateOf(assessment, "gap:", p);
        const auto gap = assessment.gaps.find(p);
        if (gap != assessment.gaps.end()) {
            if (gap->second.last) {
                mark.figure = qtText(formatShort(*gap->second.last, session.units()));
            } else if (!gap->second.fallen.empty()) {
                // What was read before it moved, so that the place is not bare; the state says that it is stale.
                mark.figure = qtText(formatShort(gap->second.fallen.back().what.value(), session.units()));
            }
            if (!gap->second.standing.empty()) {
                mark.note = GirdleDiagramText::tr("%1 read").arg(gap->second.standing.size());
            }
        }
        content.marks.push_back(std::move(mark));
    }
    for (const Position p : order) {
        content.order << qtText(code(p));
    }
    return content;
}

PlanContent recheckContent(const RecordSession& session) {
    const Assessment& assessment = session.assessment();
    PlanContent content = planContent(session.facts());
    content.layers = PlanLayer::positions | PlanLayer::girdle | PlanLayer::cutout | PlanLayer::flushness;
    for (const Position p : content.layout.positions()) {
        PlanMark mark;
        mark.place = qtText(code(p));
        mark.state = stateOf(assessment, "recheck:", p);
        const auto stack = assessment.stacks.find(p);
        if (stack != assessment.stacks.end() && stack->second.residual) {
            mark.figure = signedShort(*stack->second.residual, session.units());
            content.heights[mark.place] = static_cast<double>(stack->second.residual->value());
        }
        const auto recheck = session.facts().rechecks.find(p);
        if (stack == assessment.stacks.end()) {
            mark.note = GirdleDiagramText::tr("no stack");
        } else if (!stack->second.isOn) {
            mark.note = GirdleDiagramText::tr("off");
        } else if (recheck != session.facts().rechecks.end()) {
            mark.note = qtShown(recheck->second.what.feel);
        }
        content.marks.push_back(std::move(mark));
    }
    return content;
}

PlanContent trialFitContent(const RecordSession& session) {
    PlanContent content = planContent(session.facts());
    content.layers =
        PlanLayer::girdle | PlanLayer::cutout | PlanLayer::pickup | PlanLayer::dipstick | PlanLayer::throws;
    for (int number = 1; number <= content.layout.throws(); ++number) {
        content.marks.push_back(trialMark(session, QStringLiteral("throw-%1").arg(number),
                                          {{TrialItem::counterweights, number}, {TrialItem::rodBolts, number}}));
    }
    content.marks.push_back(trialMark(session, QStringLiteral("pickup"), {{TrialItem::pickupTube, 0}}));
    content.marks.push_back(trialMark(session, QStringLiteral("dipstick"), {{TrialItem::dipstick, 0}}));
    return content;
}

} // namespace caprail
