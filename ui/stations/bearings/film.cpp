// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/bearings/film.h>

#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <bearings/oil.h>
#include <charts/film_chart.h>
#include <session/look.h>
#include <stations/common/station_text.h>
#include <text/plain_text.h>
#include <units/parse.h>
#include <work/shells.h>

namespace caprail {

/// The film of a bearing with the clearance that was measured, and warm.
struct FilmRow {
    JournalId journal;
    std::optional<OilFilm> measured, warm; ///< none: it could not be worked out
};

namespace {

/// A viscosity in mm²/s, as data sheets print it.
std::optional<double> viscosityIn(const QString& text) {
    QString plain = text.trimmed();
    plain.replace(QLatin1Char(','), QLatin1Char('.'));
    bool isNumber = false;
    const double value = plain.toDouble(&isNumber);
    return isNumber && value > 0 ? std::optional(value) : std::nullopt;
}

/// Finer than a clearance: films differ by hundredths of a thousandth.
QString filmText(Length film, const Units& units) {
    return units.length == LengthUnit::inch
               ? QStringLiteral("%1 thou").arg(qtText(formatNumber(inInches(film) * 1000, 3, units.decimalMark)))
               : QStringLiteral("%1 µm").arg(qtText(formatNumber(inMillimetres(film) * 1000, 1, units.decimalMark)));
}

QString stressText(Stress stress, const Units& units) {
    return units.length == LengthUnit::inch
               ? QStringLiteral("%1 psi").arg(qtText(formatNumber(inPsi(stress), 0, units.decimalMark)))
               : QStringLiteral("%1 MPa").arg(qtText(formatNumber(inMegapascals(stress), 1, units.decimalMark)));
}

/// A column of what is told of a film, once there is one.
template <class Get>
TableColumn<FilmRow> filmColumn(const QString& title, std::optional<OilFilm> FilmRow::*film,
                                std::function<QString(const OilFilm&)> text, Get get) {
    return {.title = title,
            .text = [film, text](const FilmRow& row) { return row.*film ? text(*(row.*film)) : QStringLiteral("—"); },
            .value = [film, get](const FilmRow& row) { return row.*film ? valueOf(get(*(row.*film))) : SortValue(); },
            .isFigure = true};
}

std::vector<TableColumn<FilmRow>> filmColumns(const RecordSession& session) {
    const auto least = [&session](const OilFilm& film) { return filmText(film.least, session.units()); };
    const auto number = [&session](double value, int decimals) {
        return qtText(formatNumber(value, decimals, session.units().decimalMark));
    };
    return {{.title = BearingsFilm::tr("Bearing"),
             .text = [](const FilmRow& row) { return capitalised(qtText(describe(row.journal))); }},
            filmColumn(BearingsFilm::tr("Film, as measured"), &FilmRow::measured, least,
                       [](const OilFilm& film) { return film.least; }),
            filmColumn(BearingsFilm::tr("Film, warm"), &FilmRow::warm, least,
                       [](const OilFilm& film) { return film.least; }),
            filmColumn(
                BearingsFilm::tr("h₀/c"), &FilmRow::warm,
                [number](const OilFilm& film) { return number(film.share, 2); },
                [](const OilFilm& film) { return film.share; }),
            filmColumn(
                BearingsFilm::tr("Sommerfeld"), &FilmRow::warm,
                [number](const OilFilm& film) { return number(film.sommerfeld, 3); },
                [](const OilFilm& film) { return film.sommerfeld; }),
            filmColumn(
                BearingsFilm::tr("Unit load"), &FilmRow::warm,
                [&session](const OilFilm& film) { return stressText(film.unitLoad, session.units()); },
                [](const OilFilm& film) { return film.unitLoad; })};
}

} // namespace

BearingsFilm::BearingsFilm(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_speed(new QLineEdit(this)), m_load(new QLineEdit(this)),
      m_width(new QLineEdit(this)), m_at40(new QLineEdit(this)), m_at100(new QLineEdit(this)),
      m_grade(new QComboBox(this)),
      m_table(new Table<FilmRow, JournalId>(tr("Oil films"), &FilmRow::journal, filmColumns(session), this)),
      m_chart(new FilmChart(this)), m_remark(new Label(this)) {
    build();
}

QGridLayout* BearingsFilm::buildFields() {
    auto* grid = new QGridLayout;
    const auto add = [&](int row, int column, const QString& name, QWidget* field) {
        auto* label = new Label(name, this);
        label->setBuddy(field);
        field->setAccessibleName(name);
        grid->addWidget(label, row, 2 * column);
        grid->addWidget(field, row, 2 * column + 1);
    };
    add(0, 0, tr("Load on a bearing"), m_load);
    add(0, 1, tr("Oil"), m_grade);
    add(1, 0, tr("Speed, 1/min"), m_speed);
    add(1, 1, tr("mm²/s at 40 °C"), m_at40);
    add(2, 0, tr("Width of the shells"), m_width);
    add(2, 1, tr("mm²/s at 100 °C"), m_at100);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(3, 1);
    return grid;
}

void BearingsFilm::build() {
    m_load->setObjectName(QStringLiteral("filmLoad"));
    m_speed->setObjectName(QStringLiteral("filmSpeed"));
    m_table->setObjectName(QStringLiteral("films"));
    m_remark->setObjectName(QStringLiteral("filmRemark"));
    m_load->setPlaceholderText(tr("none named"));
    m_speed->setText(QStringLiteral("6000"));
    m_width->setText(m_session.units().length == LengthUnit::inch ? QStringLiteral("0.85 in")
                                                                  : QStringLiteral("21.6 mm"));
    for (const OilGrade& grade : commonGrades()) {
        m_grade->addItem(qtText(grade.name));
    }
    m_grade->addItem(tr("figures of your own"));
    setTip(m_grade, tr("Typical figures of data sheets, common practice, no source: the sheet of the oil in the can "
                       "comes first."));
    takeGrade();
    m_remark->setWordWrap(true);
    m_remark->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(buildFields());
    column->addWidget(m_table, 2);
    column->addWidget(m_chart, 3);
    column->addWidget(m_remark);
    connect(m_grade, &QComboBox::activated, this, &BearingsFilm::takeGrade);
    for (QLineEdit* edit : {m_at40, m_at100}) {
        connect(edit, &QLineEdit::textEdited, this, [this] { m_grade->setCurrentIndex(m_grade->count() - 1); });
    }
    for (QLineEdit* edit : {m_speed, m_load, m_width, m_at40, m_at100}) {
        connect(edit, &QLineEdit::textChanged, this, &BearingsFilm::edited);
    }
}

void BearingsFilm::takeGrade() {
    const auto grades = commonGrades();
    const auto index = static_cast<std::size_t>(std::max(0, m_grade->currentIndex()));
    if (index < grades.size()) {
        const char mark = m_session.units().decimalMark;
        m_at40->setText(qtText(formatNumber(grades[index].at40, 1, mark)));
        m_at100->setText(qtText(formatNumber(grades[index].at100, 1, mark)));
    }
}

Result<RunningBearing> BearingsFilm::read(Temperature oil) const {
    const Units& units = m_session.units();
    const auto speed = parseCount(coreText(m_speed->text()), coreText(tr("the speed")), 1, 100'000);
    const auto at40 = viscosityIn(m_at40->text());
    const auto at100 = viscosityIn(m_at100->text());
    const auto width = parseLength(coreText(m_width->text()), units,
                                   {coreText(tr("the width of the shells")), inches(0.1), inches(6)});
    if (!speed || !width) {
        return tl::unexpected(!speed ? speed.error() : width.error());
    }
    if (!at40 || !at100) {
        return refuse(
            coreText(tr("Both viscosities must be numbers above zero: take them from the oil's data sheet.")));
    }
    const auto viscosity = dynamicViscosity({{celsius(40), *at40}, {celsius(100), *at100}}, oil);
    if (!viscosity) {
        return tl::unexpected(viscosity.error());
    }
    if (m_load->text().trimmed().isEmpty()) {
        return refuse(coreText(tr("At this temperature the oil has %1 mPa·s. No load is named, so no film is worked "
                                  "out: name the load on one bearing.")
                                   .arg(qtText(formatNumber(*viscosity, 1, units.decimalMark)))));
    }
    const auto load =
        parseForce(coreText(m_load->text()), units, {coreText(tr("the load on a bearing")), newtons(1), newtons(1e6)});
    if (!load) {
        return tl::unexpected(load.error());
    }
    return RunningBearing{{}, width->value, {}, static_cast<double>(*speed), load->value, *viscosity};
}

void BearingsFilm::refresh(const Warming* warming) {
    const auto asked =
        warming == nullptr
            ? Result<RunningBearing>(refuse(coreText(tr("The temperatures beside this cannot be read."))))
            : read(warming->blockNow);
    QString problem = asked ? QString() : qtText(asked.error().sentence);
    std::vector<FilmRow> rows;
    std::vector<FilmPoint> points;
    RunningBearing shown;
    for (const auto& [journal, result] : m_session.assessment().clearances) {
        if (!asked || !result.clearance || !result.journalMean) {
            continue;
        }
        Warming here = *warming;
        here.shells = warmShells(m_session.facts(), journal);
        RunningBearing running = *asked;
        running.journal = *result.journalMean;
        running.clearance = *result.clearance;
        FilmRow& row = rows.emplace_back(FilmRow{journal, {}, {}});
        if (const auto film = oilFilm(running)) {
            row.measured = *film;
        }
        const auto then = clearanceAt(*result.clearance, *result.journalMean, here);
        running.clearance = then.value_or(Length());
        const auto warm = then ? oilFilm(running) : Result<OilFilm>(tl::unexpected(then.error()));
        if (warm) {
            row.warm = *warm;
            points.push_back({journal, running.clearance, warm->least});
            shown = running;
        } else {
            problem = capitalised(qtText(describe(journal))) + QStringLiteral(": ") + qtText(warm.error().sentence);
        }
    }
    m_table->put(std::move(rows));
    if (points.empty()) {
        m_chart->setNothing(problem.isEmpty() ? tr("No clearance is measured with a micrometer yet.") : problem,
                            screenLook());
    } else {
        m_chart->setData(shown, points, m_session.units(), screenLook());
    }
    m_remark->setText(
        !problem.isEmpty()
            ? problem
            : tr("Least film by the charts of Raimondi and Boyd for a steady load, the oil as warm as the "
                 "block, its viscosity by ASTM D341. An engine's load turns and hammers: advice, no "
                 "verdict."));
}

} // namespace caprail
