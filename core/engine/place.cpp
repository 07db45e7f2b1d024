// SPDX-License-Identifier: GPL-3.0-or-later
#include <engine/place.h>

#include <charconv>
#include <optional>
#include <base/say.h>

namespace caprail {

namespace {

char letter(Side side) { return side == Side::left ? 'L' : 'R'; }

/// Takes a number of at most three digits off the front.
std::optional<int> takeNumber(std::string_view& text) {
    int n = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + std::min<std::size_t>(text.size(), 3), n);
    if (error != std::errc() || n < 1) {
        return {};
    }
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return n;
}

bool takePrefix(std::string_view& text, std::string_view prefix) {
    if (!text.starts_with(prefix)) {
        return false;
    }
    text.remove_prefix(prefix.size());
    return true;
}

std::optional<Side> takeSide(std::string_view& text) {
    for (const std::string_view spelling : {" left", "L", "l"}) {
        if (takePrefix(text, spelling)) {
            return Side::left;
        }
    }
    for (const std::string_view spelling : {" right", "R", "r"}) {
        if (takePrefix(text, spelling)) {
            return Side::right;
        }
    }
    return {};
}

} // namespace

std::string code(Position p) { return std::to_string(p.cap) + letter(p.side); }

std::string describe(Position p) {
    return Core::say("cap %1 %2", p.cap, shown(p.side));
}

Result<Position> parsePosition(std::string_view text) {
    std::string_view rest = text;
    if (!takePrefix(rest, "cap ")) {
        takePrefix(rest, "C");
    }
    const auto cap = takeNumber(rest);
    const auto side = takeSide(rest);
    if (!cap || !side || !rest.empty()) {
        return refuse(Core::say("“%1” is not a position: write the cap and its side, for example 3R.", text));
    }
    return Position{*cap, *side};
}

std::string code(JournalId j) { return std::string(word(j.kind)) + "-" + std::to_string(j.number); }

std::string describe(JournalId j) {
    return Core::say("%1 %2", shown(j.kind), j.number);
}

Result<JournalId> parseJournal(std::string_view text) {
    std::string_view rest = text;
    for (const auto& [kind, name] : allWords<JournalKind>()) {
        if (takePrefix(rest, name) && (takePrefix(rest, "-") || takePrefix(rest, " "))) {
            if (const auto number = takeNumber(rest); number && rest.empty()) {
                return JournalId{kind, *number};
            }
            break;
        }
    }
    return refuse(Core::say("“%1” is not a journal: write main or rod and its number, for example main-3.", text));
}

std::string code(FastenerId f) {
    std::string text = std::string(word(f.kind)) + "-" + std::to_string(f.number);
    if (hasSides(f.kind)) {
        text += letter(f.side);
    }
    return f.ring == Ring::outer ? text + "-outer" : text;
}

std::string describe(FastenerId f) {
    static constexpr std::array<Word<FastenerKind>, 3> longer{{{FastenerKind::girdleNut, Core::mark("girdle nut")},
                                                               {FastenerKind::panRail, Core::mark("pan rail")},
                                                               {FastenerKind::front, Core::mark("front")}}};
    std::string_view name = word(f.kind);
    for (const auto& [kind, longName] : longer) {
        name = kind == f.kind ? longName : name;
    }
    std::string text = Core::say(name) + " " + std::to_string(f.number);
    if (hasSides(f.kind)) {
        text += " " + shown(f.side);
    }
    return f.ring == Ring::outer ? Core::say("%1 outer", text) : text;
}

Result<FastenerId> parseFastener(std::string_view text) {
    for (const auto& [kind, name] : allWords<FastenerKind>()) {
        std::string_view rest = text;
        if (!takePrefix(rest, name) || !takePrefix(rest, "-")) {
            continue;
        }
        FastenerId fastener{kind, 1, Side::left, Ring::inner};
        const auto number = takeNumber(rest);
        const auto side = takeSide(rest);
        if (kind == FastenerKind::mainCap && takePrefix(rest, "-outer")) {
            fastener.ring = Ring::outer;
        }
        if (!number || !rest.empty() || side.has_value() != hasSides(kind)) {
            break;
        }
        fastener.number = *number;
        fastener.side = side.value_or(Side::left);
        return fastener;
    }
    return refuse(Core::say(
        "“%1” is not a fastener: write its group, number and side, for example main-3R, rod-5L or pan-7.", text));
}

} // namespace caprail
