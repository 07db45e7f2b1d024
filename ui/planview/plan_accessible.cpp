// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/plan_accessible.h>

#include <QAccessibleWidget>
#include <QCoreApplication>
#include <map>

namespace caprail {

namespace {

/// One place. It asks the view for everything, so it never shows an old figure; it lives as long as the view's own
/// interface and is not valid while its place is not drawn.
class PlaceInterface : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    PlaceInterface(PlanView* view, QString place) : m_view(view), m_place(std::move(place)) {}

    [[nodiscard]] bool isValid() const override {
        return m_view != nullptr && m_view->drawing() != nullptr && m_view->drawing()->places().contains(m_place);
    }
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QWindow* window() const override {
        return m_view == nullptr ? nullptr : m_view->window()->windowHandle();
    }
    [[nodiscard]] QAccessibleInterface* parent() const override {
        return QAccessible::queryAccessibleInterface(m_view);
    }
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }

    [[nodiscard]] QString text(QAccessible::Text which) const override {
        if (!isValid()) {
            return {};
        }
        const PlanMark* mark = m_view->drawing()->markOf(m_place);
        switch (which) {
        case QAccessible::Name:
            return m_view->drawing()->sentenceOf(m_place);
        case QAccessible::Value:
            return mark == nullptr ? QString() : mark->figure;
        case QAccessible::Description:
            return mark == nullptr ? QString() : mark->note;
        default:
            return {};
        }
    }
    void setText(QAccessible::Text, const QString&) override {}

    [[nodiscard]] QRect rect() const override {
        if (!isValid()) {
            return {};
        }
        const QRect inView = m_view->widgetRectOf(m_place).toAlignedRect();
        return {m_view->mapToGlobal(inView.topLeft()), inView.size()};
    }
    [[nodiscard]] QAccessible::Role role() const override { return QAccessible::ListItem; }
    [[nodiscard]] QAccessible::State state() const override {
        QAccessible::State state;
        if (!isValid()) {
            state.invalid = true;
            return state;
        }
        const bool isSelected = m_view->selected() == m_place;
        state.focusable = true;
        state.selectable = true;
        state.selected = isSelected;
        state.focused = isSelected && m_view->hasFocus();
        state.disabled = !m_view->isEnabled();
        return state;
    }

    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
    }
    [[nodiscard]] QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
    void doAction(const QString& action) override {
        if (!isValid()) {
            return;
        }
        m_view->setFocus();
        m_view->select(m_place);
        emit m_view->placeSelected(m_place);
        if (action == pressAction()) {
            emit m_view->placeActivated(m_place);
        }
    }
    [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    QPointer<PlanView> m_view;
    QString m_place;
};

class PlanInterface : public QAccessibleWidget {
public:
    explicit PlanInterface(PlanView* view) : QAccessibleWidget(view, QAccessible::List), m_view(view) {}
    ~PlanInterface() override {
        for (const auto& [place, id] : m_ids) {
            QAccessible::deleteAccessibleInterface(id);
        }
    }
    PlanInterface(const PlanInterface&) = delete;
    PlanInterface& operator=(const PlanInterface&) = delete;

    [[nodiscard]] QString text(QAccessible::Text which) const override {
        const QString given = QAccessibleWidget::text(which);
        return which == QAccessible::Name && given.isEmpty()
                   ? QCoreApplication::translate("PlanView", "Plan of the pan rail")
                   : given;
    }
    [[nodiscard]] int childCount() const override { return static_cast<int>(places().size()); }
    [[nodiscard]] QAccessibleInterface* child(int index) const override {
        const QStringList list = places();
        return index < 0 || index >= list.size() ? nullptr : of(list[index]);
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override {
        const QStringList list = places();
        for (qsizetype i = 0; i < list.size(); ++i) {
            if (of(list[i]) == child) {
                return static_cast<int>(i);
            }
        }
        return -1;
    }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override {
        for (const QString& place : places()) {
            QAccessibleInterface* item = of(place);
            if (item->rect().contains(x, y)) {
                return item;
            }
        }
        return nullptr;
    }
    [[nodiscard]] QAccessibleInterface* focusChild() const override {
        const QString selected = m_view->selected();
        return m_view->hasFocus() && !selected.isEmpty() ? of(selected) : nullptr;
    }

private:
    [[nodiscard]] QStringList places() const {
        const PlanDrawing* drawing = m_view->drawing();
        return drawing == nullptr ? QStringList() : drawing->places();
    }
    [[nodiscard]] QAccessibleInterface* of(const QString& place) const {
        const auto known = m_ids.find(place);
        if (known != m_ids.end()) {
            return QAccessible::accessibleInterface(known->second);
        }
        auto* made = new PlaceInterface(m_view, place); // QAccessible's cache owns it from the next line on
        m_ids[place] = QAccessible::registerAccessibleInterface(made);
        return made;
    }

    PlanView* m_view;
    mutable std::map<QString, QAccessible::Id> m_ids;
};

QAccessibleInterface* planInterface(const QString&, QObject* object) {
    auto* view = qobject_cast<PlanView*>(object);
    return view == nullptr ? nullptr : new PlanInterface(view);
}

} // namespace

void installPlanAccessibility() {
    static const bool isInstalled = [] {
        QAccessible::installFactory(planInterface);
        return true;
    }();
    Q_UNUSED(isInstalled)
}

void announcePlanContent(PlanView& view) {
    QAccessibleEvent event(&view, QAccessible::ObjectReorder);
    QAccessible::updateAccessibility(&event);
}

std::vector<std::pair<QAccessible::Event, int>> selectionNews(const PlanView& view) {
    const auto index = static_cast<int>(view.places().indexOf(view.selected()));
    if (index < 0) {
        return {};
    }
    std::vector<std::pair<QAccessible::Event, int>> news{{QAccessible::Selection, index}};
    if (view.hasFocus()) {
        news.emplace_back(QAccessible::Focus, index);
    }
    return news;
}

void announcePlanSelection(PlanView& view) {
    for (const auto& [kind, child] : selectionNews(view)) {
        QAccessibleEvent event(&view, kind);
        event.setChild(child);
        QAccessible::updateAccessibility(&event);
    }
}

} // namespace caprail
