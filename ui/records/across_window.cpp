// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/across_window.h>

#include <QComboBox>
#include <QFileDialog>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>
#include <ledger/qt_text.h>
#include <records/across_chart.h>
#include <records/across_columns.h>
#include <session/filled.h>
#include <session/look.h>
#include <shop/entry_text.h>
#include <store/file/path_text.h>
#include <text/ask.h>
#include <text/label.h>

namespace caprail {

namespace {

/// What is asked of the database: a later question of the same kind takes the place of one that waits.
constexpr char groupsTopic[] = "groups", chosenTopic[] = "chosen", spreadTopic[] = "spread",
               movementTopic[] = "movement", instrumentsTopic[] = "instruments";

} // namespace

AcrossWindow::AcrossWindow(DatabasePlace place, Units units, UtcTime now, QWidget* parent)
    : QMainWindow(parent), m_link(new DatabaseLink(std::move(place), this)), m_notice(new DatabaseNotice(*m_link)),
      m_units(units), m_now(now), m_of(new QComboBox), m_band(new QComboBox), m_by(new QComboBox), m_counts(new Label),
      m_chart(new AcrossChart), m_spreads(new Table<AcrossSpread, std::string>(
                                    tr("Range at each place"), &AcrossSpread::place, spreadColumns(m_units), this)),
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
    m_of->setObjectName(QStringLiteral("of"));
    m_band->setObjectName(QStringLiteral("band"));
    m_by->setObjectName(QStringLiteral("by"));
    m_of->setAccessibleName(tr("Which records"));
    m_of->setSizeAdjustPolicy(QComboBox::AdjustToContents);
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
    column->addWidget(m_notice);
    column->addWidget(tabs, 1);
    setCentralWidget(page);
    connect(m_of, &QComboBox::currentIndexChanged, this, &AcrossWindow::choose);
    connect(m_band, &QComboBox::currentIndexChanged, this, &AcrossWindow::showSpread);
    connect(m_by, &QComboBox::currentIndexChanged, this, &AcrossWindow::showMovement);
    connect(m_notice, &DatabaseNotice::triedAgain, this, &AcrossWindow::askGroups);
    clear(chosenTopic);
    askGroups();
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
    connect(csv, &QPushButton::clicked, this, [this] { saveValues(); });
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
        save(movementsCsv(m_movements->rows(), by), tr("movement.csv"));
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
            [this] { save(instrumentsCsv(m_instruments->rows()), tr("instruments.csv")); });
    return page;
}

AcrossOf AcrossWindow::of() const {
    const QStringList chosen = m_of->currentData().toStringList();
    if (chosen.size() != 2) {
        return {};
    }
    const std::string name = chosen[1].toStdString();
    return chosen[0] == QLatin1String("template") ? AcrossOf{name, {}} : AcrossOf{{}, name};
}

/// Asks the database, and shows the answer, or why there is none: some engines of many would look like all of them.
template <class Question, class Show> void AcrossWindow::ask(const QString& topic, Question question, Show show) {
    m_link->ask(
        topic,
        [question, of = of()](Connection& connection) {
            Across across(connection, of);
            return question(across);
        },
        [this, topic, show, asked = of()](auto answer) {
            if (asked != of()) {
                return; // others were chosen meanwhile, and are asked for
            }
            if (answer) {
                m_notice->answer(topic);
                show(std::move(*answer));
            } else {
                clear(topic);
                m_notice->fail(topic, QString::fromStdString(answer.error().sentence));
            }
        });
}

/// Takes away what answers a question; that of which records are chosen all other answers hang on.
void AcrossWindow::clear(const QString& topic) {
    const bool isAll = topic == chosenTopic;
    if (isAll || topic == spreadTopic) {
        m_chart->setData({.isAnswered = false}, m_band->currentText(), m_units, screenLook());
        m_spreads->put({});
    }
    if (isAll || topic == movementTopic) {
        m_movements->put({});
    }
    if (isAll || topic == instrumentsTopic) {
        m_instruments->put({});
    }
    if (isAll) {
        m_counts->clear();
    }
}

/// The templates and layouts to choose from; what is chosen of them follows.
void AcrossWindow::askGroups() {
    struct Groups {
        std::int64_t records = 0;
        std::vector<AcrossGroup> templates, layouts;
    };
    m_link->ask(
        groupsTopic,
        [](Connection& connection) -> Result<Groups> {
            Across all(connection);
            auto records = all.records();
            auto templates = records ? all.templates() : tl::unexpected(records.error());
            auto layouts = templates ? all.layouts() : tl::unexpected(templates.error());
            return layouts ? Result<Groups>(Groups{*records, std::move(*templates), std::move(*layouts)})
                           : tl::unexpected(layouts.error());
        },
        [this](const Result<Groups>& groups) {
            if (!groups) {
                m_notice->fail(groupsTopic, QString::fromStdString(groups.error().sentence));
                return;
            }
            m_notice->answer(groupsTopic);
            const QVariant chosen = m_of->currentData();
            {
                const QSignalBlocker quiet(m_of);
                m_of->clear();
                m_of->addItem(tr("All records (%1)").arg(groups->records));
                for (const AcrossGroup& group : groups->templates) {
                    m_of->addItem(filled(tr("Template: %1 (%2)"), qtText(group.name), group.records),
                                  QStringList{QStringLiteral("template"), qtText(group.name)});
                }
                for (const AcrossGroup& group : groups->layouts) {
                    m_of->addItem(filled(tr("Layout: %1 (%2)"), qtText(group.name), group.records),
                                  QStringList{QStringLiteral("layout"), qtText(group.name)});
                }
                m_of->setCurrentIndex(std::max(0, m_of->findData(chosen)));
            }
            choose();
        });
}

void AcrossWindow::choose() {
    struct Chosen {
        std::int64_t records = 0, pulls = 0;
        std::vector<std::string> bands;
    };
    ask(
        chosenTopic,
        [](Across& across) -> Result<Chosen> {
            const auto records = across.records();
            const auto pulls = records ? across.pulls() : records;
            auto bands = pulls ? across.bands() : tl::unexpected(pulls.error());
            return bands ? Result<Chosen>(Chosen{*records, *pulls, std::move(*bands)}) : tl::unexpected(bands.error());
        },
        [this](const Chosen& chosen) {
            m_counts->setText(
                tr("Records: %1; pulls in their verify rounds: %2").arg(chosen.records).arg(chosen.pulls));
            const QString band = m_band->currentText();
            const QSignalBlocker quiet(m_band);
            m_band->clear();
            for (const auto& name : chosen.bands) {
                m_band->addItem(qtText(name));
            }
            m_band->setCurrentIndex(std::max(0, m_band->findText(band)));
            showSpread();
            showMovement();
            showInstruments();
        });
}

void AcrossWindow::showSpread() {
    ask(
        spreadTopic,
        [band = m_band->currentText().toStdString()](Across& across) -> Result<AcrossPicture> {
            AcrossPicture picture;
            auto spreads = across.spreads(band);
            if (!spreads) {
                return tl::unexpected(spreads.error());
            }
            picture.spreads = std::move(*spreads);
            if (picture.spreads.values <= AcrossPicture::mostDrawn) {
                const auto read =
                    across.eachValue(band, [&](AcrossValue value) { picture.values.push_back(std::move(value)); });
                if (!read) {
                    return tl::unexpected(read.error());
                }
            }
            return picture;
        },
        [this, band = m_band->currentText()](AcrossPicture picture) {
            if (band == m_band->currentText()) {
                m_chart->setData(picture, band, m_units, screenLook());
                m_spreads->put(std::move(picture.spreads.places));
            }
        });
}

void AcrossWindow::showMovement() {
    const auto by = static_cast<MovementBy>(m_by->currentIndex());
    ask(
        movementTopic, [by](Across& across) { return across.movements(by); },
        [this, by](std::vector<MovementCount> counts) {
            if (by == static_cast<MovementBy>(m_by->currentIndex())) {
                m_movements->put(movementColumns(m_by->currentText(), m_units), std::move(counts));
            }
        });
}

void AcrossWindow::showInstruments() {
    ask(
        instrumentsTopic, [](Across& across) { return across.instruments(); },
        [this](std::vector<AcrossInstrument> instruments) { m_instruments->put(std::move(instruments)); });
}

void AcrossWindow::saveValues() {
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save as a table"), tr("spread.csv"), tr("Tables (*.csv)"));
    if (path.isEmpty()) {
        return;
    }
    m_link->ask(
        QStringLiteral("save ") + path,
        [of = of(), band = m_band->currentText().toStdString(), units = m_units,
         path = pathBytes(path)](Connection& connection) {
            Across across(connection, of);
            return writeValues(across, band, units, path);
        },
        [this](const Result<void>& written) {
            if (!written) {
                warn(this, tr("Caprail"), QString::fromStdString(written.error().sentence));
            }
        });
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

} // namespace caprail
