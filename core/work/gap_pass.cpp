// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/gap_pass.h>

#include <algorithm>
#include <base/say.h>
#include <base/text.h>
#include <set>

namespace caprail {

namespace {

bool isReadIn(std::int64_t pass, Position p, const Assessment& assessment) {
    const auto gap = assessment.gaps.find(p);
    return gap != assessment.gaps.end() &&
           std::ranges::any_of(gap->second.current, [&](const auto& r) { return r.what.pass == pass; });
}

bool isGapGood(Position p, const Assessment& assessment) {
    const Check* check = assessment.find("gap:" + code(p));
    return check != nullptr && check->isGood();
}

/// What a pass still needs, in order, beginning behind `from`.
std::vector<Position> needed(const std::vector<Position>& order, Position from, std::int64_t pass,
                             const Assessment& assessment) {
    std::vector<Position> rotated = order;
    if (const auto at = std::ranges::find(rotated, from); at != rotated.end()) {
        std::rotate(rotated.begin(), at + 1, rotated.end());
    }
    std::erase_if(rotated, [&](Position p) { return isReadIn(pass, p, assessment); });
    return rotated;
}

} // namespace

std::vector<Position> passOrder(const EngineLayout& layout, PassOrder order) {
    std::vector<Position> places = layout.positions();
    if (order == PassOrder::sideBySide) {
        std::ranges::sort(places, [](Position a, Position b) {
            if (a.side != b.side) {
                return a.side == Side::left;
            }
            return a.side == Side::left ? a.cap < b.cap : a.cap > b.cap;
        });
    }
    return places;
}

Result<std::vector<Position>> parsePassOrder(std::string_view text, const EngineLayout& layout) {
    std::vector<Position> order;
    std::set<Position> seen;
    for (const std::string_view part : partsOf(text, {",", ";", "→", ">"})) {
        const auto position = parsePosition(part);
        if (!position) {
            return tl::unexpected(position.error());
        }
        if (!layout.has(*position)) {
            return refuse(
                Core::say("The girdle does not bear on %1 of this engine: leave it out.", describe(*position)));
        }
        if (!seen.insert(*position).second) {
            return refuse(Core::say("%1 is in the order twice: name each place once.", code(*position)));
        }
        order.push_back(*position);
    }
    for (const Position p : layout.positions()) {
        if (!seen.contains(p)) {
            return refuse(Core::say("%1 is missing from the order: name every place once.", code(p)));
        }
    }
    return order;
}

std::string passOrderText(const std::vector<Position>& order) {
    std::string text;
    for (const Position p : order) {
        text += (text.empty() ? "" : " ") + code(p);
    }
    return text;
}

PassStep nextInPass(const std::vector<Position>& order, Position from, std::int64_t pass, const Assessment& assessment,
                    bool asIfRead) {
    const bool someNotGood = std::ranges::any_of(order, [&](Position p) { return !isGapGood(p, assessment); });
    for (const std::int64_t number : {pass, pass + 1}) {
        std::vector<Position> places = needed(order, from, number, assessment);
        if (someNotGood) {
            std::erase_if(places, [&](Position p) { return isGapGood(p, assessment); });
        }
        if (number == pass && asIfRead) {
            std::erase(places, from);
        } else if (number != pass) {
            // A new pass begins at the head of the order, not behind the place where the last one ended.
            std::ranges::sort(places, {}, [&](Position p) { return std::ranges::find(order, p) - order.begin(); });
        }
        if (!places.empty()) {
            return {places.front(), number, places.size(), false};
        }
        if (!someNotGood) {
            break;
        }
    }
    return {from, pass, 0, true};
}

PassStep beginPass(const std::vector<Position>& order, const Assessment& assessment) {
    if (order.empty()) {
        return {};
    }
    const std::int64_t pass = std::max<std::int64_t>(1, assessment.survey.nextPass);
    if (std::ranges::all_of(order, [&](Position p) { return isGapGood(p, assessment); })) {
        return {order.front(), pass, 0, true};
    }
    return nextInPass(order, order.back(), pass, assessment);
}

} // namespace caprail
