// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A database with its tables and logins, and a record with photos to publish to it.
#include "../shop/shop_records.h"
#include "../store/alter.h"
#include "test_database.h"

#include <gmock/gmock.h>
#include <shopserver/fetch.h>
#include <shopserver/held_records.h>
#include <shopserver/publish.h>
#include <shopserver/tables.h>

namespace caprail::servertest {

inline Result<Published> publishRecord(Connection& database, const std::string& path, const std::stop_token& stop = {},
                                       const PublishProgress& progress = {}) {
    return RecordPublisher(database).publish(path, stop, progress);
}

class Publishing : public OnAServer {
protected:
    void SetUp() override {
        OnAServer::SetUp();
        if (IsSkipped()) {
            return;
        }
        Connection owner = as("postgres");
        const auto made = makeTables(owner);
        ASSERT_TRUE(made) << made.error().sentence;
        makeLogins();
    }

    /// A short record of a customer with two photos, of which one is longer than what is sent at once.
    std::string recordWithPhotos(const std::string& name) {
        const std::string path = folder / name;
        shoptest::write(path, shoptest::shortLedger("Orrin Vale", "6.2 V8", "crank from the long shelf"));
        addPhoto(path, std::string(2'500'000, 'p'));
        addPhoto(path, "small picture");
        return path;
    }
    static void addPhoto(const std::string& path, const std::string& bytes) {
        auto file = RecordFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(file);
        AttachmentAdded photo{"main-2", "cap.jpg", "image/jpeg", "as it came", sha256Hex(bytes), sha256Hex(bytes), 0};
        photo.size = static_cast<std::int64_t>(bytes.size());
        const auto added = file->appendWithAttachment(later(*file), "Mira Solheim", photo, bytes);
        ASSERT_TRUE(added) << added.error().sentence;
    }
    static void addNote(const std::string& path, const std::string& text) {
        auto file = RecordFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(file);
        const auto added = file->append(later(*file), "Mira Solheim", NoteAdded{"", text});
        ASSERT_TRUE(added) << added.error().sentence;
    }
    static Seal sealOf(const std::string& path, std::int64_t entry = 0) {
        const auto file = RecordFile::open(path, OpenMode::readOnly);
        EXPECT_TRUE(file) << file.error().sentence;
        return entry == 0 ? file->ledger().seal() : file->ledger().at(entry).seal;
    }
    static std::int64_t sizeOf(const std::string& path) {
        const auto file = RecordFile::open(path, OpenMode::readOnly);
        EXPECT_TRUE(file) << file.error().sentence;
        return file->ledger().size();
    }
    /// What is there of everything.
    std::map<std::string, std::int64_t> counts() {
        Connection reader = as("reader_1");
        std::map<std::string, std::int64_t> all;
        for (const char* table : {"record", "entry", "attachment", "attachment_piece", "record_attachment",
                                  "publication", "listing", "found", "banded", "movement", "instrument"}) {
            const auto count = reader.integer(std::string("SELECT count(*) FROM ") + table);
            EXPECT_TRUE(count) << count.error().sentence;
            all[table] = count.value_or(-1);
        }
        return all;
    }
    static std::int64_t sum(const std::map<std::string, std::int64_t>& counted) {
        std::int64_t all = 0;
        for (const auto& [table, count] : counted) {
            all += count;
        }
        return all;
    }
    static Published published(Connection& bench, const std::string& path) {
        const auto done = publishRecord(bench, path);
        EXPECT_TRUE(done) << done.error().sentence;
        return done.value_or(Published());
    }

    shoptest::Folder folder;

private:
    static UtcTime later(const RecordFile& file) { return {file.ledger().entries().back().time.milliseconds + 1000}; }
};

} // namespace caprail::servertest
