// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <base/problem.h>
#include <cstdint>
#include <functional>
#include <optional>
#include <shims/objective.h>
#include <string>
#include <units/band.h>
#include <units/length.h>
#include <vector>

namespace caprail {

// The stack plan: from one finite kit of individually measured shims, the fewest shims over all positions together.
// How it is found, and why it is the best, is told in solver/README.md.

/// A shim that may be used. Free shims and pinned ones are listed; those set aside are simply left out.
struct PlanShim {
    std::string id;
    Length thickness; ///< measured where there is a measurement, else as marked; more than 0
    friend bool operator==(const PlanShim&, const PlanShim&) = default;
};

struct PlanPosition {
    std::string id;
    int cap = 1;   ///< counted from 1 at the front
    int side = -1; ///< −1 left, +1 right
    Length gap;    ///< may be zero or negative
    /// The stack that the assembler keeps here, by shim id; an empty list keeps the position bare. Not set: open.
    std::optional<std::vector<std::string>> pinned = {};
    /// Of the residual at this position, where it is another than that of the request: a narrower one where less can be
    /// proven, a wider one about a pinned stack that was judged good in another way.
    std::optional<Band> band = {};
    friend bool operator==(const PlanPosition&, const PlanPosition&) = default;
};

struct PlanRequest {
    Band band;            ///< of the residual, gap minus stack
    int largestStack = 0; ///< most shims in one stack; 0: no limit (but 254, which no stack comes near)
    std::vector<PlanPosition> positions;
    std::vector<PlanShim> shims;
    int caps = 0; ///< main caps of the engine, for the twist sum; 0: the largest cap among the positions
    Objective objective = Objective::smallestResidual;
    /// Of the plate with what stands under it: force per millimetre of residual, in any unit of force, row by row in
    /// the order of `positions`; symmetric. Empty: not known, and then no load is worked out.
    std::vector<double> stiffness{};
    friend bool operator==(const PlanRequest&, const PlanRequest&) = default;
};
/// That of the position, else of the request.
Band bandAt(const PlanRequest& request, const PlanPosition& position);

struct StackPlan;

struct PlanOptions {
    /// Asked some thousand times a second from within the solver, on the thread of the call, whatever it is about; once
    /// it says true the best plan found so far is returned within 5 ms, not proven. The core has no clock: a deadline
    /// or a cancel flag comes in here. Empty: run to proof, which may take for ever.
    std::function<bool()> stop{};
    /// Called between two askings, on the same thread, while there is a better plan than the last one that it took;
    /// `plan` gives it, not proven. That costs what naming all shims costs, so one who is not due to show it need not.
    std::function<void(const std::function<StackPlan()>& plan)> better{};
};

struct PlannedStack {
    std::string position;
    std::vector<std::string> shims; ///< thickest first; empty where none is needed, and where the position is unmet
    Length residual;                ///< gap minus this stack
    bool inBand = false;
    bool pinned = false;
};

/// A position that the plan leaves out of band.
struct UnmetPosition {
    std::string position;
    /// From the shims that the plan leaves free (for a pinned position: its pinned stack), the stack whose residual
    /// lies nearest to the band, with as few shims as that takes.
    std::vector<std::string> nearest;
    Length residual; ///< gap minus the nearest stack
};

/// No plan can be better than this; equal to the plan's own figures when it is proven. A figure is a bound given that
/// the figures before it are reached.
struct PlanBound {
    int inBand = 0;
    int shims = 0;
    Length largestResidual;
    Length sumResidual;
    std::int64_t twistSum = 0;
    double largestLoad = 0;   ///< with Objective::leastLoad
    double sumSquareLoad = 0; ///< with Objective::leastLoad
    friend bool operator==(const PlanBound&, const PlanBound&) = default;
};

struct StackPlan {
    std::vector<PlannedStack> stacks; ///< one per position, in the order of the request
    int inBand = 0;                   ///< positions in band
    int shims = 0;                    ///< shims in all stacks together
    Length largestResidual;           ///< largest |residual| over the positions in band
    Length sumResidual;               ///< sum of |residual| over the positions in band
    /// |Σ (2·(cap−1) − (caps−1))·side·residual| over the positions in band, in nanometres.
    std::int64_t twistSum = 0;
    /// The force at each position, in the order of the request, while a stiffness is given; positive where the stack is
    /// low. What stands out of band counts as no residual: it is not drawn down yet.
    std::vector<double> loads{};
    double largestLoad = 0; ///< largest |force|
    double sumSquareLoad = 0;
    bool proven = false; ///< best by the whole order of importance, or only the best found before `stop`
    PlanBound bound;
    std::vector<UnmetPosition> unmet; ///< in the order of the request
};

/// What a plan is judged by.
enum class PlanFigure { none, inBand, shims, largestResidual, twistSum, sumResidual, largestLoad, sumSquareLoad };
/// In the order of importance of an objective.
std::array<PlanFigure, 4> figuresOf(Objective objective);

/// How near a plan is to its bound: the first figure, in the order of importance, in which the two differ. Loads are
/// told apart to one part in a million.
struct ShareOfBound {
    PlanFigure figure = PlanFigure::none;
    double share = 1; ///< 0 … 1, the smaller of plan and bound over the larger; 1 where none differs
};
ShareOfBound shareOfBound(const StackPlan& plan, Objective objective);

/// The best plan, in this order of importance: most positions in band; fewest shims; smallest largest |residual| (or,
/// with Objective::leastTwist, smallest |twist sum|; with Objective::leastLoad, smallest largest |force|); smallest sum
/// of |residual| (or of the forces' squares); then a fixed rule: the same request gives the same plan on any machine,
/// whatever the order of its positions and shims, and shims of equal thickness are taken in the order of their ids. A
/// pinned stack is kept as it is, in band or not, and counted.
/// Refuses, with a sentence: two shims or two positions with one id, a shim without thickness, a cap below 1 or above
/// `caps`, a side other than ±1, a negative `largestStack`, a pinned shim that is unknown or pinned twice, a pinned
/// stack larger than `largestStack`, a stiffness that is no symmetric matrix of the positions, and least load without
/// one.
Result<StackPlan> planStacks(const PlanRequest& request, const PlanOptions& options = {});

/// How an unmet position could be met.
struct Remedy {
    enum class Kind {
        buy, ///< a new shim
        lap  ///< take a shim of the kit down
    };
    std::string position;
    Kind kind = Kind::buy;
    Length thickness; ///< of the shim to buy, or of the shim once lapped
    std::string shim; ///< lap: which one; empty for buy
    Length from;      ///< lap: its thickness now; so `from − thickness` comes off
    StackPlan plan;   ///< the plan with it; the bought shim stands in it as `boughtShimId`
};
inline constexpr const char* boughtShimId = "(to buy)";

/// The most that is taken off a shim by lapping it on a plate. Common practice, no source.
inline constexpr Length mostToLap = thou(3);
/// No leaf is lapped down to less. Common practice, no source.
inline constexpr Length thinnestLapped = thou(1);

/// For each unmet open position: what to buy, then what to lap (never more than `mostToLap` off, nor to less than
/// `thinnestLapped`), such that the plan made with it has that position in band, serves more positions, and is as good
/// as with any one such shim that, used at that position, leaves no residual there (or, where the band does not contain
/// 0, the end of the band nearest to it). Where that would take a thicker shim than the thickest of the kit, or lapping
/// off more, it may leave some residual in band. A shim to buy is no thicker than the thickest of the kit, unless the
/// kit is empty. Positions that no such shim helps are not listed, nor those that `stop` left no time for. Takes the
/// request and its plan; refuses what planStacks refuses.
Result<std::vector<Remedy>> whatWouldHelp(const PlanRequest& request, const StackPlan& plan,
                                          const PlanOptions& options = {});

/// A stack as the assembler built it.
struct BuiltStack {
    std::string position;
    std::vector<std::string> shims;
};

/// A hand-built set of stacks beside the best plan.
struct PlanComparison {
    int inBand = 0; ///< of the built stacks; positions without one count with their bare gap
    int shims = 0;
    Length largestResidual; ///< over the positions in band
    Length sumResidual;
    std::int64_t twistSum = 0;
    int fewerInBand = 0; ///< how many more positions the best plan serves
    int moreShims = 0;   ///< how many shims the best plan saves (negative when it serves more positions with more)
    Length largerResidual;
    Length largerSum;
    std::int64_t moreTwist = 0;
    double largestLoad = 0; ///< of the built stacks, while a stiffness is given
    double sumSquareLoad = 0;
    double largerLoad = 0; ///< what the best plan saves
    double largerSquares = 0;
    /// The first figure, in the order of importance of the request, in which the two differ; none: they are as good.
    PlanFigure decides = PlanFigure::none;
    /// By it the stacks as built are better: than a plan that is not proven, or by larger stacks than allowed.
    bool isBetter = false;
    [[nodiscard]] bool isAsGood() const { return decides == PlanFigure::none; }
    std::vector<std::string> tooLarge; ///< positions whose built stack has more shims than the request allows
};

/// Refuses unknown positions or shims, and a shim or a position that is built in twice.
Result<PlanComparison> compareWithBest(const PlanRequest& request, const StackPlan& best,
                                       const std::vector<BuiltStack>& built);

} // namespace caprail
