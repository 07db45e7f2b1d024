// SPDX-License-Identifier: GPL-3.0-or-later
#include "publishing.h"

#include <numeric>
#include <shop/record_summary.h>
#include <thread>

namespace {

using namespace caprail;
using servertest::publishRecord;
using testing::HasSubstr;

class Publishing : public servertest::Publishing {};

TEST_F(Publishing, sends_entries_photos_list_and_figures_and_the_second_time_nothing) {
    const std::string path = recordWithPhotos("vale.caprail");
    const auto before = shoptest::traceOf(folder.path());
    Connection bench = as("bench_1");
    const Published first = published(bench, path);
    EXPECT_EQ(first.what, Published::What::sent);
    EXPECT_EQ(first.entries, sizeOf(path));
    EXPECT_EQ(first.photos, 2);
    EXPECT_EQ(first.head, sealOf(path));
    const auto after = counts();
    EXPECT_EQ(after.at("entry"), sizeOf(path));
    EXPECT_EQ(after.at("attachment"), 2);
    EXPECT_EQ(after.at("attachment_piece"), 4) << "three mebibytes and one";
    EXPECT_EQ(after.at("listing"), 1);
    EXPECT_GT(after.at("instrument"), 3);

    const Published second = published(bench, path);
    EXPECT_EQ(second.what, Published::What::nothingNew);
    EXPECT_EQ(second.entries, 0);
    EXPECT_EQ(counts(), after);
    EXPECT_EQ(shoptest::traceOf(folder.path()), before) << "a record is only read";
}

TEST_F(Publishing, sends_only_what_is_new) {
    const std::string path = recordWithPhotos("vale.caprail");
    Connection bench = as("bench_1");
    published(bench, path);
    addNote(path, "deck is flat");
    addPhoto(path, "small picture"); // the same bytes again
    const Published more = published(bench, path);
    EXPECT_EQ(more.entries, 2);
    EXPECT_EQ(more.photos, 0);
    EXPECT_EQ(counts().at("publication"), 2);
    Connection reader = as("reader_1");
    EXPECT_EQ(reader.text("SELECT last_seal FROM records"), toHex(sealOf(path)));
    EXPECT_EQ(reader.integer("SELECT count(*) FROM found WHERE words @@ to_tsquery('simple', 'deck & long:*')"), 1);
}

TEST_F(Publishing, sends_a_photo_again_of_which_the_server_lost_bytes) {
    const std::string path = recordWithPhotos("vale.caprail");
    Connection bench = as("bench_1");
    published(bench, path);
    const auto before = counts();
    for (const char* damage : {"DELETE FROM attachment_piece WHERE bytes = 'small picture'",
                               "DELETE FROM attachment_piece WHERE piece = 2", // the last of three
                               "DELETE FROM attachment_piece WHERE piece = 0 AND length(bytes) > 100",
                               "UPDATE attachment_piece SET bytes = 'small' WHERE bytes = 'small picture'",
                               "DELETE FROM record_attachment WHERE sha256 = sha256('small picture')"}) {
        Connection owner = as("postgres");
        done(owner.run("SET session_replication_role = replica")); // no trigger hinders
        done(owner.run(damage));
        const bool isBytes = std::string_view(damage).find("record_attachment") == std::string_view::npos;
        const Published again = published(bench, path);
        EXPECT_EQ(again.photos, isBytes ? 1 : 0) << damage;
        EXPECT_EQ(again.entries, 0);
        EXPECT_EQ(sentenceOf(again), isBytes ? "One photo or file sent." : sentenceOf({}));
        EXPECT_EQ(counts(), before) << damage;
        Connection reader = as("reader_1");
        const auto whole = verifyHeld(reader, toHex(sealOf(path, 1)));
        EXPECT_TRUE(whole) << damage << ": " << whole.error().sentence;
        EXPECT_EQ(published(bench, path).what, Published::What::nothingNew);
    }
    Connection owner = as("postgres");
    done(owner.run("SET session_replication_role = replica"));
    done(owner.run("DELETE FROM attachment_piece"));
    addNote(path, "deck is flat");
    EXPECT_EQ(published(bench, path).photos, 2) << "likewise where there is an entry to send";
}

TEST_F(Publishing, says_of_a_record_what_its_shop_s_list_says) {
    shoptest::Maker maker;
    maker.begin("Orrin Vale", "6.2 V8");
    maker.readyToClose();
    maker.close();
    shoptest::write(folder / "vale.caprail", maker.ledger);
    Connection bench = as("bench_1");
    published(bench, folder / "vale.caprail");
    const RecordDigest said = digest(maker.ledger);
    Connection reader = as("reader_1");
    EXPECT_EQ(reader.text("SELECT state FROM records"), "signed off");
    EXPECT_EQ(reader.text("SELECT customer || '|' || serial || '|' || file_name || '|' || published_by FROM records"),
              "Orrin Vale|KL-1|vale.caprail|bench_1");
    EXPECT_EQ(reader.text("SELECT CAST(calibration_due AS text) FROM records"), format(*said.summary.due));
    EXPECT_EQ(reader.integer("SELECT CAST(extract(epoch FROM last_entry_at) * 1000 AS bigint) FROM records"),
              said.summary.lastEntry.milliseconds);
    EXPECT_EQ(reader.integer("SELECT count(*) FROM banded_values"),
              static_cast<std::int64_t>(said.figures.banded.size()));
    const BandedFigure& one = said.figures.banded.front();
    EXPECT_EQ(reader.integer("SELECT value_nm FROM banded_values WHERE build = 1 AND band = '" + one.band +
                             "' AND place = '" + one.place + "'"),
              one.value.value());
    EXPECT_EQ(reader.integer("SELECT CAST(sum(times_pulled) AS bigint) FROM movements"),
              std::accumulate(said.figures.pulls.begin(), said.figures.pulls.end(), std::int64_t{0},
                              [](std::int64_t sum, const PullFigure& pull) { return sum + pull.pulled; }));
    EXPECT_EQ(reader.integer("SELECT min(torque_millinewton_metres) FROM fastener_torques WHERE fastener LIKE 'main%'"),
              poundFeet(70).value());
    EXPECT_EQ(reader.text("SELECT CAST(min(due) AS text) FROM instruments_due"), format(*said.summary.due));
}

TEST_F(Publishing, lists_a_record_whose_texts_are_longer_than_an_index_takes) {
    std::string customer, engine, serial;
    std::uint32_t random = 1; // what repeats itself would be packed
    for (std::string* text : {&customer, &engine, &serial}) {
        while (text->size() < 9000) {
            random = random * 1664525U + 1013904223U;
            *text += std::string("\xF0\xA0\x80") + static_cast<char>(0x80 + (random >> 26U)); // four bytes each
        }
    }
    shoptest::Maker maker;
    maker.begin(customer, engine, serial);
    shoptest::write(folder / "long.caprail", maker.ledger);
    Connection bench = as("bench_1");
    published(bench, folder / "long.caprail");
    Connection reader = as("reader_1");
    const auto listed = reader.text("SELECT customer FROM listing");
    ASSERT_TRUE(listed) << listed.error().sentence;
    EXPECT_EQ(*listed, customer.substr(0, 199UL * 4) + "…") << "no sign is cut in two";
    EXPECT_TRUE(verifyHeld(reader, toHex(sealOf(folder / "long.caprail", 1))));
}

TEST_F(Publishing, finds_the_engines_of_a_lot_but_not_by_an_entry_that_was_struck) {
    shoptest::Maker maker;
    maker.begin("Orrin Vale", "6.2 V8");
    PartEntered shells;
    shells.sort = PartSort::mainShells;
    shells.what = "main shells";
    shells.lot = "L-77";
    const std::int64_t entry = maker.make(shells);
    shoptest::write(folder / "vale.caprail", maker.ledger);
    Connection bench = as("bench_1");
    published(bench, folder / "vale.caprail");
    Connection reader = as("reader_1");
    EXPECT_EQ(reader.text("SELECT customer || ': ' || what FROM lots WHERE lot = 'L-77'"), "Orrin Vale: main shells");
    maker.make(Struck{entry, "they are of another lot"});
    std::filesystem::remove(folder / "vale.caprail");
    shoptest::write(folder / "vale.caprail", maker.ledger);
    published(bench, folder / "vale.caprail");
    EXPECT_EQ(reader.integer("SELECT count(*) FROM lots"), 0);
    EXPECT_EQ(reader.integer("SELECT struck_by - number FROM entries WHERE struck_by IS NOT NULL"), 1);
}

TEST_F(Publishing, refuses_another_history_of_the_same_record_and_says_where_they_part) {
    const std::string path = folder / "vale.caprail";
    shoptest::write(path, shoptest::shortLedger("Orrin Vale", "6.2 V8"));
    std::filesystem::copy_file(path, folder / "other.caprail");
    const std::int64_t common = sizeOf(path);
    for (const char* text : {"one", "two", "three"}) {
        addNote(path, text);
    }
    for (const char* text : {"one", "zwei", "drei", "vier"}) {
        addNote(folder / "other.caprail", text);
    }
    Connection bench = as("bench_1");
    published(bench, path);
    const auto before = counts();
    const auto refused = publishRecord(bench, folder / "other.caprail");
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("other.caprail"));
    EXPECT_THAT(refused.error().sentence, HasSubstr("differ from entry " + std::to_string(common + 2) + " on"));
    EXPECT_EQ(counts(), before);
    EXPECT_FALSE(bench.isOffline()) << "to try again is of no use";
}

TEST_F(Publishing, leaves_a_longer_record_as_it_is_when_an_older_copy_comes) {
    const std::string path = folder / "vale.caprail";
    shoptest::write(path, shoptest::shortLedger("Orrin Vale", "6.2 V8"));
    std::filesystem::copy_file(path, folder / "old.caprail");
    addNote(path, "deck is flat");
    Connection bench = as("bench_1");
    published(bench, path);
    const auto before = counts();
    const Published old = published(bench, folder / "old.caprail");
    EXPECT_EQ(old.what, Published::What::olderCopy);
    EXPECT_EQ(old.ahead, 1);
    EXPECT_EQ(counts(), before);
}

TEST_F(Publishing, stores_nothing_of_an_altered_record) {
    const std::string path = recordWithPhotos("vale.caprail");
    samples::alter(path, "UPDATE note_added SET text = 'crank from the short shelf'");
    Connection bench = as("bench_1");
    const auto refused = publishRecord(bench, path);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("vale.caprail"));
    EXPECT_EQ(sum(counts()), 0);
}

TEST_F(Publishing, says_of_a_record_without_an_entry_that_there_is_nothing_to_send) {
    { ASSERT_TRUE(RecordFile::create(folder / "empty.caprail")); }
    Connection bench = as("bench_1");
    const auto refused = publishRecord(bench, folder / "empty.caprail");
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("holds no entry yet"));
}

TEST_F(Publishing, by_two_at_a_time_leaves_the_longer_history_once) {
    const std::string path = folder / "vale.caprail";
    shoptest::write(path, shoptest::shortLedger("Orrin Vale", "6.2 V8"));
    std::filesystem::copy_file(path, folder / "old.caprail");
    addPhoto(path, "small picture");
    for (int round = 0; round < 4; ++round) {
        const auto publish = [&](const std::string& file) {
            Connection bench = as("bench_1");
            published(bench, file);
        };
        std::thread one(publish, path), two(publish, folder / "old.caprail"), three(publish, path);
        one.join();
        two.join();
        three.join();
        const auto all = counts();
        EXPECT_EQ(all.at("record"), 1);
        EXPECT_EQ(all.at("entry"), sizeOf(path));
        EXPECT_EQ(all.at("listing"), 1);
        EXPECT_EQ(all.at("attachment"), 1);
        Connection reader = as("reader_1");
        EXPECT_TRUE(verifyHeld(reader, toHex(sealOf(path, 1))));
        Connection keeper = as("keeper_1");
        EXPECT_TRUE(keeper.run("SELECT take_away(identity) FROM record"));
    }
}

TEST_F(Publishing, stopped_by_a_person_leaves_nothing) {
    const std::string path = recordWithPhotos("vale.caprail");
    Connection bench = as("bench_1");
    std::stop_source stop;
    const auto stopped =
        publishRecord(bench, path, stop.get_token(), [&](std::int64_t, std::int64_t) { stop.request_stop(); });
    ASSERT_FALSE(stopped);
    EXPECT_THAT(stopped.error().sentence, HasSubstr("was stopped: nothing of this record was stored"));
    EXPECT_EQ(sum(counts()), 0);
}

} // namespace
