// SPDX-License-Identifier: GPL-3.0-or-later
/// The parts that the engine was built from.
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <algorithm>

namespace caprail::sheet {

namespace {

QString joined(QStringList parts, const QString& separator = QStringLiteral(", ")) {
    parts.removeAll(QString());
    return parts.isEmpty() ? none() : parts.join(separator);
}

QString labelled(const QString& words, const std::string& value) {
    return value.empty() ? QString() : words.arg(text(value));
}

QString newOrUsed(const PartEntered& part) {
    QString words = part.isNew ? (*part.isNew ? Sheet::tr("new") : Sheet::tr("used")) : QString();
    if (part.timesTightened && *part.timesTightened > 0) {
        words += QLatin1Char('\n') + Sheet::tr("tightened before: %1×").arg(*part.timesTightened);
    }
    return words.isEmpty() ? Sheet::tr("not said") : words.trimmed();
}

QString machinedText(const PartEntered& part) {
    return joined({text(part.machined.value_or("")), text(part.machinedBy.value_or("")),
                   part.machinedOn ? text(format(*part.machinedOn)) : QString()});
}

} // namespace

void partsSection(const Writing& w) {
    if (w.facts().parts.empty()) {
        return;
    }
    std::vector<const Seen<PartEntered>*> parts;
    for (const auto& part : w.facts().parts) {
        parts.push_back(&part);
    }
    std::ranges::stable_sort(parts, {}, [](const auto* part) { return part->what.sort; });
    SheetTable table{{{Sheet::tr("Part")},
                      {Sheet::tr("Maker, number")},
                      {Sheet::tr("Serial, lot, stamped")},
                      {Sheet::tr("New or used")},
                      {Sheet::tr("Machined: what, by whom, when")},
                      {Sheet::tr("Note")}},
                     {}};
    for (const auto* seen : parts) {
        const PartEntered& part = seen->what;
        QString name = capitalised(wordText(part.sort));
        name += part.what.empty() ? QString() : QStringLiteral(": ") + text(part.what);
        name += part.place.empty() ? QString() : QStringLiteral(", ") + text(part.place);
        table.rows.push_back({strongCell(name), joined({text(part.maker), text(part.number)}),
                              joined({labelled(Sheet::tr("serial %1"), part.serial.value_or("")),
                                      labelled(Sheet::tr("lot %1"), part.lot),
                                      labelled(Sheet::tr("stamped %1"), part.stamped.value_or(""))},
                                     QStringLiteral("\n")),
                              newOrUsed(part), machinedText(part), joined({text(part.note.value_or(""))})});
    }
    w.flow.heading(Sheet::tr("Parts"));
    w.flow.table(table);
}

} // namespace caprail::sheet
