// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <boost/math/distributions/fisher_f.hpp>
#include <cmath>
#include <limits>
#include <map>
#include <measure/statistics.h>
#include <measure/variance_split.h>
#include <set>
#include <base/say.h>

namespace caprail {

namespace {

double squared(double x) {
    return x * x;
}

/// Sum of squared deviations from the group's own mean.
double squaresAboutMean(const Moments& m) {
    return squared(m.standardDeviation) * static_cast<double>(m.count > 0 ? m.count - 1 : 0);
}

} // namespace

Result<OneWaySplit> oneWaySplit(std::span<const std::vector<double>> groups) {
    if (groups.size() < 2) {
        return refuse(Core::say("A variance split needs two groups or more."));
    }
    std::vector<double> all;
    for (const auto& group : groups) {
        if (group.empty()) {
            return refuse(Core::say("A group of the variance split has no value: leave it out, or measure it."));
        }
        if (!std::ranges::all_of(group, [](double x) { return std::isfinite(x); })) {
            return refuse(Core::say("A value of the variance split is not a finite number."));
        }
        all.insert(all.end(), group.begin(), group.end());
    }
    OneWaySplit split;
    const auto count = static_cast<double>(all.size());
    const auto k = static_cast<double>(groups.size());
    split.betweenFreedom = k - 1;
    split.withinFreedom = count - k;
    if (split.withinFreedom < 1) {
        return refuse(Core::say("A variance split needs a group of two values at least."));
    }
    // All means relative to one value, so that digits are not lost where every value is near a large one.
    const double origin = all.front();
    for (double& x : all) {
        x -= origin;
    }
    const double grandMean = momentsOf(all).mean;
    double sizesSquared = 0;
    for (auto group : groups) {
        for (double& x : group) {
            x -= origin;
        }
        const Moments m = momentsOf(group);
        split.withinSquares += squaresAboutMean(m);
        split.betweenSquares += static_cast<double>(m.count) * squared(m.mean - grandMean);
        sizesSquared += squared(static_cast<double>(m.count));
    }
    split.betweenMeanSquare = split.betweenSquares / split.betweenFreedom;
    split.withinMeanSquare = split.withinSquares / split.withinFreedom;
    split.ratio = split.withinMeanSquare > 0    ? split.betweenMeanSquare / split.withinMeanSquare
                  : split.betweenMeanSquare > 0 ? std::numeric_limits<double>::infinity()
                                                : 0;
    split.withinVariance = split.withinMeanSquare;
    // n₀, the group size that counts when sizes differ; the common size when they do not.
    const double effectiveSize = (count - sizesSquared / count) / split.betweenFreedom;
    const double estimate = (split.betweenMeanSquare - split.withinMeanSquare) / effectiveSize;
    split.betweenIsZero = estimate < 0;
    split.betweenVariance = std::max(0.0, estimate);
    return split;
}

namespace {

/// A complete crossed study as a table: cell[person][place] holds the passes, in nanometres.
struct StudyTable {
    std::vector<std::vector<std::vector<double>>> cell;
    std::size_t people = 0, places = 0, passes = 0;
};

Result<StudyTable> tabulate(std::span<const StudyReading> readings) {
    std::set<std::string> people;
    std::set<std::string> places;
    std::set<int> passes;
    std::map<std::tuple<std::string, std::string, int>, double> value;
    for (const StudyReading& r : readings) {
        people.insert(r.person);
        places.insert(r.place);
        passes.insert(r.pass);
        if (!value.emplace(std::tuple(r.person, r.place, r.pass), static_cast<double>(r.value.value())).second) {
            return refuse(
                Core::say("The study has two readings of %1 by %2 in pass %3: strike one.", r.place, r.person, r.pass));
        }
    }
    if (places.size() < 2) {
        return refuse(Core::say("A repeatability study needs two places at least; ten are usual."));
    }
    if (passes.size() < 2) {
        return refuse(Core::say("A repeatability study needs two passes at least."));
    }
    StudyTable table{{}, people.size(), places.size(), passes.size()};
    for (const auto& person : people) {
        auto& row = table.cell.emplace_back();
        for (const auto& place : places) {
            auto& cell = row.emplace_back();
            for (const int pass : passes) {
                const auto at = value.find({person, place, pass});
                if (at == value.end()) {
                    return refuse(Core::say(
                        "The study lacks the reading of %1 by %2 in pass %3: read it, or leave that pass out.", place,
                        person, pass));
                }
                cell.push_back(at->second);
            }
        }
    }
    return table;
}

struct MeanSquares {
    double person = 0, place = 0, interaction = 0, error = 0;
    double interactionFreedom = 0, errorFreedom = 0;
};

MeanSquares meanSquares(const StudyTable& t) {
    const auto p = static_cast<double>(t.people);
    const auto q = static_cast<double>(t.places);
    const auto n = static_cast<double>(t.passes);
    std::vector<double> all;
    std::vector<std::vector<double>> cellMean(t.people, std::vector<double>(t.places));
    double errorSquares = 0;
    for (std::size_t i = 0; i < t.people; ++i) {
        for (std::size_t j = 0; j < t.places; ++j) {
            const Moments m = momentsOf(t.cell[i][j]);
            cellMean[i][j] = m.mean;
            errorSquares += squaresAboutMean(m);
            all.push_back(m.mean);
        }
    }
    const double grand = momentsOf(all).mean;
    std::vector<double> personMean(t.people);
    std::vector<double> placeMean(t.places);
    double personSquares = 0;
    double placeSquares = 0;
    for (std::size_t i = 0; i < t.people; ++i) {
        personMean[i] = momentsOf(cellMean[i]).mean;
        personSquares += q * n * squared(personMean[i] - grand);
    }
    for (std::size_t j = 0; j < t.places; ++j) {
        std::vector<double> column;
        column.reserve(t.people);
        for (const auto& row : cellMean) {
            column.push_back(row[j]);
        }
        placeMean[j] = momentsOf(column).mean;
        placeSquares += p * n * squared(placeMean[j] - grand);
    }
    double interactionSquares = 0;
    for (std::size_t i = 0; i < t.people; ++i) {
        for (std::size_t j = 0; j < t.places; ++j) {
            interactionSquares += n * squared(cellMean[i][j] - personMean[i] - placeMean[j] + grand);
        }
    }
    MeanSquares ms;
    ms.errorFreedom = p * q * (n - 1);
    ms.error = errorSquares / ms.errorFreedom;
    ms.place = placeSquares / (q - 1);
    ms.interactionFreedom = (p - 1) * (q - 1);
    if (t.people > 1) {
        ms.person = personSquares / (p - 1);
        ms.interaction = interactionSquares / ms.interactionFreedom;
    }
    return ms;
}

/// Whether a mean square stands out from the error at the 5 % level.
bool standsOut(const MeanSquares& ms) {
    if (ms.error == 0) {
        return ms.interaction > 0;
    }
    const boost::math::fisher_f_distribution<double> f(ms.interactionFreedom, ms.errorFreedom);
    return ms.interaction / ms.error > boost::math::quantile(boost::math::complement(f, 0.05));
}

} // namespace

Result<RepeatabilityStudy> repeatabilityStudy(std::span<const StudyReading> readings, const Units& units) {
    const auto table = tabulate(readings);
    if (!table) {
        return tl::unexpected(table.error());
    }
    const MeanSquares ms = meanSquares(*table);
    const auto p = static_cast<double>(table->people);
    const auto q = static_cast<double>(table->places);
    const auto n = static_cast<double>(table->passes);
    RepeatabilityStudy study;
    study.people = table->people;
    study.places = table->places;
    study.passes = table->passes;
    double error = ms.error;
    study.repeatabilityFreedom = ms.errorFreedom;
    double interaction = 0;
    double person = 0;
    double place = 0;
    if (table->people == 1) {
        place = std::max(0.0, (ms.place - error) / n);
    } else {
        study.isPooled = !standsOut(ms);
        if (study.isPooled) {
            study.repeatabilityFreedom = ms.errorFreedom + ms.interactionFreedom;
            error = (ms.error * ms.errorFreedom + ms.interaction * ms.interactionFreedom) / study.repeatabilityFreedom;
        } else {
            interaction = std::max(0.0, (ms.interaction - ms.error) / n);
        }
        const double against = study.isPooled ? error : ms.interaction;
        person = std::max(0.0, (ms.person - against) / (q * n));
        place = std::max(0.0, (ms.place - against) / (p * n));
    }
    study.repeatability = std::sqrt(error);
    study.reproducibility = std::sqrt(person + interaction);
    study.placeToPlace = std::sqrt(place);
    study.total = std::sqrt(error + person + interaction + place);
    const std::string repeats = formatSpread(study.repeatability, units);
    const std::string freedom = formatNumber(study.repeatabilityFreedom, 0);
    const std::string places = formatSpread(study.placeToPlace, units);
    study.sentence =
        table->people > 1
            ? Core::say(
                  "One reading repeats to %1 (standard deviation, %2 degrees of freedom); people differ by %3; the "
                  "places differ by %4.",
                  repeats, freedom, formatSpread(study.reproducibility, units), places)
            : Core::say(
                  "One reading repeats to %1 (standard deviation, %2 degrees of freedom); the places differ by %3.",
                  repeats, freedom, places);
    return study;
}

} // namespace caprail
