// SPDX-License-Identifier: GPL-3.0-or-later
/// Findings, notes, struck entries, instruments.
#include <session/filled.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <algorithm>
#include <assessment/specified.h>
#include <ledger/history_line.h>
#include <work/zero_checks.h>

namespace caprail::sheet {

namespace {

QString dateText(const std::optional<Date>& date) {
    return date ? text(format(*date)) : none();
}

/// On how many of the days on which it measured an instrument was tried, and what it read last.
QString triedText(const Writing& w, const std::vector<ZeroStanding>& standings, const std::string& name) {
    const auto at = std::ranges::find(standings, name, &ZeroStanding::instrument);
    if (at == standings.end()) {
        return none();
    }
    const std::size_t tried = at->used.size() - at->untried();
    QString words = tried == 0 ? Sheet::tr("no; days used: %1").arg(at->used.size())
                               : Sheet::tr("yes; days: %1 of %2").arg(tried).arg(at->used.size());
    if (const auto checks = w.facts().zeroChecks.find(name); checks != w.facts().zeroChecks.end()) {
        words += QLatin1Char('\n') + Sheet::tr("last off by %1").arg(text(formatFineSigned(errorOf(checks->second.back().what), w.units())));
    }
    return words;
}

} // namespace

void findingsSection(const Writing& w) {
    const Facts& facts = w.facts();
    if (!facts.findings.empty()) {
        SheetTable table{{{Sheet::tr("Finding")},
                          {Sheet::tr("Place")},
                          {Sheet::tr("What was seen")},
                          {Sheet::tr("What was done")},
                          {Sheet::tr("State")}},
                         {}};
        std::vector<std::pair<std::string, const FindingFact*>> findings;
        for (const auto& [name, finding] : facts.findings) {
            findings.emplace_back(name, &finding);
        }
        if (findings.size() > mostRows) { // those that are left out are then the oldest
            std::ranges::sort(findings, {}, [](const auto& one) { return one.second->opened.entry; });
        }
        for (const auto& [name, one] : findings) {
            const FindingFact& finding = *one;
            const FindingOpened& opened = finding.opened.what;
            table.rows.push_back(
                {strongCell(text(name)), orNone(text(opened.place)),
                 text(opened.text) + QLatin1Char('\n') + w.byAndWhen(finding.opened),
                 finding.settled ? text(finding.settled->what.done) + QLatin1Char('\n') + w.byAndWhen(*finding.settled)
                                 : none(),
                 finding.settled ? stateCell(CheckState::good, Sheet::tr("settled"))
                                 : stateCell(CheckState::out, Sheet::tr("open"))});
        }
        w.flow.heading(Sheet::tr("Findings"));
        w.flow.table(table);
    }
    if (!facts.notes.empty()) {
        SheetTable table{{{Sheet::tr("Place")}, {Sheet::tr("Note")}, {Sheet::tr("By, when")}}, {}};
        for (const auto& note : facts.notes) {
            table.rows.push_back({orNone(text(note.what.place)), text(note.what.text), quietCell(w.byAndWhen(note))});
        }
        w.flow.heading(Sheet::tr("Notes"));
        w.flow.table(table);
    }
}

void struckSection(const Writing& w) {
    SheetTable table{{rightColumn(Sheet::tr("Entry")),
                      {Sheet::tr("What it said")},
                      {Sheet::tr("Entered by, when")},
                      {Sheet::tr("Struck by, when")},
                      {Sheet::tr("Why")}},
                     {}};
    for (const Entry& entry : w.source.ledger.entries()) {
        const std::int64_t by = w.source.ledger.struckBy(entry.sequence);
        if (by <= w.facts().buildEntry) { // not struck, or in an earlier build, whose sheet shows it
            continue;
        }
        const Entry& strike = w.source.ledger.at(by);
        const auto* what = strike.body.as<Struck>();
        SheetCell said(text(historyLine(entry.body, w.units())));
        said.isStruck = true;
        table.rows.push_back({QString::number(entry.sequence), said, w.byAndWhen(entry), w.byAndWhen(strike),
                              what == nullptr ? none() : text(what->why)});
    }
    if (!table.rows.empty()) {
        w.flow.heading(Sheet::tr("Struck entries"));
        w.flow.introduction(
            Sheet::tr("Withdrawn by a person, with a reason. Not counted anywhere above; kept readable."));
        w.flow.table(table);
    }
}

void instrumentsSection(const Writing& w) {
    const Facts& facts = w.facts();
    if (facts.instruments.empty()) {
        return;
    }
    SheetTable table{{{Sheet::tr("Instrument")},
                      {Sheet::tr("Type")},
                      {Sheet::tr("Maker, serial number")},
                      rightColumn(Sheet::tr("Accuracy, range")),
                      {Sheet::tr("Calibrated")},
                      {Sheet::tr("Due")},
                      {Sheet::tr("Tried on its standard")}},
                     {}};
    const auto standings = zeroStandings(w.source.ledger, facts, [&](UtcTime time) {
        return dateOf({time.milliseconds + std::int64_t{1000} * w.options.zone.offsetFromUtc(
                                               QDateTime::fromMSecsSinceEpoch(time.milliseconds, Qt::UTC))});
    });
    for (const auto& [name, fact] : facts.instruments) {
        const InstrumentAdded& what = fact.latest();
        QString limit = none();
        if (what.limitOfError) {
            limit = QStringLiteral("± ") + text(formatExact(what.limitOfError->value, w.units(), 1));
        } else if (what.largestTorque) {
            const QString most = text(format(what.largestTorque->value, w.units()));
            limit = what.smallestTorque
                        ? Sheet::tr("%1 to %2").arg(text(format(what.smallestTorque->value, w.units())), most)
                        : Sheet::tr("to %1").arg(most);
        }
        table.rows.push_back({strongCell(text(name)), wordText(what.type),
                              orNone(joined({text(what.maker), text(what.serial)})), limit.trimmed(),
                              dateText(what.calibrated), dateText(dueOf(what)), triedText(w, standings, name)});
    }
    w.flow.heading(Sheet::tr("Instruments"));
    w.flow.table(table);
}

} // namespace caprail::sheet
