// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Ledgers that somebody made who means no good, for the attacks on import, append and all that prints.
#include "attack.h"

#include <ledger/entry_json.h>
#include <store/file/record_file.h>

namespace caprail::attack {

inline std::string sampleText(const std::string& sample) {
    return read(std::string(SAMPLE_BUILDS) + "/" + sample + ".jsonl");
}

inline std::int64_t linesIn(const std::string& text) {
    return std::count(text.begin(), text.end(), '\n');
}

/// A line of a ledger: an entry of the sample's assembler, made after the sample ends.
inline std::string line(const std::string& kind, const std::string& members,
                        const std::string& time = "2026-10-01T08:00:00.000Z",
                        const std::string& person = "Mira Solheim") {
    return "{\"kind\":\"" + kind + "\",\"person\":\"" + person + "\",\"time\":\"" + time + "\"" +
           (members.empty() ? "" : "," + members) + "}\n";
}

/// Every closing step and the sign-off, as if nothing stood before them.
inline std::string closingLines() {
    std::string lines;
    for (const auto& step : allWords<ClosingStep>()) {
        lines += line("closing_step_done", "\"step\":\"" + std::string(step.word) + "\"");
    }
    return lines + line("signed_off", "\"statement\":\"All is well.\"");
}

/// A text as it stands in a JSON string.
inline std::string quoted(const std::string& text) {
    const Entry entry{1, {}, text, NoteAdded{"", "x"}, {}};
    const std::string json = canonicalText(entry);
    const auto begin = json.find("\"person\":") + 9;
    return json.substr(begin, json.find(",\"sequence\":") - begin);
}

/// The words of a PDF's pages, parted by single spaces; `pages` as pdftotext takes them ("-l 1").
inline std::string wordsOf(const std::string& pdf, const std::string& pages = "") {
    const std::string text = pdf + ".txt";
    EXPECT_EQ(std::system(("pdftotext " + pages + " '" + pdf + "' '" + text + "'").c_str()), 0);
    std::string words;
    for (const char c : read(text)) {
        const bool isSpace = c == ' ' || c == '\n' || c == '\f';
        if (!isSpace) {
            words += c;
        } else if (!words.empty() && words.back() != ' ') {
            words += ' ';
        }
    }
    std::filesystem::remove(text);
    return words;
}

/// The program's own cache, where it leaves nothing of the tests behind.
inline const Folder cache;
inline const int cacheIsSet = ::setenv("XDG_CACHE_HOME", cache.path().c_str(), 1);

} // namespace caprail::attack
