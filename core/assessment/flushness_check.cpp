// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/checks.h>
#include <assessment/rests_on.h>
#include <ledger/band_names.h>
#include <shims/flushness.h>
#include <base/say.h>

namespace caprail {

namespace {

/// The fit over every position that has a residual.
void fitPlate(const Assessing& a, const std::vector<Position>& positions) {
    std::vector<HeightAt> heights;
    std::vector<Position> places;
    for (const Position p : positions) {
        const auto stack = a.out.stacks.find(p);
        if (stack != a.out.stacks.end() && stack->second.residual) {
            heights.push_back({a.facts.layout->at(p).x, p.side == Side::left ? -1 : 1, *stack->second.residual});
            places.push_back(p);
        }
    }
    const Flushness fit = flushnessOf(heights);
    FlushnessResult& result = a.out.flushness;
    result.isComplete = places.size() == positions.size();
    result.offset = fit.offset;
    result.pitch = fit.pitch;
    result.roll = fit.roll;
    result.twist = fit.twist;
    result.sentence = fit.sentence;
    for (std::size_t i = 0; i < places.size(); ++i) {
        result.localError[places[i]] = fit.localError[i];
    }
}

std::string inWords(const Assessing& a) {
    const FlushnessResult& f = a.out.flushness;
    std::string text;
    const auto add = [&](const char* name, const std::optional<double>& value) {
        if (value) {
            text +=
                (text.empty() ? "" : ", ") + std::string(name) + " " + formatSigned(Length(toNearest(*value)), a.units);
        }
    };
    add("offset", f.offset);
    add("pitch", f.pitch);
    add("roll", f.roll);
    add("twist", f.twist);
    return text;
}

} // namespace

void flushnessCheck(const Assessing& a) {
    if (!a.facts.layout) {
        return;
    }
    Check& check =
        a.add(CheckKind::flushness, {}, {}, Core::say("Flushness of the plate"), {Station::girdle, "flushness"});
    const auto positions = a.facts.layout->positions();
    fitPlate(a, positions);
    for (const Position p : positions) {
        const Check& stack = *a.out.find("stack:" + code(p));
        for (const std::int64_t entry : stack.restsOn) {
            rest(check, entry);
        }
        if (stack.state == CheckState::stale && check.staleBecause.entry < stack.staleBecause.entry) {
            check.staleBecause = stack.staleBecause;
        }
    }
    if (check.staleBecause.entry != 0) {
        check.state = CheckState::stale;
        check.sentence = Core::say("Entry %1: %2.", check.staleBecause.entry, check.staleBecause.what);
        check.remedy = Core::say("Put every stack right first.");
        return;
    }
    if (!a.out.flushness.isComplete) {
        check.sentence = Core::say("Not every position has a stack over an accepted gap.");
        check.remedy = Core::say("Build the missing stacks first.");
        return;
    }
    const BandFact* band = a.band(bands::twist);
    const std::optional<double> twist = a.out.flushness.twist;
    check.state = CheckState::good;
    check.sentence = inWords(a) + ". " + a.out.flushness.sentence;
    if (band != nullptr && twist && !band->band.contains(Length(toNearest(*twist)))) {
        check.state = CheckState::out;
        check.sentence = Core::say("Twist %1, band %2.", formatSigned(Length(toNearest(*twist)), a.units),
                                   format(band->band, a.units));
        check.remedy = Core::say("Plan the stacks for least twist.");
    }
    applyStaleness(check, a.facts);
    if (check.state == CheckState::stale) {
        check.remedy = Core::say("Look at the flushness, and judge it again.");
    }
}

} // namespace caprail
