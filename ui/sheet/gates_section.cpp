// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <algorithm>
#include <assessment/review.h>
#include <ledger/remarks.h>
#include <session/filled.h>
#include <set>

namespace caprail::sheet {

namespace {

SheetTable countsTable(const Assessment& assessment) {
    std::map<CheckKind, std::map<CheckState, int>> counts;
    for (const Check& check : assessment.checks) {
        ++counts[check.kind][check.state];
    }
    SheetTable table{{{Sheet::tr("Check")}}, {}};
    std::vector<CheckState> states{CheckState::good};
    for (const CheckState state :
         {CheckState::out, CheckState::tooCloseToCall, CheckState::notProven, CheckState::stale, CheckState::notDone}) {
        if (std::ranges::any_of(assessment.checks, [state](const Check& check) { return check.state == state; })) {
            states.push_back(state);
        }
    }
    for (const CheckState state : states) {
        table.columns.push_back(rightColumn(capitalised(stateWord(state))));
    }
    table.columns.push_back(rightColumn(Sheet::tr("In all")));
    for (const auto& [kind, byState] : counts) {
        std::vector<SheetCell> row{text(Core::say(titleOf(kind)))};
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

/// Checks of one kind that are held back for the same reason are named together, and so are those that were never made,
/// so that neither a young record nor one moved fastener fills pages. Those in `said` stand at a gate above.
SheetTable holdingTable(const Assessment& assessment, const Gate& gate, const std::set<std::size_t>& said) {
    std::vector<std::vector<const Check*>> groups;
    for (const std::size_t index : gate.holding) {
        if (said.contains(index)) {
            continue;
        }
        const Check& check = assessment.checks[index];
        const auto isAlike = [&](const std::vector<const Check*>& group) {
            const Check& first = *group.front();
            return first.kind == check.kind && first.state == check.state &&
                   (check.state == CheckState::notDone ||
                    (first.sentence == check.sentence && first.remedy == check.remedy));
        };
        const auto at = std::ranges::find_if(groups, isAlike);
        if (at == groups.end()) {
            groups.push_back({&check});
        } else {
            at->push_back(&check);
        }
    }
    SheetTable table{{{Sheet::tr("Held by")}, {Sheet::tr("State")}, {Sheet::tr("Why")}, {Sheet::tr("What to do")}}, {}};
    for (const auto& group : groups) {
        const Check& first = *group.front();
        const QString title = group.size() == 1
                                  ? text(first.title)
                                  : filled(Sheet::tr("%1, and %2 more"), text(first.title), group.size() - 1);
        table.rows.push_back({title, stateCell(first.state), text(first.sentence), text(first.remedy)});
    }
    return table;
}

QString gateSentence(const Gate& gate, bool isSaidAbove, bool isSaidBelow) {
    const QString name = gate.kind == GateKind::trialFit ? Sheet::tr("Trial-fit gate") : Sheet::tr("Closing gate");
    if (gate.isOpen) {
        return Sheet::tr("%1 open: all %2 checks that it needs are good, none is stale.")
            .arg(name)
            .arg(gate.needs.size());
    }
    if (gate.needs.empty()) {
        return Sheet::tr("%1 locked: there is no engine layout yet.").arg(name);
    }
    const QString sentence = !isSaidAbove ? Sheet::tr("%1 locked: %2 of %3 checks are not good.")
                             : isSaidBelow
                                 ? Sheet::tr("%1 locked: %2 of %3 checks are not good, those above and these.")
                                 : Sheet::tr("%1 locked: %2 of %3 checks are not good, those above.");
    return sentence.arg(name).arg(gate.holding.size()).arg(gate.needs.size());
}

} // namespace

void remarks(const Writing& w) {
    constexpr std::size_t most = 3;
    for (const auto& list : {salvageRemarks(w.source.ledger), outsideRemarks(w.source.ledger),
                             clockRemarks(w.source.ledger, w.options.now)}) {
        for (std::size_t i = 0; i < list.size() && i < most; ++i) {
            w.flow.stateLine(CheckState::tooCloseToCall, text(list[i].sentence));
        }
        if (list.size() > most) {
            w.flow.paragraph(Sheet::tr("%n more entries of this kind.", "", static_cast<int>(list.size() - most)));
        }
    }
    // The last first: it is the sign-off, where there is one.
    const auto& neverValid = w.facts().neverValid;
    for (std::size_t i = 0; i < neverValid.size() && i < most; ++i) {
        w.flow.stateLine(CheckState::out, text(sentenceOf(neverValid[neverValid.size() - 1 - i])));
    }
    if (neverValid.size() > most) {
        w.flow.paragraph(Sheet::tr("%n more entries of this kind.", "", static_cast<int>(neverValid.size() - most)));
    }
}

void gatesSection(const Writing& w) {
    w.flow.heading(Sheet::tr("Where it stands"));
    std::set<std::size_t> said;
    for (const Gate& gate : w.assessment().gates) {
        const SheetTable holding = holdingTable(w.assessment(), gate, said);
        const bool isSaidAbove = std::ranges::any_of(gate.holding, [&](std::size_t i) { return said.contains(i); });
        const QString sentence = gateSentence(gate, isSaidAbove, !holding.rows.empty());
        if (holding.rows.empty()) {
            w.flow.stateLine(gate.isOpen ? CheckState::good : CheckState::out, sentence);
        } else {
            w.flow.stateHeading(CheckState::out, sentence);
            w.flow.table(holding);
        }
        said.insert(gate.holding.begin(), gate.holding.end());
    }
    const bool isAllGood = std::ranges::all_of(w.assessment().checks, [](const Check& check) { return check.isGood(); });
    if (!isAllGood) { // a column of equal numbers says nothing
        w.flow.space(points(3));
        w.flow.table(countsTable(w.assessment()));
    }
}

} // namespace caprail::sheet
