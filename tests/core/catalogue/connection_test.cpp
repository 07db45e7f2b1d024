// SPDX-License-Identifier: GPL-3.0-or-later
#include <catalogue/connection.h>
#include <gmock/gmock.h>

namespace caprail {
namespace {

using testing::HasSubstr;

Connection inMemory() {
    Connection connection(DatabasePlace::inMemory());
    const auto opened = connection.open();
    EXPECT_TRUE(opened) << (opened ? "" : opened.error().sentence);
    EXPECT_TRUE(connection.run("CREATE TABLE t(n INTEGER, s TEXT, b BLOB) STRICT"));
    return connection;
}

TEST(ADatabase, gives_back_what_was_bound_by_its_type) {
    Connection connection = inMemory();
    auto put = connection.prepare("INSERT INTO t VALUES(?, ?, ?)");
    ASSERT_TRUE(put);
    const std::string bytes("\0\xff'x", 4);
    put->bind(1, std::int64_t(-9'007'199'254'740'993));
    put->bind(2, "Zoë; DROP TABLE t");
    put->bindBytes(3, bytes);
    ASSERT_TRUE(put->run());
    put->bindNull(1);
    put->bind(2, "");
    put->bindBytes(3, "");
    ASSERT_TRUE(put->run());
    auto query = connection.prepare("SELECT n, s, b, CAST(s AS BLOB) FROM t ORDER BY rowid");
    ASSERT_TRUE(*query->step());
    EXPECT_EQ(query->integer(0), -9'007'199'254'740'993) << "not by way of a double";
    EXPECT_EQ(query->text(1), "Zoë; DROP TABLE t");
    EXPECT_EQ(query->bytes(2), bytes);
    EXPECT_EQ(query->text(3), "Zoë; DROP TABLE t");
    ASSERT_TRUE(*query->step());
    EXPECT_TRUE(query->isNull(0));
    EXPECT_FALSE(query->isNull(1)) << "an empty text is a text";
    EXPECT_FALSE(query->isNull(2));
    EXPECT_FALSE(*query->step());
    EXPECT_TRUE(*query->step()) << "a query that came to its end begins anew";
}

TEST(ADatabase, undoes_what_was_refused_and_keeps_what_was_not) {
    Connection connection = inMemory();
    EXPECT_TRUE(connection.together([&] { return connection.run("INSERT INTO t(n) VALUES(1)"); }));
    const auto refused = connection.together([&]() -> Result<void> {
        EXPECT_TRUE(connection.run("INSERT INTO t(n) VALUES(2)"));
        return connection.run("INSERT INTO nowhere VALUES(3)");
    });
    ASSERT_FALSE(refused);
    EXPECT_EQ(connection.lastCode(), "1") << "the refusal's, not the undoing's";
    EXPECT_EQ(connection.integer("SELECT count(*) FROM t"), 1);
}

TEST(ADatabase, says_what_is_wrong_and_whether_later_may_be_better) {
    Connection connection = inMemory();
    EXPECT_THAT(connection.run("SELEKT 1").error().sentence, HasSubstr("SELEKT"));
    EXPECT_FALSE(connection.isOffline());
    EXPECT_FALSE(connection.integer("SELECT n FROM t")) << "no row";
    Connection nowhere(DatabasePlace::file("/nowhere/at/all"));
    const auto opened = nowhere.open();
    ASSERT_FALSE(opened);
    EXPECT_THAT(opened.error().sentence, HasSubstr("/nowhere/at/all"));
    EXPECT_FALSE(nowhere.isOpen());
    EXPECT_FALSE(nowhere.prepare("SELECT 1")) << "nor is anything asked of it";
}

TEST(AServer, that_is_away_is_named_and_may_be_there_later) {
    Connection connection(*parseService("host=/nowhere/at/all dbname=shop"));
    const auto opened = connection.open();
    ASSERT_FALSE(opened);
    EXPECT_THAT(opened.error().sentence, HasSubstr("host=/nowhere/at/all dbname=shop does not answer"));
    EXPECT_TRUE(connection.isOffline());
}

TEST(AServer, of_a_service_that_nobody_described_is_no_matter_of_time) {
    Connection connection(*parseService("no-such-service"));
    ASSERT_FALSE(connection.open());
    EXPECT_FALSE(connection.isOffline());
}

} // namespace
} // namespace caprail
