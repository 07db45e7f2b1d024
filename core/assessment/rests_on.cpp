// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/rests_on.h>

#include <array>
#include <ledger/band_names.h>
#include <base/say.h>

namespace caprail {

namespace {

using enum Topic;

// What rests on what. Read a row as: this check is stale once any of these changed after it was made.
// A stack carries the arithmetic (gap, thickness, band); the straightedge on it feels only the stack itself and what
// lies under it, so a shim measured anew leaves the recheck standing.
constexpr Topic gapRests[] = {capMovement, nutAndWasher, panRail, crankLaid};
constexpr Topic stackRests[] = {gap, capMovement, nutAndWasher, panRail, crankLaid, shimThickness, band};
constexpr Topic recheckRests[] = {stackAsBuilt, capMovement, nutAndWasher, panRail, crankLaid};
constexpr Topic flushnessRests[] = {layout, band}; // and on every stack: see flushness_check.cpp
constexpr Topic clearanceRests[] = {torque, roundMovement, groupValue, shells, crank, band};
constexpr Topic formRests[] = {crank, band};
constexpr Topic fitRests[] = {crank, crankLaid, band};
constexpr Topic girdleWayRests[] = {plate};
constexpr Topic trialFitRests[] = {stackAsBuilt, capMovement, nutAndWasher, panRail,
                                   crankLaid,    girdleWay,   plate,        crank,   pickup, // of every position
                                   groupValue,   throwRoom};  // of the girdle's nuts; of the two turns alone
constexpr Topic freeTurningRests[] = {capMovement, roundMovement, crank, crankLaid};
constexpr Topic girdleTurningRests[] = {stackAsBuilt, capMovement, nutAndWasher, panRail,    crankLaid, girdleWay,
                                        plate,        crank,       pickup,       groupValue, throwRoom};
constexpr Topic pickupRests[] = {pan, gasket, plate, pickup, band};
constexpr Topic fastenersRests[] = {groupValue};

/// Of the kind as a whole; one check of it may rest on fewer.
constexpr std::span<const Topic> topicsOf(CheckKind kind) {
    switch (kind) {
    case CheckKind::fastenersTightened:
        return fastenersRests;
    case CheckKind::mainClearance:
    case CheckKind::rodClearance:
        return clearanceRests;
    case CheckKind::taper:
    case CheckKind::outOfRound:
        return formRests;
    case CheckKind::fit:
        return fitRests;
    case CheckKind::gap:
        return gapRests;
    case CheckKind::stack:
        return stackRests;
    case CheckKind::recheck:
        return recheckRests;
    case CheckKind::flushness:
        return flushnessRests;
    case CheckKind::girdleWay:
        return girdleWayRests;
    case CheckKind::trialFit:
        return trialFitRests;
    case CheckKind::pickup:
        return pickupRests;
    case CheckKind::turningTorque:
        return girdleTurningRests;
    case CheckKind::ownCheck: // on what it asks: see own_checks.cpp
    case CheckKind::verifyRound: // on its fasteners and the stacks being off: RoundFact::voidedBy
    case CheckKind::findings:
        break;
    }
    return {};
}

constexpr auto table = [] {
    std::array<RestsOnRow, WordsOf<CheckKind>::list.size()> rows{};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i] = {WordsOf<CheckKind>::list[i].value, topicsOf(WordsOf<CheckKind>::list[i].value)};
    }
    return rows;
}();

std::span<const Topic> topicsOf(const Check& check) {
    return check.subject == Subject(TurningStage::beforeGirdle) ? freeTurningRests : topicsOf(check.kind);
}

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
    case CheckKind::taper:
        return std::string(bands::journalTaper);
    case CheckKind::outOfRound:
        return std::string(bands::journalOutOfRound);
    case CheckKind::fit:
        return std::get<FitId>(check.subject).first;
    default:
        return {};
    }
}

/// The fasteners of a bearing, those that hold the girdle, or all of a kind.
std::vector<About> fastenersIn(const Check& check, const Facts& facts) {
    std::vector<About> list;
    const auto* kind = std::get_if<FastenerKind>(&check.subject);
    const auto* journal = std::get_if<JournalId>(&check.subject);
    if (!facts.layout) {
        return list;
    }
    if (check.kind == CheckKind::trialFit || check.kind == CheckKind::turningTorque) {
        std::ranges::copy(facts.layout->girdleNuts(), std::back_inserter(list));
        return list;
    }
    for (const FastenerId f : facts.layout->verifiedFasteners()) {
        const bool isOfJournal =
            journal != nullptr && f.number == journal->number &&
            f.kind == (journal->kind == JournalKind::main ? FastenerKind::mainCap : FastenerKind::rod);
        if (isOfJournal || (kind != nullptr && f.kind == *kind)) {
            list.emplace_back(f);
        }
    }
    return list;
}

/// A fit that is read with the crank in.
bool isReadOnTheCrank(const Check& check) {
    const auto* fit = std::get_if<FitId>(&check.subject);
    return fit == nullptr || fit->first == bands::crankEndPlay || fit->first == bands::rodSideClearance;
}

/// The bearings whose fasteners a check feels: its own, those under the girdle, or, for the crank turning free, all.
std::vector<About> bearingsOf(Topic topic, const Check& check, const Facts& facts) {
    std::vector<About> list;
    if (const auto* journal = std::get_if<JournalId>(&check.subject)) {
        list.emplace_back(*journal);
    } else if (facts.layout) {
        for (const JournalId j : facts.layout->mainJournals()) {
            list.emplace_back(j);
        }
        for (const JournalId j : topic == roundMovement ? facts.layout->rodJournals() : std::vector<JournalId>{}) {
            list.emplace_back(j);
        }
    }
    return list;
}

/// The two turns by hand, and the crank turned with the girdle on.
bool isTurned(const Check& check) {
    const auto* item = std::get_if<TrialId>(&check.subject);
    return check.kind == CheckKind::turningTorque || (item != nullptr && item->first == TrialItem::turnsFreely);
}

/// What a topic is about, for one check: the cap of its position, the shims of its stack, every position of a trial
/// fit.
std::vector<About> subjectsOf(Topic topic, const Check& check, const Facts& facts) {
    std::vector<Position> positions;
    if (const auto* p = std::get_if<Position>(&check.subject)) {
        positions = {*p};
    } else if (facts.layout) {
        positions = facts.layout->positions();
    }
    std::vector<About> list;
    switch (topic) {
    case capMovement:
        if (check.kind == CheckKind::turningTorque) {
            return bearingsOf(topic, check, facts);
        }
        for (const Position p : positions) {
            list.emplace_back(JournalId{JournalKind::main, p.cap});
        }
        return list;
    case nutAndWasher:
    case gap:
    case stackAsBuilt:
        list.assign(positions.begin(), positions.end());
        return list;
    case shimThickness:
        for (const Position p : positions) {
            if (const auto stack = facts.stacks.find(p); stack != facts.stacks.end()) {
                list.insert(list.end(), stack->second.shims.begin(), stack->second.shims.end());
            }
        }
        return list;
    case torque:
    case roundMovement:
    case shells:
        return bearingsOf(topic, check, facts);
    case throwRoom:
        return isTurned(check) ? std::vector<About>{About{}} : std::vector<About>{};
    case ownCheck:
        return {};
    case band:
        return {bandOf(check)};
    case groupValue:
        return fastenersIn(check, facts);
    case crankLaid:
        return isReadOnTheCrank(check) ? std::vector<About>{About{}} : std::vector<About>{};
    case panRail:
    case girdleWay:
    case crank:
    case pan:
    case gasket:
    case plate:
    case pickup:
    case layout:
        break;
    }
    return {About{}};
}

/// Changes that only arithmetic feels: a person may look at the numbers and let them stand.
constexpr bool isArithmetic(Topic topic) {
    return topic == band || topic == shimThickness || topic == gap;
}

/// The newest change, leaving out those that the judgement at entry `judgedAt` looked at.
Change newestChangeAfter(const Facts& facts, const Check& check, std::int64_t judgedAt) {
    Change newest;
    for (const Topic topic : topicsOf(check)) {
        // A stack is arithmetic through and through: once its gap is good again, its numbers may be judged again. A
        // bearing whose fastener moved cannot be measured with the crank in: a person answers for it.
        const bool mayBeJudged = isArithmetic(topic) || check.kind == CheckKind::stack || topic == roundMovement;
        for (const auto& about : subjectsOf(topic, check, facts)) {
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

bool isMovedOnly(const Facts& facts, const Check& check) {
    return std::holds_alternative<MovedInRound>(check.staleBecause.cause) && canBeJudgedAgain(facts, check) &&
           std::holds_alternative<JournalId>(check.subject);
}

void applyStaleness(Check& check, const Facts& facts, const Units& units) {
    if (check.madeAt == 0) {
        return;
    }
    Change change = newestChange(facts, check);
    if (change.entry <= check.madeAt) {
        return;
    }
    check.state = CheckState::stale;
    check.sentence = describe(change, units);
    check.staleBecause = std::move(change);
}

} // namespace caprail
