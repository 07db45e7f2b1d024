// SPDX-License-Identifier: GPL-3.0-or-later
/// Of what the engine is made, whose figures it is judged by, and where entries came from or who signed them.
#include <ledger/entry_sentence.h>

#include <base/plain_text.h>

namespace caprail {

using Parts = EntryTeller::Parts;
using namespace sentence;

namespace {

void addTold(Parts& parts, const char* pattern, const std::string& what) {
    if (!what.empty()) {
        parts.push_back(Core::say(pattern, visibly(what)));
    }
}

} // namespace

Parts EntryTeller::operator()(const PartEntered& e) const {
    const std::string sort = capitalised(e.what.empty() ? shown(e.sort) : shown(e.sort) + ", " + visibly(e.what));
    Parts parts{e.place.empty() ? Core::say("Part: %1", sort) : Core::say("Part: %1, at %2", sort, e.place)};
    add(parts, e.maker);
    addTold(parts, Core::mark("part number %1"), e.number);
    addTold(parts, Core::mark("serial %1"), e.serial.value_or(""));
    addTold(parts, Core::mark("lot %1"), e.lot);
    addTold(parts, Core::mark("stamped %1"), e.stamped.value_or(""));
    if (e.isNew) {
        parts.push_back(*e.isNew ? Core::say("new") : Core::say("used"));
    }
    if (e.timesTightened) {
        parts.push_back(Core::say("tightened before: %1", *e.timesTightened));
    }
    addTold(parts, Core::mark("machined: %1"), e.machined.value_or(""));
    addTold(parts, Core::mark("by %1"), e.machinedBy.value_or(""));
    if (e.machinedOn) {
        parts.push_back(Core::say("on %1", format(*e.machinedOn)));
    }
    if (e.photo && !e.photo->empty()) {
        parts.push_back(Core::say("photo %1", e.photo->substr(0, 8)));
    }
    add(parts, e.note.value_or(""));
    return parts;
}

Parts EntryTeller::operator()(const ZeroChecked& e) const {
    Parts parts{Core::say("%1 tried on its standard: reads %2 on %3", e.instrument, text(e.reading), text(e.nominal))};
    add(parts, e.standard);
    if (e.temperature) {
        parts.push_back(text(*e.temperature));
    }
    return parts;
}

Parts EntryTeller::operator()(const ValueConfirmed& e) const {
    Parts parts{Core::say("Value %1 confirmed", e.value)};
    source(parts, e.source);
    return parts;
}

Parts EntryTeller::operator()(const BroughtIn& e) const {
    Parts parts{e.fileName.empty() ? Core::say("Brought in without seals: %1 entries", e.count)
                                   : Core::say("Brought in without seals: %1 entries of %2", e.count, visibly(e.fileName))};
    if (e.date) {
        parts.push_back(Core::say("on %1", format(*e.date)));
    }
    parts.push_back("SHA-256 " + visibly(e.sha256));
    return parts;
}

Parts EntryTeller::operator()(const SealSigned& e) const {
    Parts parts{Core::say("Signed with the key of %1: everything up to entry %2", visibly(e.keyName), e.signedEntry)};
    if (e.validFrom) {
        parts.push_back(Core::say("key valid from %1", format(*e.validFrom)));
    }
    if (e.validUntil) {
        parts.push_back(Core::say("key valid until %1", format(*e.validUntil)));
    }
    parts.push_back(Core::say("seal %1", visibly(e.signedSeal)));
    parts.push_back(Core::say("public key %1", visibly(e.publicKey)));
    parts.push_back(Core::say("signature %1", visibly(e.signature)));
    return parts;
}

} // namespace caprail
