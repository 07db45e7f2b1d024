// SPDX-License-Identifier: GPL-3.0-or-later
#include "../../girdles.h"

#include <Eigen/Eigenvalues>
#include <cmath>
#include <future>
#include <gtest/gtest.h>
#include <load/condensation.h>

namespace {

using namespace caprail;

GirdlePlate steel(double thickness = 0.25) {
    return {inches(thickness), psi(30e6), 0.292};
}

GirdleModel modelOf(const EngineLayout& layout, const GirdlePlate& plate = steel()) {
    auto model = girdleOf(layout, plate);
    EXPECT_TRUE(model) << (model ? "" : model.error().sentence);
    return *std::move(model);
}

/// N/mm, the rail held.
double heldAt(const GirdleModel& model, std::size_t row, std::size_t column) {
    return model.stiffness(Rail::held)[row * model.places().size() + column];
}

Eigen::MatrixXd matrix(const GirdleModel& model, Rail rail) {
    const auto n = static_cast<Eigen::Index>(model.places().size());
    return Eigen::Map<const Eigen::MatrixXd>(model.stiffness(rail).data(), n, n);
}

/// Every run of tied caps that a block of 3 to 9 can have, the single caps among them.
TEST(GirdleModel, is_symmetric_and_definite_with_the_rail_held_whatever_run_of_caps_is_tied) {
    for (std::int64_t caps = 3; caps <= 9; caps += 2) {
        for (std::int64_t first = 1; first <= caps; first += 2) {
            for (std::int64_t last = first; last <= caps; ++last) {
                const auto model = girdleOf(layoutOf(caps, first, last), steel(), 24);
                ASSERT_TRUE(model) << caps << " caps, " << first << " to " << last << ": " << model.error().sentence;
                const Eigen::MatrixXd k = matrix(*model, Rail::held);
                EXPECT_EQ((k - k.transpose()).cwiseAbs().maxCoeff(), 0);
                EXPECT_GT(k.selfadjointView<Eigen::Lower>().eigenvalues().minCoeff(), 1e-3 * k.maxCoeff());
            }
        }
    }
}

TEST(GirdleModel, lets_offset_pitch_and_roll_cost_nothing_while_the_rail_is_free) {
    const EngineLayout layout = layoutOf(5, 1, 5);
    const GirdleModel model = modelOf(layout);
    const Eigen::MatrixXd k = matrix(model, Rail::free);
    Eigen::MatrixXd motion(k.rows(), 3);
    Eigen::Index row = 0;
    for (const Position p : model.places()) {
        motion.row(row++) << 1, inInches(layout.at(p).x) / 17.6, p.side == Side::left ? -1 : 1;
    }
    EXPECT_LT((k * motion).cwiseAbs().maxCoeff(), 1e-7 * k.maxCoeff());
    const Eigen::VectorXd values = k.selfadjointView<Eigen::Lower>().eigenvalues();
    EXPECT_LT(std::abs(values[2]), 1e-7 * values[9]);
    EXPECT_GT(values[3], 1e-4 * values[9]) << "twist and bending do cost";
}

TEST(GirdleModel, makes_no_load_with_one_cap_tied_while_the_rail_is_free) {
    const GirdleModel model = modelOf(layoutOf(5, 3, 3));
    EXPECT_LT(matrix(model, Rail::free).cwiseAbs().maxCoeff(), 1e-9);
    const std::vector<Length> residuals{thou(4), thou(-2)};
    EXPECT_EQ(model.load(residuals, Rail::free).force, (std::vector<Force>{Force(), Force()}));
    EXPECT_LT(inPsi(model.load(residuals, Rail::free).largestStress), 1);
    EXPECT_GT(inPoundsForce(model.load(residuals, Rail::held).force[0]), 100);
}

/// A plate as it is solved, but without the cutout at the pickup.
load::Setting withoutCutout(const EngineLayout& layout, const GirdlePlate& plate, int panFasteners) {
    load::Setting setting;
    setting.outline = girdleOutline(layout, plate.shape);
    setting.outline.cutout = {1e6, 1e6, 1}; // far beside the plate
    for (const Position p : layout.positions()) {
        setting.nuts.push_back({inMillimetres(layout.at(p).x), inMillimetres(layout.at(p).y)});
    }
    for (const PlanPoint at : rowPoints(layout, FastenerKind::panRail, panFasteners)) {
        const load::GridPoint here{inMillimetres(at.x), inMillimetres(at.y)};
        if (setting.outline.plate.contains(here.x, here.y)) {
            setting.fasteners.push_back(here);
        }
    }
    setting.longestCell = 0.1 * inMillimetres(layout.description().capSpacing);
    setting.snap = 0.02 * inMillimetres(layout.description().capSpacing);
    setting.plate = plate;
    return setting;
}

/// A 0.25 in steel plate, five caps 4.4 in apart, studs 3.6 in apart, rails 8.2 in apart, four windows of 2.6 × 2.4 in,
/// no cutout, the rail's fasteners held on all four sides: 80 to 130 lbf per thou at one place alone (a prototype of
/// another making).
TEST(GirdleModel, needs_80_to_130_pounds_per_thou_alone_at_one_place_as_the_prototype_did) {
    GirdlePlate plate = steel();
    plate.shape = {inches(2.6), inches(2.4), inches(2.02)};
    const EngineLayout layout = layoutOf(5, 1, 5);
    const auto solved = load::condense(withoutCutout(layout, plate, 28));
    ASSERT_TRUE(solved) << solved.error().sentence;
    const load::RowMajor k =
        load::inSeries(solved->held.plate, Eigen::VectorXd::Constant(10, inNewtonsPerMillimetre(stiffnessNotKnown)))
            .stiffness;
    for (Eigen::Index i = 0; i < 10; ++i) {
        const double alone = inPoundsPerThou(newtonsPerMillimetre(k(i, i)));
        EXPECT_GT(alone, 79) << describe(layout.positions()[static_cast<std::size_t>(i)]);
        EXPECT_LT(alone, 131) << describe(layout.positions()[static_cast<std::size_t>(i)]);
    }
    // Unshimmed, a spread of 0.036 in puts over 1000 lbf on several caps.
    Eigen::VectorXd residuals(10);
    for (int i = 0; i < 10; ++i) {
        residuals[i] = inMillimetres(thou(22 + 36.0 * ((i * 7) % 10) / 9));
    }
    const Eigen::VectorXd forces = k * residuals;
    EXPECT_GE((forces.array().abs() > inNewtons(poundsForce(1000))).count(), 3);
}

TEST(GirdleModel, pulls_a_cap_up_where_its_stack_is_low) {
    const GirdleModel model = modelOf(layoutOf(5, 1, 5));
    std::vector<Length> residuals(10);
    residuals[4] = thou(1);
    const GirdleLoad load = model.load(residuals, Rail::held);
    EXPECT_GT(load.force[4], Force());
    EXPECT_NEAR(inPoundsForce(load.force[4]), inPoundsPerThou(model.stiffness(Rail::held, 4, 4)), 1e-3);
    const double work = 0.5 * inNewtons(load.force[4]) * inMillimetres(thou(1)) / 1000;
    EXPECT_NEAR(load.energy, work, 1e-8) << "the force is given to a millinewton";
    // The plate is down at the nut and up nowhere near it: its map says so.
    const DeflectionMap map = model.deflections(residuals, Rail::held);
    double lowest = 0;
    for (const double h : map.height) {
        lowest = std::isnan(h) ? lowest : std::min(lowest, h);
    }
    EXPECT_NEAR(lowest, -0.0254, 0.001) << "the plate at the nut is down by the thou but for what stud and cap give";
}

TEST(GirdleModel, is_eight_times_as_stiff_when_the_plate_is_twice_as_thick) {
    const EngineLayout layout = layoutOf(4, 1, 4);
    const Springs rigid(8, newtonsPerMillimetre(1e12));
    const auto thin = girdleOf(layout, steel(0.2), 0, rigid);
    const auto thick = girdleOf(layout, steel(0.4), 0, rigid);
    EXPECT_NEAR(heldAt(*thick, 3, 5) / heldAt(*thin, 3, 5), 8, 1e-5);
    std::vector<Length> residuals(8);
    residuals[2] = thou(10);
    EXPECT_NEAR(inPsi(thick->load(residuals, Rail::held).largestStress) /
                    inPsi(thin->load(residuals, Rail::held).largestStress),
                2, 1e-3);
}

TEST(GirdleModel, puts_less_into_a_cap_that_gives_way_and_names_the_studs_that_nobody_described) {
    const EngineLayout layout = layoutOf(5, 1, 5);
    Springs springs(10);
    springs[2] = poundsPerThou(60);
    const auto model = girdleOf(layout, steel(), 0, springs);
    const GirdleModel stiff = modelOf(layout);
    EXPECT_LT(heldAt(*model, 2, 2), 0.6 * heldAt(stiff, 2, 2));
    EXPECT_EQ(model->springsNotKnown().size(), 9U);
    EXPECT_EQ(stiff.springsNotKnown().size(), 10U);
    const auto spring = studAndCap(poundsForce(10'000), thou(10), 0.25);
    EXPECT_NEAR(inPoundsPerThou(*spring), 4000, 1e-3) << "1000 lbf per thou of stud, four times that with its joint";
    EXPECT_FALSE(studAndCap(poundsForce(10'000), Length(), 0.25));
    EXPECT_FALSE(studAndCap(poundsForce(10'000), thou(10), 0));
}

TEST(GirdleModel, is_solved_once_for_whatever_springs_stand_under_it) {
    const EngineLayout layout = layoutOf(4, 1, 4);
    const auto solved = SolvedGirdle::from(layout, steel());
    ASSERT_TRUE(solved) << solved.error().sentence;
    const Springs soft(8, poundsPerThou(60));
    const auto first = solved->withSprings();
    const auto second = solved->withSprings(soft);
    ASSERT_TRUE(first && second);
    EXPECT_EQ(matrix(*second, Rail::held), matrix(*girdleOf(layout, steel(), 0, soft), Rail::held));
    EXPECT_EQ(matrix(*first, Rail::free), matrix(modelOf(layout), Rail::free)) << "the one does not change the other";
    EXPECT_FALSE(solved->withSprings(Springs(8, Stiffness())));
}

TEST(GirdleModel, tells_several_threads_the_same_at_once) {
    const auto model = std::make_shared<const GirdleModel>(modelOf(layoutOf(5, 1, 5)));
    std::vector<Length> residuals(model->places().size());
    residuals[3] = thou(2);
    const GirdleLoad once = model->load(residuals, Rail::held);
    std::vector<std::future<GirdleLoad>> loads;
    for (int i = 0; i < 4; ++i) {
        loads.push_back(std::async(std::launch::async, [=] {
            (void)model->deflections(residuals, Rail::free);
            return model->load(residuals, Rail::held);
        }));
    }
    for (std::future<GirdleLoad>& load : loads) {
        const GirdleLoad again = load.get();
        EXPECT_EQ(again.force, once.force);
        EXPECT_EQ(again.energy, once.energy);
    }
}

TEST(GirdleModel, carries_the_uncertainty_of_each_residual_into_each_force) {
    const GirdleModel model = modelOf(layoutOf(5, 1, 5));
    std::vector<Length> only(10);
    only[3] = thou(0.5);
    const auto one = model.uncertainty(only, Rail::held);
    const auto as = model.forces(only, Rail::held);
    for (std::size_t i = 0; i < 10; ++i) {
        EXPECT_NEAR(inPoundsForce(one[i]), std::abs(inPoundsForce(as[i])), 1e-3);
    }
    const auto all = model.uncertainty(std::vector<Length>(10, thou(0.5)), Rail::held);
    EXPECT_GT(all[3], one[3]);
}

TEST(GirdleModel, keeps_the_load_within_what_was_named_by_the_band_that_it_says) {
    const GirdleModel model = modelOf(layoutOf(5, 1, 5));
    const auto band = model.bandFor(poundsForce(50), Rail::held);
    ASSERT_TRUE(band);
    EXPECT_LE(model.largestWithin(*band, Rail::held), poundsForce(50));
    EXPECT_GT(model.largestWithin(*band + nanometres(20), Rail::held), poundsForce(50));
    // The worst that the band allows: every residual at the end that pulls the same way at the worst place.
    std::size_t worst = 0;
    double largest = 0;
    for (std::size_t i = 0; i < 10; ++i) {
        std::vector<Length> residuals;
        for (std::size_t j = 0; j < 10; ++j) {
            residuals.push_back(heldAt(model, i, j) < 0 ? -*band : *band);
        }
        const double f = inPoundsForce(model.forces(residuals, Rail::held)[i]);
        worst = f > largest ? i : worst;
        largest = std::max(largest, f);
    }
    EXPECT_NEAR(largest, 50, 0.01) << describe(model.places()[worst]);
    EXPECT_FALSE(modelOf(layoutOf(5, 3, 3)).bandFor(poundsForce(50), Rail::free)) << "no residual makes a force there";
}

TEST(GirdleModel, finds_stiffness_and_stress_that_a_finer_grid_does_not_change) {
    const EngineLayout layout = layoutOf(5, 1, 5);
    const auto fine = girdleOf(layout, steel(), 0, {}, inches(0.18));
    const GirdleModel usual = modelOf(layout);
    for (std::size_t i = 0; i < 10; ++i) {
        EXPECT_NEAR(heldAt(usual, i, i) / heldAt(*fine, i, i), 1, 0.015);
    }
    std::vector<Length> residuals(10);
    residuals[5] = thou(10);
    EXPECT_NEAR(inPsi(usual.load(residuals, Rail::held).largestStress) /
                    inPsi(fine->load(residuals, Rail::held).largestStress),
                1, 0.15);
}

TEST(GirdleModel, refuses_a_plate_that_cannot_be) {
    const EngineLayout layout = layoutOf(5, 1, 5);
    const auto refusal = [&](const GirdlePlate& plate) {
        const auto refused = girdleOf(layout, plate);
        return refused ? std::string() : refused.error().sentence;
    };
    // What was read is never rounded to what would have done.
    EXPECT_EQ(refusal(steel(0.029999)),
              "The girdle's plate is given as 0.029999 in thick: it must be from 0.03 to 1.5 in.");
    EXPECT_EQ(
        refusal({inches(0.25), megapascals(33'999), 0.3}),
        "The girdle's elastic modulus is given as 33.999 GPa: it must be from 34 to 276 GPa; steel has about 207, "
        "aluminium about 71.");
    EXPECT_EQ(refusal({inches(0.25), psi(30e6), 0.5}),
              "The girdle's Poisson's ratio is given as 0.500: it must be from 0 to 0.49; steel has about 0.29, "
              "aluminium about 0.33.");
    GirdlePlate wide = steel();
    wide.shape.windowAlong = inches(4.0);
    wide.shape.windowAcross = inches(4.0);
    const auto model = girdleOf(layout, wide);
    ASSERT_FALSE(model);
    EXPECT_EQ(model.error().sentence, "A window of the girdle this large meets the next one, the pan rail or a washer: "
                                      "measure it again.");
}

TEST(GirdleModel, says_when_it_takes_the_rail_to_hold_a_plate_that_no_fastener_is_drawn_under) {
    EXPECT_FALSE(modelOf(layoutOf(5, 1, 5)).isRailAssumed());
    const GirdleModel single = modelOf(layoutOf(5, 3, 3));
    EXPECT_TRUE(single.isRailAssumed());
    EXPECT_EQ(single.railFasteners().size(), 4U);
}

} // namespace
