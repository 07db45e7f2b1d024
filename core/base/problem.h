// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <concepts>
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
/// input, and never clamp or skip it silently. Nor is an answer dropped in silence: the compiler refuses it, and a
/// deliberate `(void)` says why.
template <class T> class [[nodiscard]] Result : public tl::expected<T, Problem> {
public:
    using tl::expected<T, Problem>::expected;
    Result() = default;
    Result(const tl::expected<T, Problem>& other) : tl::expected<T, Problem>(other) {}
    Result(tl::expected<T, Problem>&& other) : tl::expected<T, Problem>(std::move(other)) {}
    template <std::same_as<Result> R> friend bool operator==(const R& a, const R& b) {
        return static_cast<const tl::expected<T, Problem>&>(a) == static_cast<const tl::expected<T, Problem>&>(b);
    }
};

/// `return refuse("The kit has no shim S14: add it first.");`
inline tl::unexpected<Problem> refuse(std::string sentence) {
    return tl::unexpected<Problem>(Problem{std::move(sentence)});
}

} // namespace caprail
