// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_glpk.h"
#include <algorithm>
#include <cmath>
#include <glpk.h>
#include <map>
#include <memory>
#include <vector>

namespace caprail::plancases {

namespace {

class Programme {
public:
    explicit Programme(const PlanRequest& r) : m_problem(glp_create_prob(), glp_delete_prob) {
        std::map<std::int64_t, int> kit;
        for (const PlanShim& s : r.shims) {
            ++kit[s.thickness.value()];
        }
        glp_prob* p = m_problem.get();
        std::map<std::int64_t, int> supplyRow;
        for (const auto& [thickness, count] : kit) {
            supplyRow[thickness] = glp_add_rows(p, 1);
            glp_set_row_bnds(p, supplyRow[thickness], GLP_UP, 0, count);
        }
        m_servedRow = glp_add_rows(p, 1);
        glp_set_row_bnds(p, m_servedRow, GLP_FR, 0, 0);
        for (const PlanPosition& at : r.positions) {
            addPosition(r, at, kit, supplyRow);
        }
        std::vector<int> rows(1);
        std::vector<int> columns(1);
        std::vector<double> values(1);
        for (const auto& [row, column, value] : m_entries) {
            rows.push_back(row);
            columns.push_back(column);
            values.push_back(value);
        }
        glp_load_matrix(p, static_cast<int>(m_entries.size()), rows.data(), columns.data(), values.data());
    }

    /// The best whole-number value, or nothing when time runs out.
    std::optional<int> solve(int direction, bool countShims, double seconds) {
        glp_prob* p = m_problem.get();
        glp_set_obj_dir(p, direction);
        for (const auto& [column, isShim] : m_columns) {
            glp_set_obj_coef(p, column, isShim == countShims ? 1 : 0);
        }
        glp_iocp options;
        glp_init_iocp(&options);
        options.msg_lev = GLP_MSG_OFF;
        options.presolve = GLP_ON;
        options.tm_lim = std::max(1, static_cast<int>(seconds * 1000));
        if (glp_intopt(p, &options) != 0 || glp_mip_status(p) != GLP_OPT) {
            return std::nullopt;
        }
        return static_cast<int>(std::lround(glp_mip_obj_val(p)));
    }
    void serveExactly(int positions) { glp_set_row_bnds(m_problem.get(), m_servedRow, GLP_FX, positions, positions); }

private:
    struct Entry {
        int row;
        int column;
        double value;
    };

    int addWhole(double most, bool isShim) {
        glp_prob* p = m_problem.get();
        const int column = glp_add_cols(p, 1);
        glp_set_col_kind(p, column, GLP_IV);
        if (most > 0) {
            glp_set_col_bnds(p, column, GLP_DB, 0, most);
        } else {
            glp_set_col_bnds(p, column, GLP_FX, 0, 0);
        }
        m_columns.emplace_back(column, isShim);
        return column;
    }

    /// Served: the stack lies between gap − hi and gap − lo. Not served: there is no stack.
    void addPosition(const PlanRequest& r, const PlanPosition& at, const std::map<std::int64_t, int>& kit,
                     const std::map<std::int64_t, int>& supplyRow) {
        glp_prob* p = m_problem.get();
        const int served = addWhole(1, false);
        m_entries.push_back({m_servedRow, served, 1});
        // In ten-thousandths of an inch, so that the coefficients are of a size with each other.
        const double lo = static_cast<double>((at.gap - r.band.hi()).value()) / 2540;
        const double hi = static_cast<double>((at.gap - r.band.lo()).value()) / 2540;
        const int above = glp_add_rows(p, 3);
        const int below = above + 1;
        const int size = above + 2;
        glp_set_row_bnds(p, above, GLP_LO, 0, 0); // stack − lo·served ≥ 0
        glp_set_row_bnds(p, below, GLP_UP, 0, 0); // stack − hi·served ≤ 0
        glp_set_row_bnds(p, size, GLP_UP, 0, 0);  // shims − most·served ≤ 0
        const double most = r.largestStack > 0 ? r.largestStack : static_cast<double>(r.shims.size());
        m_entries.push_back({above, served, -lo});
        m_entries.push_back({below, served, -hi});
        m_entries.push_back({size, served, -most});
        for (const auto& [thickness, count] : kit) {
            const int n = addWhole(std::min<double>(count, most), true);
            const double t = static_cast<double>(thickness) / 2540;
            m_entries.push_back({above, n, t});
            m_entries.push_back({below, n, t});
            m_entries.push_back({size, n, 1});
            m_entries.push_back({supplyRow.at(thickness), n, 1});
        }
    }

    std::unique_ptr<glp_prob, decltype(&glp_delete_prob)> m_problem;
    std::vector<std::pair<int, bool>> m_columns; ///< and whether it counts shims
    std::vector<Entry> m_entries;
    int m_servedRow = 0;
};

} // namespace

std::optional<FirstTwo> planWithGlpk(const PlanRequest& request, double seconds) {
    glp_term_out(GLP_OFF);
    Programme programme(request);
    const auto served = programme.solve(GLP_MAX, false, seconds);
    if (!served) {
        return std::nullopt;
    }
    programme.serveExactly(*served);
    const auto shims = programme.solve(GLP_MIN, true, seconds);
    if (!shims) {
        return std::nullopt;
    }
    return FirstTwo{*served, *shims};
}

} // namespace caprail::plancases
