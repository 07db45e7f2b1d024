// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/next_bar.h>

#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QStackedLayout>
#include <QVBoxLayout>
#include <session/look.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

constexpr int reasonsShown = 20;

QPushButton* gateButton(QWidget* parent) {
    auto* button = new QPushButton(parent); // unlike a tool button it leaves room for the arrow
    button->setMenu(new QMenu(button));
    button->setAutoDefault(false);
    return button;
}

} // namespace

NextBar::NextBar(RecordSession& session, QWidget* parent)
    : QFrame(parent), m_session(session), m_engine(new Label(this)), m_next(new Label(this)),
      m_go(new QPushButton(tr("&Go there"), this)), m_trialFit(gateButton(this)), m_closing(gateButton(this)),
      m_refusal(new Label(this)) {
    QFont bold = font();
    bold.setBold(true);
    bold.setPointSizeF(bold.pointSizeF() * 1.1);
    m_next->setFont(bold);
    m_next->setWordWrap(true);
    m_next->setMinimumWidth(1);
    m_engine->setMinimumWidth(1); // a long name does not make the window wide
    m_refusal->setWordWrap(true);
    auto* usual = new QWidget(this);
    auto* words = new QVBoxLayout(usual);
    words->setContentsMargins(0, 0, 0, 0);
    words->setSpacing(1);
    words->addWidget(m_engine);
    words->addWidget(m_next);
    m_refusal->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_refusal->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored); // it has the room that is there
    m_words = new QStackedLayout;
    m_words->addWidget(usual);
    m_words->addWidget(m_refusal);
    auto* row = new QHBoxLayout;
    row->addLayout(m_words, 1);
    row->addWidget(m_go);
    row->addWidget(m_trialFit);
    row->addWidget(m_closing);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 6, 12, 6);
    column->addLayout(row);

    connect(m_go, &QPushButton::clicked, this,
            [this] { m_session.goTo(Destination(m_session.assessment().next.destination)); });
    refresh();
}

void NextBar::refresh() {
    const auto& engine = m_session.facts().engine;
    QString head = engine ? QString::fromStdString(engine->what.engine + " · " + engine->what.customer)
                          : tr("An engine without a name");
    if (m_session.facts().build > 1) {
        head += QStringLiteral(" · ") + tr("build %1").arg(m_session.facts().build);
    }
    if (m_session.isReadOnly()) {
        head += QStringLiteral("  —  ") + tr("read only: %1").arg(m_session.readOnlyReason());
    }
    m_engine->setText(head);
    m_engine->setToolTip(wrappedTip(head));
    m_engine->setAccessibleDescription(tr("The engine of this record")); // not the tip, which has a form of its own
    m_next->setText(tr("Next: %1").arg(QString::fromStdString(m_session.assessment().next.sentence)));
    refreshGate(m_trialFit, GateKind::trialFit);
    refreshGate(m_closing, GateKind::closing);
}

void NextBar::refreshGate(QPushButton* button, GateKind kind) {
    const Assessment& assessment = m_session.assessment();
    const Gate& gate = assessment.gate(kind);
    const std::string kindWord = shown(kind);
    const QString name = QString::fromUtf8(kindWord.data(), static_cast<qsizetype>(kindWord.size()));
    button->setText(gate.isOpen ? tr("%1: open").arg(name)
                    : gate.holding.empty()
                        ? tr("%1: locked").arg(name)
                        : tr("%1: locked, held by %n", "", static_cast<int>(gate.holding.size())).arg(name));
    QMenu* menu = button->menu();
    menu->clear();
    if (gate.isOpen) {
        menu->addAction(tr("Nothing holds it."))->setEnabled(false);
    }
    if (!gate.isOpen && gate.holding.empty()) {
        menu->addAction(tr("The engine layout is not set yet."))->setEnabled(false);
    }
    int listed = 0;
    for (const std::size_t i : gate.holding) {
        if (++listed > reasonsShown) {
            menu->addAction(tr("… and %1 more, at the closing station")
                                .arg(gate.holding.size() - static_cast<std::size_t>(reasonsShown)))
                ->setEnabled(false);
            break;
        }
        const Check& check = assessment.checks[i];
        const Destination destination = check.destination;
        QAction* action = menu->addAction(QString(), this, [this, destination] { m_session.goTo(destination); });
        setName(action, sign(check.state) + QStringLiteral("  ") + QString::fromStdString(check.title) +
                            QStringLiteral(" — ") + stateWord(check.state));
    }
}

void NextBar::showRefusal(const QString& sentence) {
    QPalette palette = m_refusal->palette();
    palette.setColor(QPalette::WindowText, screenLook().out);
    m_refusal->setPalette(palette);
    m_refusal->setText(tr("✕ Not entered. %1").arg(sentence));
    m_refusal->setToolTip(wrappedTip(m_refusal->text()));
    m_words->setCurrentWidget(m_refusal);
}

void NextBar::showHint(const QString& sentence) {
    QPalette palette = m_refusal->palette();
    palette.setColor(QPalette::WindowText, screenLook().ink);
    m_refusal->setPalette(palette);
    m_refusal->setText(sentence);
    m_refusal->setToolTip(wrappedTip(sentence));
    m_words->setCurrentWidget(m_refusal);
}

void NextBar::clearRefusal() {
    m_words->setCurrentIndex(0);
}

} // namespace caprail
