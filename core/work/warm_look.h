// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A look ahead at the bearings of a record: their clearances with block and crank at other temperatures, and the least
/// oil film there under a load that somebody names. Advice, never a verdict; nothing of it is stored.
#include <assessment/assessment.h>
#include <assessment/facts.h>
#include <bearings/expansion.h>
#include <bearings/oil.h>
#include <bearings/oil_film.h>

namespace caprail {

/// A bearing that was measured with a micrometer, and its clearance warm.
struct WarmClearance {
    JournalId bearing;
    Length journal;    ///< its diameter, mean of all directions
    Length asMeasured; ///< mean of the stations, diametral
    Result<Length> warm;
};

inline constexpr std::string_view usualBlockMaterial = "grey cast iron";
inline constexpr std::string_view usualCrankMaterial = "steel 4340";
/// What a look begins with: these two, measured at 20 °C and seen at 90 °C (common practice, no source).
Warming usualWarming();
/// Every bearing whose clearance is known, each with the shells that lie in it; `warming.shells` counts for nothing.
/// One that cannot be worked out says why (clearanceAt). In the order of the bearings, mains before rods.
std::vector<WarmClearance> warmClearances(const Facts& facts, const Assessment& assessment, const Warming& warming);

/// What somebody names for the films, the same at every bearing.
struct FilmQuestion {
    std::int64_t revolutionsPerMinute = 6000;
    Length width = inches(0.85); ///< of the shells along the journal
    Oil oil;
    std::optional<Force> load; ///< none: nobody named one
};
/// What a look begins with: the first of the common oils, and no load.
FilmQuestion usualFilmQuestion();
Oil oilOf(const OilGrade& grade);

/// One bearing of the look.
struct BearingFilm {
    JournalId bearing;
    Result<OilFilm> asMeasured; ///< with the clearance as it was measured
    RunningBearing running;     ///< warm; its clearance is nothing where that cannot be worked out
    Result<OilFilm> warm;
};
/// One film per clearance, in their order. The oil is at `oilNow`, which is the block's temperature then. Refuses an
/// oil that no viscosity can be told of, no load (and says how thick the oil is), and no clearance at all.
Result<std::vector<BearingFilm>> bearingFilms(const std::vector<WarmClearance>& clearances, Temperature oilNow,
                                              const FilmQuestion& question, const Units& units);

/// What to say of a record without any clearance by micrometer.
Problem noClearanceYet();
/// What `bearingFilms` leaves out and takes for granted, as a sentence.
std::string filmAssumptions();
/// The same for warmClearances.
std::string warmAssumptions();

/// A coefficient in millionths per kelvin, as handbooks print it, or the name of a material that `knownExpansions` has:
/// "11.4", "11,4", "grey cast iron". `what` reads "the block". Refuses anything else.
Result<Expansion> parseExpansion(std::string_view text, const std::string& what);
/// A kinematic viscosity in mm²/s, as data sheets print it, at `what`: "40 °C". Refuses what is no number above zero.
Result<double> parseViscosity(std::string_view text, const std::string& what);

} // namespace caprail
