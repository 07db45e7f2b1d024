// SPDX-License-Identifier: GPL-3.0-or-later
/// What breaks in the middle: each leaves nothing of the record behind, says what it was, and whether to try again.
#include "publishing.h"

namespace {

using namespace caprail;
using servertest::publishRecord;
using testing::HasSubstr;

class PublishingBroken : public servertest::Publishing {
protected:
    /// Has the server do something whenever a table gets rows.
    void when(const std::string& table, const std::string& does) {
        Connection owner = as("postgres");
        done(owner.run("CREATE FUNCTION public.fault() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER AS $$ BEGIN " +
                       does + "; RETURN NULL; END $$"));
        done(owner.run("CREATE TRIGGER fault AFTER INSERT ON caprail." + table +
                       " FOR EACH STATEMENT EXECUTE FUNCTION public.fault()"));
    }
    void heal(const std::string& table) {
        Connection owner = as("postgres");
        done(owner.run("DROP TRIGGER fault ON caprail." + table));
    }
    /// After the fault is gone, the same connection, opened again where it was lost, sends all of it.
    void sendsAllOfIt(Connection& bench, const std::string& path) {
        if (!bench.isOpen()) {
            done(bench.open());
        }
        const Published sent = published(bench, path);
        EXPECT_EQ(sent.entries, sizeOf(path));
        EXPECT_EQ(sent.photos, 2);
        Connection reader = as("reader_1");
        EXPECT_TRUE(verifyHeld(reader, toHex(sealOf(path, 1))));
    }
};

TEST_F(PublishingBroken, by_a_server_whose_end_is_killed_at_each_step) {
    const std::string path = recordWithPhotos("vale.caprail");
    for (const char* table : {"record", "entry", "attachment_piece", "listing", "publication"}) {
        when(table, "PERFORM pg_terminate_backend(pg_backend_pid())");
        Connection bench = as("bench_1");
        testing::internal::CaptureStderr();
        const auto refused = publishRecord(bench, path);
        EXPECT_EQ(testing::internal::GetCapturedStderr().find("Unable to free"), std::string::npos)
            << "a person is told once, by the sentence";
        ASSERT_FALSE(refused) << table;
        EXPECT_TRUE(bench.isOffline()) << table << ": " << refused.error().sentence;
        EXPECT_THAT(refused.error().sentence, HasSubstr("does not answer"));
        EXPECT_EQ(sum(counts()), 0) << table;
        heal(table);
        Connection owner = as("postgres");
        done(owner.run("DROP FUNCTION public.fault()"));
        if (std::string(table) == "publication") {
            sendsAllOfIt(bench, path);
        }
    }
}

// The statement says what the server says when its disk is full; a disk that is full takes an administrator's rights.
TEST_F(PublishingBroken, by_a_full_disk) {
    const std::string path = recordWithPhotos("vale.caprail");
    when("attachment_piece", "RAISE EXCEPTION 'could not extend file' USING ERRCODE = 'disk_full'");
    Connection bench = as("bench_1");
    const auto refused = publishRecord(bench, path);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("has no room left"));
    EXPECT_TRUE(bench.isOffline());
    EXPECT_EQ(sum(counts()), 0);
    heal("attachment_piece");
    sendsAllOfIt(bench, path);
}

TEST_F(PublishingBroken, by_a_server_that_only_lets_itself_be_read) {
    const std::string path = recordWithPhotos("vale.caprail");
    {
        Connection owner = as("postgres");
        done(owner.run("ALTER DATABASE " + name() + " SET default_transaction_read_only = on"));
    }
    Connection bench = as("bench_1");
    const auto refused = publishRecord(bench, path);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("only lets its records be read"));
    EXPECT_EQ(sum(counts()), 0);
}

TEST_F(PublishingBroken, by_a_server_that_is_too_slow_to_wait_for) {
    const std::string path = recordWithPhotos("vale.caprail");
    when("entry", "PERFORM pg_sleep(20)");
    Connection bench = as("bench_1");
    done(bench.limitTo(std::chrono::milliseconds(300)));
    const auto refused = publishRecord(bench, path);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("took too long to answer"));
    EXPECT_TRUE(bench.isOffline());
    EXPECT_EQ(sum(counts()), 0);
    heal("entry");
    done(bench.limitTo(std::chrono::milliseconds(0)));
    sendsAllOfIt(bench, path);
}

TEST_F(PublishingBroken, by_a_bench_that_holds_the_record_and_does_nothing) {
    const std::string path = recordWithPhotos("vale.caprail");
    Connection idle = as("bench_1");
    const auto held = idle.together([&]() -> Result<void> {
        auto hold = idle.prepare("SELECT hold_record(?)");
        EXPECT_TRUE(hold);
        const Seal first = sealOf(path, 1);
        hold->bindBytes(1, {reinterpret_cast<const char*>(first.bytes.data()), first.bytes.size()});
        EXPECT_TRUE(hold->run());
        Connection bench = as("bench_1");
        EXPECT_EQ(bench.text("SELECT current_setting('lock_timeout')"), "1min");
        done(bench.run("SET lock_timeout TO 200")); // for the test
        const auto refused = publishRecord(bench, path);
        EXPECT_FALSE(refused);
        EXPECT_THAT(refused ? "" : refused.error().sentence, HasSubstr("was busy with the same records"));
        EXPECT_TRUE(bench.isOffline()) << "it goes on waiting";
        return refuse("undone");
    });
    EXPECT_FALSE(held);
    Connection bench = as("bench_1");
    sendsAllOfIt(bench, path);
}

TEST_F(PublishingBroken, by_a_right_that_was_taken) {
    const std::string path = recordWithPhotos("vale.caprail");
    {
        Connection owner = as("postgres");
        done(owner.run("REVOKE EXECUTE ON FUNCTION publish FROM caprail_bench"));
    }
    Connection bench = as("bench_1");
    const auto refused = publishRecord(bench, path);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("does not allow this"));
    EXPECT_FALSE(bench.isOffline());
    EXPECT_EQ(sum(counts()), 0);
}

} // namespace
