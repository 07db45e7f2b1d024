// SPDX-License-Identifier: GPL-3.0-or-later
/// Logo, clock, pictures, the page breaks, and the layout card measured on the finished paper.
#include "sheet_sample.h"

#include <QDir>
#include <QFile>
#include <QImageReader>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>
#include <sheet/document.h>
#include <sheet/logo.h>
#include <sheet/sections.h>

namespace caprail {
namespace {

using namespace sheet;
using testing::HasSubstr;

QString textOf(const QString& path) {
    QProcess process;
    process.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
    EXPECT_TRUE(process.waitForFinished(60'000));
    return QString::fromUtf8(process.readAllStandardOutput());
}

void write(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

TEST(SheetLogo, is_no_drawing_whatever_its_name_says) {
    const QTemporaryDir folder;
    const QByteArray drawing = "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' "
                               "width='40' height='10'><image width='40' height='10' xlink:href='/dev/zero'/></svg>";
    for (const char* name : {"shop.svg", "shop.png", "shop.jpg", "shop"}) {
        const QString path = folder.filePath(QString::fromLatin1(name));
        write(path, drawing);
        const auto logo = readLogo(path);
        ASSERT_FALSE(logo) << name;
        EXPECT_THAT(logo.error().sentence, HasSubstr("not a JPEG, PNG, WebP or HEIF picture"));
    }
    EXPECT_THAT(readLogo(QStringLiteral("/dev/zero")).error().sentence, HasSubstr("larger than"));
}

TEST(SheetLogo, is_never_larger_than_the_head_has_room_for) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("shop.png"));
    QImage huge(6000, 5000, QImage::Format_RGB32);
    huge.fill(Qt::darkCyan);
    ASSERT_TRUE(huge.save(path));
    const auto logo = readLogo(path);
    ASSERT_TRUE(logo);
    EXPECT_LE(logo->height(), 662); // 14 mm at 1200 dots per inch
    EXPECT_NEAR(static_cast<double>(logo->width()) / logo->height(), 1.2, 0.01);

    // On the page: poppler lists the picture with its resolution there, hence its size.
    const SheetSample sample({5, 2, 8, false, false});
    SheetOptions options;
    options.logo = *logo;
    const QString pdf = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(writeSheet(sample.source(), pdf, options));
    QProcess process;
    process.start(QStringLiteral("pdfimages"),
                  {QStringLiteral("-list"), QStringLiteral("-l"), QStringLiteral("1"), pdf});
    ASSERT_TRUE(process.waitForFinished());
    const QStringList words = QString::fromUtf8(process.readAll())
                                  .split(QLatin1Char('\n'), Qt::SkipEmptyParts)
                                  .last()
                                  .simplified()
                                  .split(QLatin1Char(' '));
    ASSERT_GT(words.size(), 13);
    EXPECT_EQ(words[8], QStringLiteral("image")) << words.join(QLatin1Char(' ')).toStdString(); // not jpeg: lossless
    EXPECT_NEAR(words[3].toDouble() / words[12].toDouble() * 25.4, 14 * 1.2, 0.3);
    EXPECT_NEAR(words[4].toDouble() / words[13].toDouble() * 25.4, 14, 0.3);
}

TEST(SheetLogo, that_is_no_picture_is_refused_in_one_sentence) {
    const QTemporaryDir folder;
    for (const char* name : {"text.png", "text.svg", "text.jpg"}) {
        const QString path = folder.filePath(QString::fromLatin1(name));
        write(path, "this is no picture");
        const auto logo = readLogo(path);
        ASSERT_FALSE(logo) << name;
        EXPECT_THAT(logo.error().sentence, HasSubstr(name));
        EXPECT_THAT(logo.error().sentence, HasSubstr("choose another picture"));
    }
    EXPECT_FALSE(readLogo(folder.filePath(QStringLiteral("missing.png"))));
}

TEST(SheetClock, shows_the_local_time_of_the_zone_that_it_names_on_every_page) {
    const SheetSample sample;
    const QTemporaryDir folder;
    SheetOptions options;
    options.zone = QTimeZone("Europe/Berlin");
    const QString path = folder.filePath(QStringLiteral("local.pdf"));
    ASSERT_TRUE(writeSheet(sample.source(), path, options));
    const QStringList pages = textOf(path).split(QLatin1Char('\f'), Qt::SkipEmptyParts);
    for (const QString& page : pages) {
        EXPECT_TRUE(page.contains(QStringLiteral("Times: Europe/Berlin, UTC+01:00"))) << page.toStdString();
    }
    // The sign-off's UTC time in the record, one hour on in Berlin's winter.
    const auto utc = QString::fromStdString(format(sample.facts.signedOff->time));
    const QDateTime moment = QDateTime::fromString(utc, Qt::ISODateWithMs);
    ASSERT_TRUE(moment.isValid());
    const QString local = moment.addSecs(3600).toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm"));
    EXPECT_THAT(pages.join(QLatin1Char(' ')).simplified().toStdString(),
                HasSubstr("signed off by Mira Sand on " + local.toStdString()));
}

TEST(SheetClock, names_both_distances_when_the_clocks_were_changed_meanwhile) {
    Ledger ledger;
    // 2026-03-28 and 2026-03-30, 12:00 UTC: on 2026-03-29 Europe's clocks go forward (IANA time zone database).
    ledger.append({1'774'699'200'000}, "Mira", PersonAdded{"Mira", "assembler"});
    ledger.append({1'774'872'000'000}, "Mira", PersonAdded{"Tomas", ""});
    EXPECT_EQ(zoneText(ledger, QTimeZone("Europe/Berlin")), QStringLiteral("Europe/Berlin, UTC+01:00, UTC+02:00"));
    EXPECT_EQ(zoneText(ledger, QTimeZone("America/St_Johns")), QStringLiteral("America/St_Johns, UTC−02:30"));
    EXPECT_EQ(zoneText(ledger, QTimeZone::utc()), QStringLiteral("UTC"));
}

TEST(SheetPictures, are_one_png_a_page_of_150_dots_per_inch_beside_each_other) {
    const SheetSample sample;
    const QTemporaryDir folder;
    SheetOptions options;
    options.pageSize = QPageSize::Letter;
    const auto written = writeSheetPages(sample.source(), folder.filePath(QStringLiteral("kl-2207.png")), options);
    ASSERT_TRUE(written) << written.error().sentence;
    const Document document(sample.source(), options, pageSize(QPageSize::Letter));
    ASSERT_EQ(written->size(), document.pages());
    EXPECT_EQ(written->first(), folder.filePath(QStringLiteral("kl-2207-1.png")));
    for (const QString& path : *written) {
        QImageReader reader(path);
        EXPECT_EQ(reader.format(), "png");
        const QImage picture = reader.read();
        EXPECT_EQ(picture.size(), QSize(1275, 1650)); // 8.5 in × 11 in, 150 times
        EXPECT_NEAR(picture.dotsPerMeterX(), 5906, 1);
        EXPECT_LT(QFile(path).size(), 1'000'000); // a message takes it
    }
    const auto refused = writeSheetPages(sample.source(), QStringLiteral("/nowhere/at/all.png"), options);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("There is no folder “/nowhere/at”"));
}

TEST(SheetPictures, are_not_written_at_all_when_one_of_them_would_take_the_place_of_another_file) {
    const SheetSample sample;
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.png"));
    write(folder.filePath(QStringLiteral("a-2.png")), "a letter");
    SheetOptions options;
    options.mayReplace = true;
    EXPECT_THAT(writeSheetPages(sample.source(), path, options).error().sentence, HasSubstr("neither a PDF nor a PNG"));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files), QStringList{QStringLiteral("a-2.png")});
    QFile::remove(folder.filePath(QStringLiteral("a-2.png")));
    const auto written = writeSheetPages(sample.source(), path, {});
    ASSERT_TRUE(written);
    EXPECT_EQ(existingPages(path).size(), written->size());
    EXPECT_THAT(writeSheetPages(sample.source(), path, {}).error().sentence, HasSubstr("exists already"));
    EXPECT_TRUE(writeSheetPages(sample.source(), path, options));
}

TEST(SheetPhotos, say_when_they_were_taken) {
    const SheetSample sample;
    ASSERT_FALSE(sample.photos.empty());
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(writeSheet(sample.source(), path, {}));
    EXPECT_THAT(textOf(path).simplified().toStdString(), HasSubstr("Taken 2026-05-03 09:30 by the camera's clock"));
}

TEST(SheetPhotos, that_are_drawings_are_not_drawn) {
    SheetSample sample;
    const QByteArray drawing =
        "<svg xmlns='http://www.w3.org/2000/svg' width='40' height='40'><rect width='40' height='40'/></svg>";
    for (auto& [hash, bytes] : sample.photos) {
        bytes = drawing;
    }
    ASSERT_FALSE(sample.photos.empty());
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(writeSheet(sample.source(), path, {}));
    EXPECT_THAT(textOf(path).toStdString(), HasSubstr("cannot be shown"));
}

TEST(SheetFlow, leaves_no_row_of_a_table_alone_on_a_page) {
    const SheetType type;
    // Whatever room is left on the first page, the last page of the table holds two rows or more.
    for (int above = 0; above < 60; ++above) {
        SheetFlow flow(pageSize(QPageSize::A4), type);
        flow.figure(mm(20 + above), QStringLiteral("a drawing"), [](QPainter&, const QRectF&) {});
        SheetTable table{{{QStringLiteral("Place")}}, {}};
        for (int row = 0; row < 48; ++row) {
            table.rows.push_back({SheetCell(QString::number(row))});
        }
        flow.table(table);
        ASSERT_EQ(flow.pages().size(), 2U);
        EXPECT_GE(flow.pages()[1].marks.size(), 3U) << above; // its head and two rows
        EXPECT_EQ(flow.pages()[0].marks.size() + flow.pages()[1].marks.size(), 1U + 2U + 48U);
    }
}

TEST(SheetFlow, keeps_together_what_a_page_holds_and_parts_what_none_does) {
    const SheetType type;
    const auto pagesOf = [&](qreal above, int figures) {
        SheetFlow flow(pageSize(QPageSize::A4), type);
        flow.figure(above, QStringLiteral("a drawing"), [](QPainter&, const QRectF&) {});
        flow.together([&] {
            flow.heading(QStringLiteral("Heading"));
            for (int i = 0; i < figures; ++i) {
                flow.figure(mm(60), QStringLiteral("a drawing"), [](QPainter&, const QRectF&) {});
            }
        });
        std::vector<std::size_t> marks;
        for (const SheetPage& page : flow.pages()) {
            marks.push_back(page.marks.size());
        }
        return marks;
    };
    EXPECT_EQ(pagesOf(mm(40), 2), (std::vector<std::size_t>{4}));
    EXPECT_EQ(pagesOf(mm(160), 2), (std::vector<std::size_t>{1, 3})); // one of the two would have fitted
    EXPECT_EQ(pagesOf(mm(160), 6).front(), 1U);
    EXPECT_EQ(pagesOf(mm(160), 6).size(), 3U);
}

TEST(SheetTable, says_once_above_what_stands_in_every_row) {
    SheetTable table{{{QStringLiteral("Fit")}, {QStringLiteral("By")}},
                     {{SheetCell(QStringLiteral("a")), SheetCell(QStringLiteral("the maker"))},
                      {SheetCell(QStringLiteral("b")), SheetCell(QStringLiteral("the maker"))}}};
    EXPECT_EQ(takeCommon(table, 0), std::nullopt);
    EXPECT_EQ(takeCommon(table, 1), QStringLiteral("the maker"));
    EXPECT_EQ(table.columns.size(), 1U);
    EXPECT_EQ(table.rows[1].size(), 1U);
}

/// Sizes on a finished page in points, as poppler and cairo see them: circles by their diameter, lines by their length.
struct Drawn {
    std::vector<double> circles;
    std::vector<double> lines;
};

Drawn drawnOn(const QString& pdf) {
    QProcess process;
    process.start(QStringLiteral("pdftocairo"),
                  {QStringLiteral("-svg"), QStringLiteral("-l"), QStringLiteral("1"), pdf, QStringLiteral("-")});
    EXPECT_TRUE(process.waitForFinished(60'000));
    const QString svg = QString::fromUtf8(process.readAllStandardOutput());
    Drawn drawn;
    static const QRegularExpression path(QStringLiteral("<path [^>]*\\bd=\"([^\"]*)\"[^>]*>"));
    static const QRegularExpression scale(QStringLiteral("transform=\"matrix\\(([-\\d.e]+)"));
    static const QRegularExpression point(QStringLiteral("([-\\d.]+) ([-\\d.]+)(?= [A-Z]|$| *$)"));
    for (auto it = path.globalMatch(svg); it.hasNext();) {
        const auto match = it.next();
        const QString d = match.captured(1);
        const auto matrix = scale.match(match.captured(0));
        const double unit = matrix.hasMatch() ? std::abs(matrix.captured(1).toDouble()) : 1;
        double left = 1e9, right = -1e9, top = 1e9, bottom = -1e9;
        int points = 0;
        for (auto p = point.globalMatch(d); p.hasNext(); ++points) {
            const auto at = p.next();
            left = std::min(left, at.captured(1).toDouble());
            right = std::max(right, at.captured(1).toDouble());
            top = std::min(top, at.captured(2).toDouble());
            bottom = std::max(bottom, at.captured(2).toDouble());
        }
        const double width = (right - left) * unit;
        const double height = (bottom - top) * unit;
        if (d.count(QLatin1Char('C')) == 4 && std::abs(width - height) < 0.05) {
            drawn.circles.push_back(width); // a circle's four curves end at its four sides
        } else if (points == 2 && !d.contains(QLatin1Char('C')) && height < 0.01) {
            drawn.lines.push_back(width);
        }
    }
    return drawn;
}

TEST(LayoutCard, is_true_to_scale_on_paper) {
    const SheetSample sample; // main studs of 7/16 in
    const QTemporaryDir folder;
    for (const QPageSize::PageSizeId paper : {QPageSize::A4, QPageSize::Letter}) {
        for (const LengthUnit unit : {LengthUnit::inch, LengthUnit::millimetre}) {
            SheetOptions options;
            options.pageSize = paper;
            options.units.length = unit;
            options.mayReplace = true;
            const QString path = folder.filePath(QStringLiteral("card.pdf"));
            ASSERT_TRUE(writeLayoutCard(sample.source(), path, options));
            const Drawn drawn = drawnOn(path);
            // A PDF's unit is 1/72 in: ISO 32000-1, 8.3.2.3; from memory. The rule lies beside the words that name it.
            const double rule = unit == LengthUnit::inch ? 2 * 72 : 50 / 25.4 * 72;
            EXPECT_THAT(drawn.lines, testing::Contains(testing::DoubleNear(rule, 0.1)));
            const auto ofDiameter = [&](double points) {
                return std::ranges::count_if(drawn.circles, [=](double d) { return std::abs(d - points) < 0.1; });
            };
            // Ten positions: a ring of 0.9625 in (2.2 studs), and in it the stud of 7/16 in.
            EXPECT_EQ(ofDiameter(7.0 / 16 * 2.2 * 72), 10);
            EXPECT_EQ(ofDiameter(7.0 / 16 * 72), 10);
        }
    }
}

} // namespace
} // namespace caprail
