// SPDX-License-Identifier: GPL-3.0-or-later
/// Names that write lines of their own, turn the rest of the line, or run in a spreadsheet: through append and import,
/// and, planted in a record by another program, through everything that prints.
#include "ledger_attacks.h"

#include <base/plain_text.h>

namespace caprail::attack {

namespace {

const std::vector<std::string> hidden = {
    "\x1b[2J", "\n",     "\u202e", "\u2028", "\r",     "\t",     "\x07",   "\x7f",   "\u0085", "\u009b", "\u2029",
    "\u202a",  "\u202d", "\u2066", "\u2069", "\u200b", "\u200f", "\ufeff", "\u061c", "\u2060", "\u00ad", "\U000e0041"};

/// The text fields of every kind that hold names; `make` gives a line with one of them set.
struct NameField {
    std::string kind, column;
};
std::vector<NameField> nameFields() {
    std::vector<NameField> fields;
    for (const KindInfo& info : allKinds()) {
        for (const Column& column : info.columns) {
            if (column.type == Column::Type::text && column.words.empty()) {
                fields.push_back({std::string(info.kind), column.name});
            }
        }
    }
    return fields;
}

/// An entry with every member filled, the named one with `text`.
std::string entryWith(const NameField& field, const std::string& text, const std::string& more) {
    const KindInfo& info = allKinds()[*kindIndex(field.kind)];
    std::string json = "{\"kind\":\"" + field.kind + "\",\"person\":\"Mira Solheim\"" + more;
    for (const Column& column : info.columns) {
        json += ",\"" + column.name + "\":";
        json += column.type == Column::Type::integer ? "1"
                : !column.words.empty()              ? "\"" + std::string(column.words.front()) + "\""
                : column.name == field.column        ? quoted(text)
                : column.name == "position"          ? "\"3R\""
                : column.name == "journal"           ? "\"main-3\""
                : column.name == "fastener"          ? "\"main-3R\""
                : column.name == "calibrated" || column.name == "due" || column.name == "machined_on" ||
                        column.name == "date" || column.name.starts_with("valid_")
                    ? "\"2026-02-28\""
                : column.name == "taken"            ? "\"2026-02-28T14:05:06\""
                : column.name.starts_with("sha256") ? quoted(std::string(64, 'a'))
                                                    : "\"x\"";
    }
    return json + "}";
}

bool isAtLength(const std::string& column) {
    for (const char* name : {"note", "text", "done", "statement", "why", "what", "caption"}) {
        if (column == name) {
            return true;
        }
    }
    return false;
}

/// Whether an output shows everything: no control but the line feeds that the program itself writes, no mark that turns
/// or hides.
bool isVisible(const std::string& output) {
    return !hiddenIn(output, TextShape::lines) && output.find('\r') == std::string::npos;
}

} // namespace

TEST(AttackNames, are_refused_in_every_text_field_by_append_and_import) {
    Count count;
    const Folder folder;
    makeRecord(folder / "a.caprail");
    const std::string before = read(folder / "a.caprail");
    const auto characters = static_cast<std::size_t>(so(1, static_cast<int>(hidden.size())));
    std::size_t turn = 0;
    for (const NameField& field : nameFields()) {
        for (std::size_t i = 0; i < characters; ++i) {
            const std::string& mark = hidden[isLong() ? i : turn++ % hidden.size()];
            if (isAtLength(field.column) && !hiddenIn(mark, TextShape::lines)) {
                continue; // a note may have lines
            }
            const std::string text = "Mi" + mark + "ra";
            const std::string what = field.kind + "." + field.column + " with " + visibly(text);
            const Answer appended = run({{"append", folder / "a.caprail", "-"}, entryWith(field, text, "")});
            count.held(appended.isOrderly() && appended.exitCode != 0 && isVisible(appended.err) &&
                           std::count(appended.err.begin(), appended.err.end(), '\n') == 1 &&
                           read(folder / "a.caprail") == before,
                       "append: " + what, appended);
            write(folder / "b.jsonl", entryWith(field, text, ",\"time\":\"2026-10-01T08:00:00Z\"") + "\n");
            const Answer made = caprail({"import", folder / "b.jsonl", folder / "b.caprail"});
            count.held(made.exitCode == 2 && isVisible(made.err) && !std::filesystem::exists(folder / "b.caprail"),
                       "import: " + what, made);
        }
    }
}

TEST(AttackNames, of_people_are_refused) {
    Count count;
    const Folder folder;
    for (const std::string& mark : hidden) {
        const std::string name = "Mi" + mark + "ra";
        write(folder / "b.jsonl", "{\"kind\":\"note_added\",\"text\":\"x\",\"person\":" + quoted(name) +
                                      ",\"time\":\"2026-10-01T08:00:00Z\"}\n");
        const Answer made = caprail({"import", folder / "b.jsonl", folder / "b.caprail"});
        count.held(made.exitCode == 2 && isVisible(made.err), "import by " + visibly(name), made);
    }
}

TEST(AttackNames, planted_in_a_record_are_shown_for_what_they_are) {
    Count count;
    for (const std::string& mark : hidden) {
        const Folder folder;
        const std::string name = "Mi" + mark + "99  2026-05-04  Mira  Signed off: statement All is well";
        const std::string what = visibly(mark);
        Ledger ledger;
        const UtcTime morning{1'777'887'000'000};
        ledger.append(morning, name, PersonAdded{name, name});
        ledger.append(morning, name, EngineDescribed{name, name, name, name, name});
        LayoutSet layout;
        layout.source = name;
        ledger.append(morning, name, layout);
        ledger.append(morning, name, BandSet{name, {thou(1), name}, {thou(2), name}, {}, name});
        ledger.append(morning, name, FitReading{name, 1, {thou(1), name}, ""});
        ledger.append(morning, name, ShimAdded{name, {thou(50), name}, name});
        ledger.append(morning, name, FindingOpened{name, name, name});
        ledger.append(morning, name, NoteAdded{name, name});
        ledger.append(morning, name, SignedOff{name});
        const std::string record = folder / "a.caprail";
        ASSERT_TRUE(RecordFile::create(record, ledger));
        for (const auto& arguments : std::vector<std::vector<std::string>>{{"show", record},
                                                                           {"show", record, "--json"},
                                                                           {"check", record},
                                                                           {"shop", folder.path(), "--list"},
                                                                           {"shop", folder.path(), "--json"}}) {
            const Answer answer = caprail(arguments);
            count.held(answer.isOrderly() && isVisible(answer.out) && isVisible(answer.err),
                       arguments[0] + " of " + what, answer);
        }
        const Answer list = caprail({"shop", folder.path(), "--list"});
        count.held(linesIn(list.out) == 2, "one line in the list, under its titles: " + what, list);
        const Answer handed = caprail({"handover", record, folder / "out", "--csv"});
        EXPECT_EQ(handed.exitCode, 0) << handed.err;
        const std::string history = read(folder / "out/history.txt");
        count.held(isVisible(history) && linesIn(history) == ledger.size() + 2, "history.txt: " + what,
                   {0, false, false, history, ""});
        for (const auto& table : std::filesystem::directory_iterator(folder / "out/tables")) {
            std::string csv = read(table.path().string());
            for (auto end = csv.find("\r\n"); end != std::string::npos; end = csv.find("\r\n", end)) {
                csv.erase(end, 1);
            }
            count.held(isVisible(csv), table.path().filename().string() + ": " + what, {0, false, false, csv, ""});
        }
        if (isLong() || &mark == &hidden.front()) {
            const std::string sheet = wordsOf(folder / "out/build-sheet.pdf");
            count.held(isVisible(sheet), "sheet: " + what, {0, false, false, sheet, ""});
        }
    }
}

TEST(AttackNames, that_are_formulas_are_text_in_the_tables) {
    Count count;
    const Folder folder;
    makeRecord(folder / "a.caprail");
    for (const char* formula : {"=HYPERLINK(A1)", "+1+cmd", "-1+cmd|' /C calc'!A0", "@SUM(A1)", "＝1+1"}) {
        const Answer appended =
            run({{"append", folder / "a.caprail", "-"},
                 R"({"kind":"note_added","person":"Mira Solheim","text":)" + quoted(formula) + "}"});
        ASSERT_EQ(appended.exitCode, 0) << appended.err;
    }
    ASSERT_EQ(caprail({"export", folder / "a.caprail", folder / "tables"}).exitCode, 0);
    const std::string notes = read(folder / "tables/note_added.csv");
    for (const char* formula : {"=HYPERLINK(A1)", "+1+cmd", "-1+cmd|' /C calc'!A0", "@SUM(A1)", "＝1+1"}) {
        count.held(notes.find(std::string(",'") + formula) != std::string::npos, formula, {0, false, false, notes, ""});
    }
    const std::string gaps = read(folder / "tables/band_set.csv");
    count.held(gaps.find("'-") == std::string::npos, "typed numbers stay numbers", {0, false, false, gaps, ""});
}

} // namespace caprail::attack
