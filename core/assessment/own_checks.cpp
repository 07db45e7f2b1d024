// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/checks.h>
#include <assessment/measured_terms.h>
#include <assessment/own_check.h>
#include <assessment/rests_on.h>
#include <base/say.h>

namespace caprail {

namespace {

Entered<Length> ownValueOf(const OwnCheckAnswered& e) {
    return e.value.value_or(Entered<Length>{});
}

/// How readings of one such check repeat, from places that were read more than once.
Scatter ownScatter(const Facts& facts, const std::string& check) {
    ByPlace<std::int64_t> places;
    for (const auto& [place, answers] : facts.ownAnswers) {
        for (const auto& answer : answers) {
            if (place.check == check && answer.what.value) {
                places.add(place.place, answer.person, answer.what.value->value);
            }
        }
    }
    return places.scatter();
}

Standing measuredStanding(const Facts& facts, const OwnCheckSet& set, const Seen<OwnCheckAnswered>& last,
                             const Units& units) {
    const auto band = set.lo && set.hi ? Band::between(set.lo->value, set.hi->value) : Result<Band>(refuse(""));
    if (!last.what.value || !band) {
        return {CheckState::notProven, Core::say("There is no value, or no band to hold it against."),
                Core::say("Strike that answer, and measure it.")};
    }
    // The last reading alone is judged: what was read before a repair is no repeat of it.
    const std::span<const Seen<OwnCheckAnswered>> readings(&last, 1);
    const MeasuredTerm term =
        termOf(facts, Core::say("reading"), readings, ownValueOf, ownScatter(facts, set.ownCheck));
    const Uncertainty uncertainty(orNotKnown(budgetFor(std::span(&term, 1))), coverageOf(facts));
    const Length value = last.what.value->value;
    const std::string sentence = Core::say("%1 %2, %3", formatFine(value, units), describe(uncertainty, units),
                                           describeLimits(*band, units)) +
                                 ".";
    const auto verdict = judge(value, uncertainty, *band, facts.rules.decision);
    if (!verdict) {
        return {CheckState::notProven, sentence, remedyFor(uncertainty.missing().front())};
    }
    switch (*verdict) {
    case Verdict::in:
        return {CheckState::good, sentence, {}};
    case Verdict::out:
        return {CheckState::out, sentence, Core::say("Put it right, and measure it again.")};
    case Verdict::tooCloseToCall:
        break;
    }
    return {CheckState::tooCloseToCall, sentence, Core::say("Measure it with a better instrument, or put it right.")};
}

Standing answerStanding(const Facts& facts, const OwnCheckSet& set, const Seen<OwnCheckAnswered>& last,
                           const Units& units) {
    const std::string note = last.what.note.empty() ? std::string() : " " + last.what.note + ".";
    switch (set.sort) {
    case OwnCheckSort::measured:
        return measuredStanding(facts, set, last, units);
    case OwnCheckSort::photo: {
        const bool isThere = last.what.photo && std::ranges::any_of(facts.attachments, [&](const auto& one) {
                                 return one.what.sha256 == *last.what.photo;
                             });
        return isThere ? Standing{CheckState::good, Core::say("Photo taken.") + note, {}}
                       : Standing{CheckState::notProven, Core::say("Its photo is not in this record."),
                                     Core::say("Add the photo, and answer again.")};
    }
    case OwnCheckSort::yesNo:
        break;
    }
    return last.what.answer == YesNo::yes
               ? Standing{CheckState::good, Core::say("Yes.") + note, {}}
               : Standing{CheckState::out, Core::say("No.") + note, Core::say("Put it right, and answer again.")};
}

Station stationOf(OwnCheckHolds holds) {
    return holds == OwnCheckHolds::trialFit ? Station::trialFit : Station::closing;
}

} // namespace

Standing ownStandingOf(const Facts& facts, const OwnPlace& place, const Units& units) {
    const auto* set = facts.ownCheckNamed(place.check);
    const auto at = facts.ownAnswers.find(place);
    if (set == nullptr || at == facts.ownAnswers.end() || at->second.empty()) {
        const bool isPhoto = set != nullptr && set->what.sort == OwnCheckSort::photo;
        return {CheckState::notDone, {}, isPhoto ? Core::say("Take the photo.") : Core::say("Look, and answer.")};
    }
    const auto& last = at->second.back();
    const Change change = facts.changeOf(Topic::ownCheck, place.check);
    if (change.entry > last.entry) {
        return {CheckState::stale, describe(change, units), Core::say("Look again, and answer.")};
    }
    return answerStanding(facts, set->what, last, units);
}

std::string titleOf(const OwnCheckSet& set, std::int64_t place) {
    return set.places > 1 ? Core::say("%1, place %2", set.words, place) : set.words;
}

std::vector<OwnPlace> ownPlaces(const Facts& facts, OwnCheckHolds holds, std::optional<ClosingStep> step) {
    std::vector<OwnPlace> places;
    for (const auto& check : facts.ownChecks) {
        if (check.what.holds != holds || (step && check.what.step != step)) {
            continue;
        }
        for (std::int64_t place = 1; place <= check.what.places; ++place) {
            places.push_back({check.what.ownCheck, place});
        }
    }
    return places;
}

void ownChecks(const Assessing& a) {
    for (const auto& set : a.facts.ownChecks) {
        for (std::int64_t number = 1; number <= set.what.places; ++number) {
            const OwnPlace place{set.what.ownCheck, number};
            const std::string code = set.what.ownCheck + ":" + std::to_string(number);
            Check& check = a.add(CheckKind::ownCheck, place, code, titleOf(set.what, number),
                                 {stationOf(set.what.holds), "own-" + code});
            const Standing standing = ownStandingOf(a.facts, place, a.units);
            check.state = standing.state;
            check.sentence = standing.sentence;
            check.remedy = standing.remedy;
            if (const auto at = a.facts.ownAnswers.find(place); at != a.facts.ownAnswers.end() && !at->second.empty()) {
                rest(check, at->second.back().entry);
                if (check.state == CheckState::stale) {
                    check.staleBecause = a.facts.changeOf(Topic::ownCheck, set.what.ownCheck);
                }
            }
        }
    }
}

} // namespace caprail
