// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/block_load.h>

#include <algorithm>
#include <assessment/fastener_groups.h>
#include <assessment/program_findings.h>
#include <base/say.h>

namespace caprail {

namespace {

/// The main fastener that the girdle bears on at a place.
FastenerId studUnder(const Facts& facts, Position place) {
    return {FastenerKind::mainCap, place.cap, place.side, facts.layout->description().girdleRing};
}

/// What its specification aims at; none where that does not say enough.
std::optional<Force> preloadOf(const Facts& facts, Position place) {
    const auto* group = facts.groupOf(studUnder(facts, place));
    if (group == nullptr) {
        return {};
    }
    const auto judged = judgeGroup(group->what, facts.rules.torqueScatterPercent, Units{});
    return judged ? std::optional(judged->preload) : std::nullopt;
}

constexpr double middleJointShare = (usualJointShare.least + usualJointShare.most) / 2;

/// Stud and cap side by side.
struct Spring {
    Stiffness rate;
    bool isByStretch = false; ///< known by a stretch and the usual share of joints, not by the joint's own dimensions
};

/// From the dimensions of the joint, else from the stretch that the group specifies beside its torque and the share
/// that a joint usually has.
std::optional<Spring> springOf(const Facts& facts, Position place) {
    const auto* group = facts.groupOf(studUnder(facts, place));
    if (group == nullptr) {
        return {};
    }
    if (const auto joint = jointStiffness(group->what)) {
        return Spring{joint->fastener + joint->clamped};
    }
    const auto preload = preloadOf(facts, place);
    if (!preload || !group->what.stretch) {
        return {};
    }
    const auto rate = studAndCap(*preload, group->what.stretch->value, middleJointShare);
    return rate ? std::optional(Spring{*rate, true}) : std::nullopt;
}

void fillResidual(PlaceResidual& at, const Assessment& assessment) {
    const Check* check = assessment.find("stack:" + code(at.place));
    if (check != nullptr && check->state == CheckState::stale) {
        at.known = ResidualOf::stale;
        return;
    }
    const auto stack = assessment.stacks.find(at.place);
    if (stack != assessment.stacks.end()) {
        const StackResult& result = stack->second;
        if (const auto residual = result.carriedResidual ? result.carriedResidual : result.residual) {
            at.known = ResidualOf::stack;
            at.residual = *residual;
            const Uncertainty& u = result.carriedResidual ? result.carriedUncertainty : result.uncertainty;
            at.uncertainty = u.expanded() ? std::optional(Length(toNearest(*u.expanded()))) : std::nullopt;
        }
        return;
    }
    const auto gap = assessment.gaps.find(at.place);
    if (gap != assessment.gaps.end() && gap->second.accepted) {
        at.known = ResidualOf::bareGap;
        at.residual = *gap->second.accepted;
        const auto u = gap->second.uncertainty.expanded();
        at.uncertainty = u ? std::optional(Length(toNearest(*u))) : std::nullopt;
    }
}

std::string list(const std::vector<Position>& places) {
    std::string text;
    for (const Position p : places) {
        text += (text.empty() ? "" : ", ") + describe(p);
    }
    return text;
}

/// Whether the cutout at the oil pump's pickup takes metal from the plate.
bool meetsCutout(const Facts& facts) {
    const GirdleOutline outline = girdleOutline(*facts.layout, facts.girdleShape);
    return outline.cutout.meets(outline.plate);
}

bool isAnyByStretch(const Facts& facts, const GirdleModel& model) {
    return std::ranges::any_of(model.places(), [&](Position p) {
        const auto spring = springOf(facts, p);
        return spring && spring->isByStretch;
    });
}

void addAssumedSprings(std::vector<std::string>& said, const GirdleModel& model, const Facts& facts,
                       const Units& units) {
    if (!model.springsNotKnown().empty()) {
        said.push_back(
            Core::say("Where a main fastener has neither the dimensions of its joint nor a stretch beside its torque, "
                      "at %1, stud and cap are taken for a spring of %2, which makes the loads rather too large "
                      "(common practice, no source).",
                      model.springsNotKnown().size() == model.places().size() ? Core::say("every place")
                                                                              : list(model.springsNotKnown()),
                      format(stiffnessNotKnown, units)));
    }
    if (isAnyByStretch(facts, model)) {
        said.push_back(
            Core::say("Where only the stretch of a main fastener is known, its joint is taken to carry %1 of "
                      "a load by the stud and the rest by what it clamps (common practice, no source).",
                      formatPercent(middleJointShare, units)));
    }
}

std::vector<std::string> assumptionsOf(const GirdleModel& model, const Facts& facts, const BlockLoad& load,
                                       const Units& units) {
    std::vector<std::string> said{
        Core::say(
            "The girdle is taken for a thin elastic plate with sharp windows, flat before it was bolted down; the "
            "block for rigid."),
        Core::say("The pan rail holds it at height zero at %1 points; nuts pull it down onto the stacks.",
                  model.railFasteners().size()),
        Core::say("The largest bending stress is that outside all washers and half a corner's radius away from the "
                  "corners of windows.")};
    if (rowCount(facts, FastenerKind::panRail) == 0) {
        said.push_back(Core::say("Nobody counted the fasteners of the pan rail: a usual set is taken."));
    }
    if (model.isRailAssumed()) {
        said.push_back(Core::say("Too few pan rail fasteners lie under the plate as the layout is drawn: the rail is "
                                 "taken to hold its four ends as well, which are among these points."));
    }
    if (model.isShapeAssumed()) {
        said.push_back(Core::say("What nobody measured of windows and overhang is in fair proportion to the layout, as "
                                 "drawn."));
    }
    if (meetsCutout(facts)) {
        said.push_back(
            Core::say("The cutout at the oil pump's pickup is in fair proportion to the layout, as drawn: it "
                      "is not asked for."));
    }
    addAssumedSprings(said, model, facts, units);
    if (std::ranges::count(load.places, ResidualOf::bareGap, &PlaceResidual::known) > 0) {
        said.push_back(Core::say("Where no stack is built the nut is taken to draw the plate down by the whole gap."));
    }
    said.push_back(Core::say("The uncertainties of the residuals are taken as independent of each other."));
    said.push_back(Core::say("It is advice, and no claim about what a block will stand."));
    return said;
}

} // namespace

Result<GirdleInputs> girdleInputs(const Facts& facts) {
    if (!facts.layout) {
        return refuse(Core::say("The load in the block needs a layout: enter it under Engine."));
    }
    if (!facts.girdlePlate) {
        return refuse(Core::say("The load in the block needs the girdle's thickness and metal: enter them with the "
                                "layout under Engine."));
    }
    return GirdleInputs{facts.layout->description(), *facts.girdlePlate, rowCount(facts, FastenerKind::panRail)};
}

Result<SolvedGirdle> solvedGirdle(const GirdleInputs& inputs) {
    const auto layout = EngineLayout::from(inputs.layout);
    return layout ? SolvedGirdle::from(*layout, inputs.plate, inputs.panFasteners)
                  : Result<SolvedGirdle>(tl::unexpected(layout.error()));
}

Springs springsUnder(const Facts& facts) {
    Springs springs;
    for (const Position p : facts.layout->positions()) {
        const auto spring = springOf(facts, p);
        springs.push_back(spring ? std::optional(spring->rate) : std::nullopt);
    }
    return springs;
}

Result<GirdleModel> girdleModel(const Facts& facts) {
    const auto inputs = girdleInputs(facts);
    if (!inputs) {
        return tl::unexpected(inputs.error());
    }
    const auto plate = solvedGirdle(*inputs);
    return plate ? plate->withSprings(springsUnder(facts)) : Result<GirdleModel>(tl::unexpected(plate.error()));
}

std::size_t KnownLoad::largestAt(Rail rail) const {
    const std::vector<Force>& force = under(rail).force;
    return static_cast<std::size_t>(std::ranges::max_element(force, {}, &Force::magnitude) - force.begin());
}

namespace {

KnownLoad knownLoad(const GirdleModel& model, const Facts& facts, const std::vector<PlaceResidual>& places) {
    std::vector<Length> residuals;
    std::vector<Length> uncertainties;
    for (const PlaceResidual& at : places) {
        residuals.push_back(at.residual);
        if (at.uncertainty) {
            uncertainties.push_back(*at.uncertainty);
        }
    }
    KnownLoad load{model.load(residuals, Rail::held), model.load(residuals, Rail::free), {}, {}};
    if (uncertainties.size() == places.size()) {
        load.uncertainty = model.uncertainty(uncertainties, Rail::held);
    }
    for (std::size_t i = 0; i < places.size(); ++i) {
        const auto preload = preloadOf(facts, places[i].place);
        load.shareOfPreload.push_back(
            preload ? std::optional(inNewtons(load.held.force[i].magnitude()) / inNewtons(*preload)) : std::nullopt);
    }
    return load;
}

} // namespace

BlockLoad blockLoad(const GirdleModel& model, const Facts& facts, const Assessment& assessment, const Units& units) {
    BlockLoad load;
    for (const Position p : model.places()) {
        PlaceResidual& at = load.places.emplace_back();
        at.place = p;
        fillResidual(at, assessment);
        if (!at.isKnown()) {
            load.missing.push_back(p);
        }
    }
    load.assumptions = assumptionsOf(model, facts, load, units);
    load.known = load.missing.empty()
                     ? Result<KnownLoad>(knownLoad(model, facts, load.places))
                     : refuse(Core::say("No load is known yet: no gap is accepted, or the stack is stale, at %1.",
                                        list(load.missing)));
    return load;
}

std::string effectOnCap(const GirdleModel& model, const BlockLoad& now, Position place, Length change,
                        const Units& units) {
    const auto at = std::ranges::find(now.places, place, &PlaceResidual::place);
    if (at == now.places.end() || !now.known) {
        return {};
    }
    const auto i = static_cast<std::size_t>(at - now.places.begin());
    const Force before = now.known->held.force[i];
    const Force after =
        before + newtons(inNewtonsPerMillimetre(model.stiffness(Rail::held, i, i)) * inMillimetres(change));
    const Pull pull = pullOf(after, units);
    if (const Pull was = pullOf(before, units); was != Pull::none && pull != Pull::none && was != pull) {
        return pull == Pull::up ? Core::say("turns the load on the cap round, to %1 up", format(after, units))
                                : Core::say("turns the load on the cap round, to %1 down", format(-after, units));
    }
    const Force less = before.magnitude() - after.magnitude();
    if (isWrittenAsNothing(less, units)) {
        return Core::say("leaves the load on the cap as it is");
    }
    return less > Force() ? Core::say("takes %1 off the cap", format(less, units))
                          : Core::say("puts %1 more on the cap", format(-less, units));
}

void giveStiffness(PlanRequest& request, const GirdleModel& model) {
    std::vector<std::size_t> rows;
    for (const PlanPosition& position : request.positions) {
        const auto place = parsePosition(position.id);
        const auto at = place ? std::find(model.places().begin(), model.places().end(), *place) : model.places().end();
        if (at == model.places().end()) {
            request.stiffness.clear();
            return;
        }
        rows.push_back(static_cast<std::size_t>(at - model.places().begin()));
    }
    const std::span<const double> all = model.stiffness(Rail::held);
    request.stiffness.clear();
    for (const std::size_t row : rows) {
        for (const std::size_t column : rows) {
            request.stiffness.push_back(all[row * model.places().size() + column]);
        }
    }
}

} // namespace caprail
