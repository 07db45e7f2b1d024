// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/main_window.h>

#include <QApplication>
#include <QCloseEvent>
#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QFontInfo>
#include <QMimeData>
#include <QScreen>
#include <QSettings>
#include <QStatusBar>
#include <QStyle>
#include <QTemporaryDir>
#include <QThreadPool>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <gauges/gauge_hub.h>
#include <ledger/qt_text.h>
#include <planview/plan_view.h>
#include <session/announcer.h>
#include <session/filled.h>
#include <session/look.h>
#include <session/spoken_words.h>
#include <sheet/logo.h>
#include <stations/all_stations.h>
#include <stations/common/entry_field.h>
#include <stations/common/panel_stack.h>
#include <stations/common/photo_tools.h>
#include <text/ask.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <utility>
#include <window/bench_view.h>
#include <window/confirmation.h>
#include <window/disk_bar.h>
#include <window/doorbell.h>
#include <window/focus_ring.h>
#include <window/key_rule.h>
#include <window/menus.h>
#include <window/new_record_dialog.h>
#include <window/next_bar.h>
#include <window/panel_scroller.h>
#include <window/place_panel.h>
#include <window/preferences_dialog.h>
#include <window/publish_wiring.h>
#include <window/samples.h>
#include <window/shared_recent.h>
#include <window/shop_wiring.h>
#include <window/start_page.h>
#include <window/station_list.h>
#include <window/tour.h>

namespace caprail {

namespace {

/// The first window on a small screen, and one that was larger on another screen, lie whole on this one, frame included.
void fitToScreen(QWidget& window) {
    const QRect room = window.screen()->availableGeometry();
    const int border = window.style()->pixelMetric(QStyle::PM_DefaultFrameWidth, nullptr, &window);
    const int bar = window.style()->pixelMetric(QStyle::PM_TitleBarHeight, nullptr, &window);
    const QRect inside = room.adjusted(border, bar + border, -border, -border);
    window.resize(window.size().boundedTo(inside.size()));
    const QPoint corner = window.pos();
    window.move(std::clamp(corner.x(), room.left(), std::max(room.left(), inside.right() - window.width())),
                std::clamp(corner.y(), room.top(), std::max(room.top(), inside.bottom() - window.height())));
}

/// The field that holds a value which was typed and not stored, if any.
EntryField* unstoredField(const QWidget& window) {
    for (EntryField* field : window.findChildren<EntryField*>()) {
        if (field->isVisible() && !field->text().trimmed().isEmpty()) {
            return field;
        }
    }
    return nullptr;
}

/// "V8 · Orrin Vale", as far as it was said.
QString whoseEngine(const RecordSession& session) {
    const auto& engine = session.facts().engine;
    return engine ? joined({qtText(engine->what.engine), qtText(engine->what.customer)}, QStringLiteral(" · "))
                  : QString();
}

int staleChecks(const Assessment& assessment) {
    return static_cast<int>(std::ranges::count(assessment.checks, CheckState::stale, &Check::state));
}

} // namespace

MainWindow::MainWindow()
    : m_preferences(Preferences::load()), m_person(new QComboBox(this)), m_lastStored(new Label(this)),
      m_confirmation(new Confirmation(this)), m_doorbell(new Doorbell(this)) {
    m_confirmation->setChoice(m_preferences.confirmation);
    m_paper = screenLook().paper;
    setAttribute(Qt::WA_DeleteOnClose);
    setAcceptDrops(true);
    resize(QSize(1280, 800) * textScale());
    restoreGeometry(QSettings().value("window/geometry").toByteArray());
    fitToScreen(*this);
    KeyRule::install();
    FocusRing::install();
    connect(&GaugeHub::instance(), &GaugeHub::said, this, &MainWindow::sayOfGauge);
    connect(&Announcer::instance(), &Announcer::said, this, [this](const QString& sentence) {
        if (isActiveWindow()) {
            m_lastStored->setSequel(sentence);
        }
    });
    m_lastStored->setObjectName(QStringLiteral("lastStored"));
    m_person->setAccessibleName(tr("Who is working"));
    setTip(m_person, tr("Every entry carries this name"));
    statusBar()->addWidget(m_lastStored, 1);
    statusBar()->addPermanentWidget(m_person);
    connect(m_person, &QComboBox::textActivated, this, [this](const QString& name) {
        if (m_session) {
            m_session->setPerson(name);
        }
    });
    makeMenus(*this);
    publishChangesOf(*this);
    new DiskBar(*this);
    setWindowTitle(tr("Caprail"));
    m_person->hide();
}

MainWindow::~MainWindow() {
    // The panels hold the session by reference: they go first.
    delete m_bench;
    delete takeCentralWidget();
}

void MainWindow::showStart() {
    auto* start = new StartPage(this);
    connect(start, &StartPage::newRequested, this, &MainWindow::newRecord, Qt::QueuedConnection);
    connect(start, &StartPage::openRequested, this, &MainWindow::chooseFile, Qt::QueuedConnection);
    connect(start, &StartPage::shopRequested, this, &MainWindow::openShop, Qt::QueuedConnection);
    connect(start, &StartPage::manualRequested, this, &MainWindow::showManual, Qt::QueuedConnection);
    connect(start, &StartPage::fileChosen, this, &MainWindow::openFile, Qt::QueuedConnection);
    connect(start, &StartPage::sampleChosen, this, &MainWindow::openSample, Qt::QueuedConnection);
    setCentralWidget(start);
    setWindowTitle(tr("Caprail"));
    m_person->hide();
}

void MainWindow::take(std::unique_ptr<RecordSession> session) {
    delete m_bench; // it may hold a field of a panel
    m_bench = nullptr;
    delete takeCentralWidget();
    m_panels.clear();
    m_session = std::move(session);
    m_session->setUnits(m_preferences.units);
    m_session->setReasonAsker([this](qint64 judged) {
        return askText(this, tr("Reason"),
                       tr("Entry %1 was judged by what this changes. Why is it changed? The reason stands on the build sheet.")
                           .arg(judged));
    });

    auto* page = new QWidget;
    m_next = new NextBar(*m_session, page);
    m_list = new StationList(*m_session, page);
    m_stack = new PanelStack(page);
    auto* row = new QHBoxLayout;
    row->setSpacing(0);
    m_place = new PlacePanel(*m_session, page);
    m_place->setFixedWidth(m_list->width());
    connect(m_place, &PlacePanel::refused, m_place, &QWidget::show); // in a small window it is out of sight
    auto* left = new QVBoxLayout;
    left->setSpacing(0);
    left->addWidget(m_list);
    left->addWidget(m_place, 1);
    left->addStretch(0); // the list stays at the top where the panel of the place is out of sight
    row->addLayout(left);
    row->addWidget(new PanelScroller(m_stack, page), 1);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_next);
    column->addLayout(row, 1);
    setCentralWidget(page);
    m_bench = new BenchView(*m_session, this);
    m_bench->hide();
    connect(m_bench, &BenchView::left, this, &MainWindow::leaveBench);
    connect(m_bench, &BenchView::strikeAsked, this, &MainWindow::strikeLast);

    connect(m_list, &StationList::stationChosen, this, [this](Station station) {
        m_next->clearRefusal();
        m_stack->setCurrentWidget(panel(station));
        panel(station)->refresh();
        followPlace();
    });
    connect(m_session.get(), &RecordSession::changed, this, &MainWindow::refreshAll);
    connect(m_session.get(), &RecordSession::destinationRequested, this, &MainWindow::showDestination);
    connect(m_session.get(), &RecordSession::refused, m_next, &NextBar::showRefusal);
    connect(m_session.get(), &RecordSession::refused, m_confirmation, &Confirmation::refused);
    connect(m_session.get(), &RecordSession::notStored, m_confirmation, &Confirmation::refused); // the bar says why
    connect(m_session.get(), &RecordSession::stored, this, [this](qint64 sequence, const QString& line) {
        m_next->clearRefusal();
        // Once the page went on: what comes next is said with it, in one sentence.
        QMetaObject::invokeMethod(
            this, [this, sequence, line] { announce(sequence, line); }, Qt::QueuedConnection);
        m_confirmation->stored(spokenWords(m_session->ledger().at(sequence), m_session->units()));
    });
    connect(m_session.get(), &RecordSession::moved, this, &MainWindow::nameRecord);
    nameRecord();
    m_staleBefore = staleChecks(m_session->assessment());
    m_person->show();
    refreshPeople();
    fitToWidth();
    // All that was built just now shows the record as it is; the panel is refreshed when it is shown.
    m_stack->setCurrentWidget(panel(m_session->assessment().next.destination.station));
    showDestination(m_session->assessment().next.destination);
    emit recordChanged();
}

void MainWindow::nameRecord() {
    setWindowTitle(literalTitle(QFileInfo(m_session->path()).completeBaseName()) + QStringLiteral(" — Caprail"));
    setWindowFilePath(m_session->path());
    m_doorbell->hangAt(m_session->path());
    if (!isTour()) {
        noteRecentFile(m_session->path(), whoseEngine(*m_session));
        constexpr int meanwhile = 1500; // milliseconds: the desktop's list may be long, and the record is to be seen first
        QTimer::singleShot(meanwhile, this, [path = m_session->path()] {
            QThreadPool::globalInstance()->start([path] { noteInSharedRecent(path); });
        });
    }
}

bool MainWindow::openFile(const QString& path) {
    return raiseWindowOf(path) || showRead(path, RecordSession::read(path));
}

bool MainWindow::showRead(const QString& path, Result<ReadRecord> record) {
    if (!record) {
        show();
        offerSalvage(*this, path, QString::fromStdString(record.error().sentence));
        return false;
    }
    MainWindow* window = m_session ? new MainWindow : this;
    window->take(std::make_unique<RecordSession>(std::move(*record)));
    window->show();
    return true;
}

void MainWindow::openShop() {
    showShop();
}

void MainWindow::openSample(const QString& path) {
    // A sample is opened as a copy among the user's own files, so that the sample stays as it is.
    const QString folder = QDir::homePath();
    for (int n = 1; n < 1000; ++n) {
        const QString copy = QDir(folder).filePath(QFileInfo(path).completeBaseName() +
                                                   (n == 1 ? "" : QStringLiteral("-%1").arg(n)) + ".caprail");
        if (!QFileInfo::exists(copy)) {
            if (const auto made = copySample(path, copy); !made) {
                complain(QString::fromStdString(made.error().sentence));
                return;
            }
            openFile(copy);
            return;
        }
    }
}

StationPanel* MainWindow::panel(Station station) {
    if (!m_session) {
        return nullptr;
    }
    // Not all at the start: a record is on the screen sooner, and most sittings are spent at one station or two.
    StationPanel*& panel = m_panels[station];
    if (panel == nullptr) {
        panel = makeStation(station, *m_session, m_stack);
        m_stack->addWidget(panel);
        connect(panel, &StationPanel::subjectChanged, this, &MainWindow::followPlace);
    }
    return panel;
}

Station MainWindow::currentStation() const {
    for (const auto& [station, panel] : m_panels) {
        if (m_stack != nullptr && m_stack->currentWidget() == panel) {
            return station;
        }
    }
    return Station::engine;
}

void MainWindow::showDestination(const Destination& destination) {
    m_list->show(destination.station);
    m_stack->setCurrentWidget(panel(destination.station));
    panel(destination.station)->select(QString::fromStdString(destination.subject));
    followPlace();
}

void MainWindow::followPlace() {
    const QString place = panel(currentStation())->subject();
    if (place != m_place->place()) {
        m_next->clearRefusal(); // it was about another place
    }
    m_place->setPlace(place);
}

/// The one live node: who does not see the screen hears what was stored, what it made stale and what comes next.
void MainWindow::announce(qint64 sequence, const QString& line) {
    if (!m_session) {
        return;
    }
    QStringList sequel;
    const int stale = staleChecks(m_session->assessment());
    if (const int more = stale - std::exchange(m_staleBefore, stale); more > 0) {
        sequel << tr("%n checks are stale by it.", "", more);
    }
    const EntryField* field = panel(currentStation())->entryField();
    if (field != nullptr && !field->title().isEmpty()) {
        sequel << filled(tr("Next: %1."), field->title());
    }
    m_lastStored->tell(filled(tr("On disk: entry %1. %2"), sequence, line), sequel.join(QLatin1Char(' ')));
    setTip(m_lastStored, line);
}

void MainWindow::openFindingHere() {
    if (m_session) {
        m_place->setVisible(true); // in a small window it is out of sight until it is asked for
        m_place->focusFinding();
    }
}

void MainWindow::addPhotoHere() {
    if (m_session) {
        m_place->addPhotoFile();
    }
}

void MainWindow::pastePhotoHere() {
    if (m_session) {
        m_place->pastePhoto();
    }
}

void MainWindow::refreshAll() {
    if (!m_session) {
        return;
    }
    m_next->refresh();
    m_list->refresh();
    refreshPeople();
    // Only what is in sight is drawn anew; a hidden panel is refreshed when it is shown.
    panel(currentStation())->refresh();
    m_place->refresh();
    followPlace();
}

void MainWindow::refreshPeople() {
    QStringList names;
    for (const auto& [name, person] : m_session->facts().people) {
        names << QString::fromStdString(name);
    }
    m_person->clear();
    m_person->addItems(names);
    m_person->setCurrentText(m_session->person());
    m_person->setEnabled(!m_session->isReadOnly());
}

void MainWindow::complain(const QString& sentence) {
    warn(this, tr("Caprail"), sentence);
}

void MainWindow::newRecord() {
    NewRecordDialog dialog(m_preferences.shopName, this);
    if (dialog.exec() == QDialog::Accepted) {
        MainWindow* window = m_session ? new MainWindow : this;
        window->take(dialog.takeSession());
        window->show();
    }
}

void MainWindow::chooseFile() {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Open a record"), QSettings().value("records-folder").toString(),
                                     tr("Build records (*.caprail);;All files (*)"));
    if (!path.isEmpty()) {
        openFile(path);
    }
}

void MainWindow::strikeLast() {
    if (!m_session) {
        return;
    }
    const Ledger& ledger = m_session->ledger();
    for (std::int64_t n = ledger.size(); n >= 1; --n) {
        if (!ledger.isStruck(n) && !ledger.at(n).body.is<Struck>()) {
            askAndStrike(*this, n);
            return;
        }
    }
}

void MainWindow::find() {
    if (m_session) {
        showDestination({Station::history, "find"});
    }
}

void MainWindow::editPreferences() {
    PreferencesDialog dialog(Preferences::load(), this); // another window may have changed them
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    m_preferences = dialog.preferences();
    m_preferences.save();
    m_confirmation->setChoice(m_preferences.confirmation);
    applyLook(m_preferences.look);
    applyTextSize(m_preferences.textSize);
    if (!m_preferences.logoPath.isEmpty()) {
        if (const auto logo = sheet::readLogo(m_preferences.logoPath); !logo) {
            complain(QString::fromStdString(logo.error().sentence));
        }
    }
    if (m_session) {
        m_session->setUnits(m_preferences.units);
    }
}

void MainWindow::switchUnits() {
    const bool toMetric = m_preferences.units.length == LengthUnit::inch;
    m_preferences.units.length = toMetric ? LengthUnit::millimetre : LengthUnit::inch;
    m_preferences.units.torque = toMetric ? TorqueUnit::newtonMetre : TorqueUnit::poundFoot;
    Preferences kept = Preferences::load(); // nothing else of what another window changed is undone
    kept.units = m_preferences.units;
    kept.save();
    if (m_session) {
        m_session->setUnits(m_preferences.units);
    }
}

void MainWindow::toggleFullScreen() {
    setWindowState(windowState() ^ Qt::WindowFullScreen);
}

void MainWindow::toggleBench() {
    if (!m_session) {
        return;
    }
    if (m_bench->isActive()) {
        m_bench->leave();
        return;
    }
    if (!m_bench->enter(panel(currentStation()))) {
        m_next->showHint(
            tr("The bench view shows one value at a time: choose a place where one is typed, such as a gap, "
               "a journal or a fastener."));
        return;
    }
    m_statesBefore = windowState();
    m_bench->setGeometry(rect());
    m_bench->show();
    m_bench->raise();
    centralWidget()->hide(); // what is covered is out of reach, for screen readers too
    setWindowState(windowState() | Qt::WindowFullScreen);
    m_bench->field()->setFocus();
}

void MainWindow::leaveBench() {
    centralWidget()->show();
    m_bench->hide();
    setWindowState(m_statesBefore);
    if (EntryField* entry = panel(currentStation())->entryField()) {
        entry->setFocus();
    }
}

void MainWindow::resizeEvent(QResizeEvent* event) {
    QMainWindow::resizeEvent(event);
    if (m_bench != nullptr) {
        m_bench->setGeometry(rect());
    }
    fitToWidth();
}

/// A small window keeps its room for the work: the list of stations shrinks to signs, and the panel of the place comes
/// when it is asked for.
void MainWindow::fitToWidth() {
    const int roomy = static_cast<int>(1100 * textScale()); // pixels
    if (m_session && m_list != nullptr && m_list->isCompact() != (width() < roomy)) {
        m_list->setCompact(width() < roomy);
        m_place->setVisible(!m_list->isCompact());
    }
}

/// How many times as large as usual the text is, 1 or more: what is made for a width is made for that of the text.
double MainWindow::textScale() const {
    constexpr double usualPercent = 100, largeOfDesktops = 15; // pixels; up to there a desktop's own font is usual
    return std::max({1.0, m_preferences.textSize / usualPercent, QFontInfo(font()).pixelSize() / largeOfDesktops});
}

void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() != QEvent::PaletteChange) {
        return;
    }
    // Inks that were worked out in the look before are worked out anew, once every widget has the new palette.
    if (const QColor paper = screenLook().paper; std::exchange(m_paper, paper) != paper) {
        QMetaObject::invokeMethod(this, &MainWindow::refreshAll, Qt::QueuedConnection);
    }
}

void MainWindow::showEvent(QShowEvent* event) {
    // Not before: a window that is opened on a record never needs the start page.
    if (!m_session && centralWidget() == nullptr) {
        showStart();
    }
    QMainWindow::showEvent(event);
}

bool MainWindow::mayLeaveTypedValue() {
    EntryField* field = m_session ? unstoredField(*this) : nullptr;
    if (field == nullptr) {
        return true;
    }
    const auto answer = ask(this, tr("A value is not stored"),
                            filled(tr("“%1” is typed for: %2. It is not stored."), field->text(), field->title()),
                            QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, QMessageBox::Cancel);
    if (answer == QMessageBox::Save) {
        field->submit();
    } else if (answer == QMessageBox::Discard) {
        field->clear(); // so that it is not asked for again
    }
    return answer == QMessageBox::Discard || (answer == QMessageBox::Save && field->problem().isEmpty());
}

bool MainWindow::mayClose() {
    if (!mayLeaveTypedValue()) {
        return false;
    }
    if (m_session && !m_session->unstored().empty()) {
        const auto answer = ask(this, tr("Entries wait to be stored"),
                                tr("%n entries could not be stored on disk and would be lost. Close all the same?", "",
                                   static_cast<int>(m_session->unstored().size())),
                                QMessageBox::Close | QMessageBox::Cancel, QMessageBox::Cancel);
        return answer != QMessageBox::Cancel;
    }
    return true;
}

bool MainWindow::isAllStored() const {
    return !m_session || (unstoredField(*this) == nullptr && m_session->unstored().empty());
}

void MainWindow::closeUnasked() {
    if (m_session && !m_session->unstored().empty()) {
        (void)m_session->storeUnstored(); // what the disk still does not take is lost with the program
    }
    m_isUnasked = true;
    close();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!m_isUnasked && !mayClose()) {
        event->ignore();
        return;
    }
    keepSetting(QStringLiteral("window/geometry"), saveGeometry());
    QMainWindow::closeEvent(event);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls() || (m_session && holdsPhotos(event->mimeData()))) {
        event->acceptProposedAction();
    }
}

/// The place on a drawing under a point of the window; empty: none.
QString MainWindow::placeUnder(QPoint point) const {
    const QWidget* under = childAt(point);
    const auto* plan = qobject_cast<const PlanView*>(under);
    return plan == nullptr ? QString() : plan->placeAt(plan->mapFrom(this, point));
}

void MainWindow::dropEvent(QDropEvent* event) {
    const GivenFiles files = sortFiles(*event->mimeData());
    event->acceptProposedAction();
    const bool isForThis = files.records.isEmpty() && m_session;
    for (const QString& record : files.records) {
        openFile(record);
    }
    if (isForThis && !m_session->isReadOnly()) {
        const QString place = placeUnder(event->position().toPoint());
        m_place->takePhotos(*event->mimeData(), place.isEmpty() ? m_place->place() : place);
    } else if (isForThis) {
        complain(m_session->readOnlyReason());
    } else if (!files.others.isEmpty()) {
        complain(neitherRecordNorPhoto(files.others.front()));
    } else if (!files.photos.isEmpty()) {
        complain(tr("A photo is kept in a record: open the record first, then drop the photo on its place."));
    }
}

} // namespace caprail
