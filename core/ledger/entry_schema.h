// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/field.h>
#include <string>

namespace caprail {

/// JSON Schema (draft 2020-12) of one entry as JSON: what `caprail append` takes and what a ledger as text has on each
/// line. Made from the kinds' own description. A quantity may be given by its number or by what was typed for it. What
/// only the rules of the work refuse (a cap that the engine lacks) is not in it.
std::string entrySchema();

/// The unit of a column's numbers: "nm", "mN·m"; "1" for a plain number; empty for a text.
std::string_view unitOf(const Column& column);
/// What a column holds, in English words: "one of: held, moved", "whole number of nanometres (1 in = 25400000)".
std::string meaningOf(const Column& column);

/// The same for a person: every kind with its members, a line each.
std::string entryManual();

} // namespace caprail
