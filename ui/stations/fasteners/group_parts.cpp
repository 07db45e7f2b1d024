// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/fasteners/group_parts.h>

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <stations/common/station_text.h>
#include <text/plain_text.h>
#include <work/group_split.h>

namespace caprail {

FastenersGroupParts::FastenersGroupParts(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_split(new QPushButton(tr("Split &off places"), this)),
      m_by(new QComboBox(this)), m_name(new QLineEdit(this)), m_store(new QPushButton(this)),
      m_join(new QPushButton(tr("&Join back"), this)) {
    m_split->setObjectName(QStringLiteral("splitOff"));
    m_by->setObjectName(QStringLiteral("splitBy"));
    m_name->setObjectName(QStringLiteral("newGroupName"));
    m_store->setObjectName(QStringLiteral("storeSplit"));
    m_join->setObjectName(QStringLiteral("joinBack"));
    m_split->setCheckable(true);
    for (const auto& [by, text] : allWords<SplitBy>()) {
        m_by->addItem(qtShown(by), static_cast<int>(by));
    }
    nameBox(*m_by, tr("What a touch takes"));
    m_name->setPlaceholderText(tr("name, as rear cap"));
    m_name->setAccessibleName(tr("Name of the new group"));
    setTip(m_split, tr("Touch the places on the diagram that get a specification of their own (or walk with the arrow keys "
                       "and press Enter), name them, and store"));
    setTip(m_join, tr("These places go back to the wider group, with what it specifies"));
    for (QPushButton* button : {m_split, m_store, m_join}) {
        button->setAutoDefault(false);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    row->addWidget(m_split);
    row->addWidget(m_by, 1);
    row->addWidget(m_join);
    column->addLayout(row);
    auto* naming = new QHBoxLayout; // only while places are split off
    naming->addWidget(m_name, 1);
    naming->addWidget(m_store);
    column->addLayout(naming);
    connect(m_split, &QPushButton::toggled, this, &FastenersGroupParts::begin);
    connect(m_store, &QPushButton::clicked, this, &FastenersGroupParts::store);
    connect(m_name, &QLineEdit::returnPressed, this, &FastenersGroupParts::store);
    connect(m_join, &QPushButton::clicked, this, &FastenersGroupParts::join);
    refresh();
}

void FastenersGroupParts::setGroup(const GroupKey& key) {
    if (m_key != key) {
        m_key = key;
        m_split->setChecked(false);
    }
    refresh();
}

bool FastenersGroupParts::isSplitting() const {
    return m_split->isChecked();
}

void FastenersGroupParts::begin(bool isOn) {
    m_chosen.clear();
    m_name->clear();
    m_split->setText(isOn ? tr("Leave them together") : tr("Split &off places"));
    refresh();
    emit changed();
}

void FastenersGroupParts::refresh() {
    const bool isOn = isSplitting();
    const Facts& facts = m_session.facts();
    m_by->setVisible(isOn);
    m_name->setVisible(isOn);
    m_store->setVisible(isOn);
    m_store->setText(tr("Store the split: %1").arg(m_chosen.size()));
    m_join->setVisible(!isOn);
    m_join->setEnabled(joinBack(facts, m_key).has_value());
    m_split->setEnabled(isOn || membersOf(facts, m_key).size() > 1);
}

void FastenersGroupParts::touch(const QString& place) {
    const auto touched = parseFastener(coreText(place));
    if (!isSplitting() || !touched) {
        return;
    }
    const auto members = membersOf(m_session.facts(), m_key);
    const auto isChosen = [&](FastenerId f) { return std::ranges::find(m_chosen, f) != m_chosen.end(); };
    const bool isTakenOut = isChosen(*touched);
    for (const FastenerId f :
         placesWith(m_session.facts(), *touched, static_cast<SplitBy>(m_by->currentData().toInt()))) {
        if (isTakenOut) {
            std::erase(m_chosen, f);
        } else if (!isChosen(f) && std::ranges::find(members, f) != members.end()) {
            m_chosen.push_back(f);
        }
    }
    std::ranges::sort(m_chosen);
    refresh();
    emit changed();
}

void FastenersGroupParts::store() {
    auto entries = splitOff(m_session.facts(), m_key, coreText(m_name->text()), m_chosen);
    if (!entries) {
        emit refused(qtText(entries.error().sentence));
        return;
    }
    const GroupKey made = keyOf(entries->back().get<FastenerGroupSet>());
    if (const auto stored = m_session.appendAll(std::move(*entries)); !stored) {
        emit refused(qtText(stored.error().sentence));
        return;
    }
    m_split->setChecked(false);
    emit this->stored(made);
}

void FastenersGroupParts::join() {
    auto dissolved = joinBack(m_session.facts(), m_key);
    if (!dissolved) {
        emit refused(qtText(dissolved.error().sentence));
        return;
    }
    if (const auto stored = m_session.append(std::move(*dissolved)); !stored) {
        emit refused(qtText(stored.error().sentence));
        return;
    }
    emit this->stored(GroupKey{m_key.kind, {}, {}});
}

} // namespace caprail
