// SPDX-License-Identifier: GPL-3.0-or-later
#include <load/girdle_plate.h>

#include <base/say.h>
#include <units/format.h>

namespace caprail {

Result<void> checkPlate(const GirdlePlate& plate) {
    if (plate.thickness < inches(0.03) || plate.thickness > inches(1.5)) {
        return refuse(Core::say("The girdle's plate is given as %1 thick: it must be from 0.03 to 1.5 in.",
                                formatExact(plate.thickness, Units{})));
    }
    if (plate.youngsModulus < megapascals(34e3) || plate.youngsModulus > megapascals(276e3)) {
        return refuse(Core::say("The girdle's elastic modulus is given as %1 GPa: it must be from 34 to 276 GPa; steel "
                                "has about 207, aluminium about 71.",
                                formatNumber(inMegapascals(plate.youngsModulus) / 1000, 3)));
    }
    if (!(plate.poissonRatio >= 0 && plate.poissonRatio <= 0.49)) {
        return refuse(Core::say("The girdle's Poisson's ratio is given as %1: it must be from 0 to 0.49; steel has "
                                "about 0.29, aluminium about 0.33.",
                                formatNumber(plate.poissonRatio, 3)));
    }
    return {};
}

Elasticity elasticityOf(PlateMetal metal) {
    switch (metal) {
    case PlateMetal::aluminium:
        return {psi(10.4e6), 0.333};
    case PlateMetal::steel:
        break;
    }
    return {psi(30.0e6), 0.292};
}

Result<Stiffness> studAndCap(Force preload, Length stretch, double jointShare) {
    if (preload <= Force() || stretch <= Length()) {
        return refuse(Core::say("A stud's stiffness needs a preload and its stretch, both above nothing."));
    }
    if (!(jointShare >= 0.05 && jointShare <= 0.95)) {
        return refuse(Core::say("The joint's share of a stud must be from 0.05 to 0.95; 0.15 to 0.32 is usual."));
    }
    return newtonsPerMillimetre(inNewtons(preload) / inMillimetres(stretch) / jointShare);
}

} // namespace caprail
