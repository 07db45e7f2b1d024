// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/group_split.h>

#include <algorithm>
#include <base/say.h>
#include <base/text.h>

namespace caprail {

std::vector<FastenerId> placesWith(const Facts& facts, FastenerId touched, SplitBy by) {
    std::vector<FastenerId> list = fastenersOf(facts, touched.kind);
    std::erase_if(list, [&](FastenerId f) {
        switch (by) {
        case SplitBy::place:
            return f != touched;
        case SplitBy::cap:
            return f.number != touched.number;
        case SplitBy::side:
            return f.side != touched.side;
        case SplitBy::ring:
            break;
        }
        return f.ring != touched.ring;
    });
    return list;
}

namespace {

NameList codesOf(const std::vector<FastenerId>& places) {
    NameList list;
    for (const FastenerId f : places) {
        list.names.push_back(code(f));
    }
    return list;
}

/// Of a sequence, the names that lie among these places, or outside them.
void keepSequence(FastenerGroupSet& group, const NameList& places, bool isAmong) {
    std::erase_if(group.sequence.names, [&](const std::string& name) {
        return (std::ranges::find(places.names, name) != places.names.end()) != isAmong;
    });
}

} // namespace

Result<std::vector<Body>> splitOff(const Facts& facts, const GroupKey& from, const std::string& name,
                                   const std::vector<FastenerId>& places) {
    const auto source = facts.groups.find(from);
    if (source == facts.groups.end()) {
        return refuse(Core::say("There is no such group to split: choose one in the list."));
    }
    const std::string plain = std::string(trimmed(name));
    if (plain.empty() || facts.groups.contains({from.kind, {}, plain})) {
        return refuse(Core::say("Give the new group a name that no other group of its kind has, as “rear cap”."));
    }
    std::vector<FastenerId> rest = membersOf(facts, from);
    const std::size_t all = rest.size();
    for (const FastenerId f : places) {
        if (std::erase(rest, f) == 0) {
            return refuse(Core::say("%1 is not of the group that is split: choose places of that group.", describe(f)));
        }
    }
    if (places.empty() || rest.empty()) {
        return refuse(Core::say("Choose some of the %1 places of the group, not none and not all.", all));
    }
    std::vector<Body> entries;
    const NameList chosen = codesOf(places);
    if (source->second.what.places) {
        FastenerGroupSet smaller = source->second.what;
        smaller.places = codesOf(rest);
        smaller.count = static_cast<std::int64_t>(rest.size());
        keepSequence(smaller, chosen, false);
        entries.emplace_back(std::move(smaller));
    }
    FastenerGroupSet group = source->second.what;
    group.ring.reset();
    group.name = plain;
    group.places = chosen;
    group.count = static_cast<std::int64_t>(places.size());
    keepSequence(group, chosen, true);
    entries.emplace_back(std::move(group));
    return entries;
}

Result<FastenerGroupSet> joinBack(const Facts& facts, const GroupKey& key) {
    const auto at = facts.groups.find(key);
    if (at == facts.groups.end() || !at->second.what.places || at->second.what.places->names.empty()) {
        return refuse(Core::say("Only a group that lists its places can be joined back to the wider one."));
    }
    FastenerGroupSet dissolved = at->second.what;
    dissolved.places = NameList{};
    dissolved.sequence = {};
    Facts without;
    without.groups = facts.groups;
    without.groups.at(key).what = dissolved;
    for (const FastenerId f : membersOf(facts, key)) {
        if (without.groupOf(f) == nullptr) {
            return refuse(Core::say("No wider group would speak for %1: set the group “%2” for all of its kind first.",
                                    describe(f), shown(key.kind)));
        }
    }
    return dissolved;
}

} // namespace caprail
