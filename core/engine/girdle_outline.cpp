// SPDX-License-Identifier: GPL-3.0-or-later
#include <engine/girdle_outline.h>

#include <algorithm>
#include <base/say.h>
#include <cmath>

namespace caprail {

bool PlanDisc::contains(double atX, double atY) const {
    return std::hypot(atX - x, atY - y) < radius;
}

bool PlanDisc::meets(const PlanBox& box) const {
    return contains(std::clamp(x, box.x1, box.x2), std::clamp(y, box.y1, box.y2));
}

double pickupRadius(const BlockOutline& block) {
    return std::min({0.2 * block.spacing, 0.2 * block.railHalf, 0.5 * block.innerHalf});
}

double washerRadius(const EngineLayout& layout, const BlockOutline& block) {
    const double room = block.railHalf - block.railWidth / 2 - block.outermost;
    const double radius = std::min({0.13 * block.spacing, 0.3 * block.innerHalf, 0.8 * room});
    return layout.description().fastenersPerCap == 4 ? std::min(radius, 0.44 * (block.outermost - block.innerHalf))
                                                     : radius;
}

GirdleOutline girdleOutline(const EngineLayout& layout, const GirdleShape& shape) {
    const LayoutDescription& d = layout.description();
    const BlockOutline block(layout);
    GirdleOutline outline;
    outline.washer = washerRadius(layout, block);
    const double usualEnd = std::min(0.62 * block.overhang, block.overhang - block.railWidth * 0.5);
    const double end = shape.overhang ? inMillimetres(*shape.overhang) : usualEnd;
    const double half = block.railHalf + block.railWidth / 2 - 0.12 * block.railWidth;
    outline.plate = {inMillimetres(layout.capAt(static_cast<int>(d.tiedFirst))) - end, -half,
                     inMillimetres(layout.capAt(static_cast<int>(d.tiedLast))) + end, half};
    outline.plateCorner = 0.8 * block.railWidth;
    const double along = shape.windowAlong ? inMillimetres(*shape.windowAlong) : 0.58 * block.spacing;
    const double across = shape.windowAcross ? inMillimetres(*shape.windowAcross) : 1.32 * block.innerHalf;
    outline.windowCorner = std::min({0.1 * block.spacing, along / 2, across / 2});
    for (auto cap = static_cast<int>(d.tiedFirst); cap < d.tiedLast && along > 0 && across > 0; ++cap) {
        const double middle = inMillimetres(layout.capAt(cap)) + block.spacing / 2;
        outline.windows.push_back({middle - along / 2, -across / 2, middle + along / 2, across / 2});
    }
    const PlanPoint pickup = layout.pickupAt();
    outline.cutout = {inMillimetres(pickup.x), inMillimetres(pickup.y), 1.45 * pickupRadius(block)};
    return outline;
}

Result<void> checkShape(const EngineLayout& layout, const GirdleShape& shape) {
    const Length along = shape.windowAlong.value_or(Length());
    const Length across = shape.windowAcross.value_or(Length());
    if (along < Length() || across < Length()) {
        return refuse(Core::say("A window of the girdle cannot be smaller than nothing: give its length along the "
                                "crank and its width across it, or 0 for a plate without windows."));
    }
    const BlockOutline block(layout);
    const double washer = washerRadius(layout, block);
    const bool isOuter = layout.description().girdleRing == Ring::outer;
    const double studHalf = isOuter ? block.outermost : block.innerHalf;
    // Between the studs of a cap a window may be as long as the bay but for a bridge; beside them it stops at the
    // washers.
    const bool endsInside =
        inMillimetres(across) / 2 < studHalf - washer && inMillimetres(along) < 0.95 * block.spacing;
    const bool endsBeside = inMillimetres(along) / 2 < block.spacing / 2 - washer &&
                            inMillimetres(across) / 2 < block.railHalf - block.railWidth;
    if (!endsInside && !endsBeside) {
        return refuse(Core::say("A window of the girdle this large meets the next one, the pan rail or a washer: "
                                "measure it again."));
    }
    if (shape.overhang && (inMillimetres(*shape.overhang) < washer || inMillimetres(*shape.overhang) > block.spacing)) {
        return refuse(
            Core::say("The girdle's plate must reach beyond its outermost nuts by the radius of their washers "
                      "at least and by no more than the cap spacing: measure it again."));
    }
    return {};
}

std::vector<PlanPoint> usualRailBolts(const EngineLayout& layout) {
    const BlockOutline block(layout);
    std::vector<double> along{-block.overhang + block.railWidth / 2,
                              block.length + block.overhang - block.railWidth / 2};
    for (int bay = 1; bay < layout.caps(); ++bay) {
        along.push_back((bay - 0.5) * block.spacing);
    }
    std::vector<PlanPoint> list;
    const auto add = [&](double x, double y) { list.push_back({millimetres(x), millimetres(y)}); };
    for (const double x : along) {
        add(x, -block.railHalf);
        add(x, block.railHalf);
    }
    for (const double x : {along[0], along[1]}) {
        add(x, 0.45 * block.railHalf);
        add(x, -0.45 * block.railHalf);
    }
    return list;
}

} // namespace caprail
