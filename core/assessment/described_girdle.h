// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The girdle's plate out of a layout entry.
#include <ledger/entries.h>

namespace caprail {

/// A girdle as an entry describes it.
struct DescribedGirdle {
    GirdleShape shape; ///< as far as somebody gave it
    /// None while its thickness, or its metal (or both figures in place of it), are not given.
    std::optional<GirdlePlate> plate{};
};

/// `engine` is that of the entry. Refuses what checkPlate and checkShape refuse, and one of modulus and Poisson's ratio
/// without the other.
Result<DescribedGirdle> describedGirdle(const LayoutSet& layout, const EngineLayout& engine);

} // namespace caprail
