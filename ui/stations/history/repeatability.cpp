// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/history/repeatability.h>

#include <QComboBox>
#include <QElapsedTimer>
#include <QHBoxLayout>
#include <ledger/band_names.h>
#include <session/filled.h>
#include <set>
#include <stations/common/station_text.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

/// A source of scatter, with its standard deviation and its share of the variance.
struct ScatterShare {
    std::size_t position = 0; ///< in the table: the whole comes last
    QString source;
    double deviation = 0;
    double share = 0; ///< of 100
    std::optional<double> ofBand = {}; ///< 6 s of 100; none without a band
};

/// How often each person has read a place.
struct ReadingCounts {
    std::string place;
    std::map<std::string, int> byPerson;
};

namespace {

/// The program's own in the language that is spoken, a fit of the shop's own as it was named.
QString nameOfBand(const std::string& name) {
    const bool isOfShop = bands::isFit(name) && name != bands::crankEndPlay && name != bands::rodSideClearance;
    return qtText(isOfShop ? name : Core::say(name));
}

Label* boldLabel(const QString& text, QWidget* parent) {
    auto* label = new Label(text, parent);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    return label;
}

std::vector<TableColumn<PersonalRepeatability>> pooledColumns(const RecordSession& session) {
    using Row = PersonalRepeatability;
    return {{.title = HistoryRepeatability::tr("What"), .text = [](const Row& row) { return capitalised(qtShown(row.quantity)); }},
            {.title = HistoryRepeatability::tr("Person"), .text = [](const Row& row) { return qtText(row.person); }},
            {.title = HistoryRepeatability::tr("Instrument"),
             .text = [](const Row& row) {
                 return row.instrument.empty() ? HistoryRepeatability::tr("not named") : qtText(row.instrument);
             }},
            {.title = HistoryRepeatability::tr("Readings"),
             .text = [](const Row& row) { return QString::number(row.readings); },
             .value = [](const Row& row) { return valueOf(row.readings); },
             .isFigure = true},
            {.title = HistoryRepeatability::tr("Places read twice"),
             .text = [](const Row& row) { return QString::number(row.places); },
             .value = [](const Row& row) { return valueOf(row.places); },
             .isFigure = true},
            {.title = HistoryRepeatability::tr("s of one reading"),
             .text =
                 [&session](const Row& row) {
                     return row.scatter ? qtText(formatSpread(row.scatter->standardDeviation, session.units()))
                                        : HistoryRepeatability::tr("not known yet");
                 },
             .value = [](const Row& row) {
                 return row.scatter ? valueOf(row.scatter->standardDeviation) : SortValue();
             },
             .isFigure = true},
            {.title = HistoryRepeatability::tr("Degrees of freedom"),
             .text = [](const Row& row) {
                 return row.scatter ? QString::number(row.scatter->degreesOfFreedom, 'f', 0) : QString();
             },
             .value = [](const Row& row) {
                 return row.scatter ? valueOf(row.scatter->degreesOfFreedom) : SortValue();
             }}};
}

std::vector<TableColumn<ScatterShare>> shareColumns(const RecordSession& session) {
    return {{.title = HistoryRepeatability::tr("Source"), .text = [](const ScatterShare& row) { return row.source; }},
            {.title = HistoryRepeatability::tr("s"),
             .text = [&session](const ScatterShare& row) {
                 return qtText(formatSpread(row.deviation, session.units()));
             },
             .isFigure = true},
            {.title = HistoryRepeatability::tr("Share of variance"),
             .text = [](const ScatterShare& row) { return HistoryRepeatability::tr("%1 %").arg(row.share, 0, 'f', 1); }},
            {.title = HistoryRepeatability::tr("6 s / band"), .text = [](const ScatterShare& row) {
                 return row.ofBand ? HistoryRepeatability::tr("%1 %").arg(*row.ofBand, 0, 'f', 0) : QStringLiteral("—");
             }}};
}

/// A column per person, by name.
std::vector<TableColumn<ReadingCounts>> countColumns(const std::set<std::string>& people) {
    std::vector<TableColumn<ReadingCounts>> columns{
        {.title = HistoryRepeatability::tr("Place"), .text = [](const ReadingCounts& row) { return qtText(row.place); }}};
    for (const std::string& person : people) {
        const auto count = [person](const ReadingCounts& row) {
            const auto at = row.byPerson.find(person);
            return at == row.byPerson.end() ? 0 : at->second;
        };
        columns.push_back({.title = qtText(person),
                           .text =
                               [count](const ReadingCounts& row) {
                                   return count(row) == 0 ? QStringLiteral("—") : QString::number(count(row));
                               },
                           .value = [count](const ReadingCounts& row) { return valueOf(count(row)); }});
    }
    return columns;
}

} // namespace

HistoryRepeatability::HistoryRepeatability(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_pooled(new Table<PersonalRepeatability, Who>(
          tr("Repeatability by person and instrument"),
          [](const PersonalRepeatability& row) {
              return Who(row.quantity, row.person, row.instrument);
          },
          pooledColumns(session), this)),
      m_quantity(new QComboBox(this)), m_words(new Label(this)),
      m_split(new Table<ScatterShare, std::size_t>(tr("Where the scatter comes from"), &ScatterShare::position,
                                                   shareColumns(session), this)),
      m_counts(new Table<ReadingCounts, std::string>(tr("Who has read which place how often"), &ReadingCounts::place,
                                                     countColumns({}), this)) {
    m_pooled->setEmptyText(tr("Nothing is measured yet: readings appear here as they are made."));
    m_split->setSortingEnabled(false); // the whole is the sum of the lines above it
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &HistoryRepeatability::gather);
    build();
    refresh();
}

void HistoryRepeatability::build() {
    m_pooled->setObjectName(QStringLiteral("pooled"));
    m_split->setObjectName(QStringLiteral("scatter"));
    m_counts->setObjectName(QStringLiteral("readingCounts"));
    m_quantity->setObjectName(QStringLiteral("studyOf"));
    m_words->setObjectName(QStringLiteral("studyWords"));
    for (const auto& quantity : allWords<MeasuredQuantity>()) {
        m_quantity->addItem(capitalised(qtShown(quantity.value)), static_cast<int>(quantity.value));
    }
    nameBox(*m_quantity, tr("Study of which readings"));
    m_words->setWordWrap(true);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    setTip(m_counts, tr("Enter goes to the place, to read it again"));
    connect(m_quantity, &QComboBox::activated, this, &HistoryRepeatability::showStudy);
    connect(m_counts, &TableView::lineActivated, this, [this](int line) {
        if (const ReadingCounts* row = m_counts->at(line)) {
            goTo(std::string(row->place));
        }
    });
    auto* choose = new QHBoxLayout;
    choose->addWidget(boldLabel(tr("A study of"), this));
    choose->addWidget(m_quantity);
    choose->addStretch(1);
    auto* tables = new QHBoxLayout;
    tables->addWidget(m_split, 4);
    tables->addWidget(m_counts, 3);
    auto* column = new QVBoxLayout(this);
    column->addWidget(boldLabel(tr("Repeatability of each person with each instrument, pooled over the record"), this));
    column->addWidget(m_pooled, 4);
    column->addLayout(choose);
    column->addWidget(m_words);
    column->addLayout(tables, 5);
}

void HistoryRepeatability::refresh() {
    gather();
}

void HistoryRepeatability::gather() {
    constexpr qint64 piece = 10;                     // ms
    constexpr std::int64_t entriesBetweenLooks = 64; // entries between looks at the clock
    QElapsedTimer elapsed;
    elapsed.start();
    const Ledger& ledger = m_session.ledger();
    while (!m_readings.takeMore(ledger, entriesBetweenLooks)) {
        if (elapsed.elapsed() >= piece) {
            m_words->setText(
                tr("The readings are being collected: %1 of %2 entries.").arg(m_readings.taken()).arg(ledger.size()));
            m_timer.start(0);
            return;
        }
    }
    m_timer.stop();
    showPooled();
    showStudy();
}

void HistoryRepeatability::showPooled() {
    m_pooled->put(m_readings.readings().pooled());
}

void HistoryRepeatability::showStudy() {
    const auto quantity = static_cast<MeasuredQuantity>(m_quantity->currentData().toInt());
    const CrossedReadings crossed = m_readings.readings().crossed(quantity);
    showCounts(crossed);
    if (crossed.readings.empty()) {
        m_words->setText(
            tr("No two places were read twice by one person yet. A short study: three people (or one) read "
               "ten places two or three times each, without looking at what was read before. Choose the "
               "name at the bottom right before each person begins."));
        m_split->put(std::vector<ScatterShare>());
        return;
    }
    const auto band = bandOfStudy(m_session.facts(), crossed);
    const auto study =
        gaugeStudy(crossed.readings, band ? std::optional(band->band) : std::nullopt, m_session.units());
    if (!study) {
        m_words->setText(QStringLiteral("✕ ") + qtText(study.error().sentence));
        m_split->put(std::vector<ScatterShare>());
        return;
    }
    QStringList names;
    for (const std::string& person : crossed.people) {
        names << qtText(person);
    }
    const QString held = band ? filled(tr("Held against the band “%1”, %2."), nameOfBand(band->name),
                                       qtText(format(band->band, m_session.units())))
                              : tr("No one band goes with these readings: set it at the engine station.");
    m_words->setText(filled(tr("%1 · %2 places · %3 passes. %4"), names.join(QStringLiteral(", ")),
                            crossed.places.size(), crossed.passes, qtText(study->study.sentence)) +
                     QStringLiteral("\n") + held + QLatin1Char(' ') + qtText(study->sentence));
    showSplit(*study, band ? std::optional(band->band) : std::nullopt);
}

/// Repeatability, person, both together (the gauge), part, and all of it.
void HistoryRepeatability::showSplit(const GaugeStudy& study, const std::optional<Band>& band) {
    const double total = study.study.total;
    std::vector<ScatterShare> rows;
    const auto add = [&](const QString& source, double s) {
        const double share = total > 0 ? 100 * s * s / (total * total) : 0;
        std::optional<double> ofBand;
        if (band) {
            ofBand = 600 * s / static_cast<double>((band->hi() - band->lo()).value());
        }
        rows.push_back({rows.size(), source, s, share, ofBand});
    };
    add(tr("Repeatability: one person, one place"), study.study.repeatability);
    if (study.study.people > 1) {
        add(tr("Person to person"), study.personEffect);
        add(tr("Gauge: both together"), study.gauge);
    }
    add(tr("Part: place to place"), study.study.placeToPlace);
    add(tr("Total"), total);
    m_split->put(std::move(rows));
}

void HistoryRepeatability::showCounts(const CrossedReadings& crossed) {
    std::set<std::string> people;
    for (const auto& [place, counts] : crossed.counts) {
        for (const auto& [person, count] : counts) {
            people.insert(person);
        }
    }
    std::vector<ReadingCounts> rows;
    for (const auto& [place, counts] : crossed.counts) {
        rows.push_back({place, counts});
    }
    m_counts->put(countColumns(people), std::move(rows));
}

void HistoryRepeatability::goTo(const std::string& place) {
    const std::string first = place.substr(0, place.find(','));
    switch (static_cast<MeasuredQuantity>(m_quantity->currentData().toInt())) {
    case MeasuredQuantity::gap:
        m_session.goTo({Station::girdle, first});
        return;
    case MeasuredQuantity::journal:
    case MeasuredQuantity::bore:
        m_session.goTo({Station::bearings, first});
        return;
    case MeasuredQuantity::shim:
        m_session.goTo({Station::girdle, "shims"});
        return;
    case MeasuredQuantity::shell:
        m_session.goTo({Station::bearings, "shells"});
        return;
    case MeasuredQuantity::fit:
        m_session.goTo({Station::bearings, "fits"});
        return;
    case MeasuredQuantity::pickup:
        m_session.goTo({Station::pickup, place});
        return;
    }
}

} // namespace caprail
