// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/history/ledger.h>

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <base/csv.h>
#include <ledger/history_line.h>
#include <stations/common/entries_model.h>
#include <stations/common/entries_table.h>
#include <stations/history/files.h>
#include <stations/common/station_text.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <base/say.h>

namespace caprail {

namespace {

enum State { all, live, struckOnly };

/// Fills a box anew and keeps its choice; the first item stands for "any".
void refill(QComboBox* box, const QString& any, const std::vector<std::pair<QString, QString>>& items) {
    const QString chosen = box->currentData().toString();
    if (box->count() == static_cast<int>(items.size()) + 1) {
        return;
    }
    box->clear();
    box->addItem(any, QString());
    for (const auto& [name, data] : items) {
        box->addItem(name, data);
    }
    box->setCurrentIndex(std::max(0, box->findData(chosen)));
}

} // namespace

HistoryLedger::HistoryLedger(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_search(new QLineEdit(this)), m_kind(new QComboBox(this)),
      m_person(new QComboBox(this)), m_state(new QComboBox(this)), m_count(new Label(this)),
      m_table(new EntriesTable(session, this)) {
    m_table->setObjectName(QStringLiteral("entries"));
    m_search->setObjectName(QStringLiteral("search"));
    m_kind->setObjectName(QStringLiteral("kinds"));
    m_state->setObjectName(QStringLiteral("states"));
    m_search->setPlaceholderText(tr("Find in the record: 3R, S014, 57.5, a name …"));
    m_search->setClearButtonEnabled(true);
    m_search->setAccessibleName(tr("Find in the record"));
    nameBox(*m_kind, tr("Kind of entry"));
    nameBox(*m_person, tr("Person"));
    nameBox(*m_state, tr("Struck or not"));
    m_state->addItem(tr("all entries"), all);
    m_state->addItem(tr("not struck"), live);
    m_state->addItem(tr("struck only"), struckOnly);
    m_table->setEmptyText(tr("No entry is like this: change what is looked for above."));
    m_table->setSortingEnabled(false);
    m_table->setFilter([this](const Entry& entry) { return isShown(entry); });

    auto* strike = new QPushButton(tr("Stri&ke…"), this);
    auto* csv = new QPushButton(tr("E&xport…"), this);
    setTip(strike, tr("Withdraw the selected entries, with one reason (Delete)"));
    setTip(csv, tr("What is shown, as a table for a spreadsheet"));
    auto* bar = new QHBoxLayout;
    bar->addWidget(m_search, 1);
    bar->addWidget(m_kind);
    bar->addWidget(m_person);
    bar->addWidget(m_state);
    bar->addWidget(m_count);
    bar->addWidget(strike);
    bar->addWidget(csv);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 8, 6);
    column->addLayout(bar);
    column->addWidget(m_table, 1);

    connect(m_search, &QLineEdit::textChanged, this, &HistoryLedger::filterAnew);
    connect(qobject_cast<EntriesModel*>(m_table->model()), &EntriesModel::lookedOn, this, &HistoryLedger::showCount);
    connect(m_search, &QLineEdit::returnPressed, m_table, qOverload<>(&QWidget::setFocus));
    for (QComboBox* box : {m_kind, m_person, m_state}) {
        connect(box, &QComboBox::activated, this, &HistoryLedger::filterAnew);
    }
    connect(strike, &QPushButton::clicked, this, [this] {
        EntriesTable::askAndStrike(m_session, m_table->selectedEntries(), this);
    });
    connect(csv, &QPushButton::clicked, this, &HistoryLedger::exportCsv);
}

void HistoryLedger::refresh() {
    refreshChoices();
    filterAnew();
}

void HistoryLedger::refreshChoices() {
    const auto& entries = m_session.ledger().entries();
    if (m_choicesOf > m_session.ledger().size()) { // another record took its place
        m_choicesOf = 0;
        m_kinds.clear();
        m_people.clear();
    }
    const std::string* before = nullptr;
    for (; m_choicesOf < m_session.ledger().size(); ++m_choicesOf) {
        const Entry& entry = entries[static_cast<std::size_t>(m_choicesOf)];
        m_kinds.insert(entry.body.index());
        if (before == nullptr || *before != entry.person) {
            m_people.insert(entry.person);
        }
        before = &entry.person;
    }
    std::vector<std::pair<QString, QString>> kindItems, personItems;
    for (const std::size_t kind : m_kinds) {
        kindItems.emplace_back(qtText(Core::say(allKinds()[kind].title)), QString::number(kind));
    }
    for (const auto& person : m_people) {
        personItems.emplace_back(qtText(person), qtText(person));
    }
    refill(m_kind, tr("every kind"), kindItems);
    refill(m_person, tr("everybody"), personItems);
}

void HistoryLedger::filterAnew() {
    m_wanted = m_search->text().trimmed().toLower();
    const QString kind = m_kind->currentData().toString();
    m_wantedKind = kind.isEmpty() ? std::nullopt : std::optional<std::size_t>(kind.toULongLong());
    m_wantedPerson = m_person->currentData().toString().toStdString();
    m_wantedState = m_state->currentData().toInt();
    m_table->refresh();
    showCount();
}

void HistoryLedger::showCount() {
    const auto* model = qobject_cast<EntriesModel*>(m_table->model());
    const QString text = model->isWhole() ? tr("%1 of %2") : tr("%1 so far, of %2 …");
    m_count->setText(text.arg(model->rowCount()).arg(m_session.ledger().size()));
}

const QString& HistoryLedger::lineOf(const Entry& entry) const {
    if (m_linesIn != m_session.units()) {
        m_lines.clear();
        m_linesIn = m_session.units();
    }
    const auto at = static_cast<std::size_t>(entry.sequence - 1);
    if (m_lines.size() <= at) {
        m_lines.resize(static_cast<std::size_t>(m_session.ledger().size()));
    }
    if (m_lines[at].isEmpty()) {
        m_lines[at] =
            (qtText(historyLine(entry.body, m_session.units())) + QLatin1Char(' ') + qtText(entry.person)).toLower();
    }
    return m_lines[at];
}

bool HistoryLedger::isShown(const Entry& entry) const {
    if ((m_wantedKind && *m_wantedKind != entry.body.index()) ||
        (!m_wantedPerson.empty() && m_wantedPerson != entry.person)) {
        return false;
    }
    if (m_wantedState != all && m_session.ledger().isStruck(entry.sequence) != (m_wantedState == struckOnly)) {
        return false;
    }
    return m_wanted.isEmpty() || QString::number(entry.sequence) == m_wanted || lineOf(entry).contains(m_wanted);
}

void HistoryLedger::showEntry(qint64 sequence) {
    if (sequence < 1 || sequence > m_session.ledger().size()) {
        return;
    }
    if (!isShown(m_session.ledger().at(sequence))) {
        m_search->clear();
        m_kind->setCurrentIndex(0);
        m_person->setCurrentIndex(0);
        m_state->setCurrentIndex(0);
        filterAnew();
    }
    m_table->selectEntry(sequence);
    m_table->setFocus();
}

void HistoryLedger::focusSearch() {
    m_search->setFocus();
    m_search->selectAll();
}

QByteArray HistoryLedger::csv() const {
    CsvWriter csv({"entry", "time_utc", "person", "kind", "what", "struck_by"});
    const Ledger& ledger = m_session.ledger();
    for (const Entry& entry : ledger.entries()) {
        if (isShown(entry)) {
            const std::int64_t by = ledger.struckBy(entry.sequence);
            csv.number(entry.sequence).plain(format(entry.time)).text(entry.person).plain(kindOf(entry.body).kind);
            csv.text(historyLine(entry.body, m_session.units()));
            csv.number(by == 0 ? std::nullopt : std::optional(by)).endLine();
        }
    }
    return QByteArray::fromStdString(csv.written());
}

void HistoryLedger::exportCsv() {
    saveAsTable(this, tr("entries.csv"), csv());
}

} // namespace caprail
