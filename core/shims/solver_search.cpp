// SPDX-License-Identifier: GPL-3.0-or-later
#include <shims/solver_search.h>

namespace caprail::solver {

Search::Search(const Instance& instance, const Columns& columns, const Stop& stop)
    : m_instance(instance), m_columns(columns), m_stop(stop), m_left(instance.count), m_frames(columns.size() + 3),
      m_chosen(columns.size(), -1) {
    std::int64_t highest = 0;
    bool any = false;
    for (const auto& list : columns) {
        for (const Column& c : list) {
            m_lowest = any ? std::min(m_lowest, c.residual) : c.residual;
            highest = any ? std::max(highest, c.residual) : c.residual;
            any = true;
        }
    }
    m_bitsUsable = highest - m_lowest < 64;
    for (Frame& f : m_frames) {
        f.live.resize(columns.size());
    }
}

bool Search::fits(const Column& c) const {
    for (std::uint16_t i = 0; i < c.partCount; ++i) {
        if (m_left[c.parts[i].cls] < c.parts[i].count) {
            return false;
        }
    }
    return true;
}

void Search::use(const Column& c, int sign) {
    for (std::uint16_t i = 0; i < c.partCount; ++i) {
        m_left[c.parts[i].cls] -= sign * c.parts[i].count;
    }
}

Outcome Search::run(const Limits& limits, std::int64_t steps,
                    const std::function<bool(const Found&, Limits&)>& onFound) {
    m_limits = limits;
    m_onFound = &onFound;
    m_steps = 0;
    m_mostSteps = steps;
    m_gaveUp = false;
    m_left = m_instance.count;
    m_arena.clear();
    m_open.clear();
    Frame& root = m_frames[m_columns.size() + 1];
    root.twist = m_instance.fixedTwist;
    root.leftOut = limits.leftOut;
    for (std::size_t p = 0; p < m_columns.size(); ++p) {
        m_open.push_back(p);
        m_chosen[p] = -1;
        Live& live = root.live[p];
        live = Live{};
        live.begin = m_arena.size();
        for (std::size_t i = 0; i < m_columns[p].size(); ++i) {
            m_arena.push_back(static_cast<std::uint32_t>(i));
        }
        live.end = m_arena.size();
        live.leastShimCost = -never; // nothing is known yet: the first narrowing filters by kit and residual only
        live.leastResidualCost = -never;
    }
    // The second narrowing knows what the places cost at least, and so sheds what no plan within the limits can use.
    Frame& once = m_frames[m_columns.size() + 2];
    if (narrow(root, once) && narrow(once, m_frames[0]) && descend(0) == Next::halt) {
        return m_gaveUp ? Outcome::gaveUp : Outcome::found;
    }
    return Outcome::exhausted;
}

Search::Next Search::report(const Frame& frame) {
    Found found;
    found.column = m_chosen;
    found.twist = magnitude(frame.twist);
    for (std::size_t p = 0; p < m_chosen.size(); ++p) {
        if (m_chosen[p] >= 0) {
            const Column& c = m_columns[p][static_cast<std::size_t>(m_chosen[p])];
            ++found.served;
            found.shims += c.size;
            found.largest = std::max(found.largest, magnitude(c.residual));
            found.sum += magnitude(c.residual);
        }
    }
    return (*m_onFound)(found, m_limits) ? Next::goOn : Next::halt;
}

std::size_t Search::hardest(const Frame& frame) const {
    std::size_t best = 0;
    for (std::size_t i = 1; i < m_open.size(); ++i) {
        const Live& a = frame.live[m_open[i]];
        const Live& b = frame.live[m_open[best]];
        const std::size_t na = a.end - a.begin;
        const std::size_t nb = b.end - b.begin;
        if (na < nb || (na == nb && m_open[i] < m_open[best])) {
            best = i;
        }
    }
    return best;
}

/// Fills `to.live` with those stacks of `from` that still fit; false when the open places cannot be completed.
bool Search::narrow(const Frame& from, Frame& to) {
    to.shimCost = from.shimCost;
    to.residualCost = from.residualCost;
    to.twist = from.twist;
    to.leftOut = from.leftOut;
    const bool bounded = !m_open.empty() && from.live[m_open[0]].leastShimCost > -never;
    const std::int64_t shimRoom = m_limits.shimCost - from.shimCost - from.freeShimCost;
    const std::int64_t residualRoom = m_limits.residualCost - from.residualCost - from.freeResidualCost;
    int empty = 0;
    for (std::size_t p : m_open) {
        const Live& was = from.live[p];
        Live& now = to.live[p];
        now = Live{};
        now.leastShimCost = never;
        now.leastResidualCost = never;
        now.begin = m_arena.size();
        std::int64_t leastResidual = never;
        std::int64_t mostResidual = -never;
        const auto& list = m_columns[p];
        const std::int64_t shimCap = bounded ? shimRoom + was.leastShimCost : never;
        const std::int64_t residualCap = bounded ? residualRoom + was.leastResidualCost : never;
        for (std::size_t i = was.begin; i < was.end; ++i) {
            const std::uint32_t index = m_arena[i];
            const Column& c = list[index];
            if (c.shimCost > shimCap || c.residualCost > residualCap || !fits(c) ||
                magnitude(c.residual) > m_limits.largestResidual) {
                continue;
            }
            m_arena.push_back(index);
            now.leastShimCost = std::min(now.leastShimCost, c.shimCost);
            now.leastResidualCost = std::min(now.leastResidualCost, c.residualCost);
            leastResidual = std::min(leastResidual, c.residual);
            mostResidual = std::max(mostResidual, c.residual);
            if (m_bitsUsable) {
                now.residuals |= std::uint64_t{1} << (c.residual - m_lowest);
            }
        }
        now.end = m_arena.size();
        if (now.begin == now.end) {
            if (++empty > to.leftOut) {
                return false;
            }
            continue;
        }
        const std::int64_t w = m_instance.places[p].weight;
        now.leastTwist = w >= 0 ? w * leastResidual : w * mostResidual;
        now.mostTwist = w >= 0 ? w * mostResidual : w * leastResidual;
        if (to.leftOut > 0) {
            now.leastTwist = std::min<std::int64_t>(now.leastTwist, 0);
            now.mostTwist = std::max<std::int64_t>(now.mostTwist, 0);
        }
    }
    return balance(to) && (m_limits.twist >= never || twistCanClose(to));
}

/// Sums up what the open places cost at least, and compares with the limits.
bool Search::balance(Frame& frame) {
    for (int pass = 0; pass < 2; ++pass) {
        std::int64_t sum = 0;
        int skip = frame.leftOut;
        m_scratch.clear();
        for (std::size_t p : m_open) {
            const Live& live = frame.live[p];
            const std::int64_t least = pass == 0 ? live.leastShimCost : live.leastResidualCost;
            if (live.begin == live.end) {
                --skip; // narrow() has made sure that it may be left out
            } else if (frame.leftOut > 0) {
                m_scratch.push_back(least);
            } else {
                sum += least;
            }
        }
        std::sort(m_scratch.begin(), m_scratch.end());
        for (std::size_t i = 0; i + static_cast<std::size_t>(skip) < m_scratch.size(); ++i) {
            sum += m_scratch[i];
        }
        (pass == 0 ? frame.freeShimCost : frame.freeResidualCost) = sum;
    }
    return frame.shimCost + frame.freeShimCost <= m_limits.shimCost &&
           frame.residualCost + frame.freeResidualCost <= m_limits.residualCost;
}

/// Whether the residuals that are still on offer can bring the twist sum within its limit, each place by itself.
bool Search::twistCanClose(const Frame& frame) {
    std::int64_t least = frame.twist;
    std::int64_t most = frame.twist;
    for (std::size_t p : m_open) {
        least += frame.live[p].leastTwist;
        most += frame.live[p].mostTwist;
    }
    if (least > m_limits.twist || most < -m_limits.twist) {
        return false;
    }
    const std::int64_t width = most - least + 1;
    if (!m_bitsUsable || width > 8192 || width <= 1) {
        return true;
    }
    // The set of all reachable sums, bit s − least.
    const auto words = static_cast<std::size_t>(width / 64 + 1);
    m_reachable.assign(words, 0);
    m_reachable[0] = 1;
    for (std::size_t p : m_open) {
        const Live& live = frame.live[p];
        const std::int64_t w = m_instance.places[p].weight;
        if (w == 0 || live.begin == live.end) {
            continue;
        }
        m_shifted.assign(words, 0);
        const auto join = [&](std::int64_t by) {
            const auto whole = static_cast<std::size_t>(by / 64);
            const auto bits = static_cast<unsigned>(by % 64);
            for (std::size_t i = words; i-- > whole;) {
                std::uint64_t v = m_reachable[i - whole] << bits;
                if (bits != 0 && i > whole) {
                    v |= m_reachable[i - whole - 1] >> (64 - bits);
                }
                m_shifted[i] |= v;
            }
        };
        for (std::uint64_t rest = live.residuals; rest != 0; rest &= rest - 1) {
            const std::int64_t residual = m_lowest + __builtin_ctzll(rest);
            join(w * residual - live.leastTwist);
        }
        if (frame.leftOut > 0) {
            join(-live.leastTwist);
        }
        m_reachable.swap(m_shifted);
    }
    const std::int64_t from = std::max<std::int64_t>(0, -m_limits.twist - least);
    const std::int64_t to = std::min(width - 1, m_limits.twist - least);
    for (std::int64_t s = from; s <= to; ++s) {
        if ((m_reachable[static_cast<std::size_t>(s / 64)] >> (s % 64)) & 1U) {
            return true;
        }
    }
    return false;
}

Search::Next Search::descend(std::size_t depth) {
    if (++m_steps > m_mostSteps || (m_steps % 256 == 0 && m_stop && m_stop())) {
        m_gaveUp = true;
        return Next::halt;
    }
    Frame& frame = m_frames[depth];
    if (m_open.empty()) {
        return report(frame);
    }
    Frame& next = m_frames[depth + 1];
    const std::size_t at = hardest(frame);
    const std::size_t place = m_open[at];
    m_open[at] = m_open.back();
    m_open.pop_back();
    const Live live = frame.live[place];
    const std::size_t mark = m_arena.size();
    Next result = Next::goOn;
    const std::int64_t shimBefore = frame.shimCost;
    const std::int64_t residualBefore = frame.residualCost;
    const std::int64_t twistBefore = frame.twist;
    const std::int64_t freeShimBefore = frame.freeShimCost;
    const std::int64_t freeResidualBefore = frame.freeResidualCost;
    const std::int64_t leastShim = live.begin == live.end ? 0 : live.leastShimCost;
    const std::int64_t leastResidual = live.begin == live.end ? 0 : live.leastResidualCost;
    for (std::size_t i = live.begin; i < live.end && result == Next::goOn; ++i) {
        const std::uint32_t index = m_arena[i];
        const Column& c = m_columns[place][index];
        if (c.shimCost - leastShim + shimBefore + freeShimBefore > m_limits.shimCost ||
            c.residualCost - leastResidual + residualBefore + freeResidualBefore > m_limits.residualCost ||
            magnitude(c.residual) > m_limits.largestResidual) {
            continue;
        }
        frame.shimCost = shimBefore + c.shimCost;
        frame.residualCost = residualBefore + c.residualCost;
        frame.freeShimCost = freeShimBefore - leastShim;
        frame.freeResidualCost = freeResidualBefore - leastResidual;
        frame.twist = twistBefore + m_instance.places[place].weight * c.residual;
        use(c, 1);
        m_chosen[place] = static_cast<int>(index);
        if (narrow(frame, next)) {
            result = descend(depth + 1);
        }
        use(c, -1);
        m_arena.resize(mark);
    }
    m_chosen[place] = -1;
    if (result == Next::goOn && frame.leftOut > 0) {
        frame.shimCost = shimBefore;
        frame.residualCost = residualBefore;
        frame.freeShimCost = -never / 2; // the costliest may have been this one: no filtering by it on the way down
        frame.freeResidualCost = -never / 2;
        frame.twist = twistBefore;
        --frame.leftOut;
        if (narrow(frame, next)) {
            result = descend(depth + 1);
        }
        ++frame.leftOut;
        m_arena.resize(mark);
    }
    frame.shimCost = shimBefore;
    frame.residualCost = residualBefore;
    frame.freeShimCost = freeShimBefore;
    frame.freeResidualCost = freeResidualBefore;
    frame.twist = twistBefore;
    m_open.push_back(place);
    std::swap(m_open[at], m_open.back());
    return result;
}

} // namespace caprail::solver
