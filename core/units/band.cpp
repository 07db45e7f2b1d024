// SPDX-License-Identifier: GPL-3.0-or-later
#include <units/band.h>
#include <units/format.h>

namespace caprail {

Result<Band> Band::between(Length lo, Length hi) {
    if (lo > hi) {
        return refuse("A band runs from its smaller to its larger end, but " + format(lo, LengthUnit::inch) +
                      " is larger than " + format(hi, LengthUnit::inch) + ": give the smaller one first.");
    }
    return Band(lo, hi);
}

} // namespace caprail
