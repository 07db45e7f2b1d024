// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The least oil film of a plain bearing that runs steadily under a load that somebody names. Advice, never a gate: an
/// engine's load turns and hammers, its shells and journals bend, and its oil is not at one temperature.
#include <base/problem.h>
#include <optional>
#include <units/force.h>
#include <units/length.h>

namespace caprail {

/// A bearing as it runs.
struct RunningBearing {
    Length journal;   ///< diameter
    Length width;     ///< of the shell along the journal
    Length clearance; ///< diametral
    double revolutionsPerMinute = 0;
    Force load;
    double viscosity = 0; ///< mPa·s
};

struct OilFilm {
    Length least;          ///< film thickness h0, to the nanometre
    double share = 0;      ///< h0/c, of the radial clearance
    double sommerfeld = 0; ///< S = (r/c)²·μN/P
    Stress unitLoad;       ///< P = W/(L·D)
    /// The short-bearing form's h0/c, as a cross-check; only below a width of half the diameter, where it holds.
    std::optional<double> shortShare;
};

/// By the charts of A. A. Raimondi and J. Boyd, "A solution for the finite journal bearing and its application to
/// analysis and design", parts I to III, ASLE Transactions 1 (1958): full bearing, their tables of S for L/D = ∞, 1, ½
/// and ¼ (from memory), between which S is straight over (D/L)², and within a table a monotone cubic over ln S. Below
/// L/D = ¼ the short-bearing form alone. Refuses sizes, speed, load or viscosity that are not above zero, L/D outside
/// 0.1 to 2, and a film so thin (h0/c below 0.03) that the charts end.
Result<OilFilm> oilFilm(const RunningBearing& bearing);

/// h0/c for a Sommerfeld number by the charts alone, L/D from ¼ to 2. Refuses what lies beyond them.
Result<double> filmByCharts(double sommerfeld, double widthByDiameter);
/// The short bearing (F. W. Ocvirk, NACA TN 2808, 1952): S(L/D)² = (1 − ε²)²/(π·ε·√(π²(1 − ε²) + 16ε²)) solved for
/// h0/c = 1 − ε. Next to no load is 1 − 1/(π²·S(L/D)²), and the heaviest √(π·S(L/D)²): what the form comes to there.
double filmOfShortBearing(double sommerfeld, double widthByDiameter);

} // namespace caprail
