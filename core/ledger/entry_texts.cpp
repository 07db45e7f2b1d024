// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/entry_texts.h>

#include <algorithm>
#include <base/plain_text.h>
#include <base/say.h>

namespace caprail {

namespace {

/// Columns in which somebody writes at length.
constexpr std::string_view atLength[] = {"note", "text", "done", "statement", "why", "what", "caption"};

Result<void> checkText(std::string_view column, std::string_view text) {
    const bool isLong = std::ranges::find(atLength, column) != std::end(atLength);
    const auto hidden = hiddenIn(text, isLong ? TextShape::lines : TextShape::line);
    if (!hidden) {
        return {};
    }
    if (*hidden == '\n' || *hidden == '\r' || *hidden == '\t') {
        return refuse(
            Core::say("“%1” of an entry must be one line without tabs: “%2” is not.", column, text.substr(0, 60)));
    }
    return refuse(Core::say("“%1” holds a character that cannot be seen (%2) in “%3”: type it again.", column,
                            codePoint(*hidden), text.substr(0, 60)));
}

} // namespace

Result<void> checkTexts(std::string_view person, const Body& body) {
    if (auto good = checkText("person", person); !good) {
        return good;
    }
    const KindInfo& info = kindOf(body);
    const auto cells = cellsOf(body);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const auto* text = std::get_if<std::string>(&cells[i]);
        if (text != nullptr && info.columns[i].words.empty()) {
            if (auto good = checkText(info.columns[i].name, *text); !good) {
                return good;
            }
        }
    }
    return {};
}

} // namespace caprail
