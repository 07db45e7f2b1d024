// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/trial_fit/station.h>

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <algorithm>
#include <planview/plan_view.h>
#include <session/look.h>
#include <stations/common/checks_view.h>
#include <stations/common/entries_model.h>
#include <stations/common/entries_table.h>
#include <stations/common/entry_field.h>
#include <stations/common/instrument_box.h>
#include <stations/trial_fit/diagram.h>
#include <stations/common/diagram_tools.h>
#include <stations/common/station_text.h>
#include <stations/common/step_keys.h>
#include <stations/common/tab_order.h>
#include <stations/trial_fit/way.h>
#include <stations/trial_fit/words.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

/// A line: what is gone through, how it stands, and its words.
struct TrialRow {
    TrialTask task;
    CheckState state = CheckState::notDone;
    QString text;
};

TrialFitStation::TrialFitStation(RecordSession& given, QWidget* parent)
    : StationPanel(given, parent), m_way(new TrialFitWay(given, this)), m_plan(new PlanView(this)),
      m_rows(new List<TrialRow, TrialTask>(
          tr("What is looked at in the trial fit"), &TrialRow::task,
          {{.text = [](const TrialRow& row) { return row.text; },
            .ink = [](const TrialRow& row,
                      const Look& look) { return row.state == CheckState::notDone ? look.ink : look.of(row.state); }}},
          this)),
      m_gate(new Label(this)), m_entry(new QStackedWidget(this)), m_field(new EntryField(this)),
      m_instrument(new InstrumentBox(given, {InstrumentType::torqueWrench}, this)),
      m_pass(new QPushButton(tr("P&ass"), this)), m_fail(new QPushButton(tr("Fai&l"), this)),
      m_holding(new ChecksView(given, this)), m_entries(new EntriesTable(given, this)) {
    build();
    refresh();
}

void TrialFitStation::build() {
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.2);
    m_rows->setFont(large);
    m_rows->setSpacing(3);
    m_holding->setObjectName(QStringLiteral("holding"));
    connect(m_rows, &ListView::lineSelected, this, [this](int line) {
        if (const TrialRow* row = m_rows->at(line)) {
            choose(TrialTask(row->task));
        }
    });
    m_gate->setFont(large);
    m_gate->setWordWrap(true);
    m_holding->setAccessibleName(tr("What holds the trial fit"));
    m_holding->setFilter([this](const Check& check) {
        const Assessment& assessment = session().assessment();
        return std::ranges::any_of(assessment.gate(GateKind::trialFit).holding,
                                   [&](std::size_t i) { return assessment.checks[i].code == check.code; });
    });
    m_entries->setColumnHidden(EntriesModel::time, true);
    m_entries->setColumnHidden(EntriesModel::person, true);
    m_entries->setFilter([](const Entry& entry) {
        return isAnyOf<TrialFitResult, GirdleWaySet, TurningTorqueRead, OwnCheckAnswered>(entry.body);
    });
    for (const auto& [button, answer] : {std::pair(m_pass, "p"), std::pair(m_fail, "f")}) {
        button->setMinimumHeight(40);
        connect(button, &QPushButton::clicked, this, [this, answer = answer] {
            m_field->type(QString::fromLatin1(answer) + QLatin1Char(' ') + m_field->text());
            m_field->submit();
        });
    }
    connect(m_instrument, &QComboBox::activated, this, [this] { ask(); });
    setTip(m_fail, tr("Type what was seen first; it becomes a finding."));
    m_field->readWith([this] { return m_instrument; });
    new StepKeys(m_field->lineEdit(), [this](int by) { step(by); });

    connect(m_plan, &PlanView::placeSelected, this, &TrialFitStation::chooseOnPlan);
    connect(m_plan, &PlanView::typed, m_field, &EntryField::type);

    auto* answers = new QHBoxLayout;
    answers->addWidget(m_pass);
    answers->addWidget(m_fail);
    auto* open = new QWidget(this);
    auto* openColumn = new QVBoxLayout(open);
    openColumn->setContentsMargins(0, 0, 0, 0);
    openColumn->addWidget(m_field);
    openColumn->addWidget(m_instrument);
    openColumn->addLayout(answers);
    openColumn->addStretch(1);
    m_entry->addWidget(open);
    m_entry->addWidget(m_holding);
    m_entry->setMinimumHeight(210);
    auto* caution = new CautionLabel(TrialFitStation::cautions(), this);

    auto* left = new QVBoxLayout;
    left->addWidget(m_way);
    left->addWidget(new PlanTools(m_plan, this), 0, Qt::AlignRight);
    left->addWidget(m_plan, 3);
    left->addWidget(m_entries, 1);
    auto* right = new QVBoxLayout;
    right->addWidget(m_gate);
    right->addWidget(m_rows, 3); // as high as its rows, where there is room
    right->addWidget(m_entry, 1);
    right->addWidget(caution);
    auto* page = new QHBoxLayout(this);
    page->addLayout(left, 5);
    page->addLayout(right, 4);
    setFocusProxy(m_field);
    putProxyFirst(*this);
}

void TrialFitStation::fillRows() {
    std::vector<TrialRow> rows;
    for (TrialTask& task : trialTasks(session().facts())) {
        const CheckState state = trialTaskState(session().facts(), session().assessment(), task);
        QString text = sign(state) + QStringLiteral("  ") + taskTitle(session().facts(), task);
        if (const QString found = taskFound(session().facts(), task, session().units()); !found.isEmpty()) {
            text += QStringLiteral("  —  ") + found;
        }
        if (state == CheckState::stale || state == CheckState::notProven) {
            text += QStringLiteral("  (%1)").arg(stateWord(state));
        }
        rows.push_back({std::move(task), state, std::move(text)});
    }
    m_rows->put(std::move(rows));
    const int high = m_rows->sizeHintForRow(0) + 2 * m_rows->spacing();
    m_rows->setMaximumHeight(std::max(high, 1) * std::max(m_rows->count(), 1) + 2 * m_rows->frameWidth() + high / 2);
}

void TrialFitStation::refreshGate() {
    const Gate& gate = session().assessment().gate(GateKind::trialFit);
    const bool isClosed = session().facts().isClosed();
    // What is done before the girdle goes on waits for no gate.
    const bool isItem = std::holds_alternative<TrialId>(m_task);
    const bool isAsked = (gate.isOpen || !isItem) && !isClosed;
    m_entry->setCurrentIndex(isAsked || isClosed ? 0 : 1);
    m_field->setEnabled(isAsked);
    for (QPushButton* button : {m_pass, m_fail}) {
        button->setEnabled(isAsked);
        button->setVisible(isItem);
    }
    m_instrument->setVisible(!isItem);
    QString text = tr("Lay the girdle on its stacks, bring its nuts to torque, and answer each line: p passes, f fails, or type "
                      "the clearance.");
    if (isClosed) {
        text = tr("This build is signed off.");
    } else if (!gate.isOpen) {
        text = gate.needs.empty() ? tr("▣  Locked: the engine layout is not set yet.")
                                  : tr("▣  Locked: %1 of %2 checks hold it. Choose one to go there.")
                                        .arg(gate.holding.size())
                                        .arg(gate.needs.size());
    }
    m_gate->setText(text);
    QPalette palette = m_gate->palette();
    palette.setColor(QPalette::WindowText, gate.isOpen || isClosed ? screenLook().ink : screenLook().out);
    m_gate->setPalette(palette);
}

void TrialFitStation::refresh() {
    m_way->refresh();
    m_instrument->refresh();
    fillRows();
    m_holding->refresh();
    m_entries->refresh();
    choose(m_task);
}

void TrialFitStation::choose(const TrialTask& task) {
    m_task = task;
    {
        const QSignalBlocker quiet(m_rows);
        m_rows->select(m_task);
    }
    refreshGate();
    refreshPlan();
    ask();
    emit subjectChanged();
}

QString TrialFitStation::subject() const {
    if (std::holds_alternative<GirdleNuts>(m_task)) {
        const auto next = nutsAtTorque(session().facts()).next;
        return next ? qtText(code(*next)) : QString();
    }
    const auto* place = std::get_if<TrialId>(&m_task);
    return place == nullptr       ? QString()
           : place->second > 0 ? QStringLiteral("throw-%1").arg(place->second)
                                  : qtWord(place->first);
}

void TrialFitStation::refreshPlan() {
    if (!session().facts().layout) {
        m_plan->setEmpty(tr("Set the engine layout at the engine station: the throws are drawn from it."));
        return;
    }
    m_plan->setContent(trialFitContent(session(), m_task));
}

void TrialFitStation::chooseOnPlan(const QString& place) {
    std::vector<TrialTask> here = trialTasks(session().facts());
    std::erase_if(here, [&](const TrialTask& task) {
        const auto* item = std::get_if<TrialId>(&task);
        return item == nullptr || !((item->second != 0 && place == QStringLiteral("throw-%1").arg(item->second)) ||
                                    (item->first == TrialItem::pickupTube && place == QLatin1String("pickup")) ||
                                    (item->first == TrialItem::dipstick && place == QLatin1String("dipstick")));
    });
    const auto open = std::ranges::find_if(here, [&](const TrialTask& task) {
        return trialTaskState(session().facts(), session().assessment(), task) != CheckState::good;
    });
    if (!here.empty()) {
        choose(open == here.end() ? here.front() : *open);
    }
}

void TrialFitStation::step(int by) {
    m_rows->selectLine(std::clamp(m_rows->selectedLine() + by, 0, m_rows->count() - 1));
}

void TrialFitStation::select(const QString& subject) {
    if (subject == QLatin1String("way")) {
        m_way->setFocus();
        m_way->button()->setFocus();
        return;
    }
    for (const TrialTask& task : trialTasks(session().facts())) {
        if (isNamed(task, subject)) {
            const bool isEarly = std::holds_alternative<TrialId>(task) && nutsAtTorque(session().facts()).next;
            choose(isEarly ? TrialTask(GirdleNuts{}) : task);
            break;
        }
    }
    m_field->setFocus();
}

QString TrialFitStation::help() const {
    return tr("With the girdle on its stacks and its nuts at torque: which way round it goes, and that dipstick, pickup tube, "
              "counterweights and rod bolts are clear through two turns by hand; how hard the crank turns before and after. "
              "It unlocks once every stack has been rechecked.");
}

std::vector<Caution> TrialFitStation::cautions() const {
    return {Caution::crank, Caution::stand};
}

} // namespace caprail
