// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the stacks of a record put into the block (load/girdle_model.h), with ± and with the assumptions beside it.
/// Advice, never a gate.
#include <assessment/assessment.h>
#include <load/girdle_model.h>
#include <shims/plan/stack_plan.h>

namespace caprail {

/// All that the plate of a record is solved from. What its studs are like is not among it: they are put in series.
struct GirdleInputs {
    LayoutDescription layout;
    GirdlePlate plate;
    int panFasteners = 0;
    friend bool operator==(const GirdleInputs&, const GirdleInputs&) = default;
};
/// Refuses, saying what to enter: a record without a layout, or whose girdle nobody described.
Result<GirdleInputs> girdleInputs(const Facts& facts);
/// Takes 100 to 200 ms. Refuses what SolvedGirdle refuses.
Result<SolvedGirdle> solvedGirdle(const GirdleInputs& inputs);
/// Stud and cap at each place of a record with a layout, as far as its groups describe them.
Springs springsUnder(const Facts& facts);
/// The model of a record, from the start: for who needs it once (the window has GirdleRunner). Refuses what the two
/// above refuse.
Result<GirdleModel> girdleModel(const Facts& facts);

/// How the residual of a place is known.
enum class ResidualOf {
    nothing, ///< no gap is accepted
    stale,   ///< nor here: the stack was right once
    stack,   ///< the stack that was built
    bareGap  ///< no stack was built: the nut would draw the plate down by the whole gap
};

/// The residual of a place, as the load is worked out with it.
struct PlaceResidual {
    Position place;
    ResidualOf known = ResidualOf::nothing;
    Length residual;
    std::optional<Length> uncertainty; ///< none: not known
    [[nodiscard]] bool isKnown() const { return known == ResidualOf::stack || known == ResidualOf::bareGap; }
};

/// The load in the block. It is known everywhere or nowhere: each force hangs on every residual. Lists are in the order
/// of the places.
struct KnownLoad {
    GirdleLoad held, free;
    /// Of each force, rail held; none: that of some residual is not known.
    std::optional<std::vector<Force>> uncertainty;
    /// |force|, rail held, over the main stud's preload; none: that is not known.
    std::vector<std::optional<double>> shareOfPreload;
    [[nodiscard]] const GirdleLoad& under(Rail rail) const { return rail == Rail::held ? held : free; }
    /// The place with the largest |force|, by its number; the first of several.
    [[nodiscard]] std::size_t largestAt(Rail rail) const;
};

struct BlockLoad {
    std::vector<PlaceResidual> places;    ///< in the order of the layout, at least two
    std::vector<Position> missing;        ///< places without a residual
    std::vector<std::string> assumptions; ///< sentences
    /// Refused while any is missing; the sentence names them.
    Result<KnownLoad> known = refuse(std::string());
};

/// By what stands on the engine. `model` is that of the record. A place without an accepted gap, or whose stack is
/// stale, is missing, and then no load is told anywhere. `units` are for its sentences.
BlockLoad blockLoad(const GirdleModel& model, const Facts& facts, const Assessment& assessment, const Units& units);

/// "takes 38 lbf off the cap", "puts 12 lbf more on the cap": what a change of one place's residual does to the load
/// there, all others as they stand. Positive `change`: the stack gets lower. Empty while the load is not known, and for
/// a place without a stud.
std::string effectOnCap(const GirdleModel& model, const BlockLoad& now, Position place, Length change,
                        const Units& units);

/// Gives a plan request the stiffness of its positions (N/mm), the rail held.
void giveStiffness(PlanRequest& request, const GirdleModel& model);

} // namespace caprail
