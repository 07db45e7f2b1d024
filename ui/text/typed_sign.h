// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QKeyEvent>

namespace caprail {

/// Whether a key types a sign that is seen: neither a command (with Ctrl, Alt or the system's key) nor a key that
/// moves.
inline bool isTypedSign(const QKeyEvent& key) {
    return !(key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) && !key.text().isEmpty() &&
           key.text().front().isPrint();
}

} // namespace caprail
