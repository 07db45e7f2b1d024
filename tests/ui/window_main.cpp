// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <gmock/gmock.h>
#include <session/language.h>

/// CAPRAIL_LANGUAGE=de with CAPRAIL_PICTURES shows the screens in German; the tests expect English.
int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    caprail::speak(qEnvironmentVariable("CAPRAIL_LANGUAGE", QStringLiteral("en")));
    testing::InitGoogleMock(&argc, argv);
    return RUN_ALL_TESTS();
}
