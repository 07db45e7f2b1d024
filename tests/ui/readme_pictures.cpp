// SPDX-License-Identifier: GPL-3.0-or-later
/// Makes the pictures that the README opens with, from the sample records: readme_pictures SAMPLES OUT. The target of the
/// same name runs it; they are looked at before they are committed.
#include "sample_pictures.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>
#include <cstdio>
#include <sheet/sheet.h>

using namespace caprail;

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    const QTemporaryDir folder;
    dressForPictures(folder.path());
    if (argc != 3) {
        std::fprintf(stderr, "readme_pictures SAMPLES OUT\n");
        return 64;
    }
    const QDir samples(QString::fromLocal8Bit(argv[1])), out(QString::fromLocal8Bit(argv[2]));
    const auto atWork = opened(samples.filePath("moved-in-verify-round.caprail"), folder.filePath("6.0 V8, boat.caprail"),
                               {1180, 720});
    const auto done = opened(samples.filePath("closed.caprail"), folder.filePath("6.2 V8, hill climb.caprail"),
                             {1180, 720});
    if (!atWork || !done) {
        return 1;
    }
    atWork->showDestination({Station::girdle, "4L"});
    QTest::qWait(1000); // until the plan of the stacks is there
    const RecordSession& session = *done->session();
    SheetOptions options;
    options.zone = QTimeZone::utc();
    const auto pages = sheetPages({session.ledger(), session.facts(), session.assessment(), {}}, options, 80);
    return !pages.empty() && keep(atWork->grab().toImage(), out.filePath("at-work.png")) &&
                   keep(pages.front(), out.filePath("sheet.png"))
               ? 0
               : 1;
}
