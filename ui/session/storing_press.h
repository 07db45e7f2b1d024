// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <base/problem.h>
#include <functional>
#include <optional>

namespace caprail {

/// What stores without a value of its own (H for held, D for drags, p for pass, Enter alone) must be meant each time: a
/// key that bounces, a glove that slips or a double click must not answer for the next place, which nobody felt. So the
/// same word twice within half a second is asked back, over all fields, keys and buttons of the program. Values, which
/// have a digit in them, were typed out and are never asked back here.
class StoringPress {
public:
    /// Milliseconds that only ever grow.
    using Clock = std::function<qint64()>;
    static constexpr qint64 apart = 500; ///< milliseconds from the last press of a word to the next that stores

    /// Another clock, for tests; an empty one brings back the usual one.
    static void setClock(Clock clock);
    /// The sentence that asks back, when `word` was pressed so shortly ago; then this press begins the half second anew.
    static std::optional<QString> askedBack(const QString& word);
    /// To be called with what became of the word: where it is stored, or kept until the disk takes it, the half second
    /// begins now, however long that took. A refused one has answered for nothing.
    template <class T> static void answered(const QString& word, const Result<T>& outcome) {
        if (outcome || outcome.error().isKept) {
            beginAnew(word);
        }
    }

private:
    static void beginAnew(const QString& word);
};

} // namespace caprail
