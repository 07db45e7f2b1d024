// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <tl/expected.hpp>
#include <utility>

namespace caprail {

/// Why something was refused: one sentence that a person can act on (what, where, what to do).
struct Problem {
    std::string sentence;
    /// What was given is kept and will be taken later without being given again: the disk did not take it now.
    bool isKept = false;
    friend bool operator==(const Problem&, const Problem&) = default;
};

/// A value, or the reason why there is none. The one error type of the core: domain functions never throw for bad
/// input, and never clamp or skip it silently.
template <class T>
using Result = tl::expected<T, Problem>;

/// `return refuse("The kit has no shim S14: add it first.");`
inline tl::unexpected<Problem> refuse(std::string sentence) {
    return tl::unexpected<Problem>(Problem{std::move(sentence)});
}

} // namespace caprail
