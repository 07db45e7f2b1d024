// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shop/across.h>
#include <tables/table.h>

namespace caprail {

/// The columns of the window that compares many engines. `units` must outlive them.
std::vector<TableColumn<AcrossSpread>> spreadColumns(const Units& units);
/// `by` heads the first column: what is counted by.
std::vector<TableColumn<MovementCount>> movementColumns(const QString& by, const Units& units);
std::vector<TableColumn<AcrossInstrument>> instrumentsColumns(Date today);

} // namespace caprail
