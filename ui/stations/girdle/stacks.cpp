// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/stacks.h>

#include <QComboBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>
#include <session/girdle_runner.h>
#include <stations/common/budget_window.h>
#include <stations/common/checks_view.h>
#include <stations/common/entry_field.h>
#include <stations/common/place_heading.h>
#include <stations/common/station_text.h>
#include <stations/common/step_keys.h>
#include <stations/common/tab_order.h>
#include <stations/girdle/words.h>
#include <text/ask.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <work/kit_line.h>
#include <work/take_over.h>

namespace caprail {

namespace {

QString namesOf(const std::vector<std::string>& shims) {
    QStringList names;
    for (const std::string& shim : shims) {
        names << qtText(shim);
    }
    return names.isEmpty() ? GirdleStacks::tr("bare") : names.join(QStringLiteral(" + "));
}

} // namespace

GirdleStacks::GirdleStacks(RecordSession& given, PlanRunner& runner, QWidget* parent)
    : GirdlePage(given, parent), m_runner(runner), m_plan(new Label(this)), m_unmet(new Label(this)),
      m_built(new Label(this)), m_kit(new QPushButton(tr("List the &kit first…"), this)),
      m_takeOver(new QPushButton(tr("&Use the plan"), this)), m_anew(new QPushButton(tr("Plan all ane&w"), this)),
      m_objective(new QComboBox(this)), m_heading(new PlaceHeading(this)), m_field(new EntryField(this)),
      m_pin(new QPushButton(this)), m_confirm(new QPushButton(tr("&Confirm this stack"), this)),
      m_aside(new QPushButton(tr("Set a shim &aside…"), this)), m_checks(new ChecksView(given, this)),
      m_flushness(new Label(this)) {
    build();
}

void GirdleStacks::build() {
    m_field->setObjectName(QStringLiteral("stack"));
    m_takeOver->setObjectName(QStringLiteral("takeOverPlan"));
    m_pin->setObjectName(QStringLiteral("pinStack"));
    m_flushness->setObjectName(QStringLiteral("loadOfStacks"));
    m_anew->setObjectName(QStringLiteral("planAllAnew"));
    m_anew->setCheckable(true);
    m_anew->setAutoDefault(false);
    setTip(m_anew, tr("What stands stays, and the plan is for the other places. Pressed, the plan begins with bare washers."));
    connect(m_anew, &QPushButton::toggled, this, &GirdleStacks::scopeChosen);
    for (Label* label : {m_plan, m_unmet, m_built, m_flushness}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    for (const auto& entry : allWords<Objective>()) {
        m_objective->addItem(qtShown(entry.value));
    }
    nameBox(*m_objective, tr("What the plan aims for"));
    connect(m_objective, &QComboBox::activated, this, &GirdleStacks::setObjective);
    m_takeOver->setMinimumHeight(38);
    m_kit->setObjectName(QStringLiteral("listKit"));
    m_kit->setMinimumHeight(38);
    m_kit->setAutoDefault(false);
    setTip(m_kit, tr("No shim is listed yet, so there is nothing to build a stack of. Alt+2"));
    connect(m_kit, &QPushButton::clicked, this, &GirdleStacks::kitAsked);
    connect(m_takeOver, &QPushButton::clicked, this, &GirdleStacks::takePlanOver);
    connect(m_pin, &QPushButton::clicked, this, &GirdleStacks::togglePin);
    connect(m_confirm, &QPushButton::clicked, this, &GirdleStacks::confirm);
    connect(m_aside, &QPushButton::clicked, this, &GirdleStacks::setAsideFromStack);
    connect(m_heading, &PlaceHeading::whyAsked, this, [this] {
        BudgetWindow::open(tr("residual at %1").arg(qtText(describe(m_position))),
                           residualBudgetOf(facts(), m_position), session(), this);
    });
    new StepKeys(m_field->lineEdit(), [this](int by) { emit stepped(by); });
    m_checks->setFilter([this](const Check& check) {
        const auto* p = std::get_if<Position>(&check.subject);
        return p != nullptr && *p == m_position && check.kind != CheckKind::gap;
    });

    auto* aim = new QFormLayout;
    addRow(aim, tr("After fewest shims"), m_objective);
    auto* buttons = new QGridLayout; // in two rows: in other languages they are longer
    buttons->addWidget(m_pin, 0, 0);
    buttons->addWidget(m_confirm, 0, 1);
    buttons->addWidget(m_aside, 1, 0, 1, 2);
    buttons->setColumnStretch(1, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_plan);
    column->addWidget(m_unmet);
    column->addWidget(m_kit);
    auto* plan = new QHBoxLayout;
    plan->addWidget(m_takeOver, 1);
    plan->addWidget(m_anew);
    column->addLayout(plan);
    column->addLayout(aim);
    column->addWidget(m_built);
    column->addWidget(m_flushness);
    column->addSpacing(6);
    column->addWidget(m_heading);
    column->addWidget(m_field);
    column->addLayout(buttons);
    column->addWidget(m_checks, 1);
    setFocusProxy(m_field);
    putProxyFirst(*this);
}

const PlannedStack* GirdleStacks::planned() const {
    const PlanOutcome* outcome = m_runner.outcome();
    if (outcome == nullptr || !outcome->plan) {
        return nullptr;
    }
    const auto at = std::ranges::find(outcome->plan->stacks, code(m_position), &PlannedStack::position);
    return at == outcome->plan->stacks.end() || outcome->task.stays.contains(code(m_position)) ? nullptr : &*at;
}

PlanScope GirdleStacks::scope() const {
    return m_anew->isChecked() ? PlanScope::anew : PlanScope::openPlaces;
}

void GirdleStacks::refresh(Position selected) {
    m_position = selected;
    m_objective->setCurrentIndex(static_cast<int>(facts().rules.objective));
    m_checks->refresh();
    refreshPlan();
    refreshLoad();
    refreshPlace();
    askForStack();
}

void GirdleStacks::showPlan() {
    refreshPlan();
    refreshPlace();
}

void GirdleStacks::refreshPlan() {
    const PlanOutcome* outcome = m_runner.outcome();
    const bool hasPlan = outcome != nullptr && outcome->plan;
    const bool hasKit = !facts().shims.empty();
    m_kit->setVisible(!hasKit);
    m_kit->setEnabled(!session().isReadOnly());
    m_takeOver->setVisible(hasKit);
    m_anew->setVisible(hasKit);
    m_plan->setText(!hasKit              ? tr("No shim is listed yet: list the shims of the kit, then measure them.")
                    : outcome == nullptr ? tr("Planning …")
                                         : planSentence(*outcome, units()));
    m_unmet->setText(outcome == nullptr || !hasKit ? QString() : unmetSentence(*outcome, units()));
    m_unmet->setVisible(!m_unmet->text().isEmpty());
    QPalette palette = m_unmet->palette();
    palette.setColor(QPalette::WindowText, screenLook().out);
    m_unmet->setPalette(palette);
    const std::size_t changes = hasPlan ? takeOver(*outcome->plan, facts(), assessment()).size() : 0;
    m_takeOver->setEnabled(changes > 0);
    m_anew->setEnabled(!facts().isClosed() && !facts().stacks.empty());
    setTip(m_takeOver, tr("Records the stacks of the plan as built; lay them on as drawn."));
    QString built;
    if (hasPlan && !facts().stacks.empty() && !outcome->task.isClosed) {
        const auto comparison = compareWithBest(outcome->request, *outcome->plan, builtStacks(facts(), *outcome->plan));
        built = comparison ? comparisonSentence(*comparison, units()) : qtText(comparison.error().sentence);
    }
    m_built->setText(built);
    m_built->setVisible(!built.isEmpty());
}

void GirdleStacks::refreshLoad() {
    m_girdle = GirdleRunner::of(session()).model();
    m_load = m_girdle ? std::optional(blockLoad(*m_girdle, facts(), assessment(), units())) : std::nullopt;
    QString flushness = flushnessSentence(assessment(), units());
    if (m_load) {
        flushness += QLatin1Char('\n') + loadSentence(*m_load, Rail::held, units());
    }
    m_flushness->setText(flushness);
    m_flushness->setVisible(!facts().stacks.empty());
}

void GirdleStacks::refreshPlace() {
    const auto built = facts().stacks.find(m_position);
    const PlannedStack* plan = planned();
    const Check* check = assessment().find("stack:" + code(m_position));
    const auto stack = assessment().stacks.find(m_position);
    QString figure = QStringLiteral("—");
    if (stack != assessment().stacks.end() && stack->second.residual) {
        figure = qtText(formatSigned(*stack->second.residual, units()));
    } else if (plan != nullptr) {
        figure = qtText(formatSigned(plan->residual, units()));
    }
    QString words = built == facts().stacks.end() ? tr("not built") : tr("built: %1").arg(namesOf(built->second.shims));
    if (plan != nullptr) {
        words += QStringLiteral(" · ") + tr("planned: %1").arg(namesOf(plan->shims));
    }
    m_heading->show(capitalised(qtText(describe(m_position))), figure,
                    check == nullptr ? CheckState::notDone : check->state, words);
    m_heading->setAskable(stack != assessment().stacks.end() && stack->second.residual.has_value());
    const bool isPinned = facts().pins.contains(m_position);
    m_pin->setText(isPinned ? tr("Unp&in") : tr("P&in"));
    setTip(m_pin, tr("The plan keeps a pinned stack as it is and plans the rest around it."));
    m_pin->setEnabled(isPinned || plan != nullptr || built != facts().stacks.end());
    m_confirm->setEnabled(built != facts().stacks.end());
    m_aside->setEnabled(plan != nullptr && !plan->shims.empty());
}

QString GirdleStacks::echoOf(const std::vector<std::string>& shims) const {
    Length thickness;
    QStringList notes;
    for (const std::string& name : shims) {
        const ShimFact& shim = facts().shims.find(name)->second;
        thickness += shim.thickness();
        if (!shim.measured()) {
            notes << tr("%1 is not measured").arg(qtText(name));
        }
        if (shim.inStackAt && *shim.inStackAt != m_position) {
            notes << tr("%1 lies at %2").arg(qtText(name), qtText(code(*shim.inStackAt)));
        }
    }
    QString text = tr("%1 thick").arg(qtText(format(thickness, units())));
    const auto gap = assessment().gaps.find(m_position);
    if (gap != assessment().gaps.end() && gap->second.accepted) {
        const Length residual = *gap->second.accepted - thickness;
        const ResidualBand band = residualBand(facts());
        const Feel feel = expectedFeel(residual, band.band);
        text = tr("%1, residual %2: %3, should %4")
                   .arg(text, qtText(formatSigned(residual, units())),
                        band.band.contains(residual) ? tr("in band") : tr("out of band"),
                        feel == Feel::loose   ? tr("be loose")
                        : feel == Feel::rocks ? tr("rock")
                                              : tr("drag"));
        if (const QString effect = effectOf(residual); !effect.isEmpty()) {
            notes << effect;
        }
        if (!band.isSet) {
            notes << usualBandNote(band, units());
        }
    }
    return notes.isEmpty() ? text : text + QStringLiteral(". ") + notes.join(QStringLiteral(", "));
}

QString GirdleStacks::effectOf(Length residual) const {
    if (!m_load) {
        return {};
    }
    const auto at = std::ranges::find(m_load->places, m_position, &PlaceResidual::place);
    return at == m_load->places.end()
               ? QString()
               : qtText(effectOnCap(*m_girdle, *m_load, m_position, residual - at->residual, units()));
}

void GirdleStacks::askForStack() {
    m_field->ask(
        tr("Stack built at %1: shim names, or a dash for bare").arg(qtText(code(m_position))), {},
        [this](const QString& text) {
            return parseStack(coreText(text), facts(), m_position).map([this](const auto& shims) { return echoOf(shims); });
        },
        [this](const QString& text) -> Result<void> {
            auto shims = parseStack(coreText(text), facts(), m_position);
            if (!shims) {
                return tl::unexpected(shims.error());
            }
            const auto stored = session().append(StackBuilt{m_position, NameList{std::move(*shims)}});
            if (!stored) {
                return tl::unexpected(stored.error());
            }
            emit stepped(1);
            return {};
        });
}

void GirdleStacks::takePlanOver() {
    if (const PlanOutcome* outcome = m_runner.outcome(); outcome != nullptr && outcome->plan) {
        // A copy: the first entry makes the facts, and with them the plan, anew.
        session().appendAllAndSay(takeOver(StackPlan(*outcome->plan), facts(), assessment()));
        m_anew->setChecked(false); // what was just built stands, and stays
    }
}

void GirdleStacks::togglePin() {
    if (facts().pins.contains(m_position)) {
        session().appendAndSay(StackPinned{m_position, false, {}});
        return;
    }
    const auto built = facts().stacks.find(m_position);
    if (built != facts().stacks.end()) {
        session().appendAndSay(StackPinned{m_position, true, NameList{built->second.shims}});
    } else if (const PlannedStack* plan = planned()) {
        session().appendAndSay(StackPinned{m_position, true, NameList{plan->shims}});
    }
}

void GirdleStacks::confirm() {
    if (auto entry = confirmStack(m_position, facts(), assessment())) {
        session().appendAndSay(std::move(*entry));
    }
}

void GirdleStacks::setAsideFromStack() {
    const PlannedStack* plan = planned();
    if (plan == nullptr) {
        return;
    }
    QStringList names;
    for (const std::string& shim : plan->shims) {
        names << qtText(shim);
    }
    const auto shim = askChoice(this, tr("Set aside"), tr("Which shim should the plan do without?"), names, 0, false);
    if (!shim) {
        return;
    }
    if (const auto why = askText(this, tr("Set aside"), tr("Why is %1 set aside?").arg(*shim))) {
        session().appendAndSay(ShimSetAside{coreText(*shim), true, coreText(*why)});
    }
}

void GirdleStacks::setObjective(int index) {
    RulesSet rules = facts().rules;
    rules.objective = static_cast<Objective>(index);
    if (!session().append(std::move(rules))) {
        refresh(m_position); // the box says what the rule is, not what was asked for
    }
}

void GirdleStacks::focusField() {
    if (m_kit->isVisibleTo(this) && m_kit->isEnabled()) {
        m_kit->setFocus();
    } else {
        m_field->setFocus();
    }
}

bool GirdleStacks::type(const QString& text) {
    m_field->type(text);
    return true;
}

} // namespace caprail
