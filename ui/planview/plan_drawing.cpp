// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/plan_drawing.h>

#include <QCoreApplication>
#include <QPainter>
#include <cmath>
#include <planview/plan_scene.h>
#include <planview/state_shape.h>
#include <session/filled.h>

namespace caprail {

namespace {

double distance(QPointF a, QPointF b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

std::vector<const PlanMark*> marksOf(const PlanContent& content, const std::vector<PlanPlace>& places) {
    std::vector<const PlanMark*> list;
    for (const PlanPlace& place : places) {
        const auto at = std::find_if(content.marks.begin(), content.marks.end(),
                                     [&](const PlanMark& mark) { return mark.place == place.code; });
        list.push_back(at == content.marks.end() ? nullptr : &*at);
    }
    return list;
}

QRectF roomIn(const QRectF& area, const PlanType& type, double titleHeight) {
    const double margin = 0.45 * type.em;
    return area.adjusted(margin, margin + titleHeight, -margin, -margin);
}

} // namespace

PlanScene::PlanScene(PlanContent what, const PlanOrientation& orientation, const QRectF& inside, const QFont& font,
                     const QPaintDevice* device)
    : content(std::move(what)), area(inside), type(font, device), size(content.layout), places(placesOf(content, size)),
      marks(marksOf(content, places)),
      frontText(type.sizeOf(QCoreApplication::translate("PlanDrawing", "FRONT"), type.sized(0.85, true))),
      titleHeight(content.title.isEmpty() ? 0 : 1.5 * type.em),
      set(setPlan(size, orientation, roomIn(area, type, titleHeight),
                  PlanFrame::isUpright(orientation) ? 2.4 * type.em : frontText.width() + 1.1 * type.em, places, marks,
                  type)) {
    const PlanFrame& frame = set.frame;
    const double room = frame.isUpright() ? 1.2 * type.em : frontText.width() / 2 + 0.55 * type.em;
    front = frame.at(QPointF(-size.overhang - 0.22 * size.railWidth, 0)) - frame.rearwards() * room;
    if (content.layers.testFlag(PlanLayer::girdle)) {
        plate = frame.at(
            girdleShape(girdleOutline(content.layout, content.shape), content.layers.testFlag(PlanLayer::cutout)));
    }
}

const PlanPlace* PlanScene::find(const QString& placeCode) const {
    const auto at =
        std::find_if(places.begin(), places.end(), [&](const PlanPlace& place) { return place.code == placeCode; });
    return placeCode.isEmpty() || at == places.end() ? nullptr : &*at;
}

const Callout* PlanScene::calloutOf(const PlanPlace& place) const {
    const auto index = static_cast<std::size_t>(&place - places.data());
    const auto& list = set.around.callouts;
    const auto at =
        std::find_if(list.begin(), list.end(), [&](const Callout& callout) { return callout.place == index; });
    return at == list.end() ? nullptr : &*at;
}

PlanDrawing::PlanDrawing(PlanContent content, const PlanOrientation& orientation, const QRectF& area, const QFont& font,
                         const QPaintDevice* device)
    : m_scene(std::make_shared<const PlanScene>(std::move(content), orientation, area, font, device)),
      m_selected(m_scene->content.selected) {}

void PlanDrawing::paint(QPainter& painter, const Look& look) const {
    const PlanScene& scene = *m_scene;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintGirdleWash(painter, scene, look);
    paintBlock(painter, scene, look);
    paintCrank(painter, scene, look);
    paintGirdle(painter, scene, look);
    paintHeights(painter, scene, look);
    paintLoose(painter, scene, look);
    const PlanPlace* selected = scene.find(m_selected);
    const auto isSelected = [&](const Callout& c) { return &scene.places[c.place] == selected; };
    for (const Callout& callout : scene.set.around.callouts) {
        paintLeader(painter, callout, isSelected(callout), scene.type, look);
    }
    paintStuds(painter, scene, look);
    paintLoads(painter, scene, look);
    paintJournals(painter, scene, look);
    paintNumbers(painter, scene, look);
    for (std::size_t i = 0; i < scene.places.size(); ++i) {
        const PlanPlace& place = scene.places[i];
        if (scene.marks[i] != nullptr && scene.calloutOf(place) == nullptr) {
            // No figure: the state's badge stands at the symbol itself.
            const double radius =
                std::min(0.38 * scene.type.em, std::max(1.05 * scene.radiusOf(place), 0.2 * scene.type.em));
            paintBadge(painter, scene.pointOf(place), radius, scene.marks[i]->state, look);
        }
    }
    if (selected != nullptr) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(look.accent, 0.16 * scene.type.em));
        const double radius = scene.radiusOf(*selected) + 0.22 * scene.type.em;
        painter.drawEllipse(scene.pointOf(*selected), radius, radius);
    }
    for (const Callout& callout : scene.set.around.callouts) {
        paintCallout(painter, callout, scene.places[callout.place].label, scene.set.frame.isUpright(),
                     scene.set.around.scale, isSelected(callout), scene.type, look);
    }
    paintWays(painter, scene, look);
    painter.restore();
}

const PlanContent& PlanDrawing::content() const {
    return m_scene->content;
}

const PlanMark* PlanDrawing::markOf(const QString& place) const {
    const PlanPlace* found = m_scene->find(place);
    return found == nullptr ? nullptr : m_scene->marks[static_cast<std::size_t>(found - m_scene->places.data())];
}

QStringList PlanDrawing::places() const {
    return placeCodes(m_scene->places);
}

QString PlanDrawing::nameOf(const QString& place) const {
    const PlanPlace* found = m_scene->find(place);
    return found == nullptr ? QString() : found->name;
}

QString PlanDrawing::sentenceOf(const QString& place) const {
    QStringList parts{nameOf(place)};
    if (const PlanMark* mark = markOf(place)) {
        parts << (mark->spoken.isEmpty() ? QStringList{mark->figure, mark->note} : QStringList{mark->spoken});
        parts << stateWord(mark->state);
    }
    return joined(parts);
}

QString PlanDrawing::placeAt(QPointF point) const {
    for (const Callout& callout : m_scene->set.around.callouts) {
        if (callout.box.contains(point)) {
            return m_scene->places[callout.place].code;
        }
    }
    const PlanPlace* nearest = nullptr;
    double least = 0;
    for (const PlanPlace& place : m_scene->places) {
        const double away = distance(m_scene->pointOf(place), point);
        const double reach = std::max(1.3 * m_scene->radiusOf(place), 0.9 * m_scene->type.em);
        if (away <= reach && (nearest == nullptr || away < least)) {
            nearest = &place;
            least = away;
        }
    }
    return nearest == nullptr ? QString() : nearest->code;
}

QRectF PlanDrawing::rectOf(const QString& place) const {
    const PlanPlace* found = m_scene->find(place);
    if (found == nullptr) {
        return {};
    }
    const double radius = std::max(m_scene->radiusOf(*found), 0.3 * m_scene->type.em);
    const QPointF at = m_scene->pointOf(*found);
    return QRectF(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius).united(calloutOf(place));
}

QPointF PlanDrawing::pointOf(const QString& place) const {
    const PlanPlace* found = m_scene->find(place);
    return found == nullptr ? QPointF() : m_scene->pointOf(*found);
}

QRectF PlanDrawing::calloutOf(const QString& place) const {
    const PlanPlace* found = m_scene->find(place);
    const Callout* callout = found == nullptr ? nullptr : m_scene->calloutOf(*found);
    return callout == nullptr ? QRectF() : callout->box;
}

QString PlanDrawing::neighbour(const QString& place, PlanDirection direction) const {
    const PlanPlace* from = m_scene->find(place);
    if (from == nullptr) {
        return m_scene->places.empty() ? QString() : m_scene->places.front().code;
    }
    const bool isLevel = direction == PlanDirection::left || direction == PlanDirection::right;
    const double way = direction == PlanDirection::right || direction == PlanDirection::down ? 1 : -1;
    const PlanPlace* best = nullptr;
    double least = 0;
    for (const PlanPlace& to : m_scene->places) {
        const QPointF d = m_scene->pointOf(to) - m_scene->pointOf(*from);
        const double ahead = way * (isLevel ? d.x() : d.y());
        const double aside = std::abs(isLevel ? d.y() : d.x());
        // A rounding error is no direction.
        if (ahead < 0.02 * m_scene->type.em) {
            continue;
        }
        // Straight ahead comes first; what lies more aside than ahead only when nothing else is left.
        const double cost = ahead + 1.3 * aside + (aside > ahead ? 1e6 : 0);
        if (best == nullptr || cost < least) {
            best = &to;
            least = cost;
        }
    }
    return best == nullptr ? place : best->code;
}

QPointF PlanDrawing::frontAt() const {
    return m_scene->front;
}

qreal PlanDrawing::calloutScale() const {
    return m_scene->set.around.scale;
}

void drawPlan(QPainter& painter, const QRectF& area, const PlanContent& content, const PlanOrientation& orientation,
              const Look& look) {
    PlanDrawing(content, orientation, area, painter.font(), painter.device()).paint(painter, look);
}

} // namespace caprail
