// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <shims/solver_linear.h>

namespace caprail::solver {

namespace {

constexpr double tiny = 1e-9;
constexpr int mostRounds = 400;

/// minimise cost·x, rows of places: = 1, of classes (and of all shims, and of places left out): ≤ supply; x ≥ 0.
class Programme {
public:
    Programme(const Market& market, double missing)
        : m_market(market), m_places(market.places()), m_classes(market.supply.size()),
          m_rows(m_places + m_classes + 2), m_inverse(m_rows * m_rows, 0), m_value(m_rows, 0), m_dual(m_rows, 0),
          m_step(m_rows, 0), m_isIn(market.offers.size(), 0) {
        for (std::size_t i = 0; i < m_rows; ++i) {
            m_inverse[i * m_rows + i] = 1;
        }
        for (std::size_t p = 0; p < m_places; ++p) { // at first every place goes without
            m_value[p] = 1;
            m_dual[p] = missing;
        }
        for (std::size_t c = 0; c < m_classes; ++c) {
            m_value[m_places + c] = market.supply[c];
        }
        m_value[shimRow()] = market.shims < 0 ? 1e9 : market.shims;
        m_value[leftOutRow()] = market.leftOut;
    }

    /// Lets the stacks join that pay most, one for each place. False when none pays. `bound` is that of the prices.
    bool join(double& bound) {
        bound = 0;
        for (std::size_t i = m_places; i < m_rows; ++i) {
            bound += m_dual[i] * supply(i);
        }
        bool any = false;
        for (std::size_t p = 0; p < m_places; ++p) {
            double least = -m_dual[p] - m_dual[leftOutRow()]; // of being left out
            least = m_market.leftOut > 0 ? std::min(least, 0.0) : 0.0;
            std::size_t best = m_market.offers.size();
            for (std::size_t i = m_market.begin[p]; i < m_market.begin[p + 1]; ++i) {
                const double reduced = reducedCost(p, i);
                if (reduced < least) {
                    least = reduced;
                    best = i;
                }
            }
            bound += m_dual[p] + least;
            if (best < m_market.offers.size() && least < -tiny * static_cast<double>(scale) && m_isIn[best] == 0) {
                m_isIn[best] = 1;
                m_joined.emplace_back(p, best);
                any = true;
            }
        }
        return any;
    }

    /// Solves over the stacks that have joined; false if it gave up.
    bool solve() {
        for (int pivots = 0; pivots < 2000; ++pivots) {
            double least = -tiny * static_cast<double>(scale);
            std::size_t kind = 0; // 1: a stack, 2: slack of a row, 3: a place left out
            std::size_t which = 0;
            for (std::size_t k = 0; k < m_joined.size(); ++k) {
                take(reducedCost(m_joined[k].first, m_joined[k].second), 1, k, least, kind, which);
            }
            for (std::size_t i = m_places; i < m_rows; ++i) {
                take(-m_dual[i], 2, i, least, kind, which);
            }
            for (std::size_t p = 0; m_market.leftOut > 0 && p < m_places; ++p) {
                take(-m_dual[p] - m_dual[leftOutRow()], 3, p, least, kind, which);
            }
            if (kind == 0) {
                return true;
            }
            if (!pivot(kind, which, least)) {
                return false;
            }
        }
        return false;
    }

    [[nodiscard]] Prices prices() const {
        Prices out;
        for (std::size_t c = 0; c < m_classes; ++c) {
            out.ofClass.push_back(std::llround(std::max(0.0, -m_dual[m_places + c])));
        }
        out.ofShim = m_market.shims < 0 ? 0 : std::llround(std::max(0.0, -m_dual[shimRow()]));
        return out;
    }

private:
    [[nodiscard]] std::size_t shimRow() const { return m_places + m_classes; }
    [[nodiscard]] std::size_t leftOutRow() const { return m_places + m_classes + 1; }
    [[nodiscard]] double supply(std::size_t row) const {
        return row == leftOutRow() ? m_market.leftOut
               : row == shimRow()  ? std::max(0, m_market.shims)
                                   : m_market.supply[row - m_places];
    }

    static void take(double reduced, std::size_t kind, std::size_t which, double& least, std::size_t& bestKind,
                     std::size_t& best) {
        if (reduced < least) {
            least = reduced;
            bestKind = kind;
            best = which;
        }
    }

    [[nodiscard]] double reducedCost(std::size_t place, std::size_t index) const {
        const Offer& offer = m_market.offers[index];
        double reduced = static_cast<double>(offer.cost) - m_dual[place];
        for (std::uint16_t i = 0; i < offer.partCount; ++i) {
            reduced -= m_dual[m_places + offer.parts[i].cls] * offer.parts[i].count;
        }
        return m_market.shims < 0 ? reduced : reduced - m_dual[shimRow()] * offer.size;
    }

    void addColumn(std::size_t row, double times) {
        const double* column = &m_inverse[row * m_rows];
        for (std::size_t i = 0; i < m_rows; ++i) {
            m_step[i] += times * column[i];
        }
    }

    bool pivot(std::size_t kind, std::size_t which, double reduced) {
        std::fill(m_step.begin(), m_step.end(), 0.0);
        if (kind == 1) {
            const Offer& offer = m_market.offers[m_joined[which].second];
            addColumn(m_joined[which].first, 1);
            for (std::uint16_t i = 0; i < offer.partCount; ++i) {
                addColumn(m_places + offer.parts[i].cls, offer.parts[i].count);
            }
            if (m_market.shims >= 0) {
                addColumn(shimRow(), offer.size);
            }
        } else {
            addColumn(which, 1);
            if (kind == 3) {
                addColumn(leftOutRow(), 1);
            }
        }
        std::size_t out = m_rows;
        double length = 0;
        for (std::size_t i = 0; i < m_rows; ++i) {
            if (m_step[i] > 1e-7) {
                const double ratio = std::max(0.0, m_value[i]) / m_step[i];
                // Of equals the one with the largest step: small divisors breed errors.
                if (out == m_rows || ratio < length - tiny || (ratio <= length + tiny && m_step[i] > m_step[out])) {
                    out = i;
                    length = ratio;
                }
            }
        }
        if (out == m_rows) {
            return false;
        }
        const double divisor = m_step[out];
        for (std::size_t i = 0; i < m_rows; ++i) {
            m_value[i] -= length * m_step[i];
        }
        m_value[out] = length;
        for (std::size_t k = 0; k < m_rows; ++k) {
            double* column = &m_inverse[k * m_rows];
            if (column[out] == 0.0) {
                continue;
            }
            const double t = column[out] / divisor;
            for (std::size_t i = 0; i < m_rows; ++i) {
                column[i] -= t * m_step[i];
            }
            column[out] = t;
            m_dual[k] += reduced * t;
        }
        return true;
    }

    const Market& m_market;
    std::size_t m_places;
    std::size_t m_classes;
    std::size_t m_rows;
    std::vector<double> m_inverse; ///< of the basis, column by column
    std::vector<double> m_value;   ///< of the basic variables
    std::vector<double> m_dual;
    std::vector<double> m_step;
    std::vector<std::pair<std::size_t, std::size_t>> m_joined; ///< place and offer
    std::vector<char> m_isIn;
};

} // namespace

Prices linearPrices(const Market& market, std::int64_t target, const Stop& stop) {
    const double goal = static_cast<double>(target);
    Programme programme(market, 40 * (std::abs(goal) + static_cast<double>(scale)));
    Prices best = programme.prices();
    double bestBound = -1e300;
    for (int round = 0; round < mostRounds; ++round) {
        double bound = 0;
        const bool goesOn = programme.join(bound);
        if (bound > bestBound) {
            bestBound = bound;
            best = programme.prices();
        }
        if (!goesOn || bound > goal + 64 || (stop && stop()) || !programme.solve()) {
            break;
        }
    }
    return best;
}

} // namespace caprail::solver
