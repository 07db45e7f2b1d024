// SPDX-License-Identifier: GPL-3.0-or-later
#include <text/box_label.h>

#include <QComboBox>
#include <QEvent>
#include <QLineEdit>
#include <algorithm>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

/// The label that leads to this box; null: none.
const QLabel* labelOf(const QComboBox& box) {
    const auto siblings = box.parentWidget() == nullptr
                              ? QList<QLabel*>()
                              : box.parentWidget()->findChildren<QLabel*>(QString(), Qt::FindDirectChildrenOnly);
    const auto at = std::ranges::find_if(siblings, [&](const QLabel* label) { return label->buddy() == &box; });
    return at == siblings.end() ? nullptr : *at;
}

/// Waits until the box is shown: only then does it lie where it stays, and are its label and its name known.
class BoxLabel : public QObject {
public:
    explicit BoxLabel(QComboBox& box) : QObject(&box), m_box(box) { box.installEventFilter(this); }

    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Show && m_box.parentWidget() != nullptr) {
            m_box.removeEventFilter(this);
            give();
        }
        return QObject::eventFilter(watched, event);
    }

private:
    void give() {
        const QLabel* there = labelOf(m_box);
        QString asked = !m_box.accessibleName().isEmpty() ? m_box.accessibleName()
                        : there != nullptr                ? there->text().remove(QLatin1Char('&'))
                                                          : m_box.toolTip();
        if (there == nullptr && !asked.isEmpty()) {
            auto* label = new Label(literal(asked), m_box.parentWidget());
            label->hide(); // said, not seen
            label->setBuddy(&m_box);
            connect(&m_box, &QObject::destroyed, label, &QObject::deleteLater);
        }
        if (QLineEdit* edit = m_box.lineEdit(); edit != nullptr && edit->accessibleName().isEmpty()) {
            edit->setAccessibleName(asked);
        }
    }
    QComboBox& m_box;
};

} // namespace

void labelBox(QComboBox& box) {
    if (!box.property("caprailLabelled").toBool()) {
        box.setProperty("caprailLabelled", true);
        new BoxLabel(box); // the box takes it over
    }
}

} // namespace caprail
