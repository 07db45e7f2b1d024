// SPDX-License-Identifier: GPL-3.0-or-later
/// The sheet as a file, seen with other programs' eyes: poppler-utils and qpdf.
#include "sheet_sample.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <csignal>
#include <ctime>
#include <gmock/gmock.h>
#include <sys/resource.h>
#include <sheet/pdf_file.h>

namespace caprail {
namespace {

using testing::HasSubstr;

struct Ran {
    int exitCode = -1;
    QString text;
};

Ran run(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(program, arguments);
    if (!process.waitForFinished(60'000)) {
        return {-1, program + QStringLiteral(" did not run")};
    }
    return {process.exitCode(), QString::fromUtf8(process.readAll())};
}

/// One sheet written once per shape and paper, for all tests.
class Written {
public:
    Written(const SampleShape& shape, QPageSize::PageSizeId paper, const QString& name)
        : sample(shape), path(folder().filePath(name + QStringLiteral(".pdf"))) {
        SheetOptions options;
        options.pageSize = paper;
        options.appVersion = QStringLiteral("0.1.0");
        options.mayReplace = true; // kept sheets of an earlier run
        const auto written = writeSheet(sample.source(), path, options);
        EXPECT_TRUE(written) << (written ? "" : written.error().sentence);
    }
    [[nodiscard]] QString text() const {
        return run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")}).text;
    }
    [[nodiscard]] std::string info() const { return run(QStringLiteral("pdfinfo"), {path}).text.toStdString(); }
    [[nodiscard]] int pages() const {
        return QRegularExpression(QStringLiteral("Pages:\\s+(\\d+)"))
            .match(QString::fromStdString(info()))
            .captured(1)
            .toInt();
    }

    static QDir folder() {
        static const QTemporaryDir temporary;
        const QString kept = qEnvironmentVariable("KEEP_SHEETS"); // to look at them
        return QDir(kept.isEmpty() ? temporary.path() : kept);
    }

    SheetSample sample;
    QString path;
};

const Written& closed() {
    static const Written sheet({}, QPageSize::A4, QStringLiteral("closed"));
    return sheet;
}
const Written& locked() {
    static const Written sheet({5, 4, 8, false, false}, QPageSize::Letter, QStringLiteral("locked"));
    return sheet;
}
const Written& longest() {
    static const Written sheet({9, 2, 16, true, true}, QPageSize::A4, QStringLiteral("long-a4"));
    return sheet;
}
const Written& longestOnLetter() {
    static const Written sheet({9, 4, 16, true, true}, QPageSize::Letter, QStringLiteral("long-letter"));
    return sheet;
}

TEST(SheetFile, is_a_sound_pdf_of_several_pages_on_the_paper_that_was_asked_for) {
    for (const Written* sheet : {&closed(), &locked(), &longest(), &longestOnLetter()}) {
        const Ran checked = run(QStringLiteral("qpdf"), {QStringLiteral("--check"), sheet->path});
        EXPECT_EQ(checked.exitCode, 0) << checked.text.toStdString();
        EXPECT_GT(sheet->pages(), 3);
    }
    EXPECT_THAT(closed().info(), HasSubstr("(A4)"));
    EXPECT_THAT(locked().info(), HasSubstr("(letter)"));
}

TEST(SheetFile, says_title_author_and_program_and_that_it_is_pdf_a_1b) {
    const std::string info = closed().info();
    EXPECT_THAT(info, HasSubstr("Title:           Build sheet: Corvane 5.4 V8, KL-2207, build 1"));
    EXPECT_THAT(info, HasSubstr("Author:          Kestrel Lane Engines"));
    EXPECT_THAT(info, HasSubstr("Creator:         Caprail 0.1.0"));
    const std::string meta =
        run(QStringLiteral("pdfinfo"), {QStringLiteral("-meta"), closed().path}).text.toStdString();
    EXPECT_THAT(meta, HasSubstr("<pdfaid:part>1</pdfaid:part>"));
    EXPECT_THAT(meta, HasSubstr("Kestrel Lane Engines"));
}

TEST(SheetFile, embeds_every_font_and_lets_its_text_be_selected) {
    for (const Written* sheet : {&closed(), &longest()}) {
        const QStringList lines =
            run(QStringLiteral("pdffonts"), {sheet->path}).text.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
        ASSERT_GT(lines.size(), 2);
        for (const QString& line : lines.mid(2)) {
            // emb, sub, uni: the last three words before the object's number.
            EXPECT_TRUE(QRegularExpression(QStringLiteral("yes +(yes|no) +yes +\\d+ +\\d+$")).match(line).hasMatch())
                << line.toStdString();
        }
    }
}

TEST(SheetFile, holds_no_transparency_and_only_photos_as_pictures) {
    const QString plain = Written::folder().filePath(QStringLiteral("plain.qdf"));
    run(QStringLiteral("qpdf"),
        {QStringLiteral("--qdf"), QStringLiteral("--object-streams=disable"), closed().path, plain});
    QFile file(plain);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    EXPECT_TRUE(bytes.contains("/S /GTS_PDFA1")); // its output intent, ISO 19005-1, 6.2.2; from memory
    // ISO 19005-1, 6.4: no soft masks, no constant alpha but 1. From memory.
    EXPECT_FALSE(bytes.contains("/SMask") && !bytes.contains("/SMask /None"));
    const QRegularExpression alpha(QStringLiteral("/(ca|CA) (0|0?\\.\\d+)\\b"));
    EXPECT_FALSE(alpha.match(QString::fromLatin1(bytes)).hasMatch());
    // The diagram and the charts are vectors: the two photos are the only pictures.
    const QString images = run(QStringLiteral("pdfimages"), {QStringLiteral("-list"), closed().path}).text;
    EXPECT_EQ(
        images.count(QRegularExpression(QStringLiteral("^ +\\d+ +\\d+ image"), QRegularExpression::MultilineOption)), 2)
        << images.toStdString();
}

TEST(SheetFile, prints_the_seal_and_page_x_of_y_on_every_page) {
    const QStringList pages = closed().text().split(QLatin1Char('\f'), Qt::SkipEmptyParts);
    const QString seal = QString::fromStdString(shortForm(closed().sample.ledger.seal()));
    ASSERT_EQ(pages.size(), closed().pages());
    for (int i = 0; i < pages.size(); ++i) {
        EXPECT_TRUE(pages[i].contains(QStringLiteral("Page %1 of %2").arg(i + 1).arg(pages.size()))) << i;
        EXPECT_TRUE(pages[i].contains(seal)) << i;
    }
}

TEST(SheetFile, tells_the_whole_story_of_a_closed_build) {
    ASSERT_TRUE(closed().sample.assessment.gate(GateKind::closing).isOpen);
    const std::string text = closed().text().simplified().toStdString();
    for (const char* words : {"Corvane 5.4 V8",
                              "Orrin Vale",
                              "Build 1 was closed and signed off by Mira Sand",
                              "Signed off",
                              "The figures that matter",
                              "Received by the customer",
                              "Running in",
                              "Annex: everything that was measured",
                              "Changed after something had been judged by it",
                              "whose figure it is",
                              "Closing gate open",
                              "Main bearings",
                              "guard bands",
                              "Crank end play",
                              "Verify rounds",
                              "every fastener held",
                              "moved 4.0°",
                              "Gap survey",
                              "S3Ra",
                              "Twist, diagonal to diagonal",
                              "Counterweights clear",
                              "Pan depth",
                              "Burr at the edge",
                              "Stoned flat",
                              "That shim belongs to another",
                              "Washer seat after stoning",
                              "Sealant bead laid",
                              "open time on the tube: 20 min",
                              "Built and measured as written here",
                              "Do not retighten the fasteners",
                              "does not prove",
                              "p is the probability that the value lies within its limits",
                              "p 9",
                              "C 1."}) {
        EXPECT_THAT(text, HasSubstr(words));
    }
}

TEST(SheetFile, says_on_its_first_page_once_by_whom_and_with_which_words_it_was_signed_off) {
    const QString first = closed().text().section(QLatin1Char('\f'), 0, 0);
    EXPECT_EQ(first.count(QStringLiteral("Mira Sand on ")), 1) << first.toStdString();
    EXPECT_EQ(first.count(QStringLiteral("signed off by"), Qt::CaseInsensitive), 1) << first.toStdString();
    EXPECT_EQ(first.count(QStringLiteral("Built and measured as written here")), 1) << first.toStdString();
}

TEST(SheetFile, marks_a_wrench_used_outside_its_range_or_after_its_due_date) {
    const std::string text = locked().text().simplified().toStdString();
    EXPECT_THAT(text, HasSubstr("45.0 lbf·ft†‡")); // below the wrench's 50 lbf·ft, and overdue
    EXPECT_THAT(text, HasSubstr("75.0 lbf·ft‡"));
    EXPECT_THAT(text, HasSubstr("‡ TW-1:"));
}

TEST(SheetFile, says_why_a_gate_is_locked_and_what_to_do) {
    ASSERT_FALSE(locked().sample.assessment.gate(GateKind::closing).isOpen);
    const std::string text = locked().text().simplified().toStdString();
    EXPECT_THAT(text, HasSubstr("Closing gate locked"));
    EXPECT_THAT(text, HasSubstr("NOT FINISHED"));
    EXPECT_THAT(text, testing::Not(HasSubstr("Received by the customer"))) << "what is not finished is received by nobody";
    EXPECT_THAT(text, testing::Not(HasSubstr("Running in")));
    EXPECT_THAT(text, testing::Not(HasSubstr("station"))) << "a reader of paper has none";
    EXPECT_THAT(text, HasSubstr("stale"));
    EXPECT_THAT(text, HasSubstr("Read the gap again"));
    EXPECT_THAT(text, HasSubstr("Trial fit: dipstick clear, and 11 more")); // for one reason, in one row
}

TEST(SheetFile, prints_the_shims_of_a_bracketed_recheck_and_what_is_weakly_measured) {
    SheetSample sample({5, 2, 8, false, false});
    const Position p{1, Side::left};
    for (const auto& [name, thickness] : {std::pair{"SX1", 30.4}, {"SX2", 29.6}}) {
        drafts::measuredShim(sample, name, thickness, 30, "MIC-1");
    }
    sample.make(StackMoved{p, StackMove::putBack});
    sample.make(drafts::bracketed(p, "SE-1", "S1La", "SX1", "SX2"));
    BandSet narrow;
    narrow.band = bands::residual;
    narrow.lo = {-thou(0.1), ""};
    narrow.hi = {thou(0.1), ""};
    narrow.why = "tried";
    sample.make(narrow);
    ASSERT_GT(sample.assessment.weaklyMeasured, 0U);
    const QString path = Written::folder().filePath(QStringLiteral("bracketed.pdf"));
    SheetOptions options;
    options.mayReplace = true;
    ASSERT_TRUE(writeSheet(sample.source(), path, options));
    const std::string text =
        run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")}).text.simplified().toStdString();
    EXPECT_THAT(text, HasSubstr("Bracketed rechecks"));
    EXPECT_THAT(text, HasSubstr("− S1La + SX1 (+0.00040): rocks"));
    EXPECT_THAT(text, HasSubstr("− S1La + SX2 (−0.00040): loose"));
    EXPECT_THAT(text, HasSubstr("weakly measured"));
}

TEST(SheetFile, keeps_all_words_inside_the_margins_with_long_names_and_eighteen_positions) {
    for (const Written* sheet : {&longest(), &longestOnLetter(), &closed()}) {
        const QString boxes =
            run(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), sheet->path, QStringLiteral("-")}).text;
        const QRegularExpression page(QStringLiteral("<page width=\"([\\d.]+)\" height=\"([\\d.]+)\""));
        const double width = page.match(boxes).captured(1).toDouble();
        const double height = page.match(boxes).captured(2).toDouble();
        ASSERT_GT(width, 500);
        const QRegularExpression word(QStringLiteral(
            "<word xMin=\"([-\\d.]+)\" yMin=\"([-\\d.]+)\" xMax=\"([-\\d.]+)\" yMax=\"([-\\d.]+)\">(.*)</word>"));
        int words = 0;
        for (auto it = word.globalMatch(boxes); it.hasNext(); ++words) {
            const auto match = it.next();
            EXPECT_GE(match.captured(1).toDouble(), 44.0) << match.captured(5).toStdString(); // 16 mm are 45.4 pt
            EXPECT_LE(match.captured(3).toDouble(), width - 44.0) << match.captured(5).toStdString();
            EXPECT_GE(match.captured(2).toDouble(), 20.0) << match.captured(5).toStdString();
            EXPECT_LE(match.captured(4).toDouble(), height - 14.0) << match.captured(5).toStdString();
        }
        EXPECT_GT(words, 500);
    }
    const std::string text = longest().text().simplified().toStdString();
    EXPECT_THAT(text, HasSubstr("9R")); // the last of eighteen positions
}

TEST(SheetFile, repeats_the_head_of_a_table_on_each_page_that_it_runs_over) {
    const QStringList pages = longestOnLetter().text().split(QLatin1Char('\f'), Qt::SkipEmptyParts);
    int withRows = 0;
    for (const QString& page : pages) {
        if (page.contains(QRegularExpression(QStringLiteral("\\n *\\d[LR] +0\\.\\d+, 0")))) {
            ++withRows;
            EXPECT_TRUE(page.contains(QStringLiteral("Counted readings"))) << page.toStdString();
        }
    }
    EXPECT_GE(withRows, 2);
}

TEST(SheetFile, is_written_in_metric_units_when_asked) {
    SheetSample sample;
    SheetOptions options;
    options.units = {LengthUnit::millimetre, TorqueUnit::newtonMetre, ','};
    sample.assessIn(options.units);
    const QString path = Written::folder().filePath(QStringLiteral("metric.pdf"));
    ASSERT_TRUE(writeSheet(sample.source(), path, options));
    const std::string text =
        run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")}).text.toStdString();
    EXPECT_THAT(text, HasSubstr("101,7 N·m")); // 75 lbf·ft; NIST SP 811 B.8: 1 lbf·ft = 1.355 818 N·m
    EXPECT_THAT(text, testing::Not(HasSubstr(" in,")));
    EXPECT_THAT(text, testing::Not(HasSubstr("lbf")));
}

TEST(SheetFile, of_an_empty_record_is_a_sheet_that_says_so) {
    const Ledger ledger;
    const Facts facts;
    const Assessment assessment = assess(facts);
    const QString path = Written::folder().filePath(QStringLiteral("empty.pdf"));
    ASSERT_TRUE(writeSheet({ledger, facts, assessment, {}}, path, {}));
    const std::string text =
        run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")}).text.toStdString();
    EXPECT_THAT(text, HasSubstr("Engine not described"));
    EXPECT_THAT(text, HasSubstr("locked"));
}

TEST(SheetFile, that_cannot_be_written_is_refused_in_one_sentence) {
    const auto written = writeSheet(closed().sample.source(), QStringLiteral("/nowhere/at/all.pdf"), {});
    ASSERT_FALSE(written);
    EXPECT_THAT(written.error().sentence, HasSubstr("There is no folder “/nowhere/at”: make it first."));
}

TEST(SheetFile, takes_no_other_files_place_and_an_earlier_sheets_only_when_asked_to) {
    const QTemporaryDir folder;
    const auto writeTo = [&](const QString& name, bool mayReplace) {
        SheetOptions options;
        options.mayReplace = mayReplace;
        return writeSheet(closed().sample.source(), folder.filePath(name), options);
    };
    QFile letter(folder.filePath(QStringLiteral("letter.pdf")));
    ASSERT_TRUE(letter.open(QIODevice::ReadWrite));
    letter.write("SQLite format 3, or a letter");
    letter.close();
    EXPECT_THAT(writeTo(QStringLiteral("letter.pdf"), true).error().sentence, HasSubstr("neither a PDF nor a PNG"));
    EXPECT_EQ(letter.size(), 28);
    ASSERT_TRUE(writeTo(QStringLiteral("sheet.pdf"), false));
    EXPECT_THAT(writeTo(QStringLiteral("sheet.pdf"), false).error().sentence, HasSubstr("exists already"));
    EXPECT_TRUE(writeTo(QStringLiteral("sheet.pdf"), true));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size(), 2);
}

TEST(SheetFile, on_a_full_disk_says_what_is_wrong) {
    rlimit before{};
    ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &before), 0);
    const auto kept = std::signal(SIGXFSZ, SIG_IGN);
    rlimit small = before;
    small.rlim_cur = 4096; // no file may grow beyond: told like a full disk, by another number
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
    const SheetSource source = closed().sample.source(); // written once, while there is room
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
    const auto written = writeSheet(source, path, {});
    ::setrlimit(RLIMIT_FSIZE, &before);
    (void)std::signal(SIGXFSZ, kept);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().sentence, "“" + path.toStdString() + "” cannot be written: File too large.");
    EXPECT_TRUE(QDir(folder.path()).isEmpty(QDir::Files | QDir::Hidden));
}

TEST(SheetFile, is_given_its_properties_only_where_it_is_a_pdf) {
    const auto refused = sheet::finished("no such thing", {{}}, {});
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("cannot be finished"));
}

TEST(SheetFile, of_a_closed_build_is_written_in_under_a_second) {
    const SheetSource source = closed().sample.source();
    // Processor time: what other programs do meanwhile is no matter of the sheet's.
    const std::clock_t begun = std::clock();
    SheetOptions options;
    options.mayReplace = true;
    ASSERT_TRUE(writeSheet(source, Written::folder().filePath(QStringLiteral("timed.pdf")), options));
    const double seconds = static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC;
    RecordProperty("milliseconds", static_cast<int>(seconds * 1000));
    EXPECT_LT(seconds, 1.0);
}

} // namespace
} // namespace caprail
