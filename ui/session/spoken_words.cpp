// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/spoken_words.h>

#include <QCoreApplication>
#include <ledger/kinds.h>
#include <ledger/qt_text.h>
#include <base/say.h>

namespace caprail {

namespace {

class SpokenText {
    Q_DECLARE_TR_FUNCTIONS(SpokenWords)
};

class Speaker {
public:
    explicit Speaker(const Units& units) : m_units(units) {}

    QString operator()(const GapReading& r) const { return at(describe(r.position), r.gap); }
    QString operator()(const JournalReading& r) const { return at(describe(r.journal), r.diameter); }
    QString operator()(const BoreReading& r) const { return at(describe(r.journal), r.value); }
    QString operator()(const FitReading& r) const { return at(r.fit + " " + std::to_string(r.place), r.value); }
    QString operator()(const ShimMeasured& r) const { return at(r.shim, r.thickness); }
    QString operator()(const ShellMeasured& r) const { return at(r.shell, r.thickness); }
    QString operator()(const PickupReading& r) const { return at(caprail::shown(r.term), r.value); }
    QString operator()(const FastenerTightened& r) const {
        return r.torque    ? at(describe(r.fastener), *r.torque)
               : r.stretch ? at(describe(r.fastener), *r.stretch)
                           : qtText(describe(r.fastener));
    }
    QString operator()(const RoundOutcome& r) const {
        const QString name = qtText(describe(r.fastener));
        return r.outcome == Outcome::held ? SpokenText::tr("%1 held").arg(name)
               : r.angle                  ? SpokenText::tr("%1 moved %2").arg(name, shown(*r.angle))
                                          : SpokenText::tr("%1 moved").arg(name);
    }
    QString operator()(const RecheckMade& r) const {
        return qtText(describe(r.position)) + QLatin1Char(' ') + qtShown(r.feel);
    }
    QString operator()(const TurningTorqueRead& r) const {
        return qtShown(r.stage) + QStringLiteral(", ") + shown(r.breakaway) + QStringLiteral(" / ") + shown(r.running);
    }
    QString operator()(const StackMoved& r) const {
        return qtText(describe(r.position)) + QLatin1Char(' ') + qtShown(r.move);
    }
    QString operator()(const ClosingStepDone& r) const { return qtShown(r.step); }
    QString operator()(const Struck&) const { return SpokenText::tr("struck"); }
    template <class Other> QString operator()(const Other&) const { return qtText(Core::say(Other::title)); }

private:
    template <class Q> QString shown(const Entered<Q>& value) const { return qtText(format(value.value, m_units)); }
    template <class Q> QString at(const std::string& place, const Entered<Q>& value) const {
        return qtText(place) + QStringLiteral(", ") + shown(value);
    }
    const Units& m_units;
};

} // namespace

QString spokenWords(const Entry& entry, const Units& units) {
    return entry.body.visit(Speaker(units));
}

} // namespace caprail
