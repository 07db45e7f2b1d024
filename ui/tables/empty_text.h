// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractItemView>

namespace caprail {

/// Paints, in a view without rows, why it has none and what to do. A screen reader gets it as the view's description:
/// call it whenever the view is painted.
void paintEmptyText(QAbstractItemView& view, const QString& sentence);

} // namespace caprail
