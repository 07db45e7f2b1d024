// SPDX-License-Identifier: GPL-3.0-or-later
/// Importing a ledger in its text form from someone else: refused with a sentence, or a sound record that gives the
/// same text again.
#include "scratch_file.h"

#include <cstdint>
#include <store/care/check.h>
#include <store/text/text_form.h>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace caprail;
    using fuzz::require;
    static const fuzz::Scratch scratch;
    const std::string text = scratch / "input.jsonl";
    const std::string record = scratch / "new.caprail";
    fuzz::write(text, {reinterpret_cast<const char*>(data), size});
    const auto done = importLedger(text, record);
    require(done.has_value() == std::filesystem::exists(record),
            "there is a record when it was imported, and only then");
    if (!done) {
        require(!done.error().sentence.empty(), "a refusal says why");
        return 0;
    }
    require(checkFile(record).verdict == CheckVerdict::sound, "what was imported is sound");
    const std::string again = scratch / "again.jsonl";
    const std::string second = scratch / "second.caprail";
    {
        const auto file = RecordFile::open(record, OpenMode::readOnly);
        require(file.has_value(), "what was imported opens");
        require(exportLedger(file->ledger(), again).has_value(), "it can be exported");
        const auto twice = importLedger(again, second);
        require(twice.has_value(), "and imported again");
        require(checkFile(second).seal == file->ledger().seal(), "with the same seal");
    }
    for (const std::string& path : {record, again, second}) {
        std::filesystem::remove(path);
    }
    return 0;
}
