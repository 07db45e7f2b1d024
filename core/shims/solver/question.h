// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>

namespace caprail::solver {

/// The decision problem that the exact search is asked, again and again: is there a plan of at most `shims` shims,
/// each |residual| ≤ `window`, that serves all but `leftOut` seats?
struct Question {
    int shims = 0;
    std::int64_t window = 0;
    int leftOut = 0;
};

enum class Answer { yes, no, unknown };

} // namespace caprail::solver
