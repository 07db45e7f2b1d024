// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Invented records on disk for the tests of the shop, written in one transaction each so that hundreds are cheap.
#include "../../closing.h"

#include <assessment/admission.h>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <ledger/band_names.h>
#include <map>
#include <shop/template_note.h>
#include <store/sqlite/database.h>
#include <store/file/entry_rows.h>
#include <store/file/record_file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace caprail::shoptest {

inline constexpr UtcTime morning{1'777'887'000'000}; // 2026-05-04T09:30:00Z

/// A folder that goes away with the test.
class Folder {
public:
    Folder() {
        std::string name = (std::filesystem::temp_directory_path() / "caprail-shop-XXXXXX").string();
        m_path = std::filesystem::canonical(::mkdtemp(name.data()));
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() {
        std::error_code ignored;
        for (auto at = std::filesystem::recursive_directory_iterator(m_path, ignored);
             at != std::filesystem::recursive_directory_iterator(); at.increment(ignored)) {
            if (at->is_directory(ignored) && !at->is_symlink(ignored)) {
                std::filesystem::permissions(at->path(), std::filesystem::perms::owner_all, ignored);
            }
        }
        std::filesystem::remove_all(m_path, ignored);
    }
    [[nodiscard]] std::string operator/(const std::string& name) const { return m_path.string() + "/" + name; }
    [[nodiscard]] std::string path() const { return m_path.string(); }

private:
    std::filesystem::path m_path;
};

/// A ledger made entry by entry, judged like one typed in the window.
class Maker {
public:
    explicit Maker(std::string person = "Mira Solheim", UtcTime begin = morning)
        : m_person(std::move(person)), m_time(begin) {}

    std::int64_t make(Body body) {
        if (const auto ok = mayAppend(ledger, facts, assessment, m_person, body); !ok) {
            ADD_FAILURE() << kindOf(body).kind << ": " << ok.error().sentence;
            return 0;
        }
        const Entry& entry = ledger.append(m_time, m_person, std::move(body));
        m_time.milliseconds += 1000;
        if (entry.body.is<Struck>()) {
            facts = fold(ledger);
        } else {
            apply(facts, entry);
        }
        assessment = assess(facts);
        return entry.sequence;
    }
    void person(const std::string& name) {
        if (!facts.people.contains(name)) {
            make(PersonAdded{name, "assembler"});
        }
        m_person = name;
    }
    void at(UtcTime time) { m_time = time; }

    /// Whose engine, three mains, bands, groups and two instruments: what a template gives.
    void begin(const std::string& customer, const std::string& engine, const std::string& serial = "KL-1",
               const std::string& templateName = "Three mains") {
        make(PersonAdded{m_person, "assembler"});
        make(EngineDescribed{"Kestrel Lane", customer, engine, serial, ""});
        make(drafts::threeMains());
        RulesSet rules;
        rules.decision = DecisionRule::simple;
        make(rules);
        band(bands::residual, -0.5, 0.5);
        band(bands::mainClearance, 1.8, 2.5);
        band(bands::pickupClearance, 250, 375);
        group(FastenerKind::mainCap, 6, "7/16-20", 70);
        group(FastenerKind::rod, 4, "3/8-24", 45);
        drafts::specifyClosing(*this, 3);
        InstrumentAdded wrench = drafts::wrench();
        wrench.serial = "T-9";
        wrench.calibrated = Date{20'500}; // 2026-02-16
        make(wrench);
        make(InstrumentAdded{"MIC-1",
                             InstrumentType::micrometer,
                             "",
                             "",
                             Entered<Length>{microns(1), ""},
                             {},
                             {},
                             {},
                             Date{20'600},
                             {},
                             {}}); // due 2026-05-27
        make(drafts::instrument("BORE-1", InstrumentType::boreGauge, 0.4, "MIC-1"));
        make(drafts::instrument("LEAVES-1", InstrumentType::feelerGauge, 0.4));
        make(drafts::instrument("EDGE-1", InstrumentType::straightedge, 0.4));
        make(drafts::instrument("DEPTH-1", InstrumentType::depthGauge, 10));
        if (!templateName.empty()) {
            make(toNote({templateName, 2, ""}));
        }
    }
    void band(std::string_view name, double lo, double hi) { make(drafts::band(name, lo, hi)); }
    void group(FastenerKind kind, int count, const char* thread, double torque) {
        make(drafts::group(kind, count, thread, torque));
    }
    void tightenAll(double mains = 70) {
        for (const FastenerId f : facts.layout->verifiedFasteners()) {
            make(FastenerTightened{
                f, Entered<Torque>{poundFeet(f.kind == FastenerKind::rod ? 45 : mains), ""}, {}, {}, "W1"});
        }
    }
    /// With the caps at torque, as a bore is measured.
    void bearings(double journalInches = 2.4480, double boreInches = 2.4502) {
        drafts::tightenAsSpecified(*this, facts, facts.layout->mainFasteners());
        for (const JournalId j : facts.layout->mainJournals()) {
            for (int station = 1; station <= 2; ++station) {
                for (int direction = 1; direction <= 2; ++direction) {
                    make(JournalReading{j, station, direction, {inches(journalInches), ""}, "MIC-1"});
                }
                make(BoreReading{j, BoreMethod::boreWithShells, station, {inches(boreInches), ""}, "BORE-1"});
            }
            make(JournalReading{j, 1, 1, {inches(journalInches), ""}, "MIC-1"});
            make(BoreReading{j, BoreMethod::boreWithShells, 1, {inches(boreInches), ""}, "BORE-1"});
        }
    }
    void layIn() {
        if (!facts.isCrankIn()) {
            make(CrankLaidIn{});
        }
    }
    void survey(double gapThou = 50) {
        layIn();
        for (const Position p : facts.layout->positions()) {
            for (int pass = 1; pass <= 2; ++pass) {
                make(GapReading{p, pass, {thou(gapThou), ""}, "LEAVES-1", {}, "EDGE-1"});
            }
        }
    }
    void kit(double thicknessThou = 50, const std::string& prefix = "S-") {
        for (const Position p : facts.layout->positions()) {
            make(ShimAdded{prefix + code(p), {thou(thicknessThou), ""}, ""});
            make(ShimMeasured{prefix + code(p), {thou(thicknessThou), ""}, "MIC-1"});
            make(ShimMeasured{prefix + code(p), {thou(thicknessThou), ""}, "MIC-1"});
        }
    }
    void stacks(const std::string& prefix = "S-") {
        for (const Position p : facts.layout->positions()) {
            make(StackBuilt{p, {{prefix + code(p)}}});
        }
        for (const Position p : facts.layout->positions()) {
            make(RecheckMade{p, Feel::drags, "EDGE-1"});
        }
    }
    void trialFit() {
        make(GirdleWaySet{});
        drafts::passTrialFit(*this, facts);
        for (int pass = 0; pass < 2; ++pass) {
            make(PickupReading{PickupTerm::panDepth, {inches(7.5), ""}, "DEPTH-1"});
            make(PickupReading{PickupTerm::gasket, {thou(60), ""}, "MIC-1"});
            make(PickupReading{PickupTerm::plate, {thou(250), ""}, "MIC-1"});
            make(PickupReading{PickupTerm::pickupDepth, {inches(7.5), ""}, "DEPTH-1"});
        }
    }
    void liftStacks() {
        for (const Position p : facts.layout->positions()) {
            make(StackMoved{p, StackMove::takenOff});
        }
    }
    /// A verify round in which the named fasteners move by four degrees.
    void round(const std::vector<std::string>& moving = {}, const std::string& wrench = "W1") {
        layIn();
        make(RoundBegun{static_cast<std::int64_t>(facts.rounds.size()) + 1, wrench});
        for (const FastenerId f : facts.layout->verifiedFasteners()) {
            RoundOutcome o;
            o.round = facts.rounds.back().begun.what.round;
            o.fastener = f;
            o.instrument = wrench;
            o.torque = facts.groupOf(f)->what.torque;
            if (std::ranges::find(moving, code(f)) != moving.end()) {
                o.outcome = Outcome::moved;
                o.angle = Entered<Angle>{degrees(4), ""};
            }
            make(o);
        }
    }
    void close() {
        drafts::closeUpTo(*this, facts, ClosingStep::panFastened, 10);
        make(SignedOff{"ready to run"});
    }
    /// Everything up to the open closing gate.
    void readyToClose(double gapThou = 50) {
        tightenAll();
        bearings();
        survey(gapThou);
        kit(gapThou);
        stacks();
        trialFit();
        liftStacks();
        round();
    }

    Ledger ledger;
    Facts facts;
    Assessment assessment = assess(Facts{});

private:
    std::string m_person;
    UtcTime m_time;
};

/// Writes a ledger as a record file, in one transaction and without waiting for the disk.
inline void write(const std::string& path, const Ledger& ledger) {
    std::filesystem::create_directories(std::filesystem::path(path).parent_path());
    { ASSERT_TRUE(RecordFile::create(path)); }
    auto database = Database::open(path, Access::readWrite);
    ASSERT_TRUE(database);
    EntryWriter writer(**database);
    ASSERT_TRUE((*database)->run("PRAGMA synchronous = OFF; BEGIN"));
    for (const Entry& entry : ledger.entries()) {
        const auto done = writer.insert(entry, cellsOf(entry.body));
        ASSERT_TRUE(done) << done.error().sentence;
    }
    ASSERT_TRUE((*database)->run("COMMIT"));
}

/// A short record of some customer.
inline Ledger shortLedger(const std::string& customer, const std::string& engine, const std::string& note = {}) {
    Maker maker;
    maker.begin(customer, engine);
    if (!note.empty()) {
        maker.make(NoteAdded{"", note});
    }
    return maker.ledger;
}

inline std::string bytesOf(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// Everything that a look at a folder could change: names, sizes, times of change, and bytes.
inline std::map<std::string, std::string> traceOf(const std::string& folder) {
    std::map<std::string, std::string> trace;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        struct stat info {};
        ::lstat(entry.path().c_str(), &info);
        trace[entry.path().string()] =
            std::to_string(info.st_size) + " " + std::to_string(info.st_mtim.tv_sec) + "." +
            std::to_string(info.st_mtim.tv_nsec) + " " + std::to_string(info.st_ctim.tv_sec) + "." +
            std::to_string(info.st_ctim.tv_nsec) + " " + std::to_string(info.st_ino) + " " +
            (entry.is_regular_file() ? sha256Hex(bytesOf(entry.path().string())) : std::string());
    }
    return trace;
}

} // namespace caprail::shoptest
