// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/place.h>
#include <string>
#include <string_view>
#include <vector>

namespace caprail {

/// What the two databases say differently, in one place: statements are put together from it, and nobody else asks
/// which of the two it is. Both know `WITH`, window functions, `FILTER`, `RETURNING`, `ON CONFLICT` and `CAST`.
/// Parameters are written `?`.
struct Dialect {
    std::string_view bytes, text, integer; ///< types of columns
    std::string_view id;                           ///< type and constraint of a column that counts by itself
    std::string_view begin;                        ///< a transaction that will write
    std::string_view endOfTable;                   ///< behind the closing bracket of CREATE TABLE
    std::string_view found; ///< a query with one parameter, terms joined by `foundAnd`: ids of listings
    std::string_view foundAnd;
    std::string_view position; ///< a function: where the second text begins in the first, from 1; 0: nowhere

    /// A column of text as it is selected, so that it comes as it lies there.
    std::string (*asText)(std::string_view column);
    /// What a text column is sorted by: letter case set aside, numbers in it by their value where the database can.
    std::string (*naturally)(std::string_view column);
    /// What ties are sorted by, alike in both: the text's bytes.
    std::string (*bytewise)(std::string_view column);
    /// The term of `found` for texts that hold a word which begins so; `word` is one of `wordsIn`.
    std::string (*foundTerm)(std::string_view word);
};

const Dialect& dialectOf(DatabasePlace::Kind kind);

/// Words as both full-text indexes part them: runs of letters, digits and marks of what a person typed. Marks alone are
/// none.
std::vector<std::string> wordsIn(std::string_view typed);

/// A word as a shop's database keeps it: small letters, without accents (Unicode, NFKD without its marks and signs),
/// its first 200 of them. An index of a folder does that by itself.
std::string foldedWord(std::string_view word);

} // namespace caprail
