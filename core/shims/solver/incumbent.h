// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <optional>
#include <shims/solver/figures.h>
#include <shims/solver/instance.h>
#include <vector>

namespace caprail::solver {

/// Per seat a stack; not set: left unserved.
using Stacks = std::vector<std::optional<std::vector<Part>>>;

/// The best plan found so far, whoever found it: it only gets better. Every search offers what it finds here, and takes
/// its upper bound from here.
class Incumbent {
public:
    /// Begins with no seat served.
    explicit Incumbent(const Instance& instance);

    /// Keeps the plan if it ranks before the best so far; says so.
    bool offer(const Stacks& stacks);

    [[nodiscard]] Figures figures() const { return m_figures; }
    [[nodiscard]] const Stacks& stacks() const { return m_stacks; }
    /// How often it has got better.
    [[nodiscard]] std::size_t revision() const { return m_revision; }

    static Figures judge(const Instance& instance, const Stacks& stacks);

private:
    const Instance& m_instance;
    Stacks m_stacks;
    Figures m_figures;
    std::size_t m_revision = 0;
};

} // namespace caprail::solver
