// SPDX-License-Identifier: GPL-3.0-or-later
#include <bearings/oil_film.h>

#include <math.h> // before pchip.hpp, which (Boost 1.74) calls isnan without saying whose

#include <array>
#include <base/say.h>
#include <boost/math/interpolators/pchip.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <numbers>
#include <vector>

namespace caprail {

namespace {

/// Eccentricities of the tables, from the heaviest load to the lightest.
constexpr std::array<double, 7> chartEccentricity{0.97, 0.9, 0.8, 0.6, 0.4, 0.2, 0.1};
/// S at these, for a full bearing. An infinitely long one has no entry at 0.97: it is continued as the last step fell.
struct Table {
    double widthByDiameter; ///< 0: infinite
    std::array<double, 7> sommerfeld;
};
constexpr Table infinitelyWide{0, {0.0040, 0.0115, 0.0210, 0.0389, 0.0626, 0.123, 0.240}};
constexpr Table asWide{1, {0.00474, 0.0188, 0.0446, 0.121, 0.264, 0.631, 1.33}};
constexpr Table halfAsWide{0.5, {0.00609, 0.0313, 0.0923, 0.319, 0.779, 2.03, 4.31}};
constexpr Table quarterAsWide{0.25, {0.0101, 0.0736, 0.261, 1.07, 2.83, 7.57, 16.2}};
constexpr double thinnestShare = 0.03; ///< h0/c at the end of the charts

/// S at the eccentricities of the tables for another width, straight over (D/L)² between them: the short bearing's S is
/// straight over it, and the tables nearly are. (A cubic through h0/c in D/L, as one often sees it, swings there.)
Table tableFor(double widthByDiameter) {
    constexpr std::array<const Table*, 4> tables{&infinitelyWide, &asWide, &halfAsWide, &quarterAsWide};
    const auto squared = [](double l) { return l > 0 ? 1 / (l * l) : 0.0; };
    const double here = squared(widthByDiameter);
    std::size_t next = 1;
    while (next + 1 < tables.size() && squared(tables[next]->widthByDiameter) < here) {
        ++next;
    }
    const Table& wide = *tables[next - 1];
    const Table& narrow = *tables[next];
    const double share =
        (here - squared(wide.widthByDiameter)) / (squared(narrow.widthByDiameter) - squared(wide.widthByDiameter));
    Table table{widthByDiameter, {}};
    for (std::size_t i = 0; i < table.sommerfeld.size(); ++i) {
        table.sommerfeld[i] = (1 - share) * wide.sommerfeld[i] + share * narrow.sommerfeld[i];
    }
    return table;
}

/// ln(h0/c) over ln S. Beyond the lightest load of the table the eccentricity falls as 1/S; beyond the heaviest the
/// film goes on as it began to fall, so that what comes out says that the charts end.
double shareIn(const Table& table, double sommerfeld) {
    const auto& s = table.sommerfeld;
    if (sommerfeld >= s.back()) {
        return 1 - chartEccentricity.back() * s.back() / sommerfeld;
    }
    if (sommerfeld <= s.front()) {
        const double slope = std::log((1 - chartEccentricity[1]) / (1 - chartEccentricity[0])) / std::log(s[1] / s[0]);
        return (1 - chartEccentricity[0]) * std::pow(sommerfeld / s[0], slope);
    }
    std::vector<double> x;
    std::vector<double> y;
    for (std::size_t i = 0; i < s.size(); ++i) {
        x.push_back(std::log(s[i]));
        y.push_back(std::log(1 - chartEccentricity[i]));
    }
    const boost::math::interpolators::pchip<std::vector<double>> curve(std::move(x), std::move(y));
    return std::exp(curve(std::log(sommerfeld)));
}

tl::unexpected<Problem> tooThin() {
    return refuse(Core::say("The oil film comes out thinner than three hundredths of the radial clearance, where "
                            "the charts end: the surfaces would touch."));
}

} // namespace

Result<double> filmByCharts(double sommerfeld, double widthByDiameter) {
    const double l = widthByDiameter;
    if (!(sommerfeld > 0) || !(l >= 0.25 && l <= 2)) {
        return refuse(Core::say("The charts of the oil film hold for bearings from a quarter to twice as wide as their "
                                "diameter."));
    }
    const double share = shareIn(tableFor(l), sommerfeld);
    if (share < thinnestShare) {
        return tooThin();
    }
    return share;
}

double filmOfShortBearing(double sommerfeld, double widthByDiameter) {
    using std::numbers::pi;
    const double wanted = sommerfeld * widthByDiameter * widthByDiameter;
    // Close to ε = 0 and to ε = 1 by what the form comes to there: the root may lie beyond any bracket.
    constexpr double lightest = 1e4;
    constexpr double heaviest = 1e-12;
    if (wanted > lightest) {
        return 1 - 1 / (pi * pi * wanted);
    }
    if (wanted < heaviest) {
        return std::sqrt(pi * wanted);
    }
    const auto off = [wanted](double e) {
        const double left = (1 - e * e) * (1 - e * e) / (pi * e * std::sqrt(pi * pi * (1 - e * e) + 16 * e * e));
        return std::log(left / wanted);
    };
    boost::uintmax_t steps = 100;
    const auto [lo, hi] =
        boost::math::tools::toms748_solve(off, 1e-9, 1 - 1e-9, boost::math::tools::eps_tolerance<double>(40), steps);
    return 1 - (lo + hi) / 2;
}

Result<OilFilm> oilFilm(const RunningBearing& b) {
    if (b.journal <= Length() || b.width <= Length() || b.clearance <= Length()) {
        return refuse(
            Core::say("The oil film needs a journal, a width of its shells and a clearance, each above zero."));
    }
    if (!(b.revolutionsPerMinute > 0) || b.load <= Force() || !(b.viscosity > 0)) {
        return refuse(Core::say("The oil film needs a speed, a load and an oil, each above zero."));
    }
    const double diameter = inMillimetres(b.journal);
    const double width = inMillimetres(b.width);
    const double l = width / diameter;
    if (l < 0.1 || l > 2) {
        return refuse(Core::say("A bearing's width lies between a tenth and twice its diameter: measure the width of "
                                "its shells again."));
    }
    const double unitLoad = inNewtons(b.load) / (width * diameter); // N/mm²
    const double byClearance = diameter / inMillimetres(b.clearance);
    OilFilm film;
    film.unitLoad = megapascals(unitLoad);
    film.sommerfeld = byClearance * byClearance * b.viscosity * 1e-3 * b.revolutionsPerMinute / 60 / (unitLoad * 1e6);
    if (l < 0.5) {
        film.shortShare = filmOfShortBearing(film.sommerfeld, l);
    }
    if (l < 0.25) {
        film.share = *film.shortShare;
        if (film.share < thinnestShare) {
            return tooThin();
        }
    } else if (const auto share = filmByCharts(film.sommerfeld, l)) {
        film.share = *share;
    } else {
        return tl::unexpected(share.error());
    }
    film.least = millimetres(film.share * inMillimetres(b.clearance) / 2);
    return film;
}

} // namespace caprail
