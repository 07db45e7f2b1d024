// SPDX-License-Identifier: GPL-3.0-or-later
/// One entry as JSON from someone else: refused with a sentence, or written and read back as it was.
#include "scratch_file.h"

#include <cstdint>
#include <ledger/entry_json.h>
#include <ledger/strict_json.h>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace caprail;
    using fuzz::require;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto draft = fromJson(text);
    if (const auto good = checkJson(text); !good) {
        require(!good.error().sentence.empty(), "a refusal says why");
        require(!draft.has_value(), "what two readers would read differently is refused");
    }
    if (!draft) {
        require(!draft.error().sentence.empty(), "a refusal says why");
        return 0;
    }
    Entry entry{1, draft->time.value_or(UtcTime{}), draft->person, draft->body, {}};
    entry.seal = sealOver(Seal{}, canonicalText(entry));
    const auto again = fromJson(toJsonLine(entry));
    require(again.has_value(), "what was read can be written and read again");
    require(again->seal == entry.seal, "the seal comes back");
    const Entry same{1, again->time.value_or(UtcTime{}), again->person, again->body, entry.seal};
    require(same == entry, "the entry comes back");
    return 0;
}
