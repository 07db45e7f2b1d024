// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Invented surveys, bearings and verify rounds for the tests of the charts.
#include <assessment/assessment.h>
#include <ledger/band_names.h>

namespace caprail {

inline UtcTime timeOf(std::int64_t entry) {
    return {1'777'900'000'000 + entry * 60'000};
}

inline Seen<GapReading> gapReading(std::int64_t entry, Position position, std::int64_t pass, Length gap) {
    GapReading reading;
    reading.position = position;
    reading.pass = pass;
    reading.gap = {gap, {}};
    reading.instrument = "FG-2";
    return {entry, timeOf(entry), "A. Ames", reading};
}

/// Two passes over both sides of so many caps; gaps from 39 to 75 thou. Cap 1 left was read once before it moved,
/// and so was the last cap's right.
inline Assessment surveyOf(int caps) {
    Assessment assessment;
    std::int64_t entry = 0;
    for (int cap = 1; cap <= caps; ++cap) {
        for (const Side side : {Side::left, Side::right}) {
            const Position position{cap, side};
            const int i = 2 * (cap - 1) + (side == Side::right ? 1 : 0);
            const double middle = i == 0 ? 39 : (i == 3 ? 75 : 44 + (i * 17) % 29);
            GapResult& gap = assessment.gaps[position];
            if (i == 0 || i == 2 * caps - 1) {
                gap.outdated.push_back(gapReading(++entry, position, 1, thou(middle - 1.5)));
            }
            gap.current.push_back(gapReading(++entry, position, 1, thou(middle - 0.3)));
            gap.current.push_back(gapReading(++entry, position, 2, thou(middle + 0.3)));
            gap.accepted = gap.last = thou(middle);
        }
    }
    assessment.survey.positions = assessment.survey.accepted = assessment.gaps.size();
    assessment.survey.smallest = thou(39);
    assessment.survey.largest = thou(75);
    assessment.survey.spread = thou(36);
    return assessment;
}

struct BearingData {
    Facts facts;
    Assessment assessment;
};

/// Bearings around their bands; the last rod has no bore yet.
inline BearingData bearingsOf(int mains, int rods) {
    BearingData data;
    const auto band = [&](std::string_view name, double lo, double hi, double target) {
        data.facts.bands[std::string(name)] = {*Band::between(thou(lo), thou(hi)), thou(target), "invented", 1};
    };
    band(bands::mainClearance, 2.0, 2.7, 2.4);
    band(bands::rodClearance, 1.8, 2.4, 2.1);
    const auto add = [&](JournalId journal, double clearance, CheckState state) {
        ClearanceResult result;
        result.clearance = thou(clearance);
        result.smallest = thou(clearance - 0.12);
        result.largest = thou(clearance + 0.16);
        result.uncertaintySmallest = result.uncertaintyLargest = Uncertainty(Uncertainty::Known{2'540, 1'270, 2, {}});
        data.assessment.clearances[journal] = result;
        Check check;
        check.kind = journal.kind == JournalKind::main ? CheckKind::mainClearance : CheckKind::rodClearance;
        check.code = std::string(word(check.kind)) + ":" + code(journal);
        check.state = state;
        data.assessment.checks.push_back(check);
    };
    constexpr CheckState states[] = {CheckState::good, CheckState::good, CheckState::stale, CheckState::tooCloseToCall,
                                     CheckState::out};
    for (int i = 1; i <= mains; ++i) {
        const CheckState state = states[(i - 1) % 5];
        add({JournalKind::main, i},
            state == CheckState::out ? 2.95 : (state == CheckState::good ? 2.3 + 0.05 * i : 2.65), state);
    }
    for (int i = 1; i <= rods; ++i) {
        add({JournalKind::rod, i}, 2.0 + 0.03 * (i % 5), CheckState::good);
    }
    data.assessment.clearances[{JournalKind::rod, rods}] = {};
    return data;
}

/// Rounds over the first so many main and rod fasteners: in the first round the second and the ninth moved.
inline Facts roundsOf(int rounds, int fasteners) {
    Facts facts;
    std::int64_t entry = 0;
    for (int round = 1; round <= rounds; ++round) {
        RoundFact fact;
        fact.begun = {++entry, timeOf(entry), "A. Ames", {round, "TW-1"}};
        for (int i = 0; i < fasteners; ++i) {
            const bool isRod = i >= 36;
            const int number = (isRod ? i - 36 : i) / 2 + 1;
            const FastenerId id{isRod ? FastenerKind::rod : FastenerKind::mainCap, number,
                                i % 2 == 0 ? Side::left : Side::right, Ring::inner};
            RoundOutcome outcome;
            outcome.round = round;
            outcome.fastener = id;
            outcome.torque = Entered<Torque>{poundFeet(75), "75"};
            outcome.instrument = "TW-1";
            if (round == 1 && (i == 1 || i == 8)) {
                outcome.outcome = Outcome::moved;
                outcome.angle = Entered<Angle>{degrees(i == 1 ? 4.0 : 2.5), {}};
            }
            ++entry;
            fact.outcomes[id] = {entry, timeOf(entry), "A. Ames", outcome};
        }
        facts.rounds.push_back(std::move(fact));
    }
    return facts;
}

} // namespace caprail
