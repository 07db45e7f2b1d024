// SPDX-License-Identifier: GPL-3.0-or-later
/// Makes the manual's pictures, the window at work and one of each station, from the sample records:
/// make_manual_pictures SAMPLES OUT. The target manual_pictures runs it; they are looked at before they are committed.
#include "sample_pictures.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>
#include <cstdio>
#include <stations/all_stations.h>
#include <window/manual.h>

using namespace caprail;

namespace {

constexpr int widest = 880; // pixels: as wide as a page of the manual shows it

/// What is chosen in the picture of a station.
QString subjectAt(Station station) {
    switch (station) {
    case Station::bearings:
        return QStringLiteral("main-4");
    case Station::fasteners:
        return QStringLiteral("main-4R");
    case Station::girdle:
        return QStringLiteral("4L");
    default:
        return {};
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
    const auto window = opened(samples.filePath(QStringLiteral("moved-in-verify-round.caprail")),
                               folder.filePath(QStringLiteral("6.0 V8, boat.caprail")), {1180, 740});
    if (!window) {
        return 1;
    }
    window->showDestination({Station::girdle, "4L"});
    QTest::qWait(1000); // until the plan of the stacks is there
    const QImage whole = window->grab().toImage().scaledToWidth(widest, Qt::SmoothTransformation);
    bool isKept = keep(whole, out.filePath(QStringLiteral("window.png")));
    for (const auto& station : allWords<Station>()) {
        const std::unique_ptr<StationPanel> panel(makeStation(station.value, *window->session(), nullptr));
        panel->resize(widest, 600);
        panel->show();
        panel->refresh();
        panel->select(subjectAt(station.value));
        QTest::qWait(station.value == Station::girdle ? 1000 : 50);
        isKept = keep(panel->grab().toImage(),
                      out.filePath(manualPage(station.value).chopped(3) + QStringLiteral(".png"))) &&
                 isKept;
    }
    return isKept ? 0 : 1;
}
