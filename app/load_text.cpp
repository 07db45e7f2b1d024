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

/// One member per place; what is not known is null.
template <class Get> QJsonObject byPlace(const BlockLoad& load, Get get) {
    QJsonObject json;
    for (std::size_t i = 0; i < load.places.size(); ++i) {
        json[shownText(code(load.places[i].place))] = get(i);
    }
    return json;
}

/// The same of what hangs on every residual.
template <class Get> QJsonObject whereKnown(const BlockLoad& load, Get get) {
    return byPlace(load, [&](std::size_t i) { return load.known ? QJsonValue(get(*load.known, i)) : QJsonValue(); });
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
                                 [&](std::size_t i) {
                                     const PlaceResidual& at = load.places[i];
                                     return at.isKnown() ? QJsonValue(qint64{at.residual.value()}) : QJsonValue();
                                 })},
        {"loads_lbf",
         whereKnown(load, [](const KnownLoad& known, std::size_t i) { return inPoundsForce(known.held.force[i]); })},
        {"loads_uncertainty_lbf", whereKnown(load,
                                             [](const KnownLoad& known, std::size_t i) {
                                                 return known.uncertainty
                                                            ? QJsonValue(inPoundsForce((*known.uncertainty)[i]))
                                                            : QJsonValue();
                                             })},
        {"loads_free_lbf",
         whereKnown(load, [](const KnownLoad& known, std::size_t i) { return inPoundsForce(known.free.force[i]); })},
        {"share_of_preload", whereKnown(load,
                                        [](const KnownLoad& known, std::size_t i) {
                                            const std::optional<double> share = known.shareOfPreload[i];
                                            return share ? QJsonValue(*share) : QJsonValue();
                                        })},
        {"missing", codesJson(load.missing)},
        {"not_known", load.known ? QJsonValue() : QJsonValue(shownText(load.known.error().sentence))},
        {"largest_load_lbf", QJsonValue()},
        {"largest_stress_psi", QJsonValue()},
        {"energy_joules", QJsonValue()},
        {"assumptions", assumptions}};
    if (load.known) {
        const GirdleLoad& held = load.known->held;
        json["largest_load_lbf"] = inPoundsForce(held.force[load.known->largestAt(Rail::held)].magnitude());
        json["largest_stress_psi"] = inPsi(held.largestStress);
        json["largest_stress_at_in"] = QJsonArray{inInches(held.where.x), inInches(held.where.y)};
        json["energy_joules"] = held.energy;
    }
    return json;
}

namespace {

QString q(std::string_view text) {
    return QString::fromStdString(visibly(text));
}

QString pullText(Force force, const Units& units) {
    switch (pullOf(force, units)) {
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

namespace {

/// What the girdle does at a place: "   38 lbf ± 4 lbf, pulls the cap up, 0.4 % of the preload".
QString forceText(const KnownLoad& load, std::size_t i, const Units& units) {
    const Force force = load.held.force[i];
    const std::optional<double> share = load.shareOfPreload[i];
    return q(format(force.magnitude(), units)).rightJustified(12) + QStringLiteral(" ") +
           (load.uncertainty ? QStringLiteral("± ") + q(formatUp((*load.uncertainty)[i], units))
                             : QStringLiteral("± not known")) +
           pullText(force, units) +
           (share ? QStringLiteral(", %1 of the preload").arg(q(formatPercent(*share, units, 1))) : QString());
}

} // namespace

QString loadText(const GirdleModel& model, const BlockLoad& load, const Units& units) {
    QString text;
    for (std::size_t i = 0; i < load.places.size(); ++i) {
        const PlaceResidual& at = load.places[i];
        text += q(describe(at.place)).leftJustified(16);
        if (!at.isKnown()) {
            text += at.known == ResidualOf::stale ? QStringLiteral("the stack is stale\n")
                                                  : QStringLiteral("no gap is accepted\n");
            continue;
        }
        text += q(formatSigned(at.residual, units)).rightJustified(14) +
                (at.known == ResidualOf::bareGap ? QStringLiteral("  bare ") : QStringLiteral("  stack")) +
                (load.known ? forceText(*load.known, i, units) : QString()) + QStringLiteral("\n");
    }
    if (load.known) {
        const GirdleLoad& held = load.known->held;
        const std::size_t most = load.known->largestAt(Rail::held);
        text += QStringLiteral("Largest load %1 at %2, largest bending stress %3 at %4, energy %5 mJ\n")
                    .arg(q(format(held.force[most].magnitude(), units)), q(describe(load.places[most].place)),
                         q(format(held.largestStress, units)))
                    .arg(q(format(held.where.x, units) + " behind cap 1, " + format(held.where.y, units) +
                           " right of the crank"))
                    .arg(held.energy * 1000, 0, 'f', 1);
    }
    text += QStringLiteral("Stiffness at each place alone, rail held:");
    for (std::size_t i = 0; i < model.places().size(); ++i) {
        text += QStringLiteral("%1 %2 %3")
                    .arg(i == 0 ? QString() : QStringLiteral(","), q(code(model.places()[i])),
                         q(format(model.stiffness(Rail::held, i, i), units)));
    }
    return text + QStringLiteral("\n") +
           (load.known ? QString() : q(load.known.error().sentence) + QStringLiteral("\n")) + assumptionsText(load);
}

} // namespace caprail
