// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the charts on screen and paper; with CAPRAIL_PICTURES=folder the pictures are kept for looking at.
#include "charts_data.h"
#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <charts/clearance_chart.h>
#include <charts/spread_chart.h>
#include <charts/verify_history_chart.h>
#include <gtest/gtest.h>

namespace caprail {

namespace {

void keep(const QImage& image, const QString& name) {
    const QString folder = qEnvironmentVariable("CAPRAIL_PICTURES");
    if (!folder.isEmpty()) {
        EXPECT_TRUE(image.save(folder + "/charts-" + name + ".png"));
    }
}

/// The box around everything that is not the ground.
QRect inkOf(const QImage& image, const QColor& ground) {
    QRect box;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (image.pixelColor(x, y) != ground) {
                box |= QRect(x, y, 1, 1);
            }
        }
    }
    return box;
}

QFont screenFont() {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(13);
    return font;
}

} // namespace

TEST(ChartPictures, are_drawn_in_both_looks) {
    const Assessment survey = surveyOf(9);
    const BearingData bearings = bearingsOf(5, 8);
    const Facts rounds = roundsOf(6, 52);
    for (const auto& [name, look] : {std::pair(QString("light"), lightLook()), {QString("dark"), darkLook()}}) {
        SpreadChart spread;
        ClearanceChart clearance;
        VerifyHistoryChart history;
        for (Chart* chart : std::initializer_list<Chart*>{&spread, &clearance, &history}) {
            chart->setFont(screenFont());
            chart->resize(760, 300);
        }
        spread.setData(survey, {}, look);
        clearance.setData(bearings.facts, bearings.assessment, {}, look);
        history.setData(rounds, {}, look);
        history.follow("main-1R");
        for (const auto& [chart, title] :
             {std::pair<Chart*, QString>(&spread, "spread"), {&clearance, "clearance"}, {&history, "history"}}) {
            const QImage image = chart->grab().toImage();
            EXPECT_GT(inkOf(image, look.paper).width(), 600) << title.toStdString();
            keep(image, title + "-" + name);
        }
    }
}

TEST(ChartPictures, fill_the_area_they_are_given_at_any_resolution) {
    const Assessment survey = surveyOf(5);
    for (const int dotsPerInch : {96, 300}) {
        const double dots = dotsPerInch / 72.0;
        QImage image(QSize(qRound(500 * dots), qRound(220 * dots)), QImage::Format_RGB32);
        image.setDotsPerMeterX(qRound(dotsPerInch / 0.0254));
        image.setDotsPerMeterY(qRound(dotsPerInch / 0.0254));
        image.fill(Qt::white);
        QPainter painter(&image);
        QFont font("DejaVu Sans");
        font.setPointSizeF(8);
        painter.setFont(font);
        const QRectF area(20 * dots, 10 * dots, 460 * dots, 200 * dots);
        drawSpreadChart(painter, area, survey, {}, paperLook());
        painter.end();
        const QRect ink = inkOf(image, Qt::white);
        EXPECT_TRUE(area.toAlignedRect().adjusted(-1, -1, 1, 1).contains(ink)) << dotsPerInch;
        EXPECT_GT(ink.width(), 0.9 * area.width()) << dotsPerInch;
        EXPECT_GT(ink.height(), 0.85 * area.height()) << dotsPerInch;
        keep(image, QStringLiteral("paper-%1").arg(dotsPerInch));
    }
}

TEST(ChartPictures, go_to_paper_as_vectors_with_texts) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(600);
    QPainter painter(&writer);
    painter.setFont(screenFont());
    QFont font("DejaVu Sans");
    font.setPointSizeF(8);
    painter.setFont(font);
    const BearingData bearings = bearingsOf(5, 8);
    drawSpreadChart(painter, QRectF(0, 0, 4200, 1600), surveyOf(5), {}, paperLook());
    drawClearanceChart(painter, QRectF(0, 1800, 4200, 1600), bearings.facts, bearings.assessment, {}, paperLook());
    drawVerifyHistoryChart(painter, QRectF(0, 3600, 4200, 1600), roundsOf(6, 52), {}, paperLook());
    painter.end();
    EXPECT_FALSE(bytes.contains("/Subtype /Image")) << "nothing was turned into pixels";
    EXPECT_TRUE(bytes.contains("/FontFile")) << "texts stay texts";
    const QString folder = qEnvironmentVariable("CAPRAIL_PICTURES");
    if (!folder.isEmpty()) {
        QFile file(folder + "/charts.pdf");
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
    }
}

} // namespace caprail
