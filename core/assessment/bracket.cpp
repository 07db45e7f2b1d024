// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <assessment/bracket.h>
#include <assessment/budget_of.h>
#include <assessment/feel_study.h>
#include <cmath>
#include <base/say.h>

namespace caprail {

namespace {

/// The flatness of a straightedge, as it was known when an entry was made.
UncertaintyBudget flatnessOf(const Facts& facts, const std::string& name, std::int64_t entry) {
    UncertaintyBudget budget;
    const InstrumentAdded* edge = facts.instrumentAt(name, entry);
    if (edge == nullptr) {
        budget.missing.push_back({Missing::What::straightedge, {}});
    } else if (!edge->limitOfError || edge->limitOfError->value <= Length()) {
        budget.missing.push_back({Missing::What::limitOfError, name});
    } else {
        UncertaintyTerm term;
        term.name = Core::say("straightedge flatness");
        term.standardUncertainty = rectangular(edge->limitOfError->value);
        budget.terms.push_back(std::move(term));
    }
    return budget;
}

/// Adds the terms of b, which are independent of those of a.
UncertaintyBudget together(UncertaintyBudget a, const UncertaintyBudget& b) {
    a.terms.insert(a.terms.end(), b.terms.begin(), b.terms.end());
    a.missing.insert(a.missing.end(), b.missing.begin(), b.missing.end());
    return a;
}

Length thicknessOf(const Facts& facts, const std::vector<std::string>& shims) {
    Length sum;
    for (const auto& name : shims) {
        sum += facts.shims.find(name)->second.thickness();
    }
    return sum;
}

/// How good an exchange is: how far from what is wanted, once it is too far; with how many shims; how far; by which names.
auto rank(const Exchange& e, Length wanted) {
    constexpr Length nearEnough = tenths(1);
    const Length off = (e.change - wanted).magnitude();
    return std::tuple(off > nearEnough ? off : Length(), e.out.size() + e.in.size(), off, e.out, e.in);
}

/// Up to two of some shims, with what they come to.
struct Some {
    std::vector<std::string> shims;
    Length thickness;
};

std::vector<Some> upToTwo(const std::vector<std::pair<std::string, Length>>& shims) {
    std::vector<Some> list{{}};
    for (std::size_t i = 0; i < shims.size(); ++i) {
        list.push_back({{shims[i].first}, shims[i].second});
        for (std::size_t j = i + 1; j < shims.size(); ++j) {
            list.push_back({{shims[i].first, shims[j].first}, shims[i].second + shims[j].second});
        }
    }
    return list;
}

} // namespace

Result<Exchange> exchangeOf(const Facts& facts, Position p, const std::vector<std::string>& out,
                            const std::vector<std::string>& in) {
    const auto stack = facts.stacks.find(p);
    if (stack == facts.stacks.end()) {
        return refuse(Core::say("There is no stack at %1: build it first.", describe(p)));
    }
    for (const auto& name : out) {
        if (std::ranges::find(stack->second.shims, name) == stack->second.shims.end()) {
            return refuse(Core::say("Shim %1 does not lie in the stack at %2: name those that were taken out of it.", name,
                                    describe(p)));
        }
    }
    for (const auto* names : {&out, &in}) {
        for (const auto& name : *names) {
            const auto shim = facts.shims.find(name);
            if (shim == facts.shims.end()) {
                return refuse(Core::say("The kit has no shim %1: add it first.", name));
            }
            if (!shim->second.measured()) {
                return refuse(Core::say("Shim %1 was never measured: measure it with the micrometer before it is "
                                        "exchanged.",
                                        name));
            }
            if (std::ranges::count(*names, name) > 1) {
                return refuse(Core::say("Shim %1 is named twice: there is one of it.", name));
            }
            if (names == &in && shim->second.inStackAt) {
                return refuse(Core::say("Shim %1 lies in the stack at %2 already: the same shim cannot be in two stacks.",
                                        name, describe(*shim->second.inStackAt)));
            }
        }
    }
    return Exchange{out, in, thicknessOf(facts, in) - thicknessOf(facts, out)};
}

std::optional<FeltResidual> bracketOf(const Facts& facts, const Seen<RecheckMade>& recheck, const Scatter& shims) {
    const RecheckMade& r = recheck.what;
    const bool isBracketed = r.thickerIn && r.thickerOut && r.thinnerIn && r.thinnerOut && r.feel == Feel::drags &&
                             r.thickerFelt == Feel::rocks && r.thinnerFelt == Feel::loose;
    if (!isBracketed) {
        return {};
    }
    const auto areKnown = [&](const NameList& list) {
        return std::ranges::all_of(list.names, [&](const auto& name) { return facts.shims.contains(name); });
    };
    if (!areKnown(*r.thickerIn) || !areKnown(*r.thickerOut) || !areKnown(*r.thinnerIn) || !areKnown(*r.thinnerOut)) {
        return {};
    }
    const Length thicker = thicknessOf(facts, r.thickerIn->names) - thicknessOf(facts, r.thickerOut->names);
    const Length thinner = thicknessOf(facts, r.thinnerOut->names) - thicknessOf(facts, r.thinnerIn->names);
    if (thicker <= Length() || thinner <= Length()) {
        return {};
    }
    const Coverage coverage = coverageOf(facts);
    // Each end of the bracket has its own error; the larger of both counts for both.
    UncertaintyBudget ends = exchangeBudgetOf(facts, r.thickerIn->names, r.thickerOut->names, shims);
    UncertaintyBudget other = exchangeBudgetOf(facts, r.thinnerIn->names, r.thinnerOut->names, shims);
    if (other.missing.size() > ends.missing.size() ||
        (other.missing.empty() && ends.missing.empty() && other.combined() > ends.combined())) {
        std::swap(ends, other);
    }
    ends = together(std::move(ends), flatnessOf(facts, r.instrument, recheck.entry));
    const double half = static_cast<double>((thicker + thinner).value()) / 2;
    UncertaintyTerm between;
    between.name = Core::say("bracket");
    between.standardUncertainty = rectangular(half);
    UncertaintyBudget whole = ends;
    whole.terms.push_back(std::move(between));
    const Length middle((thicker - thinner).value() / 2);
    const Uncertainty left(ends, coverage);
    const Uncertainty all(whole, coverage);
    if (!left.isKnown() || !all.isKnown()) {
        return FeltResidual{middle, left};
    }
    Uncertainty::Known known = *all.known();
    known.expanded = std::min(known.expanded, half + left.known()->expanded);
    return FeltResidual{middle, Uncertainty(known)};
}

Uncertainty bracketEnd(const Facts& facts, const Exchange& exchange, const std::string& straightedge,
                       const Scatter& shims) {
    return {together(exchangeBudgetOf(facts, exchange.in, exchange.out, shims),
                     flatnessOf(facts, straightedge, facts.lastEntry + 1)),
            coverageOf(facts)};
}

std::optional<FeltResidual> byFeel(const Facts& facts, const Seen<RecheckMade>& recheck) {
    if (recheck.what.feel != Feel::drags) {
        return {};
    }
    const auto limit = feelLimitAt(facts, recheck.person, recheck.what.instrument, recheck.entry, recheck.time);
    const Uncertainty flatness(flatnessOf(facts, recheck.what.instrument, recheck.entry), coverageOf(facts));
    if (!limit || !flatness.isKnown()) {
        return {};
    }
    Uncertainty::Known known;
    known.expanded = std::hypot(static_cast<double>(limit->value()), flatness.known()->expanded);
    known.standard = known.expanded / known.coverageFactor;
    return FeltResidual{Length(), Uncertainty(known)};
}

std::optional<Exchange> exchangeFor(const Facts& facts, Position p, Length wanted) {
    const auto stack = facts.stacks.find(p);
    if (stack == facts.stacks.end() || wanted == Length()) {
        return {};
    }
    std::vector<std::pair<std::string, Length>> inside;
    std::vector<std::pair<std::string, Length>> outside;
    for (const auto& [name, shim] : facts.shims) {
        if (const auto measured = shim.measured()) {
            if (std::ranges::find(stack->second.shims, name) != stack->second.shims.end()) {
                inside.emplace_back(name, *measured);
            } else if (!shim.inStackAt && !shim.isSetAside) {
                outside.emplace_back(name, *measured);
            }
        }
    }
    std::optional<Exchange> best;
    const auto ins = upToTwo(outside);
    for (const Some& out : upToTwo(inside)) {
        for (const Some& in : ins) {
            const Length change = in.thickness - out.thickness;
            const bool isThatWay = wanted > Length() ? change + change >= wanted : change + change <= wanted;
            // Far-off ones, by far the most, are not worth the copy of their names.
            if (!isThatWay || (best && (change - wanted).magnitude() > (best->change - wanted).magnitude() + tenths(1))) {
                continue;
            }
            Exchange exchange{out.shims, in.shims, change};
            if (!best || rank(exchange, wanted) < rank(*best, wanted)) {
                best = std::move(exchange);
            }
        }
    }
    return best;
}

} // namespace caprail
