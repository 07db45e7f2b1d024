// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/measured_terms.h>

namespace caprail {

Length usualStep(InstrumentType type) {
    switch (type) {
    case InstrumentType::micrometer:
    case InstrumentType::boreGauge:
    case InstrumentType::stretchGauge:
        return tenths(1);
    case InstrumentType::dialIndicator:
    case InstrumentType::straightedge:
        return tenths(5);
    case InstrumentType::gaugingStrip:
    case InstrumentType::depthGauge:
    case InstrumentType::calliper:
    case InstrumentType::feelerGauge:
    case InstrumentType::torqueWrench:
    case InstrumentType::angleGauge:
        break;
    }
    return thou(1);
}

void InstrumentsBehind::take(const std::string& instrument, const InstrumentAdded* known, std::optional<Length> digit) {
    all.insert(instrument);
    const auto its =
        known != nullptr && known->limitOfError ? std::optional(known->limitOfError->value) : std::nullopt;
    if (instrument.empty()) {
        m_isUnnamed = true;
        name.clear();
        limit.reset();
    } else if (!m_isUnnamed && !its) {
        m_isUnknown = true;
        name = instrument;
        limit.reset();
    } else if (!m_isUnnamed && !m_isUnknown && (m_isFirst || *its > limit.value_or(Length()))) {
        name = instrument;
        limit = its;
    }
    const auto said = known != nullptr && known->setWith && !known->setWith->empty() ? known->setWith : std::nullopt;
    setWith = m_isFirst || setWith == said ? said : std::nullopt;
    m_isFirst = false;
    // A step that was stated counts; else what was typed, where a coarser digit is no finer for being short.
    const Length read = known != nullptr && known->step ? known->step->value
                        : digit                         ? *digit
                        : known != nullptr              ? usualStep(known->type)
                                                        : Length();
    step = std::max(step, read);
}

void shareZero(MeasuredTerm& term) {
    if (term.limitOfError) {
        term.limitOfError = Length((term.limitOfError->value() + 1) / 2);
        term.zeroError = *term.limitOfError;
    }
}

UncertaintyBudget orNotKnown(Result<UncertaintyBudget> budget) {
    if (budget) {
        return std::move(*budget);
    }
    UncertaintyBudget unknown;
    unknown.missing.push_back(Missing{});
    return unknown;
}

} // namespace caprail
