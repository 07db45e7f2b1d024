// SPDX-License-Identifier: GPL-3.0-or-later
// The tests of the drawing and the charts run as a program with a screen; the build sets it to the offscreen one.
#include <QApplication>
#include <gtest/gtest.h>

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    const QApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
