// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/history/changes.h>

#include <QDateTime>
#include <QVBoxLayout>
#include <stations/common/station_text.h>
#include <work/sittings.h>

namespace caprail {

namespace {

QString whenText(UtcTime time) {
    return QDateTime::fromMSecsSinceEpoch(time.milliseconds).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
}

Table<Deviation, std::int64_t>::Columns changeColumns(const RecordSession& session) {
    return {{.title = HistoryChanges::tr("Entry"),
             .text = [](const Deviation& one) { return QString::number(one.entry); },
             .value = [](const Deviation& one) { return valueOf(one.entry); },
             .isFigure = true},
            {.title = HistoryChanges::tr("When"),
             .text = [](const Deviation& one) { return whenText(one.time); },
             .value = [](const Deviation& one) { return valueOf(one.time.milliseconds); }},
            {.title = HistoryChanges::tr("By"), .text = [](const Deviation& one) { return qtText(one.person); }},
            {.title = HistoryChanges::tr("Sort"), .text = [](const Deviation& one) { return qtShown(sortOf(one.what)); }},
            {.title = HistoryChanges::tr("What was changed, and why"), .text = [&session](const Deviation& one) {
                 return qtText(sentenceOf(one, session.assessment(), session.units()));
             }}};
}

} // namespace

HistoryChanges::HistoryChanges(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_line(new Label(this)),
      m_table(new Table<Deviation, std::int64_t>(tr("Changes"), &Deviation::entry, changeColumns(session), this)),
      m_work(new Label(this)) {
    m_line->setObjectName(QStringLiteral("changesLine"));
    m_line->setWordWrap(true);
    m_work->setObjectName(QStringLiteral("work"));
    m_work->setForegroundRole(QPalette::PlaceholderText);
    m_table->setObjectName(QStringLiteral("changes"));
    m_table->setEmptyText(tr("Nothing was changed after something had been judged by it."));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 8, 6);
    column->addWidget(m_line);
    column->addWidget(m_table, 1);
    column->addWidget(m_work);
    connect(m_table, &TableView::lineActivated, this, [this] {
        if (const Deviation* one = m_table->selected()) {
            emit entryChosen(one->entry);
        }
    });
}

void HistoryChanges::refresh() {
    const auto deviations = deviationsOf(m_session.ledger(), m_session.facts(), m_session.units());
    m_line->setText(qtText(deviationsLine(deviations)));
    m_table->put(deviations);
    const auto sittings = sittingsOf(m_session.ledger(), m_session.facts().buildEntry);
    m_work->setText(sittings.empty()
                        ? QString()
                        : tr("Work on this build: %1, from %2 to %3.")
                              .arg(qtText(describeWork(sittings, m_session.units().decimalMark)),
                                   whenText(sittings.front().first), whenText(sittings.back().last)));
}

} // namespace caprail
