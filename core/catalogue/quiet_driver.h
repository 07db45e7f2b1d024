// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QVariant>

namespace caprail {

/// Has the driver keep to itself that a statement could not be given back to a server that is gone, or in a transaction
/// that failed: it says so on the terminal for each statement, beside the sentence that tells the person. Everything
/// else that Qt says goes where it went before. The first call counts.
void quietDriver();

/// Has the library keep to itself what a server notes: it would print that on the terminal as it comes, and a server
/// may send whatever steers one. `connection`: the driver's handle of an open connection.
void keepNotices(const QVariant& connection);

} // namespace caprail
