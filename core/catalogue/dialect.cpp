// SPDX-License-Identifier: GPL-3.0-or-later
#include <catalogue/dialect.h>

#include <QList>
#include <QString>

namespace caprail {

namespace {

// Read as bytes: SQLite would turn a text into UTF-16 for the driver, and say nothing when there is no memory for it.
std::string asBytes(std::string_view column) {
    return "CAST(" + std::string(column) + " AS BLOB)";
}
std::string asItIs(std::string_view column) {
    return std::string(column);
}

std::string withoutCase(std::string_view column) {
    return std::string(column) + " COLLATE NOCASE";
}
// The collation is made with the tables (ICU, numbers by their value).
std::string byTheShopsCollation(std::string_view column) {
    return std::string(column) + " COLLATE caprail.natural_order";
}

std::string fts5Term(std::string_view word) {
    return "\"" + std::string(word) + "\"*";
}
std::string tsqueryTerm(std::string_view word) {
    return "'" + foldedWord(word) + "':*"; // letters, digits and marks: nothing that ends the quotes
}

constexpr Dialect sqlite{"BLOB",
                         "TEXT",
                         "INTEGER",
                         "INTEGER PRIMARY KEY",
                         "BEGIN IMMEDIATE",
                         " STRICT",
                         "SELECT rowid FROM found WHERE found MATCH ?",
                         " AND ",
                         "instr",
                         asBytes,
                         withoutCase,
                         fts5Term};
constexpr Dialect postgres{"bytea",
                           "text",
                           "bigint",
                           "bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY",
                           "BEGIN",
                           "",
                           "SELECT id FROM found WHERE words @@ CAST(? AS tsquery)",
                           " & ",
                           "strpos",
                           asItIs,
                           byTheShopsCollation,
                           tsqueryTerm};

} // namespace

const Dialect& dialectOf(DatabasePlace::Kind kind) {
    return kind == DatabasePlace::Kind::postgres ? postgres : sqlite;
}

std::vector<std::string> wordsIn(std::string_view typed) {
    std::vector<std::string> words;
    QString term;
    const QString text = QString::fromUtf8(typed.data(), static_cast<qsizetype>(typed.size()));
    const auto finish = [&] {
        if (!term.isEmpty()) {
            words.push_back(term.toStdString());
            term.clear();
        }
    };
    for (const char32_t c : text.toUcs4()) {
        const auto category = QChar::category(c);
        const bool isPart =
            QChar::isLetterOrNumber(c) || category == QChar::Mark_NonSpacing || category == QChar::Other_PrivateUse;
        if (isPart) {
            term += QString::fromUcs4(&c, 1);
        } else {
            finish();
        }
    }
    finish();
    return words;
}

std::string foldedWord(std::string_view word) {
    const QString parts = QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()))
                              .toCaseFolded()
                              .normalized(QString::NormalizationForm_KD);
    QString folded;
    for (const char32_t c : parts.toUcs4()) {
        if (QChar::category(c) != QChar::Mark_NonSpacing) {
            folded += QString::fromUcs4(&c, 1);
        }
    }
    return folded.toStdString();
}

} // namespace caprail
