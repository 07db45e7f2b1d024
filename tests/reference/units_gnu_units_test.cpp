// SPDX-License-Identifier: GPL-3.0-or-later
/// GNU Units (Debian package `units`): the same conversions asked of the program itself while the test runs. It fails
/// when the program is missing.
#include <array>
#include <cstdio>
#include <cstdlib>
#include <gmock/gmock.h>
#include <memory>
#include <string>
#include <units/force.h>
#include <units/length.h>
#include <units/torque.h>

using namespace caprail;

namespace {

/// What `units` answers, or an error text that is no number.
std::string ask(const std::string& from, const std::string& to) {
    const std::string command = "units -t -o '%.15g' '" + from + "' '" + to + "' 2>&1";
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), pclose);
    std::string answer;
    std::array<char, 256> buffer{};
    while (pipe && std::fgets(buffer.data(), static_cast<int>(buffer.size()), pipe.get()) != nullptr) {
        answer += buffer.data();
    }
    return answer;
}

void agree(double ours, const std::string& from, const std::string& to) {
    const std::string answer = ask(from, to);
    char* end = nullptr;
    const double theirs = std::strtod(answer.c_str(), &end);
    ASSERT_NE(end, answer.c_str()) << "GNU Units did not answer with a number (is the package `units` installed?): "
                                   << answer;
    EXPECT_NEAR(ours / theirs, 1.0, 1e-13) << from << " in " << to;
}

} // namespace

TEST(GnuUnits, agree_on_torque) {
    agree(newtonMetresPerPoundFoot, "lbf*ft", "N*m");
    agree(newtonMetresPerPoundInch, "lbf*in", "N*m");
}

TEST(GnuUnits, agree_on_force_and_stress) {
    agree(newtonsPerPoundForce, "lbf", "N");
    agree(pascalsPerPsi, "psi", "Pa");
}

TEST(GnuUnits, agree_on_length_to_the_nanometre) {
    agree(static_cast<double>(inches(1).value()), "in", "nm");
    agree(static_cast<double>(thou(57.5).value()), "57.5 mil", "nm");
    agree(static_cast<double>(tenths(24'482).value()), "2.4482 in", "nm");
    agree(static_cast<double>(inches(0.375).value()), "3|8 in", "nm");
    agree(static_cast<double>(millimetres(1.461).value()), "1.461 mm", "nm");
}

TEST(GnuUnits, agree_on_values_back_and_forth) {
    agree(inPoundFeet(newtonMetres(101.7)), "101.7 N*m", "lbf*ft");
    agree(inPoundInches(newtonMetres(101.7)), "101.7 N*m", "lbf*in");
    agree(inThou(millimetres(1.46)), "1.46 mm", "mil");
}
