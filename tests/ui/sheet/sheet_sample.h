// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A whole invented build, entry by entry, for the tests of the sheet. Each entry is judged like one typed in the
/// window.
#include "../../closing.h"

#include <QBuffer>
#include <QImage>
#include <QLinearGradient>
#include <QPainter>
#include <assessment/admission.h>
#include <gtest/gtest.h>
#include <ledger/band_names.h>
#include <sheet/sheet.h>

namespace caprail {

struct SampleShape {
    int caps = 5;
    int fastenersPerCap = 2;
    int rods = 8;
    bool hasLongNames = false;
    bool isClosed = true; ///< false: it ends after the verify round in which a fastener moved
};

class SheetSample {
public:
    explicit SheetSample(SampleShape shape = {}) : m_shape(shape) {
        specify();
        tighten();
        bearings();
        make(CrankLaidIn{});
        make(FitReading{std::string(bands::crankEndPlay), 1, typed(thou(6.0)), "DG-1"});
        make(FitReading{std::string(bands::crankEndPlay), 1, typed(thou(6.5)), "DG-1"});
        for (const Position p : facts.layout->positions()) {
            survey(p, gapOf(p));
            shims(p);
            make(StackBuilt{p, {{shimName(p, 'a'), shimName(p, 'b')}}});
            make(RecheckMade{p, Feel::drags, "SE-1"});
        }
        findingsAndPhotos();
        trialFit();
        pickup();
        lift(StackMove::takenOff);
        round(1, true);
        if (shape.isClosed) {
            finish();
        }
    }

    Ledger ledger;
    Facts facts;
    Assessment assessment = assess(Facts{});
    std::map<std::string, QByteArray> photos;

    [[nodiscard]] SheetSource source() const {
        return {ledger, facts, assessment, [this](const std::string& sha256) {
                    const auto at = photos.find(sha256);
                    return at == photos.end() ? QByteArray() : at->second;
                }};
    }
    /// The assessment's sentences in other units.
    void assessIn(const Units& units) { assessment = assess(facts, units); }

    /// Judged and appended; a refusal fails the test.
    std::int64_t make(Body body) {
        if (const auto ok = mayAppend(ledger, facts, assessment, m_person, body); !ok) {
            ADD_FAILURE() << ok.error().sentence;
            return 0;
        }
        const bool isStrike = body.is<Struck>();
        m_clock += 97'000;
        const Entry& entry = ledger.append({m_clock}, m_person, std::move(body));
        if (isStrike) {
            facts = fold(ledger);
        } else {
            apply(facts, entry);
        }
        assessment = assess(facts);
        return entry.sequence;
    }

private:
    static Entered<Length> typed(Length l) { return {l, formatBare(l, {})}; }
    [[nodiscard]] std::string name(const std::string& shortOne, const std::string& longOne) const {
        return m_shape.hasLongNames ? longOne : shortOne;
    }
    static std::string shimName(Position p, char which) { return "S" + code(p) + which; }
    /// Wide from front to rear and from side to side, as such surveys are.
    static double gapOf(Position p) { return 39.0 + 4.0 * p.cap + (p.side == Side::right ? 3.5 : 0.0); }

    void specify() {
        m_person = name("Mira Sand", "Mira-Constanze Sandoval-Whittingstall von und zu Altenbrücken");
        make(PersonAdded{m_person, "assembler"});
        make(PersonAdded{"Tomas Reed", "second pair of eyes"});
        make(EngineDescribed{name("Kestrel Lane Engines", "Kestrel Lane Engine Building, Machining and Restoration "
                                                          "Partnership of the Lower Valley, Limited"),
                             name("Orrin Vale", "Orrin Maximilian Theophilus Vale-Featherstonehaugh and Daughters"),
                             name("Corvane 5.4 V8", "Corvane 5.4 V8 with the long crank, the tall deck, the wide rails "
                                                    "and Donaudampfschifffahrtsgesellschaftskapitänskajütenschlüssel"),
                             name("KL-2207", "KL-2207-ABCDEFGHIJKLMNOPQRSTUVWXYZ-0123456789-0123456789-0123456789"),
                             "Street engine, second life; the block was line-bored before it came to us."});
        LayoutSet layout;
        layout.caps = m_shape.caps;
        layout.fastenersPerCap = m_shape.fastenersPerCap;
        layout.tiedLast = m_shape.caps;
        layout.rods = m_shape.rods;
        layout.throws = 4;
        layout.pickupCap = 2;
        layout.dipstickCap = 1;
        layout.source = "measured at the block";
        make(layout);
        RulesSet rules;
        rules.source = "shop";
        make(rules);
        band(bands::residual, -1.5, 1.5);
        band(bands::mainClearance, 1.8, 3.0);
        band(bands::rodClearance, 1.6, 2.8);
        band(bands::crankEndPlay, 4, 9);
        band(bands::pickupClearance, 250, 375);
        group(FastenerKind::mainCap, m_shape.caps * m_shape.fastenersPerCap, "7/16-20", 75);
        group(FastenerKind::rod, m_shape.rods * 2, "3/8-24", 45);
        group(FastenerKind::girdleNut, m_shape.caps * 2, "7/16-20", 40);
        group(FastenerKind::panRail, 8, "1/4-20", 8);
        instrument("MIC-1", InstrumentType::micrometer, 0.05);
        instrument("BG-1", InstrumentType::boreGauge, 0.1);
        instrument("FG-1", InstrumentType::feelerGauge, 0.1);
        instrument("SE-1", InstrumentType::straightedge, 0.1);
        instrument("DG-1", InstrumentType::depthGauge, 1.0);
        InstrumentAdded wrench;
        wrench.instrument = "TW-1";
        wrench.type = InstrumentType::torqueWrench;
        wrench.maker = name("Halden", "Halden Precision Measuring and Torque Instruments Manufactory");
        wrench.serial = "88121";
        wrench.largestTorque = Entered<Torque>{poundFeet(150), "150"};
        wrench.smallestTorque = Entered<Torque>{poundFeet(50), "50"}; // the rods' 45 lbf·ft lie below
        wrench.calibrated = *parseDate("2022-03-01");
        wrench.due = *parseDate("2023-03-01"); // passed before this build
        make(wrench);
        InstrumentAdded small;
        small.instrument = "TW-2";
        small.type = InstrumentType::torqueWrench;
        small.smallestTorque = Entered<Torque>{poundFeet(5), "5"};
        small.largestTorque = Entered<Torque>{poundFeet(60), "60"};
        make(small);
    }
    void band(std::string_view which, double lo, double hi) {
        make(BandSet{std::string(which), typed(thou(lo)), typed(thou(hi)), {}, "part maker's sheet"});
    }
    void group(FastenerKind kind, int count, const char* thread, double torque) {
        FastenerGroupSet g;
        g.group = kind;
        g.count = count;
        g.thread = thread;
        g.grade = "by hand 200 ksi";
        g.lubricant = "engine oil";
        g.torque = Entered<Torque>{poundFeet(torque), ""};
        g.source = name("part maker's sheet", "alloy stud, heat-treated, rolled after heat treatment, black oxide, lot 7741-B");
        make(g);
    }
    void instrument(const char* which, InstrumentType type, double limitThou) {
        InstrumentAdded i;
        i.instrument = which;
        i.type = type;
        i.limitOfError = Entered<Length>{thou(limitThou), ""};
        i.calibrated = *parseDate("2023-09-12");
        make(i);
    }
    void tighten() {
        for (const FastenerId f : facts.layout->verifiedFasteners()) {
            const bool isRod = f.kind == FastenerKind::rod;
            const Entered<Torque> torque{poundFeet(isRod ? 45 : 75), isRod ? "45 lbf·ft!" : ""};
            // The rods' value lies below the range of TW-1. A build that is not closed has it asked back, and insisted on.
            make(FastenerTightened{f, torque, {}, {}, isRod && m_shape.isClosed ? "TW-2" : "TW-1"});
        }
    }
    void journal(JournalId j, double diameter) {
        for (int station = 1; station <= 2; ++station) {
            for (int direction = 1; direction <= 2; ++direction) {
                make(JournalReading{j, station, direction, typed(inches(diameter - 0.0001 * (station - 1))), "MIC-1"});
            }
            make(BoreReading{j, BoreMethod::boreWithShells, station,
                             typed(inches(diameter + 0.0022 + 0.0001 * (j.number % 3))), "BG-1"});
        }
        make(JournalReading{j, 1, 1, typed(inches(diameter)), "MIC-1"});
        make(BoreReading{j, BoreMethod::boreWithShells, 1,
                         typed(inches(diameter + 0.0022 + 0.0001 * (j.number % 3))), "BG-1"});
    }
    void bearings() {
        for (const JournalId j : facts.layout->mainJournals()) {
            journal(j, 2.4483);
        }
        for (const JournalId j : facts.layout->rodJournals()) {
            journal(j, 2.0993);
        }
    }
    void survey(Position p, double gap) {
        make(GapReading{p, 1, typed(thou(gap)), "FG-1", {}, "SE-1"});
        make(GapReading{p, 2, typed(thou(gap + 0.2)), "FG-1", {}, "SE-1"});
    }
    void shims(Position p) {
        const double gap = gapOf(p);
        for (const auto& [which, thickness] : {std::pair{'a', 30.0}, std::pair{'b', gap - 30.0}}) {
            make(ShimAdded{shimName(p, which), typed(thou(thickness)), "bag " + code(p)});
            make(ShimMeasured{shimName(p, which), typed(thou(thickness)), "MIC-1"});
            make(ShimMeasured{shimName(p, which), typed(thou(thickness)), "MIC-1"});
        }
    }
    void findingsAndPhotos() {
        make(FindingOpened{"F1", "3R",
                           name("Burr at the edge of the washer seat.",
                                "Burr at the edge of the washer seat, about a quarter of the way round, "
                                "raised enough to be felt with a nail and seen under the glass.")});
        make(FindingSettled{"F1", "Stoned flat, wiped, washer lies down."});
        make(NoteAdded{"", "Customer wants the old timing cover back."});
        const std::int64_t slip = make(ShimAdded{"S99", typed(thou(50)), "bag 9"});
        make(Struck{slip, "That shim belongs to another kit."});
        for (const int hue : {20, 200}) {
            photo(hue);
        }
    }
    void photo(int hue) {
        QImage image(1600, 1200, QImage::Format_RGB32);
        QPainter painter(&image);
        QLinearGradient gradient(0, 0, 1600, 1200);
        gradient.setColorAt(0, QColor::fromHsv(hue, 60, 220));
        gradient.setColorAt(1, QColor::fromHsv(hue, 120, 90));
        painter.fillRect(image.rect(), gradient);
        painter.end();
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        image.save(&buffer, "JPG");
        AttachmentAdded a;
        a.place = "3R";
        a.fileName = "seat-" + std::to_string(hue) + ".jpg";
        a.mediaType = "image/jpeg";
        a.caption = name("Washer seat after stoning", "Washer seat after stoning, seen from the flywheel end with the "
                                                      "lamp low, so that the marks of the stone can be told apart");
        a.sha256 = sha256Hex({bytes.constData(), static_cast<std::size_t>(bytes.size())});
        a.originalSha256 = a.sha256;
        a.size = bytes.size();
        a.taken = parseClockTime("2026-05-03T09:30:00").value();
        photos[a.sha256] = bytes;
        make(a);
    }
    void trialFit() {
        make(GirdleWaySet{});
        drafts::girdleToTorque(*this, facts, "TW-2");
        for (const auto& [item, words] : allWords<TrialItem>()) {
            const int last = isPerThrow(item) ? facts.layout->throws() : 0;
            for (int number = isPerThrow(item) ? 1 : 0; number <= last; ++number) {
                TrialFitResult result{item, number, TrialResult::pass, {}, ""};
                if (item == TrialItem::counterweights) {
                    result.result = TrialResult::measured;
                    result.clearance = typed(thou(80 + 5 * number));
                }
                make(result);
            }
        }
        drafts::readTurning(*this, TurningStage::girdleAtTorque, 12.5, 8, "TW-2");
    }
    void pickup() {
        for (int pass = 0; pass < 2; ++pass) {
            make(PickupReading{PickupTerm::panDepth, typed(inches(7.5 + 0.001 * pass)), "DG-1"});
            make(PickupReading{PickupTerm::gasket, typed(thou(60)), "MIC-1"});
            make(PickupReading{PickupTerm::plate, typed(thou(250)), "MIC-1"});
            make(PickupReading{PickupTerm::pickupDepth, typed(inches(7.5)), "DG-1"});
        }
    }
    void lift(StackMove move) {
        for (const Position p : facts.layout->positions()) {
            make(StackMoved{p, move});
        }
    }
    void round(int number, bool oneMoves) {
        make(RoundBegun{number, "TW-1"});
        for (const FastenerId f : facts.layout->verifiedFasteners()) {
            RoundOutcome o;
            o.round = number;
            o.fastener = f;
            o.instrument = f.kind == FastenerKind::rod ? "TW-2" : "TW-1"; // the rods' value lies below the range of TW-1
            o.torque = facts.groupOf(f)->what.torque;
            if (oneMoves && code(f) == "main-3R") {
                o.outcome = Outcome::moved;
                o.angle = Entered<Angle>{degrees(4), "4"};
            }
            make(o);
        }
    }
    /// What the moved fastener spoiled is done again, then a round in which all hold, and the engine is closed.
    void finish() {
        for (const Side side : {Side::left, Side::right}) {
            const Position p{3, side};
            survey(p, gapOf(p) + 0.2);
            make(StackBuilt{p, {{shimName(p, 'a'), shimName(p, 'b')}}});
        }
        for (const Position p : facts.layout->positions()) {
            if (p.cap != 3) {
                make(StackMoved{p, StackMove::putBack});
            }
            make(RecheckMade{p, Feel::drags, "SE-1"});
        }
        make(JudgedAgain{"main-clearance:main-3", "a few tenths at the most; the band leaves more"});
        trialFit();
        lift(StackMove::takenOff);
        round(2, false);
        drafts::closeUpTo(*this, facts, ClosingStep::panFastened, 20, "TW-2");
        make(SignedOff{"Built and measured as written here."});
    }

    SampleShape m_shape;
    std::string m_person;
    std::int64_t m_clock = 1'700'000'000'000;
};

} // namespace caprail
