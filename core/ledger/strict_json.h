// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string_view>
#include <base/problem.h>

namespace caprail {

/// Whether a text is one JSON value (RFC 8259) that every reader reads alike (I-JSON, RFC 7493, which RFC 8785 demands
/// of what is sealed): valid UTF-8, no member given twice in one object, no lone surrogate and no noncharacter in a
/// string. QJsonDocument takes the last of two members and writes '?' for a lone surrogate without a word, so this is
/// asked before it reads anything. Refuses, naming the member or the place (bytes from 0), the first thing that is
/// wrong; also values nested more than 100 deep. Takes time and memory in proportion to the text.
Result<void> checkJson(std::string_view text);

} // namespace caprail
