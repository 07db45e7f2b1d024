// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/girdle_advice.h>

#include <QCoreApplication>
#include <QSettings>

namespace caprail {

namespace {

class AdviceText {
    Q_DECLARE_TR_FUNCTIONS(GirdleAdvice)
};

} // namespace

GirdleAdvice GirdleAdvice::load() {
    const QSettings settings;
    const GirdleAdvice usual;
    const auto number = [&](const char* key, int otherwise) {
        const int value = settings.value(QLatin1String(key), otherwise).toInt();
        return value > 0 ? value : otherwise;
    };
    return {number("advice/small-block-from", usual.smallBlockFrom),
            number("advice/small-block-to", usual.smallBlockTo), number("advice/big-block-near", usual.bigBlockNear)};
}

void GirdleAdvice::save() const {
    QSettings settings;
    settings.setValue(QStringLiteral("advice/small-block-from"), smallBlockFrom);
    settings.setValue(QStringLiteral("advice/small-block-to"), smallBlockTo);
    settings.setValue(QStringLiteral("advice/big-block-near"), bigBlockNear);
}

QString GirdleAdvice::text() const {
    return AdviceText::tr(
               "Advice, not a verdict: consider a girdle from about %1 to %2 hp on a small-block V8, and near "
               "%3 hp on a big-block (common practice, no source). Speed, fuel, and the material of block and "
               "caps count as much; what the makers of block and girdle say comes first.")
        .arg(smallBlockFrom)
        .arg(smallBlockTo)
        .arg(bigBlockNear);
}

} // namespace caprail
