// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/feel_study.h>
#include <cmath>
#include <random>
#include <base/say.h>

namespace caprail {

namespace {

constexpr double rightly = 0.95;
constexpr double confidence = 0.95;

std::vector<Response> responsesOf(const std::map<std::int64_t, std::pair<std::size_t, std::size_t>>& counts) {
    std::vector<Response> list;
    for (const auto& [height, count] : counts) {
        list.push_back({static_cast<double>(height), count.first, count.second});
    }
    return list;
}

/// Heights that only rise, or only fall, tell the person what comes next.
bool isInOrder(const std::vector<Length>& heights) {
    return std::ranges::is_sorted(heights) || std::ranges::is_sorted(heights, std::ranges::greater());
}

std::optional<Length> stepOf(const std::vector<Response>& responses) {
    const auto dose = upperDose(responses, rightly, confidence);
    return dose && *dose > 0 ? std::optional(Length(static_cast<std::int64_t>(std::ceil(*dose)))) : std::nullopt;
}

std::optional<ProbitFit> fitOf(const std::vector<Response>& responses) {
    auto fit = probitFit(responses);
    return fit ? std::optional(*fit) : std::nullopt;
}

} // namespace

FeelConclusion concludeFeel(const FeelStudyFact& study, std::optional<std::int64_t> upTo) {
    FeelConclusion conclusion;
    std::map<std::int64_t, std::pair<std::size_t, std::size_t>> rocks; // height → answers, of them yes
    std::map<std::int64_t, std::pair<std::size_t, std::size_t>> loose;
    std::vector<Length> heights;
    for (const auto& answer : study.answers) {
        if (upTo && answer.entry > *upTo) {
            continue;
        }
        const std::int64_t height = answer.what.height.value.value();
        auto& proud = rocks[height];
        auto& low = loose[-height];
        ++proud.first;
        ++low.first;
        proud.second += answer.what.felt == Feel::rocks ? 1 : 0;
        low.second += answer.what.felt == Feel::loose ? 1 : 0;
        heights.push_back(answer.what.height.value);
        conclusion.last = answer.time;
    }
    conclusion.answers = heights.size();
    conclusion.rocks = responsesOf(rocks);
    conclusion.loose = responsesOf(loose);
    conclusion.rocksFit = fitOf(conclusion.rocks);
    conclusion.looseFit = fitOf(conclusion.loose);
    if (conclusion.answers < feelAnswersNeeded) {
        conclusion.missing = Core::say("%1 of %2 answers: go on.", conclusion.answers, feelAnswersNeeded);
    } else if (isInOrder(heights)) {
        conclusion.missing = Core::say("The steps came in order of height, so each could be guessed: try them again in "
                                       "random order.");
    } else {
        conclusion.deltaRocks = stepOf(conclusion.rocks);
        conclusion.deltaLoose = stepOf(conclusion.loose);
        if (conclusion.deltaRocks && conclusion.deltaLoose) {
            conclusion.delta = std::max(*conclusion.deltaRocks, *conclusion.deltaLoose);
        } else {
            conclusion.putsNoBound = true;
            conclusion.missing = Core::say("The answers put no bound to the step that is felt: try higher and lower "
                                           "steps, and more of them.");
        }
    }
    return conclusion;
}

namespace {

constexpr std::int64_t day = 86'400'000; // milliseconds

bool isWithinTheYear(UtcTime last, UtcTime now) {
    return now.milliseconds - last.milliseconds <= feelStudyDays * day;
}

} // namespace

std::optional<Length> feelLimitAt(const Facts& facts, const std::string& person, const std::string& straightedge,
                                  std::int64_t entry, UtcTime time) {
    std::optional<Length> newest;
    for (const auto& [number, study] : facts.feelStudies) {
        if (study.begun.what.whose != person || study.begun.what.straightedge != straightedge || straightedge.empty() ||
            study.begun.entry > entry) {
            continue;
        }
        const FeelConclusion conclusion = concludeFeel(study, entry);
        if (conclusion.putsNoBound) {
            newest.reset();
        } else if (conclusion.delta && isWithinTheYear(conclusion.last, time)) {
            newest = conclusion.delta;
        }
    }
    return newest;
}

bool FeelStanding::stands(UtcTime now) const {
    return conclusion.delta && isWithinTheYear(conclusion.last, now);
}

std::optional<Date> FeelStanding::due() const {
    return conclusion.delta ? std::optional(Date{dateOf(conclusion.last).days + feelStudyDays}) : std::nullopt;
}

std::vector<FeelStanding> feelStandings(const Facts& facts) {
    std::map<std::pair<std::string, std::string>, FeelStanding> standings;
    for (const auto& [number, study] : facts.feelStudies) {
        const FeelStudyBegun& begun = study.begun.what;
        FeelConclusion conclusion = concludeFeel(study);
        const bool counts = conclusion.delta || conclusion.putsNoBound;
        auto& standing = standings[{begun.whose, begun.straightedge}];
        const bool isCounted = standing.conclusion.delta || standing.conclusion.putsNoBound;
        if (counts || !isCounted) {
            standing = {begun.whose, begun.straightedge, number, std::move(conclusion)};
        }
    }
    std::vector<FeelStanding> list;
    list.reserve(standings.size());
    for (auto& [who, standing] : standings) {
        list.push_back(std::move(standing));
    }
    return list;
}

std::optional<FeelStanding> feelStandingOf(const Facts& facts, const std::string& person,
                                           const std::string& straightedge) {
    const auto all = feelStandings(facts);
    const auto at = std::ranges::find_if(
        all, [&](const FeelStanding& s) { return s.person == person && s.straightedge == straightedge; });
    return at == all.end() ? std::nullopt : std::optional(*at);
}

std::vector<Length> feelOrder(std::vector<Length> heights, std::size_t answers, std::uint32_t seed) {
    std::vector<Length> order;
    if (heights.empty()) {
        return order;
    }
    while (order.size() < answers) {
        order.insert(order.end(), heights.begin(), heights.end());
    }
    order.resize(std::max(answers, heights.size()));
    // Fisher–Yates by hand: the standard leaves open how std::shuffle draws, and the order must be the same everywhere.
    std::mt19937 random(seed);
    for (std::size_t i = order.size(); i > 1; --i) {
        std::swap(order[i - 1], order[random() % i]);
    }
    return order;
}

} // namespace caprail
