// SPDX-License-Identifier: GPL-3.0-or-later
#include <shims/solver/failures.h>
#include <shims/solver/search.h>

namespace caprail::solver {

void Failures::prepareFor(const Limits& limits, std::size_t listing) {
    if (listing != m_listing || limits.shims != m_shims || limits.largestResidual > m_window ||
        limits.twist > m_twist) {
        m_table.clear();
    }
    m_listing = listing;
    endedWith(limits);
}

void Failures::endedWith(const Limits& limits) {
    m_shims = limits.shims;
    m_window = limits.largestResidual;
    m_twist = limits.twist;
}

} // namespace caprail::solver
