// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <vector>

namespace caprail {

/// A key and what it does, wherever it is told: in Help ▸ Keys, by `caprail help keys`, in the README and on the man page.
struct KeyTold {
    const char* keys; ///< both in English; `shownKeys` and `shownUse` say them
    const char* use;
    [[nodiscard]] QString shownKeys() const;
    [[nodiscard]] QString shownUse() const;
};

/// Those that work at every station, in the order in which a newcomer needs them.
const std::vector<KeyTold>& keyList();

} // namespace caprail
