// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The parts of an entry's history line (history_line.h), by its kind.
#include <base/say.h>
#include <ledger/entries.h>
#include <ledger/entry_sentence_parts.h>
#include <units/format.h>
#include <vector>

namespace caprail {

/// What was seen or done, as it is said at the bench, and then what else is known of it, each a phrase of its own: an
/// instrument, a temperature, who says so. Empty fields are left out; nothing that is filled is.
class EntryTeller {
public:
    using Parts = std::vector<std::string>;
    explicit EntryTeller(const Units& units) : m_units(units) {}

    // One for each kind, or it does not compile.
    Parts operator()(const EngineDescribed&) const;
    Parts operator()(const LayoutSet&) const;
    Parts operator()(const BandSet&) const;
    Parts operator()(const RulesSet&) const;
    Parts operator()(const OwnCheckSet&) const;
    Parts operator()(const FastenerGroupSet&) const;
    Parts operator()(const PersonAdded&) const;
    Parts operator()(const InstrumentAdded&) const;
    Parts operator()(const JournalReading&) const;
    Parts operator()(const BoreReading&) const;
    Parts operator()(const ShellMeasured&) const;
    Parts operator()(const ShellsFitted&) const;
    Parts operator()(const FitReading&) const;
    Parts operator()(const CrankLaidIn&) const;
    Parts operator()(const PartChanged&) const;
    Parts operator()(const FastenerTightened&) const;
    Parts operator()(const FastenerLoosened&) const;
    Parts operator()(const ClampChecked&) const;
    Parts operator()(const RoundBegun&) const;
    Parts operator()(const RoundOutcome&) const;
    Parts operator()(const WasherWorked&) const;
    Parts operator()(const GapReading&) const;
    Parts operator()(const ShimAdded&) const;
    Parts operator()(const ShimMeasured&) const;
    Parts operator()(const ShimSetAside&) const;
    Parts operator()(const StackPinned&) const;
    Parts operator()(const StackBuilt&) const;
    Parts operator()(const StackMoved&) const;
    Parts operator()(const RecheckMade&) const;
    Parts operator()(const JudgedAgain&) const;
    Parts operator()(const FeelStudyBegun&) const;
    Parts operator()(const FeelAnswer&) const;
    Parts operator()(const GirdleWaySet&) const;
    Parts operator()(const TrialFitResult&) const;
    Parts operator()(const PickupReading&) const;
    Parts operator()(const TurningTorqueRead&) const;
    Parts operator()(const OwnCheckAnswered&) const;
    Parts operator()(const FindingOpened&) const;
    Parts operator()(const FindingSettled&) const;
    Parts operator()(const NoteAdded&) const;
    Parts operator()(const AttachmentAdded&) const;
    Parts operator()(const ClosingStepDone&) const;
    Parts operator()(const SignedOff&) const;
    Parts operator()(const BuildBegun&) const;
    Parts operator()(const Struck&) const;
    Parts operator()(const Salvaged&) const;
    Parts operator()(const PartEntered&) const;
    Parts operator()(const ZeroChecked&) const;
    Parts operator()(const ValueConfirmed&) const;
    Parts operator()(const BroughtIn&) const;
    Parts operator()(const SealSigned&) const;

private:
    [[nodiscard]] std::string text(Length) const;
    [[nodiscard]] std::string text(Torque t) const { return format(t, m_units); }
    [[nodiscard]] std::string text(Angle a) const { return format(a, m_units); }
    [[nodiscard]] std::string text(Temperature t) const { return format(t, m_units); }
    /// With what was typed for it, where that is not the same text.
    template <class Q> [[nodiscard]] std::string text(const Entered<Q>&) const;
    /// Torque, angle and stretch, as many as there are: "70.0 lbf·ft, 90.0°".
    template <class E> [[nodiscard]] std::string brought(const E&) const;
    void addStandard(Parts&, const std::string& instrument, const Rare<Entered<Temperature>>& part) const;
    Units m_units;
};

template <class Q> std::string EntryTeller::text(const Entered<Q>& entered) const {
    const std::string value = text(entered.value);
    return entered.typed.empty() || entered.typed == value ? value
                                                           : value + " " + Core::say("(typed “%1”)", entered.typed);
}

template <class E> std::string EntryTeller::brought(const E& e) const {
    std::string all = sentence::joined({e.torque ? text(*e.torque) : "", e.angle ? text(*e.angle) : ""}, ", ");
    return sentence::joined({all, e.stretch ? Core::say("stretch %1", text(*e.stretch)) : ""}, ", ");
}

} // namespace caprail
