// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Sentences for people, in the language that the program runs in. The source holds them in English, each whole, with
/// placeholders %1 to %9 for what differs; a catalogue made by lupdate (CMake target `caprail_translations`) holds the
/// others.
#include <concepts>
#include <initializer_list>
#include <string>
#include <string_view>
#include <base/plain_text.h>

namespace caprail {

/// Gives the translation of a source text, or the text itself where there is none. Must be safe to call from any thread
/// and must not throw.
using Translation = std::string (*)(const char* source);

/// What may stand at a placeholder of a sentence: a text, or a whole number written in plain digits. A text comes out
/// of a record, a file's name, somebody's hands: it is shown visibly and on one line (base/plain_text.h), so that no
/// name can write a sentence of its own.
class Said {
public:
    Said(std::string_view text) : m_text(visibly(text)) {}
    Said(const std::string& text) : m_text(visibly(text)) {}
    Said(const char* text) : m_text(visibly(text)) {}
    Said(char letter) : m_text(1, letter) {}
    Said(std::integral auto number) : m_text(std::to_string(number)) {}

    const std::string& text() const { return m_text; }

private:
    std::string m_text;
};

/// The core's context in the catalogue. (A class, because lupdate takes the context of a text from one.)
class Core {
public:
    /// The sentence with its placeholders filled, translated. `source` is a literal in UTF-8; a placeholder may occur
    /// several times or not at all, and a filled text is not searched for placeholders again.
    template <class... Texts> static std::string say(std::string_view source, const Texts&... texts) {
        return filled(source, {Said(texts)...});
    }

    /// For a sentence that counts: the first source for one, the second for any other number; %1 is the number.
    template <class... Texts>
    static std::string count(std::integral auto number, std::string_view one, std::string_view several,
                             const Texts&... texts) {
        return filled(number == 1 ? one : several, {Said(number), Said(texts)...});
    }

    /// Marks a text that is kept in a table and said later: `Core::say(text)` then finds its translation.
    static constexpr const char* mark(const char* source) { return source; }

    /// Sets the language of everything said from now on; without one the sources are said. Call it once, before other
    /// threads run.
    static void speak(Translation translation);

private:
    static std::string filled(std::string_view source, std::initializer_list<Said> texts);
};

} // namespace caprail
