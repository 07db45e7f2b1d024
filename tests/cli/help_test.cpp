// SPDX-License-Identifier: GPL-3.0-or-later
/// What the program tells of itself, and records begun from the command line.
#include "program.h"

#include <QDir>
#include <QFileInfo>
#include <QJsonArray>
#include <QRegularExpression>
#include <QStandardPaths>

using namespace called;
using testing::HasSubstr;
using testing::Not;

namespace {

class CliHelp : public Folder {};

/// Every verb that the usage names, once.
QStringList verbs() {
    QStringList names;
    const QString usage = QString::fromStdString(caprail({"--help"}).out);
    static const QRegularExpression call(QStringLiteral("^caprail ([a-z]+)"), QRegularExpression::MultilineOption);
    for (auto found = call.globalMatch(usage); found.hasNext();) {
        names << found.next().captured(1);
    }
    names.removeDuplicates();
    return names;
}

QStringList optionsIn(const QString& text) {
    QStringList names;
    static const QRegularExpression option(QStringLiteral("--[a-z][a-z-]+"));
    for (auto found = option.globalMatch(text); found.hasNext();) {
        names << found.next().captured(0);
    }
    names.removeDuplicates();
    return names;
}

} // namespace

TEST_F(CliHelp, is_given_for_every_verb_on_standard_output) {
    ASSERT_GE(verbs().size(), 12);
    for (const QString& verb : verbs()) {
        const Answer asked = caprail({"help", verb});
        EXPECT_EQ(asked.exitCode, 0) << verb.toStdString();
        EXPECT_THAT(asked.out, HasSubstr("caprail " + verb.toStdString()));
        EXPECT_THAT(asked.out, HasSubstr("Exit codes"));
        EXPECT_EQ(asked.err, "");
        const Answer option = caprail({verb, "--help"});
        EXPECT_EQ(option.exitCode, 0) << verb.toStdString();
        EXPECT_EQ(option.out, asked.out);
    }
}

TEST_F(CliHelp, and_the_man_page_name_the_same_options_of_each_verb) {
    QString page = QString::fromUtf8(bytesOf(QStringLiteral(MAN_PAGE)));
    page.replace(QStringLiteral("\\-"), QStringLiteral("-"));
    const QStringList told = optionsIn(page);
    for (const QString& verb : verbs()) {
        EXPECT_TRUE(page.contains(QStringLiteral("caprail ") + verb)) << verb.toStdString();
        for (const QString& option : optionsIn(QString::fromStdString(caprail({"help", verb}).out))) {
            EXPECT_TRUE(told.contains(option)) << verb.toStdString() << " " << option.toStdString();
        }
    }
}

TEST_F(CliHelp, the_readme_and_the_man_page_tell_the_same_keys) {
    const QString page = QString::fromUtf8(bytesOf(QStringLiteral(MAN_PAGE)));
    const QString readme = QString::fromUtf8(bytesOf(QStringLiteral(README)));
    const QStringList lines = QString::fromStdString(caprail({"help", "keys"}).out).split('\n', Qt::SkipEmptyParts);
    ASSERT_GE(lines.size(), 15);
    QStringList inReadme, inPage;
    for (const QString& line : lines) {
        const qsizetype at = line.indexOf(QStringLiteral(": "));
        inReadme << QStringLiteral("| %1 | %2 |").arg(line.left(at), line.mid(at + 2));
        inPage << QStringLiteral(".TP\n.B \"%1\"\n%2").arg(line.left(at), line.mid(at + 2));
    }
    EXPECT_TRUE(readme.contains("| --- | --- |\n" + inReadme.join('\n') + "\n\n")) << "README: Keys";
    EXPECT_TRUE(page.contains(inPage.join('\n') + "\n.SH")) << "man page: KEYS";
}

TEST_F(CliHelp, the_manual_calls_only_what_there_is) {
    const QString usage = QString::fromStdString(caprail({"--help"}).out);
    static const QRegularExpression call(QStringLiteral("caprail ([a-z]+)([^`|;\\n]*)"));
    for (const char* language : {"en", "de"}) {
        const QDir folder(QFileInfo(QStringLiteral(README)).path() + "/resources/manual/" + language);
        ASSERT_TRUE(folder.exists()) << language;
        int calls = 0;
        for (const QString& name : folder.entryList({QStringLiteral("*.md")})) {
            const QString page = QString::fromUtf8(bytesOf(folder.filePath(name)));
            for (auto found = call.globalMatch(page); found.hasNext(); ++calls) {
                const auto match = found.next();
                const std::string where = (name + ": " + match.captured()).toStdString();
                EXPECT_TRUE(usage.contains("caprail " + match.captured(1))) << where;
                const QStringList options = optionsIn(match.captured(2));
                if (!options.isEmpty()) {
                    const Answer help = caprail({"help", match.captured(1)});
                    EXPECT_THAT(optionsIn(QString::fromStdString(help.out)), testing::IsSupersetOf(options)) << where;
                }
            }
        }
        EXPECT_GT(calls, 20) << language;
    }
}

TEST_F(CliHelp, the_readme_opens_with_pictures_that_are_there_and_small) {
    const QString readme = QString::fromUtf8(bytesOf(QStringLiteral(README)));
    static const QRegularExpression shown(QStringLiteral("!\\[[^\\]]+\\]\\(([^)]+)\\)"));
    QStringList pictures;
    for (auto found = shown.globalMatch(readme); found.hasNext();) {
        pictures << found.next().captured(1);
    }
    ASSERT_EQ(pictures.size(), 2);
    EXPECT_LT(readme.indexOf("!["), readme.indexOf("## "));
    for (const QString& name : pictures) {
        const QByteArray bytes = bytesOf(QFileInfo(QStringLiteral(README)).path() + "/" + name);
        EXPECT_TRUE(bytes.startsWith("\x89PNG")) << name.toStdString();
        EXPECT_LT(bytes.size(), 150'000) << name.toStdString();
    }
}

TEST_F(CliHelp, tells_the_version_by_any_of_its_usual_names) {
    const Answer version = caprail({"--version"});
    EXPECT_THAT(version.out, testing::StartsWith("caprail "));
    EXPECT_EQ(caprail({"-v"}).out, version.out);
}

TEST_F(CliHelp, is_completed_by_the_shells) {
    const Answer bash = caprail({"help", "--completions", "bash"});
    ASSERT_EQ(bash.exitCode, 0);
    const QString script = write("caprail.bash", QByteArray::fromStdString(bash.out));
    const auto completed = [&](const QString& words, int at) {
        return run("bash", {"-c", QStringLiteral("source %1; COMP_WORDS=(%2); COMP_CWORD=%3; _caprail; "
                                                 "printf '%s\\n' \"${COMPREPLY[@]}\"")
                                      .arg(script, words)
                                      .arg(at)})
            .out;
    };
    EXPECT_THAT(completed("caprail she", 1), HasSubstr("sheet\n"));
    EXPECT_EQ(completed("caprail check --", 2), "--seal\n--signed-by\n--help\n");
    EXPECT_THAT(completed("caprail check " + script.left(script.size() - 5), 2), HasSubstr(script.toStdString()));
    for (const char* shell : {"zsh", "fish"}) {
        const Answer other = caprail({"help", "--completions", shell});
        EXPECT_THAT(other.out, HasSubstr("handover"));
        if (!QStandardPaths::findExecutable(shell).isEmpty()) {
            const Answer read = run(shell, {"-n", write(shell, QByteArray::fromStdString(other.out))});
            EXPECT_EQ(read.exitCode, 0) << shell << ": " << read.err;
        }
    }
    EXPECT_EQ(caprail({"help", "--completions", "tcsh"}).exitCode, 64);
}

TEST_F(CliHelp, without_a_display_is_a_sentence) {
    const Answer answer = run(CAPRAIL_PROGRAM, {}, {}, {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"});
    EXPECT_EQ(answer.exitCode, 2);
    EXPECT_THAT(answer.err, HasSubstr("there is no display"));
    const Answer none = run("env", {"-u", "QT_QPA_PLATFORM", "-u", "WAYLAND_DISPLAY", "DISPLAY=:4711", CAPRAIL_PROGRAM});
    EXPECT_EQ(none.exitCode, 2) << "a display that does not answer";
    EXPECT_THAT(none.err, HasSubstr("the window cannot be opened"));
}

TEST_F(CliHelp, takes_the_address_of_a_file_for_the_file) {
    EXPECT_EQ(caprail({"check", QUrl::fromLocalFile(copyOf("closed")).toString()}).exitCode, 0);
}

TEST_F(CliHelp, begins_a_record_with_a_template) {
    const QStringList titles = QString::fromStdString(caprail({"new", "--list"}).out).split('\n', Qt::SkipEmptyParts);
    ASSERT_GE(titles.size(), 4);
    for (const QString& title : titles) {
        const QString record = at(title + QStringLiteral(".caprail"));
        const Answer made = caprail({"new", record, "--template", title, "--person", "Mira Solheim", "--engine", "Six, block 12",
                                     "--customer", "Orrin Vale", "--serial", "KX-1", "--shop", "Tarn Engines"});
        EXPECT_EQ(made.exitCode, 0) << made.err;
        EXPECT_EQ(caprail({"check", record}).exitCode, 0);
        EXPECT_THAT(caprail({"show", record}).out, HasSubstr("Six, block 12 (KX-1) for Orrin Vale, build 1"));
        EXPECT_EQ(caprail({"new", record, "--person", "Mira Solheim"}).exitCode, 1) << "nothing is written over";
    }
    const Answer unknown = caprail({"new", at("x.caprail"), "--template", "Rotary", "--person", "M"});
    EXPECT_EQ(unknown.exitCode, 64);
    EXPECT_THAT(unknown.err, HasSubstr(titles.front().toStdString()));
    EXPECT_EQ(caprail({"new", at("x.txt"), "--person", "M"}).exitCode, 64);
    EXPECT_FALSE(QFile::exists(at("x.caprail")));
}

// The schema is held against records by a validator of somebody else's: python3-jsonschema of Debian, draft 2020-12.
TEST_F(CliHelp, schemas_take_what_records_hold_and_refuse_what_append_refuses) {
    const QString schema = write("schema.json", QByteArray::fromStdString(caprail({"schema"}).out));
    const QString judge = write("judge.py", R"(
import json, sys, jsonschema
schema = json.load(open(sys.argv[1]))
jsonschema.Draft202012Validator.check_schema(schema)
validator = jsonschema.Draft202012Validator(schema)
for line in open(sys.argv[2]):
    print("yes" if validator.is_valid(json.loads(line)) else "no")
)");
    const auto answers = [&](const QString& schemaFile, const QByteArray& lines) {
        const Answer answer = run("/usr/bin/python3", {judge, schemaFile, write("lines", lines)});
        EXPECT_EQ(answer.exitCode, 0) << answer.err;
        return QString::fromStdString(answer.out).split('\n', Qt::SkipEmptyParts);
    };
    ASSERT_EQ(caprail({"export", copyOf("closed"), "--ledger", at("closed.jsonl")}).exitCode, 0);
    const QByteArray ledger = bytesOf(at("closed.jsonl"));
    EXPECT_EQ(answers(schema, ledger).count("yes"), ledger.count('\n')) << "every entry of a sealed ledger";
    const QStringList refused =
        answers(schema, "{\"kind\":\"gap_reading\",\"position\":\"3R\",\"pass\":1,\"gap_typed\":\"57.5 thou\"}\n"
                        "{\"kind\":\"gap_reading\",\"position\":\"3R\",\"pass\":1}\n"
                        "{\"kind\":\"gap_reading\",\"position\":\"3R\",\"pass\":\"one\",\"gap_nm\":1}\n"
                        "{\"kind\":\"gap_reading\",\"position\":\"3R\",\"pass\":1,\"gap\":1}\n"
                        "{\"kind\":\"gap_reeding\"}\n"
                        "{\"kind\":\"rechecked\",\"position\":\"3R\",\"result\":\"wobbles\"}\n");
    EXPECT_EQ(refused, (QStringList{"yes", "no", "no", "no", "no", "no"}));
    const QString caseSchema = write("case-schema.json", QByteArray::fromStdString(caprail({"schema", "case"}).out));
    EXPECT_EQ(answers(caseSchema, R"({"unit":"0.0001 in","band":[-5,5],"largest_stack":0,"positions":[],"shims":[]})"
                                  "\n{\"unit\":\"0.0001 in\",\"band\":[-5],\"largest_stack\":0,\"positions\":[],\"shims\":[]}\n"),
              (QStringList{"yes", "no"}));
    EXPECT_EQ(caprail({"schema", "photos"}).exitCode, 64);
}

TEST_F(CliHelp, tells_every_kind_of_entry_and_what_is_missing_all_at_once) {
    const std::string manual = caprail({"help", "entries"}).out;
    QString page = QString::fromStdString(caprail({"help", "entries", "--man"}).out);
    page.replace(QStringLiteral("\\-"), QStringLiteral("-")).replace(QStringLiteral("\\(aq"), QStringLiteral("'"));
    EXPECT_THAT(page.toStdString(), HasSubstr(manual)) << "the page for man tells the same";
    const QJsonObject kinds = caprail({"schema"}).json()["$defs"].toObject();
    ASSERT_GT(kinds.size(), 30);
    for (const QString& kind : kinds.keys()) {
        EXPECT_THAT(manual, HasSubstr("\n" + kind.toStdString() + "  (")) << "told";
    }
    const QString record = copyOf("mid-survey");
    const Answer lacking = caprail({"append", record, "-"}, R"({"kind":"gap_reading","person":"Mira Solheim"})");
    EXPECT_THAT(lacking.err, testing::AllOf(HasSubstr("pass"), HasSubstr("gap_nm"))) << lacking.err;
    const Answer foreign = caprail({"append", record, "-"}, R"({"kind":"gap_reading","pass":1,"gap":5})");
    EXPECT_THAT(foreign.err, testing::AllOf(HasSubstr("no member “gap”"), HasSubstr("gap_typed")));
    const Answer guessed = caprail({"append", record, "-"}, R"({"kind":"gap"})");
    EXPECT_THAT(guessed.err, HasSubstr("gap_reading"));
}
