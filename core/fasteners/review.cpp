// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <fasteners/review.h>
#include <map>
#include <base/say.h>

namespace caprail {

namespace {

using Counts = std::map<std::string, MovementCount, std::less<>>;

void count(Counts& counts, const std::string& what, const OutcomeRow& row) {
    MovementCount& entry = counts[what.empty() ? Core::say("not named") : what];
    ++entry.pulled;
    if (row.moved) {
        ++entry.moved;
        entry.largest = std::max(entry.largest, row.angle.magnitude());
    }
}

/// moved/pulled of a is larger than that of b, compared without a division.
bool isLargerShare(const MovementCount& a, const MovementCount& b) {
    return a.moved * b.pulled > b.moved * a.pulled;
}

std::vector<MovementCount> ranked(Counts&& counts) {
    std::vector<MovementCount> rows;
    rows.reserve(counts.size());
    for (auto& [what, entry] : counts) {
        entry.what = what;
        rows.push_back(std::move(entry));
    }
    // Stable on top of the map's order, so that the name settles what is left.
    std::stable_sort(rows.begin(), rows.end(), [](const MovementCount& a, const MovementCount& b) {
        if (a.moved != b.moved) {
            return a.moved > b.moved;
        }
        if (isLargerShare(a, b) != isLargerShare(b, a)) {
            return isLargerShare(a, b);
        }
        return a.largest > b.largest;
    });
    return rows;
}

MovementTrend trendOf(const std::vector<RoundMovement>& rounds) {
    if (rounds.size() < 2) {
        return MovementTrend::tooFewRounds;
    }
    if (std::all_of(rounds.begin(), rounds.end(), [](const auto& round) { return round.moved == 0; })) {
        return MovementTrend::neverMoved;
    }
    const bool neverRises =
        std::is_sorted(rounds.begin(), rounds.end(), [](const auto& a, const auto& b) { return a.moved > b.moved; });
    return neverRises && rounds.back().moved < rounds.front().moved ? MovementTrend::diesDown
                                                                    : MovementTrend::doesNotDieDown;
}

std::string sentenceOf(const std::vector<RoundMovement>& rounds, MovementTrend trend) {
    if (rounds.empty()) {
        return Core::say("No round has been made yet.");
    }
    constexpr std::size_t mostListed = 12;
    const std::size_t from = rounds.size() > mostListed ? rounds.size() - mostListed : 0;
    std::string list = from > 0 ? "…, " : "";
    for (std::size_t i = from; i < rounds.size(); ++i) {
        list += (i > from ? ", " : "") + std::to_string(rounds[i].moved);
    }
    const std::string counts = Core::say("Movements per round: %1.", list) + " ";
    switch (trend) {
    case MovementTrend::tooFewRounds:
        return counts + Core::say("One round shows no trend.");
    case MovementTrend::neverMoved:
        return counts + Core::say("Nothing moved.");
    case MovementTrend::diesDown:
        return counts + Core::say("They are getting fewer.");
    case MovementTrend::doesNotDieDown:
        break;
    }
    return counts + Core::say("They are not getting fewer.");
}

} // namespace

double MovementCount::share() const {
    return pulled > 0 ? static_cast<double>(moved) / static_cast<double>(pulled) : 0.0;
}

MovementReview reviewMovement(std::span<const OutcomeRow> rows) {
    Counts fasteners;
    Counts caps;
    Counts wrenches;
    Counts persons;
    std::map<std::int64_t, RoundMovement> rounds;
    for (const OutcomeRow& row : rows) {
        count(fasteners, row.fastener, row);
        count(wrenches, row.wrench, row);
        count(persons, row.person, row);
        if (row.cap > 0) {
            count(caps, Core::say("cap %1", row.cap), row);
        }
        RoundMovement& round = rounds[row.round];
        round.round = row.round;
        ++round.pulled;
        if (row.moved) {
            ++round.moved;
            round.largest = std::max(round.largest, row.angle.magnitude());
            round.total += row.angle.magnitude();
        }
    }
    MovementReview review;
    review.fasteners = ranked(std::move(fasteners));
    review.caps = ranked(std::move(caps));
    review.wrenches = ranked(std::move(wrenches));
    review.persons = ranked(std::move(persons));
    for (auto& [number, round] : rounds) {
        review.rounds.push_back(round);
    }
    review.trend = trendOf(review.rounds);
    review.trendSentence = sentenceOf(review.rounds, review.trend);
    return review;
}

} // namespace caprail
