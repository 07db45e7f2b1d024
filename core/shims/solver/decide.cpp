// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/stages.h>

namespace caprail::solver {

namespace {
/// A place with more stacks than this is first tried with those nearest to its gap.
constexpr double plenty = 400;
} // namespace

Stages::Answer Stages::decideFromListed(const Aim& aim, std::int64_t steps, unsigned probe) {
    Columns columns = columnsFor(aim);
    price(columns, m_prices, {}, m_clock);
    sortColumns(columns, Cost::shims, m_clock);
    Search search(m_instance, columns, m_prices, {}, m_clock);
    search.probe(probe);
    bool found = false;
    const Outcome outcome = search.run(limitsFor(aim), steps, [&](const Found& f, Limits&) {
        keep(columns, f);
        found = true;
        return false;
    });
    if (found) {
        return Answer::yes;
    }
    return outcome == Outcome::exhausted ? Answer::no : Answer::unknown;
}

Stages::Answer Stages::decide(const Aim& aim) {
    if (aim.shims < fewestInAll(aim.leftOut)) {
        return Answer::no;
    }
    if (decideByKit(limitsFor(aim), 0) == Answer::no || boundFor(aim) > scale * aim.shims) {
        return Answer::no;
    }
    // Where there are plenty, the stacks nearest to the gap usually do.
    for (std::size_t p = 0; p < m_pools.size(); ++p) {
        const double expected = expectedStacks(p, m_fewest[p]);
        std::int64_t window = std::min(aim.window, m_pools[p].wholeBand());
        if (expected > plenty) {
            window = std::min(window, static_cast<std::int64_t>(static_cast<double>(window) * plenty / expected));
        }
        if (!extend(p, m_fewest[p], window)) {
            return Answer::unknown;
        }
    }
    bool listed = isListed(aim);
    Answer answer = decideFromListed(aim, firstSteps);
    if (answer == Answer::yes || (answer == Answer::no && listed)) {
        return answer;
    }
    if (decideByKit(limitsFor(aim), kitSteps / 16) == Answer::yes) {
        return Answer::yes;
    }
    if (!listed) {
        const std::size_t before = candidatesListed();
        for (std::size_t p = 0; p < m_pools.size(); ++p) {
            int size = m_fewest[p];
            while (size < mostFor(p, aim) && expectedStacks(p, size + 1) < 4000) {
                ++size;
            }
            if (!extend(p, size, aim.window)) {
                return Answer::unknown;
            }
        }
        listed = isListed(aim);
        if (candidatesListed() > before) {
            answer = decideFromListed(aim, firstSteps);
        }
        if (answer == Answer::yes || (answer == Answer::no && listed)) {
            return answer;
        }
    }
    return decideByPrices(aim);
}

/// The full treatment: prices until the bound settles it or stands still, then a search to the end over all stacks
/// that the prices leave possible.
Stages::Answer Stages::decideByPrices(const Aim& aim) {
    Listing listing = Listing::extended;
    for (int rounds = 200; listing == Listing::extended; rounds = 60) {
        const std::int64_t bound = raisePrices(aim, rounds);
        if (bound > scale * aim.shims) {
            return Answer::no;
        }
        if (rounds == 200 && decideByKit(limitsFor(aim), kitSteps) == Answer::yes) {
            return Answer::yes;
        }
        // Before more stacks are listed: are those that are enough?
        if (rounds == 200 && decideAtLength(aim, firstSteps, firstSteps) == Answer::yes) {
            return Answer::yes;
        }
        if (listByPrice(aim)) {
            return decideAtLength(aim, firstSteps, never);
        }
        listing = listMore(aim);
    }
    const Answer answer = decideAtLength(aim, 4 * firstSteps, never);
    return answer == Answer::no && listing == Listing::noRoom ? Answer::unknown : answer;
}

/// A search to the end, and between whiles short tries at a plan: where plans are many but hard to come by, the one
/// never ends and the other is quick; where there is none, only the one can show it.
Stages::Answer Stages::decideAtLength(const Aim& aim, std::int64_t steps, std::int64_t mostSteps) {
    for (; steps <= mostSteps; steps *= 4) {
        if (decideByKit(limitsFor(aim), steps) == Answer::yes) {
            return Answer::yes;
        }
        for (unsigned probe = 0; probe <= probes; ++probe) {
            const Answer answer = decideFromListed(aim, probe == 0 ? steps : steps / 4, probe);
            if (answer != Answer::unknown) {
                return answer;
            }
        }
    }
    return Answer::unknown;
}

} // namespace caprail::solver
