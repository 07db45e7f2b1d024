// SPDX-License-Identifier: GPL-3.0-or-later
/// Ledgers that go past the gates, that two readers would read differently, that a wrong clock made, or that were
/// altered and salvaged.
#include "ledger_attacks.h"

#include <store/text/text_form.h>
#include <utility>

namespace caprail::attack {

namespace {

/// What a record of `text` is called by everything that lists, prints or draws it.
bool isCalledClosed(const std::string& record, const std::string& folder) {
    const Answer shown = caprail({"show", record});
    const Answer json = caprail({"show", record, "--json"});
    const Answer list = caprail({"shop", folder, "--list"});
    const std::string pdf = folder + "/sheet.pdf";
    const Answer sheet = caprail({"sheet", record, pdf});
    EXPECT_EQ(sheet.exitCode, 0) << sheet.err;
    const std::string words = wordsOf(pdf);
    EXPECT_NE(words.find("Not signed off"), std::string::npos) << "the sheet's first page says where it stands";
    std::filesystem::remove(pdf);
    return shown.says(", closed") || !json.says("\"closed\": false") || list.says("signed off") ||
           words.find("Closed and signed off") != std::string::npos || words.find("Signed off by") != std::string::npos;
}

} // namespace

TEST(AttackLedgers, an_import_that_breaks_every_gate_is_named_and_never_called_signed_off) {
    Count count;
    const std::string begin = sampleText("mid-survey");
    const std::string moved = sampleText("moved-in-verify-round");
    const std::string signOff = line("signed_off", "\"statement\":\"All is well.\"");
    const std::string nothing = line("person_added", R"("name":"Mira Solheim","role":"")");
    const std::pair<std::string, std::string> ledgers[] = {
        {"gates never opened", begin + closingLines()},
        {"closed before anything was known", nothing + closingLines()},
        {"a nut that moved", moved + closingLines()},
        {"a sign-off alone", begin + signOff},
        {"closing first, measuring after", moved + closingLines() + line("note_added", "\"text\":\"x\"")}};
    for (const auto& [name, text] : ledgers) {
        const Folder folder;
        const std::string record = folder / "a.caprail";
        write(folder / "a.jsonl", text);
        const Answer made = caprail({"import", folder / "a.jsonl", record});
        count.held(made.exitCode == 1 && made.says("was not allowed when it was made") &&
                       made.says("by the rules of Caprail"),
                   "import: " + name, made);
        const Answer checked = caprail({"check", record});
        count.held(checked.exitCode == 1 && checked.says("was not allowed when it was made"), "check: " + name,
                   checked);
        const Answer shown = caprail({"show", record});
        count.held(shown.exitCode == 0 && shown.says("was never valid"), "show says why: " + name, shown);
        count.held(!isCalledClosed(record, folder.path()), "called closed: " + name, shown);
    }
}

TEST(AttackLedgers, one_entry_that_was_not_allowed_is_named_on_import_and_by_check) {
    Count count;
    const std::string begin = sampleText("mid-survey");
    const auto number = std::to_string(linesIn(begin) + 2); // one before it says that it came without a seal
    const std::pair<const char*, const char*> entries[] = {
        {"trial_fit_result", R"("item":"dipstick clear","throw_number":0,"result":"pass")"},
        {"closing_step_done", R"("step":"stacks refitted by label")"},
        {"signed_off", R"("statement":"x")"},
        {"build_begun", R"("build":2,"why":"x")"},
        {"gap_reading", R"("position":"9R","pass":1,"gap_typed":"57 thou")"},
        {"gap_reading", R"("position":"3R","pass":1,"gap_typed":"57 thou","instrument":"NO-SUCH")"},
        {"stack_built", R"("position":"3R","shims":"S999")"},
        {"struck", R"("entry":999999,"why":"x")"},
        {"struck", R"("entry":1,"why":"nobody made anything")"},
        {"judged_again", R"("check":"gap:3R","why":"x")"},
        {"round_begun", R"("round":7,"instrument":"")"},
        {"fastener_group_set",
         R"("fastener_group":"main","count":10,"thread":"9/99-3 banana","grade":"","lubricant":"","method":"torque","torque_typed":"70 lbf·ft","steps":3,"tightening_order":"","source":"")"},
        {"fastener_group_set",
         R"("fastener_group":"main","count":10,"thread":"","grade":"","lubricant":"","method":"torque","torque_typed":"70 lbf·ft","steps":3,"tightening_order":"main-9R","source":"")"}};
    for (const auto& [kind, members] : entries) {
        const Folder folder;
        write(folder / "a.jsonl", begin + line(kind, members) + line("note_added", "\"text\":\"later\""));
        const Answer made = caprail({"import", folder / "a.jsonl", folder / "a.caprail"});
        count.held(made.exitCode == 1 && made.says("Entry " + number + " "), std::string("import: ") + kind + members,
                   made);
        const Answer checked = caprail({"check", folder / "a.caprail"});
        count.held(checked.exitCode == 1 && checked.says("Entry " + number + " "), std::string("check: ") + kind,
                   checked);
        makeRecord(folder / "b.caprail");
        const std::string before = read(folder / "b.caprail");
        std::string bare = line(kind, members);
        const auto time = bare.find(",\"time\"");
        bare.erase(time, bare.find(',', time + 1) - time);
        const Answer appended = run({{"append", folder / "b.caprail", "-"}, bare});
        count.held(appended.exitCode == 1 && read(folder / "b.caprail") == before, std::string("append: ") + kind,
                   appended);
    }
}

TEST(AttackLedgers, what_two_readers_would_read_differently_is_refused) {
    Count count;
    const Folder folder;
    makeRecord(folder / "a.caprail");
    const std::string before = read(folder / "a.caprail");
    const std::string person = R"("kind":"note_added","person":"Mira Solheim",)";
    for (const std::string& members :
         {std::string(R"("text":"held","text":"moved")"), std::string(R"("text":"held","\u0074ext":"moved")"),
          std::string(R"("text":"\ud800")"), std::string(R"("text":"\udc00\ud800")"), std::string(R"("text":"\uffff")"),
          std::string(R"("person":"Eve","text":"x")"), std::string("\"text\":\"\xed\xa0\x80\"")}) {
        const Answer appended = run({{"append", folder / "a.caprail", "-"}, "{" + person + members + "}"});
        count.held(appended.isOrderly() && appended.exitCode != 0 && read(folder / "a.caprail") == before,
                   "append: " + members, appended);
        write(folder / "b.jsonl",
              sampleText("mid-survey") + "{" + person + members + ",\"time\":\"2026-10-01T08:00:00Z\"}\n");
        const Answer made = caprail({"import", folder / "b.jsonl", folder / "b.caprail"});
        count.held(made.isOrderly() && made.exitCode == 2 && !std::filesystem::exists(folder / "b.caprail"),
                   "import: " + members, made);
    }
    for (
        const char* json :
        {R"({"unit":"0.0001 in","unit":"1 mm","band":[-5,5],"largest_stack":0,"positions":[],"shims":[]})",
         R"({"unit":"0.0001 in","band":[-5,5],"largest_stack":0,"positions":[{"id":"\ud800","cap":1,"side":"left","gap":5}],"shims":[]})"}) {
        write(folder / "case.json", json);
        const Answer planned = caprail({"plan", folder / "case.json"});
        count.held(planned.exitCode == 2, std::string("plan: ") + json, planned);
    }
}

TEST(AttackLedgers, append_takes_no_time_number_or_seal_of_somebody_elses) {
    Count count;
    const Folder folder;
    makeRecord(folder / "a.caprail");
    const std::string before = read(folder / "a.caprail");
    for (const std::string& member : {std::string(R"("time":"2020-01-01T00:00:00Z")"), std::string(R"("sequence":153)"),
                                      "\"seal\":\"" + std::string(64, '0') + "\""}) {
        const Answer appended = run({{"append", folder / "a.caprail", "-"},
                                     R"({"kind":"note_added","person":"Mira Solheim","text":"x",)" + member + "}"});
        count.held(appended.exitCode == 1 && appended.says("leave “") && read(folder / "a.caprail") == before, member,
                   appended);
    }
}

TEST(AttackLedgers, a_clock_set_back_or_ahead_in_a_text_without_seals_is_refused) {
    Count count;
    const std::string begin = sampleText("mid-survey");
    const std::string number = std::to_string(linesIn(begin) + 1);
    const std::pair<const char*, const char*> clocks[] = {
        {"2020-01-01T00:00:00.000Z", "is before that of the line above it"},
        {"1970-01-01T00:00:00.000Z", "is before that of the line above it"},
        {"2199-01-01T00:00:00.000Z", "lies in the future"},
        {"9999-12-31T23:59:59.999Z", "lies in the future"}};
    for (const auto& [time, words] : clocks) {
        const Folder folder;
        write(folder / "a.jsonl", begin + line("note_added", "\"text\":\"x\"", time));
        const Answer made = caprail({"import", folder / "a.jsonl", folder / "a.caprail"});
        count.held(made.exitCode == 2 && made.says(words) && made.says("line " + number), std::string("import: ") + time,
                   made);
        count.held(!std::filesystem::exists(folder / "a.caprail"), std::string("nothing is made: ") + time, made);
    }
}

/// What carries its seals may have been made under a wrong clock: it is taken, and everything that reads it says so.
TEST(AttackLedgers, a_clock_set_back_or_ahead_in_a_text_with_seals_is_said_everywhere) {
    Count count;
    const Folder folder;
    makeRecord(folder / "begin.caprail");
    const auto begin = RecordFile::open(folder / "begin.caprail", OpenMode::readOnly);
    ASSERT_TRUE(begin) << begin.error().sentence;
    const std::string last = std::to_string(begin->ledger().size());
    const std::pair<const char*, std::string> clocks[] = {{"2020-01-01T00:00:00.000Z", "is older than entry " + last},
                                                          {"1970-01-01T00:00:00.000Z", "is older than entry " + last},
                                                          {"2199-01-01T00:00:00.000Z", "lies in the future"},
                                                          {"9999-12-31T23:59:59.999Z", "lies in the future"}};
    for (const auto& [time, words] : clocks) {
        const Folder other;
        Ledger ledger = begin->ledger();
        ledger.append(parseUtcTime(time).value(), "Mira Solheim", NoteAdded{"", "x"});
        ASSERT_TRUE(exportLedger(ledger, other / "a.jsonl"));
        const Answer made = caprail({"import", other / "a.jsonl", other / "a.caprail"});
        count.held(made.isOrderly() && made.says(words), std::string("import: ") + time, made);
        const Answer checked = caprail({"check", other / "a.caprail"});
        count.held(checked.says("is sound") && checked.says(words), std::string("check: ") + time, checked);
        const Answer shown = caprail({"show", other / "a.caprail"});
        count.held(shown.exitCode == 0 && shown.says(words), std::string("show: ") + time, shown);
        const Answer sheet = caprail({"sheet", other / "a.caprail", other / "a.pdf"});
        count.held(wordsOf(other / "a.pdf", "-l 1").find("look at the clock") != std::string::npos,
                   std::string("sheet: ") + time, sheet);
    }
}

TEST(AttackLedgers, a_salvaged_record_says_so_for_ever) {
    Count count;
    const Folder folder;
    makeRecord(folder / "a.caprail", "closed");
    std::string bytes = read(folder / "a.caprail");
    const auto name = bytes.find("LEAVES-2");
    ASSERT_NE(name, std::string::npos);
    bytes[name + 7] = '3';
    write(folder / "altered.caprail", bytes);
    const Answer altered = caprail({"check", folder / "altered.caprail"});
    count.held(altered.exitCode == 1, "altered, by check", altered);
    const Answer salvaged = caprail({"salvage", folder / "altered.caprail", folder / "new.caprail"});
    count.held(salvaged.exitCode == 1 && salvaged.says("did not fit"), "salvage tells of it", salvaged);
    const Answer again = caprail({"salvage", folder / "altered.caprail", folder / "new.caprail"});
    count.held(again.exitCode == 2 && again.says("exists already"), "salvage overwrites nothing", again);
    for (const auto& arguments :
         std::vector<std::vector<std::string>>{{"check", folder / "new.caprail"}, {"show", folder / "new.caprail"}}) {
        const Answer answer = caprail(arguments);
        count.held(answer.says("salvaged on") && answer.says("altered.caprail") && answer.says("did not fit"),
                   arguments[0], answer);
    }
    std::ifstream lines(SAMPLE_BUILDS "/closed.jsonl");
    const auto entries = std::count(std::istreambuf_iterator<char>(lines), {}, '\n');
    const Answer strike = run({{"append", folder / "new.caprail", "-"},
                               R"({"kind":"struck","person":"Mira Solheim","why":"look away","entry":)" +
                                   std::to_string(entries + 1) + "}"});
    count.held(strike.exitCode == 1, "the telling entry is struck", strike);
    // Through text and back, and in what the customer gets, it is still there.
    EXPECT_EQ(caprail({"export", folder / "new.caprail", "--ledger", folder / "new.jsonl"}).exitCode, 0);
    const Answer imported = caprail({"import", folder / "new.jsonl", folder / "third.caprail"});
    count.held(imported.says("salvaged on"), "import of its text", imported);
    const Answer handed = caprail({"handover", folder / "third.caprail", folder / "out"});
    EXPECT_EQ(handed.exitCode, 0) << handed.err;
    count.held(read(folder / "out/history.txt").find("Salvaged from altered.caprail") != std::string::npos,
               "history", handed);
    count.held(wordsOf(folder / "out/build-sheet.pdf", "-l 1").find("salvaged on") != std::string::npos,
               "the sheet's first page", handed);
    count.held(caprail({"check", folder / "a.caprail"}).says("is sound"), "the sound one is still called sound");
}

} // namespace caprail::attack
