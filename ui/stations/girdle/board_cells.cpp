// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/board.h>

#include <algorithm>
#include <set>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

DrawnLeaf leafOf(const std::string& shim, const Facts& facts) {
    const auto at = facts.shims.find(shim);
    if (at == facts.shims.end()) {
        return {qtText(shim), Length(), false};
    }
    return {qtText(shim), at->second.thickness(), at->second.measured().has_value()};
}

QString footingOf(Position p, const Facts& facts) {
    const auto built = facts.stacks.find(p);
    if (built == facts.stacks.end()) {
        return GirdleBoard::tr("not built");
    }
    return GirdleBoard::tr("built, %1").arg(built->second.isOn ? GirdleBoard::tr("on") : GirdleBoard::tr("off"));
}

std::vector<DrawnLeaf> drawnLeaves(const std::vector<std::string>& shims, const Facts& facts) {
    std::vector<DrawnLeaf> leaves;
    for (const std::string& shim : shims) {
        leaves.push_back(leafOf(shim, facts));
    }
    return leaves;
}

/// What the plan has for a place, where that is not what stands there.
void addPlanned(BoardCell& cell, const PlanOutcome& outcome, const Facts& facts) {
    const std::string place = code(cell.position);
    const auto planned = std::ranges::find(outcome.plan->stacks, place, &PlannedStack::position);
    if (planned == outcome.plan->stacks.end() || outcome.task.stays.contains(place)) {
        return;
    }
    cell.isUnmet = !planned->inBand;
    const auto unmet = std::ranges::find(outcome.plan->unmet, place, &UnmetPosition::position);
    const bool isNearest = cell.isUnmet && unmet != outcome.plan->unmet.end();
    const std::vector<std::string>& shims = isNearest ? unmet->nearest : planned->shims;
    const auto built = facts.stacks.find(cell.position);
    if (built != facts.stacks.end() &&
        std::set(shims.begin(), shims.end()) == std::set(built->second.shims.begin(), built->second.shims.end())) {
        return;
    }
    cell.planned = drawnLeaves(shims, facts);
    cell.plannedResidual = isNearest ? unmet->residual : planned->residual;
}

} // namespace

Length pileThickness(const std::vector<DrawnLeaf>& leaves) {
    Length thickness;
    for (const DrawnLeaf& leaf : leaves) {
        thickness += leaf.thickness;
    }
    return thickness;
}

QStringList leafNames(const std::vector<DrawnLeaf>& leaves) {
    QStringList names;
    for (const DrawnLeaf& leaf : leaves) {
        names << leaf.name;
    }
    return names;
}

QString boardSentence(const BoardCell& cell, const Units& units) {
    const auto shims = [](const std::vector<DrawnLeaf>& leaves) {
        return leaves.empty() ? GirdleBoard::tr("bare") : leafNames(leaves).join(QStringLiteral(" + "));
    };
    const auto length = [&](Length value) { return qtText(formatSigned(value, units)); };
    QStringList parts{qtText(describe(cell.position)),
                      cell.gap ? GirdleBoard::tr("gap %1").arg(qtText(format(*cell.gap, units)))
                               : GirdleBoard::tr("no gap")};
    if (cell.isPinned) {
        parts << GirdleBoard::tr("pinned");
    }
    if (cell.isBuilt) {
        parts << GirdleBoard::tr("stands: %1").arg(shims(cell.leaves));
    }
    if (cell.residual) {
        parts << GirdleBoard::tr("residual %1").arg(length(*cell.residual));
    }
    if (cell.plannedResidual) {
        parts << (cell.isUnmet ? GirdleBoard::tr("nothing in the kit meets the band, nearest: %1, residual %2")
                               : GirdleBoard::tr("planned: %1, residual %2"))
                     .arg(shims(cell.planned), length(*cell.plannedResidual));
    }
    if (cell.feel) {
        parts << GirdleBoard::tr("should be: %1").arg(qtShown(*cell.feel));
    }
    parts << cell.footing << stateWord(cell.state);
    return parts.join(QStringLiteral(", "));
}

std::vector<BoardCell> boardCells(const RecordSession& session, const PlanOutcome* outcome) {
    const Facts& facts = session.facts();
    const Assessment& assessment = session.assessment();
    std::vector<BoardCell> cells;
    if (!facts.layout) {
        return cells;
    }
    const Band band = residualBand(facts).band; // the plan's sentence says when nobody set it
    for (const Position p : facts.layout->positions()) {
        BoardCell cell;
        cell.position = p;
        const auto gap = assessment.gaps.find(p);
        cell.gap = gap == assessment.gaps.end() ? std::nullopt : gap->second.accepted;
        cell.isPinned = facts.pins.contains(p);
        if (const Check* check = assessment.find("stack:" + code(p))) {
            cell.state = check->state;
        }
        cell.footing = footingOf(p, facts);
        if (const auto built = facts.stacks.find(p); built != facts.stacks.end()) {
            cell.isBuilt = true;
            cell.leaves = drawnLeaves(built->second.shims, facts);
            if (cell.gap) {
                cell.residual = *cell.gap - pileThickness(cell.leaves);
            }
        }
        if (outcome != nullptr && outcome->plan) {
            addPlanned(cell, *outcome, facts);
        }
        if (const auto residual = cell.residual ? cell.residual : cell.plannedResidual) {
            cell.feel = expectedFeel(*residual, band);
        }
        cells.push_back(std::move(cell));
    }
    return cells;
}

} // namespace caprail
