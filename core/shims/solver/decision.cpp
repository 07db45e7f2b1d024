// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/decision.h>

namespace caprail::solver {

namespace {
/// A seat with more stacks than this is first tried with those nearest to its gap.
constexpr double plenty = 400;
} // namespace

Limits Decision::limitsFor(const Question& question) {
    Limits limits;
    limits.shims = question.shims;
    limits.largestResidual = question.window;
    limits.leftOut = question.leftOut;
    return limits;
}

void Decision::offer(const Columns& columns, const Found& found) {
    Stacks stacks(columns.size());
    for (std::size_t p = 0; p < columns.size(); ++p) {
        if (found.column[p] >= 0) {
            const Column& c = columns[p][static_cast<std::size_t>(found.column[p])];
            stacks[p] = std::vector<Part>(c.parts, c.parts + c.partCount);
        }
    }
    m_incumbent.offer(stacks);
}

Answer Decision::fromListed(const Question& question, std::int64_t steps, unsigned probe) {
    Columns columns = m_store.columnsFor(question);
    static const Prices none;
    const Prices forShims = m_store.prices();
    price(columns, forShims, none, m_clock);
    sortColumns(columns, Cost::shims, m_clock);
    Search search(m_open.instance(), columns, forShims, none, m_clock);
    search.probe(probe);
    search.share(m_failures, m_store.listingFor(question));
    bool found = false;
    const SearchOutcome outcome = search.run(limitsFor(question), steps, [&](const Found& f, Limits&) {
        offer(columns, f);
        found = true;
        return false;
    });
    if (found) {
        return Answer::yes;
    }
    return outcome == SearchOutcome::exhausted ? Answer::no : isAnswered(question) ? Answer::yes : Answer::unknown;
}

/// Another search may have found such a plan meanwhile.
bool Decision::isAnswered(const Question& question) const {
    const Figures best = m_incumbent.figures();
    return best.served >= static_cast<int>(m_open.count()) - question.leftOut && best.shims <= question.shims &&
           best.largest <= std::max(question.window, m_open.instance().fixedLargest);
}

Answer Decision::decide(const Question& question, int fewestShims) {
    if (isAnswered(question)) {
        return Answer::yes;
    }
    if (question.shims < m_open.fewestInAll(question.leftOut)) {
        return Answer::no;
    }
    if (m_kits.decide(limitsFor(question), fewestShims, 0) == Answer::no ||
        m_store.boundFor(question) > scale * question.shims) {
        return Answer::no;
    }
    // Where there are plenty, the stacks nearest to the gap usually do.
    for (std::size_t p = 0; p < m_open.count(); ++p) {
        const double expected = m_store.expectedStacks(p, m_open.fewest(p));
        std::int64_t window = std::min(question.window, m_open.bandOf(p));
        if (expected > plenty) {
            window = std::min(window, static_cast<std::int64_t>(static_cast<double>(window) * plenty / expected));
        }
        if (!m_store.extend(p, m_open.fewest(p), window)) {
            return Answer::unknown;
        }
    }
    bool listed = m_store.isListed(question);
    Answer answer = fromListed(question, firstSteps);
    if (answer == Answer::yes || (answer == Answer::no && listed)) {
        return answer;
    }
    if (m_kits.decide(limitsFor(question), fewestShims, kitSteps / 16) == Answer::yes) {
        return Answer::yes;
    }
    if (!listed) {
        const std::size_t before = m_store.revision();
        for (std::size_t p = 0; p < m_open.count(); ++p) {
            int size = m_open.fewest(p);
            while (size < m_open.most(p, question) && m_store.expectedStacks(p, size + 1) < 4000) {
                ++size;
            }
            if (!m_store.extend(p, size, question.window)) {
                return Answer::unknown;
            }
        }
        listed = m_store.isListed(question);
        if (m_store.revision() > before) {
            answer = fromListed(question, firstSteps);
        }
        if (answer == Answer::yes || (answer == Answer::no && listed)) {
            return answer;
        }
    }
    return byPrices(question, fewestShims);
}

/// The full treatment: prices until the bound settles it or stands still, then a search to the end over all stacks
/// that the prices leave possible.
Answer Decision::byPrices(const Question& question, int fewestShims) {
    auto listing = ColumnStore::Listing::extended;
    for (int rounds = 200; listing == ColumnStore::Listing::extended; rounds = 60) {
        const std::int64_t bound = m_store.raisePrices(question, rounds);
        if (bound > scale * question.shims) {
            return Answer::no;
        }
        if (rounds == 200 && m_kits.decide(limitsFor(question), fewestShims, kitSteps) == Answer::yes) {
            return Answer::yes;
        }
        // Before more stacks are listed: are those that are enough?
        if (rounds == 200 && atLength(question, fewestShims, firstSteps, firstSteps) == Answer::yes) {
            return Answer::yes;
        }
        if (m_store.listByPrice(question)) {
            return atLength(question, fewestShims, firstSteps, never);
        }
        listing = m_store.listMore(question);
    }
    const Answer answer = atLength(question, fewestShims, 4 * firstSteps, never);
    return answer == Answer::no && listing == ColumnStore::Listing::noRoom ? Answer::unknown : answer;
}

/// A search to the end, and between whiles short tries at a plan: where plans are many but hard to come by, the one
/// never ends and the other is quick; where there is none, only the one can show it.
Answer Decision::atLength(const Question& question, int fewestShims, std::int64_t steps, std::int64_t mostSteps) {
    for (; steps <= mostSteps; steps *= 4) {
        if (m_kits.decide(limitsFor(question), fewestShims, steps) == Answer::yes) {
            return Answer::yes;
        }
        for (unsigned probe = 0; probe <= probes; ++probe) {
            const Answer answer = fromListed(question, probe == 0 ? steps : steps / 4, probe);
            if (answer != Answer::unknown) {
                return answer;
            }
        }
    }
    return Answer::unknown;
}

} // namespace caprail::solver
