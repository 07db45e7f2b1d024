// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Invented engines and marks for the tests of the plan drawing.
#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>
#include <planview/plan_drawing.h>

namespace caprail {

/// Gives a test its own name for an engine: "5 caps, 2 each, tied 1 to 5".
inline std::string nameOf(const LayoutDescription& d) {
    return std::to_string(d.caps) + " caps, " + std::to_string(d.fastenersPerCap) + " each, tied " +
           std::to_string(d.tiedFirst) + " to " + std::to_string(d.tiedLast);
}

inline LayoutDescription engineOf(std::int64_t caps, std::int64_t each, std::int64_t tiedFirst, std::int64_t tiedLast) {
    LayoutDescription d;
    d.caps = caps;
    d.fastenersPerCap = each;
    d.tiedFirst = tiedFirst;
    d.tiedLast = tiedLast;
    d.throws = caps - 1;
    d.rods = 2 * (caps - 1);
    d.pickupCap = caps - 1;
    d.dipstickCap = 2;
    return d;
}

inline EngineLayout layoutOf(const LayoutDescription& d) {
    auto layout = EngineLayout::from(d);
    EXPECT_TRUE(layout) << (layout ? "" : layout.error().sentence);
    return *layout;
}

/// Every layout of 3 to 9 caps with 2 or 4 fasteners each, tied over all caps, over the middle ones and over one.
inline std::vector<LayoutDescription> allEngines() {
    std::vector<LayoutDescription> list;
    for (std::int64_t caps = 3; caps <= 9; ++caps) {
        for (const std::int64_t each : {2, 4}) {
            list.push_back(engineOf(caps, each, 1, caps));
            list.push_back(engineOf(caps, each, 2, caps - 1));
            list.push_back(engineOf(caps, each, caps, caps));
        }
    }
    return list;
}

inline constexpr CheckState everyState[] = {CheckState::good, CheckState::stale, CheckState::out,
                                            CheckState::tooCloseToCall, CheckState::notDone};

/// Positions with gaps and stacks beside them, the states taking turns.
inline PlanContent gapContent(const LayoutDescription& d) {
    PlanContent content{layoutOf(d)};
    content.layers |= PlanLayer::throws;
    int i = 0;
    for (const Position p : content.layout.positions()) {
        const int tenths = 390 + (i * 137) % 360;
        const CheckState state = everyState[i % 7 < 3 ? 0 : (i % 5)];
        content.marks.push_back(
            {QString::fromStdString(code(p)), QString::number(tenths / 10.0),
             state == CheckState::notDone ? QString() : QStringLiteral("S0%1+S0%2").arg(i + 10).arg(i + 41), state,
             QStringLiteral("gap %1").arg(tenths / 10.0)});
        ++i;
    }
    return content;
}

/// Every main fastener with its torque and every rod fastener with its state alone.
inline PlanContent fastenerContent(const LayoutDescription& d) {
    PlanContent content{layoutOf(d)};
    content.layers = PlanLayer::mainFasteners | PlanLayer::rodFasteners | PlanLayer::sequence;
    int i = 0;
    for (const FastenerId f : content.layout.verifiedFasteners()) {
        const bool isMain = f.kind == FastenerKind::mainCap;
        content.marks.push_back({QString::fromStdString(code(f)), isMain ? QStringLiteral("75") : QString(), QString(),
                                 i % 9 == 4 ? CheckState::stale : (i % 4 == 3 ? CheckState::notDone : CheckState::good),
                                 QString()});
        ++i;
        if (isMain) {
            content.sequence[QString::fromStdString(code(f))] = i;
        }
    }
    return content;
}

inline PlanContent bearingContent(const LayoutDescription& d) {
    PlanContent content{layoutOf(d)};
    content.layers = PlanLayer::mainJournals | PlanLayer::rodJournals;
    int i = 0;
    for (const auto& list : {content.layout.mainJournals(), content.layout.rodJournals()}) {
        for (const JournalId j : list) {
            content.marks.push_back({QString::fromStdString(code(j)), QString::number((210 + 17 * (i % 6)) / 100.0),
                                     QString(), everyState[i % 6 < 4 ? 0 : i % 5], QString()});
            ++i;
        }
    }
    return content;
}

/// What the screens are drawn with in these tests: a font of a known size.
inline QFont testFont() {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(13);
    return font;
}

inline QImage pictureOf(const PlanContent& content, const PlanOrientation& orientation, QSize size, const Look& look) {
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(look.paper);
    QPainter painter(&image);
    painter.setFont(testFont());
    drawPlan(painter, QRectF(QPointF(), QSizeF(size)), content, orientation, look);
    return image;
}

} // namespace caprail
