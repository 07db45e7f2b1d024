// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/cautions.h>

#include <QCoreApplication>

namespace caprail {

namespace {

class CautionsText {
    Q_DECLARE_TR_FUNCTIONS(CautionsText)
};

QString precedence() {
    return CautionsText::tr(
        "The instructions of the parts' makers, local codes and licensed practice come first. What this program "
        "proposes never overrides them.");
}
QString stand() {
    return CautionsText::tr("A block is heavy: lock the stand before you lean on it or reach under it.");
}
QString crank() {
    return CautionsText::tr("Turn the crank by hand and slowly, and keep fingers out of the crankcase while it turns.");
}
QString wrench() {
    return CautionsText::tr("Pull a torque wrench, never push it, and wear eye protection.");
}
QString counted() {
    return CautionsText::tr("Count the shims out and count them in again: one that drops into the engine ends it.");
}
QString sealant() {
    return CautionsText::tr("Solvents and sealants need moving air and gloves.");
}
QString yielded() {
    return CautionsText::tr("A fastener that was once tightened to yield is scrap: fit a new one.");
}

} // namespace

QString cautionFor(Station station) {
    const QString space = QStringLiteral(" ");
    switch (station) {
    case Station::engine:
        return precedence();
    case Station::bearings:
        return stand() + space + crank();
    case Station::fasteners:
        return wrench() + space + yielded();
    case Station::girdle:
        return counted();
    case Station::trialFit:
        return crank() + space + stand();
    case Station::pickup:
        return stand();
    case Station::closing:
        return sealant() + space + counted() + space + wrench();
    case Station::history:
        break;
    }
    return {};
}

QStringList allCautions() {
    return {precedence(), stand(), crank(), wrench(), counted(), sealant(), yielded()};
}

} // namespace caprail
