// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDateTime>
#include <base/date.h>

namespace caprail {

/// The computer's clock, which the core never asks itself.
inline UtcTime now() {
    return {QDateTime::currentMSecsSinceEpoch()};
}

} // namespace caprail
