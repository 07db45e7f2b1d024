// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/work_order.h>

#include <algorithm>
#include <assessment/bracket.h>
#include <assessment/fastener_groups.h>
#include <assessment/judged_before.h>
#include <assessment/specified.h>
#include <assessment/tightening_order.h>
#include <base/say.h>
#include <base/text.h>
#include <ledger/band_names.h>
#include <ledger/typed_values.h>

namespace caprail {

namespace {

using enum InstrumentType;

template <class... T> bool isOneOf(InstrumentType type, T... types) {
    return ((type == types) || ...);
}

/// What can measure what; anything else that an entry names is no measurement of it.
struct Fitting {
    InstrumentType type;

    bool operator()(const GapReading&) const { return isOneOf(type, feelerGauge, depthGauge, dialIndicator); }
    bool operator()(const RecheckMade&) const { return isOneOf(type, straightedge, feelerGauge); }
    bool operator()(const JournalReading&) const { return isOneOf(type, micrometer, calliper, dialIndicator); }
    bool operator()(const BoreReading& e) const {
        return e.method == BoreMethod::strip ? isOneOf(type, gaugingStrip)
                                             : isOneOf(type, boreGauge, micrometer, dialIndicator, calliper);
    }
    bool operator()(const ShellMeasured&) const { return isOneOf(type, micrometer, calliper); }
    bool operator()(const ShimMeasured&) const { return isOneOf(type, micrometer, calliper); }
    bool operator()(const FitReading&) const { return !isOneOf(type, torqueWrench, angleGauge, straightedge); }
    bool operator()(const PickupReading&) const {
        return isOneOf(type, depthGauge, micrometer, calliper, dialIndicator);
    }
    bool operator()(const FastenerTightened& e) const {
        return isOneOf(type, torqueWrench) || (!e.torque && isOneOf(type, angleGauge)) ||
               (e.stretch && isOneOf(type, stretchGauge, micrometer));
    }
    bool operator()(const RoundBegun&) const { return isOneOf(type, torqueWrench); }
    bool operator()(const RoundOutcome& e) const {
        return e.by == VerifyMethod::length ? isOneOf(type, stretchGauge, micrometer)
                                            : isOneOf(type, torqueWrench) || (!e.torque && isOneOf(type, angleGauge));
    }
    bool operator()(const ClampChecked&) const { return isOneOf(type, torqueWrench); }
    bool operator()(const TurningTorqueRead&) const { return isOneOf(type, torqueWrench); }
    bool operator()(const ZeroChecked&) const { return !isOneOf(type, torqueWrench, angleGauge, straightedge); }
    bool operator()(const OwnCheckAnswered& e) const {
        return !e.value || !isOneOf(type, torqueWrench, angleGauge, straightedge);
    }
    template <class Other> bool operator()(const Other&) const { return true; }
};

class Order {
public:
    explicit Order(const Facts& facts) : m_facts(facts) {}

    Result<void> operator()(const JournalReading& e) const { return crankOut(e.journal, e.instrument, Body(e)); }
    Result<void> operator()(const BoreReading& e) const {
        if (e.method != BoreMethod::strip) {
            if (auto out = crankOut(e.journal, e.instrument, Body(e)); !out) {
                return out;
            }
        }
        if (const auto loose = looseAt(m_facts, e.journal)) {
            return refuse(Core::say("A bore is measured with its cap at full torque: tighten %1 to what is specified "
                                    "first.",
                                    describe(*loose)));
        }
        return instrument(e.instrument, Body(e));
    }
    Result<void> operator()(const GapReading& e) const {
        if (e.doesNotGo && e.doesNotGo->value <= e.gap.value) {
            return refuse(Core::say("What does not go must be more than what goes, %1: give the sum that was tried.",
                                    format(e.gap.value, Units{})));
        }
        if (auto in = crankIn(Core::say("A gap")); !in) {
            return in;
        }
        return instrument(e.instrument, Body(e));
    }
    Result<void> operator()(const FitReading& e) const {
        const bool isEndPlay = e.fit == bands::crankEndPlay;
        const bool isOnTheCrank = isEndPlay || e.fit == bands::rodSideClearance;
        if (auto in = isOnTheCrank ? crankIn(Core::say("This fit")) : Result<void>(); !in) {
            return in;
        }
        if (isEndPlay && m_facts.layout) {
            const auto caps = m_facts.layout->mainFasteners();
            const auto loose = std::ranges::find_if(caps, [&](FastenerId f) { return !isTightAsSpecified(m_facts, f); });
            if (loose != caps.end()) {
                return refuse(Core::say("End play is measured with every main cap at torque: tighten %1 to what is "
                                        "specified first.",
                                        describe(*loose)));
            }
        }
        return instrument(e.instrument, Body(e));
    }
    Result<void> operator()(const RoundBegun& e) const {
        if (auto in = crankIn(Core::say("A verify round")); !in) {
            return in;
        }
        return instrument(e.instrument, Body(e));
    }
    Result<void> operator()(const TrialFitResult&) const {
        if (auto in = crankIn(Core::say("The trial fit")); !in) {
            return in;
        }
        return nutsTight(Core::say("The trial fit"));
    }
    Result<void> operator()(const TurningTorqueRead& e) const {
        if (auto in = crankIn(Core::say("The turning torque")); !in) {
            return in;
        }
        if (e.stage == TurningStage::beforeGirdle && hasNutTight()) {
            return refuse(Core::say("The girdle's nuts are at torque: the turning torque before the girdle is read with it "
                                    "off. Loosen them first, and enter that."));
        }
        if (e.stage != TurningStage::beforeGirdle) {
            if (auto tight = nutsTight(Core::say("The turning torque with the girdle")); !tight) {
                return tight;
            }
        }
        return instrument(e.instrument, Body(e));
    }
    Result<void> operator()(const OwnCheckAnswered& e) const { return instrument(e.instrument, Body(e)); }
    Result<void> operator()(const RecheckMade& e) const {
        const auto exchange = [&](const std::optional<NameList>& out, const std::optional<NameList>& in, int sign) {
            if (!out && !in) {
                return Result<void>();
            }
            const auto made = exchangeOf(m_facts, e.position, out.value_or(NameList{}).names, in.value_or(NameList{}).names);
            if (!made) {
                return Result<void>(tl::unexpected(made.error()));
            }
            if (made->change * sign <= Length()) {
                return Result<void>(
                    refuse(sign > 0 ? Core::say("The exchange named as thicker is not thicker: look at its shims.")
                                    : Core::say("The exchange named as thinner is not thinner: look at its shims.")));
            }
            return Result<void>();
        };
        if (auto thicker = exchange(e.thickerOut, e.thickerIn, 1); !thicker) {
            return thicker;
        }
        if (auto thinner = exchange(e.thinnerOut, e.thinnerIn, -1); !thinner) {
            return thinner;
        }
        return instrument(e.instrument, Body(e));
    }
    Result<void> operator()(const JudgedAgain& e) const {
        if (isBlank(e.why)) {
            return refuse(Core::say("Say why the values may be accepted: a reason is required."));
        }
        return {};
    }
    Result<void> operator()(const CrankLaidIn& e) const {
        if (e.isIn == m_facts.isCrankIn()) {
            return refuse(e.isIn ? Core::say("The crank is in already.") : Core::say("The crank is not in."));
        }
        return {};
    }
    Result<void> operator()(const InstrumentAdded& e) const {
        if (e.limitOfError && e.limitOfError->value <= Length()) {
            return refuse(Core::say("A limit of error is more than zero: take it from the certificate, or leave it empty "
                                    "while it is not known."));
        }
        return {};
    }
    Result<void> operator()(const ShellMeasured& e) const { return instrument(e.instrument, Body(e)); }
    Result<void> operator()(const ZeroChecked& e) const { return instrument(e.instrument, Body(e)); }
    Result<void> operator()(const ShimMeasured& e) const { return instrument(e.instrument, Body(e)); }
    Result<void> operator()(const PickupReading& e) const { return instrument(e.instrument, Body(e)); }
    Result<void> operator()(const FastenerTightened& e) const { return instrument(e.instrument, Body(e)); }
    Result<void> operator()(const RoundOutcome& e) const {
        const auto* group = m_facts.groupOf(e.fastener);
        const VerifyMethod wanted = group == nullptr ? VerifyMethod::torque : verifiedBy(group->what);
        if (wanted != VerifyMethod::torque && (e.torque || e.by.value_or(VerifyMethod::torque) != wanted)) {
            return refuse(wanted == VerifyMethod::length
                              ? Core::say("%1 must not be pulled again: read its stretch, and enter that.",
                                          describe(e.fastener))
                              : Core::say("%1 must not be pulled again: look whether its witness mark still lines up, and "
                                          "enter that.",
                                          describe(e.fastener)));
        }
        return instrument(e.instrument, Body(e));
    }
    Result<void> operator()(const ClampChecked& e) const {
        if (!isTightAsSpecified(m_facts, e.fastener)) {
            return refuse(Core::say("A clamp is checked on a fastener that is tight as specified: tighten %1 first.",
                                    describe(e.fastener)));
        }
        return instrument(e.instrument, Body(e));
    }
    template <class Other> Result<void> operator()(const Other&) const { return {}; }

private:
    [[nodiscard]] Result<void> instrument(const std::string& name, const Body& body) const {
        const InstrumentAdded* known = m_facts.instrumentAt(name, m_facts.lastEntry + 1);
        if (known == nullptr || fits(known->type, body)) {
            return {};
        }
        return refuse(Core::say("%1 is a %2, which cannot do this: name the instrument that was used.", name,
                                shown(known->type)));
    }
    [[nodiscard]] Result<void> crankOut(JournalId j, const std::string& name, const Body& body) const {
        if (j.kind == JournalKind::main && m_facts.isCrankIn()) {
            return refuse(Core::say("The crank is laid in: a main's bore and journal are measured before. Lift it out "
                                    "first, and enter that."));
        }
        return instrument(name, body);
    }
    [[nodiscard]] Result<void> crankIn(const std::string& what) const {
        return m_facts.isCrankIn()
                   ? Result<void>()
                   : refuse(Core::say("%1 comes after the crank is laid in and its caps are at torque: enter that first.",
                                      what));
    }
    [[nodiscard]] Result<void> nutsTight(const std::string& what) const {
        const auto loose = looseNut(m_facts);
        return loose ? refuse(Core::say("%1 counts only with the girdle's nuts at torque: tighten %2 to what is specified "
                                        "first.",
                                        what, describe(*loose)))
                     : Result<void>();
    }
    [[nodiscard]] bool hasNutTight() const {
        const auto nuts = m_facts.layout ? m_facts.layout->girdleNuts() : std::vector<FastenerId>{};
        return std::ranges::any_of(nuts, [&](FastenerId f) { return isTightAsSpecified(m_facts, f); });
    }

    const Facts& m_facts;
};

} // namespace

std::optional<FastenerId> looseNut(const Facts& facts) {
    if (!facts.layout) {
        return {};
    }
    const auto nuts = facts.layout->girdleNuts();
    const auto at = std::ranges::find_if(nuts, [&](FastenerId f) { return !isTightAsSpecified(facts, f); });
    return at == nuts.end() ? std::nullopt : std::optional(*at);
}

bool fits(InstrumentType type, const Body& body) {
    return body.visit(Fitting{type});
}

Result<void> isInOrder(const Facts& facts, const Body& body) {
    if (auto contradiction = contradictionIn(body)) {
        return refuse(std::move(*contradiction));
    }
    if (auto unreadable = unreadableIn(body)) {
        return refuse(std::move(*unreadable));
    }
    if (lacksReason(facts, body)) {
        return refuse(Core::say("Entry %1 was judged by what this changes: say why it is changed, a reason is required.",
                                judgedBefore(facts, body)));
    }
    return body.visit(Order(facts));
}

} // namespace caprail
