// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <gmock/gmock.h>
#include <string>
#include <base/problem.h>

/// The sentence of a refusal; fails the test when there is none.
template <class T> std::string sentenceOf(const caprail::Result<T>& result) {
    EXPECT_FALSE(result.has_value()) << "should have been refused";
    return result ? std::string() : result.error().sentence;
}

/// One clear sentence: begins like one, ends with one full stop, on one line.
MATCHER(IsOneSentence, "is one sentence") {
    return !arg.empty() && arg.back() == '.' && arg.find('\n') == std::string::npos &&
           arg.find(". ") == std::string::npos;
}
