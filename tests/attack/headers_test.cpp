// SPDX-License-Identifier: GPL-3.0-or-later
/// Altered headers and tables. The rule: what `check` calls sound loses nothing by the next entry.
#include "cut_off_writes.h"

#include <random>

namespace caprail::attack {
namespace {

class AttackHeaders : public testing::Test {
protected:
    void SetUp() override {
        makeRecord(record);
        sound = read(record);
        before = ledgerOf(record, elsewhere);
        ASSERT_FALSE(before.empty());
    }
    /// Puts altered bytes in the record's place. `check` finds them, or an append keeps every entry.
    void attack(const std::string& what, const std::string& bytes, bool mustBeFound) {
        write(record, bytes);
        const Answer checked = caprail({"check", record});
        bool good = checked.isOrderly() && read(record) == bytes && (checked.exitCode != 0 || !mustBeFound);
        count.held(good, what + ": check", checked);
        const Answer appended = caprail({"append", record, entry});
        const bool isTaken = appended.exitCode == 0;
        good = appended.isOrderly() && (isTaken ? checked.exitCode == 0 : read(record) == bytes);
        if (isTaken) {
            const std::vector<std::string> after = ledgerOf(record, elsewhere);
            good = good && after.size() == before.size() + 1 && beginsWith(after, before) &&
                   caprail({"check", record}).exitCode == 0;
        }
        count.held(good, what + ": append", appended);
    }
    [[nodiscard]] std::string with(std::size_t at, const std::string& bytes) const {
        return std::string(sound).replace(at, bytes.size(), bytes);
    }

    Folder folder, elsewhere;
    std::string record = folder / "a.caprail";
    std::string entry = noteEntry(elsewhere);
    std::string sound;
    std::vector<std::string> before;
    Count count;
};

TEST_F(AttackHeaders, that_call_pages_free_are_found_before_an_entry_is_written_over_others) {
    const auto pages = static_cast<std::uint32_t>(sound.size() / 4096);
    const std::uint32_t step = isLong() ? 1 : pages / 16;
    for (std::uint32_t page = 2; page <= pages; page += step) {
        attack("page " + std::to_string(page) + " free", with(32, fourBytes(page) + fourBytes(1)), true);
        // A list that hangs together: the page says that it is the list's last and names no others.
        std::string listed = with(32, fourBytes(page) + fourBytes(1));
        attack("page " + std::to_string(page) + " free, and made to look so",
               listed.replace((page - 1) * 4096UL, 8, std::string(8, '\0')), true);
    }
}

TEST_F(AttackHeaders, and_files_of_another_size_than_their_pages_are_found) {
    attack("a page of zeros at the end", sound + std::string(4096, '\0'), true);
    attack("noise at the end", sound + std::string(100, 'x'), true);
    attack("its last page missing", sound.substr(0, sound.size() - 4096), true);
    attack("half its last page missing", sound.substr(0, sound.size() - 2048), true);
    const auto pages = static_cast<std::uint32_t>(sound.size() / 4096);
    for (const std::uint32_t told : {pages - 1, pages + 1, 1U, 0xffffffffU}) {
        attack("told pages " + std::to_string(told), with(28, fourBytes(told)), true);
    }
}

TEST_F(AttackHeaders, with_any_byte_changed_lose_no_entry) {
    std::mt19937 random(20260504);
    for (std::size_t at = 0; at < 100; at += isLong() ? 1 : 7) {
        for (int i = 0; i < so(1, 4); ++i) {
            const char changed = static_cast<char>(sound[at] ^ (1 << random() % 8));
            attack("byte " + std::to_string(at), with(at, std::string(1, changed)), false);
        }
    }
}

TEST_F(AttackHeaders, and_altered_rows_are_found) {
    int altered = 0;
    const std::size_t step = isLong() ? 1 : 9;
    std::size_t seen = 0;
    for (std::size_t at = sound.find("Mira"); at != std::string::npos; at = sound.find("Mira", at + 1)) {
        if (seen++ % step == 0) {
            attack("a name at byte " + std::to_string(at), with(at, "Nira"), true);
            ++altered;
        }
    }
    EXPECT_GT(altered, 3);
}

} // namespace
} // namespace caprail::attack
