// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sections.h>
#include <sheet/sheet_text.h>
#include <sheet/wrench_marks.h>

#include <algorithm>
#include <assessment/fastener_groups.h>
#include <assessment/specified.h>
#include <work/clamp_working.h>

namespace caprail::sheet {

namespace {

/// Rounds side by side in one table; more of them go into further tables.
constexpr std::size_t roundsPerTable = 6;
/// Rounds that are printed fastener by fastener; what older ones found stands in the table of rounds.
constexpr std::size_t mostRounds = 30;

QString kindName(FastenerKind kind) {
    switch (kind) {
    case FastenerKind::mainCap:
        return Sheet::tr("Main caps");
    case FastenerKind::rod:
        return Sheet::tr("Rods");
    case FastenerKind::girdleNut:
        return Sheet::tr("Girdle nuts");
    case FastenerKind::panRail:
        return Sheet::tr("Pan rail");
    case FastenerKind::front:
        return Sheet::tr("Front");
    case FastenerKind::rear:
        break;
    }
    return Sheet::tr("Rear");
}

QString groupName(const GroupKey& key) {
    const QString name = kindName(key.kind);
    return key.ring           ? name + QStringLiteral(", ") + wordText(*key.ring)
           : key.name.empty() ? name
                              : name + QStringLiteral(", ") + text(key.name);
}

QString specified(const FastenerGroupSet& group, const Units& units) {
    QStringList parts;
    if (group.torque) {
        parts << text(format(group.torque->value, units));
    }
    if (group.angle) {
        parts << text(format(group.angle->value, units));
    }
    if (group.stretch) {
        parts << Sheet::tr("stretch %1").arg(text(format(group.stretch->value, units)));
    }
    return parts.isEmpty() ? none() : parts.join(QStringLiteral(" + "));
}

SheetTable groupsTable(const Writing& w) {
    SheetTable table{{{Sheet::tr("Group")},
                      rightColumn(Sheet::tr("Count")),
                      {Sheet::tr("Where")},
                      {Sheet::tr("Thread, grade")},
                      {Sheet::tr("Lubricant")},
                      {Sheet::tr("Method")},
                      {Sheet::tr("Value")},
                      rightColumn(Sheet::tr("Steps")),
                      {Sheet::tr("Order")},
                      {Sheet::tr("Verified by")},
                      {Sheet::tr("Who says so")}},
                     {}};
    for (const auto& [key, seen] : w.facts().groups) {
        const FastenerGroupSet& group = seen.what;
        const auto members = membersOf(w.facts(), key);
        if (w.facts().layout && members.empty()) {
            continue; // dissolved, or every place of it has a group of its own
        }
        const auto count = w.facts().layout ? static_cast<std::int64_t>(members.size()) : group.count;
        const QString where = text(describePlaces(members));
        QStringList order;
        for (const std::string& fastener : group.sequence.names) {
            order << text(fastener);
        }
        QStringList part{text(group.thread), text(group.grade)};
        part.removeAll(QString());
        table.rows.push_back({strongCell(groupName(key)), QString::number(count),
                              wordText(pieceOf(group)) + (where.isEmpty() ? where : QStringLiteral(", ") + where),
                              part.isEmpty() ? none() : part.join(QStringLiteral(", ")),
                              group.lubricant.empty() ? none() : text(group.lubricant), wordText(group.method),
                              strongCell(specified(group, w.units())), QString::number(group.steps),
                              order.isEmpty() ? Sheet::tr("from the centre outwards") : order.join(QStringLiteral(" ")),
                              isVerified(key.kind) ? wordText(verifiedBy(group)) : none(), quietCell(text(group.source))});
    }
    return table;
}

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
    return {value, seen.what.instrument.empty() ? none() : text(seen.what.instrument), w.byAndWhen(seen)};
}

/// One row a fastener: how it was tightened last, and what each verify round found.
void fastenersTables(const Writing& w, const QString& title, const std::vector<FastenerId>& fasteners,
                     WrenchMarks& marks) {
    const bool isPulled = !fasteners.empty() && isVerified(fasteners.front().kind);
    const auto& rounds = w.facts().rounds;
    const std::size_t shown = isPulled ? rounds.size() : 0;
    const std::size_t oldest = shown > mostRounds ? shown - mostRounds : 0;
    std::size_t first = oldest;
    do {
        const std::size_t last = std::min(shown, first + roundsPerTable);
        SheetTable table{{{Sheet::tr("Fastener")}}, {}};
        if (first == oldest) {
            table.columns.push_back({Sheet::tr("Last tightened to")});
            table.columns.push_back({Sheet::tr("Wrench")});
            table.columns.push_back({Sheet::tr("By, when")});
        }
        for (std::size_t r = first; r < last; ++r) {
            table.columns.push_back({Sheet::tr("Round %1").arg(rounds[r].begun.what.round)});
        }
        for (const FastenerId fastener : fasteners) {
            std::vector<SheetCell> row{strongCell(capitalised(text(describe(fastener))))};
            if (first == oldest) {
                std::ranges::move(lastTightened(w, fastener, marks), std::back_inserter(row));
            }
            for (std::size_t r = first; r < last; ++r) {
                const auto outcome = rounds[r].outcomes.find(fastener);
                row.push_back(outcome == rounds[r].outcomes.end()
                                  ? quietCell(none())
                                  : outcomeCell(w.facts(), outcome->second, rounds[r], w.units(), marks));
            }
            table.rows.push_back(std::move(row));
        }
        w.flow.subheading(first == oldest ? title : Sheet::tr("%1, further rounds").arg(title));
        w.flow.table(table);
        first = last;
    } while (first < shown);
}

/// What fasteners were found to clamp with, from the torques that turned them on and back.
void clampsTable(const Writing& w) {
    SheetTable table{{{Sheet::tr("Fastener")},
                      rightColumn(Sheet::tr("Torque on")),
                      rightColumn(Sheet::tr("Torque off")),
                      rightColumn(Sheet::tr("Clamp")),
                      {Sheet::tr("Wrench")},
                      {Sheet::tr("By, when")}},
                     {}};
    for (const auto& [fastener, fact] : w.facts().fasteners) {
        for (const auto& seen : fact.clamps) {
            const auto clamp = clampOf(w.facts(), seen.what);
            table.rows.push_back({strongCell(capitalised(text(describe(fastener)))),
                                  text(format(seen.what.on.value, w.units())), text(format(seen.what.off.value, w.units())),
                                  clamp ? strongCell(text(format(*clamp, w.units()))) : quietCell(none()),
                                  seen.what.instrument.empty() ? none() : text(seen.what.instrument), w.byAndWhen(seen)});
        }
    }
    if (!table.rows.empty()) {
        w.flow.subheading(Sheet::tr("Clamp, from the torques that turned on and back"));
        w.flow.table(table);
    }
}

/// Those of a kind that the layout does not number (pan, front, rear), as far as they were tightened.
std::vector<FastenerId> tightenedOf(const Facts& facts, FastenerKind kind) {
    std::vector<FastenerId> list;
    for (const auto& [fastener, fact] : facts.fasteners) {
        if (fastener.kind == kind && fact.tightened) {
            list.push_back(fastener);
        }
    }
    return list;
}

} // namespace

void torquesSection(const Writing& w) {
    const Facts& facts = w.facts();
    if (facts.groups.empty() && facts.fasteners.empty()) {
        return;
    }
    w.flow.heading(Sheet::tr("Torques"));
    SheetTable groups = groupsTable(w);
    if (const auto source = takeCommon(groups, 10)) {
        w.flow.introduction(Sheet::tr("Values by: %1").arg(*source));
    }
    w.flow.table(groups);
    if (!facts.layout) {
        return;
    }
    if (facts.rounds.size() > mostRounds) {
        w.flow.remark(Sheet::tr("Of %1 verify rounds the last %2 are printed fastener by fastener. The record holds "
                                "them all.")
                          .arg(facts.rounds.size())
                          .arg(mostRounds));
    }
    w.flow.remark(Sheet::tr("A fastener that held turned no further at its torque when it was pulled again: that says nothing "
                            "more of its clamp."));
    WrenchMarks marks(facts, w.units());
    fastenersTables(w, Sheet::tr("Main-cap fasteners"), facts.layout->mainFasteners(), marks);
    fastenersTables(w, Sheet::tr("Rod fasteners"), facts.layout->rodFasteners(), marks);
    for (const FastenerKind kind :
         {FastenerKind::girdleNut, FastenerKind::panRail, FastenerKind::front, FastenerKind::rear}) {
        const auto fasteners = tightenedOf(facts, kind);
        if (!fasteners.empty()) {
            fastenersTables(w, kindName(kind), fasteners, marks);
        }
    }
    clampsTable(w);
    if (!marks.explanation().isEmpty()) {
        w.flow.remark(marks.explanation());
    }
}

} // namespace caprail::sheet
