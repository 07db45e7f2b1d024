// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/bearings/film.h>

#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QSignalBlocker>
#include <algorithm>
#include <charts/film_chart.h>
#include <session/look.h>
#include <stations/common/station_text.h>
#include <text/plain_text.h>
#include <units/parse.h>
#include <work/warm_look.h>

namespace caprail {

namespace {

/// A column of what is told of a film, once there is one.
template <class Get>
TableColumn<BearingFilm> filmColumn(const QString& title, Result<OilFilm> BearingFilm::*film,
                                    std::function<QString(const OilFilm&)> text, Get get) {
    return {
        .title = title,
        .text = [film, text](const BearingFilm& row) { return row.*film ? text(*(row.*film)) : QStringLiteral("—"); },
        .value = [film, get](const BearingFilm& row) { return row.*film ? valueOf(get(*(row.*film))) : SortValue(); },
        .isFigure = true};
}

std::vector<TableColumn<BearingFilm>> filmColumns(const RecordSession& session) {
    const auto least = [&session](const OilFilm& film) { return qtText(formatFilm(film.least, session.units())); };
    const auto number = [&session](double value, int decimals) {
        return qtText(formatNumber(value, decimals, session.units().decimalMark));
    };
    return {{.title = BearingsFilm::tr("Bearing"),
             .text = [](const BearingFilm& row) { return capitalised(qtText(describe(row.bearing))); }},
            filmColumn(BearingsFilm::tr("Film, as measured"), &BearingFilm::asMeasured, least,
                       [](const OilFilm& film) { return film.least; }),
            filmColumn(BearingsFilm::tr("Film, warm"), &BearingFilm::warm, least,
                       [](const OilFilm& film) { return film.least; }),
            filmColumn(
                BearingsFilm::tr("h₀/c"), &BearingFilm::warm,
                [number](const OilFilm& film) { return number(film.share, 2); },
                [](const OilFilm& film) { return film.share; }),
            filmColumn(
                BearingsFilm::tr("Sommerfeld"), &BearingFilm::warm,
                [number](const OilFilm& film) { return number(film.sommerfeld, 3); },
                [](const OilFilm& film) { return film.sommerfeld; }),
            filmColumn(
                BearingsFilm::tr("Unit load"), &BearingFilm::warm,
                [&session](const OilFilm& film) { return qtText(format(film.unitLoad, session.units(), 1)); },
                [](const OilFilm& film) { return film.unitLoad; })};
}

} // namespace

BearingsFilm::BearingsFilm(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_speed(new QLineEdit(this)), m_load(new QLineEdit(this)),
      m_width(new QLineEdit(this)), m_at40(new QLineEdit(this)), m_at100(new QLineEdit(this)),
      m_grade(new QComboBox(this)),
      m_table(new Table<BearingFilm, JournalId>(tr("Oil films"), &BearingFilm::bearing, filmColumns(session), this)),
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
    m_grade->setObjectName(QStringLiteral("filmOil"));
    m_table->setObjectName(QStringLiteral("films"));
    m_remark->setObjectName(QStringLiteral("filmRemark"));
    m_load->setPlaceholderText(tr("none named"));
    m_speed->setText(QString::number(usualFilmQuestion().revolutionsPerMinute));
    m_width->setText(qtText(format(usualFilmQuestion().width, m_session.units())));
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
        {
            // Both or neither: between the two there is an oil that nobody chose.
            const QSignalBlocker first(m_at40);
            const QSignalBlocker second(m_at100);
            m_at40->setText(qtText(formatNumber(grades[index].at40, 1, mark)));
            m_at100->setText(qtText(formatNumber(grades[index].at100, 1, mark)));
        }
        emit edited();
    }
}

Result<FilmQuestion> BearingsFilm::read() const {
    const Units& units = m_session.units();
    const auto speed = parseCount(coreText(m_speed->text()), coreText(tr("the speed")), 1, 100'000);
    const auto at40 = parseViscosity(coreText(m_at40->text()), "40 °C");
    const auto at100 = parseViscosity(coreText(m_at100->text()), "100 °C");
    const auto width = parseLength(coreText(m_width->text()), units,
                                   {coreText(tr("the width of the shells")), inches(0.1), inches(6)});
    if (!speed || !width) {
        return tl::unexpected(!speed ? speed.error() : width.error());
    }
    if (!at40 || !at100) {
        return tl::unexpected(!at40 ? at40.error() : at100.error());
    }
    FilmQuestion question{*speed, width->value, oilOf({{}, *at40, *at100}), {}};
    if (!m_load->text().trimmed().isEmpty()) {
        const auto load = parseForce(coreText(m_load->text()), units,
                                     {coreText(tr("the load on a bearing")), newtons(1), newtons(1e6)});
        if (!load) {
            return tl::unexpected(load.error());
        }
        question.load = load->value;
    }
    return question;
}

void BearingsFilm::refresh(const std::vector<WarmClearance>& clearances, std::optional<Temperature> oilNow) {
    using Films = std::vector<BearingFilm>;
    const Result<FilmQuestion> question =
        oilNow ? read() : Result<FilmQuestion>(refuse(coreText(tr("The temperatures beside this cannot be read."))));
    const Result<Films> films = question ? bearingFilms(clearances, *oilNow, *question, m_session.units())
                                         : Result<Films>(tl::unexpected(question.error()));
    QString problem = films ? QString() : qtText(films.error().sentence);
    for (const BearingFilm& film : films.value_or(Films())) {
        if (!film.warm) {
            problem =
                capitalised(qtText(describe(film.bearing))) + QStringLiteral(": ") + qtText(film.warm.error().sentence);
        }
    }
    if (films && std::ranges::any_of(*films, [](const BearingFilm& film) { return film.warm.has_value(); })) {
        m_chart->setData(*films, m_session.units(), screenLook());
    } else {
        m_chart->setNothing(problem, screenLook());
    }
    m_table->put(films.value_or(Films()));
    m_remark->setText(problem.isEmpty() ? qtText(filmAssumptions()) : problem);
}

} // namespace caprail
