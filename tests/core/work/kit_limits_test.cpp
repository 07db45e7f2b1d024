// SPDX-License-Identifier: GPL-3.0-or-later
#include "work_bench.h"

#include <gmock/gmock.h>
#include <work/kit_line.h>

namespace caprail {
namespace {

using testing::HasSubstr;

std::string answer(const std::string& line) {
    const auto shims = parseKitLine(line, inchUnits, Facts{}, "");
    return shims ? std::to_string(shims->size()) : shims.error().sentence;
}

TEST(KitLimits, are_as_many_shims_at_once_as_the_refusal_names) {
    const std::string refused = answer("9999 x 5 thou");
    ASSERT_TRUE(refused.starts_with("Between 1 and ")) << refused;
    const int most = std::stoi(refused.substr(14));
    EXPECT_EQ(answer(std::to_string(most) + " x 5 thou"), std::to_string(most));
    EXPECT_THAT(answer(std::to_string(most + 1) + " x 5 thou"), HasSubstr("are added at once"));
    EXPECT_EQ(answer("1 x 5 thou"), "1");
    EXPECT_THAT(answer("0 x 5 thou"), HasSubstr("are added at once"));
    EXPECT_EQ(answer("S1-S" + std::to_string(most) + " 5 thou"), std::to_string(most));
    EXPECT_THAT(answer("S1-S" + std::to_string(most + 1) + " 5 thou"),
                HasSubstr("over no more than " + std::to_string(most)));
    EXPECT_EQ(answer("S5-S5 5 thou"), "1");
    EXPECT_THAT(answer("S5-S4 5 thou"), HasSubstr("must go upwards"));
}

} // namespace
} // namespace caprail
