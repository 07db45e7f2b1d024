// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>
#include <assessment/signatures.h>

namespace caprail {

/// What the customer reads first in a hand-over: whose engine, whether the build is finished, what each file is, how to
/// see without this program that nothing was altered, and what that proves and what not. Plain text, lines of at most
/// some 100 characters.
std::string handOverReadme(const Ledger& ledger, const Facts& facts, const std::vector<SignatureFact>& signatures,
                           bool hasTables);

/// The signature that a hand-over tells of: the last that covers all, else the last that holds; null: none does.
const SignatureFact* toldSignature(const std::vector<SignatureFact>& signatures);

} // namespace caprail
