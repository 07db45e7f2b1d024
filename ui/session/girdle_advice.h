// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

namespace caprail {

/// From which power on a shop would consider a girdle: a rule of thumb (common practice, no source) that is shown and
/// never judged by. Each shop may set figures of its own; they are kept in the user's configuration, not in a record.
struct GirdleAdvice {
    int smallBlockFrom = 400, smallBlockTo = 450; ///< horsepower, small-block V8
    int bigBlockNear = 500;                       ///< horsepower, big-block V8
    friend bool operator==(const GirdleAdvice&, const GirdleAdvice&) = default;

    static GirdleAdvice load();
    void save() const;
    /// The advisory with its caveat, as it is shown.
    [[nodiscard]] QString text() const;
};

} // namespace caprail
