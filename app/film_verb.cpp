// SPDX-License-Identifier: GPL-3.0-or-later
// The clearances and the oil films of a record's bearings, warm.
#include "call.h"
#include "verbs.h"

#include <QJsonArray>
#include <QJsonObject>
#include <algorithm>
#include <units/parse.h>
#include <work/warm_look.h>

namespace caprail::verbs {

namespace {

struct Asked {
    Warming warming = usualWarming();
    FilmQuestion question = usualFilmQuestion();
};

/// The options of one call, read one after another: the first that cannot be read is the problem of all.
class Reading {
public:
    Reading(const Call& call, const Units& units) : m_call(call), m_units(units) {}

    Result<Asked> run() {
        readOil();
        readWarming();
        FilmQuestion& q = m_asked.question;
        read("speed", q.revolutionsPerMinute,
             [](std::string_view text) { return parseCount(text, "the speed", 1, 100'000); });
        read("width", q.width, [this](std::string_view text) {
            return parseLength(text, m_units, {"the width of the shells", inches(0.1), inches(6)});
        });
        read("load", q.load, [this](std::string_view text) {
            return parseForce(text, m_units, {"the load on a bearing", newtons(1), newtons(1e6)});
        });
        return m_problem ? Result<Asked>(tl::unexpected(*m_problem)) : Result<Asked>(m_asked);
    }

private:
    template <class Q, class Parse> void read(const char* option, Q& into, Parse parse) {
        if (m_problem || !m_call.has(option)) {
            return;
        }
        const auto value = parse(m_call.value(option).toStdString());
        if (!value) {
            m_problem = value.error();
        } else if constexpr (requires { value->typed; }) {
            into = value->value;
        } else {
            into = *value;
        }
    }

    void readOil() {
        Oil& oil = m_asked.question.oil;
        read("oil", oil, [](std::string_view name) -> Result<Oil> {
            const auto grade = std::ranges::find(commonGrades(), name, &OilGrade::name);
            if (grade != commonGrades().end()) {
                return oilOf(*grade);
            }
            std::string names;
            for (const OilGrade& known : commonGrades()) {
                names += (names.empty() ? "" : ", ") + std::string(known.name);
            }
            return refuse("“" + std::string(name) + "” is none of the oils that are known (" + names +
                          "): give its viscosities with --at40 and --at100.");
        });
        read("at40", oil.first.squareMillimetresPerSecond,
             [](std::string_view text) { return parseViscosity(text, "40 °C"); });
        read("at100", oil.second.squareMillimetresPerSecond,
             [](std::string_view text) { return parseViscosity(text, "100 °C"); });
        if (!m_problem && m_call.has("at40") != m_call.has("at100")) {
            m_problem = Problem{"An oil of your own needs both --at40 and --at100, from its data sheet."};
        }
    }

    void readWarming() {
        Warming& w = m_asked.warming;
        const auto temperature = [this](const char* what) {
            return [this, what](std::string_view text) { return parseTemperature(text, m_units, {what, {}, {}}); };
        };
        read("measured-at", w.measuredAt, temperature("the temperature when measured"));
        read("block-at", w.blockNow, temperature("the block's temperature"));
        read("crank-at", w.crankNow, temperature("the crank's temperature"));
        read("block-of", w.block, [](std::string_view text) { return parseExpansion(text, "the block"); });
        read("crank-of", w.crank, [](std::string_view text) { return parseExpansion(text, "the crank"); });
    }

    const Call& m_call;
    const Units& m_units;
    Asked m_asked;
    std::optional<Problem> m_problem;
};

template <class Get> QJsonValue filmJson(const Result<OilFilm>& film, Get get) {
    return film ? QJsonValue(get(*film)) : QJsonValue();
}

QJsonObject bearingJson(const WarmClearance& clearance, const BearingFilm* film) {
    QJsonObject json{
        {"clearance_nm", qint64{clearance.asMeasured.value()}},
        {"clearance_warm_nm", clearance.warm ? QJsonValue(qint64{clearance.warm->value()}) : QJsonValue()}};
    if (film != nullptr) {
        const auto least = [](const OilFilm& f) { return qint64{f.least.value()}; };
        json["film_nm"] = filmJson(film->asMeasured, least);
        json["film_warm_nm"] = filmJson(film->warm, least);
        json["film_share_warm"] = filmJson(film->warm, [](const OilFilm& f) { return f.share; });
        json["sommerfeld_warm"] = filmJson(film->warm, [](const OilFilm& f) { return f.sommerfeld; });
        json["unit_load_psi"] = filmJson(film->warm, [](const OilFilm& f) { return inPsi(f.unitLoad); });
    }
    const bool isKnown = clearance.warm && (film == nullptr || film->warm);
    if (!isKnown) {
        json["why"] = lineOf(clearance.warm ? film->warm.error().sentence : clearance.warm.error().sentence);
    }
    return json;
}

QString bearingText(const WarmClearance& clearance, const BearingFilm* film, const Units& units) {
    QString line = lineOf(describe(clearance.bearing)).leftJustified(10) + QStringLiteral("clearance ") +
                   lineOf(format(clearance.asMeasured, units)) + QStringLiteral(", warm ");
    if (!clearance.warm) {
        return line + QStringLiteral("not known: ") + lineOf(clearance.warm.error().sentence);
    }
    line += lineOf(format(*clearance.warm, units));
    if (film == nullptr) {
        return line;
    }
    line += QStringLiteral("; film ") +
            (film->asMeasured ? lineOf(formatFilm(film->asMeasured->least, units)) : QStringLiteral("not known"));
    if (!film->warm) {
        return line + QStringLiteral(", warm not known: ") + lineOf(film->warm.error().sentence);
    }
    return line + QStringLiteral(", warm %1 (h0/c %2, Sommerfeld %3, unit load %4)")
                      .arg(lineOf(formatFilm(film->warm->least, units)),
                           lineOf(formatNumber(film->warm->share, 2, units.decimalMark)),
                           lineOf(formatNumber(film->warm->sommerfeld, 3, units.decimalMark)),
                           lineOf(format(film->warm->unitLoad, units, 1)));
}

/// What was taken, given or not: a figure without it says too little.
QString askedText(const Asked& asked, const Units& units) {
    const FilmQuestion& q = asked.question;
    return QStringLiteral("At %1 revolutions a minute, shells %2 wide%3; measured at %4, then block and oil at %5, "
                          "crank at %6.\n")
        .arg(q.revolutionsPerMinute)
        .arg(lineOf(format(q.width, units)),
             q.load ? QStringLiteral(", %1 on a bearing").arg(lineOf(format(*q.load, units))) : QString(),
             lineOf(format(asked.warming.measuredAt, units)), lineOf(format(asked.warming.blockNow, units)),
             lineOf(format(asked.warming.crankNow, units)));
}

QJsonObject askedJson(const Asked& asked) {
    const FilmQuestion& q = asked.question;
    const Warming& w = asked.warming;
    return {{"revolutions_per_minute", qint64{q.revolutionsPerMinute}},
            {"width_nm", qint64{q.width.value()}},
            {"load_lbf", q.load ? QJsonValue(inPoundsForce(*q.load)) : QJsonValue()},
            {"viscosity_40c_mm2_per_s", q.oil.first.squareMillimetresPerSecond},
            {"viscosity_100c_mm2_per_s", q.oil.second.squareMillimetresPerSecond},
            {"measured_at_celsius", inCelsius(w.measuredAt)},
            {"block_at_celsius", inCelsius(w.blockNow)},
            {"crank_at_celsius", inCelsius(w.crankNow)},
            {"block_millionths_per_kelvin", inMillionthsPerKelvin(w.block)},
            {"crank_millionths_per_kelvin", inMillionthsPerKelvin(w.crank)}};
}

} // namespace

int film(const QStringList& arguments) {
    const Call call("film", arguments, 1);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    const Units units = unitsOf(call);
    const auto asked = Reading(call, units).run();
    if (!asked) {
        return complain(wrongUsage, QStringLiteral("film"), asked.error());
    }
    const auto record = openRecord(call.at(0), units);
    if (!record) {
        return complain(unusable, call.at(0), record.error());
    }
    const auto clearances = warmClearances(record->facts, record->assessment, asked->warming);
    const auto films = bearingFilms(clearances, asked->warming.blockNow, asked->question, units);
    if (clearances.empty()) {
        return complain(unusable, call.at(0), noClearanceYet());
    }
    QJsonObject bearings;
    QString text;
    for (std::size_t i = 0; i < clearances.size(); ++i) {
        const BearingFilm* film = films ? &(*films)[i] : nullptr; // in the same order
        bearings[lineOf(code(clearances[i].bearing))] = bearingJson(clearances[i], film);
        text += bearingText(clearances[i], film, units) + QLatin1Char('\n');
    }
    const QString notKnown = films ? QString() : lineOf(films.error().sentence);
    if (call.has("json")) {
        print(QJsonDocument(
            QJsonObject{{"asked", askedJson(*asked)},
                        {"bearings", bearings},
                        {"not_known", films ? QJsonValue() : QJsonValue(notKnown)},
                        {"assumptions", QJsonArray{lineOf(warmAssumptions()), lineOf(filmAssumptions())}}}));
    } else {
        print(text + askedText(*asked, units) + (films ? lineOf(filmAssumptions()) : notKnown) + QLatin1Char('\n') +
              lineOf(warmAssumptions()) + QLatin1Char('\n'));
    }
    return done;
}

} // namespace caprail::verbs
