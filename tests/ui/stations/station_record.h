// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A real record in a temporary folder, brought as far as a test needs it, and keys as a person types them.
#include "../find.h"
#include "../../closing.h"

#include <QApplication>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>
#include <ledger/band_names.h>
#include <session/girdle_runner.h>
#include <session/record_session.h>

namespace caprail {

class StationRecord {
public:
    /// `isCrankIn`: false leaves it on the bench, where bores and journals are measured.
    explicit StationRecord(int caps = 3, int throws = 2, bool isCrankIn = true) {
        EngineDescribed engine{"Kestrel Lane", "Orrin Vale", "V8", "KL-2207", ""};
        auto created = RecordSession::create(folder.filePath("engine.caprail"), "Mira", engine, {});
        EXPECT_TRUE(created) << (created ? "" : created.error().sentence);
        session = std::move(*created);
        session->setReasonAsker([](qint64) { return std::optional<QString>(QStringLiteral("tried")); }); // as a person would
        LayoutSet layout;
        layout.caps = caps;
        layout.tiedLast = caps;
        layout.rods = 2;
        layout.throws = throws;
        layout.pickupCap = 2;
        layout.dipstickCap = 1;
        make(layout);
        RulesSet rules;
        rules.decision = DecisionRule::simple; // a value at the edge is then no question of the uncertainty
        make(rules);
        band(bands::residual, -0.5, 0.5);
        band(bands::mainClearance, 1.8, 2.5);
        band(bands::pickupClearance, 250, 375);
        group(FastenerKind::mainCap, 2 * caps, "7/16-20", 70);
        group(FastenerKind::rod, 4, "3/8-24", 45);
        drafts::specifyClosing(*this, caps);
        make(drafts::wrench());
        make(InstrumentAdded{
            "FEEL-1", InstrumentType::feelerGauge, "", "", Entered<Length>{tenths(1), ""}, {}, {}, {}, {}, {}, {}});
        make(InstrumentAdded{
            "MIC-1", InstrumentType::micrometer, "", "", Entered<Length>{microns(1), ""}, {}, {}, {}, {}, {}, {}});
        make(drafts::instrument("BORE-1", InstrumentType::boreGauge, 0.4, "MIC-1"));
        make(drafts::instrument("EDGE-1", InstrumentType::straightedge, 0.4));
        make(drafts::instrument("DEPTH-1", InstrumentType::depthGauge, 10));
        if (isCrankIn) {
            make(CrankLaidIn{});
        }
    }

    /// Until the girdle's plate is worked out, which goes on beside the window.
    void waitForGirdle() {
        GirdleRunner& girdle = GirdleRunner::of(*session);
        QSignalSpy ready(&girdle, &GirdleRunner::ready);
        (void)girdle.model();
        if (girdle.isBusy()) {
            EXPECT_TRUE(ready.wait(9000));
        }
    }
    /// A quarter of an inch of steel.
    void describePlate() {
        LayoutSet layout = session->ledger().at(facts().layoutEntry).body.get<LayoutSet>();
        layout.plateThickness = inches(0.25);
        layout.plateMetal = PlateMetal::steel;
        make(layout);
    }
    /// One stack is low by two thou, the others are flush.
    void buildOneLow() {
        survey();
        kit();
        shim("low", 48, 48);
        build();
        make(StackBuilt{{2, Side::left}, {{"low"}}});
    }
    std::int64_t make(Body body) {
        const auto stored = session->append(std::move(body));
        EXPECT_TRUE(stored) << (stored ? "" : stored.error().sentence);
        return stored.value_or(0);
    }
    void band(std::string_view name, double lo, double hi) { make(drafts::band(name, lo, hi)); }
    void group(FastenerKind kind, int count, const char* thread, double torque) {
        make(drafts::group(kind, count, thread, torque));
    }
    [[nodiscard]] std::vector<Position> positions() const { return session->facts().layout->positions(); }
    void survey(double firstGap = 50, double step = 0) {
        for (int pass = 1; pass <= 2; ++pass) {
            double gap = firstGap;
            for (const Position p : positions()) {
                make(GapReading{p, pass, {thou(gap), ""}, "FEEL-1", {}, "EDGE-1"});
                gap += step;
            }
        }
    }
    void shim(const std::string& name, double marked, std::optional<double> measured) {
        make(ShimAdded{name, {thou(marked), ""}, ""});
        if (measured) {
            make(ShimMeasured{name, {thou(*measured), ""}, "MIC-1"});
            make(ShimMeasured{name, {thou(*measured), ""}, "MIC-1"});
        }
    }
    /// One measured shim of 50 thou for each position, named "S-1L" …
    void kit() {
        for (const Position p : positions()) {
            shim("S-" + code(p), 50, 50);
        }
    }
    void build() {
        for (const Position p : positions()) {
            make(StackBuilt{p, {{"S-" + code(p)}}});
        }
    }
    void recheck() {
        for (const Position p : positions()) {
            make(RecheckMade{p, Feel::drags, "EDGE-1"});
        }
    }
    /// Up to the open gate of the trial fit.
    void readyToFit() {
        survey();
        kit();
        build();
        recheck();
        make(GirdleWaySet{});
    }
    /// The turning torque before the girdle, and its nuts at torque.
    void girdleToTorque() { drafts::girdleToTorque(*this, facts()); }
    void trialFit() {
        drafts::passTrialFit(*this, session->facts());
    }
    void pickup(double pickupDepthInches = 7.5) {
        for (int pass = 0; pass < 2; ++pass) {
            make(PickupReading{PickupTerm::panDepth, {inches(7.5), ""}, "DEPTH-1"});
            make(PickupReading{PickupTerm::gasket, {thou(60), ""}, "MIC-1"});
            make(PickupReading{PickupTerm::plate, {thou(250), ""}, "MIC-1"});
            make(PickupReading{PickupTerm::pickupDepth, {inches(pickupDepthInches), ""}, "DEPTH-1"});
        }
    }
    void tighten() {
        for (const FastenerId f : session->facts().layout->verifiedFasteners()) {
            make(FastenerTightened{
                f, Entered<Torque>{poundFeet(f.kind == FastenerKind::rod ? 45 : 70), ""}, {}, {}, "W1"});
        }
    }
    void tightenMains() {
        for (const FastenerId f : session->facts().layout->mainFasteners()) {
            make(FastenerTightened{f, Entered<Torque>{poundFeet(70), ""}, {}, {}, "W1"});
        }
    }
    void layIn(bool isIn = true) {
        if (facts().isCrankIn() != isIn) {
            make(CrankLaidIn{isIn, ""});
        }
    }
    /// With the crank out, which is then laid in; the caps are at torque already.
    void bearings() {
        layIn(false);
        for (const JournalId j : session->facts().layout->mainJournals()) {
            for (int station = 1; station <= 2; ++station) {
                for (int direction = 1; direction <= 2; ++direction) {
                    make(JournalReading{j, station, direction, {inches(2.4480), ""}, "MIC-1"});
                }
                make(BoreReading{j, BoreMethod::boreWithShells, station, {inches(2.4502), ""}, "BORE-1"});
            }
            make(JournalReading{j, 1, 1, {inches(2.4480), ""}, "MIC-1"});
            make(BoreReading{j, BoreMethod::boreWithShells, 1, {inches(2.4502), ""}, "BORE-1"});
        }
        layIn();
    }
    /// The same for the rods, as measured in two directions at one station.
    void rodBearings() {
        layIn(false);
        for (const JournalId j : session->facts().layout->rodJournals()) {
            for (int direction = 1; direction <= 2; ++direction) {
                make(JournalReading{j, 1, direction, {inches(2.0990), ""}, "MIC-1"});
            }
            make(BoreReading{j, BoreMethod::boreWithShells, 1, {inches(2.1009), ""}, "BORE-1"});
        }
        layIn();
    }
    void verifyRound() {
        for (const Position p : positions()) {
            make(StackMoved{p, StackMove::takenOff});
        }
        make(RoundBegun{1, "W1"});
        for (const FastenerId f : session->facts().layout->verifiedFasteners()) {
            make(drafts::held(1, f));
        }
    }
    /// Up to the open gate of the closing.
    void readyToClose() {
        tighten();
        bearings();
        readyToFit();
        trialFit();
        pickup();
        verifyRound();
    }

    /// Every closing step up to `last`, each with its evidence.
    void close(ClosingStep last = ClosingStep::panFastened) { drafts::closeUpTo(*this, facts(), last); }

    [[nodiscard]] const Facts& facts() const { return session->facts(); }
    [[nodiscard]] const Assessment& assessment() const { return session->assessment(); }
    [[nodiscard]] const Body& last() const { return session->ledger().entries().back().body; }
    template <class T> [[nodiscard]] const T& lastAs() const {
        static const T none{};
        const T* body = last().as<T>();
        EXPECT_NE(body, nullptr) << "the last entry is of another kind";
        return body == nullptr ? none : *body;
    }

    QTemporaryDir folder;
    std::unique_ptr<RecordSession> session;
};

/// Types text and Enter into whatever has a keyboard.
inline void typeAndEnter(QWidget* widget, const char* text) {
    QTest::keyClicks(widget, QString::fromUtf8(text));
    QTest::keyClick(widget, Qt::Key_Return);
}

} // namespace caprail
