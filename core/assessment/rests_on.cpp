// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/rests_on.h>

#include <algorithm>
#include <ledger/band_names.h>
#include <base/say.h>

namespace caprail {

namespace {

using enum Topic;

// What rests on what. Read a row as: this check is stale once any of these changed after it was made.
// A stack carries the arithmetic (gap, thickness, band); the straightedge on it feels only the stack itself and what
// lies under it, so a shim measured anew leaves the recheck standing.
constexpr Topic gapRests[] = {capMovement, nutAndWasher, panRail};
constexpr Topic stackRests[] = {gap, capMovement, nutAndWasher, panRail, shimThickness, band};
constexpr Topic recheckRests[] = {stackAsBuilt, capMovement, nutAndWasher, panRail};
constexpr Topic flushnessRests[] = {layout, band};
constexpr Topic mainClearanceRests[] = {capTorque, groupValue, shells, crank, band};
constexpr Topic rodClearanceRests[] = {rodTorque, groupValue, shells, crank, band};
constexpr Topic fitRests[] = {crank, band};
constexpr Topic girdleWayRests[] = {plate};
constexpr Topic trialFitRests[] = {stackAsBuilt, capMovement, nutAndWasher, panRail, girdleWay, plate, crank, pickup};
constexpr Topic pickupRests[] = {pan, gasket, plate, pickup, band};
constexpr Topic fastenersRests[] = {groupValue};

constexpr RestsOnRow table[] = {
    {CheckKind::fastenersTightened, fastenersRests},
    {CheckKind::mainClearance, mainClearanceRests},
    {CheckKind::rodClearance, rodClearanceRests},
    {CheckKind::fit, fitRests},
    {CheckKind::gap, gapRests},
    {CheckKind::stack, stackRests},
    {CheckKind::recheck, recheckRests},
    {CheckKind::flushness, flushnessRests}, // and on every stack: see flushness in girdle_checks.cpp
    {CheckKind::girdleWay, girdleWayRests},
    {CheckKind::trialFit, trialFitRests}, // of every position
    {CheckKind::pickup, pickupRests},
    {CheckKind::verifyRound, {}}, // on its fasteners and the stacks being off: RoundFact::voidedBy
    {CheckKind::findings, {}},
};

std::string bandOf(const Check& check) {
    switch (check.kind) {
    case CheckKind::stack:
        return std::string(bands::residual);
    case CheckKind::flushness:
        return std::string(bands::twist);
    case CheckKind::mainClearance:
        return std::string(bands::mainClearance);
    case CheckKind::rodClearance:
        return std::string(bands::rodClearance);
    case CheckKind::pickup:
        return std::string(bands::pickupClearance);
    case CheckKind::fit:
        return std::get<FitPlace>(check.subject).first;
    default:
        return {};
    }
}

std::string groupOf(const Check& check) {
    if (const auto* kind = std::get_if<FastenerKind>(&check.subject)) {
        return std::string(word(*kind));
    }
    return std::string(word(check.kind == CheckKind::rodClearance ? FastenerKind::rod : FastenerKind::mainCap));
}

/// What a topic is about, for one check: the cap of its position, the shims of its stack, every position of a trial
/// fit.
std::vector<std::string> abouts(Topic topic, const Check& check, const Facts& facts) {
    std::vector<Position> positions;
    if (const auto* p = std::get_if<Position>(&check.subject)) {
        positions = {*p};
    } else if (facts.layout) {
        positions = facts.layout->positions();
    }
    std::vector<std::string> list;
    switch (topic) {
    case capMovement:
        for (const Position p : positions) {
            list.push_back(std::to_string(p.cap));
        }
        return list;
    case nutAndWasher:
    case gap:
    case stackAsBuilt:
        for (const Position p : positions) {
            list.push_back(code(p));
        }
        return list;
    case shimThickness:
        for (const Position p : positions) {
            if (const auto stack = facts.stacks.find(p); stack != facts.stacks.end()) {
                list.insert(list.end(), stack->second.shims.begin(), stack->second.shims.end());
            }
        }
        return list;
    case capTorque:
    case rodTorque:
        return {std::to_string(std::get<JournalId>(check.subject).number)};
    case shells:
        return {code(std::get<JournalId>(check.subject))};
    case band:
        return {bandOf(check)};
    case groupValue:
        return {groupOf(check)};
    default:
        return {std::string()};
    }
}

/// Changes that only arithmetic feels: a person may look at the numbers and let them stand.
constexpr bool isArithmetic(Topic topic) {
    return topic == band || topic == shimThickness || topic == gap;
}

/// The newest change, leaving out those that the judgement at entry `judgedAt` looked at.
Change newestChangeAfter(const Facts& facts, const Check& check, std::int64_t judgedAt) {
    const auto row = std::ranges::find(table, check.kind, &RestsOnRow::check);
    Change newest;
    for (const Topic topic : row->topics) {
        // A stack is arithmetic through and through: once its gap is good again, its numbers may be judged again.
        const bool mayBeJudged = isArithmetic(topic) || check.kind == CheckKind::stack;
        for (const auto& about : abouts(topic, check, facts)) {
            Change change = facts.changeOf(topic, about);
            if (change.entry > newest.entry && !(mayBeJudged && judgedAt > change.entry)) {
                newest = std::move(change);
            }
        }
    }
    return newest;
}

} // namespace

std::span<const RestsOnRow> restsOnTable() {
    return table;
}

Change newestChange(const Facts& facts, const Check& check) {
    const auto judged = facts.judgedAgain.find(check.code);
    return newestChangeAfter(facts, check, judged == facts.judgedAgain.end() ? 0 : judged->second);
}

bool canBeJudgedAgain(const Facts& facts, const Check& check) {
    return newestChangeAfter(facts, check, facts.lastEntry + 1).entry <= check.madeAt;
}

void applyStaleness(Check& check, const Facts& facts) {
    if (check.madeAt == 0) {
        return;
    }
    Change change = newestChange(facts, check);
    if (change.entry <= check.madeAt) {
        return;
    }
    check.state = CheckState::stale;
    check.sentence = Core::say("Entry %1: %2.", change.entry, change.what);
    check.staleBecause = std::move(change);
}

} // namespace caprail
