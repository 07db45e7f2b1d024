// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QCollator>

namespace caprail {

/// The order of names for people: "S9" before "S10", small and capital letters alike, as the language has it. Without a
/// language (the locale C) Qt would compare code by code and take no notice of numbers: then as English has it.
inline QCollator naturalOrder() {
    QCollator collator;
    if (collator.locale().language() == QLocale::C) {
        collator.setLocale(QLocale(QLocale::English));
    }
    collator.setNumericMode(true);
    collator.setCaseSensitivity(Qt::CaseInsensitive);
    return collator;
}

} // namespace caprail
