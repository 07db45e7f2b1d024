// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/signs.h>

#include <QFont>
#include <QFontDatabase>
#include <QFontInfo>
#include <QFontMetrics>
#include <QStringList>
#include <algorithm>

namespace caprail {

QString allSigns() {
    return QStringLiteral("✓✕≈↻○▣▶▸▲▼⚑↷");
}

void loadSigns() {
    const QFontMetrics metrics{QFont()}; // with the fonts that help out where the first has no sign
    const QString signs = allSigns();
    if (!std::ranges::all_of(signs, [&](QChar sign) { return metrics.inFont(sign); })) {
        const int id = QFontDatabase::addApplicationFont(QStringLiteral(":/caprail/fonts/signs.ttf"));
        // Asked for by name: left to itself, Qt looks only among the fonts that have letters.
        for (const QString& family : {QFont().family(), QFontInfo(QFont()).family()}) {
            QFont::insertSubstitutions(family, QFontDatabase::applicationFontFamilies(id));
        }
    }
}

} // namespace caprail
