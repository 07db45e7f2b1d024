// SPDX-License-Identifier: GPL-3.0-or-later
#include "../../girdles.h"
#include "charts_data.h"
#include <QSignalSpy>
#include <QTest>
#include <charts/clearance_chart.h>
#include <charts/contours.h>
#include <charts/deflection_chart.h>
#include <charts/feel_chart.h>
#include <charts/film_chart.h>
#include <charts/spread_chart.h>
#include <charts/verify_history_chart.h>
#include <cmath>
#include <gtest/gtest.h>

namespace caprail {

namespace {

template <class Drawn> std::size_t itemsOf(const QCustomPlot& plot) {
    std::size_t count = 0;
    for (int i = 0; i < plot.itemCount(); ++i) {
        count += qobject_cast<Drawn*>(plot.item(i)) != nullptr ? 1U : 0U;
    }
    return count;
}

QString textOfItems(const QCustomPlot& plot) {
    QStringList texts;
    for (int i = 0; i < plot.itemCount(); ++i) {
        if (const auto* text = qobject_cast<QCPItemText*>(plot.item(i))) {
            texts << text->text();
        }
    }
    return texts.join("|");
}

/// Data points of all graphs that draw markers.
int markedPoints(const QCustomPlot& plot) {
    int count = 0;
    for (int i = 0; i < plot.graphCount(); ++i) {
        if (!plot.graph(i)->scatterStyle().isNone()) {
            count += plot.graph(i)->dataCount();
        }
    }
    return count;
}

void prepare(Chart& chart) {
    chart.resize(700, 280);
    chart.show();
    chart.replot(QCustomPlot::rpImmediateRefresh);
}

} // namespace

TEST(SpreadChart, has_as_many_points_as_readings) {
    SpreadChart chart;
    chart.setData(surveyOf(5), {}, lightLook());
    EXPECT_EQ(chart.points().size(), 22U) << "two passes over ten positions, and two readings that fell";
    EXPECT_EQ(markedPoints(chart), 22);
    chart.setData(surveyOf(5), {}, lightLook());
    EXPECT_EQ(markedPoints(chart), 22) << "filling it anew takes off what was there";
}

TEST(SpreadChart, is_given_as_a_drawing_with_its_words_and_as_a_picture) {
    SpreadChart chart;
    prepare(chart);
    EXPECT_TRUE(svgOf(chart.given()).isEmpty()) << "without readings there is nothing to give";
    chart.setData(surveyOf(5), {}, lightLook());
    const QByteArray svg = svgOf(chart.given());
    EXPECT_TRUE(svg.contains("<svg") && svg.contains("<desc>" + chart.accessibleDescription().toHtmlEscaped().toUtf8()))
        << svg.left(600).toStdString();
    const QImage image = imageOf(chart.given());
    EXPECT_EQ(image.size(), chart.size() * 2);
    EXPECT_EQ(image.pixelColor(3, 3), lightLook().paper);
    EXPECT_EQ(chart.actions().size(), 3);
}

TEST(SpreadChart, draws_current_readings_filled_and_outdated_ones_hollow) {
    SpreadChart chart;
    chart.setData(surveyOf(5), {}, lightLook());
    int hollow = 0;
    int filled = 0;
    for (int i = 0; i < chart.graphCount(); ++i) {
        const QCPScatterStyle style = chart.graph(i)->scatterStyle();
        if (!style.isNone()) {
            (style.brush().style() == Qt::NoBrush ? hollow : filled) += chart.graph(i)->dataCount();
        }
    }
    EXPECT_EQ(hollow, 2);
    EXPECT_EQ(filled, 20);
}

TEST(SpreadChart, puts_left_and_right_of_a_cap_side_by_side) {
    SpreadChart chart;
    chart.setData(surveyOf(5), {}, lightLook());
    for (const ChartPoint& point : chart.points()) {
        const Position position = *parsePosition(point.place.toStdString());
        EXPECT_LT(std::abs(point.at.x() - position.cap), 0.5);
        EXPECT_EQ(point.at.x() < position.cap, position.side == Side::left) << point.place.toStdString();
    }
}

// A survey whose largest gap is 75 and smallest 39 thou has a spread of 36 thou: common practice, no source.
TEST(SpreadChart, writes_the_spread_between_its_lines) {
    SpreadChart chart;
    chart.setData(surveyOf(5), {}, lightLook());
    EXPECT_EQ(textOfItems(chart), "spread 0.0360 in");
    EXPECT_TRUE(chart.accessibleDescription().contains("from 0.0390 in to 0.0750 in, spread 0.0360 in"))
        << chart.accessibleDescription().toStdString();
    Units metric;
    metric.length = LengthUnit::millimetre;
    metric.decimalMark = ',';
    chart.setData(surveyOf(5), metric, lightLook());
    EXPECT_EQ(textOfItems(chart), "spread 0,914 mm"); // 0.036 in is 0.9144 mm
    EXPECT_NEAR(chart.points().front().at.y(),
                inMillimetres(surveyOf(5).gaps.begin()->second.outdated.front().what.gap.value), 1e-12);
    EXPECT_TRUE(chart.yAxis->label().contains("mm"));
    chart.replot();
    EXPECT_TRUE(chart.yAxis->tickVectorLabels().join(' ').contains(',')) << "the user's decimal mark on the axis";
}

TEST(SpreadChart, says_which_place_was_clicked) {
    SpreadChart chart;
    prepare(chart);
    chart.setData(surveyOf(5), {}, lightLook());
    chart.replot(QCustomPlot::rpImmediateRefresh);
    const QSignalSpy places(&chart, &Chart::placeSelected);
    const QSignalSpy entries(&chart, &Chart::entrySelected);
    const ChartPoint wanted = chart.points()[7];
    QTest::mouseClick(&chart, Qt::LeftButton, {}, chart.widgetPointOf(wanted).toPoint());
    ASSERT_EQ(places.size(), 1);
    EXPECT_EQ(places[0][0].toString(), wanted.place);
    ASSERT_EQ(entries.size(), 1);
    EXPECT_EQ(entries[0][0].toLongLong(), wanted.entry);
    QTest::mouseClick(&chart, Qt::LeftButton, {}, {2, 2});
    EXPECT_EQ(places.size(), 1) << "beside every point nothing is selected";
}

TEST(SpreadChart, is_walked_over_with_the_arrow_keys) {
    SpreadChart chart;
    prepare(chart);
    chart.setData(surveyOf(3), {}, lightLook());
    const QSignalSpy places(&chart, &Chart::placeSelected);
    QTest::keyClick(&chart, Qt::Key_Right);
    QTest::keyClick(&chart, Qt::Key_Right);
    QTest::keyClick(&chart, Qt::Key_Left);
    ASSERT_EQ(places.size(), 3);
    EXPECT_EQ(places[0][0].toString(), chart.points()[0].place);
    EXPECT_EQ(places[1][0].toString(), chart.points()[1].place);
    EXPECT_EQ(places[2][0].toString(), chart.points()[0].place);
}

TEST(SpreadChart, says_in_words_what_each_point_is) {
    SpreadChart chart;
    chart.setData(surveyOf(5), {}, lightLook());
    const QString words = chart.points().back().words;
    EXPECT_TRUE(words.startsWith("cap 5 right: ")) << words.toStdString();
    EXPECT_TRUE(words.contains("pass 2"));
    EXPECT_TRUE(words.contains("A. Ames, FG-2, "));
    EXPECT_TRUE(chart.points().front().words.contains("no longer counts"));
}

TEST(SpreadChart, says_what_will_appear_while_there_is_nothing) {
    SpreadChart chart;
    chart.setData({}, {}, darkLook());
    EXPECT_TRUE(chart.points().empty());
    EXPECT_EQ(textOfItems(chart), "Every gap that is read appears here.");
    EXPECT_EQ(chart.accessibleDescription(), "No gap has been read yet.");
    chart.setData(surveyOf(3), {}, darkLook());
    EXPECT_FALSE(textOfItems(chart).contains("appears here"));
    EXPECT_TRUE(chart.axisRect()->visible());
}

TEST(ClearanceChart, shows_every_known_clearance_against_its_band) {
    const BearingData data = bearingsOf(5, 8);
    ClearanceChart chart;
    chart.setData(data.facts, data.assessment, {}, lightLook());
    EXPECT_EQ(chart.points().size(), 12U) << "thirteen bearings, one without a bore";
    EXPECT_EQ(markedPoints(chart), 12);
    EXPECT_EQ(itemsOf<QCPItemRect>(chart), 2U) << "the band of the mains and that of the rods";
    EXPECT_EQ(textOfItems(chart), "mains\nlimits 0.0020 to 0.0027 in|rods\nlimits 0.0018 to 0.0024 in");
    const QCPRange range = chart.yAxis->range();
    EXPECT_TRUE(range.contains(0.0020) && range.contains(0.0027)) << "a band is never cut off";
    EXPECT_TRUE(chart.accessibleDescription().startsWith("Clearance of 12 of 13 bearings is known"))
        << chart.accessibleDescription().toStdString();
}

TEST(ClearanceChart, draws_whiskers_and_uncertainty_from_the_figures) {
    const BearingData data = bearingsOf(5, 8);
    QCustomPlot plot;
    fillClearanceChart(plot, data.facts, data.assessment, {}, lightLook());
    std::vector<QCPErrorBars*> bars;
    for (int i = 0; i < plot.plottableCount(); ++i) {
        if (auto* found = qobject_cast<QCPErrorBars*>(plot.plottable(i))) {
            bars.push_back(found);
        }
    }
    ASSERT_EQ(bars.size(), 2U);
    const ClearanceResult& first = data.assessment.clearances.at({JournalKind::main, 1});
    EXPECT_NEAR(bars[0]->data()->at(0).errorMinus, inInches(*first.clearance - *first.smallest), 1e-12);
    EXPECT_NEAR(bars[0]->data()->at(0).errorPlus, inInches(*first.largest - *first.clearance), 1e-12);
    EXPECT_NEAR(bars[1]->data()->at(0).errorPlus, *first.uncertainty().expanded() / 25'400'000, 1e-12);
}

TEST(FeelChart, draws_the_answers_over_the_step_with_the_fitted_curves_and_delta) {
    FeelChart chart;
    chart.setData({}, {}, lightLook());
    EXPECT_TRUE(chart.points().empty());
    EXPECT_TRUE(textOfItems(chart).contains("appears here"));
    FeelStudyFact study;
    for (int i = 0; i < 55; ++i) {
        const int tenth = i * 7 % 11 - 5;
        const int turns = i % 2 == 0 ? 1 : 3;
        study.answers.push_back({i + 1, {}, "Mira",
                                 {1, {tenths(tenth), ""}, {}, tenth > turns ? Feel::rocks : tenth < -turns ? Feel::loose : Feel::drags}});
    }
    const FeelConclusion conclusion = concludeFeel(study);
    ASSERT_TRUE(conclusion.delta && conclusion.rocksFit && conclusion.looseFit) << conclusion.missing;
    chart.setData(conclusion, {}, lightLook());
    prepare(chart);
    EXPECT_EQ(chart.points().size(), 22U) << "eleven heights, rocks and loose";
    EXPECT_EQ(markedPoints(chart), 22);
    EXPECT_EQ(chart.graphCount(), 4) << "and a curve of each";
    EXPECT_EQ(itemsOf<QCPItemLine>(chart), 2U) << "δ either way";
    EXPECT_TRUE(textOfItems(chart).contains("δ"));
    EXPECT_TRUE(chart.accessibleDescription().contains("55 answers at 11 heights"))
        << chart.accessibleDescription().toStdString();
    EXPECT_TRUE(chart.points().back().words.contains("answers"));
    // The curve of the rocks rises over the step, that of the loose falls.
    const auto ends = [&](int graph) {
        return std::pair(chart.graph(graph)->data()->begin()->value, (chart.graph(graph)->data()->end() - 1)->value);
    };
    EXPECT_LT(ends(2).first, ends(2).second);
    EXPECT_GT(ends(3).first, ends(3).second);
}

TEST(VerifyHistoryChart, has_a_point_for_every_outcome_with_held_on_zero) {
    const Facts facts = roundsOf(4, 10);
    VerifyHistoryChart chart;
    chart.setData(facts, {}, lightLook());
    EXPECT_EQ(chart.points().size(), 40U);
    EXPECT_EQ(markedPoints(chart), 40);
    std::size_t onZero = 0;
    for (const ChartPoint& point : chart.points()) {
        EXPECT_EQ(point.at.y() == 0, point.words.contains("held"));
        onZero += point.at.y() == 0 ? 1U : 0U;
    }
    EXPECT_EQ(onZero, 38U);
    EXPECT_TRUE(chart.accessibleDescription().contains("38 held, 2 moved, the farthest 4.0°"))
        << chart.accessibleDescription().toStdString();
}

TEST(VerifyHistoryChart, says_who_pulled_with_which_wrench_and_when) {
    VerifyHistoryChart chart;
    chart.setData(roundsOf(1, 3), {}, lightLook());
    const QString words = chart.points().front().words;
    EXPECT_TRUE(words.startsWith("main 1 left, round 1: ")) << words.toStdString();
    EXPECT_TRUE(words.contains("75.0 lbf·ft"));
    EXPECT_TRUE(words.contains("A. Ames, TW-1, 2026-0"));
}

TEST(VerifyHistoryChart, shows_only_what_passes_the_filter) {
    VerifyHistoryChart chart;
    chart.setData(roundsOf(4, 10), {}, lightLook());
    chart.setFilter([](const RoundPoint& p) { return p.outcome->what.outcome == Outcome::moved; });
    EXPECT_EQ(chart.points().size(), 2U);
    chart.setFilter([](const RoundPoint& p) { return p.round > 4; });
    EXPECT_TRUE(chart.points().empty());
    EXPECT_EQ(textOfItems(chart), "No outcome passes the filter.");
    chart.setFilter({});
    EXPECT_EQ(chart.points().size(), 40U);
}

TEST(VerifyHistoryChart, joins_the_outcomes_of_the_fastener_that_is_followed) {
    VerifyHistoryChart chart;
    chart.setData(roundsOf(4, 10), {}, lightLook());
    chart.follow("main-2L");
    ASSERT_GT(chart.graphCount(), 0);
    EXPECT_EQ(chart.graph(0)->name(), "main-2L");
    EXPECT_EQ(chart.graph(0)->dataCount(), 4);
}

TEST(VerifyHistoryChart, of_five_hundred_rounds_draws_the_last_hundred_and_says_so) {
    VerifyHistoryChart chart;
    prepare(chart);
    chart.setData(roundsOf(500, 60), {}, lightLook());
    EXPECT_EQ(chart.points().size(), 100U * 60U);
    EXPECT_LE(chart.xAxis->range().size(), 31) << "it begins with the last thirty rounds";
    EXPECT_TRUE(chart.accessibleDescription().contains(QStringLiteral("Only the last 100 rounds are drawn.")))
        << chart.accessibleDescription().toStdString();
}

namespace {
EngineLayout fiveCaps() {
    return *EngineLayout::from(LayoutDescription{});
}
GirdleModel steelGirdle() {
    return *girdleOf(fiveCaps(), {inches(0.25), psi(30e6), 0.292});
}
/// One stack low by 4 thou, all others flush.
BlockLoad oneLow(const GirdleModel& model) {
    BlockLoad load;
    std::vector<Length> residuals(model.places().size());
    residuals[5] = thou(4);
    load.known = KnownLoad{model.load(residuals, Rail::held), model.load(residuals, Rail::free), {}, {}};
    for (std::size_t i = 0; i < residuals.size(); ++i) {
        load.places.push_back({model.places()[i], ResidualOf::stack, residuals[i], {}});
    }
    return load;
}
} // namespace

TEST(DeflectionChart, maps_the_plate_with_contours_and_says_each_place) {
    const GirdleModel model = steelGirdle();
    DeflectionChart chart;
    chart.setData(model, fiveCaps(), oneLow(model), Rail::held, {}, lightLook());
    ASSERT_EQ(chart.points().size(), 10U);
    const auto low = std::ranges::find(chart.points(), QString("3R"), &ChartPoint::place);
    ASSERT_NE(low, chart.points().end());
    EXPECT_TRUE(low->words.startsWith("cap 3 right: residual ")) << low->words.toStdString();
    EXPECT_TRUE(low->words.contains("pulls the cap up by")) << low->words.toStdString();
    int maps = 0;
    int contours = 0;
    for (int i = 0; i < chart.plottableCount(); ++i) {
        maps += qobject_cast<QCPColorMap*>(chart.plottable(i)) != nullptr ? 1 : 0;
        const auto* curve = qobject_cast<QCPCurve*>(chart.plottable(i));
        contours += curve != nullptr && curve->dataCount() > 0 ? 1 : 0;
    }
    EXPECT_EQ(maps, 1);
    EXPECT_GE(contours, 4);
    EXPECT_FALSE(textOfItems(chart).isEmpty()) << "contours carry their heights";
    chart.resize(640, 260);
    chart.replot();
    EXPECT_GT(chart.axisRect()->width(), 400) << "the map has the whole room";
    EXPECT_TRUE(chart.accessibleDescription().contains("0.0040 in")) << chart.accessibleDescription().toStdString();
    chart.setNothing("No load is known yet.", darkLook());
    EXPECT_EQ(chart.accessibleDescription(), "No load is known yet.");
    EXPECT_TRUE(chart.points().empty());
    EXPECT_EQ(chart.plottableCount(), 0) << "what was known is gone";
}

TEST(DeflectionChart, draws_no_contours_closer_than_their_labels_can_tell) {
    const GirdleModel model = steelGirdle();
    BlockLoad load = oneLow(model);
    load.places[5].residual = thou(0.04); // flush but for four hundredths of a thou
    DeflectionChart chart;
    chart.setData(model, fiveCaps(), load, Rail::held, {}, lightLook());
    EXPECT_FALSE(textOfItems(chart).contains('|'))
        << textOfItems(chart).toStdString() << ": several heights, all alike";
}

TEST(Contours, follow_a_level_of_a_plane_and_leave_out_what_has_no_value) {
    EvenField field{0, 10, 0, 4, 11, 5, {}};
    for (int row = 0; row < 5; ++row) {
        for (int column = 0; column < 11; ++column) {
            field.values.push_back(row == 4 ? std::nan("") : field.x(column));
        }
    }
    const std::vector<QLineF> line = contour(field, 3.5);
    ASSERT_FALSE(line.empty());
    double length = 0;
    for (const QLineF& piece : line) {
        EXPECT_NEAR(piece.x1(), 3.5, 1e-12);
        EXPECT_NEAR(piece.x2(), 3.5, 1e-12);
        length += piece.length();
    }
    EXPECT_NEAR(length, 3, 1e-9) << "the last row has no value";
    EXPECT_TRUE(contour(field, 11).empty());
    EXPECT_EQ(roundLevels(-0.0041, 0.0012, 5), (std::vector<double>{-0.004, -0.003, -0.002, -0.001, 0, 0.001}));
    EXPECT_TRUE(roundLevels(1, 1, 5).empty());
}

namespace {
BearingFilm filmOf(JournalId bearing, Length journal, Length clearance, double revolutions = 6000) {
    const RunningBearing running{journal, inches(0.85), clearance, revolutions, poundsForce(3000), 10};
    return {bearing, oilFilm(running), running, oilFilm(running)};
}
} // namespace

TEST(FilmChart, puts_each_bearing_on_the_curve_of_its_kind) {
    FilmChart chart;
    chart.setData({filmOf({JournalKind::main, 1}, inches(2.75), inches(0.0025)),
                   filmOf({JournalKind::rod, 1}, inches(2.1), inches(0.0022)),
                   filmOf({JournalKind::rod, 2}, inches(2.1), inches(0.0026))},
                  {}, lightLook());
    ASSERT_EQ(chart.points().size(), 3U);
    EXPECT_TRUE(chart.points()[0].words.startsWith("main 1: film ")) << chart.points()[0].words.toStdString();
    ASSERT_EQ(chart.graphCount(), 4) << "a curve and its bearings, for mains and rods";
    EXPECT_EQ(chart.graph(0)->name(), "least film, mains");
    EXPECT_EQ(chart.graph(2)->name(), "least film, rods");
    EXPECT_NE(chart.graph(0)->pen().style(), chart.graph(2)->pen().style()) << "told apart without colour";
    const auto filmThere = [&chart](int curve, double clearance) {
        const auto data = chart.graph(curve)->data();
        return data->findBegin(clearance)->value; // the step next to it
    };
    for (const int curve : {0, 2}) {
        ASSERT_GT(chart.graph(curve)->dataCount(), 60);
        const auto bearing = chart.graph(curve + 1)->data()->constBegin();
        EXPECT_NEAR(filmThere(curve, bearing->key), bearing->value, 0.02 * bearing->value) << "on its own curve";
        EXPECT_GT(std::abs(filmThere(2 - curve, bearing->key) - bearing->value), 0.05 * bearing->value)
            << "and not on the other";
    }
}

TEST(FilmChart, leaves_out_a_kind_and_a_bearing_whose_film_is_not_known) {
    FilmChart chart;
    chart.setData({filmOf({JournalKind::main, 1}, inches(2.75), inches(0.0025)),
                   filmOf({JournalKind::rod, 1}, inches(2.1), inches(0.0022), 0)},
                  {}, lightLook());
    EXPECT_EQ(chart.points().size(), 1U);
    EXPECT_EQ(chart.graphCount(), 2);
    EXPECT_TRUE(chart.accessibleDescription().contains("with 1 bearings"))
        << chart.accessibleDescription().toStdString();
}

} // namespace caprail
