// SPDX-License-Identifier: GPL-3.0-or-later
/// GLPK (Debian package libglpk-dev): the shell selection stated as integer programmes, solved one aim after the other
/// by another solver while the test runs.
#include "../core/bearings/shelves.h"
#include <glpk.h>
#include <gmock/gmock.h>
#include <memory>

using namespace caprail;

namespace {

/// One 0/1 column per bearing and pair of shells, then one column each for the smallest and largest clearance.
class Programme {
public:
    explicit Programme(const shelves::Case& c) : m_case(c), m_problem(glp_create_prob(), glp_delete_prob) {
        glp_term_out(GLP_OFF);
        for (std::size_t j = 0; j < c.bearings.size(); ++j) {
            addRow(0, 1); // one pair at most
        }
        for (std::size_t s = 0; s < c.shelf.size(); ++s) {
            addRow(0, 1); // each shell once at most
        }
        for (std::size_t j = 0; j < c.bearings.size(); ++j) {
            for (std::size_t u = 0; u < c.shelf.size(); ++u) {
                for (std::size_t l = 0; l < c.shelf.size(); ++l) {
                    if (u != l && c.shelf[u].half != ShellHalf::lower && c.shelf[l].half != ShellHalf::upper) {
                        addPair(j, u, l);
                    }
                }
            }
        }
    }

    /// Least of the aims in turn, each kept while the next is sought.
    shelves::Rank solve() {
        const auto n = static_cast<double>(m_case.bearings.size());
        const auto inBand = least([](const Pair& p) { return p.isInBand ? -1.0 : 0.0; });
        const auto fitted = least([](const Pair&) { return -1.0; });
        const auto sum = least([](const Pair& p) { return p.deviation; });
        return {static_cast<std::size_t>(n + inBand), static_cast<std::size_t>(n + fitted),
                static_cast<std::int64_t>(sum * unit), leastSpread(n + fitted == 0)};
    }

private:
    static constexpr double unit = 1'270; ///< all lengths of these cases are multiples of it, in nanometres

    struct Pair {
        std::size_t bearing = 0;
        bool isInBand = false;
        double deviation = 0, clearance = 0;
    };

    void addRow(double lo, double hi) {
        const int row = glp_add_rows(m_problem.get(), 1);
        glp_set_row_bnds(m_problem.get(), row, lo == hi ? GLP_FX : GLP_DB, lo, hi);
    }

    void addPair(std::size_t j, std::size_t u, std::size_t l) {
        const BearingToFit& b = m_case.bearings[j];
        const Length clearance = b.housing - m_case.shelf[u].thickness - m_case.shelf[l].thickness - b.journal;
        const int column = glp_add_cols(m_problem.get(), 1);
        glp_set_col_kind(m_problem.get(), column, GLP_BV);
        const auto row = [&](std::size_t i) { return static_cast<int>(i) + 1; };
        const std::array<int, 4> rows{0, row(j), row(m_case.bearings.size() + u), row(m_case.bearings.size() + l)};
        const std::array<double, 4> ones{0, 1, 1, 1};
        glp_set_mat_col(m_problem.get(), column, 3, rows.data(), ones.data());
        m_pairs.push_back({j, b.band.contains(clearance),
                           static_cast<double>((clearance - b.target).magnitude().value()) / unit,
                           static_cast<double>(clearance.value()) / unit});
    }

    double run() {
        glp_iocp options;
        glp_init_iocp(&options);
        options.presolve = GLP_ON;
        options.msg_lev = GLP_MSG_OFF;
        EXPECT_EQ(glp_intopt(m_problem.get(), &options), 0);
        EXPECT_EQ(glp_mip_status(m_problem.get()), GLP_OPT);
        return std::round(glp_mip_obj_val(m_problem.get()));
    }

    template <class Cost> double least(Cost cost) {
        std::vector<int> columns{0};
        std::vector<double> costs{0};
        for (std::size_t i = 0; i < m_pairs.size(); ++i) {
            const int column = static_cast<int>(i) + 1;
            glp_set_obj_coef(m_problem.get(), column, cost(m_pairs[i]));
            columns.push_back(column);
            costs.push_back(cost(m_pairs[i]));
        }
        const double value = run();
        addRow(value, value);
        glp_set_mat_row(m_problem.get(), glp_get_num_rows(m_problem.get()), static_cast<int>(m_pairs.size()),
                        columns.data(), costs.data());
        return value;
    }

    /// Only where every bearing is fitted: then lo ≤ Σ clearance·x ≤ hi holds bearing by bearing.
    std::int64_t leastSpread(bool isAllFitted) {
        EXPECT_TRUE(isAllFitted) << "the case must have shells enough";
        const int lo = glp_add_cols(m_problem.get(), 2);
        const int hi = lo + 1;
        for (std::size_t i = 0; i < m_pairs.size(); ++i) {
            glp_set_obj_coef(m_problem.get(), static_cast<int>(i) + 1, 0);
        }
        for (const int column : {lo, hi}) {
            glp_set_col_bnds(m_problem.get(), column, GLP_FR, 0, 0);
        }
        glp_set_obj_coef(m_problem.get(), lo, -1);
        glp_set_obj_coef(m_problem.get(), hi, 1);
        for (std::size_t j = 0; j < m_case.bearings.size(); ++j) {
            for (const int end : {lo, hi}) {
                std::vector<int> columns{0, end};
                std::vector<double> values{0, -1};
                for (std::size_t i = 0; i < m_pairs.size(); ++i) {
                    if (m_pairs[i].bearing == j) {
                        columns.push_back(static_cast<int>(i) + 1);
                        values.push_back(m_pairs[i].clearance);
                    }
                }
                const int row = glp_add_rows(m_problem.get(), 1);
                glp_set_row_bnds(m_problem.get(), row, end == lo ? GLP_LO : GLP_UP, 0, 0);
                glp_set_mat_row(m_problem.get(), row, static_cast<int>(columns.size()) - 1, columns.data(),
                                values.data());
            }
        }
        return static_cast<std::int64_t>(run() * unit);
    }

    const shelves::Case& m_case;
    std::unique_ptr<glp_prob, void (*)(glp_prob*)> m_problem;
    std::vector<Pair> m_pairs;
};

} // namespace

TEST(ShellsAgainstGlpk, agree_on_every_aim) {
    for (unsigned seed = 1; seed <= 12; ++seed) {
        auto c = shelves::make(seed, 3 + static_cast<int>(seed % 3), 10, nanometres(1'270), false);
        const auto s = selectShells(c.bearings, c.shelf);
        ASSERT_TRUE(s);
        ASSERT_TRUE(s->isProven);
        EXPECT_EQ(shelves::rankOf(*s), Programme(c).solve()) << "seed " << seed;
    }
}

TEST(ShellsAgainstGlpk, agree_where_not_all_can_be_in_band) {
    for (unsigned seed = 1; seed <= 8; ++seed) {
        auto c = shelves::make(seed, 4, 9, nanometres(1'270), false);
        for (auto& b : c.bearings) {
            b.band = Band::between(tenths(23), tenths(24)).value();
        }
        const auto s = selectShells(c.bearings, c.shelf);
        ASSERT_TRUE(s);
        ASSERT_TRUE(s->isProven);
        EXPECT_EQ(shelves::rankOf(*s), Programme(c).solve()) << "seed " << seed;
    }
}
