// SPDX-License-Identifier: GPL-3.0-or-later
/// The window's session object and the command line, killed while they append.
#include "../core/store/killed.h"

#include <fstream>
#include <gtest/gtest.h>
#include <store/text/text_form.h>

namespace caprail {
namespace {

using namespace samples;

/// A sample record at `path`, of the present version.
void makeSample(const std::string& path) {
    const auto made = importLedger(SAMPLE_BUILDS "/mid-survey.jsonl", path);
    ASSERT_TRUE(made) << made.error().sentence;
}

TEST(Kill, of_the_window_s_session_loses_nothing_that_it_announced) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    killAgainAndAgain(path, {SESSION_APPEND_FOREVER, path}, killsWanted(60), std::chrono::milliseconds(300),
                      [&] { makeSample(path); });
}

TEST(Kill, of_the_command_line_loses_nothing_that_it_printed) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    const std::string entries = folder / "entries.jsonl";
    {
        std::ofstream lines(entries);
        for (int i = 0; i < 2'000; ++i) {
            lines << R"({"kind":"note_added","person":"Mira Solheim","place":"","text":"note )" << i << "\"}\n";
        }
    }
    killAgainAndAgain(path, {CAPRAIL_PROGRAM, "append", path, entries}, killsWanted(60), std::chrono::milliseconds(400),
                      [&] { makeSample(path); });
}

} // namespace
} // namespace caprail
