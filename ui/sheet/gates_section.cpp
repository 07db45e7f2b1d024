// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <array>

namespace caprail::sheet {

namespace {

QString kindTitle(CheckKind kind) {
    switch (kind) {
    case CheckKind::fastenersTightened:
        return Sheet::tr("Fastener groups at torque");
    case CheckKind::mainClearance:
        return Sheet::tr("Main bearing clearances");
    case CheckKind::rodClearance:
        return Sheet::tr("Rod bearing clearances");
    case CheckKind::fit:
        return Sheet::tr("Fits");
    case CheckKind::gap:
        return Sheet::tr("Gaps");
    case CheckKind::stack:
        return Sheet::tr("Shim stacks");
    case CheckKind::recheck:
        return Sheet::tr("Rechecks");
    case CheckKind::flushness:
        return Sheet::tr("Flushness");
    case CheckKind::girdleWay:
        return Sheet::tr("Girdle's way round");
    case CheckKind::trialFit:
        return Sheet::tr("Trial fit");
    case CheckKind::pickup:
        return Sheet::tr("Pickup clearance");
    case CheckKind::verifyRound:
        return Sheet::tr("Torques verified");
    case CheckKind::findings:
        break;
    }
    return Sheet::tr("Findings settled");
}

SheetTable countsTable(const Assessment& assessment) {
    std::map<CheckKind, std::map<CheckState, int>> counts;
    for (const Check& check : assessment.checks) {
        ++counts[check.kind][check.state];
    }
    SheetTable table{{{Sheet::tr("Check")}}, {}};
    constexpr std::array states{CheckState::good, CheckState::out, CheckState::tooCloseToCall, CheckState::stale,
                                CheckState::notDone};
    for (const CheckState state : states) {
        table.columns.push_back(rightColumn(capitalised(stateWord(state))));
    }
    table.columns.push_back(rightColumn(Sheet::tr("In all")));
    for (const auto& [kind, byState] : counts) {
        std::vector<SheetCell> row{kindTitle(kind)};
        int all = 0;
        for (const CheckState state : states) {
            const auto at = byState.find(state);
            const int n = at == byState.end() ? 0 : at->second;
            all += n;
            row.push_back(n == 0 ? quietCell(none()) : stateCell(state, QString::number(n)));
        }
        row.emplace_back(QString::number(all));
        table.rows.push_back(std::move(row));
    }
    return table;
}

/// Checks that were never made are named together, so that a young record does not fill pages with them.
SheetTable holdingTable(const Assessment& assessment, const Gate& gate) {
    SheetTable table{{{Sheet::tr("Held by")}, {Sheet::tr("State")}, {Sheet::tr("Why")}, {Sheet::tr("What to do")}}, {}};
    std::map<CheckKind, std::vector<const Check*>> notDone;
    for (const std::size_t index : gate.holding) {
        const Check& check = assessment.checks[index];
        if (check.state == CheckState::notDone) {
            notDone[check.kind].push_back(&check);
            continue;
        }
        table.rows.push_back({text(check.title), stateCell(check.state), text(check.sentence), text(check.remedy)});
    }
    for (const auto& [kind, checks] : notDone) {
        const Check& first = *checks.front();
        const QString title =
            checks.size() == 1
                ? text(first.title)
                : Sheet::tr("%1, %2 of them; first: %3").arg(kindTitle(kind)).arg(checks.size()).arg(text(first.title));
        table.rows.push_back({title, stateCell(CheckState::notDone), text(first.sentence), text(first.remedy)});
    }
    return table;
}

QString gateSentence(const Gate& gate) {
    const QString name = gate.kind == GateKind::trialFit ? Sheet::tr("Trial-fit gate") : Sheet::tr("Closing gate");
    if (gate.isOpen) {
        return Sheet::tr("%1 open: all %2 checks that it needs are good, none is stale.")
            .arg(name)
            .arg(gate.needs.size());
    }
    if (gate.needs.empty()) {
        return Sheet::tr("%1 locked: there is no engine layout yet.").arg(name);
    }
    return Sheet::tr("%1 locked: %2 of %3 checks are not good.")
        .arg(name)
        .arg(gate.holding.size())
        .arg(gate.needs.size());
}

} // namespace

void gatesSection(const Writing& w) {
    w.flow.heading(Sheet::tr("Where it stands"));
    if (const auto& signedOff = w.facts().signedOff) {
        w.flow.stateLine(
            CheckState::good,
            Sheet::tr("Closed and signed off by %1 on %2.").arg(text(signedOff->person), timeText(signedOff->time)));
    } else {
        w.flow.paragraph(Sheet::tr("Not signed off. Next: %1").arg(text(w.assessment().next.sentence)));
    }
    for (const Gate& gate : w.assessment().gates) {
        w.flow.stateLine(gate.isOpen ? CheckState::good : CheckState::out, gateSentence(gate));
        w.flow.table(holdingTable(w.assessment(), gate));
    }
    w.flow.space(points(3));
    w.flow.table(countsTable(w.assessment()));
}

} // namespace caprail::sheet
