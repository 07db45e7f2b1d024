// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What other verbs say of a record as `check` does.
#include <QString>
#include <ledger/ledger.h>

namespace caprail::verbs {

/// Says who signed a sound record; the answer is no where a key is asked for, by its digits, and did not sign all of it.
int tellSignatures(const Ledger& ledger, const QString& path, const std::string& keyDigits = {});

/// Judges the entries of a sound record by the rules that they would meet in the window, and says what its reader
/// should know; the answer is no when one of them was not allowed, or as above.
int reviewed(const std::string& path, const std::string& keyDigits = {});

} // namespace caprail::verbs
