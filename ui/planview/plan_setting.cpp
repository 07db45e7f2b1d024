// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <planview/callout_lanes.h>
#include <planview/callout_text.h>
#include <planview/callouts.h>

namespace caprail {

namespace {

constexpr int mostRows = 4;

struct Wanted {
    std::size_t place = 0;
    QSizeF size;
};

using Sizes = std::vector<QSizeF>; ///< of the callouts, one per place; empty: it has none

/// What the callouts take up at a scale, their texts measured.
Sizes measured(const std::vector<PlanPlace>& places, const std::vector<const PlanMark*>& marks, bool isFlat,
               double scale, const PlanType& type) {
    Sizes sizes(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        const PlanMark* mark = marks[i];
        if (mark != nullptr && !(mark->figure.isEmpty() && mark->note.isEmpty())) {
            sizes[i] = CalloutText(*mark, places[i].label, isFlat, scale, type).size;
        }
    }
    return sizes;
}

Sizes times(Sizes sizes, double factor) {
    for (QSizeF& size : sizes) {
        size *= factor;
    }
    return sizes;
}

/// One attempt at setting a plan, with callouts at a given scale and of given sizes.
class Attempt {
public:
    Attempt(const PlanGeometry& size, const PlanOrientation& orientation, const QRectF& room, double frontRoom,
            const std::vector<PlanPlace>& places, const std::vector<const PlanMark*>& marks, double em, double scale,
            const Sizes& sizes)
        : m_size(size), m_orientation(orientation), m_room(room), m_frontRoom(frontRoom), m_places(places),
          m_marks(marks), m_scale(scale), m_em(em), m_gap(0.42 * em * scale), m_strip(0.75 * em * scale),
          m_isUpright(PlanFrame::isUpright(orientation)) {
        for (std::size_t i = 0; i < places.size(); ++i) {
            if (!sizes[i].isEmpty()) {
                Lane& lane = m_lanes.at(places[i].lane == Side::left ? 0 : 1);
                lane.wanted.push_back({i, sizes[i]});
                lane.depth = std::max(lane.depth, m_isUpright ? sizes[i].width() : sizes[i].height());
            }
        }
    }

    /// None: the callouts do not fit, or they leave the block less than `leastShare` of the room across.
    std::optional<PlanSetting> set(double leastShare) {
        for (Lane& lane : m_lanes) {
            lane.rows = lane.wanted.empty() ? 0 : 1;
        }
        // More rows leave a smaller block, whose callouts may want yet more rows: a few rounds settle it.
        for (int round = 0; round <= 2 * mostRows; ++round) {
            const PlanFrame frame = frameNow();
            const double across = m_isUpright ? m_room.width() : m_room.height();
            const double block = m_isUpright ? frame.block().width() : frame.block().height();
            const double along =
                m_isUpright ? frame.block().height() / m_room.height() : frame.block().width() / m_room.width();
            if (block < leastShare * across && along < 0.5) {
                return std::nullopt;
            }
            bool isSettled = true;
            for (Lane& lane : m_lanes) {
                lane.plan = place(lane, frame);
                if (!lane.plan) {
                    return std::nullopt;
                }
                if (lane.plan->rows > lane.rows) {
                    lane.rows = lane.plan->rows;
                    isSettled = false;
                }
            }
            if (isSettled) {
                CalloutLayout around{calloutsIn(frame), m_scale, 0, 0};
                for (const Lane& lane : m_lanes) {
                    around.rows += lane.rows;
                    around.farthestShift = std::max(around.farthestShift, lane.plan->farthestShift);
                }
                return PlanSetting{frame, std::move(around)};
            }
        }
        return std::nullopt;
    }

private:
    struct Lane {
        std::vector<Wanted> wanted;
        double depth = 0; ///< of one row, across the lane
        int rows = 0;
        std::optional<LanePlan> plan;
    };

    [[nodiscard]] double depthOf(const Lane& lane) const {
        return lane.rows == 0 ? m_gap : m_strip + lane.rows * (lane.depth + m_gap);
    }

    [[nodiscard]] PlanFrame frameNow() const {
        const bool isLeftFirst = firstLane(m_orientation) == Side::left;
        const double first = depthOf(m_lanes.at(isLeftFirst ? 0 : 1));
        const double last = depthOf(m_lanes.at(isLeftFirst ? 1 : 0));
        // Behind the engine the crank's centre line stands out a little.
        const double behind = 0.8 * m_em;
        const double front = isFrontFirst(m_orientation) ? m_frontRoom : behind;
        const double rear = isFrontFirst(m_orientation) ? behind : m_frontRoom;
        const QRectF inside =
            m_isUpright ? m_room.adjusted(first, front, -last, -rear) : m_room.adjusted(front, first, -rear, -last);
        return {m_size, m_orientation,
                QRectF(inside.topLeft(), QSizeF(std::max(inside.width(), 1.0), std::max(inside.height(), 1.0)))};
    }

    /// Where the leader of a place leaves the drawing, along the lane.
    [[nodiscard]] double anchorOf(const PlanPlace& place, const PlanFrame& frame) const {
        return frame.along(frame.at(place.at + QPointF(place.leaderShift, 0)));
    }

    [[nodiscard]] std::optional<LanePlan> place(const Lane& lane, const PlanFrame& frame) const {
        std::vector<LaneBox> boxes;
        for (const Wanted& wanted : lane.wanted) {
            const PlanPlace& at = m_places[wanted.place];
            boxes.push_back({anchorOf(at, frame), m_isUpright ? wanted.size.height() : wanted.size.width(), at.rank});
        }
        const double lo = m_isUpright ? m_room.top() : m_room.left();
        const double hi = m_isUpright ? m_room.bottom() : m_room.right();
        return placeInLane(boxes, lo, hi, m_gap, mostRows);
    }

    [[nodiscard]] std::vector<Callout> calloutsIn(const PlanFrame& frame) const {
        std::vector<Callout> list;
        for (std::size_t side = 0; side < m_lanes.size(); ++side) {
            const Lane& lane = m_lanes.at(side);
            for (std::size_t i = 0; i < lane.wanted.size(); ++i) {
                const Wanted& wanted = lane.wanted[i];
                list.push_back(callout(frame, side == 0 ? Side::left : Side::right, lane, wanted, lane.plan->boxes[i]));
            }
        }
        return list;
    }

    [[nodiscard]] Callout callout(const PlanFrame& frame, Side side, const Lane& lane, const Wanted& wanted,
                                  const LanePlacing& placing) const {
        const PlanPlace& place = m_places[wanted.place];
        const double sign = frame.sign(side);
        const double edge = frame.edge(side);
        const double rowStart = edge + sign * (m_strip + placing.row * (lane.depth + m_gap));
        const double depth = m_isUpright ? wanted.size.width() : wanted.size.height();
        QRectF box(QPointF(), wanted.size);
        box.moveCenter(frame.point(placing.middle, rowStart + sign * depth / 2));

        const double anchor = anchorOf(place, frame);
        const QPointF symbol = frame.at(place.at);
        const double radius = frame.at(place.radius);
        const double extent = m_isUpright ? wanted.size.height() : wanted.size.width();
        const double foot = std::clamp(placing.row == 0 ? anchor : placing.channel, placing.middle - 0.4 * extent,
                                       placing.middle + 0.4 * extent);
        QPolygonF line;
        if (place.leaderShift == 0) {
            line << frame.point(anchor, frame.across(symbol) + sign * radius);
        } else {
            const double aside = anchor - frame.along(symbol);
            const double slant = std::abs(aside) - 0.71 * radius;
            const double start = frame.across(symbol) + sign * 0.71 * radius;
            line << frame.point(frame.along(symbol) + (aside < 0 ? -0.71 : 0.71) * radius, start)
                 << frame.point(anchor, start + sign * std::max(0.0, std::min(slant, (edge - start) * sign)));
        }
        line << frame.point(anchor, edge);
        if (placing.row > 0) {
            line << frame.point(placing.channel, edge + sign * 0.85 * m_strip)
                 << frame.point(placing.channel, rowStart - sign * 0.9 * m_gap);
        }
        line << frame.point(foot, rowStart);
        return {wanted.place, m_marks[wanted.place], box, line};
    }

    const PlanGeometry& m_size;
    const PlanOrientation& m_orientation;
    QRectF m_room;
    double m_frontRoom;
    const std::vector<PlanPlace>& m_places;
    const std::vector<const PlanMark*>& m_marks;
    double m_scale;
    double m_em;
    double m_gap;
    double m_strip; ///< between the rail and the first row: leaders turn here
    bool m_isUpright;
    std::array<Lane, 2> m_lanes;
};

} // namespace

PlanSetting setPlan(const PlanGeometry& size, const PlanOrientation& orientation, const QRectF& room, double frontRoom,
                    const std::vector<PlanPlace>& places, const std::vector<const PlanMark*>& marks,
                    const PlanType& type) {
    const auto sizesAt = [&](double scale) {
        return measured(places, marks, PlanFrame::isUpright(orientation), scale, type);
    };
    const auto setWith = [&](double scale, double leastShare, const Sizes& sizes) {
        return Attempt(size, orientation, room, frontRoom, places, marks, type.em, scale, sizes).set(leastShare);
    };
    constexpr double fairShare = 0.34;
    const Sizes plainSizes = sizesAt(1);
    if (auto plain = setWith(1, fairShare, plainSizes)) {
        // Only what is really spare: the block keeps its size, no row is added, no box is pushed aside.
        const auto isSpare = [&](const std::optional<PlanSetting>& larger) {
            const auto extent = [](const PlanSetting& set) {
                return set.frame.block().width() + set.frame.block().height();
            };
            return larger && extent(*larger) > 0.97 * extent(*plain) && larger->around.rows == plain->around.rows &&
                   larger->around.farthestShift <= plain->around.farthestShift + type.em;
        };
        for (const double scale : {1.6, 1.45, 1.3, 1.15}) {
            // Every font size costs a font to be loaded: only what may fit is measured. A text in a larger size is as
            // much wider, but for hinting.
            constexpr double atLeast = 0.94;
            if (!isSpare(setWith(scale, fairShare, times(plainSizes, atLeast * scale)))) {
                continue;
            }
            if (auto larger = setWith(scale, fairShare, sizesAt(scale)); isSpare(larger)) {
                return *std::move(larger);
            }
        }
        return *std::move(plain);
    }
    double scale = 0.94;
    while (scale > 0.02) {
        // Down to legible texts the block keeps its share of the room; below that all that counts is that they fit.
        if (auto set = setWith(scale, scale > 0.6 ? fairShare : 0, sizesAt(scale))) {
            return *std::move(set);
        }
        scale *= scale > 0.5 ? 0.94 : 0.8;
    }
    // An area of next to nothing: the block alone.
    return *setWith(1, 0, Sizes(places.size()));
}

} // namespace caprail
