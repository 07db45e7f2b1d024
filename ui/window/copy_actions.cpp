// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/copy_actions.h>

#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QPushButton>
#include <QStatusBar>
#include <session/filled.h>
#include <store/care/copies.h>
#include <store/file/path_text.h>
#include <text/ask.h>
#include <window/main_window.h>
#include <window/menu_entry.h>

namespace caprail {

namespace {

/// What would be another after the restore, in a sentence.
QString difference(const LedgerComparison& compared) {
    if (compared.isSame()) {
        return MainWindow::tr("Both files hold the same entries.");
    }
    if (compared.common == 0) {
        return MainWindow::tr("It is the record of another build: it has no entry in common with this one.");
    }
    if (compared.haveParted()) {
        return MainWindow::tr("Both begin alike, up to entry %1, and then go on differently.").arg(compared.common);
    }
    return compared.onlyInFirst != 0
               ? MainWindow::tr("What this record has after entry %1 is not in the copy.").arg(compared.common)
               : MainWindow::tr("It goes on beyond the last entry of this record.");
}

QString shortSeal(const Ledger& ledger) {
    return QString::fromStdString(shortForm(ledger.seal()));
}

} // namespace

void addCopyActions(MainWindow& window, QMenu* menu) {
    addEntry(window, menu, Needs::record, MainWindow::tr("Save a &dated copy beside it"), {}, &saveDatedCopy);
    addEntry(window, menu, Needs::record, MainWindow::tr("Restore &from a copy…"), {}, &chooseCopy);
}

void saveDatedCopy(MainWindow& window) {
    const UtcTime now{QDateTime::currentMSecsSinceEpoch()};
    const std::string name = datedBackupName(window.session()->file().path(), dateOf(now));
    if (const auto saved = window.session()->file().saveCopy(name); !saved) {
        warn(&window, MainWindow::tr("Not saved"), QString::fromStdString(saved.error().sentence));
        return;
    }
    window.statusBar()->showMessage(MainWindow::tr("Saved as %1").arg(QString::fromStdString(name)), 10'000);
}

void chooseCopy(MainWindow& window) {
    const QString copy = QFileDialog::getOpenFileName(
        &window, MainWindow::tr("Restore from a copy"), QFileInfo(window.session()->path()).path(),
        MainWindow::tr("Copies of records (*.caprail-backup *.caprail);;All files (*)"));
    if (!copy.isEmpty()) {
        restoreFromCopy(window, copy);
    }
}

void restoreFromCopy(MainWindow& window, const QString& copy) {
    RecordSession& session = *window.session();
    const auto opened = RecordFile::open(pathBytes(copy), OpenMode::readOnly);
    if (!opened) {
        warn(&window, MainWindow::tr("Not restored"), QString::fromStdString(opened.error().sentence));
        return;
    }
    PlainBox question(
        QMessageBox::Question, MainWindow::tr("Restore this copy?"),
        filled(MainWindow::tr("The copy ends with entry %1, seal %2; this record with entry %3, seal %4."),
               opened->ledger().size(), shortSeal(opened->ledger()), session.ledger().size(),
               shortSeal(session.ledger())) +
            QStringLiteral("\n\n") + difference(compare(session.ledger(), opened->ledger())) + QStringLiteral("\n\n") +
            MainWindow::tr("This record as it is now is kept under a dated name beside it."),
        QMessageBox::Cancel, &window);
    const auto* restore = question.addButton(MainWindow::tr("&Restore"), QMessageBox::AcceptRole);
    question.setDefaultButton(QMessageBox::Cancel);
    question.exec();
    if (question.clickedButton() != restore) {
        return;
    }
    const auto kept = session.restoreFrom(copy);
    if (!kept) {
        warn(&window, MainWindow::tr("Not restored"), QString::fromStdString(kept.error().sentence));
        return;
    }
    window.statusBar()->showMessage(MainWindow::tr("Restored. The record as it was is kept as %1").arg(*kept), 15'000);
}

} // namespace caprail
