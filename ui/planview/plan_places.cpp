// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/plan_places.h>

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace caprail {

namespace {

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

class Collector {
public:
    Collector(const PlanContent& content, const PlanGeometry& size)
        : m_content(content), m_layout(content.layout), m_size(size) {}

    std::vector<PlanPlace> all() {
        positions();
        mainFasteners();
        girdleNuts();
        rodFasteners();
        rowFasteners();
        mainJournals();
        rodJournals();
        throws();
        loose(PlanLayer::pickup, QStringLiteral("pickup"), QCoreApplication::translate("PlanDrawing", "pickup"),
              m_layout.pickupAt(), m_layout.description().pickupSide);
        loose(PlanLayer::dipstick, QStringLiteral("dipstick"), QCoreApplication::translate("PlanDrawing", "dipstick"),
              m_layout.dipstickAt(), m_layout.description().dipstickSide);
        return std::move(m_list);
    }

private:
    [[nodiscard]] bool isOn(PlanLayer layer) const { return m_content.layers.testFlag(layer); }
    [[nodiscard]] bool isMarked(const QString& place) const {
        return std::any_of(m_content.marks.begin(), m_content.marks.end(),
                           [&](const PlanMark& mark) { return mark.place == place; });
    }
    [[nodiscard]] bool isFour() const { return m_layout.description().fastenersPerCap == 4; }

    void positions() {
        if (!isOn(PlanLayer::positions)) {
            return;
        }
        for (const Position p : m_layout.positions()) {
            m_list.push_back({text(code(p)), text(code(p)), text(describe(p)), PlanLayer::positions,
                              inPlan(m_layout.at(p)), m_size.washer, p.side, 0, 0});
        }
    }
    /// "main 5 left"; with what is there where that is not usual.
    [[nodiscard]] QString nameOf(FastenerId f) const {
        const auto piece = m_content.pieces.find(text(code(f)));
        return piece == m_content.pieces.end() ? text(describe(f))
                                               : text(describe(f)) + QStringLiteral(", ") + text(shown(piece->second));
    }

    void mainFasteners() {
        if (!isOn(PlanLayer::mainFasteners)) {
            return;
        }
        for (const FastenerId f : m_layout.mainFasteners()) {
            const bool isInner = f.ring == Ring::inner;
            QString label = text(code(Position{f.number, f.side}));
            if (isFour()) {
                label += isInner ? QCoreApplication::translate("PlanDrawing", " in", "inner stud of a cap, short")
                                 : QCoreApplication::translate("PlanDrawing", " out", "outer stud of a cap, short");
            }
            // The leader of an inner stud passes beside the nut of the outer one.
            const double shift = isFour() && isInner ? 1.7 * m_size.washer : 0;
            m_list.push_back({text(code(f)), label, nameOf(f), PlanLayer::mainFasteners, inPlan(m_layout.at(f)),
                              m_size.washer, f.side, shift, isInner ? 1.0 : 0.0});
        }
    }
    void girdleNuts() {
        if (!isOn(PlanLayer::girdleNuts)) {
            return;
        }
        for (const FastenerId f : m_layout.girdleNuts()) {
            m_list.push_back({text(code(f)), text(code(Position{f.number, f.side})), nameOf(f),
                              PlanLayer::girdleNuts, inPlan(m_layout.at(f)), m_size.washer, f.side, 0, 0});
        }
    }
    void rodFasteners() {
        if (!isOn(PlanLayer::rodFasteners)) {
            return;
        }
        for (const FastenerId f : m_layout.rodFasteners()) {
            const double y = f.side == Side::left ? -m_size.rodHalf : m_size.rodHalf;
            const QString label = QCoreApplication::translate("PlanDrawing", "rod %1")
                                      .arg(QString::number(f.number) + (f.side == Side::left ? "L" : "R"));
            m_list.push_back({text(code(f)), label, nameOf(f), PlanLayer::rodFasteners,
                              QPointF(m_size.rodAt(m_layout, f.number), y), m_size.rodBolt, f.side, 0, 2});
        }
    }
    void rowFasteners() {
        if (!isOn(PlanLayer::rowFasteners)) {
            return;
        }
        for (const auto& [kind, count] : m_content.rows) {
            int number = 0;
            for (const PlanPoint& point : rowPoints(m_layout, kind, count)) {
                const QPointF at = inPlan(point);
                const FastenerId f{kind, ++number, Side::left, Ring::inner};
                m_list.push_back({text(code(f)), QString::number(number), nameOf(f), PlanLayer::rowFasteners,
                                  at, 0.36 * m_size.railWidth, at.y() < 0 ? Side::left : Side::right, 0, 0});
            }
        }
    }
    void mainJournals() {
        if (!isOn(PlanLayer::mainJournals)) {
            return;
        }
        for (const JournalId j : m_layout.mainJournals()) {
            m_list.push_back({text(code(j)), text(describe(j)), text(describe(j)), PlanLayer::mainJournals,
                              QPointF(inMillimetres(m_layout.capAt(j.number)), 0), 0.42 * m_size.innerHalf, Side::left,
                              1.2 * std::max(m_size.washer, m_size.capHalfWidth), 2});
        }
    }
    void rodJournals() {
        if (!isOn(PlanLayer::rodJournals)) {
            return;
        }
        for (const JournalId j : m_layout.rodJournals()) {
            // Beside the mains, the rods have the other lane to themselves; alone they take turns.
            const bool isLeft = !isOn(PlanLayer::mainJournals) && j.number % 2 != 0;
            m_list.push_back({text(code(j)), text(describe(j)), text(describe(j)), PlanLayer::rodJournals,
                              QPointF(m_size.rodAt(m_layout, j.number), 0), 0.5 * m_size.rodWidth(m_layout, j.number),
                              isLeft ? Side::left : Side::right, 0, 2});
        }
    }
    void throws() {
        if (!isOn(PlanLayer::throws)) {
            return;
        }
        for (int number = 1; number <= m_layout.throws(); ++number) {
            const QString place = QStringLiteral("throw-%1").arg(number);
            if (isMarked(place)) {
                const QString name = QCoreApplication::translate("PlanDrawing", "throw %1").arg(number);
                m_list.push_back({place, name, name, PlanLayer::throws,
                                  QPointF(inMillimetres(m_layout.throwAt(number)), 0),
                                  m_size.throwReach(m_layout, number), throwLane(number), 0, 3});
            }
        }
    }
    /// By turns, but away from a pickup or dipstick in the way of the leader.
    [[nodiscard]] Side throwLane(int number) const {
        const Side turn = number % 2 != 0 ? Side::left : Side::right;
        const double x = inMillimetres(m_layout.throwAt(number));
        const auto isInTheWay = [&](PlanPoint part, Side side) {
            return side == turn && std::abs(inMillimetres(part.x) - x) < m_size.pickup;
        };
        const LayoutDescription& d = m_layout.description();
        const bool isBarred = (isOn(PlanLayer::pickup) && isInTheWay(m_layout.pickupAt(), d.pickupSide)) ||
                              (isOn(PlanLayer::dipstick) && isInTheWay(m_layout.dipstickAt(), d.dipstickSide));
        return isBarred ? (turn == Side::left ? Side::right : Side::left) : turn;
    }
    void loose(PlanLayer layer, const QString& place, const QString& name, PlanPoint at, Side side) {
        if (isOn(layer) && isMarked(place)) {
            m_list.push_back({place, name, name, layer, inPlan(at),
                              layer == PlanLayer::pickup ? m_size.pickup : 0.45 * m_size.pickup, side, 0, 0});
        }
    }

    const PlanContent& m_content;
    const EngineLayout& m_layout;
    const PlanGeometry& m_size;
    std::vector<PlanPlace> m_list;
};

} // namespace

std::vector<PlanPlace> placesOf(const PlanContent& content, const PlanGeometry& size) {
    std::vector<PlanPlace> list = Collector(content, size).all();
    const auto turnOf = [&](const PlanPlace& place) {
        const auto at = content.order.indexOf(place.code);
        return at < 0 ? content.order.size() : at;
    };
    std::stable_sort(list.begin(), list.end(),
                     [&](const PlanPlace& a, const PlanPlace& b) { return turnOf(a) < turnOf(b); });
    return list;
}

QStringList placeCodes(const std::vector<PlanPlace>& places) {
    QStringList list;
    for (const PlanPlace& place : places) {
        list << place.code;
    }
    return list;
}

QStringList placeCodes(const PlanContent& content) {
    return placeCodes(placesOf(content, PlanGeometry(content.layout)));
}

} // namespace caprail
