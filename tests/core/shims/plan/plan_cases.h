// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <functional>
#include <optional>
#include <random>
#include <shims/plan/stack_plan.h>
#include <string>
#include <vector>

namespace caprail::plancases {

/// What a case file says is the optimum, in units of 0.0001 in.
struct KnownBest {
    int inBand = 0;
    int shims = 0;
    std::int64_t largestResidual = 0;
    std::int64_t sumResidual = 0;
    std::optional<std::int64_t> leastTwistSum;
    std::optional<double> leastLargestLoad; ///< lbf
    double leastSumSquareLoad = 0;          ///< of plans with that
};

struct PlanCase {
    std::string name;
    std::string family;
    PlanRequest request;
    std::optional<KnownBest> best;
};

/// Reads a case file; throws std::runtime_error if it is not one.
PlanCase readCase(const std::string& path);
/// All case files of a folder, by name.
std::vector<PlanCase> readCases(const std::string& folder);

/// Families of invented cases, alike in kind to the case files: what a shop meets, and what makes a planner sweat.
enum class Family {
    plentiful,  ///< many copies of each marked size
    measured40, ///< every shim measured, so nearly every one different; gaps of some 0.030 in
    measured80,
    measured120,
    scarce,     ///< the kit is hardly more than one solution, so positions compete
    exact,      ///< the residual must be 0
    tight,      ///< forty measured shims, and more or thicker gaps than they easily fill
    unmet,      ///< some positions cannot be served
    parity,     ///< even shims for odd gaps
    triples,    ///< three shims each, all used, next to no tolerance
    noLimit,    ///< thick gaps that take 97 % of a small kit, stacks of any size
    noLimitAny, ///< the same, taking anything from 80 % of the kit
    twins,      ///< few sizes, equal gaps that a stack fills: many plans that look alike
    twinsAny,   ///< the same, but any gap and any largest stack
    tiny,       ///< two positions, ten shims
    large,      ///< 20 positions, 200 shims
    thin,       ///< leaves of 0.0005 to 0.006 in for gaps ten times as thick, no stack limit: seldom proven
    thinLimited ///< the same, with stacks of up to 12
};
/// Those that are mostly proven in a moment; without the thin ones.
inline constexpr Family allFamilies[] = {Family::plentiful, Family::measured40, Family::measured80, Family::measured120,
                                         Family::scarce,    Family::exact,      Family::tight,      Family::unmet,
                                         Family::parity,    Family::triples,    Family::noLimit,    Family::noLimitAny,
                                         Family::twins,     Family::twinsAny,   Family::tiny,       Family::large};
const char* nameOf(Family family);
PlanCase makeCase(Family family, unsigned seed);

/// Hands out the shims of a small case in every way there is, the ids of the shims aside, and shows each: the residual
/// and the number of shims at each position. Pins are not heeded. (positions + 1) to the power of the shims.
using ShowHandOut = std::function<void(const std::vector<Length>& residuals, const std::vector<int>& sizes)>;
void handOutInEveryWay(const PlanRequest& request, const ShowHandOut& show);

} // namespace caprail::plancases
