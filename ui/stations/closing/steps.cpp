// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/closing/steps.h>

#include <QDateTime>
#include <QGridLayout>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>
#include <session/look.h>
#include <stations/closing/open_time.h>
#include <stations/common/station_text.h>
#include <text/ask.h>
#include <text/label.h>

namespace caprail {

namespace {

QString when(UtcTime time) {
    return QLocale().toString(QDateTime::fromMSecsSinceEpoch(time.milliseconds), QStringLiteral("yyyy-MM-dd HH:mm"));
}

void ink(Label* label, const QColor& colour) {
    QPalette palette = label->palette();
    palette.setColor(QPalette::WindowText, colour);
    label->setPalette(palette);
}

} // namespace

ClosingSteps::ClosingSteps(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_minutes(new QSpinBox(this)), m_openTime(new OpenTime(this)),
      m_statement(new QLineEdit(this)), m_sign(new QPushButton(tr("Sign &off"), this)), m_signed(new Label(this)),
      m_build(new QPushButton(this)) {
    build();
    refresh();
}

void ClosingSteps::build() {
    m_sign->setObjectName(QStringLiteral("signOff"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setColumnStretch(1, 1);
    grid->setVerticalSpacing(8);
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.25);
    int line = 0;
    for (const auto& entry : allWords<ClosingStep>()) {
        Row row{new Label(this), new Label(this), new QPushButton(tr("Done"), this)};
        row.sign->setFont(large);
        row.text->setFont(large);
        row.text->setWordWrap(true);
        row.button->setMinimumHeight(36);
        row.button->setAccessibleName(tr("Done: %1").arg(qtShown(entry.value)));
        connect(row.button, &QPushButton::clicked, this, [this, step = entry.value] { tick(step); });
        grid->addWidget(row.sign, line, 0);
        grid->addWidget(row.text, line, 1);
        if (entry.value == ClosingStep::beadLaid) {
            m_minutes->setRange(0, 1440);
            m_minutes->setSuffix(tr(" min open"));
            m_minutes->setSpecialValueText(tr("open time?"));
            m_minutes->setAccessibleName(tr("Open time of the sealant in minutes, as printed on its tube"));
            m_minutes->setMinimumHeight(36);
            grid->addWidget(m_minutes, line, 2);
        }
        grid->addWidget(row.button, line, 3);
        m_rows.emplace(entry.value, row);
        if (entry.value == ClosingStep::beadLaid) {
            m_openTime->setWordWrap(true);
            grid->addWidget(m_openTime, ++line, 1, 1, 3);
        }
        ++line;
    }
    m_statement->setText(tr("Assembled and checked as recorded."));
    m_statement->setAccessibleName(tr("Statement of the sign-off"));
    m_statement->setMinimumHeight(36);
    m_sign->setMinimumHeight(36);
    m_signed->setWordWrap(true);
    m_signed->setFont(large);
    grid->addWidget(m_statement, line, 0, 1, 3);
    grid->addWidget(m_sign, line, 3);
    grid->addWidget(m_signed, line + 1, 0, 1, 3);
    grid->addWidget(m_build, line + 1, 3);
    connect(m_sign, &QPushButton::clicked, this, &ClosingSteps::signOff);
    connect(m_statement, &QLineEdit::returnPressed, this, &ClosingSteps::signOff);
    connect(m_build, &QPushButton::clicked, this, &ClosingSteps::beginBuild);
}

void ClosingSteps::refreshRow(ClosingStep step, const Row& row) {
    const Facts& facts = m_session.facts();
    const Assessment& assessment = m_session.assessment();
    const Look look = screenLook();
    const auto done = facts.closing.find(step);
    const bool isDone = done != facts.closing.end();
    const bool isOpen = assessment.gate(GateKind::closing).isOpen && !facts.isClosed();
    const bool isNext = isOpen && assessment.nextClosingStep == step;
    row.sign->setText(sign(isDone ? CheckState::good : CheckState::notDone));
    ink(row.sign, look.of(isDone ? CheckState::good : CheckState::notDone));
    QString text = QStringLiteral("%1  %2").arg(static_cast<int>(step) + 1).arg(capitalised(qtShown(step)));
    if (isDone) {
        text +=
            QStringLiteral("\n     ") + qtText(done->second.person) + QStringLiteral(", ") + when(done->second.time);
    }
    row.text->setText(text);
    ink(row.text, isDone || isNext ? look.ink : look.quiet);
    row.button->setVisible(!isDone);
    row.button->setEnabled(isNext);
    if (step == ClosingStep::beadLaid) {
        m_minutes->setVisible(!isDone);
        m_minutes->setEnabled(isNext);
        if (isDone && !facts.closing.contains(ClosingStep::nutsTightened)) {
            m_openTime->run(done->second.time, done->second.what.openMinutes);
        } else {
            m_openTime->stop();
        }
    }
}

void ClosingSteps::refresh() {
    for (const auto& [step, row] : m_rows) {
        refreshRow(step, row);
    }
    const Facts& facts = m_session.facts();
    const bool isReady = m_session.assessment().isReadyToSign;
    m_statement->setVisible(!facts.isClosed());
    m_sign->setVisible(!facts.isClosed());
    m_statement->setEnabled(isReady);
    m_sign->setEnabled(isReady);
    m_signed->setVisible(facts.isClosed());
    m_build->setVisible(facts.isClosed());
    if (facts.isClosed()) {
        m_signed->setText(tr("Build %1 signed off by %2, %3: “%4”")
                              .arg(facts.build)
                              .arg(qtText(facts.signedOff->person), when(facts.signedOff->time),
                                   qtText(facts.signedOff->what.statement)));
        m_build->setText(tr("Begin &build %1…").arg(facts.build + 1));
    }
}

void ClosingSteps::focusNext() {
    const auto next = m_session.assessment().nextClosingStep;
    if (m_build->isVisibleTo(this)) {
        m_build->setFocus();
    } else if (next && *next == ClosingStep::beadLaid) {
        m_minutes->setFocus();
        m_minutes->selectAll();
    } else if (next) {
        m_rows.at(*next).button->setFocus();
    } else {
        m_statement->setFocus();
    }
}

void ClosingSteps::tick(ClosingStep step) {
    ClosingStepDone done{step, {}, {}};
    if (step == ClosingStep::beadLaid && m_minutes->value() > 0) {
        done.openMinutes = m_minutes->value();
    }
    if (m_session.append(std::move(done))) {
        focusNext();
    }
}

void ClosingSteps::signOff() {
    m_session.appendAndSay(SignedOff{coreText(m_statement->text())});
}

void ClosingSteps::beginBuild() {
    const auto why = askText(this, tr("New build"),
                             tr("Why is this engine built anew? What was recorded of this build stays readable."));
    if (why) {
        m_session.appendAndSay(BuildBegun{m_session.facts().build + 1, coreText(*why)});
    }
}

} // namespace caprail
