// SPDX-License-Identifier: GPL-3.0-or-later
/// What a sheet tells a reader that speaks it, seen with poppler's and qpdf's eyes: ISO 32000-1, 14.8 (tagged PDF).
#include "sheet_sample.h"

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <functional>
#include <gtest/gtest.h>
#include <qpdf/QPDF.hh>

namespace caprail {
namespace {

QString output(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(60'000) && process.exitCode() == 0) << program.toStdString();
    return QString::fromUtf8(process.readAllStandardOutput());
}

class Tags : public testing::Test {
protected:
    static const QString& path() {
        static const QTemporaryDir folder;
        static const QString written = [] {
            const SheetSample sample({3, 2, 4, true, true});
            QString at = folder.filePath(QStringLiteral("sheet.pdf"));
            EXPECT_TRUE(writeSheet(sample.source(), at, {}));
            return at;
        }();
        return written;
    }
    /// The whole file as readable text.
    static const QString& opened() {
        static const QString text = [] {
            QProcess process;
            process.start(QStringLiteral("qpdf"), {QStringLiteral("--qdf"), QStringLiteral("--object-streams=disable"),
                                                   path(), QStringLiteral("-")});
            EXPECT_TRUE(process.waitForFinished(60'000));
            return QString::fromLatin1(process.readAllStandardOutput());
        }();
        return text;
    }
    /// The structure, an element a line, two spaces further in for each that holds it: "  Table", "    TR".
    static const QStringList& structure() {
        static const QStringList lines = [] {
            QPDF file;
            file.processFile(path().toLocal8Bit().constData());
            QStringList found;
            const std::function<void(QPDFObjectHandle, int)> walk = [&](QPDFObjectHandle element, int depth) {
                if (!element.isDictionary() || !element.hasKey("/S")) {
                    return; // what is painted
                }
                found << QString(2 * depth, QLatin1Char(' ')) +
                             QString::fromStdString(element.getKey("/S").getName()).mid(1);
                for (QPDFObjectHandle& kid : element.getKey("/K").getArrayAsVector()) {
                    walk(kid, depth + 1);
                }
            };
            walk(file.getRoot().getKey("/StructTreeRoot").getKey("/K"), 0);
            return found;
        }();
        return lines;
    }
};

} // namespace

TEST_F(Tags, the_file_says_that_it_is_tagged_in_which_language_and_shows_its_title) {
    EXPECT_TRUE(
        output(QStringLiteral("pdfinfo"), {path()}).contains(QRegularExpression(QStringLiteral("Tagged:\\s+yes"))));
    EXPECT_TRUE(opened().contains(QStringLiteral("/Lang (en)")));
    EXPECT_TRUE(opened().contains(QStringLiteral("/DisplayDocTitle true")));
}

TEST_F(Tags, of_a_title_headings_texts_and_tables_are_read_by_another_program_in_their_order) {
    const Ledger ledger; // of an empty record: poppler looks through the pages anew for each element
    const Facts facts = fold(ledger);
    const Assessment assessment = assess(facts);
    const QTemporaryDir folder;
    const QString at = folder.filePath(QStringLiteral("empty.pdf"));
    ASSERT_TRUE(writeSheet({ledger, facts, assessment, {}}, at, {}));
    const QString found = output(QStringLiteral("pdfinfo"), {QStringLiteral("-struct-text"), at});
    qsizetype last = -1;
    for (const char* said : {"H1 (block)\n    \"Build sheet\"", "P (block)\n    \"Engine not described\"",
                             "NOT FINISHED\"", "H2 (block)\n    \"The seal\""}) {
        const auto here = found.indexOf(QLatin1String(said));
        EXPECT_GT(here, last) << said << " in " << found.toStdString();
        last = here;
    }
}

TEST_F(Tags, begin_with_the_one_title_and_put_no_heading_under_none) {
    const QStringList& found = structure();
    ASSERT_GT(found.size(), 200);
    EXPECT_EQ(found.front(), QStringLiteral("Document"));
    EXPECT_EQ(found.count(QStringLiteral("  H1")), 1);
    EXPECT_LT(found.indexOf(QStringLiteral("  H1")), found.indexOf(QStringLiteral("  H2")));
    EXPECT_LT(found.indexOf(QStringLiteral("  H2")), found.indexOf(QStringLiteral("  H3")));
    EXPECT_GT(found.count(QStringLiteral("  H2")), 10);
}

TEST_F(Tags, tables_have_rows_of_cells_under_heads_and_a_head_that_is_printed_again_is_told_once) {
    const QStringList& found = structure();
    int tables = 0;
    int rows = 0;
    qsizetype columns = 0;
    qsizetype cells = 0;
    for (const QString& line : found) {
        if (line == QLatin1String("  Table")) {
            ++tables;
            rows = 0;
            columns = 0;
        } else if (line == QLatin1String("    TR")) {
            EXPECT_TRUE(rows++ == 0 || columns > 1);
            cells = 0;
        } else if (line == QLatin1String("      TH")) {
            EXPECT_EQ(rows, 1);
            ++columns;
        } else if (line == QLatin1String("      TD")) {
            EXPECT_GT(rows, 1);
            EXPECT_LE(++cells, columns);
        } else {
            EXPECT_EQ(line.indexOf(QRegularExpression(QStringLiteral("\\S"))),
                      line == QLatin1String("Document") ? 0 : 2)
                << line.toStdString();
        }
    }
    EXPECT_GT(tables, 8);
}

TEST_F(Tags, every_figure_says_what_it_shows) {
    int figures = 0;
    for (const QString& object : opened().split(QStringLiteral("endobj"))) {
        if (object.contains(QStringLiteral("/S /Figure"))) {
            ++figures;
            EXPECT_TRUE(object.contains(QRegularExpression(QStringLiteral("/Alt [(<]")))) << object.toStdString();
        }
    }
    EXPECT_GE(figures, 4) << "plan, clearances, survey, code of the seal";
}

TEST_F(Tags, all_that_is_painted_is_an_element_or_an_artifact_and_no_mark_is_left) {
    int depth = 0;
    int painted = 0;
    int sequences = 0;
    int textsInArtifacts = 0;
    int textsInElements = 0;
    int pageCount = 0;
    bool isArtifact = false;
    QString pages; // without what paints a pattern
    for (const QString& stream : opened().split(QStringLiteral("endstream"))) {
        const bool isPage = stream.contains(QStringLiteral(" BDC\n"));
        pages += isPage ? stream : QString();
        pageCount += isPage ? 1 : 0;
    }
    for (const QString& line : pages.split(QLatin1Char('\n'))) {
        if (line.endsWith(QLatin1String(" BDC")) || line.endsWith(QLatin1String(" BMC"))) {
            ASSERT_EQ(depth++, 0) << "sequences do not lie in each other";
            ++sequences;
            isArtifact = line.startsWith(QLatin1String("/Artifact"));
        } else if (line == QLatin1String("EMC")) {
            ASSERT_EQ(--depth, 0);
        } else if (line == QLatin1String("BT")) {
            ++(isArtifact ? textsInArtifacts : textsInElements);
        } else if (line.contains(QRegularExpression(QStringLiteral("( Tj|^S|^f\\*?|^B\\*?| Do)$")))) {
            ++painted;
            EXPECT_EQ(depth, 1) << line.toStdString();
        }
        EXPECT_FALSE(line.startsWith(QLatin1String("-100000 ")) || line.startsWith(QLatin1String("-200000 ")))
            << line.toStdString();
    }
    EXPECT_EQ(depth, 0);
    EXPECT_GT(painted, 1000);
    EXPECT_GT(sequences, 500);
    // The running heads and feet, and the heads of tables on their next pages.
    EXPECT_GE(textsInArtifacts, 4 * pageCount);
    EXPECT_LE(textsInArtifacts, 16 * pageCount) << "of " << textsInElements;
    EXPECT_GT(textsInElements, 10 * textsInArtifacts);
}

} // namespace caprail
