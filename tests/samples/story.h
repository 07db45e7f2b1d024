// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// One engine's bench, told step by step: what is true of its parts is kept here, and what the record gets is what
/// instruments of honest limits read of it. Every entry is judged as the window judges it; a refusal ends the program with
/// its sentence.
#include <assessment/admission.h>
#include <map>
#include <set>
#include <string>

namespace caprail::samples {

class Story {
public:
    explicit Story(UtcTime begin);

    /// Adds an entry `seconds` after the one before it; by whoever works now.
    std::int64_t tell(Body body, int seconds = 25);
    void person(const std::string& name) { m_person = name; }
    [[nodiscard]] const Ledger& ledger() const { return m_ledger; }
    [[nodiscard]] const Assessment& assessment() const { return m_assessment; }
    [[nodiscard]] const Facts& facts() const { return m_facts; }

    void people();
    /// The lines of a template, with this bench's engine.
    void engine(const std::string& templateFile, const std::string& customer, const std::string& engine,
                const std::string& serial);
    /// What the rod bolt's maker says, which no template knows.
    void rodBolts();
    /// Its thickness, metal and windows, into the layout.
    void girdlePlate();
    /// The rear cap on bolts, the front four tied by the girdle, a pan rail of bolts and two studs; a second person verifies
    /// and signs off.
    void rearCapOnBolts();
    void instruments();
    /// Caps tight without the crank: bores; the crank on the bench: journals; the crank laid in, its caps at torque.
    void bottomEnd();
    void fits();
    /// One pass over some positions, with what goes and what does not.
    void gapPass(int pass, const std::vector<Position>& positions);
    void kit();
    /// Plans over the accepted gaps that have no stack, and builds what the plan says; each is bracketed.
    void stacks(const std::vector<Position>& positions);
    void recheck(Position);
    /// Turns the washer of a place, whose gap is read again.
    void washerTurned(Position);
    /// The crank turned before the girdle, the girdle's nuts brought to torque, every item, the crank turned again.
    void trialFit();
    void turning(TurningStage stage, double breakaway, double running);
    void pickup();
    /// What the engine is built from, the instruments tried on their standards, and whose figures some of the values are.
    void partsAndChecks();
    void stacksOff();
    void stacksOn();
    /// Main 4 right or whoever `moving` names turns by `angle`; all others hold.
    void round(std::int64_t number, const std::string& moving = {}, double degreesTurned = 0);
    void close();

    [[nodiscard]] std::vector<Position> positions() const { return m_facts.layout->positions(); }

private:
    void tighten(FastenerId f);
    static const char* wrenchFor(Torque torque);
    void journal(JournalId j);
    void bores(JournalId j);
    [[nodiscard]] Length truth(Position p) const { return m_gaps.at(p); }

    UtcTime m_time;
    std::string m_person = "Mira Solheim";
    Ledger m_ledger;
    Facts m_facts;
    Assessment m_assessment = assess(Facts{});
    std::map<Position, Length> m_gaps; ///< as they are; nobody knows them
};

} // namespace caprail::samples
