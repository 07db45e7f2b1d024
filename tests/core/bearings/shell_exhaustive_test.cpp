// SPDX-License-Identifier: GPL-3.0-or-later
/// The shell selection against every selection there is, on shelves small enough to try them all.
#include "shelves.h"
#include <gmock/gmock.h>
#include <optional>

using namespace caprail;

namespace {

/// Tries every pair for every bearing, and none.
class Exhaustive {
public:
    explicit Exhaustive(const shelves::Case& c) : m_case(c), m_isUsed(c.shelf.size(), false) {
        place(0, 0, 0, 0, {}, {});
    }
    [[nodiscard]] shelves::Rank best() const { return *m_best; }

private:
    void place(std::size_t j, std::size_t inBand, std::size_t fitted, std::int64_t sum, std::optional<Length> smallest,
               std::optional<Length> largest) {
        const std::size_t n = m_case.bearings.size();
        if (j == n) {
            const std::int64_t spread = smallest ? (*largest - *smallest).value() : 0;
            const shelves::Rank rank{n - inBand, n - fitted, sum, spread};
            m_best = m_best ? std::min(*m_best, rank) : rank;
            return;
        }
        place(j + 1, inBand, fitted, sum, smallest, largest);
        const BearingToFit& b = m_case.bearings[j];
        for (std::size_t u = 0; u < m_case.shelf.size(); ++u) {
            if (m_isUsed[u] || m_case.shelf[u].half == ShellHalf::lower) {
                continue;
            }
            m_isUsed[u] = true;
            for (std::size_t l = 0; l < m_case.shelf.size(); ++l) {
                if (m_isUsed[l] || m_case.shelf[l].half == ShellHalf::upper) {
                    continue;
                }
                m_isUsed[l] = true;
                const Length c = b.housing - m_case.shelf[u].thickness - m_case.shelf[l].thickness - b.journal;
                place(j + 1, inBand + (b.band.contains(c) ? 1U : 0U), fitted + 1,
                      sum + (c - b.target).magnitude().value(), std::min(smallest.value_or(c), c),
                      std::max(largest.value_or(c), c));
                m_isUsed[l] = false;
            }
            m_isUsed[u] = false;
        }
    }

    const shelves::Case& m_case;
    std::vector<bool> m_isUsed;
    std::optional<shelves::Rank> m_best;
};

void agree(const shelves::Case& c, unsigned seed) {
    const auto s = selectShells(c.bearings, c.shelf);
    ASSERT_TRUE(s);
    EXPECT_TRUE(s->isProven);
    EXPECT_EQ(shelves::rankOf(*s), Exhaustive(c).best()) << "seed " << seed;
}

} // namespace

TEST(ShellSelection, is_as_good_as_any_on_small_shelves_of_like_shells) {
    for (unsigned seed = 1; seed <= 60; ++seed) {
        agree(shelves::make(seed, 3, 7, nanometres(6'350), seed % 2 == 0), seed);
    }
}

TEST(ShellSelection, is_as_good_as_any_on_small_shelves_of_measured_shells) {
    for (unsigned seed = 1; seed <= 60; ++seed) {
        agree(shelves::make(seed, 3, 7, nanometres(127), seed % 2 == 0), seed);
    }
}

TEST(ShellSelection, is_as_good_as_any_when_shells_run_short) {
    for (unsigned seed = 1; seed <= 60; ++seed) {
        agree(shelves::make(seed, 4, 5, nanometres(2'540), true), seed);
    }
}

TEST(ShellSelection, is_as_good_as_any_when_few_can_be_in_band) {
    for (unsigned seed = 1; seed <= 40; ++seed) {
        auto c = shelves::make(seed, 3, 7, nanometres(1'270), seed % 2 == 0);
        for (auto& b : c.bearings) {
            b.band = Band::between(tenths(24), tenths(25)).value();
            b.target = tenths(25);
        }
        agree(c, seed);
    }
}
