// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the plan in many ways; with CAPRAIL_PICTURES=folder the pictures are kept for looking at.
#include "engines.h"
#include <QBuffer>
#include <QPdfWriter>

namespace caprail {

namespace {

void keep(const QImage& image, const QString& name) {
    const QString folder = qEnvironmentVariable("CAPRAIL_PICTURES");
    if (!folder.isEmpty()) {
        EXPECT_TRUE(image.save(folder + "/planview-" + name + ".png"));
    }
}

/// How much of a picture is not its ground.
double inkShare(const QImage& image, const QColor& ground) {
    qint64 inked = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            inked += image.pixelColor(x, y) != ground ? 1 : 0;
        }
    }
    return static_cast<double>(inked) / (static_cast<double>(image.width()) * image.height());
}

struct Scene {
    QString name;
    PlanContent content;
    PlanOrientation orientation;
    QSize size;
};

std::vector<Scene> scenes() {
    std::vector<Scene> list;
    const auto five = engineOf(5, 2, 1, 5);
    list.push_back({"five", gapContent(five), {}, {900, 520}});
    list.back().content.selected = "3R";
    list.back().content.title = "Gap survey, pass 2";
    list.push_back({"nine", gapContent(engineOf(9, 2, 1, 9)), {}, {700, 420}});
    list.back().content.selected = "4L";
    list.push_back({"nine-four", gapContent(engineOf(9, 4, 2, 8)), {}, {700, 420}});
    list.push_back({"three", gapContent(engineOf(3, 2, 1, 2)), {}, {700, 420}});
    list.push_back({"five-four-fasteners", fastenerContent(engineOf(5, 4, 1, 5)), {}, {900, 520}});
    list.back().content.selected = "main-3L-outer";
    list.push_back({"nine-four-fasteners", fastenerContent(engineOf(9, 4, 1, 9)), {}, {1000, 600}});
    list.push_back({"five-bearings", bearingContent(five), {}, {900, 520}});
    list.push_back({"five-turned", gapContent(five), {1, false}, {560, 620}});
    list.back().content.selected = "2L";
    list.push_back({"nine-turned", gapContent(engineOf(9, 2, 1, 9)), {3, true}, {700, 460}});
    list.push_back({"five-flipped", gapContent(five), {2, true}, {700, 420}});
    PlanContent trial{layoutOf(five)};
    trial.layers = PlanLayer::girdle | PlanLayer::cutout | PlanLayer::throws | PlanLayer::pickup | PlanLayer::dipstick;
    trial.marks = {
        {"throw-1", "72", "clear", CheckState::good, {}}, {"throw-2", "58", "too near", CheckState::out, {}},
        {"throw-3", {}, {}, CheckState::notDone, {}},     {"throw-4", "64", {}, CheckState::tooCloseToCall, {}},
        {"pickup", {}, "clear", CheckState::good, {}},    {"dipstick", {}, "not done", CheckState::notDone, {}}};
    list.push_back({"five-trial-fit", trial, {}, {900, 520}});
    PlanContent flush = gapContent(five);
    flush.layers = PlanLayer::positions | PlanLayer::girdle | PlanLayer::flushness;
    int i = 0;
    for (const Position p : flush.layout.positions()) {
        flush.heights[QString::fromStdString(code(p))] = (i++ % 5 - 2) * 5000.0;
    }
    list.push_back({"five-flushness", flush, {}, {900, 520}});
    return list;
}

} // namespace

TEST(PlanPictures, are_drawn_in_both_looks) {
    for (const Scene& scene : scenes()) {
        for (const auto& [name, look] : {std::pair(QString("light"), lightLook()), {QString("dark"), darkLook()}}) {
            const QImage image = pictureOf(scene.content, scene.orientation, scene.size, look);
            const double share = inkShare(image, look.paper);
            EXPECT_GT(share, 0.05) << scene.name.toStdString();
            EXPECT_LT(share, 0.7) << scene.name.toStdString();
            keep(image, scene.name + "-" + name);
        }
    }
}

} // namespace caprail
