// SPDX-License-Identifier: GPL-3.0-or-later
// The long form T = F·(P/2π + μt·d2/(2·cos 30°) + μb·rb), ISO 16047 and VDI 2230-1 (there written with 0.16·P and
// 0.58·d2·μ); the formula is from memory of both, the figures below were seen in a reproduction of the table of VDI
// 2230 for fine threads, edition 2001 (mastik.pt, handbook page 685): preload F_M and tightening torque M_A at the same
// friction in thread and under the head.
#include <fasteners/preload.h>
#include <gtest/gtest.h>

using namespace caprail;

namespace {

/// rb of a face with a hole, both in mm.
Length meanRadius(double face, double hole) {
    return millimetres((face + hole) / 4);
}

} // namespace

TEST(LongForm, gives_what_a_calculation_by_hand_gives) {
    // M12×1.75, F = 50 kN, μt = 0.12, μb = 0.14, bearing face 18 mm over a hole of 13.5 mm.
    //   rb = (18 + 13.5)/4 = 7.875 mm
    //   d2 = 12 − 0.649519·1.75 = 12 − 1.13666 = 10.86334 mm
    //   P/2π = 1.75/6.283185 = 0.278521 mm
    //   μt·d2/(2·cos 30°) = 0.12·10.86334/1.7320508 = 0.752633 mm
    //   μb·rb = 0.14·7.875 = 1.1025 mm
    //   sum = 2.133654 mm;  T = 50 000 N · 2.133654 mm = 106.683 N·m
    const Thread thread = *parseThread("M12");
    const JointFriction friction{0.12, 0.14, meanRadius(18, 13.5)};
    const auto force = preloadLongForm(newtonMetres(106.683), thread, friction, Units{});
    ASSERT_TRUE(force);
    EXPECT_NEAR(inNewtons(force->value), 50'000, 1.0);
}

TEST(LongForm, gives_the_preloads_of_the_fine_thread_table_of_vdi_2230) {
    // Bearing face of a hexagon head (ISO 4014, least dw) over a medium hole (ISO 273): from memory.
    struct Row {
        const char* name;
        double face;
        double hole; ///< mm
        double friction;
        double preload; ///< kN, class 8.8
        double torque;  ///< N·m
    };
    constexpr Row rows[] = {
        {"M8x1", 11.63, 9.0, 0.10, 20.7, 22.8},     {"M8x1", 11.63, 9.0, 0.12, 20.2, 26.1},
        {"M8x1", 11.63, 9.0, 0.14, 19.7, 29.2},     {"M10x1.25", 14.63, 11.0, 0.10, 32.4, 44},
        {"M10x1.25", 14.63, 11.0, 0.12, 31.6, 51},  {"M10x1.25", 14.63, 11.0, 0.14, 30.8, 57},
        {"M12x1.25", 16.63, 13.5, 0.10, 49.1, 79},  {"M12x1.25", 16.63, 13.5, 0.12, 48.0, 90},
        {"M12x1.25", 16.63, 13.5, 0.14, 46.8, 101}, {"M14x1.5", 19.64, 15.5, 0.10, 66.4, 124},
        {"M14x1.5", 19.64, 15.5, 0.12, 64.8, 142},  {"M14x1.5", 19.64, 15.5, 0.14, 63.2, 159},
        {"M16x1.5", 22.49, 17.5, 0.10, 89.6, 189},  {"M16x1.5", 22.49, 17.5, 0.12, 87.6, 218},
        {"M16x1.5", 22.49, 17.5, 0.14, 85.5, 244},
    };
    for (const Row& row : rows) {
        const JointFriction friction{row.friction, row.friction, meanRadius(row.face, row.hole)};
        const auto force = preloadLongForm(newtonMetres(row.torque), *parseThread(row.name), friction, Units{});
        ASSERT_TRUE(force) << row.name;
        // The table prints two or three figures of each.
        EXPECT_NEAR(inNewtons(force->value), row.preload * 1'000, 0.012 * row.preload * 1'000)
            << row.name << " at " << row.friction;
    }
}
