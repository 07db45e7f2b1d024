// SPDX-License-Identifier: GPL-3.0-or-later
#include <catalogue/dialect.h>

#include <QList>
#include <QString>
#include <utility>

namespace caprail {

namespace {

/// In characters. PostgreSQL takes words of 2046 bytes.
constexpr qsizetype longestWord = 200;

// Read as bytes: SQLite would turn a text into UTF-16 for the driver, and say nothing when there is no memory for it.
std::string asBytes(std::string_view column) {
    return "CAST(" + std::string(column) + " AS BLOB)";
}
std::string asItIs(std::string_view column) {
    return std::string(column);
}

std::string byBytes(std::string_view column) {
    return std::string(column) + " COLLATE \"C\"";
}

std::string withoutCase(std::string_view column) {
    return std::string(column) + " COLLATE NOCASE";
}
// The collation is made with the tables (ICU, numbers by their value).
std::string byTheShopsCollation(std::string_view column) {
    return std::string(column) + " COLLATE caprail.natural_order";
}

/// What a word is made of, beside the marks over its letters.
bool isKept(char32_t c) {
    return QChar::isLetterOrNumber(c) || QChar::category(c) == QChar::Other_PrivateUse;
}

std::string fts5Term(std::string_view word) {
    return "\"" + std::string(word) + "\"*";
}
std::string tsqueryTerm(std::string_view word) {
    return "'" + foldedWord(word) + "':*"; // letters and digits: nothing that ends the quotes
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
                         asItIs,
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
                           byBytes,
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
        std::string word = std::exchange(term, {}).toStdString();
        if (!foldedWord(word).empty()) {
            words.push_back(std::move(word));
        }
    };
    for (const char32_t c : text.toUcs4()) {
        if (isKept(c) || QChar::category(c) == QChar::Mark_NonSpacing) {
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
    qsizetype length = 0;
    for (const char32_t c : parts.toUcs4()) {
        if (isKept(c) && length < longestWord) { // the parts of one sign may be brackets or spaces
            folded += QString::fromUcs4(&c, 1);
            ++length;
        }
    }
    return folded.toStdString();
}

} // namespace caprail
