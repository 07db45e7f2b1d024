// SPDX-License-Identifier: GPL-3.0-or-later
/// How the sheet is laid out, printed and pictured; the layout card.
#include "sheet_sample.h"

#include <QFile>
#include <QPrinter>
#include <QProcess>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <numeric>
#include <sheet/document.h>
#include <sheet/layout_card.h>

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
    flow.figure(body - points(40), [](QPainter&, const QRectF&) {});
    ASSERT_EQ(flow.pages().size(), 1U);
    flow.heading(QStringLiteral("Heading"));
    flow.figure(mm(30), [](QPainter&, const QRectF&) {});
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

} // namespace
} // namespace caprail
