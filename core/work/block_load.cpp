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

double inNewtonsPerMillimetre(Stiffness s) {
    return static_cast<double>(s.value()) / 1'000.0;
}

/// Stud and cap side by side, from the dimensions of the joint, else from the stretch that the group specifies beside
/// its torque and the share that a joint usually has.
std::optional<double> springOf(const Facts& facts, Position place) {
    const auto* group = facts.groupOf(studUnder(facts, place));
    if (group == nullptr) {
        return {};
    }
    if (const auto joint = jointStiffness(group->what)) {
        return inNewtonsPerMillimetre(joint->fastener) + inNewtonsPerMillimetre(joint->clamped);
    }
    const auto preload = preloadOf(facts, place);
    if (!preload || !group->what.stretch) {
        return {};
    }
    const auto spring =
        studAndCap(*preload, group->what.stretch->value, (usualJointShare.least + usualJointShare.most) / 2);
    return spring ? std::optional(*spring) : std::nullopt;
}

void fillResidual(PlaceLoad& at, const Assessment& assessment) {
    const Check* check = assessment.find("stack:" + code(at.place));
    if (check != nullptr && check->state == CheckState::stale) {
        return; // its residual was true once
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

std::vector<std::string> assumptionsOf(const GirdleModel& model, const Facts& facts, const BlockLoad& load) {
    std::vector<std::string> said{
        Core::say(
            "The girdle is taken for a thin elastic plate with sharp windows, flat before it was bolted down; the "
            "block for rigid."),
        Core::say("The pan rail holds it at height zero at %1 fasteners; nuts pull it down onto the stacks.",
                  model.railFasteners().size()),
        Core::say("The largest bending stress is that outside all washers and half a corner's radius away from the "
                  "corners of windows.")};
    if (rowCount(facts, FastenerKind::panRail) == 0) {
        said.push_back(Core::say("Nobody counted the fasteners of the pan rail: a usual set is taken."));
    }
    if (model.isRailAssumed()) {
        said.push_back(Core::say("Too few pan rail fasteners lie under the plate as the layout is drawn: the rail is "
                                 "taken to hold its four ends as well."));
    }
    if (!facts.girdleShape.windowAlong || !facts.girdleShape.windowAcross || !facts.girdleShape.overhang) {
        said.push_back(Core::say("What nobody measured of windows and overhang is in fair proportion to the layout, as "
                                 "drawn."));
    }
    if (!model.springsNotKnown().empty()) {
        said.push_back(
            Core::say("Stud and cap are taken to give way by 1 thou under 10 000 lbf where neither the grip nor "
                      "the stretch of the main fasteners is known, which makes the loads rather too large "
                      "(common practice, no source)."));
    }
    const bool hasBare = std::any_of(load.places.begin(), load.places.end(),
                                     [](const PlaceLoad& p) { return p.known == ResidualOf::bareGap; });
    if (hasBare) {
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
    GirdleInputs inputs{facts.layout->description(), *facts.girdlePlate, rowCount(facts, FastenerKind::panRail), {}};
    for (const Position p : facts.layout->positions()) {
        inputs.springs.push_back(springOf(facts, p));
    }
    return inputs;
}

const GirdleModel* GirdleModelKeeper::of(const Facts& facts) {
    auto inputs = girdleInputs(facts);
    if (!inputs) {
        m_inputs.reset();
        m_model.reset();
        m_problem = inputs.error().sentence;
        return nullptr;
    }
    if (m_inputs != *inputs) {
        m_inputs = *inputs;
        m_model.reset();
        m_problem.clear();
        auto model = GirdleModel::from(*facts.layout, inputs->plate, inputs->panFasteners, inputs->springs);
        if (model) {
            m_model = *std::move(model);
        } else {
            m_problem = model.error().sentence;
        }
    }
    return m_model ? &*m_model : nullptr;
}

std::optional<Force> BlockLoad::largest() const {
    if (!held) {
        return {};
    }
    Force most;
    for (const Force f : held->force) {
        most = std::max(most, f.magnitude());
    }
    return most;
}

BlockLoad blockLoad(const GirdleModel& model, const Facts& facts, const Assessment& assessment) {
    BlockLoad load;
    std::vector<Length> residuals;
    std::vector<Length> uncertainties;
    bool isUncertaintyKnown = true;
    for (const Position p : model.places()) {
        PlaceLoad& at = load.places.emplace_back();
        at.place = p;
        fillResidual(at, assessment);
        if (at.known == ResidualOf::nothing) {
            load.missing.push_back(p);
        }
        isUncertaintyKnown = isUncertaintyKnown && at.uncertainty.has_value();
        residuals.push_back(at.residual);
        uncertainties.push_back(at.uncertainty.value_or(Length()));
    }
    load.assumptions = assumptionsOf(model, facts, load);
    if (!load.missing.empty()) {
        load.assumptions.insert(
            load.assumptions.begin(),
            Core::say("No load is known yet: no gap is accepted, or the stack is stale, at %1.", list(load.missing)));
        return load;
    }
    load.held = model.load(residuals, Rail::held);
    load.free = model.load(residuals, Rail::free);
    const std::vector<Force> u = model.uncertainty(uncertainties, Rail::held);
    for (std::size_t i = 0; i < load.places.size(); ++i) {
        PlaceLoad& at = load.places[i];
        at.force = load.held->force[i];
        at.forceFree = load.free->force[i];
        if (isUncertaintyKnown) {
            at.forceUncertainty = u[i];
        }
        if (const auto preload = preloadOf(facts, at.place)) {
            at.shareOfPreload = inNewtons(at.force->magnitude()) / inNewtons(*preload);
        }
    }
    return load;
}

std::string effectOnCap(const GirdleModel& model, const BlockLoad& now, Position place, Length change,
                        const Units& units) {
    const auto at =
        std::find_if(now.places.begin(), now.places.end(), [place](const PlaceLoad& p) { return p.place == place; });
    if (at == now.places.end() || !at->force) {
        return {};
    }
    const auto i = static_cast<std::size_t>(at - now.places.begin());
    const Force then = *at->force + newtons(model.stiffness(Rail::held, i, i) * inMillimetres(change));
    const Force less = at->force->magnitude() - then.magnitude();
    if (less.magnitude() < newtons(0.5)) {
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
    request.stiffness.clear();
    for (const std::size_t row : rows) {
        for (const std::size_t column : rows) {
            request.stiffness.push_back(model.stiffness(Rail::held, row, column));
        }
    }
}

} // namespace caprail
