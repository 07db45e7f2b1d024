// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/plan/nearest.h>
#include <shims/solver/pool.h>
#include <shims/solver/whole_division.h>

namespace caprail::solver {

/// How far a residual, in units, lies out of the band, in nanometres: the band's ends need be no whole units.
std::int64_t NearestStack::distanceOf(std::int64_t residual) const {
    const std::int64_t r = residual * m_unit;
    return std::max<std::int64_t>({0, m_band.lo().value() - r, r - m_band.hi().value()});
}

/// A stack made in no time: shim by shim whatever brings the residual nearer, from thick to thin.
std::vector<Part> NearestStack::thickestFirst(std::int64_t gap, int most) const {
    std::vector<Part> stack;
    std::int64_t residual = gap;
    for (std::size_t i = 0; i < m_left.classes() && most > 0; ++i) {
        int n = 0;
        while (n < std::min(m_left.count[i], most) &&
               distanceOf(residual - m_left.thickness[i]) < distanceOf(residual)) {
            residual -= m_left.thickness[i];
            ++n;
        }
        if (n > 0) {
            stack.push_back({static_cast<std::uint16_t>(i), static_cast<std::uint16_t>(n)});
            most -= n;
        }
    }
    return stack;
}

/// One table for as many seats as it is exact for; a seat that needs a coarser one has it made for itself.
const Reach& NearestStack::reachTo(std::int64_t total, WorkClock& clock) {
    const std::int64_t largest = total < Reach::mostBuckets ? Reach::mostBuckets - 1 : total;
    if (!m_reach || m_reaches != largest) {
        m_reach = std::make_unique<Reach>(m_left, largest, clock);
        m_reaches = largest;
    }
    return *m_reach;
}

std::vector<Part> NearestStack::find(std::int64_t gap, Band band, int most, WorkClock& clock) {
    m_band = band;
    std::vector<Part> best = thickestFirst(gap, most);
    std::int64_t residual = gap;
    for (const Part& part : best) {
        residual -= part.count * m_left.thickness[part.cls];
    }
    std::int64_t yes = distanceOf(residual);
    if (m_isOut) {
        return best;
    }
    try {
        // The window about the band is halved, in nanometres, until nothing lies within a narrower one.
        const std::int64_t farthest = floorDivide(gap * m_unit - m_band.lo().value() + yes, m_unit);
        const Reach& reach = reachTo(std::max<std::int64_t>(0, farthest), clock);
        bool isFewest = false;
        for (std::int64_t no = -1; yes - no > 1 || !isFewest;) {
            const bool last = yes - no <= 1; // as near as can be: with fewer shims too?
            const std::int64_t window = last ? yes : (no + yes) / 2;
            Seat wider;
            wider.gap = gap;
            wider.lo = ceilDivide(gap * m_unit - m_band.hi().value() - window, m_unit);
            wider.hi = floorDivide(gap * m_unit - m_band.lo().value() + window, m_unit);
            wider.most = most;
            std::optional<std::vector<Part>> found;
            int size = reach.fewest(0, wider.lo, wider.hi);
            for (; size <= most && !found && wider.lo <= wider.hi; ++size) {
                found = anyStack(m_left, reach, wider, last || reach.isExact() ? size : most, clock);
            }
            if (found) {
                best = std::move(*found);
                residual = gap;
                for (const Part& part : best) {
                    residual -= part.count * m_left.thickness[part.cls];
                }
                yes = distanceOf(residual);
            } else {
                no = window;
            }
            isFewest = last;
        }
    } catch (const Stopped&) {
        m_isOut = true;
    }
    return best;
}

} // namespace caprail::solver
