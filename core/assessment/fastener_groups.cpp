// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/fastener_groups.h>

#include <algorithm>
#include <base/say.h>
#include <fasteners/grade.h>

namespace caprail {

namespace {

constexpr Length usualStretchTolerance = thou(0.3);

/// "1 to 4, 7" of ascending numbers.
std::string runs(const std::vector<int>& numbers) {
    std::string text;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t last = i;
        while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) {
            ++last;
        }
        text += text.empty() ? "" : ", ";
        text += last > i + 1 ? Core::say("%1 to %2", numbers[i], numbers[last]) : std::to_string(numbers[i]);
        i = last > i + 1 ? last + 1 : i + 1;
    }
    return text;
}

} // namespace

std::vector<FastenerGroupSet> groupsOf(const Facts& facts, FastenerKind kind) {
    std::vector<FastenerGroupSet> list;
    for (const auto& [key, group] : facts.groups) {
        if (key.kind == kind) {
            list.push_back(group.what);
        }
    }
    return list;
}

Result<Thread> threadOf(const Facts& facts, FastenerId f) {
    const auto* group = facts.groupOf(f);
    return group != nullptr ? parseThread(group->what.thread)
                            : refuse(Core::say("Nothing is specified for %1.", describe(f)));
}

int rowCount(const std::vector<FastenerGroupSet>& groups, FastenerKind kind) {
    int count = 0;
    for (const FastenerGroupSet& group : groups) {
        if (group.group != kind || hasSides(kind)) {
            continue;
        }
        if (!group.places) {
            count = std::max(count, static_cast<int>(group.count));
            continue;
        }
        for (const std::string& place : group.places->names) {
            const auto fastener = parseFastener(place);
            count = fastener && fastener->kind == kind ? std::max(count, fastener->number) : count;
        }
    }
    return count;
}

int rowCount(const Facts& facts, FastenerKind kind) {
    return rowCount(groupsOf(facts, kind), kind);
}

std::vector<FastenerId> fastenersOf(const Facts& facts, FastenerKind kind) {
    if (!facts.layout) {
        return {};
    }
    switch (kind) {
    case FastenerKind::mainCap:
        return facts.layout->mainFasteners();
    case FastenerKind::rod:
        return facts.layout->rodFasteners();
    case FastenerKind::girdleNut:
        return facts.layout->girdleNuts();
    case FastenerKind::panRail:
    case FastenerKind::front:
    case FastenerKind::rear:
        break;
    }
    std::vector<FastenerId> row;
    for (int number = 1; number <= rowCount(facts, kind); ++number) {
        row.push_back({kind, number, Side::left, Ring::inner});
    }
    return row;
}

std::vector<FastenerId> membersOf(const Facts& facts, const GroupKey& key) {
    const auto group = facts.groups.find(key);
    std::vector<FastenerId> members = group == facts.groups.end() ? std::vector<FastenerId>() : fastenersOf(facts, key.kind);
    std::erase_if(members, [&](FastenerId f) { return facts.groupOf(f) != &group->second; });
    return members;
}

std::string describePlaces(const std::vector<FastenerId>& places) {
    if (places.empty()) {
        return {};
    }
    std::map<int, std::size_t> perNumber;
    for (const FastenerId f : places) {
        ++perNumber[f.number];
    }
    const auto isWhole = [&](const auto& one) {
        return !hasSides(places.front().kind) || (one.second == perNumber.begin()->second && one.second % 2 == 0);
    };
    if (!std::ranges::all_of(perNumber, isWhole)) {
        std::string text;
        for (const FastenerId f : places) {
            text += (text.empty() ? "" : ", ") + describe(f);
        }
        return text;
    }
    std::vector<int> numbers;
    for (const auto& [number, count] : perNumber) {
        numbers.push_back(number);
    }
    return shown(places.front().kind) + " " + runs(numbers);
}

FastenerPiece pieceOf(const FastenerGroupSet& group) {
    const bool isStud = group.group == FastenerKind::mainCap || group.group == FastenerKind::girdleNut;
    return group.piece.value_or(isStud ? FastenerPiece::stud : FastenerPiece::bolt);
}

FastenerPiece pieceOf(const Facts& facts, FastenerId f) {
    FastenerGroupSet unsaid;
    unsaid.group = f.kind;
    const auto* group = facts.groupOf(f);
    return pieceOf(group == nullptr ? unsaid : group->what);
}

VerifyMethod verifiedBy(const FastenerGroupSet& group) {
    switch (group.method) {
    case TighteningMethod::torque:
        return group.verifiedBy.value_or(VerifyMethod::torque);
    case TighteningMethod::stretch:
        return VerifyMethod::length;
    case TighteningMethod::torqueAndAngle:
    case TighteningMethod::toYield:
        break;
    }
    // By length only where a length is specified to hold it against.
    return group.verifiedBy == VerifyMethod::length && group.stretch ? VerifyMethod::length : VerifyMethod::witnessMark;
}

bool isSingleUse(const FastenerGroupSet& group) {
    return group.isSingleUse.value_or(group.method == TighteningMethod::toYield);
}

Length stretchTolerance(const FastenerGroupSet& group) {
    return group.stretchTolerance ? Length(group.stretchTolerance->value) : usualStretchTolerance;
}

std::optional<JointStiffness> jointStiffness(const FastenerGroupSet& group) {
    const auto thread = parseThread(group.thread);
    const auto material = findClampedMaterial(group.clamped.value_or(""));
    if (!group.grip || !thread || !material) {
        return {};
    }
    const auto length = [](const Rare<Entered<Length>>& l) { return l ? std::optional(l->value) : std::nullopt; };
    const auto grade = parseGrade(group.grade);
    const auto fastener =
        fastenerStiffness(*thread, {group.grip->value, length(group.shank), length(group.threadInGrip)},
                          grade ? grade->modulus() : steelModulus);
    const auto clamped = clampedStiffness(*thread, group.grip->value, material->modulus);
    return fastener && clamped ? std::optional(JointStiffness{*fastener, *clamped}) : std::nullopt;
}

bool isSpecified(const FastenerGroupSet& group) {
    return group.method == TighteningMethod::stretch ? group.stretch.has_value()
                                                     : group.torque && (!hasAngle(group.method) || group.angle);
}

bool asksForTheSame(const FastenerGroupSet& a, const FastenerGroupSet& b) {
    return a.thread == b.thread && a.lubricant == b.lubricant && a.method == b.method && a.torque == b.torque &&
           a.angle == b.angle && a.stretch == b.stretch && pieceOf(a) == pieceOf(b);
}

} // namespace caprail
