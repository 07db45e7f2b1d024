// SPDX-License-Identifier: GPL-3.0-or-later
#include <units/band.h>
#include <units/format.h>
#include <base/say.h>

namespace caprail {

Result<Band> Band::between(Length lo, Length hi) {
    if (lo > hi) {
        return refuse(Core::say(
            "A band runs from its smaller to its larger end, but %1 is larger than %2: give the smaller one first.",
            format(lo, LengthUnit::inch), format(hi, LengthUnit::inch)));
    }
    return Band(lo, hi);
}

} // namespace caprail
