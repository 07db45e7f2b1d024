// SPDX-License-Identifier: GPL-3.0-or-later
#include "shop_records.h"

#include <gmock/gmock.h>
#include <shop/entry_text.h>
#include <shop/shelf.h>
#include <shop/templates.h>

namespace caprail {
namespace {

using namespace shoptest;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

EngineTemplate sample(const std::string& name = "Three mains, race") {
    return *templateFrom(shortLedger("Orrin Vale", "V8"), {name, 1, "the maker's manual, page 12"});
}

TEST(EngineTemplate, holds_what_is_in_force_in_a_record_and_nothing_of_its_customer) {
    Maker maker;
    maker.begin("Orrin Vale", "V8");
    maker.band(bands::residual, -1, 1); // set anew: the later one is in force
    const auto t = templateFrom(maker.ledger, {"x", 1, ""});
    ASSERT_TRUE(t);
    EXPECT_THAT(t->entries, SizeIs(9)); // layout, rules, three bands, four groups
    const std::string lines = toLines(*t);
    EXPECT_EQ(lines.find("Orrin"), std::string::npos);
    const auto again = templateFromLines(lines, "none");
    ASSERT_TRUE(again) << again.error().sentence;
    EXPECT_EQ(again->note, t->note);
    EXPECT_EQ(toLines(*again), lines);
    EXPECT_THAT(lines, HasSubstr("\"lo_nm\":-25400"));
}

TEST(EngineTemplate, carries_the_shops_own_checks_but_not_those_withdrawn) {
    Maker maker;
    maker.begin("Orrin Vale", "V8");
    OwnCheckSet tray;
    tray.ownCheck = "tray";
    tray.words = "windage tray clear of every throw";
    maker.make(tray);
    tray.ownCheck = "plugs";
    tray.places = 0;
    maker.make(tray);
    const auto t = templateFrom(maker.ledger, {"x", 1, ""});
    ASSERT_TRUE(t);
    EXPECT_THAT(toLines(*t), HasSubstr("windage tray"));
    EXPECT_EQ(toLines(*t).find("\"plugs\""), std::string::npos);
    EXPECT_TRUE(templateFromLines(toLines(*t), "none"));
}

TEST(EngineTemplate, names_itself_in_the_records_that_it_begins) {
    Facts facts;
    Ledger ledger;
    const auto entries = entriesFrom(toLines(sample()));
    ASSERT_TRUE(entries);
    for (const Body& body : *entries) {
        ASSERT_TRUE(admit(facts, "Mira", body));
        apply(facts, ledger.append(morning, "Mira", body));
    }
    ASSERT_TRUE(templateNoteOf(facts));
    EXPECT_EQ(*templateNoteOf(facts), (TemplateNote{"Three mains, race", 1, "the maker's manual, page 12"}));
    EXPECT_TRUE(facts.layout);
}

TEST(EngineTemplate, refuses_what_is_none) {
    EXPECT_THAT(templateFrom(Ledger(), {"x", 1, ""}).error().sentence, HasSubstr("no engine layout"));
    EXPECT_THAT(templateFrom(shortLedger("a", "b"), {" ", 1, ""}).error().sentence, HasSubstr("a name of one line"));
    const std::string note = entryLine(toNote({"x", 1, ""})) + "\n";
    EXPECT_THAT(templateFromLines(note, "").error().sentence, HasSubstr("needs an engine layout"));
    EXPECT_THAT(templateFromLines(note + entryLine(PersonAdded{"Mira", ""}), "").error().sentence,
                HasSubstr("Person added"));
    EXPECT_THAT(templateFromLines("{\"kind\":", "").error().sentence, HasSubstr("Line 1"));
    BandSet wrong{"residual", {thou(1), ""}, {thou(-1), ""}, {}, ""};
    EXPECT_FALSE(templateFromLines(entryLine(LayoutSet{}) + "\n" + entryLine(wrong), "x"));
}

class Templates : public testing::Test {
protected:
    Folder folder;
    TemplateFolder templates{folder / "templates"};
};

TEST_F(Templates, are_kept_with_a_revision_that_grows_and_change_no_record) {
    EXPECT_THAT(templates.all(), IsEmpty());
    EXPECT_EQ(templates.keep(sample()), 1);
    write(folder / "begun.caprail", [&] {
        Ledger ledger;
        const auto entries = entriesFrom(toLines(*templates.named("Three mains, race")));
        for (const Body& body : *entries) {
            ledger.append(morning, "Mira", body);
        }
        return ledger;
    }());
    const std::string before = bytesOf(folder / "begun.caprail");
    EXPECT_EQ(templates.keep(sample()), 2);
    EXPECT_EQ(bytesOf(folder / "begun.caprail"), before);
    EXPECT_THAT(templates.all(), SizeIs(1));
    ASSERT_TRUE(templates.remove("Three mains, race"));
    EXPECT_THAT(templates.remove("Three mains, race").error().sentence, HasSubstr("no template"));
}

TEST_F(Templates, are_shared_as_a_file) {
    ASSERT_TRUE(templates.keep(sample()));
    ASSERT_TRUE(templates.exportFile("Three mains, race", folder / "out.jsonl"));
    EXPECT_FALSE(templates.exportFile("Three mains, race", folder / "out.jsonl")) << "nothing is overwritten";
    TemplateFolder other(folder / "other");
    const auto imported = other.importFile(folder / "out.jsonl");
    ASSERT_TRUE(imported) << imported.error().sentence;
    EXPECT_EQ(imported->note.sources, "the maker's manual, page 12");
    ASSERT_TRUE(other.keep(sample()));
    EXPECT_THAT(other.importFile(folder / "out.jsonl").error().sentence, HasSubstr("revision 2"));
    std::ofstream(folder / "letter.jsonl") << "Dear sir";
    EXPECT_THAT(other.importFile(folder / "letter.jsonl").error().sentence, HasSubstr("not a usable template"));
}

TEST_F(Templates, of_any_name_keep_apart_and_one_that_is_broken_is_told) {
    for (const char* name : {"a/b", "a:b", "../x", ".hidden", "ü ✓", "line", "CON"}) {
        ASSERT_TRUE(templates.keep(sample(name))) << name;
        ASSERT_TRUE(templates.named(name)) << name;
    }
    EXPECT_THAT(templates.all(), SizeIs(7));
    EXPECT_FALSE(std::filesystem::exists(folder / "x.jsonl"));
    std::ofstream(folder / "templates/broken.jsonl") << "{}";
    std::vector<std::string> problems;
    EXPECT_THAT(templates.all(&problems), SizeIs(7));
    ASSERT_THAT(problems, SizeIs(1));
    EXPECT_THAT(problems.front(), HasSubstr("broken.jsonl"));
}

TEST(ShelfFile, gives_people_instruments_and_kits_back_and_is_empty_when_it_is_not_there) {
    const Folder folder;
    Maker maker;
    maker.begin("Orrin Vale", "V8");
    maker.kit();
    maker.make(ShimSetAside{"S-1L", true, "bent"});
    Shelf shelf;
    keepFrom(shelf, maker.facts, "box 3");
    ASSERT_THAT(shelf.kits, SizeIs(1));
    EXPECT_THAT(shelf.kits.front().shims, SizeIs(5)) << "the bent one stays out";
    const std::string path = folder / "config/shelf.json";
    EXPECT_TRUE(readShelf(path)->people.empty());
    ASSERT_TRUE(writeShelf(path, shelf));
    const auto again = readShelf(path);
    ASSERT_TRUE(again) << again.error().sentence;
    EXPECT_EQ(again->kits, shelf.kits);
    EXPECT_EQ(again->people.front().name, "Mira Solheim");
    EXPECT_EQ(again->instruments.size(), 6U);
    std::ofstream(path) << "{\"version\": 99}";
    EXPECT_THAT(readShelf(path).error().sentence, HasSubstr("newer version"));
    std::ofstream(path) << "not JSON";
    EXPECT_THAT(readShelf(path).error().sentence, HasSubstr("Mend the file"));
}

TEST(Shelf, is_copied_into_a_record_once_and_brings_a_new_calibration) {
    Maker source;
    source.begin("Orrin Vale", "V8");
    source.kit();
    Shelf shelf;
    keepFrom(shelf, source.facts, "box 3");
    Maker target("Jon Berg");
    target.make(PersonAdded{"Jon Berg", "assembler"});
    const auto addAll = [&] {
        std::size_t count = 0;
        for (const auto& bodies : {peopleToAdd(shelf, target.facts), instrumentsToAdd(shelf, target.facts),
                                   shimsToAdd(shelf.kits.front(), target.facts)}) {
            for (const Body& body : bodies) {
                target.make(body);
                ++count;
            }
        }
        return count;
    };
    EXPECT_EQ(addAll(), 1U + 6U + 18U);
    EXPECT_EQ(addAll(), 0U);
    shelf.instruments.front().due = Date{21'000};
    EXPECT_EQ(addAll(), 1U);
    EXPECT_EQ(target.facts.shims.at("S-1L").measured(), thou(50));
    // The record stands alone: nothing of the shelf changes it.
    const Seal seal = target.ledger.seal();
    shelf.people.clear();
    EXPECT_EQ(target.ledger.seal(), seal);
}

TEST(SafeName, holds_nothing_that_a_file_system_or_a_shell_could_take_amiss) {
    EXPECT_EQ(safeName("Vale, 6.2 V8", "x"), "Vale- 6.2 V8");
    EXPECT_EQ(safeName("../../etc/passwd", "x"), "etc-passwd");
    EXPECT_EQ(safeName("-rf", "x"), "rf");
    EXPECT_EQ(safeName("…//\n", "photo"), "photo");
    EXPECT_EQ(safeName("Müller 🔧", "x"), "Müller -");
    EXPECT_LE(safeName(std::string(300, 'n'), "x").size(), 80U);
}

} // namespace
} // namespace caprail
