// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/diagram.h>

#include <QCoreApplication>
#include <session/look.h>
#include <session/filled.h>
#include <stations/common/station_text.h>
#include <stations/girdle/words.h>
#include <work/stack_planning.h>

namespace caprail {

namespace {

class GirdleDiagramText {
    Q_DECLARE_TR_FUNCTIONS(GirdleDiagramText)
};

CheckState stateOf(const Assessment& assessment, const char* kind, Position p) {
    const Check* check = assessment.find(kind + code(p));
    return check == nullptr ? CheckState::notDone : check->state;
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
            // What was read before it moved, where that is all, so that the place is not bare; the state says that it is
            // stale.
            const std::optional<Length> read = gap->second.last || gap->second.outdated.empty()
                                                   ? gap->second.last
                                                   : std::optional(gap->second.outdated.back().what.value());
            if (read) {
                mark.figure = qtText(formatShort(*read, session.units()));
                mark.spoken = GirdleDiagramText::tr("gap %1").arg(qtText(format(*read, session.units())));
            }
            if (!gap->second.current.empty()) {
                mark.note = GirdleDiagramText::tr("%1 read").arg(gap->second.current.size());
            }
            mark.spoken = joined({mark.spoken, mark.note});
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
    const Band band = residualBand(session.facts()).band; // the task's sentence says when nobody set it
    content.heightBand = std::pair(static_cast<double>(band.lo().value()), static_cast<double>(band.hi().value()));
    for (const Position p : content.layout.positions()) {
        PlanMark mark;
        mark.place = qtText(code(p));
        mark.state = stateOf(assessment, "recheck:", p);
        const auto stack = assessment.stacks.find(p);
        if (stack != assessment.stacks.end() && stack->second.residual) {
            mark.figure = signedShort(*stack->second.residual, session.units());
            mark.spoken =
                GirdleDiagramText::tr("residual %1").arg(qtText(formatSigned(*stack->second.residual, session.units())));
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
        mark.spoken = joined({mark.spoken, mark.note});
        content.marks.push_back(std::move(mark));
    }
    return content;
}

PlanContent loadContent(const RecordSession& session, const BlockLoad* load, Rail rail) {
    PlanContent content = planContent(session.facts());
    content.layers = PlanLayer::positions | PlanLayer::girdle | PlanLayer::cutout | PlanLayer::loads;
    for (std::size_t i = 0; load != nullptr && i < load->places.size(); ++i) {
        const Position place = load->places[i].place;
        PlanMark mark;
        mark.place = qtText(code(place));
        mark.state = stateOf(session.assessment(), "stack:", place);
        if (load->known) {
            const Force force = load->known->under(rail).force[i];
            mark.figure = qtText(format(force.magnitude(), session.units()));
            mark.note = loadWord(force, session.units());
            mark.spoken = mark.figure + QStringLiteral(" ") + mark.note;
            content.loads[mark.place] = inNewtons(force);
        }
        content.marks.push_back(std::move(mark));
    }
    return content;
}

} // namespace caprail
