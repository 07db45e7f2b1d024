// SPDX-License-Identifier: GPL-3.0-or-later
/// Makes the manual's pictures, one a station, from the sample records: make_manual_pictures SAMPLES OUT. The target
/// manual_pictures runs it; they are looked at before they are committed.
#include "sample_pictures.h"

#include <QDir>
#include <QMenuBar>
#include <QTemporaryDir>
#include <QTest>
#include <cstdio>
#include <stations/common/station.h>
#include <window/manual.h>

using namespace caprail;

namespace {

/// What the picture of a station shows chosen.
Destination shownAt(Station station) {
    switch (station) {
    case Station::bearings:
        return {station, "main-4"};
    case Station::fasteners:
        return {station, "main-4R"};
    case Station::girdle:
        return {station, "4L"};
    default:
        return {station, {}};
    }
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    const QTemporaryDir folder;
    dressForPictures(folder.path());
    if (argc != 3) {
        std::fprintf(stderr, "make_manual_pictures SAMPLES OUT\n");
        return 64;
    }
    const QDir samples(QString::fromLocal8Bit(argv[1])), out(QString::fromLocal8Bit(argv[2]));
    // As narrow as the window may be shown on a page, so that it is not made smaller there.
    const auto window = opened(samples.filePath(QStringLiteral("moved-in-verify-round.caprail")),
                               folder.filePath(QStringLiteral("6.0 V8, boat.caprail")), {900, 640});
    if (!window) {
        return 1;
    }
    window->menuBar()->hide();
    for (const auto& station : allWords<Station>()) {
        window->showDestination(shownAt(station.value));
        QTest::qWait(station.value == Station::girdle ? 1000 : 50); // until the plan of the stacks is there
        if (!keep(window->grab().toImage(), out.filePath(manualPage(station.value).chopped(3) + QStringLiteral(".png")))) {
            return 1;
        }
    }
    return 0;
}
