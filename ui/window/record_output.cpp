// SPDX-License-Identifier: GPL-3.0-or-later
/// What the window writes out of a record: copies, sheets, tables; and what it shows about itself.
#include <QApplication>
#include <QDateTime>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFontDatabase>
#include <QPlainTextEdit>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QStatusBar>
#include <QVBoxLayout>
#include <ledger/entry_schema.h>
#include <session/cautions.h>
#include <session/filled.h>
#include <session/girdle_runner.h>
#include <sheet/logo.h>
#include <sheet/sheet.h>
#include <shop/table_export.h>
#include <stations/common/station.h>
#include <store/file/path_text.h>
#include <store/text/text_form.h>
#include <text/ask.h>
#include <text/label.h>
#include <window/about.h>
#include <window/key_list.h>
#include <window/main_window.h>
#include <window/record_output.h>

namespace caprail {

/// A logo that cannot be read is left out; that was said when it was chosen.
SheetOptions sheetOptionsOf(const Preferences& preferences) {
    SheetOptions options;
    options.pageSize = preferences.paper;
    options.units = preferences.units;
    options.shopName = preferences.shopName;
    if (const auto logo = preferences.logoPath.isEmpty() ? QImage() : sheet::readLogo(preferences.logoPath)) {
        options.logo = *logo;
    }
    options.now = UtcTime{QDateTime::currentMSecsSinceEpoch()};
    options.appVersion = QApplication::applicationVersion();
    return options;
}

SheetSource sheetSourceOf(RecordSession& session) {
    return {session.ledger(), session.facts(), session.assessment(),
            [&session](const std::string& sha256) {
                const auto bytes = session.file().attachmentBytes(sha256);
                return bytes ? QByteArray::fromStdString(*bytes) : QByteArray();
            },
            [&session] { return GirdleRunner::of(session).finished(); }};
}

namespace {

QString beside(const RecordSession& session, const QString& ending) {
    const QFileInfo file(session.path());
    return file.path() + QLatin1Char('/') + file.completeBaseName() + ending;
}

} // namespace

void MainWindow::saveCopy() {
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save a copy"), beside(*m_session, QStringLiteral("-copy.caprail")), tr("Build records (*.caprail)"));
    if (path.isEmpty()) {
        return;
    }
    if (const auto saved = m_session->file().saveCopy(pathBytes(path)); !saved) {
        complain(QString::fromStdString(saved.error().sentence));
    }
}

void MainWindow::storeUnstored() {
    if (!m_session->storeUnstored()) {
        complain(tr("%n entries still could not be stored. Save a copy elsewhere, or free the disk and try again.", "",
                    static_cast<int>(m_session->unstored().size())));
    }
}

void MainWindow::writeSheetFile() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Build sheet"),
                                                      beside(*m_session, QStringLiteral(".pdf")), tr("PDF (*.pdf)"));
    if (path.isEmpty()) {
        return;
    }
    SheetOptions options = sheetOptionsOf(m_preferences);
    options.mayReplace = true; // the dialog asked
    if (const auto written = writeSheet(sheetSourceOf(*m_session), path, options); !written) {
        complain(QString::fromStdString(written.error().sentence));
        return;
    }
    statusBar()->showMessage(tr("Written: %1").arg(QFileInfo(path).fileName()), 10'000);
}

void MainWindow::writeSheetPictures() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Sheet pages as pictures"),
                                                      beside(*m_session, QStringLiteral(".png")), tr("PNG (*.png)"));
    if (path.isEmpty()) {
        return;
    }
    SheetOptions options = sheetOptionsOf(m_preferences);
    if (const QStringList existing = existingPages(path); !existing.isEmpty()) {
        // The dialog asked for another name than those of the pages.
        const auto answer = ask(this, tr("Sheet pages as pictures"),
                                filled(tr("%1 exists already. Replace the pages that were made before?"),
                                       existing.join(QStringLiteral(", "))),
                                QMessageBox::Yes | QMessageBox::No);
        if (answer != QMessageBox::Yes) {
            return;
        }
        options.mayReplace = true;
    }
    const auto written = writeSheetPages(sheetSourceOf(*m_session), path, options);
    if (!written) {
        complain(QString::fromStdString(written.error().sentence));
        return;
    }
    statusBar()->showMessage(
        tr("%n pictures, from %1", "", static_cast<int>(written->size())).arg(QFileInfo(written->first()).fileName()),
        10'000);
}

void MainWindow::writeCardFile() {
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Layout card"), beside(*m_session, QStringLiteral("-card.pdf")), tr("PDF (*.pdf)"));
    if (path.isEmpty()) {
        return;
    }
    SheetOptions options = sheetOptionsOf(m_preferences);
    options.mayReplace = true; // the dialog asked
    if (const auto written = writeLayoutCard(sheetSourceOf(*m_session), path, options); !written) {
        complain(QString::fromStdString(written.error().sentence));
    }
}

void MainWindow::printSheet() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(QPageSize(m_preferences.paper));
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() == QDialog::Accepted) {
        paintSheet(sheetSourceOf(*m_session), printer, sheetOptionsOf(m_preferences));
    }
}

void MainWindow::previewSheet() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(QPageSize(m_preferences.paper));
    QPrintPreviewDialog dialog(&printer, this);
    connect(&dialog, &QPrintPreviewDialog::paintRequested, this, [this](QPrinter* target) {
        paintSheet(sheetSourceOf(*m_session), *target, sheetOptionsOf(m_preferences));
    });
    dialog.resize(1000, 760);
    dialog.exec();
}

void MainWindow::exportTables() {
    const QString folder =
        QFileDialog::getSaveFileName(this, tr("Folder for the tables (a new one is made)"),
                                     beside(*m_session, tr("-tables")), {}, nullptr, QFileDialog::DontConfirmOverwrite);
    if (folder.isEmpty()) {
        return;
    }
    if (const auto written = caprail::exportTables(m_session->ledger(), m_session->facts(), m_session->assessment(),
                                                   pathBytes(folder)); !written) {
        complain(QString::fromStdString(written.error().sentence));
    }
}

void MainWindow::exportLedgerFile() {
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Ledger as text"), beside(*m_session, QStringLiteral(".jsonl")), tr("JSON lines (*.jsonl)"));
    if (path.isEmpty()) {
        return;
    }
    if (const auto written = exportLedger(m_session->file(), pathBytes(path)); !written) {
        complain(QString::fromStdString(written.error().sentence));
    }
}

void MainWindow::showHelp() {
    const Station station = currentStation();
    const std::string stationWord = shown(station);
    inform(this, QString::fromUtf8(stationWord.data(), static_cast<qsizetype>(stationWord.size())),
           panel(station)->help() + QStringLiteral("\n\n") + cautionText(panel(station)->cautions()));
}

void MainWindow::showEntryKinds() {
    QDialog dialog(this);
    dialog.setWindowTitle(tr("Kinds of entries"));
    auto* about = new Label(tr("What a record is made of, in the words of its files: for “caprail append”, tables and scripts."),
                            &dialog);
    about->setWordWrap(true);
    auto* text = new QPlainTextEdit(QString::fromStdString(entryManual()), &dialog);
    text->setObjectName(QStringLiteral("entryKinds"));
    text->setAccessibleName(tr("Kinds of entries"));
    text->setReadOnly(true);
    text->setLineWrapMode(QPlainTextEdit::NoWrap);
    text->setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, &dialog);
    connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    auto* column = new QVBoxLayout(&dialog);
    column->addWidget(about);
    column->addWidget(text);
    column->addWidget(buttons);
    dialog.resize(860, 620);
    dialog.exec();
}

void MainWindow::showKeys() {
    QStringList lines;
    for (const KeyTold& told : keyList()) {
        lines << told.shownKeys() + QStringLiteral(":  ") + told.shownUse();
    }
    inform(this, tr("Keys"), lines.join(QLatin1Char('\n')));
}

void MainWindow::showCautions() {
    inform(this, tr("Cautions"), allCautions().join(QStringLiteral("\n\n")));
}

void MainWindow::about() {
    showAbout(this);
}

} // namespace caprail
