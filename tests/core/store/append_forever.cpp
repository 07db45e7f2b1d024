// SPDX-License-Identifier: GPL-3.0-or-later
/// Appends entries to a record until it is killed, and says each number once the entry is acknowledged. Every tenth
/// entry has an attachment. Used by kill_test.cpp.
#include "samples.h"

#include <cstdio>
#include <unistd.h>

int main(int argc, char** argv) {
    using namespace caprail;
    if (argc != 2) {
        return 64;
    }
    auto file = RecordFile::open(argv[1], OpenMode::readWrite);
    if (!file || file->isReadOnly()) {
        std::fprintf(stderr, "%s\n", file ? file->readOnlyReason().c_str() : file.error().sentence.c_str());
        return 2;
    }
    for (;;) {
        const std::int64_t number = file->ledger().size() + 1;
        Result<std::int64_t> stored = 0;
        if (number % 10 == 0) {
            const std::string bytes(20'000, static_cast<char>(number / 10));
            const AttachmentAdded photo{"", "photo.jpg", "image/jpeg", "", sha256Hex(bytes), sha256Hex(bytes), 20'000};
            stored = file->appendWithAttachment(samples::morning, "Ann", photo, bytes);
        } else {
            stored = file->append(samples::morning, "Ann", samples::gap(1, Side::left, number));
        }
        if (!stored) {
            std::fprintf(stderr, "%s\n", stored.error().sentence.c_str());
            return 1;
        }
        const std::string line = std::to_string(*stored) + '\n';
        if (::write(STDOUT_FILENO, line.data(), line.size()) != static_cast<ssize_t>(line.size())) {
            return 3;
        }
    }
}
