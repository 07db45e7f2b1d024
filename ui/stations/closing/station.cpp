// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/closing/station.h>

#include <QHBoxLayout>
#include <QPushButton>
#include <QTabWidget>
#include <algorithm>
#include <assessment/unconfirmed.h>
#include <session/look.h>
#include <stations/common/checks_view.h>
#include <stations/closing/findings.h>
#include <stations/closing/photos.h>
#include <stations/closing/steps.h>
#include <stations/closing/task.h>
#include <stations/closing/task_words.h>
#include <stations/common/entry_field.h>
#include <stations/common/station_text.h>
#include <stations/common/tab_order.h>
#include <stations/common/view_switches.h>
#include <text/label.h>

namespace caprail {

ClosingStation::ClosingStation(RecordSession& given, QWidget* parent)
    : StationPanel(given, parent), m_gate(new Label(this)), m_steps(new ClosingSteps(given, this)),
      m_unconfirmed(new Label(this)), m_values(new QPushButton(tr("Say whose they are…"), this)),
      m_holding(new ChecksView(given, this)), m_task(new ClosingTaskPage(given, this)), m_tabs(new QTabWidget(this)),
      m_findings(new ClosingFindings(given, this)), m_photos(new ClosingPhotos(given, this)) {
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.4);
    large.setBold(true);
    m_gate->setFont(large);
    m_gate->setWordWrap(true);
    m_holding->setObjectName(QStringLiteral("holding"));
    m_holding->setAccessibleName(tr("What holds the closing gate"));
    m_holding->setFilter([this](const Check& check) {
        const Assessment& assessment = session().assessment();
        const Gate& gate = assessment.gate(GateKind::closing);
        return std::ranges::any_of(gate.holding,
                                   [&](std::size_t i) { return assessment.checks[i].code == check.code; });
    });
    m_unconfirmed->setObjectName(QStringLiteral("unconfirmed"));
    m_unconfirmed->setWordWrap(true);
    m_values->setAutoDefault(false);
    connect(m_values, &QPushButton::clicked, this, [this] { session().goTo({Station::engine, "values"}); });
    m_tabs->setDocumentMode(true);
    auto* work = new QWidget(this);
    auto* workColumn = new QVBoxLayout(work);
    workColumn->addWidget(m_holding);
    workColumn->addWidget(m_task);
    m_tabs->addTab(work, tr("Work"));
    m_tabs->addTab(m_findings, {});
    m_tabs->addTab(m_photos, {});
    giveDigits(*m_tabs);

    auto* left = new QVBoxLayout;
    left->addWidget(m_gate);
    left->addWidget(m_steps);
    left->addWidget(m_unconfirmed);
    left->addWidget(m_values, 0, Qt::AlignLeft);
    left->addStretch(1);
    left->addWidget(new CautionLabel(ClosingStation::cautions(), this));
    auto* page = new QHBoxLayout(this);
    page->addLayout(left, 3);
    page->addWidget(m_tabs, 7);
    setFocusProxy(m_task);
    putProxyFirst(*this);
    refresh();
}

void ClosingStation::refresh() {
    const Facts& facts = session().facts();
    const Assessment& assessment = session().assessment();
    const Gate& gate = assessment.gate(GateKind::closing);
    QString text;
    CheckState state = CheckState::good;
    if (facts.isClosed()) {
        text = tr("Build %1 is closed").arg(facts.build);
    } else if (gate.isOpen) {
        text = assessment.isReadyToSign ? tr("Everything is closed up: sign off") : tr("Closing is open");
    } else if (gate.holding.empty()) { // not open, and nothing to be done at a place
        text = tr("Locked: the engine layout is not set yet");
        state = CheckState::notDone;
    } else {
        text = tr("Locked: %1 of %2 checks hold it").arg(gate.holding.size()).arg(gate.needs.size());
        state = CheckState::out;
    }
    m_gate->setText((state == CheckState::good ? sign(state) : QStringLiteral("▣")) + QStringLiteral("  ") + text);
    QPalette palette = m_gate->palette();
    palette.setColor(QPalette::WindowText, screenLook().of(state));
    m_gate->setPalette(palette);
    m_steps->refresh();
    showUnconfirmed();
    m_holding->refresh();
    const bool isHeld = !gate.isOpen && !facts.isClosed();
    m_task->refresh();
    const bool isAsked = m_task->task().kind != ClosingTask::Kind::locked;
    m_holding->setVisible(isHeld && !isAsked);
    m_task->setVisible(isAsked);
    m_findings->refresh();
    m_photos->refresh();
    nameTab(*m_tabs, 1, tr("Findings (%1 open) and notes").arg(assessment.openFindings.size()));
    nameTab(*m_tabs, 2, tr("Photos (%1)").arg(facts.attachments.size()));
    emit subjectChanged();
}

/// A remark and no gate: whose figure a value is holds nobody up, and goes to the customer as it is.
void ClosingStation::showUnconfirmed() {
    constexpr int most = 4;
    const auto values = valuesOf(session().facts(), session().units());
    QStringList lines{qtText(unconfirmedSentence(values))};
    for (const ValueStanding& value : values) {
        if (!value.isConfirmed && lines.size() <= most) {
            lines << QStringLiteral("•  ") + qtText(value.title) + QStringLiteral(": ") + qtText(value.figure);
        }
    }
    const int more = static_cast<int>(countUnconfirmed(values)) - most;
    if (more > 0) {
        lines << tr("… and %n more.", "", more);
    }
    m_unconfirmed->setText(lines.join(QLatin1Char('\n')));
    m_unconfirmed->setVisible(!lines.front().isEmpty() && !session().facts().isClosed());
    m_values->setVisible(m_unconfirmed->isVisibleTo(this) && !session().isReadOnly());
}

QString ClosingStation::subject() const {
    return taskPlace(m_task->task());
}

EntryField* ClosingStation::entryField() const {
    return m_tabs->currentIndex() == 0 && m_task->field()->isEnabled() ? m_task->field() : nullptr;
}

QWidget* ClosingStation::benchPicture() const {
    return m_task->picture();
}

void ClosingStation::select(const QString& subject) {
    if (subject == QLatin1String("findings") || session().facts().findings.contains(coreText(subject))) {
        m_tabs->setCurrentWidget(m_findings);
        m_findings->selectFinding(subject == QLatin1String("findings") ? QString() : subject);
    } else if (subject == QLatin1String("photos")) {
        m_tabs->setCurrentWidget(m_photos);
        m_photos->setFocus();
    } else {
        m_tabs->setCurrentIndex(0);
        for (const OwnPlace& place : ownPlaces(session().facts(), OwnCheckHolds::closing)) {
            if (subject == QStringLiteral("own-%1:%2").arg(qtText(place.check)).arg(place.place)) {
                m_task->askOwnCheck(place);
                refresh();
                break;
            }
        }
        (m_task->field()->isEnabled() ? static_cast<QWidget*>(m_task->field()) : m_holding)->setFocus();
    }
}

QString ClosingStation::help() const {
    return tr("The steps that hide everything else. They unlock when no check is out, open or stale, and "
              "a verify round newer than the last trial fit found every fastener held. Each step is "
              "entered by a person, by name, with its own evidence.");
}

std::vector<Caution> ClosingStation::cautions() const {
    return {Caution::sealant, Caution::counted, Caution::wrench};
}

} // namespace caprail
