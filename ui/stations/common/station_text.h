// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Words for screens, used by every panel.
#include <QWidget>
#include <ledger/qt_text.h>

namespace caprail {

/// "Cap 3 right" from "cap 3 right".
inline QString capitalised(QString text) {
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
    }
    return text;
}

/// What a box is for, to a screen reader (text/box_label.h).
inline void nameBox(QWidget& box, const QString& purpose) {
    box.setAccessibleName(purpose);
}

} // namespace caprail
