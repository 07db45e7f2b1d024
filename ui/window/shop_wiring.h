// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

namespace caprail {

class DatabaseWindow;
class ShopWindow;

/// Shows the records of a folder in a window of its own; with an empty `folder` that of the last time, or its choice.
/// A record opened from it comes in its own window, or to the front where it is open already.
ShopWindow* showShop(const QString& folder = {});
/// The same for a shop's database, by its service name or URL; with an empty `name` that of the last time, or its
/// choice.
DatabaseWindow* showShopDatabase(const QString& name = {});

} // namespace caprail
