// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/view_switches.h>

#include <QAccessibleWidget>
#include <QButtonGroup>
#include <QEvent>
#include <QHBoxLayout>
#include <QRegularExpression>
#include <QShortcut>
#include <QTabBar>
#include <QTabWidget>
#include <QToolButton>
#include <session/look.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

QKeySequence keyOf(int view) {
    return {Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + view)};
}

/// A type of its own, so that screen readers have it as a tab.
class ViewButton : public QToolButton {
public:
    using QToolButton::QToolButton;
};

/// Qt's own would offer to turn the button over, which changes no view.
class ViewInterface : public QAccessibleWidget {
public:
    explicit ViewInterface(ViewButton* button) : QAccessibleWidget(button, QAccessible::PageTab), m_button(button) {}

    [[nodiscard]] QAccessible::State state() const override {
        QAccessible::State state = QAccessibleWidget::state();
        state.checkable = true;
        state.checked = m_button->isChecked();
        state.selectable = true;
        state.selected = m_button->isChecked();
        return state;
    }
    [[nodiscard]] QStringList actionNames() const override {
        return QStringList{pressAction()} + QAccessibleWidget::actionNames();
    }
    void doAction(const QString& action) override {
        if (action == pressAction()) {
            m_button->click();
        } else {
            QAccessibleWidget::doAction(action);
        }
    }

private:
    ViewButton* m_button;
};

QAccessibleInterface* viewInterface(const QString&, QObject* object) {
    auto* button = dynamic_cast<ViewButton*>(object);
    return button == nullptr ? nullptr : new ViewInterface(button);
}

} // namespace

ViewSwitches::ViewSwitches(const std::vector<View>& views, QWidget* parent) : QWidget(parent) {
    static const bool isInstalled = [] {
        QAccessible::installFactory(viewInterface);
        return true;
    }();
    Q_UNUSED(isInstalled)
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    auto* group = new QButtonGroup(this);
    for (const View& view : views) {
        const int number = static_cast<int>(m_buttons.size());
        auto* button = new ViewButton(this);
        const QString key = keyOf(number).toString(QKeySequence::NativeText);
        button->setText(QStringLiteral("%1  %2").arg(number + 1).arg(view.name));
        button->setCheckable(true);
        button->setShortcut(keyOf(number));
        setTip(button, view.tip.isEmpty() ? key : view.tip + QStringLiteral(" (%1)").arg(key));
        button->setAccessibleName(view.name);
        button->setMinimumHeight(34); // as wide as its name at least, in every language
        connect(button, &QToolButton::clicked, this, [this, number] { emit chosen(number); });
        group->addButton(button);
        row->addWidget(button);
        m_buttons.push_back(button);
    }
    show(0);
}

void ViewSwitches::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) {
        show(m_shown);
    }
}

void ViewSwitches::show(int view) {
    m_shown = view;
    for (std::size_t i = 0; i < m_buttons.size(); ++i) {
        const bool isShown = static_cast<int>(i) == view;
        QToolButton& button = *m_buttons[i];
        QFont weight = font();
        weight.setBold(isShown);
        weight.setUnderline(isShown);
        button.setFont(weight);
        button.setChecked(isShown);
        button.setFocusPolicy(isShown ? Qt::StrongFocus : Qt::ClickFocus);
        QPalette colours = palette();
        if (isShown) {
            colours.setColor(QPalette::ButtonText, screenLook().accent);
        }
        button.setPalette(colours);
    }
}

void giveDigits(QTabWidget& tabs) {
    for (int page = 0; page < tabs.count(); ++page) {
        nameTab(tabs, page, tabs.tabText(page));
        auto* key = new QShortcut(keyOf(page), &tabs);
        QObject::connect(key, &QShortcut::activated, &tabs, [&tabs, page] {
            tabs.setCurrentIndex(page);
            tabs.setFocus(Qt::ShortcutFocusReason);
        });
    }
}

void nameTab(QTabWidget& tabs, int page, const QString& name) {
    tabs.setTabText(page, QStringLiteral("%1  %2").arg(page + 1).arg(name));
    tabs.setTabToolTip(page, keyOf(page).toString(QKeySequence::NativeText));
    tabs.tabBar()->setAccessibleTabName(page, name);
}

QString shownView(const QWidget& station) {
    QString name;
    for (const QTabWidget* tabs : station.findChildren<QTabWidget*>()) {
        name = name.isEmpty() && tabs->isVisible() ? tabs->tabBar()->accessibleTabName(tabs->currentIndex()) : name;
    }
    for (const QToolButton* button : station.findChildren<QToolButton*>()) {
        name =
            dynamic_cast<const ViewButton*>(button) != nullptr && button->isChecked() ? button->accessibleName() : name;
    }
    static const QRegularExpression counted(QStringLiteral(R"(\s*\([^)]*\))"));
    return name.remove(counted);
}

} // namespace caprail
