// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <algorithm>
#include <planview/plan_drawing.h>
#include <session/filled.h>

namespace caprail::sheet {

namespace {

/// A position shows the worst of its gap, its stack and its recheck.
PlanMark markFor(const Writing& w, Position p) {
    PlanMark mark;
    mark.place = text(code(p));
    mark.state = CheckState::good;
    for (const char* kind : {"gap:", "stack:", "recheck:"}) {
        const CheckState state = w.stateOf(kind + code(p));
        mark.state = worse(mark.state, state);
    }
    const auto gap = w.assessment().gaps.find(p);
    if (gap != w.assessment().gaps.end()) {
        const GapResult& result = gap->second;
        if (result.last) {
            mark.figure = text(formatBare(*result.last, w.units()));
        } else if (!result.outdated.empty()) {
            // What was read before it moved, so that the place is not bare; its state says that it is stale.
            mark.figure = text(formatBare(result.outdated.back().what.value(), w.units()));
        }
    }
    const auto stack = w.assessment().stacks.find(p);
    if (stack != w.assessment().stacks.end()) {
        QStringList shims;
        for (const std::string& shim : stack->second.shims) {
            shims << text(shim);
        }
        mark.note = shims.isEmpty() ? Sheet::tr("no shim") : shims.join(QLatin1Char('+'));
    }
    return mark;
}

/// What the plan shows at each position: "Plan of the pan rail. 1L: 0.0505, S12+S31, good."
QString planWords(const std::vector<PlanMark>& marks) {
    QString words = Sheet::tr("Plan of the pan rail.");
    for (const PlanMark& mark : marks) {
        words += QStringLiteral(" %1: %2.").arg(mark.place, joined({mark.figure, mark.note, stateWord(mark.state)}));
    }
    return words;
}

} // namespace

void diagramSection(const Writing& w) {
    if (!w.facts().layout) {
        return;
    }
    PlanContent content = planContent(w.facts());
    content.layers =
        PlanLayer::positions | PlanLayer::girdle | PlanLayer::cutout | PlanLayer::pickup | PlanLayer::dipstick;
    const auto positions = content.layout.positions();
    std::ranges::transform(positions, std::back_inserter(content.marks), [&](Position p) { return markFor(w, p); });
    w.flow.heading(Sheet::tr("Gap and stack at each position"));
    // As large as the page has room for under the figures, within what can be read.
    const qreal room = w.flow.room() - mm(12); // the remark
    w.flow.figure(room < mm(60) ? mm(88) : std::min(mm(88), room), planWords(content.marks),
                  [content, look = w.flow.type().look](QPainter& painter, const QRectF& area) {
                      drawPlan(painter, area, content, {}, look);
                  });
    w.flow.remark(
        Sheet::tr("The pan rail from the pan's side, front of the engine to the left. Left and right are as seen from "
                  "the flywheel end of the engine as installed. At each position: the gap in %1, under it the shims.")
            .arg(w.units().length == LengthUnit::inch ? Sheet::tr("inches") : Sheet::tr("millimetres")));
}

} // namespace caprail::sheet
