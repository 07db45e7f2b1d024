// SPDX-License-Identifier: GPL-3.0-or-later
#include "verb_table.h"

#include "verbs.h"

#include <algorithm>

namespace caprail::verbs {

namespace {

constexpr OptionText letter{"letter", "", "paper is US Letter; otherwise A4"};
constexpr OptionText metric{"metric", "", "millimetres and N·m; otherwise inches and lbf·ft"};
constexpr OptionText replace{"replace", "", "take the place of a sheet that was made before"};
constexpr OptionText keyName{"key", "NAME", "which of your keys signs; otherwise the only one there is"};
constexpr OptionText passphraseFd{"passphrase-fd", "N",
                                  "read the passphrase from this open file, for scripts; otherwise it is asked on the terminal"};
constexpr OptionText json{"json", "", "as JSON, for another program"};

const char* const exitCodes = "Exit codes: 0 done or yes, 1 the answer is no, 2 the input is unusable, 64 wrong usage.\n";

QString text(const char* utf8) {
    return QString::fromUtf8(utf8);
}

QString wrapped(const QString& paragraph, const QString& indent) {
    constexpr qsizetype width = 100;
    QString lines;
    QString line = indent;
    for (const QString& word : paragraph.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (line.size() + 1 + word.size() > width && line.size() > indent.size()) {
            lines += line + QLatin1Char('\n');
            line = indent;
        }
        line += (line.size() > indent.size() ? QStringLiteral(" ") : QString()) + word;
    }
    return lines + line + QLatin1Char('\n');
}

QString optionName(const OptionText& option) {
    const QString name = QStringLiteral("--") + text(option.name);
    return *option.value == '\0' ? name : name + QLatin1Char(' ') + text(option.value);
}

QString callLine(const VerbText& verb, const CallText& call) {
    const QString behind = text(call.arguments);
    return QStringLiteral("caprail ") + text(verb.name) + (behind.isEmpty() ? QString() : QLatin1Char(' ') + behind);
}

} // namespace

const std::vector<VerbText>& allVerbs() {
    static const std::vector<VerbText> table{
        {"new",
         {{"FILE [--template NAME] [--engine TEXT] …", "a new record; “caprail help new” tells all of it"},
          {"--list", "the templates that it can begin with"}},
         "Makes a record, with what the template sets: layout, bands, rules and fastener groups. Without a template it "
         "begins empty. Nothing is ever written over.",
         {{"template", "NAME", "what it begins with, one of those that --list prints"},
          {"person", "NAME", "who makes it; otherwise the name last used in the window, or the account's"},
          {"engine", "TEXT", "what it is, in a few words"},
          {"customer", "TEXT", "whose engine it is"},
          {"serial", "TEXT", "its serial or block number"},
          {"shop", "TEXT", "the shop's name; otherwise the one of the preferences"},
          {"list", "", "print the names of the templates, one a line"}},
         newRecord},
        {"plan",
         {{"CASE.json [--least-twist | --least-load] [--deadline-ms N]", "the stack plan of a case, as JSON"}},
         "Chooses shim stacks for a case (gaps, kit, band) and says whether they are proven best. “caprail schema "
         "case” "
         "prints what a case is made of. The ids of positions are yours, and come back as you gave them; a record's "
         "own read 3R, "
         "and C3R is understood wherever a position is read.",
         {{"least-twist", "", "prefer a flat plate over the smallest residual"},
          {"least-load", "", "prefer the smallest largest force on a cap, by the stiffness in the case"},
          {"deadline-ms", "N", "end the search after so many milliseconds with the best plan found"}},
         plan},
        {"load",
         {{"FILE [--json] [--metric]", "the load that the girdle puts into the block"}},
         "Prints what the stacks put into the block as they stand: the force at each position with its uncertainty and "
         "its "
         "share of the main stud's preload, the plate's largest bending stress, and its stiffness with the pan rail's "
         "fasteners holding it and without. It needs the plate's thickness and metal in the layout, and is advice with "
         "its "
         "assumptions beside it.",
         {json, metric},
         load},
        {"film",
         {{"FILE --load FORCE [--speed N] [--width LENGTH] [--oil GRADE] …",
           "oil films; “caprail help film” tells all"}},
         "Looks ahead at each bearing that was measured with a micrometer: its clearance as measured and warm, and the "
         "least oil film there under a load that you name. Lengths, forces and temperatures are typed as in the "
         "window. Advice, never a verdict; nothing is stored.",
         {{"load", "FORCE", "on one bearing; without it no film is told"},
          {"speed", "N", "revolutions a minute; otherwise 6000"},
          {"width", "LENGTH", "of the shells along the journal; otherwise 0.85 in"},
          {"oil", "GRADE", "a common oil, such as 20W-50; otherwise 5W-30"},
          {"at40", "N", "its viscosity at 40 °C in mm²/s, from its data sheet"},
          {"at100", "N", "and at 100 °C"},
          {"measured-at", "TEMPERATURE", "of block and crank when they were measured; otherwise 20 °C"},
          {"block-at", "TEMPERATURE", "of the block and its oil then; otherwise 90 °C"},
          {"crank-at", "TEMPERATURE", "of the crank then; otherwise 90 °C"},
          {"block-of", "MATERIAL", "a known material or its millionths per kelvin; otherwise grey cast iron"},
          {"crank-of", "MATERIAL", "likewise; otherwise steel 4340"},
          json,
          metric},
         film},
        {"show",
         {{"FILE [--json] [--metric]", "every check, its state and reasons; the gates"}},
         "Prints what is known of the engine: every check with its verdict, the value against its band, what holds "
         "each gate "
         "and what comes next.",
         {json, metric},
         show},
        {"check",
         {{"FILE [--seal SHORT-FORM]", "integrity, seals, version; whether a printed seal fits"},
          {"FILE --signed-by KEY", "whether all of it is signed by a key, and sound"}},
         "Tells whether a file is whole, of a known version and sealed by an unbroken chain, then judges every entry "
         "as if it "
         "were made in the window. Nothing is written.",
         {{"seal", "SHORT-FORM",
           "the five groups of four digits of a sheet: does the file end there, go on from there, or hold no "
           "such seal"},
          {"signed-by", "KEY",
           "the key's fingerprint or public key as its owner told you, or the name of a key of your own: the answer is "
           "yes when a "
           "signature of it holds, covers every entry, and the file is sound"}},
         check},
        {"key",
         {{"new [--name NAME] [--passphrase] [--from DATE] [--until DATE]", "a new key to sign with"},
          {"show [NAME]", "its fingerprint and public key"},
          {"list", "all your keys, one a line"}},
         "Makes and tells the keys (Ed25519) by which you sign records. They lie in your own data folder, each in a "
         "file that "
         "only you may read. Whoever has the file and its passphrase can sign in your name.",
         {{"name", "NAME", "whose key it is, as others read it; otherwise the shop's name of the preferences"},
          {"passphrase", "", "ask for a passphrase, without which the key cannot be used"},
          passphraseFd,
          {"from", "DATE", "its first day, YYYY-MM-DD"},
          {"until", "DATE", "its last day"}},
         key},
        {"sign",
         {{"FILE [--key NAME]", "sign all that the record holds so far"}},
         "Adds an entry with your signature over the last seal. It proves that whoever has the key signed exactly "
         "these entries; "
         "not when, and not that they are true. Entries added later are not signed until you sign again.",
         {keyName, passphraseFd},
         sign},
        {"sheet",
         {{"FILE OUT.pdf [--letter] [--metric] [--logo PICTURE] [--replace]", "the build sheet"},
          {"FILE OUT.png [the same]", "its pages as pictures: OUT-1.png, OUT-2.png …"},
          {"FILE OUT.pdf --difference", "what is different since the build before"}},
         "Writes the build sheet of a record as PDF/A, or its pages as pictures of 150 dots per inch. - writes the PDF "
         "to "
         "standard output. TZ chooses the time zone whose clock its times are by.",
         {letter,
          metric,
          {"logo", "PICTURE", "the shop's, as JPEG, PNG, WebP or HEIF"},
          replace,
          {"difference", "", "the last build against the one before, in place of the sheet"}},
         sheet},
        {"export",
         {{"FILE DIR [--bom]", "tables as CSV: entries, results, a dictionary"},
          {"FILE --ledger OUT.jsonl", "the whole ledger, one JSON object a line"}},
         "Writes each kind of entry and the results (gaps, stacks, clearances, torques, rounds, verdicts with ± U) as "
         "tables into a "
         "new or empty folder; dictionary.csv tells every column, its unit and meaning. Or the whole ledger as text "
         "with its "
         "photos beside it. Nothing is replaced.",
         {{"bom", "", "begin each table with a byte-order mark, which some spreadsheets need"},
          {"ledger", "OUT.jsonl", "the ledger as text, in place of the tables; - prints it, without photos"}},
         exportRecord},
        {"import",
         {{"LEDGER.jsonl FILE", "a new record from such a ledger; - reads standard input"}},
         "Makes a new record from the text of a ledger, and prints how many entries it has and its seal: compare them "
         "with the "
         "sheet. Lines without a seal come in behind an entry that says so; their times must be in order.",
         {},
         importLedger},
        {"append",
         {{"FILE ENTRY.json", "one entry, or one a line; - reads standard input"}},
         "Judges entries as if they were typed in the window, stores them, and prints the number of each. “caprail "
         "help "
         "entries” tells every kind of entry, “caprail schema” the same for a program.",
         {},
         append},
        {"salvage",
         {{"FILE OUT", "a new record from what can be read of a damaged one"}},
         "The new record says for ever from what it was made, which entries did not fit their seals and which are "
         "lost. The "
         "damaged one is not touched.",
         {},
         salvage},
        {"shop",
         {{"FOLDER [--list] [--json] [--search WORDS]", "the records of a folder; else the window"}},
         "Lists the records of a folder and the folders in it, or opens the window on them.",
         {{"list", "", "one record a line under a line of titles, in place of the window"},
          json,
          {"search", "WORDS", "only those that hold these words"}},
         shop},
        {"handover",
         {{"FILE DIR [--csv] [--sign] [--letter] [--metric]", "the customer's folder: sheet, photos, ledger, sums"}},
         "Makes a folder for the customer: the sheet, the photos, the ledger as text, a README that says what each "
         "file is and how "
         "to check the seal without this program, and check sums of all of them.",
         {{"csv", "", "the tables too"},
          {"sign", "", "sign the record first, with an entry of its own"},
          keyName,
          passphraseFd,
          letter,
          metric},
         handOver},
        {"schema",
         {{"[entries|case]", "JSON Schema of entries, or of a case for “plan”"}},
         "Prints a JSON Schema (draft 2020-12), made from the description that the program itself reads entries by.",
         {},
         schema},
        {"help",
         {{"[VERB|entries|keys]", "this; what one verb takes; every kind of entry; the window's keys"},
          {"entries --man", "the same as a page for man"},
          {"--completions bash|zsh|fish", "for a shell"}},
         "Tells what the program can be asked. “help entries” lists every kind of entry with its members, “help keys” "
         "the "
         "keys of the window.",
         {{"man", "", "the kinds of entries as a page for man"},
          {"completions", "SHELL", "a script that completes verbs, options and files in bash, zsh or fish"}},
         help}};
    return table;
}

const VerbText* verbNamed(const QString& name) {
    const auto& table = allVerbs();
    const auto found = std::ranges::find_if(table, [&](const VerbText& verb) { return name == QLatin1String(verb.name); });
    return found == table.end() ? nullptr : &*found;
}

QList<QCommandLineOption> optionsOf(const char* verb) {
    QList<QCommandLineOption> options;
    if (const VerbText* found = verbNamed(QString::fromUtf8(verb))) {
        for (const OptionText& option : found->options) {
            options << QCommandLineOption(text(option.name), text(option.meaning), text(option.value));
        }
    }
    return options;
}

QString usage() {
    constexpr qsizetype column = 52;
    const auto line = [](const QString& call, const QString& purpose) {
        return call.leftJustified(column - 2) + QStringLiteral("  ") + purpose + QLatin1Char('\n');
    };
    QString all = line(QStringLiteral("caprail [FILE…]"), QStringLiteral("the window"));
    for (const VerbText& verb : allVerbs()) {
        for (const CallText& call : verb.calls) {
            all += line(callLine(verb, call), text(call.purpose));
        }
    }
    all += line(QStringLiteral("caprail --new-record"), QStringLiteral("the window, with its questions for a new record"));
    all += line(QStringLiteral("caprail --shop"), QStringLiteral("the window, on the folder of records it showed last"));
    all += line(QStringLiteral("caprail --version"), QStringLiteral("also -v"));
    return all + QLatin1Char('\n') + text(exitCodes) +
           QStringLiteral("“caprail help VERB” tells more of one, “man caprail” of all; F1 in the window of each station.\n");
}

QString helpOf(const VerbText& verb) {
    QString all;
    for (const CallText& call : verb.calls) {
        all += callLine(verb, call) + QStringLiteral("\n    ") + text(call.purpose) + QLatin1Char('\n');
    }
    all += QLatin1Char('\n') + wrapped(text(verb.meaning), QString());
    for (const OptionText& option : verb.options) {
        all += QLatin1Char('\n') + QStringLiteral("  ") + optionName(option) + QLatin1Char('\n') +
               wrapped(text(option.meaning), QStringLiteral("      "));
    }
    return all + QLatin1Char('\n') + text(exitCodes);
}

} // namespace caprail::verbs
