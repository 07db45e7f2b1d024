// SPDX-License-Identifier: GPL-3.0-or-later
/// Keys and signatures by the built program, as a shop and its customer use them.
#include "program.h"

#include <QDir>
#include <QJsonArray>
#include <QRegularExpression>
#include <algorithm>
#include <array>
#include <iterator>
#include <pty.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace called;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

namespace {

class Signing : public Folder {
protected:
    Signing() {
        // The keys lie in the user's data folder: one of the test's own.
        qputenv("XDG_DATA_HOME", at(QStringLiteral("data")).toUtf8());
        qputenv("XDG_CONFIG_HOME", at(QStringLiteral("config")).toUtf8());
    }
    ~Signing() override {
        qunsetenv("XDG_DATA_HOME");
        qunsetenv("XDG_CONFIG_HOME");
    }
    static QString fingerprintIn(const std::string& out) {
        const auto found = QRegularExpression(QStringLiteral("fingerprint +([0-9a-f-]{39})\n"))
                               .match(QString::fromStdString(out));
        EXPECT_TRUE(found.hasMatch()) << out;
        return found.captured(1);
    }
    /// Makes a key and gives its fingerprint.
    static QString newKey(const QString& name) {
        const Answer made = caprail({"key", "new", "--name", name});
        EXPECT_EQ(made.exitCode, 0) << made.err;
        return fingerprintIn(made.out);
    }
    /// A shell's line with the program as $0.
    static Answer shell(const QString& line) {
        return run(QStringLiteral("sh"), {QStringLiteral("-c"), line, QStringLiteral(CAPRAIL_PROGRAM)});
    }
};

} // namespace

TEST_F(Signing, a_shop_signs_and_its_customer_checks_by_the_fingerprint) {
    const QString finger = newKey("Kestrel Lane");
    const QString record = copyOf("closed");
    const Answer before = caprail({"check", record, "--signed-by", finger});
    EXPECT_EQ(before.exitCode, 1);
    EXPECT_THAT(before.err, HasSubstr("No entry is signed by that key"));

    const Answer made = caprail({"sign", record});
    EXPECT_EQ(made.exitCode, 0) << made.err;
    EXPECT_THAT(made.out, HasSubstr("Signed by Kestrel Lane (" + finger.toStdString() + ")"));
    const Answer checked = caprail({"check", record, "--signed-by", finger});
    EXPECT_EQ(checked.exitCode, 0) << checked.err;
    EXPECT_THAT(checked.out, AllOf(HasSubstr("is sound"), HasSubstr("all entries before it, and none was added since")));
    EXPECT_EQ(caprail({"check", record, "--signed-by", "Kestrel Lane"}).exitCode, 0) << "by the name of a key of one's own";
    EXPECT_THAT(caprail({"sign", record}).out, HasSubstr("signed by Kestrel Lane already"));

    const QJsonObject signature = caprail({"show", record, "--json"}).json().value("signatures").toArray().at(0).toObject();
    EXPECT_EQ(signature.value("fingerprint").toString(), finger);
    EXPECT_TRUE(signature.value("holds").toBool());
    EXPECT_TRUE(signature.value("covers_all").toBool());
}

TEST_F(Signing, what_is_added_afterwards_is_told_and_is_not_signed) {
    const QString finger = newKey("Kestrel Lane");
    const QString record = copyOf("closed");
    ASSERT_EQ(caprail({"sign", record}).exitCode, 0);
    ASSERT_EQ(caprail({"append", record, "-"}, R"({"kind": "note_added", "text": "later"})").exitCode, 0);
    const Answer checked = caprail({"check", record, "--signed-by", finger});
    EXPECT_EQ(checked.exitCode, 1);
    EXPECT_THAT(checked.err, HasSubstr("what was added since is not signed"));
    EXPECT_EQ(caprail({"check", record}).exitCode, 0) << "it is sound all the same";
}

TEST_F(Signing, a_record_that_was_rewritten_with_new_seals_is_not_signed) {
    const QString finger = newKey("Kestrel Lane");
    const QString record = copyOf("closed");
    ASSERT_EQ(caprail({"sign", record}).exitCode, 0);
    ASSERT_EQ(caprail({"export", record, "--ledger", at("ledger.jsonl")}).exitCode, 0);
    const QByteArray text = bytesOf(at("ledger.jsonl"));
    QString lines = QString::fromUtf8(text);
    lines.remove(QRegularExpression(QStringLiteral(R"("seal":"[0-9a-f]{64}",?)")));
    lines.remove(QRegularExpression(QStringLiteral(R"("sequence":[0-9]+,?)")));
    lines.replace(QStringLiteral(",}"), QStringLiteral("}"));
    lines.replace(QStringLiteral("Ines Halloran"), QStringLiteral("Inez Halloran"));
    write("forged.jsonl", lines.toUtf8());
    const Answer imported = caprail({"import", at("forged.jsonl"), at("forged.caprail")});
    EXPECT_EQ(imported.exitCode, 1) << "the signature is not allowed there";
    EXPECT_THAT(imported.err, HasSubstr("over another seal"));
    const Answer checked = caprail({"check", at("forged.caprail"), "--signed-by", finger});
    EXPECT_EQ(checked.exitCode, 1);
    EXPECT_THAT(checked.err, HasSubstr("does not hold"));
    EXPECT_THAT(caprail({"show", at("forged.caprail")}).out, HasSubstr("does not hold"));
}

TEST_F(Signing, an_altered_file_is_no_yes_whoever_signed_it) {
    const QString finger = newKey("Kestrel Lane");
    const QString record = copyOf("closed");
    ASSERT_EQ(caprail({"sign", record}).exitCode, 0);
    QFile file(record);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    QByteArray bytes = file.readAll();
    const auto customer = bytes.indexOf("Ines Halloran");
    ASSERT_GE(customer, 0);
    bytes.replace(customer, 4, "Inez");
    file.seek(0);
    file.write(bytes);
    file.close();
    EXPECT_EQ(caprail({"check", record, "--signed-by", finger}).exitCode, 1);
}

/// The program on a terminal of its own: each time it shows one of the questions, the answer is typed. Gives what stood on
/// the terminal.
struct OnTerminal {
    int exitCode = -1;
    std::string shown;
};

OnTerminal onTerminal(const std::vector<std::string>& arguments,
                      const std::vector<std::pair<std::string, std::string>>& answers) {
    int terminal = -1;
    const pid_t child = ::forkpty(&terminal, nullptr, nullptr, nullptr);
    if (child == 0) {
        std::vector<std::string> words{CAPRAIL_PROGRAM};
        words.insert(words.end(), arguments.begin(), arguments.end());
        std::vector<char*> list;
        std::ranges::transform(words, std::back_inserter(list), [](std::string& word) { return word.data(); });
        list.push_back(nullptr);
        ::execv(CAPRAIL_PROGRAM, list.data());
        ::_exit(127);
    }
    OnTerminal there;
    std::size_t asked = 0;
    std::size_t from = 0;
    std::array<char, 4096> piece{};
    for (ssize_t got = 0; (got = ::read(terminal, piece.data(), piece.size())) > 0;) {
        there.shown.append(piece.data(), static_cast<std::size_t>(got));
        if (asked < answers.size()) {
            if (const auto at = there.shown.find(answers[asked].first, from); at != std::string::npos) {
                from = at + answers[asked].first.size();
                const std::string line = answers[asked++].second + "\n";
                EXPECT_EQ(::write(terminal, line.data(), line.size()), static_cast<ssize_t>(line.size()));
            }
        }
    }
    int status = 0;
    EXPECT_EQ(::waitpid(child, &status, 0), child);
    ::close(terminal);
    there.exitCode = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return there;
}

TEST_F(Signing, a_passphrase_is_asked_for_on_the_terminal_twice_and_never_shown) {
    const OnTerminal made = onTerminal({"key", "new", "--name", "Kestrel", "--passphrase"},
                                       {{"Passphrase for the new key: ", "three blue pistons"},
                                        {"The same once more: ", "three blue pistons"}});
    EXPECT_EQ(made.exitCode, 0) << made.shown;
    EXPECT_THAT(made.shown, AllOf(HasSubstr("behind a passphrase"), Not(HasSubstr("pistons"))));
    const OnTerminal other = onTerminal({"key", "new", "--name", "Second", "--passphrase"},
                                        {{"Passphrase for the new key: ", "one"}, {"The same once more: ", "two"}});
    EXPECT_EQ(other.exitCode, 2) << other.shown;
    EXPECT_THAT(other.shown, HasSubstr("The two passphrases differ: no key was made."));
    const std::string record = copyOf(QStringLiteral("mid-survey")).toStdString();
    const OnTerminal wrong = onTerminal({"sign", record}, {{"Passphrase of the key “Kestrel”: ", "three red pistons"}});
    EXPECT_NE(wrong.exitCode, 0) << wrong.shown;
    const OnTerminal signedNow =
        onTerminal({"sign", record}, {{"Passphrase of the key “Kestrel”: ", "three blue pistons"}});
    EXPECT_EQ(signedNow.exitCode, 0) << signedNow.shown;
    EXPECT_THAT(signedNow.shown, AllOf(HasSubstr("Signed by Kestrel"), Not(HasSubstr("pistons"))));
}

TEST_F(Signing, a_key_behind_a_passphrase_takes_it_from_an_open_file) {
    const Answer made = shell("\"$0\" key new --name Kestrel --passphrase-fd 3 3<<E\nthree blue pistons\nE");
    ASSERT_EQ(made.exitCode, 0) << made.err;
    EXPECT_THAT(made.out, HasSubstr("behind a passphrase"));
    const QString record = copyOf("closed");
    const QString sign = QStringLiteral("\"$0\" sign '%1' --passphrase-fd 4 4<<E\n%2\nE");
    const Answer wrong = shell(sign.arg(record, QStringLiteral("three red pistons")));
    EXPECT_EQ(wrong.exitCode, 1);
    EXPECT_THAT(wrong.err, HasSubstr("does not open the key “Kestrel”"));
    EXPECT_EQ(caprail({"check", record, "--signed-by", "Kestrel"}).exitCode, 1);
    EXPECT_EQ(shell(sign.arg(record, QStringLiteral("three blue pistons"))).exitCode, 0);
    EXPECT_EQ(caprail({"check", record, "--signed-by", "Kestrel"}).exitCode, 0);
    const Answer silent = shell(QStringLiteral("setsid \"$0\" sign '%1'").arg(copyOf("mid-survey")));
    EXPECT_EQ(silent.exitCode, 1);
    EXPECT_THAT(silent.err, HasSubstr("no terminal to ask for the passphrase"));
}

TEST_F(Signing, key_files_are_their_owners_alone) {
    const QString finger = newKey("Kestrel Lane");
    const QStringList found = QDir(at("data/caprail/caprail/keys")).entryList(QDir::Files);
    ASSERT_EQ(found, QStringList{"Kestrel Lane.key"});
    const auto all = QFile::permissions(at("data/caprail/caprail/keys/Kestrel Lane.key"));
    EXPECT_EQ(all & ~(QFile::ReadUser | QFile::WriteUser), QFile::ReadOwner | QFile::WriteOwner);
    EXPECT_THAT(caprail({"key", "list"}).out, AllOf(HasSubstr(finger.toStdString()), HasSubstr("Kestrel Lane")));
    EXPECT_EQ(fingerprintIn(caprail({"key", "show"}).out), finger);
}

TEST_F(Signing, says_what_to_do_with_no_key_two_keys_a_lost_one_and_an_expired_one) {
    const QString record = copyOf("closed");
    EXPECT_THAT(caprail({"sign", record}).err, HasSubstr("“caprail key new” makes one"));
    newKey("Kestrel Lane");
    EXPECT_THAT(caprail({"key", "new", "--name", "Kestrel Lane"}).err, HasSubstr("already"));
    EXPECT_THAT(caprail({"sign", record, "--key", "The old one"}).err, HasSubstr("A lost key cannot be made again"));
    ASSERT_EQ(caprail({"key", "new", "--name", "Last year", "--until", "2020-12-31"}).exitCode, 0);
    EXPECT_THAT(caprail({"sign", record, "--key", "Last year"}).err, HasSubstr("expired"));
    EXPECT_THAT(caprail({"key", "list"}).out, HasSubstr("until 2020-12-31 (not valid today)"));
    ASSERT_EQ(caprail({"key", "new", "--name", "Second"}).exitCode, 0);
    EXPECT_THAT(caprail({"sign", record}).err, HasSubstr("several keys"));
    EXPECT_EQ(caprail({"sign", record, "--key", "Second"}).exitCode, 0);
    EXPECT_EQ(caprail({"check", record, "--signed-by", "nobody's"}).exitCode, 64);
    EXPECT_EQ(caprail({"key", "new", "--name", "x", "--until", "soon"}).exitCode, 2);
    EXPECT_EQ(caprail({"key"}).exitCode, 64);
    EXPECT_EQ(caprail({"key", "burn"}).exitCode, 64);
}

TEST_F(Signing, a_signed_hand_over_is_verified_by_other_programs_alone) {
    const QString finger = newKey("Kestrel Lane");
    const QString record = copyOf("closed");
    const Answer made = caprail({"handover", record, at("out"), "--sign"});
    ASSERT_EQ(made.exitCode, 0) << made.err;
    const std::string readme = bytesOf(at("out/README.txt")).toStdString();
    EXPECT_THAT(readme, AllOf(HasSubstr("closed and signed off"), Not(HasSubstr("NOT FINISHED")),
                              HasSubstr("Signed by Kestrel Lane (" + finger.toStdString())));
    const auto inFolder = [this](const QString& line) { return shell(QStringLiteral("cd '%1' && ").arg(at("out")) + line); };
    EXPECT_EQ(inFolder("sha256sum -c SHA256SUMS").exitCode, 0);
    // The lines of Python and of OpenSSL are taken from the README itself.
    const QString text = QString::fromStdString(readme);
    const auto between = [&](const QString& from, const QString& to) {
        const qsizetype begin = text.indexOf(from);
        EXPECT_GE(begin, 0) << from.toStdString();
        const qsizetype end = text.indexOf(to, begin) + to.size();
        return text.mid(begin, end - begin);
    };
    const QString python = between("    import hashlib", "print(seal.hex())").replace("\n    ", "\n").mid(4);
    write("out/chain.py", python.toUtf8());
    const Answer chain = inFolder("python3 chain.py");
    EXPECT_EQ(chain.exitCode, 0) << chain.err;
    const QString seal = QString::fromStdString(chain.out).trimmed();
    EXPECT_EQ(caprail({"check", record, "--seal", seal}).exitCode, 0);
    const Answer verified = inFolder(between("openssl pkeyutl", "signature/signature.bin"));
    EXPECT_EQ(verified.exitCode, 0) << verified.err;
    const Answer print = inFolder(between("openssl pkey -pubin", "sha256sum"));
    EXPECT_EQ(QString::fromStdString(print.out).left(32), QString(finger).remove('-'));

    write("out/statement.txt", bytesOf(at("out/signature/statement.txt")).replace("entry: ", "entry: 1"));
    EXPECT_NE(inFolder("openssl pkeyutl -verify -pubin -inkey signature/public-key.pem -rawin -in statement.txt "
                       "-sigfile signature/signature.bin")
                  .exitCode,
              0);
}

TEST_F(Signing, a_hand_over_of_an_unfinished_build_says_so_at_its_head) {
    const Answer made = caprail({"handover", copyOf("mid-survey"), at("out")});
    EXPECT_EQ(made.exitCode, 0) << made.err;
    EXPECT_THAT(made.err, HasSubstr("is not signed off"));
    const std::string readme = bytesOf(at("out/README.txt")).toStdString();
    EXPECT_LT(readme.find("NOT FINISHED"), 400U);
    EXPECT_THAT(readme, HasSubstr("not signed with a key"));
}
