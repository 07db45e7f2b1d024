// SPDX-License-Identifier: GPL-3.0-or-later
/// Other programs look at what the store wrote: the sqlite3 shell, sqldiff, jq, sha256sum. Those that are not installed
/// are skipped.
#include "alter.h"

#include <cstdlib>
#include <gmock/gmock.h>
#include <store/text/text_form.h>

namespace caprail {
namespace {

using namespace samples;

bool isInstalled(const std::string& program) {
    return std::system(("command -v " + program + " >/dev/null 2>&1").c_str()) == 0;
}

/// What a command prints, without the last line end.
std::string output(const std::string& command) {
    std::string text;
    FILE* pipe = ::popen(command.c_str(), "r");
    char buffer[4096];
    while (const std::size_t count = std::fread(buffer, 1, sizeof(buffer), pipe)) {
        text.append(buffer, count);
    }
    ::pclose(pipe);
    while (text.ends_with('\n')) {
        text.pop_back();
    }
    return text;
}

class Outside : public testing::Test {
protected:
    Folder folder;
    std::string record = folder / "smith.caprail";
    std::string text = folder / "smith.jsonl";
    Ledger ledger = makeFullRecord(record);
};

TEST(Sha256, gives_the_example_of_fips_180_4) {
    // FIPS 180-4's companion examples (NIST, "SHA256.pdf", from memory): "abc" in one block, 56 letters in two.
    EXPECT_EQ(sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256Hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

TEST_F(Outside, sqlite3_finds_the_record_whole) {
    if (!isInstalled("sqlite3")) {
        GTEST_SKIP() << "sqlite3 is not installed";
    }
    EXPECT_EQ(output("sqlite3 -readonly '" + record + "' 'PRAGMA integrity_check; PRAGMA foreign_key_check;'"), "ok");
    EXPECT_EQ(output("sqlite3 -readonly '" + record + "' 'SELECT count(*) FROM history'"),
              std::to_string(ledger.size()));
}

TEST_F(Outside, sha256sum_agrees_with_every_seal_of_the_chain) {
    if (!isInstalled("sha256sum")) {
        GTEST_SKIP() << "sha256sum is not installed";
    }
    // The seal as DEVELOPERS.md tells it: SHA-256 over the 32 bytes of the seal before, then the canonical text.
    Seal before;
    for (const Entry& entry : ledger.entries()) {
        const std::string sealed(reinterpret_cast<const char*>(before.bytes.data()), before.bytes.size());
        write(folder / "sealed", sealed + canonicalText(entry));
        EXPECT_EQ(output("sha256sum < '" + (folder / "sealed") + "'").substr(0, 64), toHex(entry.seal));
        before = entry.seal;
    }
}

TEST_F(Outside, jq_reads_the_text_form_and_writes_the_same_canonical_text) {
    if (!isInstalled("jq")) {
        GTEST_SKIP() << "jq is not installed";
    }
    ASSERT_TRUE(exportLedger(ledger, text));
    // Sorted and compact, jq writes what RFC 8785 asks for as long as numbers are whole.
    std::string canonical;
    for (const Entry& entry : ledger.entries()) {
        canonical += (canonical.empty() ? "" : "\n") + canonicalText(entry);
    }
    EXPECT_EQ(output("jq -cS 'del(.seal)' '" + text + "'"), canonical);
}

TEST_F(Outside, sqldiff_finds_no_difference_after_the_text_form) {
    if (!isInstalled("sqldiff")) {
        GTEST_SKIP() << "sqldiff is not installed";
    }
    auto file = RecordFile::open(record, OpenMode::readOnly);
    ASSERT_TRUE(file && exportLedger(*file, text) && importLedger(text, folder / "again.caprail"));
    EXPECT_EQ(output("sqldiff '" + record + "' '" + (folder / "again.caprail") + "'"), "");
}

TEST_F(Outside, sqlite3_dumps_the_same_rows_after_the_text_form) {
    if (!isInstalled("sqlite3")) {
        GTEST_SKIP() << "sqlite3 is not installed";
    }
    auto file = RecordFile::open(record, OpenMode::readOnly);
    ASSERT_TRUE(file && exportLedger(*file, text) && importLedger(text, folder / "again.caprail"));
    const std::string dump = output("sqlite3 -readonly '" + record + "' .dump");
    EXPECT_GT(dump.size(), 20'000U);
    EXPECT_EQ(output("sqlite3 -readonly '" + (folder / "again.caprail") + "' .dump"), dump);
}

} // namespace
} // namespace caprail
