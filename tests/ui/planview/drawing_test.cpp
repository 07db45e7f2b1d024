// SPDX-License-Identifier: GPL-3.0-or-later
#include "engines.h"
#include "recorder.h"
#include <QPainterPath>
#include <deque>
#include <planview/state_shape.h>
#include <set>

namespace caprail {

namespace {

const QRectF smallArea(0, 0, 700, 420);

std::vector<PlanOrientation> allOrientations() {
    std::vector<PlanOrientation> list;
    for (int turns = 0; turns < 4; ++turns) {
        list.push_back({turns, false});
        list.push_back({turns, true});
    }
    return list;
}

std::string nameOf(const PlanOrientation& o) {
    return std::to_string(o.quarterTurns) + " turns" + (o.isFlipped ? ", flipped" : "");
}

PlanDrawing drawingOf(const PlanContent& content, const PlanOrientation& orientation = {}) {
    return {content, orientation, smallArea, testFont()};
}

/// Runs a check over every engine, content and orientation.
template <class Check> void everywhere(Check check) {
    for (const LayoutDescription& engine : allEngines()) {
        for (const PlanContent& content : {gapContent(engine), fastenerContent(engine), bearingContent(engine)}) {
            for (const PlanOrientation& orientation : allOrientations()) {
                SCOPED_TRACE(nameOf(engine) + ", " + nameOf(orientation));
                check(drawingOf(content, orientation));
            }
        }
    }
}

} // namespace

TEST(PlanDrawing, finds_every_place_at_its_symbol_and_at_its_callout) {
    everywhere([](const PlanDrawing& drawing) {
        for (const QString& place : drawing.places()) {
            EXPECT_EQ(drawing.placeAt(drawing.pointOf(place)), place);
            const QRectF callout = drawing.calloutOf(place);
            if (!callout.isNull()) {
                EXPECT_EQ(drawing.placeAt(callout.center()), place);
            }
        }
    });
}

TEST(PlanDrawing, shows_a_bolt_by_another_shape_than_a_stud_with_its_nut_and_says_it) {
    PlanContent content = fastenerContent(engineOf(5, 2, 1, 5));
    content.marks.clear();
    const auto painted = [&] {
        QImage image(700, 420, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        drawingOf(content).paint(painter, lightLook());
        return image;
    };
    const QImage studs = painted();
    content.pieces["main-5L"] = FastenerPiece::bolt;
    const QImage mixed = painted();
    const PlanDrawing drawing = drawingOf(content);
    const auto at = [&](const QImage& image, const char* place) {
        const QPoint middle = drawing.pointOf(place).toPoint();
        return image.copy(middle.x() - 6, middle.y() - 6, 12, 12);
    };
    EXPECT_NE(at(studs, "main-5L"), at(mixed, "main-5L")) << "no thread comes through a bolt's head";
    EXPECT_EQ(at(studs, "main-1L"), at(mixed, "main-1L"));
    EXPECT_EQ(drawing.nameOf("main-5L"), "main 5 left, bolt");
    EXPECT_EQ(drawing.nameOf("main-1L"), "main 1 left");
}

TEST(PlanDrawing, never_lets_two_callouts_overlap_or_leave_the_paper) {
    everywhere([](const PlanDrawing& drawing) {
        const QStringList places = drawing.places();
        for (qsizetype i = 0; i < places.size(); ++i) {
            const QRectF box = drawing.calloutOf(places[i]);
            if (box.isNull()) {
                continue;
            }
            EXPECT_TRUE(smallArea.contains(box)) << places[i].toStdString();
            for (qsizetype j = i + 1; j < places.size(); ++j) {
                EXPECT_FALSE(box.intersects(drawing.calloutOf(places[j])))
                    << places[i].toStdString() << " and " << places[j].toStdString();
            }
            for (const QString& other : places) {
                EXPECT_FALSE(box.contains(drawing.pointOf(other)))
                    << places[i].toStdString() << " covers " << other.toStdString();
            }
        }
    });
}

TEST(PlanDrawing, keeps_the_figures_of_eighteen_positions_at_full_size) {
    for (const std::int64_t each : {2, 4}) {
        for (std::int64_t caps = 3; caps <= 9; ++caps) {
            const PlanDrawing drawing = drawingOf(gapContent(engineOf(caps, each, 1, caps)));
            EXPECT_GE(drawing.calloutScale(), 0.85) << caps << " caps, " << each << " each";
        }
    }
}

TEST(PlanDrawing, writes_every_figure_and_the_front_upright_however_it_lies) {
    const PlanContent content = gapContent(engineOf(5, 2, 1, 5));
    for (const PlanOrientation& orientation : allOrientations()) {
        SCOPED_TRACE(nameOf(orientation));
        TextRecorder recorder(smallArea.size().toSize());
        QPainter painter(&recorder);
        painter.setFont(testFont());
        drawPlan(painter, smallArea, content, orientation, lightLook());
        painter.end();
        for (const QString& text : {QStringLiteral("FRONT"), QStringLiteral("LEFT"), QStringLiteral("RIGHT")}) {
            ASSERT_NE(recorder.find(text), nullptr) << text.toStdString();
        }
        for (const PlanMark& mark : content.marks) {
            ASSERT_NE(recorder.find(mark.figure), nullptr) << mark.figure.toStdString();
            EXPECT_NE(recorder.find(mark.place), nullptr) << "the label never changes";
        }
        for (const WrittenText& written : recorder.texts()) {
            EXPECT_TRUE(written.isUpright) << written.text.toStdString();
            EXPECT_TRUE(smallArea.contains(written.at)) << written.text.toStdString();
        }
    }
}

TEST(PlanDrawing, marks_the_front_before_the_first_cap) {
    for (const PlanOrientation& orientation : allOrientations()) {
        const PlanDrawing drawing = drawingOf(gapContent(engineOf(5, 2, 1, 5)), orientation);
        const double toFirst = QLineF(drawing.frontAt(), drawing.pointOf("1L")).length();
        const double toLast = QLineF(drawing.frontAt(), drawing.pointOf("5L")).length();
        EXPECT_LT(toFirst, toLast) << nameOf(orientation);
        EXPECT_TRUE(smallArea.contains(drawing.frontAt()));
    }
}

TEST(PlanDrawing, lies_with_its_front_to_the_left_and_its_left_side_on_top_until_turned) {
    const PlanContent content = gapContent(engineOf(5, 2, 1, 5));
    const PlanDrawing plain = drawingOf(content);
    EXPECT_LT(plain.pointOf("1L").x(), plain.pointOf("5L").x());
    EXPECT_LT(plain.pointOf("3L").y(), plain.pointOf("3R").y());
    const PlanDrawing flipped = drawingOf(content, {0, true});
    EXPECT_LT(flipped.pointOf("1L").x(), flipped.pointOf("5L").x());
    EXPECT_GT(flipped.pointOf("3L").y(), flipped.pointOf("3R").y());
    const PlanDrawing turned = drawingOf(content, {1, false}); // clockwise: what was left is on top
    EXPECT_LT(turned.pointOf("1L").y(), turned.pointOf("5L").y());
    EXPECT_GT(turned.pointOf("3L").x(), turned.pointOf("3R").x());
}

TEST(PlanDrawing, is_true_to_scale_along_and_across_the_crank) {
    const LayoutDescription engine = engineOf(5, 2, 1, 5);
    for (const PlanOrientation& orientation : allOrientations()) {
        const PlanDrawing drawing = drawingOf(gapContent(engine), orientation);
        const double along = QLineF(drawing.pointOf("1L"), drawing.pointOf("2L")).length();
        const double across = QLineF(drawing.pointOf("1L"), drawing.pointOf("1R")).length();
        EXPECT_NEAR(along / across, 4.4 / 3.6, 1e-6); // cap spacing and stud span of the layout
    }
}

TEST(PlanDrawing, goes_to_the_neighbour_that_lies_in_that_direction_on_the_screen) {
    const PlanContent content = gapContent(engineOf(5, 2, 1, 5));
    const PlanDrawing plain = drawingOf(content);
    EXPECT_EQ(plain.neighbour("2L", PlanDirection::right), "3L");
    EXPECT_EQ(plain.neighbour("2L", PlanDirection::left), "1L");
    EXPECT_EQ(plain.neighbour("2L", PlanDirection::down), "2R");
    EXPECT_EQ(plain.neighbour("2L", PlanDirection::up), "2L") << "nothing lies there";
    EXPECT_EQ(plain.neighbour("5R", PlanDirection::right), "5R");
    const PlanDrawing turned = drawingOf(content, {1, false});
    EXPECT_EQ(turned.neighbour("2L", PlanDirection::down), "3L");
    EXPECT_EQ(turned.neighbour("2L", PlanDirection::left), "2R");
    const PlanDrawing flipped = drawingOf(content, {0, true});
    EXPECT_EQ(flipped.neighbour("2L", PlanDirection::up), "2R");
    EXPECT_EQ(plain.neighbour({}, PlanDirection::up), "1L") << "with nothing selected, the first place";
}

TEST(PlanDrawing, lets_the_arrow_keys_reach_every_place) {
    everywhere([](const PlanDrawing& drawing) {
        std::set<QString> reached{drawing.places().front()};
        std::deque<QString> open{drawing.places().front()};
        while (!open.empty()) {
            const QString from = open.front();
            open.pop_front();
            for (const PlanDirection direction :
                 {PlanDirection::left, PlanDirection::right, PlanDirection::up, PlanDirection::down}) {
                const QString to = drawing.neighbour(from, direction);
                if (reached.insert(to).second) {
                    open.push_back(to);
                }
            }
        }
        EXPECT_EQ(reached.size(), static_cast<std::size_t>(drawing.places().size()));
    });
}

TEST(PlanDrawing, offers_the_places_of_the_layers_that_are_on) {
    const LayoutDescription engine = engineOf(5, 4, 2, 4);
    PlanContent content{layoutOf(engine)};
    content.layers = PlanLayer::positions;
    EXPECT_EQ(drawingOf(content).places(), QStringList({"2L", "2R", "3L", "3R", "4L", "4R"}));
    content.order = {"4R", "2L"};
    EXPECT_EQ(drawingOf(content).places(), QStringList({"4R", "2L", "2R", "3L", "3R", "4L"}))
        << "the pass's order first";
    content.order.clear();
    content.layers = PlanLayer::mainFasteners | PlanLayer::rodFasteners;
    EXPECT_EQ(drawingOf(content).places().size(), 20 + 16) << "4 on each of 5 caps, 2 on each of 8 rods";
    content.layers = PlanLayer::throws | PlanLayer::pickup | PlanLayer::dipstick;
    EXPECT_TRUE(drawingOf(content).places().isEmpty()) << "they carry no mark";
    content.marks = {{"throw-2", "72", {}, CheckState::good, {}}, {"pickup", {}, "clear", CheckState::good, {}}};
    EXPECT_EQ(drawingOf(content).places(), QStringList({"throw-2", "pickup"}));
}

TEST(PlanDrawing, says_a_place_in_words_with_its_figure_and_its_state) {
    PlanContent content{layoutOf(engineOf(5, 2, 1, 5))};
    content.marks = {{"3R", "57.5", {}, CheckState::stale, "gap 57.5"},
                     {"4L", "61", "S014", CheckState::tooCloseToCall, {}}};
    const PlanDrawing drawing = drawingOf(content);
    EXPECT_EQ(drawing.sentenceOf("3R"), "cap 3 right, gap 57.5, stale");
    EXPECT_EQ(drawing.sentenceOf("4L"), "cap 4 left, 61, S014, too close to call");
    EXPECT_EQ(drawing.sentenceOf("1L"), "cap 1 left");
    EXPECT_TRUE(drawing.nameOf("7R").isEmpty());
    EXPECT_TRUE(drawing.rectOf("7R").isNull());
}

TEST(PlanDrawing, draws_the_places_of_spans_at_the_edge_of_what_a_layout_may_be) {
    for (const auto& [spacing, stud, rail] : {std::tuple(0.5, 20.0, 60.0), {20.0, 1.0, 1.5}, {4.0, 3.0, 3.01}}) {
        LayoutDescription engine = engineOf(9, 2, 1, 9);
        engine.capSpacing = inches(spacing);
        engine.studSpan = inches(stud);
        engine.railSpan = inches(rail);
        engine.throws = 16;
        engine.rods = 16;
        const PlanDrawing drawing = drawingOf(gapContent(engine));
        for (const QString& place : drawing.places()) {
            EXPECT_TRUE(smallArea.contains(drawing.pointOf(place))) << spacing << " " << place.toStdString();
        }
        const QImage image = pictureOf(gapContent(engine), {1, true}, {700, 420}, lightLook());
        EXPECT_FALSE(image.isNull());
    }
}

TEST(PlanDrawing, tells_states_apart_without_colour) {
    Look grey = lightLook();
    grey.good = grey.out = grey.close = grey.stale = grey.open = grey.ink;
    std::vector<QImage> pictures;
    for (const CheckState state : everyState) {
        QImage image(48, 48, QImage::Format_Grayscale8);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(calloutPen(state, grey, 1));
        painter.drawPath(calloutShape(QRectF(2, 2, 44, 44), state, 4));
        paintBadge(painter, {24, 24}, 12, state, grey);
        painter.end();
        pictures.push_back(image);
    }
    for (std::size_t i = 0; i < pictures.size(); ++i) {
        for (std::size_t j = i + 1; j < pictures.size(); ++j) {
            int differing = 0;
            for (int y = 0; y < 48; ++y) {
                for (int x = 0; x < 48; ++x) {
                    differing +=
                        std::abs(qGray(pictures[i].pixel(x, y)) - qGray(pictures[j].pixel(x, y))) > 100 ? 1 : 0;
                }
            }
            EXPECT_GT(differing, 100) << i << " and " << j;
        }
    }
}

} // namespace caprail
