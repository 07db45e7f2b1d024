// SPDX-License-Identifier: GPL-3.0-or-later
#include "assessment_json.h"

#include <QJsonArray>
#include <assessment/beside_verdict.h>
#include <assessment/fastener_groups.h>
#include <assessment/program_findings.h>
#include <assessment/review.h>
#include <assessment/signatures.h>
#include <assessment/unconfirmed.h>
#include <base/hex.h>
#include <base/plain_text.h>
#include <shop/result_tables.h>
#include <work/deviations.h>
#include <work/sittings.h>
#include <work/zero_checks.h>

namespace caprail {

namespace {

QString q(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// For people: one line in which everything can be seen.
QString line(std::string_view text) {
    return QString::fromStdString(visibly(text));
}

template <class... F> struct Overloaded : F... {
    using F::operator()...;
};

QJsonValue optionalNumber(const std::optional<double>& number) {
    return number ? QJsonValue(*number) : QJsonValue();
}

/// One value against one band. What is not known is null, with what is missing; never 0.
QJsonObject judgedJson(const Judged& judged) {
    QJsonObject json{{"value_nm", qint64{judged.value.value()}},
                     {"hi_nm", qint64{judged.band.hi().value()}},
                     {"state", q(word(judged.state))},
                     {"expanded_uncertainty_nm", optionalNumber(judged.uncertainty.expanded())}};
    if (!judged.name.empty()) {
        json["what"] = q(judged.name);
    }
    if (!isUpperLimitOnly(judged.band)) {
        json["lo_nm"] = qint64{judged.band.lo().value()};
    }
    if (const auto* known = judged.uncertainty.known()) {
        json["coverage_factor"] = known->coverageFactor;
        json["degrees_of_freedom"] = optionalNumber(known->degreesOfFreedom);
    } else {
        QJsonArray missing;
        for (const Missing& one : judged.uncertainty.missing()) {
            missing.append(q(describe(one)));
        }
        json["missing"] = missing;
    }
    if (judged.conformity) {
        json["probability_of_conformity"] = judged.conformity->probability;
        json["capability"] = judged.conformity->capability;
    }
    return json;
}

QJsonObject checkJson(const Check& check) {
    QJsonArray restsOn;
    for (const std::int64_t entry : check.restsOn) {
        restsOn.append(qint64{entry});
    }
    QJsonObject json{{"check", q(check.code)},        {"title", q(check.title)},   {"state", q(word(check.state))},
                     {"sentence", q(check.sentence)}, {"remedy", q(check.remedy)}, {"rests_on", restsOn}};
    if (!check.judged.empty()) {
        QJsonArray judged;
        for (const Judged& one : check.judged) {
            judged.append(judgedJson(one));
        }
        json["judged"] = judged;
    }
    if (check.staleBecause.entry != 0) {
        json["stale_because"] =
            QJsonObject{{"entry", qint64{check.staleBecause.entry}}, {"what", q(describe(check.staleBecause.cause, {}))}};
    }
    return json;
}

QJsonValue optionalLength(const std::optional<Length>& length) {
    return length ? QJsonValue(qint64{length->value()}) : QJsonValue();
}

QJsonObject positionsJson(const Assessment& a) {
    QJsonObject positions;
    for (const auto& [position, gap] : a.gaps) {
        QJsonObject json{{"gap_nm", optionalLength(gap.accepted)}, {"readings", qint64(gap.current.size())}};
        if (gap.movement) {
            json["after_movement"] = QJsonObject{{"lo_nm", qint64{gap.movement->window.lo().value()}},
                                                 {"hi_nm", qint64{gap.movement->window.hi().value()}},
                                                 {"grown_at_most_nm", qint64{gap.movement->bound.value()}},
                                                 {"likely_least_nm", qint64{gap.movement->likelyLeast.value()}},
                                                 {"likely_most_nm", qint64{gap.movement->likelyMost.value()}}};
        }
        if (const auto stack = a.stacks.find(position); stack != a.stacks.end()) {
            QJsonArray shims;
            for (const auto& shim : stack->second.shims) {
                shims.append(q(shim));
            }
            json["shims"] = shims;
            json["thickness_nm"] = qint64{stack->second.thickness.value()};
            json["residual_nm"] = optionalLength(stack->second.residual);
            json["carried_residual_nm"] = optionalLength(stack->second.carriedResidual);
            json["carried_by"] = q(carrierOf(stack->second.carriedBy));
        }
        positions[q(code(position))] = json;
    }
    return positions;
}

/// The fastener groups in force: for whom each speaks, what is there, and how it is verified.
QJsonArray groupsJson(const Facts& facts) {
    QJsonArray groups;
    for (const auto& [key, group] : facts.groups) {
        const auto members = membersOf(facts, key);
        if (members.empty()) {
            continue;
        }
        QJsonArray places;
        for (const FastenerId f : members) {
            places.append(q(code(f)));
        }
        QJsonObject json{{"group", q(word(key.kind))},
                         {"places", places},
                         {"piece", q(word(pieceOf(group.what)))},
                         {"specified", isSpecified(group.what)}};
        if (key.ring) {
            json["ring"] = q(word(*key.ring));
        }
        if (!key.name.empty()) {
            json["name"] = q(key.name);
        }
        if (isVerified(key.kind)) {
            json["verified_by"] = q(word(verifiedBy(group.what)));
        }
        if (const auto judged = judgeGroup(group.what, facts.rules.torqueScatterPercent, {})) {
            json["share_of_proof"] = judged->equivalent.nominal;
            json["share_of_proof_at_low_friction"] = judged->equivalent.high;
        }
        groups.append(json);
    }
    return groups;
}

QJsonArray deviationsJson(const Ledger& ledger, const Facts& facts, const Assessment& a) {
    QJsonArray list;
    for (const Deviation& deviation : deviationsOf(ledger, facts)) {
        list.append(QJsonObject{{"entry", qint64{deviation.entry}},
                                {"time", q(format(deviation.time))},
                                {"person", q(deviation.person)},
                                {"sort", q(word(sortOf(deviation.what)))},
                                {"what", q(sentenceOf(deviation, a))}});
    }
    return list;
}

QJsonArray valuesJson(const Facts& facts) {
    QJsonArray list;
    for (const ValueStanding& value : valuesOf(facts)) {
        list.append(QJsonObject{{"value", q(value.code)},
                                {"title", q(value.title)},
                                {"figure", q(value.figure)},
                                {"source", q(value.source)},
                                {"confirmed", value.isConfirmed},
                                {"entry", qint64{value.entry}}});
    }
    return list;
}

QJsonArray sittingsJson(const Ledger& ledger, const Facts& facts) {
    QJsonArray list;
    for (const Sitting& sitting : sittingsOf(ledger, facts.buildEntry)) {
        list.append(QJsonObject{{"first", q(format(sitting.first))},
                                {"last", q(format(sitting.last))},
                                {"minutes", qint64{sitting.minutes()}},
                                {"entries", qint64(sitting.entries)}});
    }
    return list;
}

QJsonArray partsJson(const Facts& facts) {
    QJsonArray list;
    for (const auto& part : facts.parts) {
        QJsonObject json{{"entry", qint64{part.entry}}, {"person", q(part.person)}};
        for (const auto& [name, text] :
             {std::pair("what", part.what.what), std::pair("place", part.what.place),
              std::pair("maker", part.what.maker), std::pair("part_number", part.what.number),
              std::pair("serial", part.what.serial.value_or("")), std::pair("lot", part.what.lot),
              std::pair("stamped", part.what.stamped.value_or("")),
              std::pair("machined", part.what.machined.value_or("")),
              std::pair("machined_by", part.what.machinedBy.value_or("")),
              std::pair("note", part.what.note.value_or(""))}) {
            json[QLatin1String(name)] = q(text);
        }
        json["sort"] = q(word(part.what.sort));
        json["is_new"] = part.what.isNew ? QJsonValue(*part.what.isNew) : QJsonValue();
        json["times_tightened"] = part.what.timesTightened ? QJsonValue(qint64{*part.what.timesTightened}) : QJsonValue();
        json["machined_on"] = part.what.machinedOn ? QJsonValue(q(format(*part.what.machinedOn))) : QJsonValue();
        list.append(json);
    }
    return list;
}

QJsonArray zeroChecksJson(const Ledger& ledger, const Facts& facts) {
    QJsonArray list;
    for (const ZeroStanding& standing : zeroStandings(ledger, facts)) {
        list.append(QJsonObject{{"instrument", q(standing.instrument)},
                                {"days_used", qint64(standing.used.size())},
                                {"days_used_without_zero_check", qint64(standing.untried())}});
    }
    return list;
}

} // namespace

QJsonObject assessmentJson(const Ledger& ledger, const Facts& facts, const Assessment& a) {
    QJsonArray checks;
    for (const Check& check : a.checks) {
        checks.append(checkJson(check));
    }
    QJsonArray gates;
    for (const Gate& gate : a.gates) {
        QJsonArray holding;
        for (const std::size_t i : gate.holding) {
            holding.append(q(a.checks[i].code));
        }
        gates.append(QJsonObject{{"gate", q(word(gate.kind))}, {"open", gate.isOpen}, {"held_by", holding}});
    }
    QJsonObject closingSteps;
    for (const auto& [step, standing] : a.closing) {
        QJsonObject json{{"state", q(word(standing.state))}};
        if (!standing.sentence.empty()) {
            json["sentence"] = q(standing.sentence);
            json["remedy"] = q(standing.remedy);
        }
        if (const auto done = facts.closing.find(step); done != facts.closing.end()) {
            json["entry"] = qint64{done->second.entry};
        }
        closingSteps[q(word(step))] = json;
    }
    QJsonArray neverValid;
    for (const NeverValid& closing : facts.neverValid) {
        neverValid.append(QJsonObject{{"entry", qint64{closing.entry}},
                                      {"kind", q(closing.step ? ClosingStepDone::kind : SignedOff::kind)},
                                      {"person", q(closing.person)},
                                      {"why", q(closing.why)}});
    }
    return {{"schema", "caprail show 1"},
            {"build", qint64{facts.build}},
            {"closed", facts.isClosed()},
            {"entries", qint64{facts.lastEntry}},
            {"never_valid", neverValid},
            {"gates", gates},
            {"closing", closingSteps},
            {"checks", checks},
            {"positions", positionsJson(a)},
            {"fastener_groups", groupsJson(facts)},
            {"weakly_measured", qint64(a.weaklyMeasured)},
            {"passed_by_eye", qint64(a.passedByEye)},
            {"deviations", deviationsJson(ledger, facts, a)},
            {"values", valuesJson(facts)},
            {"sittings", sittingsJson(ledger, facts)},
            {"parts", partsJson(facts)},
            {"zero_checks", zeroChecksJson(ledger, facts)},
            {"next", q(a.next.sentence)}};
}

QJsonArray signaturesJson(const Ledger& ledger) {
    QJsonArray signatures;
    for (const SignatureFact& one : signaturesOf(ledger)) {
        signatures.append(QJsonObject{{"entry", qint64{one.entry}},
                                      {"signed_entry", qint64{one.signedEntry}},
                                      {"key_name", q(one.key.name)},
                                      {"fingerprint", q(fingerprint(one.key.publicKey))},
                                      {"public_key", q(hexOf(one.key.publicKey.bytes))},
                                      {"holds", one.holds()},
                                      {"covers_all", one.coversAll},
                                      {"fault", q(one.fault)}});
    }
    return signatures;
}

QJsonObject resultsJson(const Facts& facts, const Assessment& assessment) {
    QJsonObject tables;
    for (const ResultTable& table : resultTables(facts, assessment)) {
        QJsonArray rows;
        for (const auto& cells : table.rows) {
            QJsonObject row;
            for (std::size_t i = 0; i < cells.size(); ++i) {
                row[q(table.columns[i].name)] = std::visit(Overloaded{[](std::monostate) { return QJsonValue(); },
                                                                      [](std::int64_t n) { return QJsonValue(qint64{n}); },
                                                                      [](double n) { return QJsonValue(n); },
                                                                      [](const std::string& t) { return QJsonValue(q(t)); }},
                                                           cells[i]);
            }
            rows.append(row);
        }
        tables[q(table.name)] = rows;
    }
    return tables;
}

QString assessmentText(const Ledger& ledger, const Facts& facts, const Assessment& a, const Units& units) {
    QString text;
    if (facts.engine) {
        const auto& e = facts.engine->what;
        text += line(e.engine) + (e.serial.empty() ? QString() : " (" + line(e.serial) + ")") + " for " +
                line(e.customer) + ", build " + QString::number(facts.build) + (facts.isClosed() ? ", closed" : "") +
                "\n";
    }
    for (const NeverValid& closing : facts.neverValid) {
        text += line(sentenceOf(closing)) + "\n";
    }
    text += "Next: " + line(a.next.sentence) + "\n";
    if (a.survey.spread) {
        text += "Survey: " + QString::number(a.survey.accepted) + " of " + QString::number(a.survey.positions) +
                " gaps accepted, spread " + q(format(*a.survey.spread, units)) + "\n";
    }
    for (const std::string& sentence : besideAllVerdicts(a)) {
        text += q(sentence) + "\n";
    }
    const auto deviations = deviationsOf(ledger, facts, units);
    text += line(deviationsLine(deviations)) + "\n";
    for (const Deviation& deviation : deviations) {
        text += "    Entry " + QString::number(deviation.entry) + ", " + line(deviation.person) + ": " +
                line(sentenceOf(deviation, a, units)) + "\n";
    }
    if (const auto sittings = sittingsOf(ledger, facts.buildEntry); !sittings.empty()) {
        text += "Work: " + line(describeWork(sittings)) + "\n";
    }
    const auto values = valuesOf(facts, units);
    if (const std::string unconfirmed = unconfirmedSentence(values); !unconfirmed.empty()) {
        text += line(unconfirmed) + "\n";
        for (const ValueStanding& value : values) {
            text += value.isConfirmed ? QString()
                                      : "    " + line(value.code) + ": " + line(value.title) + ", " + line(value.figure) + "\n";
        }
    }
    for (const ZeroStanding& standing : zeroStandings(ledger, facts)) {
        text += standing.untried() == 0
                    ? QString()
                    : line(standing.instrument) + ": used on " + QString::number(standing.used.size()) +
                          " days, on " + QString::number(standing.untried()) + " of them without a zero check\n";
    }
    for (const Gate& gate : a.gates) {
        text += "\nGate “" + q(word(gate.kind)) + "” is " + (gate.isOpen ? "open" : "locked") + "\n";
        for (const std::size_t i : gate.holding) {
            text += "    " + line(a.checks[i].title) + " is " + q(word(a.checks[i].state)) + "\n";
        }
    }
    text += "\nClosing\n";
    for (const auto& [step, standing] : a.closing) {
        text += "    " + q(word(standing.state)).leftJustified(18) + q(word(step)) +
                (standing.sentence.empty() ? QString() : ": " + line(standing.sentence + " " + standing.remedy)) + "\n";
    }
    text += "\nChecks\n";
    for (const Check& check : a.checks) {
        text += "    " + q(word(check.state)).leftJustified(18) + line(check.title);
        text += check.sentence.empty() ? QString() : ": " + line(check.sentence);
        for (const Judged& judged : check.judged) {
            const std::string beside = besideVerdict(judged, units);
            text += beside.empty() ? QString() : " [" + q(beside) + "]";
        }
        text += check.remedy.empty() ? QString() : " → " + line(check.remedy);
        text += "\n";
    }
    return text;
}

} // namespace caprail
