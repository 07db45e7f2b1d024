// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace caprail {

/// Has the driver keep to itself that a statement could not be given back to a server that is gone, or in a transaction
/// that failed: it says so on the terminal for each statement, beside the sentence that tells the person. Everything
/// else that Qt says goes where it went before. The first call counts.
void quietDriver();

} // namespace caprail
