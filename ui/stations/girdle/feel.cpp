// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/answer_button.h>
#include <stations/girdle/feel.h>

#include <QComboBox>
#include <QDateTime>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QRandomGenerator>
#include <algorithm>
#include <assessment/feel_study.h>
#include <session/filled.h>
#include <session/look.h>
#include <stations/common/instrument_box.h>
#include <stations/common/station_text.h>
#include <stations/girdle/feel_results.h>
#include <stations/girdle/recheck_words.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

UtcTime now() {
    return {QDateTime::currentMSecsSinceEpoch()};
}

/// A study that was left alone for so long is begun anew.
constexpr std::int64_t hoursToGoOn = 24;

} // namespace

GirdleFeel::GirdleFeel(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_whose(new QComboBox(this)),
      m_straightedge(new InstrumentBox(session, {InstrumentType::straightedge}, this)), m_setUp(new QLineEdit(this)),
      m_rests(new QLineEdit(this)), m_steps(new QLineEdit(this)),
      m_begin(new QPushButton(tr("&Begin the study"), this)),
      m_propose(new QPushButton(tr("P&ropose from the kit"), this)), m_guide(new Label(this)), m_task(new Label(this)),
      m_problem(new Label(this)), m_results(new FeelResults(session, this)) {
    build();
    refresh();
    propose();
    readSteps();
}

QLayout* GirdleFeel::buildForm() {
    nameBox(*m_whose, tr("Whose feel is tried"));
    nameBox(*m_straightedge, tr("Straightedge"));
    m_setUp->setPlaceholderText(tr("the flat, and what the straightedge lies on"));
    m_rests->setPlaceholderText(tr("two shims alike, or a height"));
    m_steps->setPlaceholderText(tr("shims like S014+S022, or heights, parted by semicolons"));
    m_begin->setAutoDefault(false);
    m_propose->setAutoDefault(false);
    connect(m_whose, &QComboBox::activated, this, &GirdleFeel::refresh);
    connect(m_straightedge, &QComboBox::activated, this, &GirdleFeel::refresh);
    for (QLineEdit* edit : {m_rests, m_steps}) {
        connect(edit, &QLineEdit::editingFinished, this, &GirdleFeel::readSteps);
    }
    connect(m_begin, &QPushButton::clicked, this, &GirdleFeel::begin);
    connect(m_propose, &QPushButton::clicked, this, [this] {
        propose();
        refresh();
    });
    auto* form = new QFormLayout;
    addRow(form, tr("Whose feel"), m_whose);
    addRow(form, tr("Straightedge"), m_straightedge);
    addRow(form, tr("Set-up"), m_setUp);
    addRow(form, tr("Rests"), m_rests);
    addRow(form, tr("Steps"), m_steps);
    return form;
}

void GirdleFeel::build() {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Study of the feel: R rocks, D drags, L loose"));
    for (Label* label : {m_guide, m_task, m_problem}) {
        label->setWordWrap(true);
    }
    m_guide->setText(tr("Known steps under the straightedge, laid between two rests on a flat. Somebody else lays them "
                        "as asked for here and presses the key; who feels does not look at the screen, nor at the "
                        "shims. 25 answers or more."));
    m_guide->setForegroundRole(QPalette::PlaceholderText);
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.4);
    m_task->setFont(large);
    m_task->setMinimumHeight(QFontMetrics(large).lineSpacing() * 2);
    m_task->setAlignment(Qt::AlignTop);

    auto* answers = new QHBoxLayout;
    for (const auto& entry : allWords<Feel>()) {
        QPushButton* button = answerButton(entry.value, this);
        connect(button, &QPushButton::clicked, this, [this, feel = entry.value] { answer(feel); });
        m_buttons.push_back(button);
        answers->addWidget(button, 1);
    }
    auto* begin = new QHBoxLayout;
    begin->addWidget(m_begin);
    begin->addWidget(m_propose);
    begin->addStretch(1);
    auto* left = new QVBoxLayout;
    auto* heading = new Label(tr("The feel, tried like an instrument"), this);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    left->addWidget(heading);
    left->addWidget(m_guide);
    left->addLayout(buildForm());
    left->addWidget(m_problem);
    left->addLayout(begin);
    left->addSpacing(8);
    left->addWidget(m_task);
    left->addLayout(answers);
    left->addStretch(1);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(12);
    row->addLayout(left, 4);
    row->addWidget(m_results, 5);
}

std::string GirdleFeel::whose() const {
    return coreText(m_whose->currentData().toString());
}

void GirdleFeel::choose(const QString& person, const QString& straightedge) {
    m_whose->setCurrentIndex(std::max(0, m_whose->findData(person)));
    if (const int index = m_straightedge->findData(straightedge); index >= 0) {
        m_straightedge->setCurrentIndex(index);
    }
    refresh();
}

void GirdleFeel::propose() {
    FeelSteps proposal = proposeFeelSteps(m_session.facts());
    if (const FeelStudyFact* study = underWay()) {
        // What was tried already is tried on.
        for (FeelStep& step : stepsAnswered(*study)) {
            if (std::ranges::find(proposal.steps, step.height, &FeelStep::height) == proposal.steps.end()) {
                proposal.steps.push_back(std::move(step));
            }
        }
    }
    if (proposal.rests.size() == 2) {
        m_rests->setText(qtText(proposal.rests.front()) + QLatin1Char(' ') + qtText(proposal.rests.back()));
    }
    if (!proposal.steps.empty()) {
        m_steps->setText(qtText(feelStepsText(proposal.steps, m_session.units())));
        m_steps->setCursorPosition(0);
    }
}

const FeelStudyFact* GirdleFeel::underWay() const {
    const FeelStudyFact* newest = nullptr;
    for (const auto& [number, study] : m_session.facts().feelStudies) {
        if (study.begun.what.whose == whose() && study.begun.what.straightedge == m_straightedge->instrument()) {
            newest = &study;
        }
    }
    if (newest == nullptr) {
        return nullptr;
    }
    constexpr std::int64_t hour = 3'600'000;
    const UtcTime last = newest->answers.empty() ? newest->begun.time : newest->answers.back().time;
    return now().milliseconds - last.milliseconds <= hoursToGoOn * hour ? newest : nullptr;
}

void GirdleFeel::refresh() {
    const QString chosen = m_whose->count() == 0 ? m_session.person() : m_whose->currentData().toString();
    m_whose->clear();
    for (const auto& [name, person] : m_session.facts().people) {
        m_whose->addItem(qtText(name), qtText(name));
    }
    m_whose->setCurrentIndex(std::max(0, m_whose->findData(chosen)));
    m_straightedge->refresh();
    readSteps();
    m_results->show({whose(), m_straightedge->instrument()}, underWay());
}

/// Reads the steps anew, and draws the order that is left.
void GirdleFeel::readSteps() {
    m_tried.clear();
    QString problem;
    const Facts& facts = m_session.facts();
    const bool isNamed = !m_steps->text().trimmed().isEmpty();
    const auto rest = parseFeelRest(coreText(m_rests->text()), m_session.units(), facts);
    // Heights alone need no rests; steps of shims are measured against them.
    auto steps = parseFeelSteps(coreText(m_steps->text()), m_session.units(), facts, rest ? *rest : Length());
    if (isNamed && !steps) {
        problem = qtText(steps.error().sentence);
    } else if (isNamed && !rest && std::ranges::any_of(*steps, [](const FeelStep& s) { return !s.shims.empty(); })) {
        problem = qtText(rest.error().sentence);
    } else if (isNamed) {
        m_tried = std::move(*steps);
    }
    QPalette warning = m_problem->palette();
    warning.setColor(QPalette::WindowText, screenLook().out);
    m_problem->setPalette(warning);
    m_problem->setText(problem.isEmpty() ? QString() : QStringLiteral("✕ ") + problem);
    m_problem->setVisible(!problem.isEmpty());
    drawOrder();
    showTask();
}

void GirdleFeel::drawOrder() {
    const FeelStudyFact* study = underWay();
    if (study == nullptr) {
        m_drawnFor.clear();
        m_order.clear();
        return;
    }
    QString drawnFor = QString::number(study->begun.entry) + QLatin1Char('/') + QString::number(study->answers.size());
    for (const FeelStep& step : m_tried) {
        drawnFor += QLatin1Char(' ') + QString::number(step.height.value());
    }
    if (drawnFor != m_drawnFor) {
        m_drawnFor = drawnFor;
        m_order = stepsToCome(m_tried, study, feelAnswersNeeded, QRandomGenerator::global()->generate());
    }
}

void GirdleFeel::begin() {
    std::int64_t number = 1;
    for (const auto& [taken, study] : m_session.facts().feelStudies) {
        number = std::max(number, taken + 1);
    }
    if (!m_session.append(FeelStudyBegun{number, whose(), m_straightedge->instrument(), coreText(m_setUp->text())})) {
        return;
    }
    refresh();
    setFocus();
}

void GirdleFeel::answer(Feel feel) {
    const FeelStudyFact* study = underWay();
    if (study == nullptr || m_order.empty()) {
        return;
    }
    if (isAskedBack(feel, *m_task)) {
        return;
    }
    const FeelStep step = m_order.front();
    const auto stored =
        m_session.append(FeelAnswer{study->begun.what.study, {step.height, ""}, NameList{step.shims}, feel});
    StoringPress::answered(feelKey(feel), stored);
    if (stored) {
        refresh();
    }
}

void GirdleFeel::showTask() {
    const FeelStudyFact* study = underWay();
    const bool isReady = study != nullptr && !m_order.empty() && !m_session.isReadOnly();
    for (QPushButton* button : m_buttons) {
        button->setEnabled(isReady);
    }
    m_begin->setEnabled(!m_session.isReadOnly() && !whose().empty() && !m_straightedge->instrument().empty());
    if (m_straightedge->instrument().empty()) {
        m_task->setText(tr("Name the straightedge: add it with its flatness at the engine station."));
    } else if (m_tried.empty()) {
        m_task->setText(tr("Name the rests and the steps: shims of the kit that are measured, or heights."));
    } else if (study == nullptr) {
        m_task->setText(filled(tr("%1 steps are ready: begin the study."), m_tried.size()));
    } else {
        const FeelStep& step = m_order.front();
        const QString what = step.shims.empty() ? qtText(formatFineSigned(step.height, m_session.units()))
                                                : qtText(feelStepsText({step}, m_session.units()));
        m_task->setText(filled(tr("Answer %1 of %2: lay %3 between the rests."), study->answers.size() + 1,
                               std::max(feelAnswersNeeded, study->answers.size() + m_order.size()), what));
    }
    m_task->setAccessibleDescription(m_task->text());
}

void GirdleFeel::focusField() {
    if (underWay() != nullptr && !m_order.empty()) {
        setFocus();
    } else {
        m_whose->setFocus();
    }
}

void GirdleFeel::keyPressEvent(QKeyEvent* event) {
    for (const auto& entry : allWords<Feel>()) {
        if (event->text().compare(feelKey(entry.value), Qt::CaseInsensitive) == 0) {
            answer(entry.value);
            return;
        }
    }
    QWidget::keyPressEvent(event);
}

} // namespace caprail
