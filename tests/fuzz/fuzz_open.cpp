// SPDX-License-Identifier: GPL-3.0-or-later
/// Opening, checking and salvaging a file that someone else made. An input is a list of patches on a sound record, four
/// bytes each: where (three bytes, modulo the size) and what; so a few bytes reach every corner of a file of 70 pages.
/// An input that begins with "SQLite" is taken as the whole file.
#include "scratch_file.h"

#include <cstdint>
#include <ledger/kinds.h>
#include <store/care/check.h>
#include <store/file/record_file.h>
#include <store/care/salvage.h>

namespace {

using namespace caprail;
using fuzz::require;

const fuzz::Scratch& scratch() {
    static const fuzz::Scratch folder;
    return folder;
}

const std::string& soundRecord() {
    static const std::string bytes = [] {
        const std::string path = scratch() / "sound.caprail";
        auto file = RecordFile::create(path);
        require(file.has_value(), "a record can be made");
        constexpr UtcTime morning{1'777'887'000'000};
        for (int i = 0; i < 60; ++i) {
            (void)file->append(morning, "Ann", GapReading{{1 + i % 5, Side::left}, 1, {thou(50 + i), "t"}, "F"});
            (void)file->append(morning, "Ann", NoteAdded{"3R", std::string(static_cast<std::size_t>(i * 20), 'n')});
        }
        (void)file->append(morning, "Ann", Struck{2, "slipped"});
        const std::string photo(10'000, 'p');
        (void)file->appendWithAttachment(
            morning, "Ann", {"", "p.jpg", "image/jpeg", "", sha256Hex(photo), sha256Hex(photo), 10'000}, photo);
        return fuzz::read(path);
    }();
    return bytes;
}

std::string fileFrom(std::string_view input) {
    if (input.starts_with("SQLite")) {
        return std::string(input);
    }
    std::string bytes = soundRecord();
    for (std::size_t at = 0; at + 4 <= input.size(); at += 4) {
        const auto byte = [&](std::size_t i) {
            return static_cast<std::size_t>(static_cast<unsigned char>(input[at + i]));
        };
        bytes[(byte(0) << 16 | byte(1) << 8 | byte(2)) % bytes.size()] = input[at + 3];
    }
    return bytes;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string bytes = fileFrom({reinterpret_cast<const char*>(data), size});
    const std::string path = scratch() / "input.caprail";
    const std::string fresh = scratch() / "salvaged.caprail";
    fuzz::write(path, bytes);
    {
        const auto file = RecordFile::open(path, OpenMode::readWrite);
        require(file || !file.error().sentence.empty(), "a refusal says why");
        const CheckReport report = checkFile(path);
        require(report.verdict != CheckVerdict::sound || file.has_value(), "what is sound opens");
    }
    require(fuzz::read(path) == bytes, "the file was not touched");
    if (salvage(path, fresh, UtcTime{1'777'887'000'000})) {
        require(checkFile(fresh).verdict == CheckVerdict::sound, "what was salvaged is sound");
        std::filesystem::remove(fresh);
    }
    require(!std::filesystem::exists(fresh), "a refused salvage leaves nothing");
    require(fuzz::read(path) == bytes, "salvage did not touch the file");
    return 0;
}
