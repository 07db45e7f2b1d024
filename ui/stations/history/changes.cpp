// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/history/changes.h>

#include <QDateTime>
#include <QVBoxLayout>
#include <stations/common/station_text.h>
#include <work/sittings.h>

namespace caprail {

/// A change, with what is said of it.
struct ChangeRow {
    Deviation what;
    QString sentence;
};

namespace {

QString whenText(UtcTime time) {
    return QDateTime::fromMSecsSinceEpoch(time.milliseconds).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
}

Table<ChangeRow, std::int64_t>::Columns changeColumns() {
    return {{.title = HistoryChanges::tr("Entry"),
             .text = [](const ChangeRow& one) { return QString::number(one.what.entry); },
             .value = [](const ChangeRow& one) { return valueOf(one.what.entry); },
             .isFigure = true},
            {.title = HistoryChanges::tr("When"),
             .text = [](const ChangeRow& one) { return whenText(one.what.time); },
             .value = [](const ChangeRow& one) { return valueOf(one.what.time.milliseconds); }},
            {.title = HistoryChanges::tr("By"), .text = [](const ChangeRow& one) { return qtText(one.what.person); }},
            {.title = HistoryChanges::tr("Sort"),
             .text = [](const ChangeRow& one) { return qtShown(sortOf(one.what.what)); }},
            {.title = HistoryChanges::tr("What was changed, and why"),
             .text = [](const ChangeRow& one) { return one.sentence; }}};
}

} // namespace

HistoryChanges::HistoryChanges(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_line(new Label(this)),
      m_table(new Table<ChangeRow, std::int64_t>(
          tr("Changes"), [](const ChangeRow& one) { return one.what.entry; }, changeColumns(), this)),
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
        if (const ChangeRow* one = m_table->selected()) {
            emit entryChosen(one->what.entry);
        }
    });
}

void HistoryChanges::refresh() {
    const auto deviations = deviationsOf(m_session.ledger(), m_session.facts(), m_session.units());
    m_line->setText(qtText(deviationsLine(deviations)));
    std::vector<ChangeRow> rows;
    for (const Deviation& one : deviations) {
        rows.push_back({one, qtText(sentenceOf(one, m_session.assessment(), m_session.units()))});
    }
    m_table->put(std::move(rows));
    const auto sittings = sittingsOf(m_session.ledger(), m_session.facts().buildEntry);
    m_work->setText(sittings.empty()
                        ? QString()
                        : tr("Work on this build: %1, from %2 to %3.")
                              .arg(qtText(describeWork(sittings, m_session.units().decimalMark)),
                                   whenText(sittings.front().first), whenText(sittings.back().last)));
}

} // namespace caprail
