// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/shop_menu.h>

#include <QFileDialog>
#include <QFileInfo>
#include <QMenuBar>
#include <algorithm>
#include <assessment/signatures.h>
#include <records/builds_dialog.h>
#include <records/shelf_dialogs.h>
#include <records/shop_config.h>
#include <records/template_dialogs.h>
#include <shop/build_comparison.h>
#include <shop/hand_over.h>
#include <store/file/path_text.h>
#include <text/ask.h>
#include <window/main_window.h>
#include <window/menu_entry.h>
#include <window/publish_wiring.h>
#include <window/record_output.h>
#include <window/sign_actions.h>

namespace caprail {

namespace {

void complain(MainWindow& window, const Problem& problem) {
    warn(&window, MainWindow::tr("Caprail"), QString::fromStdString(problem.sentence));
}

void beginBuild(MainWindow& window) {
    RecordSession& session = *window.session();
    if (!session.facts().isClosed()) {
        inform(
            &window, MainWindow::tr("New build"),
            MainWindow::tr("A new build begins when the one before is signed off: finish and sign off build %1 first.")
                .arg(session.facts().build));
        return;
    }
    const auto why = askText(
        &window, MainWindow::tr("New build"),
        MainWindow::tr("Why is this engine built again? Build %1 stays readable beside it: Shop ▸ Compare builds.")
            .arg(session.facts().build));
    if (why) {
        session.appendAndSay(BuildBegun{session.facts().build + 1, why->trimmed().toStdString()});
    }
}

void showBuilds(MainWindow& window) {
    BuildsDialog dialog(*window.session(), &window);
    QObject::connect(&dialog, &BuildsDialog::sheetRequested, &dialog, [&window, &dialog] {
        const QFileInfo file(window.session()->path());
        const QString path = QFileDialog::getSaveFileName(&dialog, MainWindow::tr("Sheet of the difference"),
                                                          file.path() + QLatin1Char('/') + file.completeBaseName() +
                                                              QStringLiteral("-difference.pdf"),
                                                          MainWindow::tr("PDF (*.pdf)"));
        if (path.isEmpty() || !dialog.comparison()) {
            return;
        }
        if (const auto written = writeDifferenceSheet(sheetSourceOf(*window.session()), *dialog.comparison(), path,
                                                      sheetOptionsOf(window.preferences()));
            !written) {
            complain(window, written.error());
        }
    });
    dialog.exec();
}

void addFromShelf(MainWindow& window) {
    QString problem;
    const Shelf shelf = loadShelf(&problem);
    if (!problem.isEmpty()) {
        complain(window, {problem.toStdString()});
        return;
    }
    AddFromShelfDialog(*window.session(), shelf, &window).exec();
}

void handOverFolder(MainWindow& window) {
    RecordSession& session = *window.session();
    const QFileInfo file(session.path());
    const QString folder = QFileDialog::getSaveFileName(&window, MainWindow::tr("Hand-over folder (a new one is made)"),
                                                        file.path() + QLatin1Char('/') + file.completeBaseName() +
                                                            MainWindow::tr("-hand-over"),
                                                        {}, nullptr, QFileDialog::DontConfirmOverwrite);
    if (folder.isEmpty()) {
        return;
    }
    // The customer is given a record that is signed as it is handed over, where there is a key.
    if (std::ranges::none_of(signaturesOf(session.ledger()), &SignatureFact::coversAll)) {
        offerSignature(window, false);
    }
    const SheetOptions options = sheetOptionsOf(window.preferences());
    const auto made = handOver(session.file(), pathBytes(folder),
                               {options.units, true, [&](const std::string& pdfPath) {
                                    return writeSheet(sheetSourceOf(session), qtPath(pdfPath), options);
                                }});
    if (!made) {
        complain(window, made.error());
        return;
    }
    inform(&window, MainWindow::tr("Hand-over folder"),
           MainWindow::tr("%1 holds the build sheet, photos, the ledger for people and for programs, "
                          "tables, and checksums.")
                   .arg(folder) +
               (session.facts().isClosed()
                    ? QString()
                    : QStringLiteral("\n\n") +
                          MainWindow::tr("The build is not signed off, and README.txt says so at its head.")));
}

} // namespace

void makeShopMenu(MainWindow& window) {
    QMenu* shop = window.menuBar()->addMenu(MainWindow::tr("Sho&p"));
    addEntry(window, shop, Needs::nothing, MainWindow::tr("The &records of a folder"), {},
             [](MainWindow& w) { w.openShop(); });
    addEntry(window, shop, Needs::nothing, MainWindow::tr("&Publish…"), {}, &publishFrom);
    shop->addSeparator();
    addEntry(window, shop, Needs::record, MainWindow::tr("Save as a &template…"), {},
             [](MainWindow& w) { TemplateEditor(w.session()->ledger(), &w).exec(); });
    addEntry(window, shop, Needs::nothing, MainWindow::tr("T&emplates…"), {},
             [](MainWindow& w) { TemplatesDialog(&w).exec(); });
    shop->addSeparator();
    addEntry(window, shop, Needs::record, MainWindow::tr("&Add from the shelf…"), {}, &addFromShelf);
    addEntry(window, shop, Needs::nothing, MainWindow::tr("The &shelf…"), {},
             [](MainWindow& w) { ShelfDialog(w.session(), &w).exec(); });
    shop->addSeparator();
    addEntry(window, shop, Needs::record, MainWindow::tr("Begin a &new build…"), {}, &beginBuild);
    addEntry(window, shop, Needs::record, MainWindow::tr("&Compare builds…"), {}, &showBuilds);
}

void addHandOver(MainWindow& window, QMenu* file) {
    addEntry(window, file, Needs::record, MainWindow::tr("Hand-over fold&er…"), {}, &handOverFolder);
}

} // namespace caprail
