// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <deque>
#include <shims/solver/column_generation.h>

namespace caprail::solver {

namespace {

constexpr double tiny = 1e-9;
constexpr int mostRounds = 400;

/// minimise cost·x, rows of seats: = 1, of classes (and of all shims, and of seats left out): ≤ supply; x ≥ 0.
class Programme {
public:
    Programme(const Market& market, double missing)
        : m_market(market), m_seats(market.seats()), m_classes(market.supply.size()), m_rows(m_seats + m_classes + 2),
          m_inverse(m_rows * m_rows, 0), m_value(m_rows, 0), m_dual(m_rows, 0), m_step(m_rows, 0),
          m_isIn(market.offers.size(), 0) {
        for (std::size_t i = 0; i < m_rows; ++i) {
            m_inverse[i * m_rows + i] = 1;
        }
        for (std::size_t p = 0; p < m_seats; ++p) { // at first every seat goes without
            m_value[p] = 1;
            m_dual[p] = missing;
        }
        for (std::size_t c = 0; c < m_classes; ++c) {
            m_value[m_seats + c] = market.supply[c];
        }
        m_value[shimRow()] = market.shims < 0 ? 1e9 : market.shims;
        m_value[leftOutRow()] = market.leftOut;
    }

    /// Lets the stacks join that pay most, one for each seat. False when none pays. `bound` is that of the prices.
    bool join(double& bound) {
        bound = 0;
        for (std::size_t i = m_seats; i < m_rows; ++i) {
            bound += m_dual[i] * supply(i);
        }
        bool any = false;
        for (std::size_t p = 0; p < m_seats; ++p) {
            double least = -m_dual[p] - m_dual[leftOutRow()]; // of being left out
            least = m_market.leftOut > 0 ? std::min(least, 0.0) : 0.0;
            std::size_t best = m_market.offers.size();
            for (std::size_t i = m_market.begin[p]; i < m_market.begin[p + 1]; ++i) {
                m_market.clock->bookStep(i - m_market.begin[p], m_market.begin[p + 1] - m_market.begin[p], 12);
                const double reduced = reducedCost(p, m_market.offers[i]);
                if (reduced < least) {
                    least = reduced;
                    best = i;
                }
            }
            bound += m_dual[p] + least;
            if (best < m_market.offers.size() && least < -tiny * static_cast<double>(scale) && m_isIn[best] == 0) {
                m_isIn[best] = 1;
                m_joined.emplace_back(p, m_market.offers[best]);
                any = true;
            }
        }
        return any;
    }

    /// The same over all stacks there are.
    bool join(const StackPrices& all, const std::vector<StackPrices::Wanted>& wanted) {
        bool any = false;
        for (std::size_t p = 0; p < m_seats; ++p) {
            StackPrices::Wanted one = wanted[p];
            const int most = one.most;
            m_market.clock->book(most * (most * (one.hi - one.lo + 1) / 2 + 200));
            double least = -tiny * static_cast<double>(scale);
            for (one.most = 1; one.most <= most; ++one.most) { // the cheapest of each size
                m_made.push_back(all.cheapest(one));
                Offer offer{m_made.back().data(), static_cast<std::uint16_t>(m_made.back().size()), 0, 0};
                for (const Part& part : m_made.back()) {
                    offer.size = static_cast<std::uint16_t>(offer.size + part.count);
                }
                offer.cost = scale * offer.size;
                const double reduced = reducedCost(p, offer);
                if (m_made.back().empty() || reduced >= least - 1) {
                    m_made.pop_back();
                    continue;
                }
                least = reduced;
                m_joined.emplace_back(p, offer);
                any = true;
            }
        }
        return any;
    }

    /// The value of the programme over the stacks that have joined.
    [[nodiscard]] double value() const {
        double sum = 0;
        for (std::size_t p = 0; p < m_seats; ++p) {
            sum += m_dual[p];
        }
        for (std::size_t i = m_seats; i < m_rows; ++i) {
            sum += m_dual[i] * supply(i);
        }
        return sum;
    }

    /// Solves over the stacks that have joined; false if it gave up.
    bool solve() {
        for (int pivots = 0; pivots < 2000; ++pivots) {
            double least = -tiny * static_cast<double>(scale);
            std::size_t kind = 0; // 1: a stack, 2: slack of a row, 3: a seat left out
            std::size_t which = 0;
            for (std::size_t k = 0; k < m_joined.size(); ++k) {
                take(reducedCost(m_joined[k].first, m_joined[k].second), 1, k, least, kind, which);
            }
            for (std::size_t i = m_seats; i < m_rows; ++i) {
                take(-m_dual[i], 2, i, least, kind, which);
            }
            for (std::size_t p = 0; m_market.leftOut > 0 && p < m_seats; ++p) {
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
            out.ofClass.push_back(std::llround(std::max(0.0, -m_dual[m_seats + c])));
        }
        out.ofShim = m_market.shims < 0 ? 0 : std::llround(std::max(0.0, -m_dual[shimRow()]));
        return out;
    }

private:
    [[nodiscard]] std::size_t shimRow() const { return m_seats + m_classes; }
    [[nodiscard]] std::size_t leftOutRow() const { return m_seats + m_classes + 1; }
    [[nodiscard]] double supply(std::size_t row) const {
        return row == leftOutRow() ? m_market.leftOut
               : row == shimRow()  ? std::max(0, m_market.shims)
                                   : m_market.supply[row - m_seats];
    }

    static void take(double reduced, std::size_t kind, std::size_t which, double& least, std::size_t& bestKind,
                     std::size_t& best) {
        if (reduced < least) {
            least = reduced;
            bestKind = kind;
            best = which;
        }
    }

    [[nodiscard]] double reducedCost(std::size_t seat, const Offer& offer) const {
        double reduced = static_cast<double>(offer.cost) - m_dual[seat];
        for (std::uint16_t i = 0; i < offer.partCount; ++i) {
            reduced -= m_dual[m_seats + offer.parts[i].cls] * offer.parts[i].count;
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
        m_market.clock->book(static_cast<std::int64_t>(m_rows * m_rows + 6 * m_joined.size()));
        std::fill(m_step.begin(), m_step.end(), 0.0);
        if (kind == 1) {
            const Offer& offer = m_joined[which].second;
            addColumn(m_joined[which].first, 1);
            for (std::uint16_t i = 0; i < offer.partCount; ++i) {
                addColumn(m_seats + offer.parts[i].cls, offer.parts[i].count);
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
    std::size_t m_seats;
    std::size_t m_classes;
    std::size_t m_rows;
    std::vector<double> m_inverse; ///< of the basis, column by column
    std::vector<double> m_value;   ///< of the basic variables
    std::vector<double> m_dual;
    std::vector<double> m_step;
    std::vector<std::pair<std::size_t, Offer>> m_joined; ///< by seat
    std::deque<std::vector<Part>> m_made;                ///< parts of those that were not on offer
    std::vector<char> m_isIn;
};

} // namespace

std::int64_t boundOverAll(const Market& market, const Prices& prices, const StackPrices& all,
                          const std::vector<StackPrices::Wanted>& wanted) {
    std::vector<std::int64_t> least;
    for (const StackPrices::Wanted& one : wanted) {
        least.push_back(all.least(one));
    }
    std::sort(least.begin(), least.end());
    std::int64_t bound = 0;
    for (std::size_t i = 0; i + static_cast<std::size_t>(market.leftOut) < least.size(); ++i) {
        bound = std::min(never, bound + least[i]);
    }
    for (std::size_t c = 0; c < market.supply.size() && bound < never; ++c) {
        bound -= prices.ofClass[c] * market.supply[c];
    }
    return bound;
}

Prices linearPrices(const Market& market, std::int64_t target, StackPrices* all,
                    const std::vector<StackPrices::Wanted>& wanted) {
    const double goal = static_cast<double>(target);
    Programme programme(market, 40 * (std::abs(goal) + static_cast<double>(scale)));
    Prices best = programme.prices();
    double bestBound = -1e300;
    bool overOffers = all == nullptr || !market.offers.empty();
    for (int round = 0; round < mostRounds; ++round) {
        double bound = 0;
        bool goesOn = false;
        if (overOffers) {
            goesOn = programme.join(bound);
            overOffers = goesOn || all == nullptr;
        }
        if (!overOffers) {
            const Prices now = programme.prices();
            all->set(now, scale, *market.clock);
            bound = static_cast<double>(boundOverAll(market, now, *all, wanted));
            goesOn = programme.value() - bound > static_cast<double>(scale) / 32 && programme.join(*all, wanted);
        }
        if (bound > bestBound && (all == nullptr || !overOffers)) {
            bestBound = bound;
            best = programme.prices();
        }
        if (!goesOn || (bestBound > goal + 64) || !programme.solve()) {
            break;
        }
    }
    if (all != nullptr) {
        all->set(best, scale, *market.clock);
    }
    return best;
}

} // namespace caprail::solver
