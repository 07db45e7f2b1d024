// SPDX-License-Identifier: GPL-3.0-or-later
#include "shelves.h"
#include <algorithm>
#include <gmock/gmock.h>
#include <map>
#include <set>

using namespace caprail;
using testing::HasSubstr;

namespace {

BearingToFit bearing(std::string id, Length housing, std::string family = "main") {
    return {std::move(id), housing,          tenths(24'480), Band::between(tenths(20), tenths(26)).value(),
            tenths(23),    std::move(family)};
}

ShelfShell shell(std::string id, Length thickness, ShellHalf half = ShellHalf::either, std::string family = "main") {
    return {std::move(id), thickness, half, std::move(family)};
}

/// Four shells of 0.0951 in: 2.6405 − 2 · 0.0951 − 2.4480 = 0.0023 in.
std::vector<ShelfShell> standardShells() {
    return {shell("A1", tenths(951)), shell("A2", tenths(951)), shell("A3", tenths(951)), shell("A4", tenths(951))};
}

} // namespace

TEST(ShellSelection, gives_standard_shells_to_standard_bearings) {
    const auto s =
        selectShells({bearing("main-1", tenths(26'405)), bearing("main-2", tenths(26'405))}, standardShells());
    ASSERT_TRUE(s);
    EXPECT_EQ(s->inBand, 2U);
    EXPECT_EQ(s->sumOfDeviations, Length());
    EXPECT_EQ(s->spread, Length());
    EXPECT_TRUE(s->isProven);
    EXPECT_EQ(s->pairs[0].upper, "A1");
    EXPECT_EQ(s->pairs[1].clearance, tenths(23));
    EXPECT_EQ(s->sentence, "2 of 2 bearings in band, 0.0000 in off target in all, spread 0.0000 in; proven: nothing "
                           "better is on the shelf.");
}

TEST(ShellSelection, mixes_half_steps_to_reach_the_target) {
    // A housing 0.0005 in larger wants one shell 0.0005 in thicker.
    auto shelf = standardShells();
    shelf.push_back(shell("B1", tenths(956)));
    const auto s = selectShells({bearing("main-1", tenths(26'410)), bearing("main-2", tenths(26'405))}, shelf);
    EXPECT_EQ(s->sumOfDeviations, Length());
    EXPECT_TRUE(s->pairs[0].upper == "B1" || s->pairs[0].lower == "B1");
}

TEST(ShellSelection, does_not_spend_the_exact_pair_where_another_bearing_needs_half_of_it) {
    // The thick pair would bring main-1 to its target, but leave main-2 at 0.0028 in, out of band.
    const std::vector<ShelfShell> shelf{shell("T1", tenths(953)), shell("T2", tenths(953)), shell("N1", tenths(951)),
                                        shell("N2", tenths(951))};
    const auto s = selectShells({bearing("main-1", tenths(26'409)), bearing("main-2", tenths(26'410))}, shelf);
    EXPECT_EQ(s->inBand, 2U);
    EXPECT_EQ(s->pairs[0].clearance, tenths(25));
    EXPECT_EQ(s->pairs[1].clearance, tenths(26));
}

TEST(ShellSelection, breaks_ties_by_the_least_spread) {
    // Both bearings alike. One pair each at +1 and +1 tenth, or at +2 and 0: the sum is 2 both ways, the spread is not.
    const std::vector<ShelfShell> shelf{shell("A", tenths(951)), shell("B", tenths(951)), shell("C", tenths(950)),
                                        shell("D", tenths(950))};
    const auto s = selectShells({bearing("main-1", tenths(26'405)), bearing("main-2", tenths(26'405))}, shelf);
    EXPECT_EQ(s->sumOfDeviations, tenths(2));
    EXPECT_EQ(s->spread, Length());
}

TEST(ShellSelection, lays_sided_shells_only_where_they_fit) {
    const std::vector<ShelfShell> shelf{shell("U", tenths(951), ShellHalf::upper),
                                        shell("L", tenths(951), ShellHalf::lower),
                                        shell("U2", tenths(951), ShellHalf::upper)};
    const auto s = selectShells({bearing("main-1", tenths(26'405)), bearing("main-2", tenths(26'405))}, shelf);
    EXPECT_EQ(s->fitted, 1U);
    EXPECT_EQ(s->pairs[0].upper, "U");
    EXPECT_EQ(s->pairs[0].lower, "L");
    EXPECT_FALSE(s->pairs[1].isFitted);
    EXPECT_THAT(s->sentence, HasSubstr("No shells are left for main-2."));
}

TEST(ShellSelection, never_crosses_families) {
    const auto s = selectShells({bearing("main-3", tenths(26'405), "main thrust")}, standardShells());
    EXPECT_EQ(s->fitted, 0U);
    EXPECT_TRUE(s->isProven);
}

TEST(ShellSelection, fits_as_many_as_it_can_even_out_of_band) {
    const auto s = selectShells({bearing("main-1", tenths(26'500))}, standardShells());
    EXPECT_EQ(s->inBand, 0U);
    EXPECT_EQ(s->fitted, 1U);
    EXPECT_THAT(s->sentence, HasSubstr("main-1 comes to 0.0118 in, out of band."));
}

TEST(ShellSelection, does_not_depend_on_the_order_of_its_input) {
    for (unsigned seed = 1; seed <= 10; ++seed) {
        auto c = shelves::make(seed, 5, 14, nanometres(2'540), true);
        const auto once = selectShells(c.bearings, c.shelf);
        std::mt19937 random(seed);
        std::shuffle(c.bearings.begin(), c.bearings.end(), random);
        std::shuffle(c.shelf.begin(), c.shelf.end(), random);
        const auto again = selectShells(c.bearings, c.shelf);
        ASSERT_TRUE(once && again);
        std::map<std::string, std::pair<std::string, std::string>> first;
        for (const auto& pair : once->pairs) {
            first[pair.bearing] = {pair.upper, pair.lower};
        }
        for (const auto& pair : again->pairs) {
            EXPECT_EQ(first[pair.bearing], std::pair(pair.upper, pair.lower)) << seed;
        }
    }
}

TEST(ShellSelection, uses_no_shell_twice_and_adds_up) {
    for (unsigned seed = 1; seed <= 12; ++seed) {
        const auto c = shelves::make(seed, 7, 22, nanometres(1'270), true);
        const auto s = selectShells(c.bearings, c.shelf);
        ASSERT_TRUE(s);
        std::map<std::string, ShelfShell> shelf;
        for (const auto& x : c.shelf) {
            shelf[x.id] = x;
        }
        std::set<std::string> used;
        Length sum;
        for (std::size_t i = 0; i < s->pairs.size(); ++i) {
            const ShellPair& pair = s->pairs[i];
            if (!pair.isFitted) {
                continue;
            }
            EXPECT_TRUE(used.insert(pair.upper).second && used.insert(pair.lower).second) << seed;
            EXPECT_NE(shelf[pair.upper].half, ShellHalf::lower);
            EXPECT_NE(shelf[pair.lower].half, ShellHalf::upper);
            const Length clearance = c.bearings[i].housing - shelf[pair.upper].thickness - shelf[pair.lower].thickness -
                                     c.bearings[i].journal;
            EXPECT_EQ(pair.clearance, clearance);
            EXPECT_EQ(pair.isInBand, c.bearings[i].band.contains(clearance));
            sum += (clearance - c.bearings[i].target).magnitude();
        }
        EXPECT_EQ(s->sumOfDeviations, sum);
    }
}

TEST(ShellSelection, that_is_stopped_says_that_it_is_not_proven) {
    const auto c = shelves::make(3, 9, 30, nanometres(100), false);
    const auto s = selectShells(c.bearings, c.shelf, {}, [] { return true; });
    ASSERT_TRUE(s);
    EXPECT_FALSE(s->isProven);
    EXPECT_THAT(s->sentence, HasSubstr("not proven"));
    EXPECT_EQ(s->pairs.size(), 9U);
}

TEST(ShellSelection, stopped_late_is_no_better_than_the_proven_best) {
    const auto c = shelves::make(4, 7, 24, nanometres(100), false);
    const auto best = selectShells(c.bearings, c.shelf);
    ASSERT_TRUE(best && best->isProven);
    for (int calls = 1; calls < 1'000; calls += 97) {
        int left = calls;
        const auto s = selectShells(c.bearings, c.shelf, {}, [&] { return --left <= 0; });
        ASSERT_TRUE(s);
        EXPECT_GE(shelves::rankOf(*s), shelves::rankOf(*best)) << calls;
    }
}

TEST(ShellSelection, refuses_what_it_cannot_tell_apart) {
    const auto twice =
        selectShells({bearing("main-1", tenths(26'405))}, {shell("A", tenths(951)), shell("A", tenths(952))});
    ASSERT_FALSE(twice);
    EXPECT_EQ(twice.error().sentence, "Shell A is on the shelf twice: leave one out.");
    const auto both =
        selectShells({bearing("main-1", tenths(26'405)), bearing("main-1", tenths(26'405))}, standardShells());
    ASSERT_FALSE(both);
    EXPECT_EQ(both.error().sentence, "Bearing main-1 is listed twice: leave one out.");
    EXPECT_FALSE(selectShells({bearing("", tenths(26'405))}, standardShells()));
    EXPECT_FALSE(selectShells({bearing("main-1", tenths(26'405))}, {shell("", tenths(951))}));
}

TEST(ShellSelection, refuses_impossible_input) {
    EXPECT_FALSE(selectShells({}, standardShells()));
    EXPECT_FALSE(selectShells({bearing("main-1", Length())}, standardShells()));
    EXPECT_FALSE(selectShells({bearing("main-1", tenths(26'405))}, {shell("A", Length())}));
    auto outside = bearing("main-1", tenths(26'405));
    outside.target = tenths(40);
    const auto s = selectShells({outside}, standardShells());
    ASSERT_FALSE(s);
    EXPECT_THAT(s.error().sentence, HasSubstr("outside its band"));
    EXPECT_FALSE(selectShells(std::vector<BearingToFit>(40, bearing("main-1", tenths(26'405))), standardShells()));
}
