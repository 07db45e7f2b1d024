// SPDX-License-Identifier: GPL-3.0-or-later
#include <units/parse.h>

#include <algorithm>
#include <charconv>
#include <base/say.h>
#include <base/text.h>
#include <cmath>
#include <vector>

namespace caprail {

namespace {

/// digits × 10^-decimals × baseUnitsPerUnit / divisor, rounded half away from zero; exact wherever the result is whole.
std::int64_t scaled(const Decimal& number, long double baseUnitsPerUnit) {
    long double value = static_cast<long double>(number.digits) * baseUnitsPerUnit;
    for (int i = 0; i < number.decimals; ++i) {
        value /= 10.0L;
    }
    // Anything above is refused by its caller; the cut keeps the conversion defined.
    return static_cast<std::int64_t>(std::min(value, 1e15L) + 0.5L);
}

/// A spelling of a unit and its size in base units.
struct UnitSpelling {
    std::string_view text;
    long double size;
    long double offset = 0; ///< of its zero, in base units (temperature scales)
};

using Spellings = std::vector<UnitSpelling>;

const Spellings& lengthUnits() {
    // Longer spellings before those that they begin with.
    static const Spellings list{{"thousandths", 25'400}, {"thou", 25'400},   {"mil", 25'400},    {"inches", 25'400'000},
                                {"inch", 25'400'000},    {"in", 25'400'000}, {"\"", 25'400'000}, {"″", 25'400'000},
                                {"mm", 1'000'000},       {"µm", 1'000},      {"μm", 1'000},      {"um", 1'000},
                                {"microns", 1'000},      {"micron", 1'000},  {"cm", 10'000'000}};
    return list;
}

const Spellings& torqueUnits() {
    static constexpr long double foot = newtonMetresPerPoundFoot * 1'000.0L;
    static const Spellings list{
        {"lbf·ft", foot},     {"lbf-ft", foot},     {"lbf ft", foot},      {"lbft", foot},        {"lb-ft", foot},
        {"lb ft", foot},      {"ft-lbf", foot},     {"ft·lbf", foot},      {"ft lbf", foot},      {"ft-lb", foot},
        {"ft lb", foot},      {"ftlb", foot},       {"lbf·in", foot / 12}, {"lbf-in", foot / 12}, {"lbf in", foot / 12},
        {"lb-in", foot / 12}, {"lb in", foot / 12}, {"in-lbf", foot / 12}, {"in·lbf", foot / 12}, {"in lbf", foot / 12},
        {"in-lb", foot / 12}, {"in lb", foot / 12}, {"inlb", foot / 12},   {"N·m", 1'000},        {"N-m", 1'000},
        {"N m", 1'000},       {"Nm", 1'000},        {"nm", 1'000}};
    return list;
}

const Spellings& angleUnits() {
    static const Spellings list{{"degrees", 1'000}, {"degree", 1'000}, {"deg", 1'000}, {"°", 1'000}};
    return list;
}

const Spellings& forceUnits() {
    static const Spellings list{{"lbf", newtonsPerPoundForce * 1'000.0L},
                                {"lb", newtonsPerPoundForce * 1'000.0L},
                                {"kN", 1'000'000},
                                {"N", 1'000}};
    return list;
}

const Spellings& temperatureUnits() {
    // An offset of 32 °F at 0 °C; size of a degree in thousandths of a degree Celsius.
    static const Spellings list{
        {"°C", 1'000}, {"C", 1'000}, {"°F", 1'000 / 1.8L, -32 * 1'000 / 1.8L}, {"F", 1'000 / 1.8L, -32 * 1'000 / 1.8L}};
    return list;
}

const UnitSpelling* findUnit(const Spellings& units, std::string_view text) {
    for (const auto& unit : units) {
        if (unit.text == text) {
            return &unit;
        }
    }
    return nullptr;
}

/// What the text says before any field is asked: an amount, a common or mixed fraction, perhaps a sum.
struct Term {
    Decimal number;
    std::int64_t numerator = 0; ///< 0: no fraction
    std::int64_t denominator = 1;
    const UnitSpelling* unit = nullptr; ///< null: bare
};

/// One term: "57.5", "57.5 thou", "1/4", "2 1/4 in".
std::optional<Term> readTerm(std::string_view text, char mark, const Spellings& units) {
    Term term;
    const auto first = takeDecimal(text, mark);
    if (!first) {
        return {};
    }
    term.number = *first;
    std::string_view rest = trimmed(text);
    const auto fractionAfter = [&](std::int64_t numerator) {
        rest.remove_prefix(1);
        const auto below = takeDecimal(rest, mark);
        if (!below || below->hasMark || below->digits == 0 || below->digits > 1024) {
            return false;
        }
        term.numerator = numerator;
        term.denominator = below->digits;
        return true;
    };
    if (rest.starts_with('/')) {
        if (first->hasMark || !fractionAfter(first->digits)) {
            return {};
        }
        term.number = {};
    } else if (!rest.empty() && rest.front() >= '0' && rest.front() <= '9' && !first->hasMark &&
               rest.size() != text.size()) {
        const auto numerator = takeDecimal(rest, mark);
        if (!numerator || numerator->hasMark || !rest.starts_with('/') || !fractionAfter(numerator->digits)) {
            return {};
        }
    }
    rest = trimmed(rest);
    if (!rest.empty()) {
        term.unit = findUnit(units, rest);
        if (term.unit == nullptr) {
            return {};
        }
    }
    return term;
}

std::int64_t valueOf(const Term& term, long double size) {
    const std::int64_t whole = scaled(term.number, size);
    if (term.numerator == 0) {
        return whole;
    }
    // Held below what a whole number can hold, as in `scaled`; whoever asked then refuses it as too large.
    const long double part =
        static_cast<long double>(term.numerator) * size / static_cast<long double>(term.denominator);
    return whole + static_cast<std::int64_t>(std::min(part, 1e15L) + 0.5L);
}

struct Reading {
    std::vector<Term> terms;
    bool isNegative = false;
    bool isInsisted = false;            ///< a `!` behind it: the person says yes, really
    const UnitSpelling* unit = nullptr; ///< of the last term; it covers bare terms before it
};

Result<Reading> readTerms(std::string_view typed, const std::string& what, const Units& units,
                          const Spellings& spellings, const std::string& example) {
    std::string_view text = trimmed(typed);
    Reading reading;
    if (text.ends_with('!')) {
        reading.isInsisted = true;
        text = trimmed(text.substr(0, text.size() - 1));
    }
    if (text.empty()) {
        return refuse(Core::say("Nothing was typed for %1: type a value like %2.", what, example));
    }
    for (const std::string_view sign : {"-", "−"}) {
        if (text.starts_with(sign)) {
            reading.isNegative = true;
            text = trimmed(text.substr(sign.size()));
        }
    }
    if (text.starts_with('+')) {
        text = trimmed(text.substr(1));
    }
    if (units.decimalMark == '.' && text.find(',') != std::string_view::npos) {
        return refuse(Core::say("%1 has a comma, but the decimal mark here is a point: type %2 like %3.", quotedText(typed),
                                what, example));
    }
    if (text.find(',') != std::string_view::npos && text.find('.') != std::string_view::npos) {
        return refuse(Core::say("%1 has both a comma and a point, so %2 could be read in two ways: use one decimal "
                                "mark and no other separator.",
                                quotedText(typed), what));
    }
    std::size_t at = 0;
    while (at <= text.size()) {
        const std::size_t end = std::min(text.find('+', at), text.size());
        const auto term = readTerm(trimmed(text.substr(at, end - at)), units.decimalMark, spellings);
        if (!term) {
            return refuse(Core::say("%1 cannot be read as %2: type a value like %3.", quotedText(typed), what, example));
        }
        reading.terms.push_back(*term);
        at = end + 1;
        if (reading.terms.size() > 20) {
            return refuse(Core::say("The sum typed for %1 has more than 20 terms: type fewer, or their total.", what));
        }
    }
    reading.unit = reading.terms.back().unit;
    return reading;
}

template <class Q, class Format>
Result<Entered<Q>> withinExpected(std::int64_t base, const Reading& reading, std::string_view typed,
                                  const Expected<Q>& expected, Format show) {
    const Q value(reading.isNegative ? -base : base);
    const bool tooSmall = expected.smallest && value < *expected.smallest;
    const bool tooLarge = expected.largest && value > *expected.largest;
    if ((tooSmall || tooLarge) && !reading.isInsisted) {
        const std::string range = expected.smallest && expected.largest
                                      ? Core::say("%1 to %2", show(*expected.smallest), show(*expected.largest))
                                  : expected.smallest ? Core::say("at least %1", show(*expected.smallest))
                                                      : Core::say("at most %1", show(*expected.largest));
        return refuse(Core::say(
            "%1 was read as %2, but %3 is expected within %4: correct it, or type ! behind it if it is really so.",
            quotedText(trimmed(typed)), show(value), expected.what, range));
    }
    return Entered<Q>{value, std::string(trimmed(typed))};
}

std::int64_t sumOf(const Reading& reading, long double bareSize) {
    std::int64_t sum = 0;
    for (const Term& term : reading.terms) {
        sum += valueOf(term, term.unit ? term.unit->size : reading.unit ? reading.unit->size : bareSize);
    }
    return sum;
}

/// The largest amount that any field takes, in base units: beyond it nothing on an engine stand is meant.
constexpr std::int64_t beyondReason = 100'000'000'000;

template <class Q, class Format>
Result<Entered<Q>> readPlain(std::string_view text, const Units& units, const Expected<Q>& expected,
                             const Spellings& spellings, long double bareSize, const std::string& example,
                             Format show) {
    const auto reading = readTerms(text, expected.what, units, spellings, example);
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    if (reading->terms.size() > 1) {
        return refuse(
            Core::say("%1 is a sum, but %2 is one value: type it like %3.", quotedText(text), expected.what, example));
    }
    const std::int64_t base = sumOf(*reading, bareSize);
    if (base > beyondReason) {
        return refuse(
            Core::say("%1 is larger than anything on an engine stand: correct %2.", quotedText(text), expected.what));
    }
    return withinExpected<Q>(base, *reading, text, expected, show);
}

Result<void> refuseAmbiguousLength(const Reading& reading, std::string_view typed, const Units& units,
                                   const Expected<Length>& expected) {
    if (reading.unit != nullptr) {
        return {};
    }
    const bool inch = units.length == LengthUnit::inch;
    const Term& only = reading.terms.front();
    const bool isFraction = only.numerator != 0;
    if (!inch && isFraction) {
        return refuse(
            Core::say("%1 is a fraction without a unit, and %2 is in millimetres: type its unit, for example 1/4 in.",
                      quotedText(typed), expected.what));
    }
    if (reading.terms.size() == 1 && inch && !isFraction && !only.number.hasMark && only.number.digits != 0) {
        const Length asInches(scaled(only.number, 25'400'000.0L));
        const bool plausible =
            expected.largest && asInches <= *expected.largest && (!expected.smallest || asInches >= *expected.smallest);
        if (!plausible) {
            const std::string n = std::to_string(only.number.digits);
            return refuse(Core::say(
                "%1 could be %2 inches or %3 thousandths, and %4 is in inches: type %5 thou, %6 in, or the decimal.",
                quotedText(typed), n, n, expected.what, n, n));
        }
    }
    return {};
}

/// A value of the field's own size, as it would be typed: a journal is no gap. Of a field that holds large and small ones
/// the middle between them by their ratio.
std::string exampleFor(const Expected<Length>& expected, const Units& units) {
    const bool isLarge = expected.smallest && expected.largest && *expected.smallest > Length(2'540'000); // 0.1 in
    if (!isLarge) {
        return units.length == LengthUnit::inch ? Core::say("0.0575 or 57.5 thou") : "1.46 mm";
    }
    const double middle = std::sqrt(static_cast<double>(expected.smallest->value()) *
                                    static_cast<double>(expected.largest->value()));
    const std::int64_t step = units.length == LengthUnit::inch ? 1'270'000 : 1'000'000; // 0.05 in, 1 mm
    const auto steps = std::int64_t{std::llround(middle / static_cast<double>(step))};
    return format(Length(std::max<std::int64_t>(1, steps) * step), units);
}

} // namespace

Result<Entered<Length>> parseLength(std::string_view text, const Units& units, const Expected<Length>& expected) {
    const bool inch = units.length == LengthUnit::inch;
    const auto reading =
        readTerms(text, expected.what, units, lengthUnits(), exampleFor(expected, units));
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    if (auto clear = refuseAmbiguousLength(*reading, trimmed(text), units, expected); !clear) {
        return tl::unexpected(clear.error());
    }
    // Feeler leaves are marked in thousandths: a sum of bare numbers, none of them written as a decimal of an inch.
    bool leaves = inch && reading->terms.size() > 1 && reading->unit == nullptr;
    for (const Term& term : reading->terms) {
        leaves = leaves && term.unit == nullptr && term.numerator == 0 && term.number.digits != 0 &&
                 valueOf(term, 1.0L) >= 1;
    }
    const std::int64_t base = sumOf(*reading, inch ? (leaves ? 25'400.0L : 25'400'000.0L) : 1'000'000.0L);
    if (base > beyondReason || base < 0) {
        return refuse(
            Core::say("%1 is larger than anything on an engine stand: correct %2.", quotedText(text), expected.what));
    }
    return withinExpected<Length>(base, *reading, text, expected, [&](Length l) { return format(l, units); });
}

Result<Entered<Torque>> parseTorque(std::string_view text, const Units& units, const Expected<Torque>& expected) {
    const long double bare = units.torque == TorqueUnit::poundFoot   ? newtonMetresPerPoundFoot * 1'000.0L
                             : units.torque == TorqueUnit::poundInch ? newtonMetresPerPoundInch * 1'000.0L
                                                                     : 1'000.0L;
    return readPlain<Torque>(text, units, expected, torqueUnits(), bare, std::string("75 ") + symbol(units.torque),
                             [&](Torque t) { return format(t, units); });
}

Result<Entered<Force>> parseForce(std::string_view text, const Units& units, const Expected<Force>& expected) {
    const bool inch = units.length == LengthUnit::inch;
    return readPlain<Force>(text, units, expected, forceUnits(), inch ? newtonsPerPoundForce * 1'000.0L : 1'000'000.0L,
                            inch ? "40 lbf" : std::string("0") + units.decimalMark + "2 kN",
                            [&](Force f) { return format(f, units); });
}

Result<Entered<Angle>> parseAngle(std::string_view text, const Units& units, const Expected<Angle>& expected) {
    return readPlain<Angle>(text, units, expected, angleUnits(), 1'000.0L, "4.5°",
                            [&](Angle a) { return format(a, units); });
}

Result<Entered<Temperature>> parseTemperature(std::string_view text, const Units& units,
                                              const Expected<Temperature>& expected) {
    const auto reading = readTerms(text, expected.what, units, temperatureUnits(), "21 °C");
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    if (reading->terms.size() > 1) {
        return refuse(Core::say("%1 is a sum, but %2 is one value: type it like 21 °C.", quotedText(text), expected.what));
    }
    const UnitSpelling celsiusScale{"°C", 1'000};
    const UnitSpelling& unit = reading->unit ? *reading->unit : celsiusScale;
    const auto degreesUp = static_cast<long double>(valueOf(reading->terms.front(), unit.size));
    const long double base = (reading->isNegative ? -degreesUp : degreesUp) + unit.offset;
    Reading plain = *reading;
    plain.isNegative = false;
    if (base < -273'150.0L || base > 1e7L) {
        return refuse(
            Core::say("%1 cannot be the temperature of an engine: correct %2.", quotedText(text), expected.what));
    }
    return withinExpected<Temperature>(toNearest(static_cast<double>(base)), plain, text, expected,
                                       [&](Temperature t) { return format(t, units); });
}

namespace {

/// One way to read a typed text: its value and what its last digit is worth, in base units; 0: it is exact.
struct Meaning {
    long double value = 0;
    long double lastDigit = 0;
};

long double sizeOf(const Term& term, const Reading& reading, long double bareSize) {
    return term.unit ? term.unit->size : reading.unit ? reading.unit->size : bareSize;
}

/// Reads a text with each decimal mark and each size that a bare number may have had.
std::vector<Meaning> meanings(std::string_view typed, const Spellings& spellings,
                              std::initializer_list<UnitSpelling> bareUnits) {
    std::vector<Meaning> list;
    for (const char mark : {'.', ','}) {
        Units units;
        units.decimalMark = mark;
        const auto reading = readTerms(typed, {}, units, spellings, {});
        if (!reading) {
            continue;
        }
        for (const UnitSpelling& bare : bareUnits) {
            Meaning meaning;
            for (const Term& term : reading->terms) {
                const long double size = sizeOf(term, *reading, bare.size);
                meaning.value += static_cast<long double>(valueOf(term, size));
                long double digit = term.numerator == 0 ? size : 0;
                for (int i = 0; i < term.number.decimals; ++i) {
                    digit /= 10.0L;
                }
                meaning.lastDigit = std::max(meaning.lastDigit, digit);
            }
            meaning.value = (reading->isNegative ? -meaning.value : meaning.value) +
                            (reading->unit ? reading->unit->offset : bare.offset);
            list.push_back(meaning);
        }
    }
    return list;
}

/// The meaning that fits a stored value: nearer than half the last digit, or to one base unit where that is exact.
std::optional<Meaning> fitting(std::int64_t stored, const std::vector<Meaning>& all) {
    std::optional<Meaning> best;
    for (const Meaning& m : all) {
        const long double off = std::abs(m.value - static_cast<long double>(stored));
        if ((off <= 1 || off < m.lastDigit / 2) && (!best || m.lastDigit < best->lastDigit)) {
            best = m;
        }
    }
    return best;
}

std::vector<Meaning> lengthMeanings(std::string_view typed) {
    return meanings(typed, lengthUnits(), {{"in", 25'400'000}, {"thou", 25'400}, {"mm", 1'000'000}});
}

template <class Q> TypedFit fitOf(const Entered<Q>& entered, const std::vector<Meaning>& all) {
    if (entered.typed.empty() || fitting(entered.value.value(), all)) {
        return TypedFit::agrees;
    }
    return all.empty() ? TypedFit::unreadable : TypedFit::contradicts;
}

} // namespace

TypedFit fitOfTyped(const Entered<Length>& entered) {
    return fitOf(entered, lengthMeanings(entered.typed));
}

TypedFit fitOfTyped(const Entered<Torque>& entered) {
    constexpr long double foot = newtonMetresPerPoundFoot * 1'000.0L;
    return fitOf(entered, meanings(entered.typed, torqueUnits(), {{"", foot}, {"", foot / 12}, {"", 1'000}}));
}

TypedFit fitOfTyped(const Entered<Angle>& entered) {
    return fitOf(entered, meanings(entered.typed, angleUnits(), {{"", 1'000}}));
}

TypedFit fitOfTyped(const Entered<Temperature>& entered) {
    return fitOf(entered, meanings(entered.typed, temperatureUnits(), {{"", 1'000}}));
}

std::optional<Length> lastDigitOf(const Entered<Length>& entered) {
    const auto meaning = fitting(entered.value.value(), lengthMeanings(entered.typed));
    return meaning && meaning->lastDigit > 0
               ? std::optional(Length(static_cast<std::int64_t>(meaning->lastDigit + 0.5L)))
               : std::nullopt;
}

bool isInsisted(std::string_view typed) {
    return trimmed(typed).ends_with('!');
}

Result<std::int64_t> parseCount(std::string_view text, const std::string& what, std::int64_t smallest,
                                std::int64_t largest) {
    const std::string_view digits = trimmed(text);
    std::int64_t n = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), n);
    if (error != std::errc() || end != digits.data() + digits.size() || n < smallest || n > largest) {
        return refuse(Core::say("%1 cannot be %2: type a whole number from %3 to %4.", quotedText(text), what, smallest,
                                largest));
    }
    return n;
}

} // namespace caprail
