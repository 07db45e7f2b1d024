// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/signs.h>

#include <QFont>
#include <QFontDatabase>
#include <QFontMetrics>
#include <algorithm>

namespace caprail {

QString allSigns() {
    return QStringLiteral("✓✕≈↻○▣▶▸▲▼⚑↷");
}

void loadSigns() {
    const QFontMetrics metrics{QFont()}; // with the fonts that help out where the first has no sign
    const QString signs = allSigns();
    if (!std::ranges::all_of(signs, [&](QChar sign) { return metrics.inFont(sign); })) {
        QFontDatabase::addApplicationFont(QStringLiteral(":/caprail/fonts/signs.ttf"));
    }
}

} // namespace caprail
