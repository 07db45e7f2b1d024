// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/entry_text.h>

#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <filesystem>
#include <ledger/qt_text.h>
#include <store/file/output_file.h>
#include <store/file/read_file.h>
#include <base/say.h>
#include <base/text.h>

namespace caprail {

namespace {

constexpr std::int64_t largestFile = std::int64_t{4} * 1024 * 1024;

} // namespace

std::string entryLine(const Body& body) {
    const KindInfo& info = kindOf(body);
    const std::vector<Cell> cells = cellsOf(body);
    QJsonObject object{{QStringLiteral("kind"), qtText(info.kind)}};
    for (auto column = info.columns.begin(); const Cell& cell : cells) {
        const QString name = qtText((column++)->name);
        if (const auto* number = std::get_if<std::int64_t>(&cell)) {
            object.insert(name, static_cast<qint64>(*number));
        } else if (const auto* words = std::get_if<std::string>(&cell)) {
            object.insert(name, qtText(*words));
        }
    }
    return QJsonDocument(object).toJson(QJsonDocument::Compact).toStdString();
}

std::string entryLines(const std::vector<Body>& bodies) {
    std::string lines;
    for (const Body& body : bodies) {
        lines += entryLine(body) + "\n";
    }
    return lines;
}

Result<std::vector<Body>> entriesFrom(std::string_view lines) {
    std::vector<Body> bodies;
    for (int number = 1; !lines.empty(); ++number) {
        const auto end = lines.find('\n');
        const std::string_view line = lines.substr(0, end);
        lines = end == std::string_view::npos ? std::string_view() : lines.substr(end + 1);
        if (isBlank(line)) {
            continue;
        }
        auto draft = fromJson(line);
        const auto may = draft ? mayBeMadeNow(*draft) : tl::unexpected(draft.error());
        if (!may) {
            return refuse(Core::say("Line %1: %2", number, may.error().sentence));
        }
        bodies.push_back(std::move(draft->body));
    }
    return bodies;
}

Result<std::string> readText(const std::string& path) {
    return readWholeFile(path, largestFile);
}

Result<void> writeText(const std::string& path, std::string_view content) {
    std::error_code error;
    std::filesystem::create_directories(folderOf(path), error);
    return writeOutput(path, OutputSort::text, true, content);
}

std::string safeName(std::string_view name, std::string_view otherwise) {
    constexpr qsizetype longest = 80;
    QString safe;
    for (const char32_t c : qtText(name).simplified().toUcs4()) {
        const QString one = QString::fromUcs4(&c, 1);
        const bool isPlain = QChar::isLetterOrNumber(c) || c == U'-' || c == U'_' || c == U' ' || c == U'.';
        if ((safe + one).toUtf8().size() > longest) {
            break;
        }
        safe += isPlain ? one : QStringLiteral("-");
    }
    while (safe.startsWith(QLatin1Char('.')) || safe.startsWith(QLatin1Char(' ')) ||
           safe.startsWith(QLatin1Char('-'))) {
        safe.remove(0, 1);
    }
    while (safe.endsWith(QLatin1Char('.')) || safe.endsWith(QLatin1Char(' '))) {
        safe.chop(1);
    }
    const bool hasWord = std::any_of(safe.begin(), safe.end(), [](QChar c) { return c.isLetterOrNumber(); });
    return hasWord ? safe.toStdString() : std::string(otherwise);
}

} // namespace caprail
