// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Characters that nobody sees, or that make a line read as another one: what may stand in a name, and how a text from
/// a record is shown so that nothing in it hides.
#include <optional>
#include <string>
#include <string_view>

namespace caprail {

/// One character of a text in UTF-8.
struct Character {
    char32_t code = 0;    ///< U+FFFD when the bytes are no UTF-8
    std::size_t size = 0; ///< bytes that it takes, at least 1
    bool isGood = true;   ///< false: the bytes are no UTF-8 (RFC 3629: overlong, a surrogate, beyond U+10FFFF, cut off)
};
/// The first character of a text that is not empty.
Character firstCharacter(std::string_view utf8);
/// Adds a character to a text; `code` is no surrogate and at most U+10FFFF.
void appendCharacter(std::string& utf8, char32_t code);

/// What a text may be: one line (a name), or several (a note).
enum class TextShape { line, lines };

/// The first character that such a text may not hold; none: it may be kept. On a line: controls (C0, DEL, C1), line and
/// paragraph separators (U+2028, U+2029), everything that turns the writing direction (U+061C, U+200E, U+200F, U+202A
/// to U+202E, U+2066 to U+2069), and what has no width (U+200B, U+2060 to U+2064, U+FEFF, a soft hyphen, tags …). The
/// joiners U+200C and U+200D are part of how Persian and the languages of India are spelled: they may follow a letter
/// of such a script. Over several lines: line feed and tab may stand, and so may marks and spaces that harm nobody
/// there; controls, separators, overrides and isolates may not.
std::optional<char32_t> hiddenIn(std::string_view utf8, TextShape shape);

/// "U+202E"
std::string codePoint(char32_t code);

/// A text as one line in which everything can be seen: a line break as ↵, another control as its picture (␛), what is
/// hidden by its number in brackets (⟨U+202E⟩), bytes that are no UTF-8 as U+FFFD. Other text stays as it is.
std::string visibly(std::string_view bytes);
/// The same with line ends (LF, CR LF) kept, for a text that may stand over several lines.
std::string visibleLines(std::string_view bytes);
/// JSON with everything hidden in its strings escaped (\u202e): the same value, and safe to look at in a terminal. Line
/// feeds between its members stay.
std::string visibleJson(std::string_view json);

} // namespace caprail
