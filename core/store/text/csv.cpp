// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/text/csv.h>

#include <QDir>
#include <QFile>
#include <map>
#include <store/sqlite/database.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr std::string_view lineEnd = "\r\n";

std::string cellText(const Cell& cell) {
    if (const auto* n = std::get_if<std::int64_t>(&cell)) {
        return std::to_string(*n);
    }
    const auto* text = std::get_if<std::string>(&cell);
    return text == nullptr ? std::string() : csvField(*text);
}

/// What every table begins with, so that each can be read by itself.
std::string beginning(const Ledger& ledger, const Entry& entry) {
    const std::int64_t strike = ledger.struckBy(entry.sequence);
    return std::to_string(entry.sequence) + "," + format(entry.time) + "," + csvField(entry.person) + "," +
           (strike == 0 ? "" : std::to_string(strike));
}

std::map<std::string, std::string> tablesOf(const Ledger& ledger) {
    std::map<std::string, std::string> tables;
    std::string& entries = tables["entries"];
    entries = "sequence,time,person,struck_by,kind,seal";
    entries += lineEnd;
    for (const Entry& entry : ledger.entries()) {
        const KindInfo& info = kindOf(entry.body);
        const std::string begins = beginning(ledger, entry);
        entries += begins + "," + std::string(info.kind) + "," + toHex(entry.seal);
        entries += lineEnd;
        std::string& table = tables[std::string(info.kind)];
        if (table.empty()) {
            table = "sequence,time,person,struck_by";
            for (const Column& column : info.columns) {
                table += "," + column.name;
            }
            table += lineEnd;
        }
        table += begins;
        for (const Cell& cell : cellsOf(entry.body)) {
            table += "," + cellText(cell);
        }
        table += lineEnd;
    }
    return tables;
}

} // namespace

std::string csvField(std::string_view text) {
    if (text.find_first_of(",\"\r\n") == std::string_view::npos) {
        return std::string(text);
    }
    std::string field = "\"";
    for (const char c : text) {
        field += c;
        if (c == '"') {
            field += '"';
        }
    }
    return field + "\"";
}

Result<void> exportCsv(const Ledger& ledger, const std::string& folder) {
    const QDir target(QString::fromStdString(folder));
    if (!target.exists() && !QDir().mkpath(target.path())) {
        return refuse(
            Core::say("The folder %1 cannot be made: check its name and the rights to it.", inQuotes(folder)));
    }
    const auto tables = tablesOf(ledger);
    const auto fileOf = [&](const std::string& name) { return target.filePath(QString::fromStdString(name + ".csv")); };
    for (const auto& [name, text] : tables) {
        if (QFile::exists(fileOf(name))) {
            return refuse(Core::say("%1 exists already and is not overwritten: choose another folder.",
                                    inQuotes(fileOf(name).toStdString())));
        }
    }
    for (const auto& [name, text] : tables) {
        QFile file(fileOf(name));
        const auto size = static_cast<qint64>(text.size());
        if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly) || file.write(text.data(), size) != size ||
            !file.flush()) {
            return refuse(Core::say("%1 cannot be written: %2.", inQuotes(fileOf(name).toStdString()),
                                    file.errorString().toStdString()));
        }
    }
    return {};
}

} // namespace caprail
