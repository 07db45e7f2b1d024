// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shop_cells.h>

#include <QDateTime>

namespace caprail {

namespace {

std::string localMoment(UtcTime time) {
    return QDateTime::fromMSecsSinceEpoch(time.milliseconds).toString(QStringLiteral("yyyy-MM-dd HH:mm")).toStdString();
}

} // namespace

Seeing onScreen(UtcTime now) {
    return {now, localMoment};
}

QVariant inkOf(Tone tone, const Look& look) {
    switch (tone) {
    case Tone::usual:
        break;
    case Tone::quiet:
        return look.quiet;
    case Tone::accent:
        return look.accent;
    case Tone::good:
        return look.good;
    case Tone::close:
        return look.close;
    case Tone::out:
        return look.out;
    case Tone::stale:
        return look.stale;
    }
    return {};
}

} // namespace caprail
