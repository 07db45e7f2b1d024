// SPDX-License-Identifier: GPL-3.0-or-later
/// The verbs that look at many records or make a folder of one, called as a person or a script would.
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using testing::HasSubstr;

namespace {

class ShopCli : public testing::Test {
protected:
    struct Answer {
        int exitCode = -1;
        std::string out, err;
    };
    /// Without a display, and with a cache of its own.
    [[nodiscard]] Answer caprail(const QStringList& arguments) const {
        QProcess process;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        for (const char* display : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) {
            environment.remove(QString::fromUtf8(display));
        }
        environment.insert(QStringLiteral("XDG_CACHE_HOME"), m_folder.filePath(QStringLiteral("cache")));
        process.setProcessEnvironment(environment);
        process.start(QStringLiteral(CAPRAIL_PROGRAM), arguments);
        EXPECT_TRUE(process.waitForFinished(60'000)) << process.errorString().toStdString();
        return {process.exitCode(), process.readAllStandardOutput().toStdString(),
                process.readAllStandardError().toStdString()};
    }
    [[nodiscard]] QString at(const QString& name) const { return m_folder.filePath(name); }
    [[nodiscard]] QString samples() const {
        QDir().mkpath(at("shop/2026"));
        for (const char* name : {"closed", "mid-survey"}) {
            EXPECT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/%1.caprail").arg(QLatin1String(name)),
                                    at(QStringLiteral("shop/2026/%1.caprail").arg(QLatin1String(name)))));
        }
        QFile letter(at("shop/letter.caprail"));
        EXPECT_TRUE(letter.open(QIODevice::WriteOnly));
        letter.write("Dear sir, the crank is ready.");
        return at("shop");
    }

private:
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(ShopCli, lists_the_records_of_a_folder_for_people_and_for_programs) {
    const QString folder = samples();
    for (const QStringList& call : {QStringList{"shop", folder}, QStringList{"shop", folder, "--list"}}) {
        const Answer list = caprail(call);
        EXPECT_EQ(list.exitCode, 0) << list.err;
        EXPECT_THAT(list.out, testing::StartsWith("file: customer, engine, "));
        EXPECT_THAT(list.out, HasSubstr("\n2026/closed.caprail: Ines Halloran, "));
        EXPECT_THAT(list.out, HasSubstr("signed off"));
        EXPECT_THAT(list.out, HasSubstr("letter.caprail: no record. "));
    }
    const Answer json = caprail({"shop", folder, "--json"});
    const QJsonArray records = QJsonDocument::fromJson(QByteArray::fromStdString(json.out)).array();
    ASSERT_EQ(records.size(), 3);
    for (const auto& record : records) {
        const QJsonObject o = record.toObject();
        if (o.value("file") == "2026/closed.caprail") {
            EXPECT_EQ(o.value("state"), "signed off");
            EXPECT_EQ(o.value("round_result"), "all held");
        }
    }
    const Answer found = caprail({"shop", folder, "--search", "halloran hill"});
    EXPECT_THAT(found.out, HasSubstr("closed.caprail"));
    EXPECT_EQ(found.out.find("mid-survey"), std::string::npos);
    const Answer lot = caprail({"shop", folder, "--search", "lot 7731"});
    EXPECT_THAT(lot.out, HasSubstr("closed.caprail")) << "which engines have this lot";
    EXPECT_EQ(lot.out.find("mid-survey"), std::string::npos);
}

TEST_F(ShopCli, says_why_a_folder_cannot_be_listed) {
    const Answer answer = caprail({"shop", at("nowhere")});
    EXPECT_EQ(answer.exitCode, 2);
    EXPECT_THAT(answer.err, HasSubstr("not a folder that can be read"));
    EXPECT_EQ(caprail({"shop"}).exitCode, 64);
}

TEST_F(ShopCli, says_why_a_shops_database_cannot_be_listed) {
    const Answer away = caprail({"shop", "--from", "host=" + at("nowhere") + " dbname=shop", "--list"});
    EXPECT_EQ(away.exitCode, 2);
    EXPECT_THAT(away.err, HasSubstr("does not answer"));
    EXPECT_EQ(away.out, "");
    const Answer secret = caprail({"shop", "--from", "postgresql://bench:secret@db/shop", "--json"});
    EXPECT_EQ(secret.exitCode, 2);
    EXPECT_THAT(secret.err, HasSubstr("~/.pgpass"));
    EXPECT_EQ(secret.err.find("secret"), std::string::npos);
    EXPECT_EQ(caprail({"shop", at("shop"), "--from", "shop"}).exitCode, 64) << "one place or the other";
}

TEST_F(ShopCli, hands_over_a_folder_whose_sums_are_right) {
    const Answer made = caprail({"handover", samples() + "/2026/closed.caprail", at("out"), "--csv"});
    ASSERT_EQ(made.exitCode, 0) << made.err;
    QProcess sums;
    sums.setWorkingDirectory(at("out"));
    sums.start(QStringLiteral("sha256sum"), {"--strict", "--quiet", "-c", "SHA256SUMS"});
    ASSERT_TRUE(sums.waitForFinished());
    EXPECT_EQ(sums.exitCode(), 0) << sums.readAllStandardOutput().toStdString();
    for (const char* name : {"build-sheet.pdf", "history.txt", "ledger.jsonl", "tables/entries.csv"}) {
        EXPECT_TRUE(QFile::exists(at(QStringLiteral("out/") + QLatin1String(name)))) << name;
    }
    const Answer again = caprail({"handover", at("shop/2026/closed.caprail"), at("out")});
    EXPECT_EQ(again.exitCode, 1);
    EXPECT_THAT(again.err, HasSubstr("not empty"));
}

TEST_F(ShopCli, writes_the_difference_of_two_builds_and_says_when_there_is_one_build_only) {
    const QString record = samples() + "/2026/closed.caprail";
    const Answer one = caprail({"sheet", record, at("difference.pdf"), "--difference"});
    EXPECT_EQ(one.exitCode, 1);
    EXPECT_THAT(one.err, HasSubstr("one build only"));
    QFile::setPermissions(record, QFile::ReadOwner | QFile::WriteOwner);
    QFile entry(at("begin.json"));
    ASSERT_TRUE(entry.open(QIODevice::WriteOnly));
    entry.write(R"({"kind":"build_begun","build":2,"why":"a season of hill climbs"})");
    entry.close();
    ASSERT_EQ(caprail({"append", record, entry.fileName()}).exitCode, 0);
    const Answer two = caprail({"sheet", record, at("difference.pdf"), "--difference"});
    EXPECT_EQ(two.exitCode, 0) << two.err;
    QProcess piped;
    piped.setWorkingDirectory(at(""));
    piped.start(QStringLiteral(CAPRAIL_PROGRAM), {"sheet", record, "-", "--difference"});
    ASSERT_TRUE(piped.waitForFinished(60'000));
    EXPECT_EQ(piped.exitCode(), 0) << piped.readAllStandardError().toStdString();
    EXPECT_TRUE(piped.readAllStandardOutput().startsWith("%PDF-"));
    EXPECT_FALSE(QFile::exists(at("-")));
    QFile pdf(at("difference.pdf"));
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.readAll().startsWith("%PDF-"));
}
