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
#include <store/care/salvage.h>
#include <store/file/path_text.h>
#include <text/ask.h>
#include <text/plain_text.h>
#include <window/copy_actions.h>
#include <window/main_window.h>
#include <window/menu_entry.h>
#include <window/shop_menu.h>
#include <window/sign_actions.h>

namespace caprail {

namespace {

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
    addEntry(window, file, Needs::nothing, MainWindow::tr("&New record…"), QKeySequence::New, &MainWindow::newRecord);
    addEntry(window, file, Needs::nothing, MainWindow::tr("&Open…"), QKeySequence::Open, &MainWindow::chooseFile);
    QMenu* recent = file->addMenu(MainWindow::tr("Open &recent"));
    QObject::connect(file, &QMenu::aboutToShow, recent, [&window, recent] { fillRecent(window, recent); });
    addEntry(window, file, Needs::nothing, MainWindow::tr("S&hop: the records of a folder"),
             QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_O), &MainWindow::openShop);
    file->addSeparator();
    addEntry(window, file, Needs::record, MainWindow::tr("Save a &copy…"), QKeySequence::SaveAs, &MainWindow::saveCopy);
    addCopyActions(window, file);
    addEntry(window, file, Needs::record, MainWindow::tr("Store what w&aits"), {}, &MainWindow::storeUnstored);
    file->addSeparator();
    addEntry(window, file, Needs::record, MainWindow::tr("Build &sheet as PDF…"),
             QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P), &MainWindow::writeSheetFile);
    addEntry(window, file, Needs::record, MainWindow::tr("Sheet pages as p&ictures…"), {},
             &MainWindow::writeSheetPictures);
    addEntry(window, file, Needs::record, MainWindow::tr("Print pre&view…"), {}, &MainWindow::previewSheet);
    addEntry(window, file, Needs::record, MainWindow::tr("&Print…"), QKeySequence::Print, &MainWindow::printSheet);
    addEntry(window, file, Needs::record, MainWindow::tr("&Layout card as PDF…"), {}, &MainWindow::writeCardFile);
    addEntry(window, file, Needs::record, MainWindow::tr("Export &tables (CSV)…"), {}, &MainWindow::exportTables);
    addEntry(window, file, Needs::record, MainWindow::tr("Export ledger as te&xt…"), {}, &MainWindow::exportLedgerFile);
    addSigning(window, file);
    addHandOver(window, file);
    file->addSeparator();
    addEntry(window, file, Needs::nothing, MainWindow::tr("Close &window"), QKeySequence::Close, &QWidget::close);
    addEntry(window, file, Needs::nothing, MainWindow::tr("&Quit"), Qt::CTRL | Qt::Key_Q, [](MainWindow&) {
        QApplication::closeAllWindows();
    })->setMenuRole(QAction::QuitRole);
}

void makeEditMenu(MainWindow& window) {
    QMenu* edit = window.menuBar()->addMenu(MainWindow::tr("&Edit"));
    addEntry(window, edit, Needs::record, MainWindow::tr("&Strike the last entry…"), QKeySequence::Undo,
             &MainWindow::strikeLast);
    addEntry(window, edit, Needs::record, MainWindow::tr("Open a fin&ding here"), QKeySequence(Qt::CTRL | Qt::Key_D),
             &MainWindow::openFindingHere);
    addEntry(window, edit, Needs::record, MainWindow::tr("Add a p&hoto here…"),
             QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_A), &MainWindow::addPhotoHere);
    addEntry(window, edit, Needs::record, MainWindow::tr("P&aste a photo here"),
             QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_V), &MainWindow::pastePhotoHere);
    edit->addSeparator();
    addEntry(window, edit, Needs::record, MainWindow::tr("&Find in the record"), QKeySequence::Find, &MainWindow::find);
    edit->addSeparator();
    addEntry(window, edit, Needs::nothing, MainWindow::tr("&Preferences…"), QKeySequence::Preferences,
             &MainWindow::editPreferences);
}

void makeStationMenu(MainWindow& window) {
    QMenu* menu = window.menuBar()->addMenu(MainWindow::tr("&Station"));
    int number = 0;
    for (const auto& station : allWords<Station>()) {
        addEntry(window, menu, Needs::record, QString::fromStdString(shown(station.value)),
                 QKeySequence(QStringLiteral("Ctrl+%1").arg(++number)), [value = station.value](MainWindow& w) {
                     w.showDestination({value, {}});
                 });
    }
    menu->addSeparator();
    addEntry(window, menu, Needs::record, MainWindow::tr("Go to the &next thing to do"), Qt::CTRL | Qt::Key_Return,
             [](MainWindow& w) { w.showDestination(Destination(w.session()->assessment().next.destination)); });
}

void makeViewMenu(MainWindow& window) {
    QMenu* view = window.menuBar()->addMenu(MainWindow::tr("&View"));
    addEntry(window, view, Needs::nothing, MainWindow::tr("&Inch / millimetre"), QKeySequence(Qt::CTRL | Qt::Key_U),
             &MainWindow::switchUnits);
    addEntry(window, view, Needs::record, MainWindow::tr("&Bench view"), QKeySequence(Qt::Key_F9),
             &MainWindow::toggleBench);
    addEntry(window, view, Needs::nothing, MainWindow::tr("&Full screen"), QKeySequence::FullScreen,
             &MainWindow::toggleFullScreen);
}

void makeInstrumentsMenu(MainWindow& window) {
    QMenu* instruments = window.menuBar()->addMenu(MainWindow::tr("Instru&ments"));
    addEntry(window, instruments, Needs::nothing, MainWindow::tr("&Gauges on this computer…"), {},
             &MainWindow::setUpGauges);
}

void makeHelpMenu(MainWindow& window) {
    QMenu* help = window.menuBar()->addMenu(MainWindow::tr("&Help"));
    addEntry(window, help, Needs::nothing, MainWindow::tr("&Manual"), QKeySequence::HelpContents,
             &MainWindow::showManual);
    addEntry(window, help, Needs::record, MainWindow::tr("This &station"), {}, &MainWindow::showHelp);
    addEntry(window, help, Needs::nothing, MainWindow::tr("&Tour"), QKeySequence(Qt::SHIFT | Qt::Key_F1),
             &MainWindow::startTour);
    addEntry(window, help, Needs::nothing, MainWindow::tr("&Keys"), {}, &MainWindow::showKeys);
    addEntry(window, help, Needs::nothing, MainWindow::tr("Kinds of &entries"), {}, &MainWindow::showEntryKinds);
    addEntry(window, help, Needs::nothing, MainWindow::tr("&Cautions"), {}, &MainWindow::showCautions);
    addEntry(window, help, Needs::nothing, MainWindow::tr("&About Caprail"), {}, &MainWindow::about);
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
