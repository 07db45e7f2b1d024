// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/across_window.h>

#include <QComboBox>
#include <QFileDialog>
#include <QHeaderView>
#include <QPushButton>
#include <QTabWidget>
#include <QTableWidget>
#include <QVBoxLayout>
#include <ledger/qt_text.h>
#include <map>
#include <session/filled.h>
#include <session/look.h>
#include <shop/entry_text.h>
#include <records/across_chart.h>
#include <store/file/path_text.h>
#include <text/ask.h>
#include <text/label.h>
#include <unordered_map>

namespace caprail {

namespace {

QTableWidget* makeTable(const QString& name) {
    auto* table = new QTableWidget;
    table->setAccessibleName(name);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setAlternatingRowColors(true);
    table->setShowGrid(false);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setHighlightSections(false);
    return table;
}

void fill(QTableWidget* table, const QStringList& heads, const std::vector<QStringList>& rows) {
    table->clear();
    table->setColumnCount(static_cast<int>(heads.size()));
    table->setHorizontalHeaderLabels(heads);
    table->setRowCount(static_cast<int>(rows.size()));
    for (int row = 0; row < table->rowCount(); ++row) {
        const QStringList& cells = rows[static_cast<std::size_t>(row)];
        for (int column = 0; column < cells.size(); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setTextAlignment((column == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
            table->setItem(row, column, item);
        }
    }
    for (int column = 0; column < heads.size(); ++column) {
        auto* head = table->horizontalHeaderItem(column);
        head->setTextAlignment((column == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    }
    table->resizeColumnsToContents();
    for (int column = 0; column < heads.size(); ++column) {
        table->setColumnWidth(column, table->columnWidth(column) + 20);
    }
}

} // namespace

AcrossWindow::AcrossWindow(std::vector<Record> records, Units units, UtcTime now, QWidget* parent)
    : QMainWindow(parent), m_records(std::move(records)), m_units(units), m_now(now), m_of(new QComboBox),
      m_band(new QComboBox), m_by(new QComboBox), m_counts(new Label), m_chart(new AcrossChart),
      m_spreads(makeTable(tr("Range at each place"))), m_movements(makeTable(tr("Movement in verify rounds"))),
      m_instruments(makeTable(tr("Instruments by the day that they fall due"))) {
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
    tabs->setFocusPolicy(Qt::NoFocus); // its bar takes the keyboard
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
    std::vector<QStringList> rows;
    for (const AcrossSpread& spread : spreadsOf(values)) {
        rows.push_back({spread.place.empty() ? tr("engine") : qtText(spread.place), QString::number(spread.count),
                        qtText(format(spread.smallest, m_units)), qtText(format(spread.median, m_units)),
                        qtText(format(spread.largest, m_units)),
                        qtText(format(spread.largest - spread.smallest, m_units)), QString::number(spread.out)});
    }
    fill(m_spreads,
         {tr("Place"), tr("Values"), tr("Smallest"), tr("Median"), tr("Largest"), tr("Range"), tr("Judged out")}, rows);
}

void AcrossWindow::showMovement() {
    std::vector<QStringList> rows;
    for (const MovementCount& count : movementsBy(m_chosen, static_cast<MovementBy>(m_by->currentIndex()))) {
        rows.push_back({qtText(count.what), tr("%1 of %2").arg(count.moved).arg(count.pulled),
                        count.moved > 0 ? qtText(format(count.largest, m_units)) : QStringLiteral("–")});
    }
    fill(m_movements, {m_by->currentText(), tr("Moved, of pulls"), tr("Largest movement")}, rows);
}

void AcrossWindow::showInstruments() {
    const Look look = screenLook();
    const Date today = dateOf(m_now);
    std::vector<QStringList> rows;
    const auto due = instrumentsDue(m_chosen);
    for (const AcrossInstrument& one : due) {
        const bool isOverdue = one.due && *one.due < today;
        rows.push_back({qtText(one.name) + (one.serial.empty() ? QString() : QStringLiteral(", ") + qtText(one.serial)),
                        qtShown(one.type), one.calibrated ? qtText(format(*one.calibrated)) : QStringLiteral("–"),
                        one.due ? qtText(format(*one.due)) : QStringLiteral("–"),
                        isOverdue ? tr("✕ overdue")
                        : one.due ? tr("days left: %1").arg(one.due->days - today.days)
                                  : tr("no date"),
                        one.dueCycles ? tr("%1 of %2").arg(one.cycles).arg(*one.dueCycles) : QStringLiteral("–"),
                        QString::number(one.records)});
    }
    fill(m_instruments,
         {tr("Instrument"), tr("Kind"), tr("Calibrated"), tr("Due"), tr("State"), tr("Pulls"), tr("Records")}, rows);
    for (int row = 0; row < m_instruments->rowCount(); ++row) {
        if (due[static_cast<std::size_t>(row)].due && *due[static_cast<std::size_t>(row)].due < today) {
            m_instruments->item(row, 4)->setForeground(look.out);
        }
    }
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
