// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/forces.h>
#include <shims/solver/incumbent.h>

namespace caprail::solver {

Incumbent::Incumbent(const Instance& instance)
    : m_instance(instance), m_stacks(instance.seats.size()), m_figures(judge(instance, m_stacks)) {}

Figures Incumbent::judge(const Instance& instance, const Stacks& stacks) {
    Figures f;
    f.largest = instance.fixedLargest;
    f.sum = instance.fixedSum;
    f.twist = instance.fixedTwist;
    Forces forces = instance.fixedLoad;
    for (std::size_t p = 0; p < stacks.size(); ++p) {
        if (!stacks[p]) {
            continue;
        }
        const Seat& at = instance.seats[p];
        std::int64_t residual = at.gap;
        for (const Part& part : *stacks[p]) {
            residual -= part.count * instance.thickness[part.cls];
            f.shims += part.count;
        }
        residual = at.residualCounts ? residual : 0;
        ++f.served;
        f.largest = std::max(f.largest, magnitude(residual));
        f.sum += magnitude(residual);
        f.twist += at.weight * residual;
        addTo(forces, at, residual);
    }
    f.twist = magnitude(f.twist);
    f.load = largestOf(forces);
    f.squares = squaresOf(forces);
    return f;
}

bool Incumbent::offer(const Stacks& stacks) {
    const Figures found = judge(m_instance, stacks);
    if (found.rank(m_instance) >= m_figures.rank(m_instance)) {
        return false;
    }
    m_figures = found;
    ++m_revision;
    m_stacks = stacks;
    return true;
}

} // namespace caprail::solver
