// SPDX-License-Identifier: GPL-3.0-or-later
#include <bearings/shell_problem.h>

#include <gtest/gtest.h>

namespace caprail {
namespace {

ShellFamily familyOf(std::size_t uppers, std::size_t lowers, std::size_t eithers) {
    ShellFamily family;
    const auto add = [&](ShellHalf half, std::size_t count) {
        ShellClass shells{Length(2'000'000), half, {}};
        for (std::size_t i = 0; i < count; ++i) {
            shells.ids.push_back(std::to_string(static_cast<int>(half)) + "-" + std::to_string(i));
        }
        family.classes.push_back(shells);
    };
    add(ShellHalf::upper, uppers);
    add(ShellHalf::lower, lowers);
    add(ShellHalf::either, eithers);
    return family;
}

/// By laying them out: an upper with a lower as long as there are both, the rest of one kind with those that go either
/// way, and what is left of these with one another.
std::size_t laidOut(std::size_t uppers, std::size_t lowers, std::size_t eithers) {
    const std::size_t both = std::min(uppers, lowers);
    const std::size_t mixed = std::min(std::max(uppers, lowers) - both, eithers);
    return both + mixed + (eithers - mixed) / 2;
}

TEST(ShellFamily, knows_the_most_pairs_that_the_shelf_holds) {
    for (std::size_t uppers = 0; uppers < 5; ++uppers) {
        for (std::size_t lowers = 0; lowers < 5; ++lowers) {
            for (std::size_t eithers = 0; eithers < 5; ++eithers) {
                EXPECT_EQ(familyOf(uppers, lowers, eithers).mostPairs(), laidOut(uppers, lowers, eithers))
                    << uppers << " uppers, " << lowers << " lowers, " << eithers << " of either";
            }
        }
    }
}

} // namespace
} // namespace caprail
