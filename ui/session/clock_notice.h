// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <ledger/ledger.h>

namespace caprail {

/// What the bar over a record says about the clocks that its entries were made by: those that are older than the one
/// before, and those that lie after `now`. The last few are named, the rest counted. Empty when all is well.
QString clockNotice(const Ledger& ledger, UtcTime now);

} // namespace caprail
