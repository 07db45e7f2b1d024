// SPDX-License-Identifier: GPL-3.0-or-later
/// Makes the pictures that the README opens with, from the sample records: readme_pictures SAMPLES OUT. The target of the
/// same name runs it; they are looked at before they are committed.
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <cstdio>
#include <session/language.h>
#include <sheet/sheet.h>
#include <window/main_window.h>
#include <window/preferences.h>

using namespace caprail;

namespace {

/// Few colours, so that the file stays small: lines and letters need no more.
bool keep(const QImage& picture, const QString& path) {
    return picture.convertToFormat(QImage::Format_Indexed8, Qt::ThresholdDither).save(path, "PNG", 0);
}

/// A window on a writable copy of a sample.
std::unique_ptr<MainWindow> opened(const QString& sample, const QString& copy) {
    QFile::copy(sample, copy);
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    auto window = std::make_unique<MainWindow>();
    window->setAttribute(Qt::WA_DeleteOnClose, false);
    window->resize(1180, 720);
    window->show();
    return window->openFile(copy) ? std::move(window) : nullptr;
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    speak(QStringLiteral("en"));
    const QTemporaryDir folder;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.path());
    QApplication::setOrganizationName(QStringLiteral("caprail-pictures"));
    applyLook(LookChoice::light);
    if (argc != 3) {
        std::fprintf(stderr, "readme_pictures SAMPLES OUT\n");
        return 64;
    }
    const QDir samples(QString::fromLocal8Bit(argv[1])), out(QString::fromLocal8Bit(argv[2]));
    const auto atWork = opened(samples.filePath("moved-in-verify-round.caprail"), folder.filePath("6.0 V8, boat.caprail"));
    const auto done = opened(samples.filePath("closed.caprail"), folder.filePath("6.2 V8, hill climb.caprail"));
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
