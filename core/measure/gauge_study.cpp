// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <measure/gauge_study.h>
#include <base/say.h>

namespace caprail {

namespace {

/// 1.41 of the rule: the 97 % interval of the parts over that of the gauge.
constexpr double categoriesPerRatio = 1.41;

std::string verdictOn(double share, const Units& units) {
    const std::string percent = formatNumber(share * 100, 0, units.decimalMark);
    return share <= 0.10   ? Core::say("The gauge takes %1 % of the band: good.", percent)
           : share <= 0.30 ? Core::say("The gauge takes %1 % of the band: it may do.", percent)
                           : Core::say("The gauge takes %1 % of the band: it cannot tell good from bad.", percent);
}

} // namespace

Result<GaugeStudy> gaugeStudy(std::span<const StudyReading> readings, const std::optional<Band>& band,
                              const Units& units) {
    auto study = repeatabilityStudy(readings, units);
    if (!study) {
        return tl::unexpected(study.error());
    }
    if (band && !(band->lo() < band->hi())) {
        return refuse(Core::say("The band has no width to hold a gauge against: set both its ends."));
    }
    GaugeStudy result;
    result.gauge = std::hypot(study->repeatability, study->reproducibility);
    result.shareOfTotal = study->total > 0 ? result.gauge / study->total : 0;
    result.personEffect = study->reproducibility;
    if (result.gauge > 0) {
        result.categories = std::max(1, static_cast<int>(categoriesPerRatio * study->placeToPlace / result.gauge));
    }
    if (band) {
        result.shareOfTolerance = 6 * result.gauge / static_cast<double>((band->hi() - band->lo()).value());
        result.sentence = verdictOn(*result.shareOfTolerance, units);
    }
    if (result.categories) {
        result.sentence += (result.sentence.empty() ? "" : " ") +
                           Core::count(*result.categories, Core::mark("It tells %1 class of places apart."),
                                       Core::mark("It tells %1 classes of places apart."));
    }
    result.study = std::move(*study);
    return result;
}

} // namespace caprail
