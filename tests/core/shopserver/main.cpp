// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <gtest/gtest.h>

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv); // which finds the drivers
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
