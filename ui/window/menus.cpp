// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/menus.h>

#include <QAction>
#include <QApplication>
#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenuBar>
#include <stations/common/entries_table.h>
#include <store/care/check.h>
#include <store/file/path_text.h>
#include <store/care/salvage.h>
#include <text/ask.h>
#include <text/plain_text.h>
#include <window/copy_actions.h>
#include <window/main_window.h>
#include <window/shop_menu.h>
#include <window/sign_actions.h>

namespace caprail {

namespace {

using Slot = void (MainWindow::*)();

/// Adds an action; `needsRecord` ones are greyed while no record is open.
QAction* add(MainWindow& window, QMenu* menu, const QString& text, const QKeySequence& shortcut, Slot slot,
             bool needsRecord) {
    QAction* action = menu->addAction(text);
    action->setShortcut(shortcut);
    QObject::connect(action, &QAction::triggered, &window, slot);
    if (needsRecord) {
        action->setEnabled(false);
        QObject::connect(&window, &MainWindow::recordChanged, action, [action] { action->setEnabled(true); });
    }
    return action;
}

void fillRecent(MainWindow& window, QMenu* menu) {
    menu->clear();
    for (const QString& path : recentFiles()) {
        QAction* action = menu->addAction(literal(QFileInfo(path).completeBaseName()), &window,
                                          [&window, path] { window.openFile(path); });
        setTip(action, path);
    }
    menu->setEnabled(!menu->isEmpty());
}

void makeFileMenu(MainWindow& window) {
    QMenu* file = window.menuBar()->addMenu(MainWindow::tr("&File"));
    add(window, file, MainWindow::tr("&New record…"), QKeySequence::New, &MainWindow::newRecord, false);
    add(window, file, MainWindow::tr("&Open…"), QKeySequence::Open, &MainWindow::chooseFile, false);
    QMenu* recent = file->addMenu(MainWindow::tr("Open &recent"));
    QObject::connect(file, &QMenu::aboutToShow, recent, [&window, recent] { fillRecent(window, recent); });
    add(window, file, MainWindow::tr("S&hop: the records of a folder"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_O),
        &MainWindow::openShop, false);
    file->addSeparator();
    add(window, file, MainWindow::tr("Save a &copy…"), QKeySequence::SaveAs, &MainWindow::saveCopy, true);
    addCopyActions(window, file);
    add(window, file, MainWindow::tr("Store what &waits"), {}, &MainWindow::storeUnstored, true);
    file->addSeparator();
    add(window, file, MainWindow::tr("Build &sheet as PDF…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P),
        &MainWindow::writeSheetFile, true);
    add(window, file, MainWindow::tr("Sheet pages as p&ictures…"), {}, &MainWindow::writeSheetPictures, true);
    add(window, file, MainWindow::tr("Print pre&view…"), {}, &MainWindow::previewSheet, true);
    add(window, file, MainWindow::tr("&Print…"), QKeySequence::Print, &MainWindow::printSheet, true);
    add(window, file, MainWindow::tr("&Layout card as PDF…"), {}, &MainWindow::writeCardFile, true);
    add(window, file, MainWindow::tr("Export &tables (CSV)…"), {}, &MainWindow::exportTables, true);
    add(window, file, MainWindow::tr("Export ledger as te&xt…"), {}, &MainWindow::exportLedgerFile, true);
    addSigning(window, file);
    addHandOver(window, file);
    file->addSeparator();
    QAction* close = file->addAction(MainWindow::tr("Close &window"));
    close->setShortcut(QKeySequence::Close);
    QObject::connect(close, &QAction::triggered, &window, &QWidget::close);
    QAction* quit = file->addAction(MainWindow::tr("&Quit"));
    quit->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Q));
    quit->setMenuRole(QAction::QuitRole);
    QObject::connect(quit, &QAction::triggered, &window, [] { QApplication::closeAllWindows(); });
}

void makeEditMenu(MainWindow& window) {
    QMenu* edit = window.menuBar()->addMenu(MainWindow::tr("&Edit"));
    add(window, edit, MainWindow::tr("&Strike the last entry…"), QKeySequence::Undo, &MainWindow::strikeLast, true);
    add(window, edit, MainWindow::tr("Open a fin&ding here"), QKeySequence(Qt::CTRL | Qt::Key_D),
        &MainWindow::openFindingHere, true);
    add(window, edit, MainWindow::tr("Add a p&hoto here…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_A),
        &MainWindow::addPhotoHere, true);
    add(window, edit, MainWindow::tr("P&aste a photo here"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_V),
        &MainWindow::pastePhotoHere, true);
    edit->addSeparator();
    add(window, edit, MainWindow::tr("&Find in the record"), QKeySequence::Find, &MainWindow::find, true);
    edit->addSeparator();
    add(window, edit, MainWindow::tr("&Preferences…"), QKeySequence::Preferences, &MainWindow::editPreferences, false);
}

void makeStationMenu(MainWindow& window) {
    QMenu* menu = window.menuBar()->addMenu(MainWindow::tr("&Station"));
    int number = 0;
    for (const auto& station : allWords<Station>()) {
        QAction* action = menu->addAction(QString::fromStdString(shown(station.value)));
        action->setShortcut(QKeySequence(QStringLiteral("Ctrl+%1").arg(++number)));
        action->setEnabled(false);
        QObject::connect(&window, &MainWindow::recordChanged, action, [action] { action->setEnabled(true); });
        QObject::connect(action, &QAction::triggered, &window, [&window, value = station.value] {
            window.showDestination({value, {}});
        });
    }
    menu->addSeparator();
    QAction* next = menu->addAction(MainWindow::tr("Go to the &next thing to do"));
    next->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Return));
    next->setEnabled(false);
    QObject::connect(&window, &MainWindow::recordChanged, next, [next] { next->setEnabled(true); });
    QObject::connect(next, &QAction::triggered, &window, [&window] {
        window.showDestination(Destination(window.session()->assessment().next.destination));
    });
}

void makeViewMenu(MainWindow& window) {
    QMenu* view = window.menuBar()->addMenu(MainWindow::tr("&View"));
    add(window, view, MainWindow::tr("&Inch / millimetre"), QKeySequence(Qt::CTRL | Qt::Key_U),
        &MainWindow::switchUnits, false);
    add(window, view, MainWindow::tr("&Bench view"), QKeySequence(Qt::Key_F9), &MainWindow::toggleBench, true);
    add(window, view, MainWindow::tr("&Full screen"), QKeySequence::FullScreen, &MainWindow::toggleFullScreen, false);
}

void makeInstrumentsMenu(MainWindow& window) {
    QMenu* instruments = window.menuBar()->addMenu(MainWindow::tr("Instru&ments"));
    add(window, instruments, MainWindow::tr("&Gauges on this computer…"), {}, &MainWindow::setUpGauges, false);
}

void makeHelpMenu(MainWindow& window) {
    QMenu* help = window.menuBar()->addMenu(MainWindow::tr("&Help"));
    add(window, help, MainWindow::tr("This &station"), QKeySequence::HelpContents, &MainWindow::showHelp, true);
    add(window, help, MainWindow::tr("&Tour"), QKeySequence(Qt::SHIFT | Qt::Key_F1), &MainWindow::startTour, false);
    add(window, help, MainWindow::tr("&Keys"), {}, &MainWindow::showKeys, false);
    add(window, help, MainWindow::tr("&Kinds of entries"), {}, &MainWindow::showEntryKinds, false);
    add(window, help, MainWindow::tr("&Cautions"), {}, &MainWindow::showCautions, false);
    add(window, help, MainWindow::tr("&About Caprail"), {}, &MainWindow::about, false);
}

} // namespace

void makeMenus(MainWindow& window) {
    makeFileMenu(window);
    makeEditMenu(window);
    makeStationMenu(window);
    makeViewMenu(window);
    makeInstrumentsMenu(window);
    makeShopMenu(window);
    makeHelpMenu(window);
}

void askAndStrike(MainWindow& window, qint64 sequence) {
    EntriesTable::askAndStrike(*window.session(), {sequence}, &window);
}

void offerSalvage(MainWindow& window, const QString& path, const QString& sentence) {
    const CheckReport report = checkFile(pathBytes(path));
    if (report.verdict != CheckVerdict::damagedOrAltered) {
        warn(&window, MainWindow::tr("This file was not opened"), sentence);
        return;
    }
    const auto answer =
        ask(&window, MainWindow::tr("This record is damaged"),
            sentence +
                MainWindow::tr(
                    "\n\nWhat can still be read can be salvaged into a new file; this one stays as it is. Salvage it?"),
            QMessageBox::Yes | QMessageBox::No);
    if (answer != QMessageBox::Yes) {
        return;
    }
    const QString target = QFileDialog::getSaveFileName(&window, MainWindow::tr("Salvage into"),
                                                        QFileInfo(path).path() + "/" +
                                                            QFileInfo(path).completeBaseName() + "-salvaged.caprail",
                                                        MainWindow::tr("Build records (*.caprail)"));
    if (target.isEmpty()) {
        return;
    }
    const auto salvaged = salvage(pathBytes(path), pathBytes(target), {QDateTime::currentMSecsSinceEpoch()});
    if (!salvaged) {
        warn(&window, MainWindow::tr("Nothing was salvaged"), QString::fromStdString(salvaged.error().sentence));
        return;
    }
    QStringList text{MainWindow::tr("%n entries were kept.", "", static_cast<int>(salvaged->kept))};
    for (const auto& line : salvaged->sentences) {
        text << QString::fromStdString(line);
    }
    inform(&window, MainWindow::tr("Salvaged"), text.mid(0, 12).join(QStringLiteral("\n\n")));
    window.openFile(target);
}

} // namespace caprail
