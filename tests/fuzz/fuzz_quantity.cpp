// SPDX-License-Identifier: GPL-3.0-or-later
/// What people type into a field: refused with a sentence, or read; and what was read is read the same from what the
/// program writes for it.
#include "scratch_file.h"

#include <cstdint>
#include <units/parse.h>

namespace {

using namespace caprail;

template <class Q, class Parse, class Format>
void readBack(std::string_view text, const Units& units, Parse parse, Format write) {
    const Expected<Q> expected{"the value", {}, {}};
    const auto read = parse(text, units, expected);
    if (!read) {
        fuzz::require(!read.error().sentence.empty(), "a refusal without a sentence");
        return;
    }
    fuzz::require(!read->typed.empty(), "what was typed is not kept");
    (void)write(read->value, units);
    const auto again = parse(read->typed, units, expected);
    fuzz::require(again && again->value == read->value, "what was kept as typed reads as another value");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0) {
        return 0;
    }
    Units units;
    units.length = (data[0] & 1U) != 0 ? LengthUnit::millimetre : LengthUnit::inch;
    units.torque = (data[0] & 2U) != 0 ? TorqueUnit::newtonMetre : TorqueUnit::poundFoot;
    const std::string_view text(reinterpret_cast<const char*>(data + 1), size - 1);
    const auto any = [](auto value, const Units& in) { return format(value, in); };
    readBack<Length>(text, units, parseLength, any);
    readBack<Torque>(text, units, parseTorque, any);
    readBack<Angle>(text, units, parseAngle, any);
    readBack<Temperature>(text, units, parseTemperature, any);
    (void)parseCount(text, "the count", 0, 1'000);
    return 0;
}
