// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <algorithm>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <base/problem.h>
#include <base/say.h>

namespace caprail {

/// One value of an enumeration with the word that stands for it in files, on the command line and, translated, on
/// screen and in sentences. A word that people see is marked: `{Feel::drags, Core::mark("drags")}`.
template <class E>
struct Word {
    E value;
    std::string_view word;
};

/// Specialise with `static constexpr std::array<Word<E>, N> list{…}` beside each enumeration that is written anywhere.
/// The word is written once, here, and read and shown from here.
template <class E>
struct WordsOf;

template <class E>
concept Worded = requires { WordsOf<E>::list; };

/// The word for a value; every value of a worded enumeration has one.
template <Worded E>
constexpr std::string_view word(E value) {
    for (const auto& entry : WordsOf<E>::list) {
        if (entry.value == value) {
            return entry.word;
        }
    }
    return "unknown";
}

/// The word for people: in the language of the screen.
template <Worded E> std::string shown(E value) {
    return Core::say(word(value));
}

/// The value that a word stands for; null: none does.
template <Worded E>
constexpr const E* valueOf(std::string_view text) {
    for (const auto& entry : WordsOf<E>::list) {
        if (entry.word == text) {
            return &entry.value;
        }
    }
    return nullptr;
}

/// The value that a word stands for; refuses others with the list of words that would do.
template <Worded E>
Result<E> fromWord(std::string_view text) {
    if (const E* value = valueOf<E>(text)) {
        return *value;
    }
    std::string known;
    for (const auto& entry : WordsOf<E>::list) {
        known += (known.empty() ? "" : ", ") + std::string(entry.word);
    }
    return refuse(Core::say("“%1” is none of: %2.", text, known));
}

/// All values, in the order in which they are listed.
template <Worded E>
constexpr std::span<const Word<E>> allWords() {
    return WordsOf<E>::list;
}

} // namespace caprail
