// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/optional_field.h>

#include <QHBoxLayout>
#include <QLineEdit>
#include <stations/common/entry_field.h>
#include <text/label.h>

namespace caprail {

OptionalField::OptionalField(const QString& label, const QString& hint, EntryField* main)
    : QWidget(main->parentWidget()), m_label(label), m_edit(new QLineEdit(this)) {
    auto* name = new Label(label, this);
    name->setBuddy(m_edit);
    m_edit->setPlaceholderText(hint);
    m_edit->setAccessibleName(label);
    m_edit->setAccessibleDescription(hint);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(name);
    row->addWidget(m_edit, 1);
    connect(m_edit, &QLineEdit::returnPressed, main, &EntryField::submit);
}

OptionalField* OptionalField::partTemperature(EntryField* main) {
    return new OptionalField(tr("Part's temperature"), tr("if it was measured: 21 °C, 70 °F"), main);
}

void OptionalField::follow(const QString& place) {
    if (place != m_place) {
        m_place = place;
        m_edit->clear();
    }
}

void OptionalField::clear() {
    m_edit->clear();
}

QString OptionalField::text() const {
    return m_edit->text();
}

} // namespace caprail
