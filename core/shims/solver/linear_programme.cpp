// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <shims/solver/linear_programme.h>

namespace caprail::solver {

namespace {
constexpr double tiny = 1e-9;
/// Stacks of each seat that a programme may begin with.
constexpr std::size_t firstStacks = 8;
constexpr std::size_t noRow = ~std::size_t{0};
} // namespace

std::vector<std::size_t> scarceClasses(const Market& market) {
    std::vector<std::int64_t> asked(market.supply.size(), 0);
    std::vector<int> most(market.supply.size(), 0);
    std::vector<std::uint16_t> touched;
    for (std::size_t p = 0; p < market.seats(); ++p) {
        touched.clear();
        for (std::size_t i = market.begin[p]; i < market.begin[p + 1]; ++i) {
            market.clock->bookStep(i - market.begin[p], market.begin[p + 1] - market.begin[p], 8);
            const Offer& offer = market.offers[i];
            for (std::uint16_t k = 0; k < offer.partCount; ++k) {
                const Part part = offer.parts[k];
                if (most[part.cls] == 0) {
                    touched.push_back(part.cls);
                }
                most[part.cls] = std::max<int>(most[part.cls], part.count);
            }
        }
        for (const std::uint16_t cls : touched) {
            asked[cls] += most[cls];
            most[cls] = 0;
        }
    }
    std::vector<std::size_t> out;
    for (std::size_t c = 0; c < asked.size(); ++c) {
        if (asked[c] > market.supply[c]) {
            out.push_back(c);
        }
    }
    return out;
}

LinearProgramme::LinearProgramme(const Market& market, double missing, std::vector<std::size_t> classes)
    : m_market(market), m_seats(market.seats()), m_classOf(std::move(classes)), m_rowOf(market.supply.size(), noRow),
      m_rows(m_seats + m_classOf.size() + 2), m_inverse(m_rows * m_rows, 0), m_value(m_rows, 0), m_dual(m_rows, 0),
      m_step(m_rows, 0), m_isIn(market.offers.size(), 0) {
    for (std::size_t i = 0; i < m_rows; ++i) {
        m_inverse[i * m_rows + i] = 1;
    }
    for (std::size_t p = 0; p < m_seats; ++p) { // at first every seat goes without
        m_value[p] = 1;
        m_dual[p] = missing;
    }
    for (std::size_t k = 0; k < m_classOf.size(); ++k) {
        m_rowOf[m_classOf[k]] = m_seats + k;
        m_value[m_seats + k] = market.supply[m_classOf[k]];
    }
    m_value[shimRow()] = market.shims < 0 ? 1e9 : market.shims;
    m_value[leftOutRow()] = market.leftOut;
}

void LinearProgramme::joinBy(const Prices& prices) {
    std::vector<std::pair<std::int64_t, std::size_t>> cheapest;
    for (std::size_t p = 0; p < m_seats; ++p) {
        cheapest.clear();
        for (std::size_t i = m_market.begin[p]; i < m_market.begin[p + 1]; ++i) {
            m_market.clock->bookStep(i - m_market.begin[p], m_market.begin[p + 1] - m_market.begin[p], 10);
            const std::int64_t cost = pricedCost(m_market.offers[i], prices);
            if (cheapest.size() < firstStacks || cost < cheapest.back().first) {
                cheapest.insert(std::upper_bound(cheapest.begin(), cheapest.end(), std::pair(cost, i)), {cost, i});
                cheapest.resize(std::min(cheapest.size(), firstStacks));
            }
        }
        for (const auto& [cost, i] : cheapest) {
            m_isIn[i] = 1;
            m_joined.emplace_back(p, m_market.offers[i]);
        }
    }
}

bool LinearProgramme::join(double& bound) {
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

bool LinearProgramme::join(const StackPrices& all, const std::vector<StackPrices::Wanted>& wanted) {
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

double LinearProgramme::value() const {
    double sum = 0;
    for (std::size_t p = 0; p < m_seats; ++p) {
        sum += m_dual[p];
    }
    for (std::size_t i = m_seats; i < m_rows; ++i) {
        sum += m_dual[i] * supply(i);
    }
    return sum;
}

bool LinearProgramme::solve() {
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

Prices LinearProgramme::prices() const {
    Prices out;
    out.ofClass.assign(m_market.supply.size(), 0);
    for (std::size_t k = 0; k < m_classOf.size(); ++k) {
        out.ofClass[m_classOf[k]] = std::llround(std::max(0.0, -m_dual[m_seats + k]));
    }
    out.ofShim = m_market.shims < 0 ? 0 : std::llround(std::max(0.0, -m_dual[shimRow()]));
    return out;
}

double LinearProgramme::supply(std::size_t row) const {
    return row == leftOutRow() ? m_market.leftOut
           : row == shimRow()  ? std::max(0, m_market.shims)
                               : m_market.supply[m_classOf[row - m_seats]];
}

void LinearProgramme::take(double reduced, std::size_t kind, std::size_t which, double& least, std::size_t& bestKind,
                           std::size_t& best) {
    if (reduced < least) {
        least = reduced;
        bestKind = kind;
        best = which;
    }
}

double LinearProgramme::reducedCost(std::size_t seat, const Offer& offer) const {
    double reduced = static_cast<double>(offer.cost) - m_dual[seat];
    for (std::uint16_t i = 0; i < offer.partCount; ++i) {
        if (const std::size_t row = m_rowOf[offer.parts[i].cls]; row != noRow) {
            reduced -= m_dual[row] * offer.parts[i].count;
        }
    }
    return m_market.shims < 0 ? reduced : reduced - m_dual[shimRow()] * offer.size;
}

void LinearProgramme::addColumn(std::size_t row, double times) {
    const double* column = &m_inverse[row * m_rows];
    for (std::size_t i = 0; i < m_rows; ++i) {
        m_step[i] += times * column[i];
    }
}

bool LinearProgramme::pivot(std::size_t kind, std::size_t which, double reduced) {
    m_market.clock->book(static_cast<std::int64_t>(m_rows * m_rows + 6 * m_joined.size()));
    std::fill(m_step.begin(), m_step.end(), 0.0);
    if (kind == 1) {
        const Offer& offer = m_joined[which].second;
        addColumn(m_joined[which].first, 1);
        for (std::uint16_t i = 0; i < offer.partCount; ++i) {
            if (const std::size_t row = m_rowOf[offer.parts[i].cls]; row != noRow) {
                addColumn(row, offer.parts[i].count);
            }
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

} // namespace caprail::solver
