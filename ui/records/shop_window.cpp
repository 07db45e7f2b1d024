// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shop_window.h>

#include <QCloseEvent>
#include <QComboBox>
#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QFormLayout>
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
#include <session/look.h>
#include <records/across_window.h>
#include <records/shelf_dialogs.h>
#include <records/shop_delegate.h>
#include <records/shop_watcher.h>
#include <records/template_dialogs.h>
#include <shop/entry_text.h>
#include <store/file/path_text.h>
#include <text/ask.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

constexpr int showEvery = 250; ///< milliseconds between two looks of a list that is being read

QComboBox* choice(const QString& name, const QStringList& words) {
    auto* box = new QComboBox;
    box->addItems(words);
    box->setAccessibleName(name);
    return box;
}

} // namespace

ShopWindow::ShopWindow(QWidget* parent)
    : QMainWindow(parent), m_model(new ShopModel(this)), m_table(new ShopTable), m_search(new QLineEdit),
      m_state(choice(tr("State"), {tr("Any state"), tr("Measuring"), tr("Trial fit open"), tr("Ready to close"),
                                   tr("Signed off"), tr("Out, stale or moved"), tr("No record that can be read")})),
      m_due(choice(tr("Calibration"), {tr("Any calibration"), tr("Overdue"), tr("Due within 30 days")})),
      m_person(choice(tr("Person"), {tr("Anyone")})),
      m_group(choice(tr("Group"), {tr("No groups"), tr("By customer"), tr("By state")})), m_place(new Label),
      m_notice(new Label), m_counts(new Label), m_stop(new QPushButton(tr("S&top"))), m_progress(new QProgressBar) {
    m_table->setObjectName(QStringLiteral("records"));
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Shop — Caprail"));
    resize(1280, 800);
    restoreGeometry(QSettings().value("shop/geometry").toByteArray());

    m_table->setModel(m_model);
    m_table->setAccessibleName(tr("Records"));
    m_table->sortByColumn(ShopModel::lastEntry, Qt::DescendingOrder);
    const int em = fontMetrics().averageCharWidth();
    for (int column = 0; column < m_model->columnCount(); ++column) { // the file, the last, has what is left
        // No narrower than its name with the arrow of sorting, in the language that is spoken.
        const QString name = m_model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        const int usual = listColumns()[static_cast<std::size_t>(column)].width * em;
        m_table->setColumnWidth(column, column == ShopModel::file
                                            ? usual
                                            : std::max(usual, fontMetrics().horizontalAdvance(name) + 3 * em));
    }
    for (const auto& state : allWords<JobState>()) {
        const int width = fontMetrics().horizontalAdvance(qtText(signedWord(state.value))) + 2 * em;
        m_table->setColumnWidth(ShopModel::state, std::max(m_table->columnWidth(ShopModel::state), width));
    }
    m_table->horizontalHeader()->restoreState(QSettings().value("shop/columns").toByteArray());
    m_notice->setWordWrap(true);
    m_notice->setMargin(8);
    m_notice->hide();

    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->addWidget(makeTools());
    column->addWidget(m_notice);
    column->addWidget(m_table, 1);
    setCentralWidget(page);
    m_progress->setMaximumWidth(20 * em);
    m_progress->setAccessibleName(tr("Reading"));
    m_progress->hide();
    m_stop->hide();
    statusBar()->addWidget(m_counts, 1);
    statusBar()->addPermanentWidget(m_progress);
    statusBar()->addPermanentWidget(m_stop);
    makeMenu();

    connect(m_search, &QLineEdit::textChanged, this, &ShopWindow::search);
    for (QComboBox* box : {m_state, m_due, m_person}) {
        connect(box, &QComboBox::currentIndexChanged, this, &ShopWindow::filter);
    }
    connect(m_group, &QComboBox::currentIndexChanged, this,
            [this](int index) { m_model->setGrouping(static_cast<ShopGrouping>(index)); });
    connect(m_table, &ShopTable::opened, this, &ShopWindow::open);
    connect(m_model, &ShopModel::listChanged, this, &ShopWindow::showCounts);
    connect(m_search, &QLineEdit::returnPressed, this, [this] {
        m_table->setFocus();
        if (!m_table->currentIndex().isValid() && m_model->rowCount() > 0) {
            m_table->selectRow(m_model->at(m_model->index(0, 0)) == nullptr ? 1 : 0);
        }
    });
    showCounts();
    m_search->setFocus();
}

ShopWindow::~ShopWindow() = default;

QWidget* ShopWindow::makeTools() {
    m_search->setPlaceholderText(tr("Search customers, engines, people, notes and findings"));
    m_search->setObjectName(QStringLiteral("search"));
    m_search->setAccessibleName(tr("Search"));
    m_search->setClearButtonEnabled(true);
    m_person->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* choose = new QPushButton(tr("&Folder…"));
    connect(choose, &QPushButton::clicked, this, &ShopWindow::chooseFolder);
    m_place->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);

    auto* first = new QHBoxLayout;
    first->addWidget(m_search, 3);
    first->addWidget(m_place, 2);
    first->addWidget(choose);
    auto* second = new QHBoxLayout;
    for (QComboBox* box : {m_state, m_due, m_person, m_group}) {
        second->addWidget(box);
    }
    second->addStretch(1);
    auto* tools = new QWidget;
    auto* column = new QVBoxLayout(tools);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(first);
    column->addLayout(second);
    return tools;
}

void ShopWindow::makeMenu() {
    QMenu* shop = menuBar()->addMenu(tr("&Shop"));
    shop->addAction(tr("Open the &record"), Qt::CTRL | Qt::Key_Return, this, [this] { open(m_table->currentIndex()); });
    shop->addAction(tr("&Choose the folder…"), QKeySequence::Open, this, &ShopWindow::chooseFolder);
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
    m_model->clear();
    m_model->setReachable(true);
    m_folder = folder;
    m_place->setText(QDir::toNativeSeparators(folder));
    setTip(m_place, m_place->text());
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
    m_search->setFocus();
    m_search->selectAll();
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
    const QString person = m_person->currentIndex() > 0 ? m_person->currentText() : QString();
    const QStringList people = QStringList{tr("Anyone")} + m_model->people();
    QStringList listed;
    for (int i = 0; i < m_person->count(); ++i) {
        listed << m_person->itemText(i);
    }
    if (people != listed) {
        const QSignalBlocker quiet(m_person);
        m_person->clear();
        m_person->addItems(people);
        m_person->setCurrentIndex(std::max(0, static_cast<int>(people.indexOf(person))));
    }
}

void ShopWindow::search() {
    const QString typed = m_search->text().trimmed();
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
    m_model->setFilter({static_cast<ShopFilter::State>(m_state->currentIndex()),
                        static_cast<ShopFilter::Due>(m_due->currentIndex()),
                        m_person->currentIndex() > 0 ? m_person->currentText() : QString()});
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
    auto records = recordsFor(*m_index, m_model->rows());
    if (!records) { // some engines of many would look like all of them
        warn(this, tr("Caprail"), QString::fromStdString(records.error().sentence));
        return;
    }
    auto* window = new AcrossWindow(std::move(*records), m_units, {QDateTime::currentMSecsSinceEpoch()});
    window->show();
}

void ShopWindow::closeEvent(QCloseEvent* event) {
    QSettings().setValue("shop/geometry", saveGeometry());
    QSettings().setValue("shop/columns", m_table->horizontalHeader()->saveState());
    QMainWindow::closeEvent(event);
}

} // namespace caprail
