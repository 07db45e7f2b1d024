// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/about.h>

#include <QApplication>
#include <QClipboard>
#include <QCoreApplication>
#include <QIcon>
#include <QLocale>
#include <QPushButton>
#include <QSysInfo>
#include <boost/version.hpp>
#include <qcustomplot.h>
#include <session/filled.h>
#include <text/ask.h>

namespace caprail {

namespace {

class AboutText {
    Q_DECLARE_TR_FUNCTIONS(About)
};

/// Names, versions (of Qt the one that runs, of the others the one built with) and licences, the same in every language.
QStringList libraries() {
    QString boost = QStringLiteral(BOOST_LIB_VERSION);
    boost.replace(QLatin1Char('_'), QLatin1Char('.'));
    return {QStringLiteral("Qt %1: LGPL-3.0").arg(QString::fromLatin1(qVersion())),
            QStringLiteral("SQLite " CAPRAIL_SQLITE_VERSION ": public domain"),
            QStringLiteral("QCustomPlot " QCUSTOMPLOT_VERSION_STR ": GPL-3.0-or-later"),
            QStringLiteral("Nettle " CAPRAIL_NETTLE_VERSION " and GMP: LGPL-3.0-or-later or GPL-2.0-or-later"),
            QStringLiteral("qpdf " CAPRAIL_QPDF_VERSION ": Apache-2.0"),
            QStringLiteral("libqrencode " CAPRAIL_QRENCODE_VERSION ": LGPL-2.1-or-later"),
            QStringLiteral("libexif " CAPRAIL_EXIF_VERSION ": LGPL-2.1-or-later"),
            QStringLiteral("GLib " CAPRAIL_GLIB_VERSION ": LGPL-2.1-or-later"),
            QStringLiteral("Speech Dispatcher " CAPRAIL_SPEECH_VERSION " (client): LGPL-2.1-or-later"),
            QStringLiteral("Boost %1 (Math, Multiprecision): BSL-1.0").arg(boost),
            QStringLiteral("Eigen " CAPRAIL_EIGEN_VERSION ": MPL-2.0"),
            QStringLiteral("tl::expected: CC0-1.0")};
}

} // namespace

QString aboutText() {
    return filled(AboutText::tr("Caprail %1\n\nThe assembly build record of one engine per file.\n\nFree software under the GNU "
                                "General Public License, version 3 or later. It comes without any warranty.\n\nMade with:"),
                  QCoreApplication::applicationVersion()) +
           QLatin1Char('\n') + libraries().join(QLatin1Char('\n'));
}

QString reportText() {
    return filled(QStringLiteral("Caprail %1\n%2, %3, window system %4\nlocale %5\n"), QCoreApplication::applicationVersion(),
                  QSysInfo::prettyProductName(), QSysInfo::currentCpuArchitecture(), QGuiApplication::platformName(),
                  QLocale::system().name()) +
           libraries().join(QLatin1Char('\n')) + QLatin1Char('\n');
}

void showAbout(QWidget* parent) {
    PlainBox box(QMessageBox::NoIcon, AboutText::tr("About Caprail"), aboutText(), QMessageBox::Ok, parent);
    const QIcon icon = box.windowIcon();
    box.setIconPixmap(icon.pixmap(icon.actualSize(QSize(64, 64))));
    QPushButton* copy = box.addButton(AboutText::tr("&Copy for a report"), QMessageBox::ActionRole);
    copy->setObjectName(QStringLiteral("copyForReport"));
    copy->disconnect(); // else it closes the box
    QObject::connect(copy, &QPushButton::clicked, &box, [] { QGuiApplication::clipboard()->setText(reportText()); });
    box.setDefaultButton(QMessageBox::Ok);
    box.setEscapeButton(QMessageBox::Ok); // with two buttons Qt does not guess it, and Esc would do nothing
    box.exec();
}

} // namespace caprail
