// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/fasteners_tables.h>

#include <algorithm>
#include <assessment/fastener_groups.h>
#include <assessment/specified.h>
#include <sheet/sheet_text.h>

namespace caprail::sheet {

namespace {

/// Rounds side by side in one table; more of them go into further tables.
constexpr std::size_t roundsPerTable = 6;

QString reached(const FastenerTightened& tightened, const Units& units) {
    QStringList parts;
    if (tightened.torque) {
        parts << text(format(tightened.torque->value, units));
    }
    if (tightened.angle) {
        parts << text(format(tightened.angle->value, units));
    }
    if (tightened.stretch) {
        parts << text(format(tightened.stretch->value, units));
    }
    return parts.join(QStringLiteral(" + "));
}

SheetCell outcomeCell(const Facts& facts, const Seen<RoundOutcome>& seen, const RoundFact& round, const Units& units,
                      WrenchMarks& marks) {
    const RoundOutcome& outcome = seen.what;
    const std::string& wrench = outcome.instrument.empty() ? round.begun.what.instrument : outcome.instrument;
    std::optional<Torque> torque;
    if (outcome.torque) {
        torque = outcome.torque->value;
    }
    QString words = outcome.outcome == Outcome::held ? Sheet::tr("held") : Sheet::tr("moved");
    if (outcome.angle) {
        words += QLatin1Char(' ') + text(format(outcome.angle->value, units));
    }
    if (outcome.torque) {
        words += QLatin1Char(' ') + Sheet::tr("at %1").arg(text(format(outcome.torque->value, units)));
    }
    if (outcome.stretch) {
        words += QStringLiteral(", ") + Sheet::tr("stretch %1").arg(text(formatFine(outcome.stretch->value, units)));
    }
    words += outcome.by == VerifyMethod::witnessMark ? QStringLiteral(", ") + Sheet::tr("by its mark") : QString();
    words += marks.markFor(wrench, torque, seen.time);
    // Who and what only where it differs from what the table of rounds says for the whole round.
    QStringList other;
    if (seen.person != round.begun.person) {
        other << text(seen.person);
    }
    if (wrench != round.begun.what.instrument) {
        other << text(wrench);
    }
    if (!other.isEmpty()) {
        words += QStringLiteral(" (") + other.join(QStringLiteral(", ")) + QLatin1Char(')');
    }
    if (const auto fault = whyNotCounted(facts, seen, units)) {
        words += QStringLiteral(". ") + Sheet::tr("Does not count: %1").arg(text(*fault));
        return stateCell(outcome.outcome == Outcome::held ? CheckState::notProven : CheckState::out, words);
    }
    return outcome.outcome == Outcome::held ? SheetCell(words) : stateCell(CheckState::out, words);
}

std::vector<SheetCell> lastTightened(const Writing& w, FastenerId fastener, WrenchMarks& marks) {
    const auto at = w.facts().fasteners.find(fastener);
    if (at == w.facts().fasteners.end() || !at->second.tightened) {
        return {quietCell(none()), quietCell(none()), quietCell(none())};
    }
    const auto& seen = *at->second.tightened;
    std::optional<Torque> torque;
    if (seen.what.torque) {
        torque = seen.what.torque->value;
    }
    const QString mark = marks.markFor(seen.what.instrument, torque, seen.time);
    SheetCell value = reached(seen.what, w.units()) + mark;
    if (at->second.isLoose) {
        value = stateCell(CheckState::out, Sheet::tr("loosened since"));
    }
    return {value, orNone(text(seen.what.instrument)), text(seen.person)};
}

/// Fasteners of which everything is said alike stand in one row: what is different is seen then.
struct AlikeRow {
    std::vector<FastenerId> fasteners;
    std::vector<SheetCell> cells; ///< without the name
    std::optional<UtcTime> first, last; ///< of the tightening

    [[nodiscard]] bool isAlike(const std::vector<SheetCell>& other) const {
        return std::ranges::equal(cells, other, [](const SheetCell& a, const SheetCell& b) {
            return a.text == b.text && a.state == b.state;
        });
    }
    void take(FastenerId fastener, std::optional<UtcTime> time) {
        fasteners.push_back(fastener);
        if (time) {
            first = first ? std::min(*first, *time) : *time;
            last = last ? std::max(*last, *time) : *time;
        }
    }
    /// "Main 2 right"; of most of them "All others (9)", or all.
    [[nodiscard]] QString name(std::size_t all) const {
        const std::size_t count = fasteners.size();
        return count == 1          ? capitalised(text(describe(fasteners.front())))
               : count == all      ? Sheet::tr("All (%1)").arg(count)
               : 2 * count > all   ? Sheet::tr("All others (%1)").arg(count)
                                   : Sheet::tr("%1 (%2)").arg(capitalised(text(describePlaces(fasteners)))).arg(count);
    }
    [[nodiscard]] QString when(const Writing& w) const {
        return first ? w.fromTo(*first, *last) : none();
    }
};

std::optional<UtcTime> tightenedAt(const Facts& facts, FastenerId fastener) {
    const auto at = facts.fasteners.find(fastener);
    return at == facts.fasteners.end() || !at->second.tightened ? std::nullopt : std::optional(at->second.tightened->time);
}

/// Some of the rounds, side by side; the first table says as well how each was tightened last.
struct RoundsShown {
    std::size_t first = 0, last = 0;
    bool withTightening = true;
};

std::vector<SheetColumn> columnsOf(const Writing& w, const RoundsShown& shown) {
    QStringList heads{Sheet::tr("Fastener")};
    if (shown.withTightening) {
        heads << Sheet::tr("Last tightened to") << Sheet::tr("Wrench") << Sheet::tr("By") << Sheet::tr("When");
    }
    for (std::size_t r = shown.first; r < shown.last; ++r) {
        heads << Sheet::tr("Round %1").arg(w.facts().rounds[r].begun.what.round);
    }
    std::vector<SheetColumn> columns;
    for (const QString& head : heads) {
        columns.push_back({head});
    }
    return columns;
}

/// All that is said of one fastener, without its name and its time.
std::vector<SheetCell> cellsFor(const Writing& w, FastenerId fastener, const RoundsShown& shown, WrenchMarks& marks) {
    std::vector<SheetCell> row;
    if (shown.withTightening) {
        row = lastTightened(w, fastener, marks);
    }
    for (std::size_t r = shown.first; r < shown.last; ++r) {
        const RoundFact& round = w.facts().rounds[r];
        const auto outcome = round.outcomes.find(fastener);
        row.push_back(outcome == round.outcomes.end() ? quietCell(none())
                                                      : outcomeCell(w.facts(), outcome->second, round, w.units(), marks));
    }
    return row;
}

/// How fasteners were tightened last, and what each verify round found: a row for all that are alike.
SheetTable alikeTable(const Writing& w, const std::vector<FastenerId>& fasteners, const RoundsShown& shown,
                      WrenchMarks& marks) {
    std::vector<AlikeRow> rows;
    for (const FastenerId fastener : fasteners) {
        std::vector<SheetCell> cells = cellsFor(w, fastener, shown, marks);
        auto at = std::ranges::find_if(rows, [&](const AlikeRow& one) { return one.isAlike(cells); });
        if (at == rows.end()) {
            rows.push_back({{}, std::move(cells), {}, {}});
            at = std::prev(rows.end());
        }
        at->take(fastener, tightenedAt(w.facts(), fastener));
    }
    // What is said of most comes last: the exceptions are read first.
    std::ranges::stable_sort(rows, {}, [&](const AlikeRow& one) { return 2 * one.fasteners.size() > fasteners.size(); });
    SheetTable table{columnsOf(w, shown), {}};
    for (const AlikeRow& one : rows) {
        std::vector<SheetCell> row{strongCell(one.name(fasteners.size()))};
        row.insert(row.end(), one.cells.begin(), one.cells.end());
        if (shown.withTightening) { // behind value, wrench and person
            row.insert(row.begin() + 4, quietCell(one.when(w)));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace

void fastenersTables(const Writing& w, const QString& title, const std::vector<FastenerId>& fasteners,
                     WrenchMarks& marks) {
    const bool isPulled = !fasteners.empty() && isVerified(fasteners.front().kind);
    const std::size_t rounds = isPulled ? w.facts().rounds.size() : 0;
    const std::size_t oldest = rounds > mostRounds ? rounds - mostRounds : 0;
    std::size_t first = oldest;
    do {
        const RoundsShown shown{first, std::min(rounds, first + roundsPerTable), first == oldest};
        w.flow.subheading(shown.withTightening ? title : Sheet::tr("%1, further rounds").arg(title));
        w.flow.table(alikeTable(w, fasteners, shown, marks));
        first = shown.last;
    } while (first < rounds);
}

} // namespace caprail::sheet
