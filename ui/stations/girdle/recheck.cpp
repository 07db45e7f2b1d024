// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/recheck.h>

#include <QAccessibleWidget>
#include <QFormLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <algorithm>
#include <stations/common/checks_view.h>
#include <stations/common/entries_model.h>
#include <stations/common/entries_table.h>
#include <stations/common/place_heading.h>
#include <stations/girdle/words.h>
#include <stations/common/instrument_box.h>
#include <stations/common/station_text.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <work/stack_planning.h>

namespace caprail {

namespace {

/// What a button says: its key, the word, and what it means.
QString meaning(Feel feel) {
    switch (feel) {
    case Feel::rocks:
        return GirdleRecheck::tr("R\nrocks\nproud: too thick");
    case Feel::drags:
        return GirdleRecheck::tr("D\ndrags\nright");
    case Feel::loose:
        break;
    }
    return GirdleRecheck::tr("L\nloose\nlow: too thin");
}

/// The letter on its button, so that the key is the one that a person reads in every language.
QChar keyOf(Feel feel) {
    return meaning(feel).front();
}

} // namespace

namespace {

/// The page takes the letters itself: to a screen reader it is a group of controls with a name, no bare area.
QAccessibleInterface* accessibleRecheck(const QString&, QObject* object) {
    auto* page = qobject_cast<GirdleRecheck*>(object);
    return page == nullptr ? nullptr : new QAccessibleWidget(page, QAccessible::Grouping);
}

} // namespace

GirdleRecheck::GirdleRecheck(RecordSession& given, QWidget* parent)
    : GirdlePage(given, parent), m_heading(new PlaceHeading(this)), m_expected(new Label(this)),
      m_flushness(new Label(this)), m_instrument(new InstrumentBox(given, {InstrumentType::straightedge}, this)),
      m_entries(new EntriesTable(given, this)), m_checks(new ChecksView(given, this)) {
    static const bool isInstalled = [] {
        QAccessible::installFactory(accessibleRecheck);
        return true;
    }();
    Q_UNUSED(isInstalled);
    build();
}

void GirdleRecheck::build() {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Recheck: R rocks, D drags, L loose"));
    m_expected->setWordWrap(true);
    m_flushness->setWordWrap(true);
    m_flushness->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_entries->setColumnHidden(EntriesModel::person, true);
    m_entries->setColumnHidden(EntriesModel::time, true);
    m_entries->setFilter([this](const Entry& entry) {
        const auto* recheck = std::get_if<RecheckMade>(&entry.body);
        const auto* built = std::get_if<StackBuilt>(&entry.body);
        return (recheck != nullptr && recheck->position == m_position) ||
               (built != nullptr && built->position == m_position);
    });
    m_checks->setFilter([this](const Check& check) {
        const auto* p = std::get_if<Position>(&check.subject);
        return check.kind == CheckKind::flushness || (p != nullptr && *p == m_position);
    });
    auto* answers = new QHBoxLayout;
    for (const auto& entry : allWords<Feel>()) {
        auto* button = new QPushButton(meaning(entry.value), this);
        button->setAccessibleName(qtShown(entry.value));
        button->setMinimumHeight(84);
        button->setFocusPolicy(Qt::NoFocus);
        connect(button, &QPushButton::clicked, this, [this, feel = entry.value] { store(feel); });
        m_buttons.push_back(button);
        answers->addWidget(button, 1);
    }
    auto* form = new QFormLayout;
    addRow(form, tr("Straightedge"), m_instrument);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_heading);
    column->addWidget(m_expected);
    column->addLayout(answers);
    column->addLayout(form);
    column->addWidget(m_flushness);
    column->addWidget(m_entries, 2);
    column->addWidget(m_checks, 3);
}

void GirdleRecheck::refresh(Position selected) {
    m_position = selected;
    m_instrument->refresh();
    m_entries->refresh();
    m_checks->refresh();
    const auto made = facts().rechecks.find(m_position);
    const Check* check = assessment().find("recheck:" + code(m_position));
    const auto built = facts().stacks.find(m_position);
    const bool isOn = built != facts().stacks.end() && built->second.isOn;
    m_heading->show(capitalised(qtText(describe(m_position))),
                    made == facts().rechecks.end() ? QStringLiteral("—") : qtShown(made->second.what.feel),
                    check == nullptr ? CheckState::notDone : check->state,
                    check == nullptr ? tr("not done")
                                     : qtText(check->sentence.empty() ? check->remedy : check->sentence));
    for (QPushButton* button : m_buttons) {
        button->setEnabled(isOn);
    }
    const auto stack = assessment().stacks.find(m_position);
    if (!isOn) {
        m_expected->setText(built == facts().stacks.end()
                                ? tr("There is no stack here yet: build it first (Alt+3).")
                                : tr("The stack is off: put it back first (Parts and stacks)."));
    } else if (stack != assessment().stacks.end() && stack->second.residual) {
        const ResidualBand band = residualBand(facts());
        const Feel feel = expectedFeel(*stack->second.residual, band.band);
        const QString note = band.isSet ? QString() : QStringLiteral(" ") + usualBandSentence(band, units());
        m_expected->setText(tr("Residual %1: by the numbers it %2.")
                                .arg(qtText(formatSigned(*stack->second.residual, units())),
                                     feel == Feel::loose   ? tr("should be loose")
                                     : feel == Feel::rocks ? tr("should rock")
                                                           : tr("should drag")) +
                            note);
    } else {
        m_expected->setText(tr("The gap here is not accepted, so the numbers say nothing yet."));
    }
    m_flushness->setText(flushnessSentence(assessment(), units()));
    m_flushness->setVisible(!m_flushness->text().isEmpty());
}

Position GirdleRecheck::next() const {
    if (!facts().layout) {
        return m_position;
    }
    std::vector<Position> places = facts().layout->positions();
    if (const auto here = std::ranges::find(places, m_position); here != places.end()) {
        std::ranges::rotate(places, here + 1);
    }
    for (const Position p : places) {
        const Check* check = assessment().find("recheck:" + code(p));
        const auto built = facts().stacks.find(p);
        if (check != nullptr && !check->isGood() && built != facts().stacks.end() && built->second.isOn) {
            return p;
        }
    }
    return m_position;
}

void GirdleRecheck::store(Feel feel) {
    if (session().append(RecheckMade{m_position, feel, m_instrument->instrument()})) {
        emit chosen(next());
    }
}

void GirdleRecheck::focusField() {
    setFocus();
}

bool GirdleRecheck::type(const QString& text) {
    for (const auto& entry : allWords<Feel>()) {
        if (text.compare(keyOf(entry.value), Qt::CaseInsensitive) == 0) {
            store(entry.value);
            return true;
        }
    }
    return false;
}

void GirdleRecheck::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down) {
        emit stepped(event->key() == Qt::Key_Up ? -1 : 1);
    } else if (!type(event->text())) {
        GirdlePage::keyPressEvent(event);
    }
}

} // namespace caprail
