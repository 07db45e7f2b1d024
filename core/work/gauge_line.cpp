// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/gauge_line.h>

#include <algorithm>
#include <base/say.h>
#include <base/text.h>
#include <optional>

namespace caprail {

namespace {

constexpr std::size_t mostDigits = 15; // what a field takes
constexpr int mostAnything = 2;        // each is tried with every length of the line

/// A unit as gauges write it, in small letters, and as a field takes it.
struct GaugeUnit {
    std::string_view sent, typed;
};

/// Longer ones before those that they begin with.
constexpr GaugeUnit unitSpellings[] = {
    {"inches", "in"},     {"inch", "in"},       {"in-lb", "lbf·in"}, {"in.lb", "lbf·in"}, {"in lb", "lbf·in"}, {"inlb", "lbf·in"},
    {"in", "in"},         {"\"", "in"},         {"″", "in"},         {"mm", "mm"},        {"mils", "thou"},
    {"mil", "thou"},      {"thou", "thou"},     {"microns", "µm"},   {"micron", "µm"},    {"µm", "µm"},
    {"μm", "µm"},         {"um", "µm"},         {"n·m", "N·m"},      {"n-m", "N·m"},      {"n.m", "N·m"},
    {"nm", "N·m"},        {"lbf·ft", "lbf·ft"}, {"lbf-ft", "lbf·ft"}, {"lbf.ft", "lbf·ft"}, {"lbf ft", "lbf·ft"},
    {"lb-ft", "lbf·ft"},  {"lb.ft", "lbf·ft"},  {"lbft", "lbf·ft"},  {"ft-lbf", "lbf·ft"}, {"ft-lb", "lbf·ft"},
    {"ft.lb", "lbf·ft"},  {"ft lb", "lbf·ft"},  {"ftlb", "lbf·ft"},  {"lbf·in", "lbf·in"}, {"lbf-in", "lbf·in"},
    {"lbf.in", "lbf·in"}, {"lbf in", "lbf·in"}, {"lb-in", "lbf·in"}, {"lbin", "lbf·in"},  {"deg", "°"},
    {"°", "°"}};

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
bool isMark(char c) {
    return c == '.' || c == ',';
}
/// White space and control characters, of which gauges put some around their lines.
bool isNothing(char c) {
    return (static_cast<unsigned char>(c) <= ' ') || c == '\x7f';
}

std::string_view bare(std::string_view line) {
    while (!line.empty() && isNothing(line.front())) {
        line.remove_prefix(1);
    }
    while (!line.empty() && isNothing(line.back())) {
        line.remove_suffix(1);
    }
    return line;
}

void skipSpaces(std::string_view& text) {
    while (!text.empty() && isNothing(text.front())) {
        text.remove_prefix(1);
    }
}

enum class Fit { none, begins, whole };

/// A number as it is typed: its sign if it is a minus, its digits without zeros in front.
struct Number {
    std::string typed;
    bool isWhole = false; ///< else the text ended before it
};

/// Takes a number off the front; none where there is none, or one that no field takes.
std::optional<Number> takeNumber(std::string_view& text) {
    Number number;
    skipSpaces(text);
    const bool isNegative = text.starts_with('-') || text.starts_with("−");
    if (isNegative) {
        text.remove_prefix(text.front() == '-' ? 1 : std::string_view("−").size());
    } else if (text.starts_with('+')) {
        text.remove_prefix(1);
    }
    skipSpaces(text);
    std::string before, after;
    bool hasMark = false;
    for (; !text.empty() && (isDigit(text.front()) || (isMark(text.front()) && !hasMark)); text.remove_prefix(1)) {
        if (isMark(text.front())) {
            hasMark = true;
        } else {
            (hasMark ? after : before) += text.front();
        }
    }
    if (before.empty() && after.empty()) {
        return text.empty() ? std::optional(number) : std::nullopt;
    }
    if (before.size() + after.size() > mostDigits || (!text.empty() && isMark(text.front()))) {
        return {};
    }
    before.erase(0, std::min(before.find_first_not_of('0'), before.size()));
    number.typed = (isNegative ? "-" : "") + (before.empty() ? "0" : before) + (after.empty() ? "" : "." + after);
    number.isWhole = true;
    return number;
}

/// Takes a unit off the front; empty where none of ours stands there.
std::string_view takeUnit(std::string_view& text) {
    std::string_view rest = text;
    skipSpaces(rest);
    const std::string small = lowered(rest);
    for (const GaugeUnit& unit : unitSpellings) {
        if (small.starts_with(unit.sent) && (small.size() == unit.sent.size() || !isLetter(small[unit.sent.size()]))) {
            text = rest.substr(unit.sent.size());
            return unit.typed;
        }
    }
    return {};
}

bool beginsUnit(std::string_view text) {
    skipSpaces(text);
    const std::string small = lowered(text);
    return std::ranges::any_of(unitSpellings, [&](const GaugeUnit& unit) { return unit.sent.starts_with(small); });
}

struct Value {
    std::string number, unit;
};

/// Holds the rest of a line against the rest of a pattern; keeps the value of a fit. A * may stand for anything, so each
/// length of it is tried: lines are short.
Fit fit(std::string_view pattern, std::string_view text, Value& value);

Fit fitValue(std::string_view pattern, std::string_view text, Value& value) {
    const auto number = takeNumber(text);
    if (!number) {
        return Fit::none;
    }
    if (!number->isWhole) {
        return Fit::begins;
    }
    value = {number->typed, {}};
    std::string_view behindUnit = text;
    const std::string unit(takeUnit(behindUnit));
    Fit best = Fit::none;
    if (!unit.empty()) {
        best = fit(pattern, behindUnit, value);
        if (best == Fit::whole) {
            value.unit = unit;
            return best;
        }
    }
    best = std::max(best, fit(pattern, text, value));
    return best == Fit::none && beginsUnit(text) ? Fit::begins : best;
}

Fit fitAnything(std::string_view pattern, std::string_view text, Value& value) {
    for (std::size_t i = 0; i <= text.size(); ++i) {
        if (fit(pattern, text.substr(i), value) == Fit::whole) {
            return Fit::whole;
        }
    }
    return Fit::begins;
}

Fit fit(std::string_view pattern, std::string_view text, Value& value) {
    while (!pattern.empty()) {
        const char sign = pattern.front();
        if (sign == ' ') {
            skipSpaces(text);
        } else if (sign == '*') {
            return fitAnything(pattern.substr(1), text, value);
        } else if (sign == '#') {
            return fitValue(pattern.substr(1), text, value);
        } else if (text.empty()) {
            return Fit::begins;
        } else if (text.front() != sign) {
            return Fit::none;
        } else {
            text.remove_prefix(1);
        }
        pattern.remove_prefix(1);
    }
    return text.empty() ? Fit::whole : Fit::none;
}

} // namespace

const std::vector<std::string>& gaugeUnits() {
    static const std::vector<std::string> list{"in", "thou", "mm", "µm", "lbf·ft", "lbf·in", "N·m", "°"};
    return list;
}

Result<void> checkGaugeForm(const GaugeLineForm& form) {
    if (std::ranges::count(form.pattern, '#') != 1) {
        return refuse(Core::say("The pattern %1 must have one #, where the value stands in the gauge's line: # alone, or "
                                "01A# for a value behind the prefix 01A.",
                                quotedText(form.pattern)));
    }
    if (std::ranges::count(form.pattern, '*') > mostAnything) {
        return refuse(Core::say("The pattern %1 has more than %2 signs *: one stands for as much as there is.",
                                quotedText(form.pattern), mostAnything));
    }
    if (!form.unit.empty() && std::ranges::find(gaugeUnits(), form.unit) == gaugeUnits().end()) {
        return refuse(Core::say("%1 is no unit that a field takes: choose one from the list.", quotedText(form.unit)));
    }
    return {};
}

Result<std::string> readGaugeLine(std::string_view line, const GaugeLineForm& form) {
    Value value;
    if (fit(bare(form.pattern), bare(line), value) != Fit::whole) {
        return refuse(Core::say("%1 came from the gauge and does not fit its pattern %2: try the gauge under "
                                "Instruments ▸ Gauges on this computer.",
                                quotedText(line), quotedText(form.pattern)));
    }
    const std::string& unit = value.unit.empty() ? form.unit : value.unit;
    if (unit.empty()) {
        return refuse(Core::say("%1 came from the gauge without a unit: say which it is under Instruments ▸ Gauges on this "
                                "computer.",
                                quotedText(line)));
    }
    return value.number + " " + unit;
}

bool couldBeginGaugeLine(std::string_view text, const GaugeLineForm& form) {
    Value value;
    return fit(bare(form.pattern), bare(text), value) != Fit::none;
}

std::string patternOfLine(std::string_view line) {
    const std::string_view text = bare(line);
    std::string pattern = "#";
    std::size_t at = 0;
    while (at < text.size()) {
        std::string_view rest = text.substr(at);
        const bool mayBegin = !isNothing(text[at]); // what stands before it are the pattern's own spaces
        const auto number = mayBegin ? takeNumber(rest) : std::nullopt;
        if (number && number->isWhole) {
            takeUnit(rest);
            pattern = std::string(text.substr(0, at)) + "#" + std::string(rest);
            at = text.size() - rest.size();
        } else {
            ++at;
        }
    }
    // A sign of the pattern's own in the line stands for anything, since the pattern cannot name it.
    const std::size_t value = pattern.find_last_of('#');
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        if (pattern[i] == '#' && i != value) {
            pattern[i] = '*';
        }
    }
    return pattern;
}

} // namespace caprail
