// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/cautions.h>

#include <QCoreApplication>

namespace caprail {

namespace {

class CautionsText {
    Q_DECLARE_TR_FUNCTIONS(CautionsText)
};

} // namespace

QString shown(Caution caution) {
    switch (caution) {
    case Caution::precedence:
        return CautionsText::tr(
            "The instructions of the parts' makers, local codes and licensed practice come first. What "
            "this program proposes never overrides them.");
    case Caution::stand:
        return CautionsText::tr("A block is heavy: lock the stand before you lean on it or reach under it.");
    case Caution::crank:
        return CautionsText::tr(
            "Turn the crank by hand and slowly, and keep fingers out of the crankcase while it turns.");
    case Caution::wrench:
        return CautionsText::tr("Pull a torque wrench, never push it, and wear eye protection.");
    case Caution::counted:
        return CautionsText::tr("Count the shims out and back in: one left inside can destroy the engine. Their edges "
                                "cut.");
    case Caution::sealant:
        return CautionsText::tr("Use gloves and fresh air with solvents and sealants.");
    case Caution::yielded:
        break;
    }
    return CautionsText::tr("A fastener that was once tightened to yield is scrap: fit a new one.");
}

QString cautionText(const std::vector<Caution>& cautions) {
    QStringList sentences;
    for (const Caution caution : cautions) {
        sentences << shown(caution);
    }
    return sentences.join(QLatin1Char(' '));
}

QStringList allCautions() {
    QStringList sentences;
    for (const Caution caution : {Caution::precedence, Caution::stand, Caution::crank, Caution::wrench,
                                  Caution::counted, Caution::sealant, Caution::yielded}) {
        sentences << shown(caution);
    }
    return sentences;
}

} // namespace caprail
