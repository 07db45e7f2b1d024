// SPDX-License-Identifier: GPL-3.0-or-later
/// large_record COUNT OUT.caprail [heaped]: makes a record of so many entries, and OUT.caprail.jsonl, its text.
#include "large_record.h"

#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <store/text/text_form.h>

int main(int argc, char** argv) {
    using namespace caprail;
    const long count = argc >= 3 ? std::atol(argv[1]) : 0;
    if (count < 1 || argc > 4 || (argc == 4 && std::strcmp(argv[3], "heaped") != 0)) {
        std::fputs("large_record COUNT OUT.caprail [heaped]\n", stderr);
        return 64;
    }
    const auto manner = argc == 4 ? largerecord::Manner::heaped : largerecord::Manner::worked;
    const std::string path = argv[2];
    const auto written = exportLedger(largerecord::ledgerOf(SAMPLE_BUILDS, count, manner), path + ".jsonl");
    const auto made = written ? importLedger(path + ".jsonl", path) : written;
    if (!made) {
        std::fprintf(stderr, "%s\n", made.error().sentence.c_str());
    }
    return made ? 0 : 1;
}
