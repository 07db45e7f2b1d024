// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The girdle's plate out of a layout entry.
#include <ledger/entries.h>

namespace caprail {

GirdleShape girdleShapeOf(const LayoutSet& layout);

/// None while its thickness, or its metal (or both figures in place of it), are not given. Refuses what checkPlate and
/// checkShape refuse, and one of modulus and Poisson's ratio without the other.
Result<std::optional<GirdlePlate>> girdlePlateOf(const LayoutSet& layout);

} // namespace caprail
