// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/history/station.h>

#include <QSignalBlocker>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>
#include <stations/common/view_switches.h>
#include <stations/history/changes.h>
#include <stations/history/ledger.h>
#include <stations/history/repeatability.h>
#include <stations/history/verify.h>

namespace caprail {

namespace {

constexpr int verifyTab = 1;
constexpr int repeatabilityTab = 2;
constexpr int changesTab = 3;

} // namespace

HistoryStation::HistoryStation(RecordSession& given, QWidget* parent)
    : StationPanel(given, parent), m_tabs(new QTabWidget(this)), m_ledger(new HistoryLedger(given, this)) {
    m_tabs->setObjectName(QStringLiteral("pages"));
    m_tabs->setDocumentMode(true);
    m_tabs->setAccessibleName(tr("History"));
    m_tabs->addTab(m_ledger, tr("Ledger"));
    // Their pages are built when they are first asked for.
    m_tabs->addTab(new QWidget(m_tabs), tr("Verify rounds"));
    m_tabs->addTab(new QWidget(m_tabs), tr("Repeatability"));
    m_tabs->addTab(new QWidget(m_tabs), tr("Changes"));
    giveDigits(*m_tabs);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_tabs);
    connect(m_tabs, &QTabWidget::currentChanged, this, &HistoryStation::refresh);
    refresh();
}

void HistoryStation::fill(int tab, QWidget* page) {
    const QSignalBlocker still(m_tabs); // for whoever listens it is the same tab
    QWidget* empty = m_tabs->widget(tab);
    const bool isCurrent = m_tabs->currentIndex() == tab;
    const QString name = m_tabs->tabBar()->accessibleTabName(tab);
    m_tabs->removeTab(tab);
    m_tabs->insertTab(tab, page, {});
    nameTab(*m_tabs, tab, name);
    if (isCurrent) {
        m_tabs->setCurrentIndex(tab);
    }
    delete empty;
}

HistoryVerify* HistoryStation::verifyPage() {
    if (m_verify == nullptr) {
        m_verify = new HistoryVerify(session(), this);
        connect(m_verify, &HistoryVerify::entryChosen, this, [this](qint64 entry) {
            m_tabs->setCurrentWidget(m_ledger);
            m_ledger->showEntry(entry);
        });
        fill(verifyTab, m_verify);
    }
    return m_verify;
}

HistoryRepeatability* HistoryStation::repeatabilityPage() {
    if (m_repeatability == nullptr) {
        m_repeatability = new HistoryRepeatability(session(), this);
        fill(repeatabilityTab, m_repeatability);
    }
    return m_repeatability;
}

HistoryChanges* HistoryStation::changesPage() {
    if (m_changes == nullptr) {
        m_changes = new HistoryChanges(session(), this);
        connect(m_changes, &HistoryChanges::entryChosen, this, [this](qint64 entry) {
            m_tabs->setCurrentWidget(m_ledger);
            m_ledger->showEntry(entry);
        });
        fill(changesTab, m_changes);
    }
    return m_changes;
}

void HistoryStation::refresh() {
    switch (m_tabs->currentIndex()) {
    case verifyTab:
        verifyPage()->refresh();
        break;
    case repeatabilityTab:
        repeatabilityPage()->refresh();
        break;
    case changesTab:
        changesPage()->refresh();
        break;
    default:
        m_ledger->refresh();
    }
}

void HistoryStation::select(const QString& subject) {
    if (subject == QLatin1String("find")) {
        m_tabs->setCurrentWidget(m_ledger);
        m_ledger->focusSearch();
    } else if (subject == QLatin1String("rounds")) {
        m_tabs->setCurrentWidget(verifyPage());
        m_verify->focusMatrix();
    } else if (subject == QLatin1String("repeatability")) {
        m_tabs->setCurrentWidget(repeatabilityPage());
    } else if (subject == QLatin1String("changes")) {
        m_tabs->setCurrentWidget(changesPage());
    } else if (const qint64 entry = subject.toLongLong(); entry > 0) {
        m_tabs->setCurrentWidget(m_ledger);
        m_ledger->showEntry(entry);
    }
}

QString HistoryStation::help() const {
    return tr("Every entry, in order; nothing is ever erased. Strike a wrong one with Delete and give the "
              "reason. The verify history shows every round, fastener by fastener; Changes shows what was changed after something "
              "had been judged by it, as the sheet tells the customer.");
}

std::vector<Caution> HistoryStation::cautions() const {
    return {};
}

} // namespace caprail
