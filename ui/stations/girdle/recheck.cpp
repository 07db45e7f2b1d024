// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/answer_button.h>
#include <stations/girdle/recheck.h>

#include <QAccessibleWidget>
#include <QDateTime>
#include <QFormLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <algorithm>
#include <session/filled.h>
#include <stations/common/checks_view.h>
#include <stations/common/entries_model.h>
#include <stations/common/entries_table.h>
#include <stations/common/instrument_box.h>
#include <stations/common/place_heading.h>
#include <stations/common/station_text.h>
#include <stations/girdle/recheck_words.h>
#include <stations/girdle/words.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <work/stack_planning.h>

namespace caprail {

namespace {

/// The page takes the letters itself: to a screen reader it is a group of controls with a name, no bare area.
QAccessibleInterface* accessibleRecheck(const QString&, QObject* object) {
    auto* page = qobject_cast<GirdleRecheck*>(object);
    return page == nullptr ? nullptr : new QAccessibleWidget(page, QAccessible::Grouping);
}

} // namespace

GirdleRecheck::GirdleRecheck(RecordSession& given, QWidget* parent)
    : GirdlePage(given, parent), m_heading(new PlaceHeading(this)), m_steps(new Label(this)), m_task(new Label(this)),
      m_carried(new Label(this)), m_feel(new Label(this)), m_flushness(new Label(this)),
      m_instrument(new InstrumentBox(given, {InstrumentType::straightedge}, this)), m_bracket(new QPushButton(this)),
      m_tryFeel(new QPushButton(tr("&Try a feel…"), this)), m_entries(new EntriesTable(given, this)),
      m_checks(new ChecksView(given, this)) {
    static const bool isInstalled = [] {
        QAccessible::installFactory(accessibleRecheck);
        return true;
    }();
    Q_UNUSED(isInstalled);
    build();
}

void GirdleRecheck::buildButtons() {
    for (const auto& entry : allWords<Feel>()) {
        QPushButton* button = answerButton(entry.value, this);
        connect(button, &QPushButton::clicked, this, [this, feel = entry.value] { store(feel); });
        m_buttons.push_back(button);
    }
    m_bracket->setText(tr("B  bracket it"));
    setTip(m_bracket, tr("Exchange shims until it rocks and until it is loose: the residual lies between, whatever the "
                         "leaves were worth."));
    m_bracket->setFocusPolicy(Qt::NoFocus);
    connect(m_bracket, &QPushButton::clicked, this, &GirdleRecheck::bracket);
    m_tryFeel->setAutoDefault(false);
    setTip(m_tryFeel, tr("Known steps in random order, once a year: what you feel then carries a verdict."));
    connect(m_tryFeel, &QPushButton::clicked, this,
            [this] { emit feelAsked(session().person(), qtText(m_instrument->instrument())); });
}

void GirdleRecheck::build() {
    setFocusPolicy(Qt::StrongFocus);
    for (Label* label : {m_steps, m_task, m_carried, m_feel, m_flushness}) {
        label->setWordWrap(true);
    }
    m_flushness->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_carried->setTextInteractionFlags(Qt::TextSelectableByMouse);
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.15);
    m_task->setFont(large);
    m_task->setMinimumHeight(QFontMetrics(large).lineSpacing() * 3);
    m_task->setAlignment(Qt::AlignTop);
    m_entries->setColumnHidden(EntriesModel::person, true);
    m_entries->setColumnHidden(EntriesModel::time, true);
    m_entries->setFilter([this](const Entry& entry) {
        const auto* recheck = entry.body.as<RecheckMade>();
        const auto* built = entry.body.as<StackBuilt>();
        return (recheck != nullptr && recheck->position == m_position) ||
               (built != nullptr && built->position == m_position);
    });
    m_checks->setFilter([this](const Check& check) {
        const auto* p = std::get_if<Position>(&check.subject);
        return check.kind == CheckKind::flushness || (p != nullptr && *p == m_position);
    });
    buildButtons();
    connect(m_instrument, &QComboBox::activated, this, [this] { refresh(m_position); });
    auto* answers = new QHBoxLayout;
    for (QPushButton* button : m_buttons) {
        answers->addWidget(button, 1);
    }
    auto* form = new QFormLayout;
    addRow(form, tr("Straightedge"), m_instrument);
    auto* feelRow = new QHBoxLayout;
    feelRow->addWidget(m_feel, 1);
    feelRow->addWidget(m_tryFeel, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(4, 0, 4, 0); // beside the ring around the page
    column->addWidget(m_heading);
    column->addWidget(m_steps);
    column->addWidget(m_task);
    column->addLayout(answers);
    column->addWidget(m_bracket, 0, Qt::AlignLeft);
    column->addWidget(m_carried);
    column->addLayout(form);
    column->addLayout(feelRow);
    column->addWidget(m_flushness);
    column->addWidget(m_entries, 2);
    column->addWidget(m_checks, 3);
}

WhoFeels GirdleRecheck::who() const {
    return {coreText(session().person()), m_instrument->instrument()};
}

bool GirdleRecheck::isBuiltOn(Position position) const {
    const auto built = facts().stacks.find(position);
    return built != facts().stacks.end() && built->second.isOn;
}

void GirdleRecheck::refresh(Position selected) {
    m_isBracketWanted = m_isBracketWanted && selected == m_position;
    m_position = selected;
    // With the place: who does not see the page hears that it went on.
    setAccessibleName(filled(tr("Recheck at %1: R rocks, D drags, L loose"), qtText(describe(m_position))));
    m_instrument->refresh();
    m_entries->refresh();
    m_checks->refresh();
    const auto made = facts().rechecks.find(m_position);
    const Check* check = assessment().find("recheck:" + code(m_position));
    m_heading->show(capitalised(qtText(describe(m_position))),
                    made == facts().rechecks.end() ? QStringLiteral("—") : qtShown(made->second.what.feel),
                    check == nullptr ? CheckState::notDone : check->state,
                    check == nullptr ? tr("not done")
                                     : qtText(check->sentence.empty() ? check->remedy : check->sentence));
    m_guide = guideRecheck(facts(), assessment(), m_position, who(), m_isBracketWanted);
    for (QPushButton* button : m_buttons) {
        button->setEnabled(isBuiltOn(m_position));
    }
    showTask();
    showCarried();
    m_feel->setText(feelSentence(facts(), who(), units(), {QDateTime::currentMSecsSinceEpoch()}));
    m_flushness->setText(flushnessSentence(assessment(), units()));
    m_flushness->setVisible(!m_flushness->text().isEmpty());
}

QString GirdleRecheck::asBuiltTask() const {
    const auto stack = assessment().stacks.find(m_position);
    if (!isBuiltOn(m_position)) {
        return facts().stacks.contains(m_position) ? tr("The stack is off: put it back first (Parts and stacks).")
                                                   : tr("There is no stack here yet: build it first (Alt+3).");
    }
    if (stack == assessment().stacks.end() || !stack->second.residual) {
        return tr("The gap here is not accepted, so the numbers say nothing yet.");
    }
    const ResidualBand band = residualBand(facts());
    const Feel feel = expectedFeel(*stack->second.residual, band.band);
    const QString note = band.isSet ? QString() : QStringLiteral(" ") + usualBandSentence(band, units());
    return tr("Residual %1: by the numbers it %2.")
               .arg(qtText(formatSigned(*stack->second.residual, units())), feel == Feel::loose   ? tr("should be loose")
                                                                            : feel == Feel::rocks ? tr("should rock")
                                                                                                  : tr("should drag")) +
           note;
}

void GirdleRecheck::showTask() {
    m_steps->setText(recheckSteps(facts(), m_position, m_guide.ask));
    QString task = m_guide.ask == RecheckAsk::thicker || m_guide.ask == RecheckAsk::thinner
                       ? exchangeSentence(m_guide, units())
                       : asBuiltTask();
    if (!m_guide.doubt.empty()) {
        task += (task.isEmpty() ? QString() : QStringLiteral("\n")) + QStringLiteral("⚑ ") + qtText(m_guide.doubt);
    }
    m_task->setText(task);
    m_task->setAccessibleDescription(task);
    // A bracket begins by itself where the stack needs it.
    const auto made = facts().rechecks.find(m_position);
    const bool isBracketed = made != facts().rechecks.end() && made->second.what.thinnerFelt;
    m_bracket->setVisible(isBuiltOn(m_position) && m_guide.ask == RecheckAsk::nothing && !isBracketed);
}

void GirdleRecheck::showCarried() {
    const auto stack = assessment().stacks.find(m_position);
    m_carried->setText(stack == assessment().stacks.end() ? QString() : carriedLines(stack->second, units()));
    m_carried->setVisible(!m_carried->text().isEmpty());
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
        if (!isBuiltOn(p)) {
            continue;
        }
        const RecheckGuide guide = guideRecheck(facts(), assessment(), p, who());
        if (guide.ask == RecheckAsk::asBuilt || guide.exchange) {
            return p;
        }
    }
    return m_position;
}

void GirdleRecheck::store(Feel feel) {
    if (isAskedBack(feel, *m_task)) {
        return;
    }
    const RecheckAsk asked = m_guide.ask;
    const auto stored = session().append(recheckOf(facts(), m_position, m_guide, feel, who()));
    StoringPress::answered(feelKey(feel), stored);
    if (!stored) {
        return;
    }
    const RecheckGuide after = guideRecheck(facts(), assessment(), m_position, who(), m_isBracketWanted);
    const bool isOfBracket = asked == RecheckAsk::thicker || asked == RecheckAsk::thinner;
    const bool isProudOrLow = !isOfBracket && feel != Feel::drags;
    if (isProudOrLow || !after.exchange) {
        m_isBracketWanted = false;
        emit chosen(after.ask == RecheckAsk::asBuilt && !isProudOrLow ? m_position : next());
    } else {
        refresh(m_position);
    }
}

void GirdleRecheck::bracket() {
    m_isBracketWanted = true;
    refresh(m_position);
}

void GirdleRecheck::focusField() {
    setFocus();
}

bool GirdleRecheck::type(const QString& text) {
    if (m_bracket->isVisible() && text.compare(m_bracket->text().left(1), Qt::CaseInsensitive) == 0) {
        bracket();
        return true;
    }
    for (const auto& entry : allWords<Feel>()) {
        if (text.compare(feelKey(entry.value), Qt::CaseInsensitive) == 0) {
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
