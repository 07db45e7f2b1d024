// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the stacks of a record put into the block (load/girdle_model.h), with ± and with the assumptions beside it.
/// Advice, never a gate.
#include <assessment/assessment.h>
#include <load/girdle_model.h>
#include <shims/plan/stack_plan.h>

namespace caprail {

/// All that the condensed plate of a record is made from.
struct GirdleInputs {
    LayoutDescription layout;
    GirdlePlate plate;
    int panFasteners = 0;
    std::vector<std::optional<double>> springs; ///< per place, N/mm
    friend bool operator==(const GirdleInputs&, const GirdleInputs&) = default;
};
/// Refuses, saying what to enter: a record without a layout, or whose girdle nobody described.
Result<GirdleInputs> girdleInputs(const Facts& facts);

/// Condenses the plate of a record once, and again only when what it is made from is another.
class GirdleModelKeeper {
public:
    /// Null where there is none; `problem` says why.
    const GirdleModel* of(const Facts& facts);
    [[nodiscard]] const std::string& problem() const { return m_problem; }

private:
    std::optional<GirdleInputs> m_inputs;
    std::optional<GirdleModel> m_model;
    std::string m_problem;
};

/// How the residual of a place is known.
enum class ResidualOf {
    nothing, ///< no gap is accepted, or the stack is stale
    stack,   ///< the stack that was built
    bareGap  ///< no stack was built: the nut would draw the plate down by the whole gap
};

struct PlaceLoad {
    Position place;
    ResidualOf known = ResidualOf::nothing;
    Length residual;
    std::optional<Length> uncertainty; ///< of the residual; none: not known
    /// Positive: the girdle pulls the cap up. None while any residual is missing: each force hangs on all of them.
    std::optional<Force> force, forceFree; ///< rail held, rail free
    std::optional<Force> forceUncertainty; ///< rail held; none: not known
    std::optional<double> shareOfPreload;  ///< |force| over the main stud's preload; none: that is not known
};

struct BlockLoad {
    std::vector<PlaceLoad> places;                      ///< in the order of the layout
    std::vector<Position> missing;                      ///< places without a residual
    std::optional<GirdleLoad> held, free;               ///< none while any is missing
    std::vector<std::string> assumptions;               ///< sentences
    [[nodiscard]] std::optional<Force> largest() const; ///< |force|, rail held
};

/// By what stands on the engine. `model` is that of the record. A place without an accepted gap, or whose stack is
/// stale, is missing, and then no load is told anywhere.
BlockLoad blockLoad(const GirdleModel& model, const Facts& facts, const Assessment& assessment);

/// "takes 38 lbf off the cap", "puts 12 lbf more on the cap": what a change of one place's residual does to the load
/// there, all others as they stand. Positive `change`: the stack gets lower.
std::string effectOnCap(const GirdleModel& model, const BlockLoad& now, Position place, Length change,
                        const Units& units);

/// Gives a plan request the stiffness of its positions (N/mm), the rail held.
void giveStiffness(PlanRequest& request, const GirdleModel& model);

} // namespace caprail
