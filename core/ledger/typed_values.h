// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What an entry's quantities must be, whoever made it and however it came here.
#include <ledger/entries.h>
#include <optional>
#include <string>

namespace caprail {

/// The first quantity of an entry whose typed text does not mean the value stored with it, to half the last digit typed,
/// as a sentence. None: they agree. Holds on entry, on import and when a file is checked.
std::optional<std::string> contradictionIn(const Body&);

/// The first quantity whose typed text is no quantity at all, as a sentence. Held against new entries only: an earlier
/// ledger may carry a remark there.
std::optional<std::string> unreadableIn(const Body&);

/// The first quantity outside what its field expects (expectations.h), as a sentence that asks it back. None where all
/// are plausible, or insisted on by a `!` behind what was typed.
std::optional<std::string> implausibleIn(const Body&, const Units&);

/// Whether any quantity was insisted on.
bool isAnyInsistedOn(const Body&);

} // namespace caprail
