// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>

namespace caprail {

/// A value that something is judged or tightened by: whose figure it is, and whether anybody said so.
struct ValueStanding {
    std::string code;   ///< "band:residual", "rule:repeat_limit", "group:main"; what `value_confirmed` names
    std::string title;  ///< "the limits of “residual”"
    std::string figure; ///< "−0.0005 to 0.0005 in"
    std::string source; ///< whose figure it is said to be; empty: nobody's
    std::int64_t entry = 0; ///< that set it; 0: the program's own default
    bool isConfirmed = false;
    std::string by;     ///< who confirmed it; empty: who set it, by naming a source
};

/// Every band, rule and specification in force, in the order of the engine's pages. A value is unconfirmed while its
/// source is empty or speaks of common practice, and no `value_confirmed` was made since it took its present figure.
std::vector<ValueStanding> valuesOf(const Facts&, const Units& units = {});
/// How many of them are unconfirmed.
std::size_t countUnconfirmed(const std::vector<ValueStanding>&);
/// "3 values of 25 were confirmed by nobody: …"; for one line on paper and on screen. Empty when all are confirmed.
std::string unconfirmedSentence(const std::vector<ValueStanding>&);
/// Whether words name somebody's figure, rather than nobody's or common practice.
bool namesSomebody(std::string_view source);

} // namespace caprail
