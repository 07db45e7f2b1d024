// SPDX-License-Identifier: GPL-3.0-or-later
#include "load_text.h"

#include <QJsonArray>

namespace caprail {

namespace {

QString shownText(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QJsonArray matrixJson(const GirdleModel& model, Rail rail) {
    QJsonArray rows;
    const std::size_t n = model.places().size();
    for (std::size_t i = 0; i < n; ++i) {
        QJsonArray row;
        for (std::size_t j = 0; j < n; ++j) {
            row.append(inPoundsPerThou(model.stiffness(rail, i, j)));
        }
        rows.append(row);
    }
    return rows;
}

QJsonValue poundsJson(const std::optional<Force>& force) {
    return force ? QJsonValue(inPoundsForce(*force)) : QJsonValue();
}

/// One member per place.
template <class Get> QJsonObject byPlace(const BlockLoad& load, Get get) {
    QJsonObject json;
    for (const PlaceLoad& at : load.places) {
        json[shownText(code(at.place))] = get(at);
    }
    return json;
}

QJsonArray codesJson(const std::vector<Position>& places) {
    QJsonArray list;
    for (const Position p : places) {
        list.append(shownText(code(p)));
    }
    return list;
}

} // namespace

QJsonObject loadJson(const GirdleModel& model, const BlockLoad& load) {
    QJsonArray assumptions;
    for (const std::string& sentence : load.assumptions) {
        assumptions.append(shownText(sentence));
    }
    QJsonObject json{
        {"places", codesJson(model.places())},
        {"stiffness_lbf_per_thou", matrixJson(model, Rail::held)},
        {"stiffness_free_lbf_per_thou", matrixJson(model, Rail::free)},
        {"residuals_nm", byPlace(load,
                                 [](const PlaceLoad& p) {
                                     return p.isKnown() ? QJsonValue(qint64{p.residual.value()}) : QJsonValue();
                                 })},
        {"loads_lbf", byPlace(load, [](const PlaceLoad& p) { return poundsJson(p.force); })},
        {"loads_uncertainty_lbf", byPlace(load, [](const PlaceLoad& p) { return poundsJson(p.forceUncertainty); })},
        {"loads_free_lbf", byPlace(load, [](const PlaceLoad& p) { return poundsJson(p.forceFree); })},
        {"share_of_preload",
         byPlace(load,
                 [](const PlaceLoad& p) { return p.shareOfPreload ? QJsonValue(*p.shareOfPreload) : QJsonValue(); })},
        {"missing", codesJson(load.missing)},
        {"not_known", load.notKnown.empty() ? QJsonValue() : QJsonValue(shownText(load.notKnown))},
        {"largest_load_lbf", QJsonValue()},
        {"largest_stress_psi", QJsonValue()},
        {"energy_joules", QJsonValue()},
        {"assumptions", assumptions}};
    if (load.held) {
        json["largest_load_lbf"] = inPoundsForce(load.largestAt(Rail::held)->force->magnitude());
        json["largest_stress_psi"] = inPsi(load.held->largestStress);
        json["largest_stress_at_in"] = QJsonArray{inInches(load.held->where.x), inInches(load.held->where.y)};
        json["energy_joules"] = load.held->energy;
    }
    return json;
}

namespace {

QString q(std::string_view text) {
    return QString::fromStdString(visibly(text));
}

QString pullText(Force force) {
    switch (pullOf(force)) {
    case Pull::up:
        return QStringLiteral(", pulls the cap up");
    case Pull::down:
        return QStringLiteral(", presses it down");
    case Pull::none:
        break;
    }
    return QStringLiteral(", does nothing to the cap");
}

QString assumptionsText(const BlockLoad& load) {
    QString text = QStringLiteral("Assumptions\n");
    for (const std::string& sentence : load.assumptions) {
        text += QStringLiteral("    ") + q(sentence) + QStringLiteral("\n");
    }
    return text;
}

} // namespace

QString loadText(const GirdleModel& model, const BlockLoad& load, const Units& units) {
    QString text;
    for (const PlaceLoad& at : load.places) {
        text += q(describe(at.place)).leftJustified(16);
        if (!at.isKnown()) {
            text += at.known == ResidualOf::stale ? QStringLiteral("the stack is stale\n")
                                                  : QStringLiteral("no gap is accepted\n");
            continue;
        }
        text += q(formatSigned(at.residual, units)).rightJustified(14) +
                (at.known == ResidualOf::bareGap ? QStringLiteral("  bare ") : QStringLiteral("  stack"));
        if (at.force) {
            text += q(format(at.force->magnitude(), units)).rightJustified(12) + QStringLiteral(" ") +
                    (at.forceUncertainty ? QStringLiteral("± ") + q(format(*at.forceUncertainty, units))
                                         : QStringLiteral("± not known")) +
                    pullText(*at.force);
            if (at.shareOfPreload) {
                text += QStringLiteral(", %1 of the preload").arg(q(formatPercent(*at.shareOfPreload, units, 1)));
            }
        }
        text += QStringLiteral("\n");
    }
    if (load.held) {
        const PlaceLoad& most = *load.largestAt(Rail::held);
        text += QStringLiteral("Largest load %1 at %2, largest bending stress %3 at %4, energy %5 mJ\n")
                    .arg(q(format(most.force->magnitude(), units)), q(describe(most.place)),
                         q(format(load.held->largestStress, units)))
                    .arg(q(format(load.held->where.x, units) + " behind cap 1, " + format(load.held->where.y, units) +
                           " right of the crank"))
                    .arg(load.held->energy * 1000, 0, 'f', 1);
    }
    text += QStringLiteral("Stiffness at each place alone, rail held:");
    for (std::size_t i = 0; i < model.places().size(); ++i) {
        text += QStringLiteral("%1 %2 %3")
                    .arg(i == 0 ? QString() : QStringLiteral(","), q(code(model.places()[i])),
                         q(format(model.stiffness(Rail::held, i, i), units)));
    }
    return text + QStringLiteral("\n") + (load.notKnown.empty() ? QString() : q(load.notKnown) + QStringLiteral("\n")) +
           assumptionsText(load);
}

} // namespace caprail
