// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/expectations.h>

#include <algorithm>
#include <base/text.h>
#include <ledger/entries.h>

namespace caprail {

namespace {

struct LengthRange {
    std::string_view kind, field;
    Length smallest, largest;
};

constexpr LengthRange lengthRanges[] = {
    {GapReading::kind, "gap", thou(-20), thou(250)},
    {GapReading::kind, "does_not_go", thou(-20), thou(250)},
    {FeelAnswer::kind, "height", thou(-20), thou(20)},
    {InstrumentAdded::kind, "step", Length(), thou(50)},
    {ShimAdded::kind, "marked", thou(0.5), thou(250)},
    {ShimMeasured::kind, "thickness", thou(0.5), thou(250)},
    {JournalReading::kind, "diameter", inches(0.75), inches(8)},
    // A bore, or a clearance by gauging strip: the wider of the two; the station narrows it by method.
    {BoreReading::kind, "value", thou(0.2), inches(9)},
    {ShellMeasured::kind, "thickness", thou(30), thou(250)},
    {FitReading::kind, "value", thou(-10), inches(1)},
    {TrialFitResult::kind, "clearance", thou(0), inches(3)},
    {PickupReading::kind, "value", thou(0), inches(16)},
    {OwnCheckAnswered::kind, "value", inches(-1), inches(16)},
    {OwnCheckSet::kind, "lo", inches(-1), inches(16)},
    {OwnCheckSet::kind, "hi", inches(-1), inches(16)},
    {FastenerTightened::kind, "stretch", thou(0), thou(50)},
    {FastenerGroupSet::kind, "stretch", thou(0), thou(50)},
    {FastenerGroupSet::kind, "stretch_tolerance", thou(0), thou(5)},
    {FastenerGroupSet::kind, "grip", inches(0.25), inches(12)},
    {FastenerGroupSet::kind, "shank", inches(0.1), inches(2)},
    {FastenerGroupSet::kind, "thread_in_grip", inches(0), inches(12)},
    {RoundOutcome::kind, "stretch", thou(-5), thou(50)},
    {InstrumentAdded::kind, "limit_of_error", Length(), thou(10)},
    {ZeroChecked::kind, "nominal", Length(), inches(16)},
    {ZeroChecked::kind, "reading", inches(-1), inches(16)},
    {BandSet::kind, "lo", inches(-1), inches(16)},
    {BandSet::kind, "hi", inches(-1), inches(16)},
    {BandSet::kind, "target", inches(-1), inches(16)},
};

template <class Q>
Expected<Q> expected(std::string what, std::string_view fieldName, std::optional<Q> smallest,
                     std::optional<Q> largest) {
    if (what.empty()) {
        what = "“" + std::string(fieldName) + "”";
    }
    return {std::move(what), smallest, largest};
}

} // namespace

Expected<Length> expectedLength(std::string_view kind, std::string_view fieldName, std::string what) {
    for (const auto& range : lengthRanges) {
        if (range.kind == kind && range.field == fieldName) {
            return expected<Length>(std::move(what), fieldName, range.smallest, range.largest);
        }
    }
    return expected<Length>(std::move(what), fieldName, {}, {});
}

Result<Entered<Length>> readLength(std::string_view typed, const Units& units, std::string_view kind,
                                   std::string_view fieldName, std::string what) {
    const Expected<Length> expected = expectedLength(kind, fieldName, std::move(what));
    const std::string_view text = trimmed(typed);
    const std::string_view number = trimmed(text.substr(0, text.size() - (isInsisted(text) ? 1 : 0)));
    const std::size_t whole = std::min(number.find_first_not_of("0123456789"), number.size());
    const bool isBare = number.find_first_not_of("0123456789.,") == std::string_view::npos;
    const bool isFromTen = whole >= 2 && number.front() != '0';
    if (kind == GapReading::kind && units.length == LengthUnit::inch && isBare && isFromTen) {
        const std::string inThou = std::string(number) + " thou" + (isInsisted(text) ? "!" : "");
        if (const auto read = parseLength(inThou, units, expected)) {
            return Entered<Length>{read->value, std::string(text)};
        }
    }
    return parseLength(typed, units, expected);
}

Expected<Length> expectedPickupTerm(PickupTerm term, std::string what) {
    switch (term) {
    case PickupTerm::gasket:
        return {std::move(what), Length(), inches(0.25)};
    case PickupTerm::plate:
        return {std::move(what), Length(), inches(1)};
    case PickupTerm::panDepth:
    case PickupTerm::pickupDepth:
        break;
    }
    return {std::move(what), inches(1), inches(14)};
}

CountRange expectedCount(std::string_view kind, std::string_view fieldName) {
    struct Known {
        std::string_view kind, field;
        CountRange range;
    };
    static constexpr Known all[] = {
        {LayoutSet::kind, "caps", {3, 9}},          {LayoutSet::kind, "fasteners_per_cap", {2, 4}},
        {LayoutSet::kind, "tied_first", {1, 9}},    {LayoutSet::kind, "tied_last", {1, 9}},
        {LayoutSet::kind, "rods", {1, 16}},         {LayoutSet::kind, "throws", {1, 16}},
        {LayoutSet::kind, "pickup_cap", {1, 9}},    {LayoutSet::kind, "dipstick_cap", {1, 9}},
        {RulesSet::kind, "minimum_passes", {1, 20}}, {RulesSet::kind, "largest_stack", {0, 50}},
        {RulesSet::kind, "torque_scatter_percent", {0, 90}}, {FastenerGroupSet::kind, "steps", {1, 10}},
    };
    for (const Known& known : all) {
        if (known.kind == kind && known.field == fieldName) {
            return known.range;
        }
    }
    return {};
}

Expected<Torque> expectedTorque(std::string_view kind, std::string_view fieldName, std::string what) {
    if (kind == TurningTorqueRead::kind) {
        return expected<Torque>(std::move(what), fieldName, newtonMetres(0.1), newtonMetres(120));
    }
    return expected<Torque>(std::move(what), fieldName, newtonMetres(1), newtonMetres(1000));
}

Expected<Temperature> expectedTemperature(std::string_view, std::string_view fieldName, std::string what) {
    return expected<Temperature>(std::move(what), fieldName, celsius(-20), celsius(60));
}

Expected<Angle> expectedAngle(std::string_view kind, std::string_view fieldName, std::string what) {
    // A nut that turns further than a quarter in a verify round was not tight; one that is turned on may go a full
    // turn.
    const bool verified = kind == RoundOutcome::kind;
    return expected<Angle>(std::move(what), fieldName, degrees(0), verified ? degrees(90) : degrees(360));
}

} // namespace caprail
