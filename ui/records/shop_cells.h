// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The list of records on a screen: moments in local time, and the inks of what stands out (shop/list_columns.h).
#include <QVariant>
#include <session/look.h>
#include <shop/list_columns.h>

namespace caprail {

/// As the screen sees the list at a moment.
Seeing onScreen(UtcTime now);
/// The ink of a tone; null: the usual one.
QVariant inkOf(Tone tone, const Look& look);

} // namespace caprail
