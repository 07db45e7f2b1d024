// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

namespace caprail {

class ShopWindow;

/// Shows the records of a folder in a window of its own; with an empty `folder` that of the last time, or its choice.
/// A record opened from it comes in its own window, or to the front where it is open already.
ShopWindow* showShop(const QString& folder = {});

} // namespace caprail
