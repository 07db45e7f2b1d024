// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/history_station.h>

#include <QTabWidget>
#include <QVBoxLayout>
#include <stations/history_ledger.h>
#include <stations/history_repeatability.h>
#include <stations/history_verify.h>

namespace caprail {

HistoryStation::HistoryStation(RecordSession& given, QWidget* parent)
    : StationPanel(given, parent), m_tabs(new QTabWidget(this)), m_ledger(new HistoryLedger(given, this)),
      m_verify(new HistoryVerify(given, this)), m_repeatability(new HistoryRepeatability(given, this)) {
    m_tabs->setDocumentMode(true);
    m_tabs->setFocusPolicy(Qt::NoFocus); // its bar takes the keyboard
    m_tabs->setAccessibleName(tr("History"));
    m_tabs->addTab(m_ledger, tr("Ledger"));
    m_tabs->addTab(m_verify, tr("Verify rounds"));
    m_tabs->addTab(m_repeatability, tr("Repeatability"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_tabs);
    connect(m_verify, &HistoryVerify::entryChosen, this, [this](qint64 entry) {
        m_tabs->setCurrentWidget(m_ledger);
        m_ledger->showEntry(entry);
    });
    connect(m_tabs, &QTabWidget::currentChanged, this, &HistoryStation::refresh);
    refresh();
}

void HistoryStation::refresh() {
    if (m_tabs->currentWidget() == m_ledger) {
        m_ledger->refresh();
    } else if (m_tabs->currentWidget() == m_verify) {
        m_verify->refresh();
    } else {
        m_repeatability->refresh();
    }
}

void HistoryStation::select(const QString& subject) {
    if (subject == QLatin1String("find")) {
        m_tabs->setCurrentWidget(m_ledger);
        m_ledger->focusSearch();
    } else if (subject == QLatin1String("rounds")) {
        m_tabs->setCurrentWidget(m_verify);
        m_verify->focusMatrix();
    } else if (subject == QLatin1String("repeatability")) {
        m_tabs->setCurrentWidget(m_repeatability);
    } else if (const qint64 entry = subject.toLongLong(); entry > 0) {
        m_tabs->setCurrentWidget(m_ledger);
        m_ledger->showEntry(entry);
    }
}

} // namespace caprail
