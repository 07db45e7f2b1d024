// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shop_window.h>

#include <QCloseEvent>
#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QHeaderView>
#include <QLineEdit>
#include <QMenuBar>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>
#include <QStatusBar>
#include <QTimer>
#include <QVBoxLayout>
#include <records/across_window.h>
#include <records/shelf_dialogs.h>
#include <records/shop_delegate.h>
#include <records/shop_tools.h>
#include <records/shop_watcher.h>
#include <records/template_dialogs.h>
#include <session/look.h>
#include <shop/entry_text.h>
#include <store/file/path_text.h>
#include <text/ask.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

constexpr int showEvery = 250; ///< milliseconds between two looks of a list that is being read

} // namespace

ShopWindow::ShopWindow(QWidget* parent)
    : QMainWindow(parent), m_model(new ShopModel(this)), m_table(new ShopTable), m_tools(new ShopTools(tr("&Folder…"))),
      m_notice(new Label), m_counts(new Label), m_stop(new QPushButton(tr("S&top"))), m_progress(new QProgressBar) {
    m_table->setObjectName(QStringLiteral("records"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Shop — Caprail"));
    resize(1280, 800);
    restoreGeometry(QSettings().value("shop/geometry").toByteArray());

    m_table->setModel(m_model);
    m_table->setAccessibleName(tr("Records"));
    m_table->sortByColumn(ShopModel::lastEntry, Qt::DescendingOrder);
    fitColumns(*m_table);
    m_notice->setWordWrap(true);
    m_notice->setMargin(8);
    m_notice->hide();

    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->addWidget(m_tools);
    column->addWidget(m_notice);
    column->addWidget(m_table, 1);
    setCentralWidget(page);
    m_progress->setMaximumWidth(20 * fontMetrics().averageCharWidth());
    m_progress->setAccessibleName(tr("Reading"));
    m_progress->hide();
    m_stop->hide();
    statusBar()->addWidget(m_counts, 1);
    statusBar()->addPermanentWidget(m_progress);
    statusBar()->addPermanentWidget(m_stop);
    makeMenu();

    connect(m_tools, &ShopTools::searched, this, &ShopWindow::search);
    connect(m_tools, &ShopTools::filtered, this, &ShopWindow::filter);
    connect(m_tools, &ShopTools::grouped, this, [this] { m_model->setGrouping(m_tools->grouping()); });
    connect(m_tools, &ShopTools::chooseClicked, this, &ShopWindow::chooseFolder);
    connect(m_table, &ShopTable::opened, this, &ShopWindow::open);
    connect(m_model, &ShopModel::listChanged, this, &ShopWindow::showCounts);
    connect(m_tools->search(), &QLineEdit::returnPressed, m_table, &ShopTable::takeKeyboard);
    showCounts();
    m_tools->search()->setFocus();
}

ShopWindow::~ShopWindow() = default;

void ShopWindow::makeMenu() {
    QMenu* shop = menuBar()->addMenu(tr("&Shop"));
    shop->addAction(tr("Open the &record"), Qt::CTRL | Qt::Key_Return, this, [this] { open(m_table->currentIndex()); });
    shop->addAction(tr("&Choose the folder…"), QKeySequence::Open, this, &ShopWindow::chooseFolder);
    shop->addAction(tr("Open a &database…"), {}, this, &ShopWindow::databaseRequested);
    shop->addAction(tr("&Publish…"), {}, this, &ShopWindow::publishRequested);
    shop->addAction(tr("&Look again"), QKeySequence::Refresh, this, &ShopWindow::refresh);
    shop->addAction(tr("&Search"), QKeySequence::Find, this, &ShopWindow::focusSearch);
    shop->addSeparator();
    shop->addAction(tr("Compare &engines…"), Qt::CTRL | Qt::Key_E, this, &ShopWindow::showAcross);
    shop->addAction(tr("&Templates…"), {}, this, [this] { TemplatesDialog(this).exec(); });
    shop->addAction(tr("The s&helf…"), {}, this, [this] { ShelfDialog(nullptr, this).exec(); });
    shop->addSeparator();
    shop->addAction(tr("Save the list as a &table (CSV)…"), QKeySequence::Save, this, &ShopWindow::saveList);
    shop->addSeparator();
    shop->addAction(tr("Close &window"), QKeySequence::Close, this, &QWidget::close);
    connect(m_stop, &QPushButton::clicked, this, [this] {
        if (m_watcher) {
            m_watcher->stop();
        }
    });
}

QString ShopWindow::lastFolder() {
    return QSettings().value("shop/folder").toString();
}

std::string ShopWindow::cacheFolder() {
    return (QStandardPaths::writableLocation(QStandardPaths::CacheLocation) + QStringLiteral("/shop")).toStdString();
}

void ShopWindow::showFolder(const QString& folder) {
    const auto real = realFolder(pathBytes(folder));
    m_watcher.reset();
    m_index.reset();
    m_waiting.clear();
    m_unreachableSince.reset();
    m_isEmpty = false;
    m_model->clear();
    m_model->setReachable(true);
    m_folder = folder;
    m_tools->setPlace(QDir::toNativeSeparators(folder));
    // What is known of a folder that cannot be reached now is still listed.
    const std::string root = real ? *real : pathBytes(QDir(folder).absolutePath());
    tell(real ? QString() : QString::fromStdString(real.error().sentence));
    m_watcher = std::make_unique<ShopWatcher>(cacheFolder(), root);
    const ShopWatcher* watcher = m_watcher.get();
    connect(watcher, &ShopWatcher::rowsRead, this, [this](const std::shared_ptr<std::vector<ShopRow>>& rows) {
        const bool isFirst = m_waiting.empty();
        m_waiting.insert(m_waiting.end(), std::make_move_iterator(rows->begin()), std::make_move_iterator(rows->end()));
        if (m_model->total() == 0) {
            takeRows();
        } else if (isFirst) {
            QTimer::singleShot(showEvery, this, &ShopWindow::takeRows);
        }
    });
    connect(watcher, &ShopWatcher::rowsGone, this, [this](const std::vector<std::int64_t>& ids) {
        takeRows();
        m_model->remove(ids);
        search();
    });
    connect(watcher, &ShopWatcher::progressed, this, &ShopWindow::showProgress);
    connect(watcher, &ShopWatcher::finished, this, &ShopWindow::takeReport);
    connect(watcher, &ShopWatcher::beganAnew, this, [this] {
        m_index.reset();
        m_waiting.clear();
        m_model->clear();
    });
    connect(watcher, &ShopWatcher::indexReady, this, [this](const std::string& cache, const QString& problem) {
        m_indexProblem = problem;
        auto index = ShopIndex::open(cache, m_watcher->root());
        m_index.reset();
        if (index) {
            m_index.emplace(std::move(*index));
        }
        search();
    });
    QSettings().setValue("shop/folder", folder);
}

void ShopWindow::chooseFolder() {
    const QString folder = QFileDialog::getExistingDirectory(
        this, tr("The folder of the records"),
        m_folder.isEmpty() ? QSettings().value("records-folder").toString() : m_folder);
    if (!folder.isEmpty()) {
        showFolder(folder);
    }
}

void ShopWindow::refresh() {
    if (m_watcher) {
        m_watcher->refresh();
    }
}

void ShopWindow::focusSearch() {
    m_tools->focusSearch();
}

void ShopWindow::takeRows() {
    if (m_waiting.empty()) {
        return;
    }
    const ShopRow* current = m_model->at(m_table->currentIndex());
    const std::int64_t id = current == nullptr ? 0 : current->id;
    std::vector<ShopRow> rows;
    rows.swap(m_waiting);
    m_model->setNow({QDateTime::currentMSecsSinceEpoch()});
    m_model->put(std::move(rows));
    search();
    if (const QModelIndex line = m_model->indexOf(id); line.isValid()) {
        m_table->setCurrentIndex(line);
    }
    m_tools->setPeople(m_model->people());
}

void ShopWindow::search() {
    const QString typed = m_tools->typed();
    if (typed.isEmpty()) {
        m_model->setFound({});
        return;
    }
    const std::string words = typed.toStdString();
    if (m_index && ShopIndex::hasWords(words)) {
        if (auto ids = m_index->search(words)) {
            m_model->setFound(std::move(*ids));
            return;
        }
    }
    // Signs that are no words, or no index: what stands in the lines themselves is looked through.
    std::vector<std::int64_t> ids;
    for (const ShopRow& row : m_model->rows()) {
        const RecordSummary& s = row.summary;
        const std::string all = s.customer + "\n" + s.engine + "\n" + s.serial + "\n" + s.people + "\n" +
                                plainLine(row.file.path) + "\n" + row.sentence;
        if (QString::fromStdString(all).contains(typed, Qt::CaseInsensitive)) {
            ids.push_back(row.id);
        }
    }
    m_model->setFound(std::move(ids));
}

void ShopWindow::filter() {
    m_model->setNow({QDateTime::currentMSecsSinceEpoch()});
    m_model->setFilter(m_tools->filter());
}

void ShopWindow::open(const QModelIndex& index) {
    const ShopRow* row = m_model->at(index);
    if (row == nullptr || !m_watcher) {
        return;
    }
    const std::string path = m_watcher->root() + "/" + row->file.path;
    emit openRequested(qtPath(path));
}

void ShopWindow::takeReport(const ScanReport& report) {
    takeRows();
    m_progress->hide();
    m_stop->hide();
    QStringList sentences;
    if (!report.rootProblem.empty()) {
        m_unreachableSince = m_unreachableSince.value_or(QDateTime::currentMSecsSinceEpoch());
        sentences << QString::fromStdString(report.rootProblem)
                  << tr("Not reachable since %1; what was known then is still listed.")
                         .arg(QDateTime::fromMSecsSinceEpoch(*m_unreachableSince).toString(QStringLiteral("HH:mm")));
    } else {
        m_unreachableSince.reset();
    }
    for (const UnreadFolder& folder : report.unread) {
        if (sentences.size() == 3) {
            sentences << tr("Further folders that could not be read: %1.").arg(report.unread.size() - 3);
            break;
        }
        sentences << QString::fromStdString(folder.sentence);
    }
    if (!report.isWhole && report.rootProblem.empty()) {
        sentences << tr("Reading was stopped: press F5 to go on.");
    }
    if (!m_indexProblem.isEmpty()) {
        sentences << m_indexProblem;
    }
    m_isEmpty = report.isWhole && report.rootProblem.empty() && report.files == 0;
    m_model->setReachable(!m_unreachableSince.has_value());
    tell(sentences.join(QLatin1Char(' ')));
    showCounts();
    emit scanned();
}

void ShopWindow::showProgress(const ScanProgress& progress) {
    m_progress->setMaximum(static_cast<int>(progress.total));
    m_progress->setValue(static_cast<int>(progress.done));
    m_progress->setFormat(progress.step == ScanProgress::Step::finding       ? tr("looking")
                          : progress.step == ScanProgress::Step::summarising ? tr("%v of %m found")
                                                                             : tr("%v of %m read"));
    // A look that finds nothing new comes and goes unseen.
    const bool isWorth = progress.total > 0 || m_model->total() == 0;
    m_progress->setVisible(isWorth);
    m_stop->setVisible(isWorth);
}

void ShopWindow::showCounts() {
    const auto total = static_cast<int>(m_model->total());
    const auto shown = static_cast<int>(m_model->shown());
    const auto unreadable = static_cast<int>(m_model->unreadable());
    QString words = m_folder.isEmpty() ? tr("Choose the folder that the records lie in.")
                    : shown == total   ? tr("Files: %1").arg(total)
                                       : tr("Files: %1 of %2").arg(shown).arg(total);
    if (unreadable > 0) {
        words += QStringLiteral("; ") + tr("no record that can be read: %1").arg(unreadable);
    }
    m_counts->setText(words);
    m_table->setEmptyText(total > 0   ? noneMatches()
                          : m_isEmpty ? tr("No build record lies in this folder, or in the folders in it.")
                                      : QString());
}

void ShopWindow::tell(const QString& sentence) {
    m_notice->setVisible(!sentence.isEmpty());
    m_notice->setText(sentence.isEmpty() ? QString() : QStringLiteral("≈ ") + sentence);
    const Look look = screenLook();
    QPalette palette = m_notice->palette();
    palette.setColor(QPalette::Window, washed(look.close, look.paper, 0.14));
    palette.setColor(QPalette::WindowText, look.ink);
    m_notice->setPalette(palette);
    m_notice->setAutoFillBackground(true);
}

void ShopWindow::saveList() {
    const QString path = QFileDialog::getSaveFileName(this, tr("The list as a table"), QStringLiteral("records.csv"),
                                                      tr("Tables (*.csv)"));
    if (path.isEmpty()) {
        return;
    }
    if (const auto written = writeText(pathBytes(path), m_model->toCsv().toStdString()); !written) {
        warn(this, tr("Caprail"), QString::fromStdString(written.error().sentence));
    }
}

void ShopWindow::showAcross() {
    if (!m_index) {
        return;
    }
    auto* window = new AcrossWindow(m_index->connection().place(), m_units(), {QDateTime::currentMSecsSinceEpoch()});
    window->show();
}

void ShopWindow::closeEvent(QCloseEvent* event) {
    QSettings().setValue("shop/geometry", saveGeometry());
    QSettings().setValue("shop/columns", m_table->horizontalHeader()->saveState());
    QMainWindow::closeEvent(event);
}

} // namespace caprail
