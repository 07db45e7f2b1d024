// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/history/repeatability.h>

#include <QComboBox>
#include <QElapsedTimer>
#include <QHBoxLayout>
#include <QHeaderView>
#include <ledger/band_names.h>
#include <session/filled.h>
#include <set>
#include <stations/common/plain_table.h>
#include <stations/common/station_text.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

Label* heading(const QString& text, QWidget* parent) {
    auto* label = new Label(text, parent);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    return label;
}

} // namespace

HistoryRepeatability::HistoryRepeatability(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_pooled(new PlainTable(tr("Repeatability by person and instrument"),
                              {tr("What"), tr("Person"), tr("Instrument"), tr("Readings"), tr("Places read twice"),
                               tr("s of one reading"), tr("Degrees of freedom")},
                              this)),
      m_quantity(new QComboBox(this)), m_words(new Label(this)),
      m_split(
          new PlainTable(tr("Where the scatter comes from"),
                             {tr("Source"), tr("s"), tr("Share of variance"), tr("6 s / band")}, this)),
      m_counts(new PlainTable(tr("Who has read which place how often"), {tr("Place")}, this)) {
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &HistoryRepeatability::gather);
    build();
    refresh();
}

void HistoryRepeatability::build() {
    for (const auto& quantity : allWords<MeasuredQuantity>()) {
        m_quantity->addItem(capitalised(qtShown(quantity.value)), static_cast<int>(quantity.value));
    }
    nameBox(*m_quantity, tr("Study of which readings"));
    m_words->setWordWrap(true);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    setTip(m_counts, tr("Enter goes to the place, to read it again"));
    connect(m_quantity, &QComboBox::activated, this, &HistoryRepeatability::showStudy);
    connect(m_counts, &PlainTable::keyActivated, this, &HistoryRepeatability::goTo);
    auto* choose = new QHBoxLayout;
    choose->addWidget(heading(tr("A study of"), this));
    choose->addWidget(m_quantity);
    choose->addStretch(1);
    auto* tables = new QHBoxLayout;
    tables->addWidget(m_split, 4);
    tables->addWidget(m_counts, 3);
    auto* column = new QVBoxLayout(this);
    column->addWidget(heading(tr("Repeatability of each person with each instrument, pooled over the record"), this));
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
    const Units& units = m_session.units();
    std::vector<QStringList> rows;
    for (const PersonalRepeatability& one : m_readings.readings().pooled()) {
        rows.push_back({capitalised(qtShown(one.quantity)), qtText(one.person),
                        one.instrument.empty() ? tr("not named") : qtText(one.instrument),
                        QString::number(one.readings), QString::number(one.places),
                        one.scatter ? qtText(formatSpread(one.scatter->standardDeviation, units)) : tr("not known yet"),
                        one.scatter ? QString::number(one.scatter->degreesOfFreedom, 'f', 0) : QString()});
    }
    if (rows.empty()) {
        rows.push_back({tr("Nothing is measured yet: readings appear here as they are made."), {}, {}, {}, {}, {}, {}});
    }
    m_pooled->show(rows);
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
        m_split->show({});
        return;
    }
    const auto band = bandOfStudy(m_session.facts(), crossed);
    const auto study =
        gaugeStudy(crossed.readings, band ? std::optional(band->band) : std::nullopt, m_session.units());
    if (!study) {
        m_words->setText(QStringLiteral("✕ ") + qtText(study.error().sentence));
        m_split->show({});
        return;
    }
    QStringList names;
    for (const std::string& person : crossed.people) {
        names << qtText(person);
    }
    const QString held = band ? filled(tr("Held against the band “%1”, %2."), qtText(bands::isFit(band->name) ? band->name : Core::say(band->name)),
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
    std::vector<QStringList> rows;
    const auto add = [&](const QString& source, double s) {
        const double share = total > 0 ? 100 * s * s / (total * total) : 0;
        const QString ofBand =
            band ? tr("%1 %").arg(600 * s / static_cast<double>((band->hi() - band->lo()).value()), 0, 'f', 0)
                 : QStringLiteral("—");
        rows.push_back({source, qtText(formatSpread(s, m_session.units())), tr("%1 %").arg(share, 0, 'f', 1), ofBand});
    };
    add(tr("Repeatability: one person, one place"), study.study.repeatability);
    if (study.study.people > 1) {
        add(tr("Person to person"), study.personEffect);
        add(tr("Gauge: both together"), study.gauge);
    }
    add(tr("Part: place to place"), study.study.placeToPlace);
    add(tr("All of it"), total);
    m_split->show(rows);
}

void HistoryRepeatability::showCounts(const CrossedReadings& crossed) {
    std::set<std::string> people;
    for (const auto& [place, counts] : crossed.counts) {
        for (const auto& [person, count] : counts) {
            people.insert(person);
        }
    }
    QStringList heads{tr("Place")};
    for (const std::string& person : people) {
        heads << qtText(person);
    }
    m_counts->setColumnCount(static_cast<int>(heads.size()));
    m_counts->setHorizontalHeaderLabels(heads);
    std::vector<QStringList> rows;
    for (const auto& [place, counts] : crossed.counts) {
        QStringList row{qtText(place)};
        for (const std::string& person : people) {
            const auto at = counts.find(person);
            row << (at == counts.end() ? QStringLiteral("—") : QString::number(at->second));
        }
        rows.push_back(row);
    }
    m_counts->show(rows);
}

void HistoryRepeatability::goTo(const QString& place) {
    const QString first = place.section(QLatin1Char(','), 0, 0);
    switch (static_cast<MeasuredQuantity>(m_quantity->currentData().toInt())) {
    case MeasuredQuantity::gap:
        m_session.goTo({Station::girdle, coreText(first)});
        return;
    case MeasuredQuantity::journal:
    case MeasuredQuantity::bore:
        m_session.goTo({Station::bearings, coreText(first)});
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
        m_session.goTo({Station::pickup, coreText(place)});
        return;
    }
}

QString HistoryRepeatability::words() const {
    return m_words->text();
}

} // namespace caprail
