// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/described_girdle.h>

#include <base/say.h>

namespace caprail {

Result<DescribedGirdle> describedGirdle(const LayoutSet& layout, const EngineLayout& engine) {
    const GirdleShape shape{layout.windowAlong, layout.windowAcross, layout.plateOverhang};
    if (const auto ok = checkShape(engine, shape); !ok) {
        return tl::unexpected(ok.error());
    }
    if (layout.plateModulus.has_value() != layout.platePoisson.has_value()) {
        return refuse(Core::say("A girdle of another metal needs both its elastic modulus and its Poisson's ratio."));
    }
    if (!layout.plateThickness || (!layout.plateMetal && !layout.plateModulus)) {
        return DescribedGirdle{shape};
    }
    const Elasticity metal = elasticityOf(layout.plateMetal.value_or(PlateMetal::steel));
    GirdlePlate plate{*layout.plateThickness, metal.youngsModulus, metal.poissonRatio, shape};
    if (layout.plateModulus) {
        plate.youngsModulus = megapascals(static_cast<double>(*layout.plateModulus));
        plate.poissonRatio = static_cast<double>(*layout.platePoisson) / 1000;
    }
    if (const auto ok = checkPlate(plate); !ok) {
        return tl::unexpected(ok.error());
    }
    return DescribedGirdle{shape, plate};
}

} // namespace caprail
