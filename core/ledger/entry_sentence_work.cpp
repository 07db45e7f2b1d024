// SPDX-License-Identifier: GPL-3.0-or-later
/// What is tried, found, written down and closed.
#include <ledger/entry_sentence.h>

#include <base/plain_text.h>

namespace caprail {

using Parts = EntryTeller::Parts;
using namespace sentence;

namespace {

/// "Dipstick clear", of a throw where there are several.
std::string trialItem(const TrialFitResult& e) {
    const std::string item = capitalised(shown(e.item));
    return isPerThrow(e.item) ? Core::say("%1 at throw %2", item, e.throwNumber) : item;
}

std::string atPlace(const std::string& sentence, const std::string& place) {
    return place.empty() ? sentence : Core::say("%1 at %2", sentence, place);
}

} // namespace

Parts EntryTeller::operator()(const GirdleWaySet& e) const {
    return {Core::say("Girdle lies with its %1 up, the cutout to the %2 at the %3", shown(e.faceUp), shown(e.cutoutTowards),
                      shown(e.cutoutSide))};
}

Parts EntryTeller::operator()(const TrialFitResult& e) const {
    const std::string item = trialItem(e);
    Parts parts{e.clearance                        ? Core::say("%1: %2", item, text(*e.clearance))
                : e.result == TrialResult::fail ? Core::say("Not so: %1", item)
                                                : Core::say("%1: passed", item)};
    add(parts, e.note);
    return parts;
}

Parts EntryTeller::operator()(const PickupReading& e) const {
    Parts parts{Core::say("%1: %2", capitalised(shown(e.term)), text(e.value))};
    addStandard(parts, e.instrument, e.partTemperature);
    return parts;
}

Parts EntryTeller::operator()(const TurningTorqueRead& e) const {
    Parts parts{Core::say("Crank turns, %1: %2 to start it, %3 to keep it turning", shown(e.stage), text(e.breakaway),
                          text(e.running))};
    with(parts, e.instrument);
    return parts;
}

Parts EntryTeller::operator()(const OwnCheckAnswered& e) const {
    const std::string answer = e.value ? text(*e.value) : e.answer ? shown(*e.answer) : Core::say("see its photo");
    Parts parts{Core::say("Own check “%1” at place %2: %3", e.ownCheck, e.place, answer)};
    with(parts, e.instrument);
    if (e.photo && !e.photo->empty()) {
        parts.push_back(Core::say("photo %1", e.photo->substr(0, 8)));
    }
    add(parts, e.note);
    return parts;
}

Parts EntryTeller::operator()(const FindingOpened& e) const {
    return {atPlace(Core::say("Finding %1 opened", e.finding), e.place) + ": " + visibly(e.text)};
}

Parts EntryTeller::operator()(const FindingSettled& e) const {
    return {Core::say("Finding %1 settled: %2", e.finding, e.done)};
}

Parts EntryTeller::operator()(const NoteAdded& e) const {
    return {atPlace(Core::say("Noted"), e.place) + ": " + visibly(e.text)};
}

Parts EntryTeller::operator()(const AttachmentAdded& e) const {
    Parts parts{atPlace(Core::say("Photo or file %1 added", e.fileName), e.place)};
    add(parts, e.caption);
    if (e.taken) {
        parts.push_back(Core::say("taken %1 by the camera's clock", shown(*e.taken)));
    }
    add(parts, e.mediaType);
    parts.push_back(Core::say("%1 bytes", e.size));
    parts.push_back("SHA-256 " + visibly(e.sha256));
    if (e.originalSha256 != e.sha256 && !e.originalSha256.empty()) {
        parts.push_back(Core::say("before it was scaled %1", e.originalSha256));
    }
    return parts;
}

Parts EntryTeller::operator()(const ClosingStepDone& e) const {
    Parts parts{Core::say("Closing: %1", shown(e.step))};
    if (e.product) {
        add(parts, *e.product);
    }
    if (e.lot && !e.lot->empty()) {
        parts.push_back(Core::say("lot %1", *e.lot));
    }
    if (e.openMinutes) {
        parts.push_back(Core::say("open for %1 min", *e.openMinutes));
    }
    if (e.fitted || e.aside || e.leftOver) {
        parts.push_back(Core::say("%1 in the stacks, %2 set aside, %3 left over", e.fitted.value_or(0), e.aside.value_or(0),
                                  e.leftOver.value_or(0)));
    }
    add(parts, e.note);
    return parts;
}

Parts EntryTeller::operator()(const SignedOff& e) const {
    return {Core::say("Signed off: %1", e.statement)};
}

Parts EntryTeller::operator()(const BuildBegun& e) const {
    Parts parts{Core::say("Build %1 begun", e.build)};
    add(parts, e.why);
    return parts;
}

Parts EntryTeller::operator()(const Struck& e) const {
    return {Core::say("Entry %1 struck: %2", e.entry, e.why)};
}

Parts EntryTeller::operator()(const Salvaged& e) const {
    Parts parts{Core::say("Salvaged from %1", e.fileName)};
    parts.push_back(Core::say("%1 bytes", e.size));
    parts.push_back("SHA-256 " + visibly(e.sha256));
    parts.push_back(e.lastSeal.empty() ? Core::say("no seal could be read") : Core::say("last seal %1", e.lastSeal));
    if (!e.unsealed.names.empty()) {
        parts.push_back(Core::say("seals that did not fit: %1", stackText(e.unsealed)));
    }
    if (!e.lost.names.empty()) {
        parts.push_back(Core::say("lost: %1", stackText(e.lost)));
    }
    return parts;
}

} // namespace caprail
