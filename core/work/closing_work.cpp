// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/closing_work.h>

#include <algorithm>
#include <assessment/work_order.h>
#include <base/say.h>
#include <base/text.h>
#include <ledger/expectations.h>
#include <work/tightening.h>

namespace caprail {

namespace {

using Kind = ClosingTask::Kind;

/// The first in the order of tightening that is still open.
std::optional<FastenerId> nextInOrder(const Facts& facts, ClosingStep step) {
    const auto all = fastenersToTighten(facts, step);
    const auto open = std::ranges::find(all, false, &std::pair<FastenerId, bool>::second);
    return open == all.end() ? std::nullopt : std::optional(open->first);
}

/// The first of the shop's own checks that hold closing, where nothing else does.
std::optional<OwnPlace> ownCheckThatHolds(const Assessment& assessment) {
    const auto& holding = assessment.gate(GateKind::closing).holding;
    const auto isOwn = [&](std::size_t i) { return assessment.checks[i].kind == CheckKind::ownCheck; };
    if (holding.empty() || !std::ranges::all_of(holding, isOwn)) {
        return {};
    }
    return std::get<OwnPlace>(assessment.checks[holding.front()].subject);
}

Result<Body> count(std::string_view typed) {
    const auto parts = partsOf(typed, {"+", ",", ";", "/"});
    const auto number = [&](std::size_t i) { return parts.size() == 3 ? wholeNumber(parts[i]) : std::nullopt; };
    const auto fitted = number(0);
    const auto aside = number(1);
    const auto leftOver = number(2);
    if (!fitted || !aside || !leftOver) {
        return refuse(Core::say("Type three counts as 29+1+16: shims in the stacks, set aside, left over."));
    }
    ClosingStepDone done{ClosingStep::shimsCounted, {}, ""};
    done.fitted = *fitted;
    done.aside = *aside;
    done.leftOver = *leftOver;
    return Body(done);
}

Result<Body> bead(const Facts& facts, std::string_view typed) {
    ClosingStepDone done{ClosingStep::beadLaid, {}, ""};
    const auto last = facts.closing.find(ClosingStep::beadLaid);
    if (typed.empty() && last != facts.closing.end()) {
        done.product = last->second.what.product;
        done.lot = last->second.what.lot;
        done.openMinutes = last->second.what.openMinutes;
        return Body(done);
    }
    const auto parts = partedBy(typed, "/");
    const auto minutes = parts.size() == 3 ? wholeNumber(parts[2]) : std::nullopt;
    if (!minutes) {
        return refuse(Core::say("Type product / lot / open time in minutes, as printed on the tube: Grey sealant / 2231-A "
                                "/ 15."));
    }
    done.product = std::string(parts[0]);
    done.lot = std::string(parts[1]);
    done.openMinutes = *minutes;
    return Body(done);
}

/// "V8 KL-2207", as far as it was said.
std::string engineText(const Facts& facts) {
    if (!facts.engine) {
        return Core::say("this engine");
    }
    const EngineDescribed& engine = facts.engine->what;
    return engine.serial.empty() ? engine.engine : engine.engine.empty() ? engine.serial : engine.engine + " " + engine.serial;
}

/// A name under a build is given by a word of its own: neither Enter alone nor a stray key signs.
Result<Body> signOff(const Facts& facts, std::string_view typed) {
    const std::string word = lowered(typed);
    if (word == "sign" || word == "signed") {
        return Body(SignedOff{Core::say("Assembled and checked as recorded.")});
    }
    if (typed.find(' ') == std::string_view::npos) {
        return refuse(Core::say("Type “sign” to sign off build %1 of %2 as assembled and checked, or a statement of your own.",
                                facts.build, engineText(facts)));
    }
    return Body(SignedOff{std::string(typed)});
}

Result<Body> fastener(const Facts& facts, FastenerId f, std::string_view typed, const std::string& instrument,
                      const Units& units) {
    return parseTightened(facts, f, typed, instrument, units).map([](FastenerTightened entry) {
        return Body(std::move(entry));
    });
}

} // namespace

std::vector<std::pair<Position, bool>> stacksToRefit(const Facts& facts) {
    std::vector<std::pair<Position, bool>> list;
    for (const Position p : facts.layout ? facts.layout->positions() : std::vector<Position>{}) {
        if (const auto stack = facts.stacks.find(p); stack != facts.stacks.end()) {
            list.emplace_back(p, stack->second.isOn);
        }
    }
    return list;
}

std::vector<std::pair<FastenerId, bool>> fastenersToTighten(const Facts& facts, ClosingStep step) {
    const auto all = fastenersOf(facts, step);
    std::vector<std::pair<FastenerId, bool>> list;
    for (const FastenerKind kind :
         {FastenerKind::girdleNut, FastenerKind::panRail, FastenerKind::front, FastenerKind::rear}) {
        for (const FastenerId f : tighteningOrder(facts, kind)) {
            if (std::ranges::find(all, f) != all.end()) {
                list.emplace_back(f, isTightForClosing(facts, step, f));
            }
        }
    }
    return list;
}

ClosingTask closingTask(const Facts& facts, const Assessment& assessment) {
    ClosingTask task;
    if (facts.isClosed()) {
        task.kind = Kind::closed;
        return task;
    }
    if (!assessment.gate(GateKind::closing).isOpen) {
        task.own = ownCheckThatHolds(assessment);
        task.kind = task.own ? Kind::own : Kind::locked;
        return task;
    }
    if (!assessment.nextClosingStep) {
        task.kind = Kind::sign;
        return task;
    }
    task.step = *assessment.nextClosingStep;
    if (const auto lack = lackOf(facts, task.step, Units{})) {
        task.stack = lack->stack;
        task.fastener = lack->fastener ? nextInOrder(facts, task.step) : std::nullopt;
        task.turning = lack->turning;
        task.own = lack->own;
        task.kind = task.stack      ? Kind::stack
                    : task.fastener ? Kind::fastener
                    : task.turning  ? Kind::turning
                    : task.own      ? Kind::own
                                    : Kind::locked;
        return task;
    }
    task.kind = task.step == ClosingStep::shimsCounted ? Kind::count
                : task.step == ClosingStep::beadLaid   ? Kind::bead
                                                       : Kind::tick;
    return task;
}

std::string photoPlaceOf(const OwnPlace& place) {
    return "own-check:" + place.check + ":" + std::to_string(place.place);
}

Result<TurningTorqueRead> parseTurning(std::string_view typed, TurningStage stage, const std::string& instrument,
                                       const Units& units) {
    const auto parts = partedBy(typed, "/");
    if (parts.size() != 2 || parts[0].empty() || parts[1].empty()) {
        return refuse(Core::say("Type two torques as 12 / 8: what starts the crank, and what keeps it turning."));
    }
    TurningTorqueRead read;
    read.stage = stage;
    read.instrument = instrument;
    const std::pair<Entered<Torque>*, std::string_view> both[] = {{&read.breakaway, "breakaway"},
                                                                  {&read.running, "running"}};
    for (std::size_t i = 0; i < 2; ++i) {
        auto torque = parseTorque(parts[i], units,
                                  expectedTorque(TurningTorqueRead::kind, both[i].second, Core::say("the turning torque")));
        if (!torque) {
            return tl::unexpected(torque.error());
        }
        *both[i].first = std::move(*torque);
    }
    return read;
}

Result<OwnCheckAnswered> parseOwnAnswer(const Facts& facts, const OwnPlace& place, std::string_view typed,
                                        const std::string& instrument, const Units& units) {
    OwnCheckAnswered answered;
    answered.ownCheck = place.check;
    answered.place = place.place;
    const auto* set = facts.ownCheckNamed(place.check);
    const OwnCheckSort sort = set == nullptr ? OwnCheckSort::yesNo : set->what.sort;
    if (sort == OwnCheckSort::measured) {
        auto value = parseLength(typed, units, expectedLength(OwnCheckAnswered::kind, "value", Core::say("the reading")));
        if (!value) {
            return tl::unexpected(value.error());
        }
        answered.value = std::move(*value);
        answered.instrument = instrument;
        return answered;
    }
    if (sort == OwnCheckSort::photo) {
        const auto photo = std::ranges::find(facts.attachments.rbegin(), facts.attachments.rend(), photoPlaceOf(place),
                                             [](const auto& one) { return one.what.place; });
        if (photo == facts.attachments.rend()) {
            return refuse(Core::say("Add the photo first, with “%1” as its place.", photoPlaceOf(place)));
        }
        answered.photo = photo->what.sha256;
        answered.note = std::string(trimmed(typed));
        return answered;
    }
    const auto [head, remark] = headAndRest(trimmed(typed));
    const std::string word = lowered(head);
    if (word != "y" && word != "yes" && word != "n" && word != "no") {
        return refuse(Core::say("“%1” is not an answer here: type y for yes, or n for no with what was seen.", typed));
    }
    answered.answer = word.front() == 'y' ? YesNo::yes : YesNo::no;
    answered.note = remark;
    return answered;
}

Result<Body> closingEntry(const Facts& facts, const ClosingTask& task, std::string_view given,
                          const std::string& instrument, const Units& units) {
    const std::string_view typed = trimmed(given);
    const auto asBody = [](auto entry) { return Body(std::move(entry)); };
    switch (task.kind) {
    case Kind::count:
        return count(typed);
    case Kind::bead:
        return bead(facts, typed);
    case Kind::fastener:
        return fastener(facts, *task.fastener, typed, instrument, units);
    case Kind::turning:
        return parseTurning(typed, *task.turning, instrument, units).map(asBody);
    case Kind::own:
        return parseOwnAnswer(facts, *task.own, typed, instrument, units).map(asBody);
    case Kind::stack:
        if (const auto label = typed.empty() ? Result<Position>(*task.stack) : parsePosition(typed);
            !label || *label != *task.stack) {
            return refuse(Core::say("The stack labelled %1 is next: press Enter when it is on.", code(*task.stack)));
        }
        return Body(StackMoved{*task.stack, StackMove::putBack});
    case Kind::tick:
        return Body(ClosingStepDone{task.step, {}, std::string(typed)});
    case Kind::sign:
        return signOff(facts, typed);
    case Kind::locked:
    case Kind::closed:
        break;
    }
    return refuse(Core::say("There is nothing to enter here now."));
}

} // namespace caprail
