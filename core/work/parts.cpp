// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/parts.h>

#include <algorithm>
#include <base/say.h>
#include <set>

namespace caprail {

namespace {

/// What every place of a kind has one of.
std::set<PartSort> sortsAt(std::string_view place) {
    if (parsePosition(place)) {
        return {PartSort::mainStuds, PartSort::girdle, PartSort::shimKit};
    }
    if (const auto journal = parseJournal(place)) {
        return journal->kind == JournalKind::main ? std::set{PartSort::block, PartSort::crank, PartSort::mainShells}
                                                  : std::set{PartSort::rods, PartSort::crank, PartSort::rodShells};
    }
    if (const auto fastener = parseFastener(place)) {
        return fastener->kind == FastenerKind::mainCap ? std::set{PartSort::mainStuds}
               : fastener->kind == FastenerKind::rod   ? std::set{PartSort::rodBolts}
                                                       : std::set{PartSort::fasteners};
    }
    return {};
}

} // namespace

std::string describe(const PartEntered& part) {
    std::string words = shown(part.sort) + (part.what.empty() ? "" : " (" + visibly(part.what) + ")");
    const char* separator = ": ";
    const auto add = [&](const std::string& what) {
        if (!what.empty()) {
            words += separator + what;
            separator = ", ";
        }
    };
    add(visibly(part.maker + (part.maker.empty() || part.number.empty() ? "" : " ") + part.number));
    const auto addTold = [&](const char* pattern, const std::string& what) {
        add(what.empty() ? "" : Core::say(pattern, what));
    };
    addTold(Core::mark("serial %1"), part.serial.value_or(""));
    addTold(Core::mark("lot %1"), part.lot);
    addTold(Core::mark("stamped %1"), part.stamped.value_or(""));
    add(!part.isNew ? "" : *part.isNew ? Core::say("new") : Core::say("used"));
    return words;
}

std::vector<const Seen<PartEntered>*> partsAt(const Facts& facts, std::string_view place) {
    std::vector<const Seen<PartEntered>*> list;
    if (place.empty()) {
        return list;
    }
    const auto sorts = sortsAt(place);
    for (const auto& part : facts.parts) {
        if (part.what.place == place || (part.what.place.empty() && sorts.contains(part.what.sort))) {
            list.push_back(&part);
        }
    }
    return list;
}

std::string photoPlaceOf(const PartEntered& part) {
    return "part:" + std::string(word(part.sort)) + (part.what.empty() ? "" : ":" + part.what) +
           (part.place.empty() ? "" : ":" + part.place);
}

} // namespace caprail
