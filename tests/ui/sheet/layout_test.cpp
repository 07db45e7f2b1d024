// SPDX-License-Identifier: GPL-3.0-or-later
/// How the sheet is laid out, printed and pictured; the layout card.
#include "../../bench/large_record.h"
#include "sheet_sample.h"

#include <QFile>
#include <QPrinter>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <numeric>
#include <sheet/document.h>
#include <sheet/layout_card.h>
#include <sheet/sheet_text.h>

namespace caprail {
namespace {

using namespace sheet;

TEST(SheetTable, is_never_wider_than_the_page_whatever_it_holds) {
    const SheetType type;
    for (const int columns : {1, 3, 12}) {
        SheetTable table;
        std::vector<SheetCell> row;
        for (int c = 0; c < columns; ++c) {
            table.columns.push_back({QStringLiteral("Head of column")});
            row.emplace_back(QString(150 * (c + 1), QLatin1Char('W')));
        }
        table.rows.push_back(row);
        const TableLayout layout(table, type, mm(178));
        EXPECT_NEAR(std::accumulate(layout.widths().begin(), layout.widths().end(), 0.0), mm(178), 1);
        EXPECT_GT(layout.linesOf(0), 1);
    }
}

TEST(SheetTable, gives_a_short_column_its_width_beside_a_long_text) {
    const SheetType type;
    SheetTable table{
        {{QStringLiteral("A")}, {QStringLiteral("B")}},
        {{SheetCell(QStringLiteral("2026-05-04")), SheetCell(QString(QStringLiteral("word ")).repeated(200))}}};
    const TableLayout layout(table, type, mm(178));
    EXPECT_GE(layout.widths()[0], TextBlock::widthsOf(QStringLiteral("2026-05-04"), type.cell).line);
}

TEST(SheetFlow, parts_a_row_that_is_taller_than_a_page) {
    const SheetType type;
    SheetFlow flow(pageSize(QPageSize::A4), type);
    flow.table({{{QStringLiteral("Note")}}, {{SheetCell(QString(QStringLiteral("word ")).repeated(6000))}}});
    EXPECT_GT(flow.pages().size(), 1U);
}

TEST(SheetFlow, keeps_a_heading_with_what_follows) {
    const SheetType type;
    SheetFlow flow(pageSize(QPageSize::A4), type);
    const qreal body = pageSize(QPageSize::A4).height() - type.topMargin - type.bottomMargin;
    flow.figure(body - points(40), QStringLiteral("a drawing"), [](QPainter&, const QRectF&) {});
    ASSERT_EQ(flow.pages().size(), 1U);
    flow.heading(QStringLiteral("Heading"));
    flow.figure(mm(30), QStringLiteral("a drawing"), [](QPainter&, const QRectF&) {});
    ASSERT_EQ(flow.pages().size(), 2U);
    EXPECT_EQ(flow.pages()[0].marks.size(), 1U);
    EXPECT_EQ(flow.pages()[1].marks.size(), 2U);
}

TEST(Sheet, has_as_many_pictures_as_pages_at_the_resolution_asked_for) {
    const SheetSample sample;
    const Document document(sample.source(), {}, pageSize(QPageSize::A4));
    const auto pictures = sheetPages(sample.source(), {}, 72);
    ASSERT_EQ(static_cast<int>(pictures.size()), document.pages());
    for (const QImage& picture : pictures) {
        EXPECT_EQ(picture.size(), QSize(595, 842)); // A4 in points, ISO 216: 210 mm × 297 mm
        EXPECT_NE(picture, [&] {
            QImage blank(picture.size(), picture.format());
            blank.fill(Qt::white);
            return blank;
        }());
    }
}

TEST(Sheet, is_printed_as_far_as_the_pages_asked_for) {
    const SheetSample sample;
    const QTemporaryDir folder;
    const auto sizeOf = [&](int from, int to) {
        QPrinter printer(QPrinter::HighResolution);
        printer.setPageSize(QPageSize(QPageSize::Letter));
        printer.setOutputFileName(folder.filePath(QStringLiteral("print.pdf")));
        if (from > 0) {
            printer.setPrintRange(QPrinter::PageRange);
            printer.setFromTo(from, to);
        }
        paintSheet(sample.source(), printer, {});
        QFile file(printer.outputFileName());
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll().count("/Type /Page\n");
    };
    const Document document(sample.source(), {}, pageSize(QPageSize::Letter));
    EXPECT_EQ(sizeOf(0, 0), document.pages());
    EXPECT_EQ(sizeOf(2, 3), 2);
}

TEST(LayoutCard, lies_as_on_the_engine_only_where_the_paper_is_large_enough) {
    const SheetSample sample;
    EXPECT_FALSE(LayoutCard(sample.source(), {}, pageSize(QPageSize::A4)).isTrueSpacing()); // 17.6 in from cap 1 to 5
    EXPECT_TRUE(LayoutCard(sample.source(), {}, pageSize(QPageSize::A2)).isTrueSpacing());
}

TEST(LayoutCard, holds_every_position_of_the_longest_engine) {
    const SheetSample sample({9, 2, 16, true, false});
    SheetOptions options;
    const QTemporaryDir folder;
    const QString kept = qEnvironmentVariable("KEEP_SHEETS");
    const QString path = (kept.isEmpty() ? folder.path() : kept) + QStringLiteral("/card.pdf");
    const auto written = writeLayoutCard(sample.source(), path, options);
    ASSERT_TRUE(written) << written.error().sentence;
    QProcess process;
    process.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
    ASSERT_TRUE(process.waitForFinished());
    const QString text = QString::fromUtf8(process.readAll());
    for (const Position p : sample.facts.layout->positions()) {
        const QString name = QString::fromStdString("S" + code(p) + "a");
        EXPECT_EQ(text.count(name), 1) << name.toStdString();
    }
}

TEST(LayoutCard, needs_a_layout) {
    const Ledger ledger;
    const Facts facts;
    const Assessment assessment = assess(facts);
    const auto written = writeLayoutCard({ledger, facts, assessment, {}}, QStringLiteral("unused.pdf"), {});
    ASSERT_FALSE(written);
    EXPECT_THAT(written.error().sentence, testing::HasSubstr("engine layout"));
}

QString rowsText(const SheetTable& table) {
    QStringList rows;
    for (const auto& row : table.rows) {
        rows << row.front().text;
    }
    return rows.join(QLatin1Char(' '));
}

TEST(SheetTable, of_many_rows_prints_the_last_and_leaves_out_none_that_is_not_good_without_a_word) {
    SheetTable table{{{QStringLiteral("Finding")}, {QStringLiteral("State")}}, {}};
    for (int i = 1; i <= 1000; ++i) {
        table.rows.push_back(
            {QStringLiteral("F%1;").arg(i), stateCell(i == 3 || i == 40 ? CheckState::out : CheckState::good)});
    }
    const QString said = abridge(table);
    EXPECT_EQ(said, QStringLiteral("Of 1000 rows 102 are printed: the last 100, and before them 2 that are not good. "
                                   "The record holds them all."));
    EXPECT_TRUE(rowsText(table).startsWith(QStringLiteral("F3; F40; F901;"))) << rowsText(table).toStdString();
    EXPECT_TRUE(rowsText(table).endsWith(QStringLiteral("F1000;")));

    SheetTable open{{{QStringLiteral("Finding")}, {QStringLiteral("State")}}, {}};
    for (int i = 1; i <= 1000; ++i) {
        open.rows.push_back({QStringLiteral("F%1;").arg(i), stateCell(CheckState::out)});
    }
    EXPECT_TRUE(abridge(open).contains(QStringLiteral("800 more that are not good are not printed.")));

    SheetTable few{{{QStringLiteral("Note")}}, {}};
    for (int i = 1; i <= 200; ++i) {
        few.rows.push_back({QStringLiteral("note %1").arg(i)});
    }
    EXPECT_TRUE(abridge(few).isEmpty());
    EXPECT_EQ(few.rows.size(), 200U);
}

TEST(SheetTable, of_few_rows_with_very_long_texts_prints_no_more_than_can_be_set_in_a_moment) {
    SheetTable table{{{QStringLiteral("Note")}}, {}};
    for (int i = 0; i < 60; ++i) {
        table.rows.push_back({QString(100'000, QLatin1Char('w'))});
    }
    EXPECT_TRUE(abridge(table).startsWith(QStringLiteral("Of 60 rows the last 5 are printed.")));
    const SheetType type;
    const TextBlock block(QString(300'000, QLatin1Char('w')), type.cell, mm(178));
    EXPECT_LT(block.lines(), TextBlock(QString(45'000, QLatin1Char('w')), type.cell, mm(178)).lines() + 5);
}

TEST(SheetText, of_many_readings_at_one_place_says_how_many_and_prints_the_last) {
    std::vector<Length> readings;
    for (int i = 0; i < 24; ++i) {
        readings.push_back(thou(50 + i));
    }
    EXPECT_EQ(readingsText(readings, {}).count(QLatin1Char(',')), 23);
    readings.push_back(thou(20));
    const QString said = readingsText(readings, {});
    EXPECT_TRUE(said.startsWith(QStringLiteral("25 readings, 0.0200 to 0.0730; the last 12: "))) << said.toStdString();
    EXPECT_EQ(said.section(QStringLiteral(": "), 1).count(QLatin1Char(',')), 11);
}

TEST(Document, of_a_record_with_twenty_thousand_entries_is_a_few_pages_and_says_what_it_leaves_out) {
    Ledger ledger = largerecord::ledgerOf(SAMPLE_BUILDS, 20'000, largerecord::Manner::heaped);
    const std::string person = ledger.entries().back().person;
    ledger.append({1}, person, FindingOpened{"A-first", "3R", "a crack that nobody settled"});
    for (int i = 0; i < 300; ++i) {
        const std::string name = "later-" + std::to_string(i);
        ledger.append({2}, person, FindingOpened{name, "3R", "a burr"});
        ledger.append({2}, person, FindingSettled{name, "stoned flat"});
        ledger.append({2}, person, NoteAdded{"", "later"});
    }
    const Facts facts = fold(ledger);
    const Assessment assessment = assess(facts);
    const SheetSource source{ledger, facts, assessment, {}};
    EXPECT_LT(Document(source, {}, pageSize(QPageSize::A4)).pages(), 40);
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("large.pdf"));
    ASSERT_TRUE(writeSheet(source, path, {}));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished());
    const QString said = QString::fromUtf8(reader.readAllStandardOutput()).simplified();
    const auto isSaid = [&](const char* words) { return said.contains(QRegularExpression(QString::fromUtf8(words))); };
    EXPECT_TRUE(isSaid("A-first 3R a crack that nobody settled")) << "an open finding is printed however old it is";
    EXPECT_TRUE(isSaid("Of [0-9]+ rows 101 are printed: the last 100, and before them 1 that are not good."));
    EXPECT_TRUE(isSaid("Of [0-9]+ rows the last 100 are printed. The record holds them all."));
    EXPECT_TRUE(isSaid("The drawing shows the last readings of each position"));
    EXPECT_TRUE(isSaid("[0-9]+ readings, [0-9.]+ to [0-9.]+; the last 12: "));
}

} // namespace
} // namespace caprail
