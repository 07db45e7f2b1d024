// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <base/words.h>

namespace caprail {

/// Where a half shell may lie: some have an oil hole or groove and fit only one half.
enum class ShellHalf { either, upper, lower };
template <> struct WordsOf<ShellHalf> {
    static constexpr std::array<Word<ShellHalf>, 3> list{{{ShellHalf::either, Core::mark("either")},
                                                          {ShellHalf::upper, Core::mark("upper")},
                                                          {ShellHalf::lower, Core::mark("lower")}}};
};

} // namespace caprail
