// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Values as rows of an index or a shop's database keep them, read back. Whoever may write there may have written
/// anything.
#include <base/problem.h>
#include <base/words.h>
#include <cstdint>
#include <optional>

namespace caprail {

/// The value of an enumeration by its number; nothing where there is none.
template <Worded E> std::optional<E> numbered(std::int64_t number) {
    return number >= 0 && number < static_cast<std::int64_t>(allWords<E>().size())
               ? std::optional(static_cast<E>(number))
               : std::nullopt;
}

/// The refusal of a row that holds what nobody wrote there.
tl::unexpected<Problem> strangeRow();

} // namespace caprail
