// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <gmock/gmock.h>
#include <session/language.h>
#include <session/storing_press.h>

/// Every test of the window: offscreen, unless a platform is asked for (also when CMake asks for the list of tests), and
/// in English, unless CAPRAIL_LANGUAGE says otherwise.
int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    const QApplication application(argc, argv);
    caprail::speak(qEnvironmentVariable("CAPRAIL_LANGUAGE", QStringLiteral("en")));
    // Tests press faster than people: here a second passes with each look at the clock.
    caprail::StoringPress::setClock([] {
        static qint64 time = 0;
        return time += 1000;
    });
    testing::InitGoogleMock(&argc, argv);
    return RUN_ALL_TESTS();
}
