// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/closing/steps.h>

#include <QDateTime>
#include <QGridLayout>
#include <QLocale>
#include <QPushButton>
#include <assessment/signatures.h>
#include <session/look.h>
#include <stations/common/station_text.h>
#include <text/ask.h>
#include <text/label.h>
#include <utility>

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
    : QWidget(parent), m_session(session), m_signed(new Label(this)), m_build(new QPushButton(this)) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setColumnStretch(1, 1);
    int line = 0;
    for (const auto& entry : allWords<ClosingStep>()) {
        const Row row{new Label(this), new Label(this)};
        row.text->setWordWrap(true);
        row.text->setSubject(capitalised(qtShown(entry.value)));
        grid->addWidget(row.sign, line, 0, Qt::AlignTop);
        grid->addWidget(row.text, line++, 1);
        m_rows.emplace(entry.value, row);
    }
    m_signed->setWordWrap(true);
    m_build->setAutoDefault(false);
    grid->addWidget(m_signed, line, 0, 1, 2);
    grid->addWidget(m_build, line + 1, 0, 1, 2, Qt::AlignLeft);
    connect(m_build, &QPushButton::clicked, this, &ClosingSteps::beginBuild);
    refresh();
}

void ClosingSteps::refreshRow(ClosingStep step, const Row& row) {
    const Facts& facts = m_session.facts();
    const Standing& standing = m_session.assessment().closing.at(step);
    const Look look = screenLook();
    const auto done = facts.closing.find(step);
    const bool isNext = m_session.assessment().gate(GateKind::closing).isOpen && !facts.isClosed() &&
                        m_session.assessment().nextClosingStep == step;
    row.sign->setText(isNext ? QStringLiteral("▶") : sign(standing.state));
    ink(row.sign, isNext ? look.accent : look.of(standing.state));
    QString text = QStringLiteral("%1  %2").arg(static_cast<int>(step) + 1).arg(capitalised(qtShown(step)));
    if (!standing.sentence.empty()) {
        text += QStringLiteral("\n     ") + qtText(standing.sentence) + QStringLiteral(" ") + qtText(standing.remedy);
    } else if (done != facts.closing.end()) {
        text += QStringLiteral("\n     ") + qtText(done->second.person) + QStringLiteral(", ") + when(done->second.time);
    }
    row.text->setText(text);
    QFont font = this->font();
    font.setBold(isNext);
    row.text->setFont(font);
    const bool isWrong = standing.state != CheckState::good && standing.state != CheckState::notDone;
    ink(row.text, isWrong ? look.of(standing.state) : standing.state == CheckState::good || isNext ? look.ink : look.quiet);
}

void ClosingSteps::refresh() {
    for (const auto& [step, row] : m_rows) {
        refreshRow(step, row);
    }
    const Facts& facts = m_session.facts();
    m_signed->setVisible(facts.isClosed());
    m_build->setVisible(facts.isClosed());
    if (facts.isClosed()) {
        QString words = tr("Build %1 signed off by %2, %3: “%4”")
                            .arg(facts.build)
                            .arg(qtText(facts.signedOff->person), when(facts.signedOff->time),
                                 qtText(facts.signedOff->what.statement));
        // A ledger of this seal has these signatures: they are verified once for it, not at each refresh.
        if (std::exchange(m_verifiedAt, m_session.ledger().seal()) != m_session.ledger().seal()) {
            const auto signatures = signaturesOf(m_session.ledger());
            m_signature = signatures.empty() ? QString()
                                             : sign(stateOf(signatures.back())) + QLatin1Char(' ') +
                                                   qtText(sentenceOf(signatures.back()));
        }
        words += m_signature.isEmpty() ? QString() : QStringLiteral("\n\n") + m_signature;
        m_signed->setText(words);
        m_build->setText(tr("Begin &build %1…").arg(facts.build + 1));
    }
}

void ClosingSteps::beginBuild() {
    const auto why = askText(this, tr("New build"),
                             tr("Why is this engine built again? What was recorded of this build stays readable."));
    if (why) {
        m_session.appendAndSay(BuildBegun{m_session.facts().build + 1, coreText(*why)});
    }
}

} // namespace caprail
