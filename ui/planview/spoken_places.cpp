// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/spoken_places.h>

#include <QAccessibleWidget>
#include <QCoreApplication>
#include <QPointer>
#include <QWidget>
#include <map>

namespace caprail {

namespace {

/// One place. It lives as long as the interface of the widget that draws it, and is not valid while it is not drawn.
class PlaceInterface : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    PlaceInterface(QWidget* widget, SpokenPlaces* places, QString place)
        : m_widget(widget), m_places(places), m_place(std::move(place)) {}

    [[nodiscard]] bool isValid() const override {
        return m_widget != nullptr && m_places->spokenPlaces().contains(m_place);
    }
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QWindow* window() const override {
        return m_widget == nullptr ? nullptr : m_widget->window()->windowHandle();
    }
    [[nodiscard]] QAccessibleInterface* parent() const override {
        return QAccessible::queryAccessibleInterface(m_widget);
    }
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }

    [[nodiscard]] QString text(QAccessible::Text which) const override {
        if (!isValid()) {
            return {};
        }
        switch (which) {
        case QAccessible::Name:
            return m_places->spokenSentence(m_place);
        case QAccessible::Value:
            return m_places->spokenFigure(m_place);
        default:
            return {};
        }
    }
    void setText(QAccessible::Text, const QString&) override {}

    [[nodiscard]] QRect rect() const override {
        if (!isValid()) {
            return {};
        }
        const QRect inWidget = m_places->spokenRect(m_place);
        return {m_widget->mapToGlobal(inWidget.topLeft()), inWidget.size()};
    }
    [[nodiscard]] QAccessible::Role role() const override { return QAccessible::ListItem; }
    [[nodiscard]] QAccessible::State state() const override {
        QAccessible::State state;
        if (!isValid()) {
            state.invalid = true;
            return state;
        }
        const bool isSelected = m_places->spokenSelected() == m_place;
        state.focusable = true;
        state.selectable = true;
        state.selected = isSelected;
        state.focused = isSelected && m_widget->hasFocus();
        state.disabled = !m_widget->isEnabled();
        return state;
    }

    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
    }
    [[nodiscard]] QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
    void doAction(const QString& action) override {
        if (isValid()) {
            m_widget->setFocus();
            m_places->chooseSpoken(m_place, action == pressAction());
        }
    }
    [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    QPointer<QWidget> m_widget;
    SpokenPlaces* m_places; ///< the same widget
    QString m_place;
};

class PlacesInterface : public QAccessibleWidget {
public:
    PlacesInterface(QWidget* widget, SpokenPlaces* places)
        : QAccessibleWidget(widget, QAccessible::List), m_widget(widget), m_places(places) {}
    ~PlacesInterface() override {
        for (const auto& [place, id] : m_ids) {
            QAccessible::deleteAccessibleInterface(id);
        }
    }
    PlacesInterface(const PlacesInterface&) = delete;
    PlacesInterface& operator=(const PlacesInterface&) = delete;

    [[nodiscard]] QString text(QAccessible::Text which) const override {
        const QString given = QAccessibleWidget::text(which);
        return which == QAccessible::Name && given.isEmpty()
                   ? QCoreApplication::translate("PlanView", "Plan of the pan rail")
                   : given;
    }
    [[nodiscard]] int childCount() const override { return static_cast<int>(m_places->spokenPlaces().size()); }
    [[nodiscard]] QAccessibleInterface* child(int index) const override {
        const QStringList list = m_places->spokenPlaces();
        return index < 0 || index >= list.size() ? nullptr : of(list[index]);
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override {
        const QStringList list = m_places->spokenPlaces();
        for (qsizetype i = 0; i < list.size(); ++i) {
            if (of(list[i]) == child) {
                return static_cast<int>(i);
            }
        }
        return -1;
    }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override {
        for (const QString& place : m_places->spokenPlaces()) {
            QAccessibleInterface* item = of(place);
            if (item->rect().contains(x, y)) {
                return item;
            }
        }
        return nullptr;
    }
    [[nodiscard]] QAccessibleInterface* focusChild() const override {
        const QString selected = m_places->spokenSelected();
        return m_widget->hasFocus() && m_places->spokenPlaces().contains(selected) ? of(selected) : nullptr;
    }

private:
    [[nodiscard]] QAccessibleInterface* of(const QString& place) const {
        const auto known = m_ids.find(place);
        if (known != m_ids.end()) {
            return QAccessible::accessibleInterface(known->second);
        }
        auto* made = new PlaceInterface(m_widget, m_places, place); // QAccessible's cache owns it from the next line on
        m_ids[place] = QAccessible::registerAccessibleInterface(made);
        return made;
    }

    QWidget* m_widget;
    SpokenPlaces* m_places;
    mutable std::map<QString, QAccessible::Id> m_ids;
};

QAccessibleInterface* placesInterface(const QString&, QObject* object) {
    auto* widget = qobject_cast<QWidget*>(object);
    auto* places = dynamic_cast<SpokenPlaces*>(object);
    return widget == nullptr || places == nullptr ? nullptr : new PlacesInterface(widget, places);
}

void tell(const SpokenPlaces& places, QAccessible::Event kind, int child) {
    // Events take the object as one that may change, though they change nothing.
    QAccessibleEvent event(const_cast<QWidget*>(&places.spokenOn()), kind);
    if (child >= 0) {
        event.setChild(child);
    }
    QAccessible::updateAccessibility(&event);
}

} // namespace

void installSpokenPlaces() {
    static const bool isInstalled = [] {
        QAccessible::installFactory(placesInterface);
        return true;
    }();
    Q_UNUSED(isInstalled)
}

void announcePlaces(const SpokenPlaces& places) {
    if (places.spokenOn().isVisible()) {
        tell(places, QAccessible::ObjectReorder, -1);
    }
}

std::vector<std::pair<QAccessible::Event, int>> selectionNews(const SpokenPlaces& places) {
    const auto index = static_cast<int>(places.spokenPlaces().indexOf(places.spokenSelected()));
    if (index < 0) {
        return {};
    }
    std::vector<std::pair<QAccessible::Event, int>> news{{QAccessible::Selection, index}};
    if (places.spokenOn().hasFocus()) {
        news.emplace_back(QAccessible::Focus, index);
    }
    return news;
}

void announceSelection(const SpokenPlaces& places) {
    if (!places.spokenOn().isVisible()) {
        return; // nobody is told of what is not in sight
    }
    for (const auto& [kind, child] : selectionNews(places)) {
        tell(places, kind, child);
    }
}

} // namespace caprail
