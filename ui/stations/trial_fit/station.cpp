// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/trial_fit/station.h>

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <algorithm>
#include <base/say.h>
#include <planview/plan_view.h>
#include <session/look.h>
#include <stations/common/checks_view.h>
#include <stations/common/diagram_tools.h>
#include <stations/common/entries_model.h>
#include <stations/common/entries_table.h>
#include <stations/common/entry_field.h>
#include <stations/common/findings.h>
#include <stations/common/station_text.h>
#include <stations/common/step_keys.h>
#include <stations/common/tab_order.h>
#include <stations/trial_fit/diagram.h>
#include <stations/trial_fit/way.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <work/trial_answer.h>

namespace caprail {

/// What is looked at, how it stands, and what was answered.
struct TrialRow {
    TrialId item;
    CheckState state = CheckState::notDone;
    std::optional<TrialFitResult> answer;
};

namespace {

QString titleOf(TrialId id) {
    return id.second == 0 ? capitalised(qtShown(id.first))
                             : TrialFitStation::tr("Throw %1: %2").arg(id.second).arg(qtShown(id.first));
}

const Check* checkOf(const Assessment& assessment, TrialId id) {
    const auto at = std::ranges::find_if(assessment.checks, [&](const Check& check) {
        const auto* subject = std::get_if<TrialId>(&check.subject);
        return check.kind == CheckKind::trialFit && subject != nullptr && *subject == id;
    });
    return at == assessment.checks.end() ? nullptr : &*at;
}

/// An answer in words, for the echo.
QString describeAnswer(const TrialFitResult& answer, const Units& units) {
    QString words = answer.clearance ? TrialFitStation::tr("%1 clear").arg(qtText(format(answer.clearance->value, units)))
                                     : qtShown(answer.result);
    if (!answer.note.empty()) {
        words += QStringLiteral(": ") + qtText(answer.note);
    }
    return words;
}

QString lineText(const TrialRow& row, const Units& units) {
    QString text = sign(row.state) + QStringLiteral("  ") + titleOf(row.item);
    if (row.answer) {
        text += QStringLiteral("  —  ") + describeAnswer(*row.answer, units);
    }
    if (row.state == CheckState::stale) {
        text += TrialFitStation::tr("  (%1)").arg(stateWord(row.state));
    }
    return text;
}

} // namespace

TrialFitStation::TrialFitStation(RecordSession& given, QWidget* parent)
    : StationPanel(given, parent), m_way(new TrialFitWay(given, this)), m_plan(new PlanView(this)),
      m_rows(new List<TrialRow, TrialId>(
          tr("What is looked at in the trial fit"), &TrialRow::item,
          {{.text = [&given](const TrialRow& row) { return lineText(row, given.units()); },
            .ink = [](const TrialRow& row,
                      const Look& look) { return row.state == CheckState::notDone ? look.ink : look.of(row.state); }}},
          this)), m_gate(new Label(this)), m_entry(new QStackedWidget(this)),
      m_field(new EntryField(this)), m_pass(new QPushButton(tr("&Pass"), this)),
      m_fail(new QPushButton(tr("Fai&l"), this)), m_holding(new ChecksView(given, this)),
      m_entries(new EntriesTable(given, this)) {
    build();
    refresh();
}

void TrialFitStation::build() {
    m_holding->setObjectName(QStringLiteral("holding"));
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.2);
    m_rows->setFont(large);
    m_rows->setSpacing(3);
    connect(m_rows, &ListView::lineSelected, this, [this](int line) {
        if (const TrialRow* row = m_rows->at(line)) {
            choose(TrialId(row->item));
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
        return std::holds_alternative<TrialFitResult>(entry.body) || std::holds_alternative<GirdleWaySet>(entry.body);
    });
    for (const auto& [button, answer] : {std::pair(m_pass, "p"), std::pair(m_fail, "f")}) {
        button->setMinimumHeight(40);
        connect(button, &QPushButton::clicked, this, [this, answer = answer] {
            m_field->type(QString::fromLatin1(answer) + QLatin1Char(' ') + m_field->text());
            m_field->submit();
        });
    }
    setTip(m_fail, tr("Type what was seen first; it becomes a finding."));
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
    openColumn->addLayout(answers);
    openColumn->addStretch(1);
    m_entry->addWidget(open);
    m_entry->addWidget(m_holding);
    m_entry->setMinimumHeight(210);
    auto* caution = new Label(cautionText(TrialFitStation::cautions()), this);
    caution->setWordWrap(true);
    caution->setForegroundRole(QPalette::PlaceholderText);

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

std::vector<TrialId> TrialFitStation::items() const {
    std::vector<TrialId> list;
    const auto& layout = session().facts().layout;
    for (const auto& entry : allWords<TrialItem>()) {
        if (!isPerThrow(entry.value)) {
            list.emplace_back(entry.value, 0);
            continue;
        }
        for (int number = 1; layout && number <= layout->throws(); ++number) {
            list.emplace_back(entry.value, number);
        }
    }
    return list;
}

void TrialFitStation::fillRows() {
    const auto& answers = session().facts().trialFits;
    std::vector<TrialRow> rows;
    for (const TrialId& id : items()) {
        const Check* check = checkOf(session().assessment(), id);
        const auto given = answers.find(id);
        rows.push_back({id, check == nullptr ? CheckState::notDone : check->state,
                        given == answers.end() ? std::nullopt : std::optional(given->second.what)});
    }
    m_rows->put(std::move(rows));
    const int high = m_rows->sizeHintForRow(0) + 2 * m_rows->spacing();
    m_rows->setMaximumHeight(std::max(high, 1) * std::max(m_rows->count(), 1) + 2 * m_rows->frameWidth() + high / 2);
}

void TrialFitStation::refreshGate() {
    const Gate& gate = session().assessment().gate(GateKind::trialFit);
    const bool isClosed = session().facts().isClosed();
    m_entry->setCurrentIndex(gate.isOpen || isClosed ? 0 : 1);
    m_field->setEnabled(gate.isOpen && !isClosed);
    m_pass->setEnabled(gate.isOpen && !isClosed);
    m_fail->setEnabled(gate.isOpen && !isClosed);
    QString text = tr("Lay the girdle on its stacks and answer each line: p passes, f fails, or type the clearance.");
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
    fillRows();
    refreshGate();
    m_holding->refresh();
    m_entries->refresh();
    choose(m_item);
}

void TrialFitStation::choose(TrialId id) {
    m_item = id;
    {
        const QSignalBlocker quiet(m_rows);
        m_rows->select(id);
    }
    refreshPlan();
    askForAnswer();
    emit subjectChanged();
}

QString TrialFitStation::subject() const {
    return m_item.second > 0 ? QStringLiteral("throw-%1").arg(m_item.second) : qtWord(m_item.first);
}

void TrialFitStation::refreshPlan() {
    if (!session().facts().layout) {
        m_plan->setEmpty(tr("Set the engine layout at the engine station: the throws are drawn from it."));
        return;
    }
    PlanContent content = trialFitContent(session());
    content.selected = m_item.second != 0                      ? QStringLiteral("throw-%1").arg(m_item.second)
                       : m_item.first == TrialItem::pickupTube ? QStringLiteral("pickup")
                       : m_item.first == TrialItem::dipstick   ? QStringLiteral("dipstick")
                                                                : QString();
    m_plan->setContent(std::move(content));
}

void TrialFitStation::chooseOnPlan(const QString& place) {
    std::vector<TrialId> here = items();
    std::erase_if(here, [&](const TrialId& item) {
        return !((item.second != 0 && place == QStringLiteral("throw-%1").arg(item.second)) ||
                 (item.first == TrialItem::pickupTube && place == QLatin1String("pickup")) ||
                 (item.first == TrialItem::dipstick && place == QLatin1String("dipstick")));
    });
    const auto open = std::ranges::find_if(here, [&](const TrialId& item) {
        const Check* check = checkOf(session().assessment(), item);
        return check != nullptr && !check->isGood();
    });
    if (!here.empty()) {
        choose(open == here.end() ? here.front() : *open);
    }
}

void TrialFitStation::step(int by) {
    m_rows->selectLine(std::clamp(m_rows->selectedLine() + by, 0, m_rows->count() - 1));
}

void TrialFitStation::askForAnswer() {
    m_field->ask(
        titleOf(m_item), QString::fromUtf8(symbol(session().units().length)),
        [this](const QString& text) {
            return parseTrialAnswer(coreText(text), m_item.first, m_item.second, session().units())
                .map([this](const TrialFitResult& answer) { return describeAnswer(answer, session().units()); });
        },
        [this](const QString& text) { return store(text); });
}

Result<void> TrialFitStation::store(const QString& text) {
    auto answer = parseTrialAnswer(coreText(text), m_item.first, m_item.second, session().units());
    if (!answer) {
        return tl::unexpected(answer.error());
    }
    const TrialId here = m_item;
    const bool isFail = answer->result == TrialResult::fail;
    const std::string note = answer->note;
    if (const auto stored = session().append(std::move(*answer)); !stored) {
        return tl::unexpected(stored.error());
    }
    if (isFail) {
        const std::string place = here.second == 0 ? std::string() : "throw " + std::to_string(here.second);
        const std::string seen = note.empty() ? Core::say("trial fit failed: %1", shown(here.first)) : note;
        session().appendAndSay(FindingOpened{nextFinding(session().facts()), place, seen});
    }
    step(1);
    return {};
}

void TrialFitStation::select(const QString& subject) {
    if (subject == QLatin1String("way")) {
        m_way->setFocus();
        m_way->button()->setFocus();
        return;
    }
    for (const TrialId& id : items()) {
        if (subject == qtWord(id.first) ||
            (id.second != 0 && subject == QStringLiteral("throw-%1").arg(id.second))) {
            choose(id);
            break;
        }
    }
    m_field->setFocus();
}

QString TrialFitStation::help() const {
    return tr("With the girdle on its stacks: which way round it goes, and that dipstick, pickup tube, "
              "counterweights and rod bolts are clear through two turns by hand. It unlocks once every "
              "stack was rechecked.");
}

std::vector<Caution> TrialFitStation::cautions() const {
    return {Caution::crank, Caution::stand};
}

} // namespace caprail
