// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/filled.h>
#include <sheet/fasteners_tables.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>
#include <sheet/wrench_marks.h>

#include <algorithm>
#include <assessment/fastener_groups.h>
#include <assessment/specified.h>
#include <work/clamp_working.h>

namespace caprail::sheet {

namespace {

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
        table.rows.push_back({strongCell(groupName(key)), QString::number(count),
                              wordText(pieceOf(group)) + (where.isEmpty() ? where : QStringLiteral(", ") + where),
                              orNone(joined({text(group.thread), text(group.grade)})), orNone(text(group.lubricant)),
                              wordText(group.method), strongCell(specified(group, w.units())),
                              QString::number(group.steps),
                              order.isEmpty() ? Sheet::tr("from the centre outwards") : order.join(QStringLiteral(" ")),
                              isVerified(key.kind) ? wordText(verifiedBy(group)) : none(),
                              quietCell(sourceText(w, codeOf(key), group.source))});
    }
    return table;
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
                                  text(format(seen.what.on.value, w.units())),
                                  text(format(seen.what.off.value, w.units())),
                                  clamp ? strongCell(text(format(*clamp, w.units()))) : quietCell(none()),
                                  orNone(text(seen.what.instrument)), w.byAndWhen(seen)});
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
    QStringList common; // said once above, from the last column on
    if (const auto order = takeCommon(groups, 8)) {
        common << Sheet::tr("order: %1").arg(*order);
    }
    if (const auto steps = takeCommon(groups, 7)) {
        common << Sheet::tr("steps: %1").arg(*steps);
    }
    if (const auto method = takeCommon(groups, 5)) {
        common << Sheet::tr("method: %1").arg(*method);
    }
    if (!common.isEmpty()) {
        w.flow.introduction(Sheet::tr("All groups: %1").arg(common.join(QStringLiteral("; "))));
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
