// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/across_window.h>

#include <QComboBox>
#include <QFileDialog>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>
#include <ledger/qt_text.h>
#include <map>
#include <records/across_chart.h>
#include <session/filled.h>
#include <session/look.h>
#include <shop/entry_text.h>
#include <store/file/path_text.h>
#include <text/ask.h>
#include <text/label.h>
#include <unordered_map>

namespace caprail {

namespace {

/// A figure, sorted by what it is worth.
template <class Row, class Text, class Value> TableColumn<Row> figure(const QString& title, Text text, Value value) {
    return {.title = title, .text = text, .value = value, .isFigure = true};
}

std::vector<TableColumn<AcrossSpread>> spreadColumns(const Units& units) {
    const auto length = [&units](const QString& title, auto lengthOf) {
        return figure<AcrossSpread>(
            title, [&units, lengthOf](const AcrossSpread& row) { return qtText(format(lengthOf(row), units)); },
            [lengthOf](const AcrossSpread& row) { return valueOf(lengthOf(row)); });
    };
    return {{.title = AcrossWindow::tr("Place"),
             .text =
                 [](const AcrossSpread& row) {
                     return row.place.empty() ? AcrossWindow::tr("engine") : qtText(row.place);
                 }},
            figure<AcrossSpread>(
                AcrossWindow::tr("Values"), [](const AcrossSpread& row) { return QString::number(row.count); },
                [](const AcrossSpread& row) { return valueOf(row.count); }),
            length(AcrossWindow::tr("Smallest"), [](const AcrossSpread& row) { return row.smallest; }),
            length(AcrossWindow::tr("Median"), [](const AcrossSpread& row) { return row.median; }),
            length(AcrossWindow::tr("Largest"), [](const AcrossSpread& row) { return row.largest; }),
            length(AcrossWindow::tr("Range"), [](const AcrossSpread& row) { return row.largest - row.smallest; }),
            figure<AcrossSpread>(
                AcrossWindow::tr("Judged out"), [](const AcrossSpread& row) { return QString::number(row.out); },
                [](const AcrossSpread& row) { return valueOf(row.out); })};
}

/// `by` heads the first column: what is counted by.
std::vector<TableColumn<MovementCount>> movementColumns(const QString& by, const Units& units) {
    return {{.title = by, .text = [](const MovementCount& row) { return qtText(row.what); }},
            figure<MovementCount>(
                AcrossWindow::tr("Moved, of pulls"),
                [](const MovementCount& row) { return AcrossWindow::tr("%1 of %2").arg(row.moved).arg(row.pulled); },
                [](const MovementCount& row) { return valueOf(row.moved); }),
            figure<MovementCount>(
                AcrossWindow::tr("Largest movement"),
                [&units](const MovementCount& row) {
                    return row.moved > 0 ? qtText(format(row.largest, units)) : QStringLiteral("–");
                },
                [](const MovementCount& row) { return row.moved > 0 ? valueOf(row.largest) : SortValue(); })};
}

std::vector<TableColumn<AcrossInstrument>> instrumentsColumns(Date today) {
    using Row = AcrossInstrument;
    const auto day = [](const QString& title, std::optional<Date> Row::*date) {
        return figure<Row>(
            title, [date](const Row& row) { return row.*date ? qtText(format(*(row.*date))) : QStringLiteral("–"); },
            [date](const Row& row) { return row.*date ? valueOf((row.*date)->days) : SortValue(); });
    };
    const auto isOverdue = [today](const Row& row) { return row.due && *row.due < today; };
    auto state = figure<Row>(
        AcrossWindow::tr("State"),
        [today, isOverdue](const Row& row) {
            return isOverdue(row) ? AcrossWindow::tr("✕ overdue")
                   : row.due      ? AcrossWindow::tr("days left: %1").arg(row.due->days - today.days)
                                  : AcrossWindow::tr("no date");
        },
        [](const Row& row) { return row.due ? valueOf(row.due->days) : SortValue(); });
    state.ink = [isOverdue](const Row& row, const Look& look) { return isOverdue(row) ? look.out : QColor(); };
    return {{.title = AcrossWindow::tr("Instrument"),
             .text =
                 [](const Row& row) {
                     return qtText(row.name) +
                            (row.serial.empty() ? QString() : QStringLiteral(", ") + qtText(row.serial));
                 }},
            figure<Row>(
                AcrossWindow::tr("Kind"), [](const Row& row) { return qtShown(row.type); },
                [](const Row& row) { return SortValue(qtShown(row.type)); }),
            day(AcrossWindow::tr("Calibrated"), &Row::calibrated),
            day(AcrossWindow::tr("Due"), &Row::due),
            state,
            figure<Row>(
                AcrossWindow::tr("Pulls"),
                [](const Row& row) {
                    return row.dueCycles ? AcrossWindow::tr("%1 of %2").arg(row.cycles).arg(*row.dueCycles)
                                         : QStringLiteral("–");
                },
                [](const Row& row) { return row.dueCycles ? valueOf(row.cycles) : SortValue(); }),
            figure<Row>(
                AcrossWindow::tr("Records"), [](const Row& row) { return QString::number(row.records); },
                [](const Row& row) { return valueOf(row.records); })};
}

} // namespace

AcrossWindow::AcrossWindow(std::vector<Record> records, Units units, UtcTime now, QWidget* parent)
    : QMainWindow(parent), m_records(std::move(records)), m_units(units), m_now(now), m_of(new QComboBox),
      m_band(new QComboBox), m_by(new QComboBox), m_counts(new Label), m_chart(new AcrossChart),
      m_spreads(new Table<AcrossSpread, std::string>(tr("Range at each place"), &AcrossSpread::place,
                                                     spreadColumns(m_units), this)),
      m_movements(new Table<MovementCount, std::string>(tr("Movement in verify rounds"), &MovementCount::what,
                                                        movementColumns({}, m_units), this)),
      m_instruments(new Table<AcrossInstrument, Instrument>(
          tr("Instruments by the day that they fall due"),
          [](const AcrossInstrument& one) { return Instrument(one.name, one.type, one.serial); },
          instrumentsColumns(dateOf(m_now)), this)) {
    for (TableView* table : std::initializer_list<TableView*>{m_spreads, m_movements, m_instruments}) {
        table->setStretched(-1);
    }
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Across engines — Caprail"));
    resize(1280, 800);
    m_of->setAccessibleName(tr("Which records"));
    m_of->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    std::map<QString, int> templates;
    std::map<QString, int> layouts;
    for (const Record& record : m_records) {
        if (!record.templateName.isEmpty()) {
            ++templates[record.templateName];
        }
        if (!record.layout.isEmpty()) {
            ++layouts[record.layout];
        }
    }
    m_of->addItem(tr("All records (%1)").arg(m_records.size()));
    for (const auto& [name, count] : templates) {
        m_of->addItem(filled(tr("Template: %1 (%2)"), name, count), QStringList{QStringLiteral("template"), name});
    }
    for (const auto& [name, count] : layouts) {
        m_of->addItem(filled(tr("Layout: %1 (%2)"), name, count), QStringList{QStringLiteral("layout"), name});
    }
    auto* top = new QHBoxLayout;
    top->addWidget(m_of);
    top->addWidget(m_counts, 1);
    auto* tabs = new QTabWidget;
    tabs->addTab(spreadPage(), tr("&Spread"));
    tabs->addTab(movementPage(), tr("&Movement"));
    tabs->addTab(instrumentPage(), tr("&Instruments due"));
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->addLayout(top);
    column->addWidget(tabs, 1);
    setCentralWidget(page);
    connect(m_of, &QComboBox::currentIndexChanged, this, &AcrossWindow::choose);
    connect(m_band, &QComboBox::currentIndexChanged, this, &AcrossWindow::showSpread);
    connect(m_by, &QComboBox::currentIndexChanged, this, &AcrossWindow::showMovement);
    choose();
}

QWidget* AcrossWindow::spreadPage() {
    auto* page = new QWidget;
    m_band->setAccessibleName(tr("Quantity"));
    m_band->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* csv = new QPushButton(tr("Save as a &table (CSV)…"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_band);
    row->addStretch(1);
    row->addWidget(csv);
    auto* column = new QVBoxLayout(page);
    column->addLayout(row);
    column->addWidget(m_chart, 3);
    column->addWidget(m_spreads, 2);
    connect(csv, &QPushButton::clicked, this, [this] {
        const std::string band = m_band->currentText().toStdString();
        save(valuesCsv(valuesOf(m_chosen, band), band, m_units), tr("spread.csv"));
    });
    return page;
}

QWidget* AcrossWindow::movementPage() {
    auto* page = new QWidget;
    m_by->addItems({tr("By position"), tr("By wrench"), tr("By person")});
    m_by->setAccessibleName(tr("Counted by"));
    auto* words =
        new Label(tr("How often a fastener moved in a verify round, out of how many pulls, in all builds. The "
                     "counts say nothing of the cause."));
    words->setWordWrap(true);
    auto* csv = new QPushButton(tr("Save as a &table (CSV)…"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_by);
    row->addWidget(words, 1);
    row->addWidget(csv);
    auto* column = new QVBoxLayout(page);
    column->addLayout(row);
    column->addWidget(m_movements, 1);
    connect(csv, &QPushButton::clicked, this, [this] {
        const auto by = static_cast<MovementBy>(m_by->currentIndex());
        save(movementsCsv(movementsBy(m_chosen, by), by), tr("movement.csv"));
    });
    return page;
}

QWidget* AcrossWindow::instrumentPage() {
    auto* page = new QWidget;
    auto* words =
        new Label(tr("Instruments of one name, kind and serial are taken to be the same. A wrench without a "
                     "date of its own is due a year after its calibration. Pulls are the most that one record "
                     "counts: records do not know of each other's."));
    words->setWordWrap(true);
    auto* csv = new QPushButton(tr("Save as a &table (CSV)…"));
    auto* row = new QHBoxLayout;
    row->addWidget(words, 1);
    row->addWidget(csv);
    auto* column = new QVBoxLayout(page);
    column->addLayout(row);
    column->addWidget(m_instruments, 1);
    connect(csv, &QPushButton::clicked, this,
            [this] { save(instrumentsCsv(instrumentsDue(m_chosen)), tr("instruments.csv")); });
    return page;
}

void AcrossWindow::setUnits(const Units& units) {
    m_units = units;
    showSpread();
}

void AcrossWindow::choose() {
    const QStringList of = m_of->currentData().toStringList();
    m_chosen.clear();
    std::size_t pulls = 0;
    for (const Record& record : m_records) {
        if (of.isEmpty() || (of[0] == QLatin1String("template") ? record.templateName : record.layout) == of[1]) {
            m_chosen.push_back(record.figures);
            for (const auto& pull : record.figures.figures.pulls) {
                pulls += static_cast<std::size_t>(pull.pulled);
            }
        }
    }
    m_counts->setText(tr("Records: %1; pulls in their verify rounds: %2").arg(m_chosen.size()).arg(pulls));
    const QString band = m_band->currentText();
    const QSignalBlocker quiet(m_band);
    m_band->clear();
    for (const auto& name : bandsIn(m_chosen)) {
        m_band->addItem(qtText(name));
    }
    m_band->setCurrentIndex(std::max(0, m_band->findText(band)));
    showSpread();
    showMovement();
    showInstruments();
}

void AcrossWindow::showSpread() {
    const auto values = valuesOf(m_chosen, m_band->currentText().toStdString());
    m_chart->setData(values, m_band->currentText(), m_units, screenLook());
    m_spreads->put(spreadsOf(values));
}

void AcrossWindow::showMovement() {
    m_movements->put(movementColumns(m_by->currentText(), m_units),
                     movementsBy(m_chosen, static_cast<MovementBy>(m_by->currentIndex())));
}

void AcrossWindow::showInstruments() {
    m_instruments->put(instrumentsDue(m_chosen));
}

void AcrossWindow::save(const std::string& csv, const QString& name) {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save as a table"), name, tr("Tables (*.csv)"));
    if (path.isEmpty()) {
        return;
    }
    if (const auto written = writeText(pathBytes(path), csv); !written) {
        warn(this, tr("Caprail"), QString::fromStdString(written.error().sentence));
    }
}

Result<std::vector<AcrossWindow::Record>> recordsFor(ShopIndex& index, const std::vector<ShopRow>& rows) {
    std::unordered_map<std::int64_t, const ShopRow*> byId;
    for (const ShopRow& row : rows) {
        if (row.reading == FileReading::assessed) {
            byId.emplace(row.id, &row);
        }
    }
    std::vector<AcrossWindow::Record> records;
    const auto read = index.eachFigures([&](std::int64_t id, RecordFigures figures) {
        const auto at = byId.find(id);
        if (at == byId.end()) {
            return;
        }
        const RecordSummary& s = at->second->summary;
        std::string label = s.customer;
        for (const std::string* part : {&s.engine, &s.serial}) {
            label += (label.empty() || part->empty() ? "" : ", ") + *part;
        }
        records.push_back({{std::move(label), id, std::move(figures)}, qtText(s.templateName), qtText(s.layout)});
    });
    return read ? Result<std::vector<AcrossWindow::Record>>(std::move(records)) : tl::unexpected(read.error());
}

} // namespace caprail
