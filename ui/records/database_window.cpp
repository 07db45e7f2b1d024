// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/database_window.h>

#include <QCloseEvent>
#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QHeaderView>
#include <QLineEdit>
#include <QMenuBar>
#include <QSettings>
#include <QStatusBar>
#include <QTimer>
#include <QVBoxLayout>
#include <base/csv.h>
#include <ledger/qt_text.h>
#include <records/across_window.h>
#include <records/database_notice.h>
#include <records/shop_cells.h>
#include <records/shop_delegate.h>
#include <records/shop_model.h>
#include <records/shop_tools.h>
#include <session/filled.h>
#include <shop/entry_text.h>
#include <shopserver/fetch.h>
#include <store/file/output_file.h>
#include <store/file/path_text.h>
#include <text/ask.h>

namespace caprail {

namespace {

/// The whole list as a table for a spreadsheet, row by row as the database gives it.
Result<void> writeList(Connection& connection, const ListingWish& wish, const std::string& path) {
    return writeOutput(path, OutputSort::text, true, [&](const std::string& unfinished) {
        constexpr std::size_t atATime = 1 << 20; // bytes
        const Seeing seeing = onScreen(wish.now);
        CsvWriter csv;
        addHead(csv);
        const auto read = ListingPages(connection).each(wish, [&](const ShopRow& row) -> Result<void> {
            addRow(csv, row, seeing);
            if (csv.written().size() < atATime) {
                return {};
            }
            const std::string piece = csv.written();
            csv = CsvWriter();
            return addTo(unfinished, piece);
        });
        return read ? addTo(unfinished, csv.written()) : read;
    });
}

/// The record of a line as a new file.
Result<void> fetchedInto(Connection& connection, std::int64_t id, const std::string& path) {
    std::string identity;
    {
        auto query = connection.prepare("SELECT identity FROM listing WHERE id = ?");
        if (!query) {
            return tl::unexpected(query.error());
        }
        query->bind(1, id);
        const auto row = query->step();
        if (!row) {
            return tl::unexpected(row.error());
        }
        identity = *row ? query->text(0) : std::string();
    }
    const auto fetched = fetchRecord(connection, identity, path);
    return fetched ? Result<void>() : Result<void>(tl::unexpected(fetched.error()));
}

} // namespace

DatabaseWindow::DatabaseWindow(QWidget* parent)
    : QMainWindow(parent), m_table(new ShopTable), m_tools(new ShopTools(tr("&Database…"))), m_none(new Label),
      m_counts(new Label), m_fetching(new Label) {
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Shop's database — Caprail"));
    resize(1280, 800);
    restoreGeometry(QSettings().value("shop/geometry").toByteArray());
    m_table->setObjectName(QStringLiteral("records"));
    m_table->setAccessibleName(tr("Records"));
    m_none->setWordWrap(true);
    m_none->setMargin(8);
    m_none->hide();

    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->addWidget(m_tools);
    column->addWidget(m_none);
    column->addWidget(m_table, 1);
    setCentralWidget(page);
    statusBar()->addWidget(m_counts, 1);
    statusBar()->addPermanentWidget(m_fetching);
    makeMenu();

    connect(m_tools, &ShopTools::chooseClicked, this, &DatabaseWindow::chooseDatabase);
    connect(m_tools, &ShopTools::searched, this, [this] {
        if (m_model != nullptr) {
            m_model->setSearch(m_tools->typed());
        }
    });
    connect(m_tools, &ShopTools::filtered, this, [this] {
        if (m_model != nullptr) {
            m_model->setFilter(m_tools->filter());
        }
    });
    connect(m_tools, &ShopTools::grouped, this, [this] {
        if (m_model != nullptr) {
            m_model->setGrouping(m_tools->grouping());
        }
    });
    connect(m_tools->search(), &QLineEdit::returnPressed, m_table, &ShopTable::takeKeyboard);
    connect(m_table, &ShopTable::opened, this, &DatabaseWindow::fetch);
    showCounts();
    m_tools->search()->setFocus();
}

DatabaseWindow::~DatabaseWindow() = default;

void DatabaseWindow::makeMenu() {
    QMenu* shop = menuBar()->addMenu(tr("&Shop"));
    shop->addAction(tr("Fetch and open the &record…"), Qt::CTRL | Qt::Key_Return, this,
                    [this] { fetch(m_table->currentIndex()); });
    shop->addAction(tr("Open a &database…"), {}, this, &DatabaseWindow::chooseDatabase);
    shop->addAction(tr("Open a &folder…"), QKeySequence::Open, this, &DatabaseWindow::folderRequested);
    shop->addAction(tr("&Look again"), QKeySequence::Refresh, this, &DatabaseWindow::refresh);
    shop->addAction(tr("&Search"), QKeySequence::Find, m_tools, &ShopTools::focusSearch);
    shop->addSeparator();
    shop->addAction(tr("Compare &engines…"), Qt::CTRL | Qt::Key_E, this, &DatabaseWindow::showAcross);
    shop->addSeparator();
    shop->addAction(tr("Save the list as a &table (CSV)…"), QKeySequence::Save, this, &DatabaseWindow::saveList);
    shop->addSeparator();
    shop->addAction(tr("Close &window"), QKeySequence::Close, this, &QWidget::close);
}

QString DatabaseWindow::lastDatabase() {
    return QSettings().value("shop/database").toString();
}

void DatabaseWindow::chooseDatabase() {
    const auto name = askText(this, tr("A shop's database"),
                              tr("A service of ~/.pg_service.conf, or a URL such as postgresql://bench@server/caprail. "
                                 "A password belongs into ~/.pgpass or the service file."),
                              m_name.isEmpty() ? lastDatabase() : m_name);
    if (name && !name->trimmed().isEmpty()) {
        showDatabase(name->trimmed());
    }
}

void DatabaseWindow::showDatabase(const QString& name) {
    const auto place = parseService(name.toStdString());
    m_table->setModel(nullptr);
    delete m_model;
    delete m_notice;
    m_model = nullptr;
    m_notice = nullptr;
    m_link.reset();
    m_fetching->clear(); // its answer went with the link
    m_none->setVisible(!place);
    m_none->setText(place ? QString() : QString::fromStdString(place.error().sentence));
    showCounts();
    if (!place) { // not remembered either: it may hold a password
        m_name.clear();
        m_tools->setPlace({});
        return;
    }
    m_name = name;
    m_tools->setPlace(name);
    QSettings().setValue("shop/database", name);
    m_link = std::make_unique<DatabaseLink>(*place);
    m_notice = new DatabaseNotice(*m_link);
    static_cast<QVBoxLayout*>(centralWidget()->layout())->insertWidget(1, m_notice);
    m_model = new DatabaseModel(*m_link, this);
    connectModel();
    m_model->setSearch(m_tools->typed());
    m_model->setFilter(m_tools->filter());
    m_model->setGrouping(m_tools->grouping());
    m_table->setModel(m_model);
    fitColumns(*m_table);
    m_table->sortByColumn(ShopModel::lastEntry, Qt::DescendingOrder);
    refresh();
}

void DatabaseWindow::connectModel() {
    connect(m_model, &DatabaseModel::listChanged, this, &DatabaseWindow::showCounts);
    connect(m_model, &DatabaseModel::failed, m_notice, &DatabaseNotice::fail);
    connect(m_model, &DatabaseModel::answered, m_notice, &DatabaseNotice::answer);
    connect(m_model, &DatabaseModel::listedAnew, m_notice, &DatabaseNotice::clear);
    connect(m_notice, &DatabaseNotice::triedAgain, this, &DatabaseWindow::refresh);
}

void DatabaseWindow::refresh() {
    if (m_model != nullptr) {
        m_model->ask();
        askPeople();
    }
}

void DatabaseWindow::askPeople() {
    m_link->ask(
        QStringLiteral("people"), [](Connection& connection) { return ListingPages(connection).people(); },
        [this](const Result<std::vector<std::string>>& people) {
            QStringList names;
            for (const std::string& name : people.value_or(std::vector<std::string>())) {
                names << qtText(name);
            }
            if (people) { // else the list says what is wrong
                m_tools->setPeople(names);
            }
        });
}

void DatabaseWindow::showCounts() {
    if (m_model == nullptr) {
        m_table->setEmptyText({});
        m_counts->setText(tr("Choose the database that the records are in."));
        return;
    }
    const auto listed = m_model->listed();
    const auto total = m_model->total();
    m_table->setEmptyText(listed != 0  ? QString()
                          : total == 0 ? tr("No record was published to this database yet.")
                                       : noneMatches());
    m_counts->setText(!listed                       ? tr("Counting the records…")
                      : !total || *total == *listed ? tr("Records: %1").arg(*listed)
                                                    : tr("Records: %1 of %2").arg(*listed).arg(*total));
}

void DatabaseWindow::fetch(const QModelIndex& index) {
    const ShopRow* row = m_model == nullptr ? nullptr : m_model->at(index);
    if (row == nullptr) {
        return;
    }
    const std::int64_t id = row->id;
    const std::string name = row->summary.customer + " " + row->summary.engine + " " + row->summary.serial;
    const QString folder = QSettings().value("records-folder", QDir::homePath()).toString();
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Where the fetched record is to lie"),
        folder + QLatin1Char('/') + QString::fromStdString(safeName(name, "record")) + QStringLiteral(".caprail"),
        tr("Build records (*.caprail)"), nullptr, QFileDialog::DontConfirmOverwrite); // it is never written over
    if (!path.isEmpty()) {
        fetchInto(id, path);
    }
}

void DatabaseWindow::fetchInto(std::int64_t id, const QString& path) {
    m_fetching->setText(tr("Fetching the record…"));
    m_link->ask(
        QStringLiteral("fetch ") + path,
        [id, path = pathBytes(path)](Connection& connection) { return fetchedInto(connection, id, path); },
        [this, path](const Result<void>& fetched) {
            m_fetching->clear();
            if (fetched) {
                emit openRequested(path);
            } else {
                warn(this, tr("Caprail"), QString::fromStdString(fetched.error().sentence));
            }
        });
}

void DatabaseWindow::saveList() {
    const QString path = m_model == nullptr
                             ? QString()
                             : QFileDialog::getSaveFileName(this, tr("The list as a table"),
                                                            QStringLiteral("records.csv"), tr("Tables (*.csv)"));
    if (path.isEmpty()) {
        return;
    }
    m_link->ask(
        QStringLiteral("save ") + path,
        [wish = m_model->wish(), path = pathBytes(path)](Connection& connection) {
            return writeList(connection, wish, path);
        },
        [this](const Result<void>& written) {
            if (!written) {
                warn(this, tr("Caprail"), QString::fromStdString(written.error().sentence));
            }
        });
}

void DatabaseWindow::showAcross() {
    if (m_link != nullptr) {
        auto* window = new AcrossWindow(m_link->place(), m_units(), {QDateTime::currentMSecsSinceEpoch()});
        window->show();
    }
}

void DatabaseWindow::closeEvent(QCloseEvent* event) {
    QSettings().setValue("shop/geometry", saveGeometry());
    QSettings().setValue("shop/columns", m_table->horizontalHeader()->saveState());
    QMainWindow::closeEvent(event);
}

} // namespace caprail
