// SPDX-License-Identifier: GPL-3.0-or-later
/// The store's own appending, killed. A killed process is not a power cut (the system still writes its buffers): that
/// is tried by power_cut_test.cpp. The window's session and the command line are killed in tests/cli/kill_test.cpp.
#include "killed.h"

namespace caprail {
namespace {

using namespace samples;

TEST(Kill, loses_no_acknowledged_entry_and_leaves_no_half_one) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    killAgainAndAgain(path, {APPEND_FOREVER, path}, killsWanted(200), std::chrono::milliseconds(60),
                      [&] { makeRecord(path, 0); });
}

} // namespace
} // namespace caprail
