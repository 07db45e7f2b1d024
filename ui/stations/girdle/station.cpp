// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/station.h>

#include <QHBoxLayout>
#include <algorithm>
#include <planview/plan_view.h>
#include <stations/common/diagram_tools.h>
#include <stations/common/panel_stack.h>
#include <stations/common/station_text.h>
#include <stations/common/view_switches.h>
#include <stations/girdle/actions.h>
#include <stations/girdle/board.h>
#include <stations/girdle/feel.h>
#include <stations/girdle/gaps.h>
#include <stations/girdle/kit.h>
#include <stations/girdle/load_page.h>
#include <stations/girdle/recheck.h>
#include <stations/girdle/stacks.h>
#include <stations/girdle/survey_view.h>
#include <stations/girdle/words.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

GirdleStation::GirdleStation(RecordSession& given, QWidget* parent)
    : StationPanel(given, parent), m_girdle(GirdleRunner::of(given)), m_survey(new GirdleSurvey(given, this)),
      m_tools(new PlanTools(m_survey->plan(), this)), m_actions(new GirdleActions(given, this)),
      m_board(new GirdleBoard(this)), m_gaps(new GirdleGaps(given, this)),
      m_stacks(new GirdleStacks(given, m_runner, this)), m_body(new PanelStack(this)), m_left(new PanelStack(this)),
      m_right(new PanelStack(this)) {
    m_position = m_gaps->position();
    build();
    m_modes->show(static_cast<int>(m_mode));
    refresh();
}

void GirdleStation::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 8, 6);
    column->addWidget(buildBar());
    m_body->addWidget(buildWork());
    column->addWidget(m_body, 1);

    connect(m_survey, &GirdleSurvey::chosen, this, &GirdleStation::choose);
    connect(m_survey->plan(), &PlanView::placeActivated, this, [this] { page()->focusField(); });
    connect(m_survey->plan(), &PlanView::typed, this, [this](const QString& text) { page()->type(text); });
    connect(m_board, &GirdleBoard::chosen, this, &GirdleStation::choose);
    connect(m_board, &GirdleBoard::typed, this, [this](const QString& text) { page()->type(text); });
    connect(m_stacks, &GirdleStacks::scopeChosen, this, &GirdleStation::refresh);
    connect(m_stacks, &GirdleStacks::kitAsked, this, [this] { setMode(GirdleMode::shims); });
    listenTo(m_gaps);
    listenTo(m_stacks);
    connect(&m_runner, &PlanRunner::planReady, this, &GirdleStation::planReady);
    connect(&m_girdle, &GirdleRunner::ready, this, &GirdleStation::girdleReady);
}

void GirdleStation::listenTo(GirdlePage* page) {
    connect(page, &GirdlePage::chosen, this, &GirdleStation::choose);
    connect(page, &GirdlePage::stepped, this, &GirdleStation::step);
}

GirdleKit* GirdleStation::kit() {
    if (m_kit == nullptr) {
        m_kit = new GirdleKit(session(), this);
        m_body->addWidget(m_kit);
    }
    return m_kit;
}

GirdleFeel* GirdleStation::feel() {
    if (m_feel == nullptr) {
        m_feel = new GirdleFeel(session(), this);
        m_body->addWidget(m_feel);
    }
    return m_feel;
}

GirdleRecheck* GirdleStation::recheck() {
    if (m_recheck == nullptr) {
        m_recheck = new GirdleRecheck(session(), this);
        listenTo(m_recheck);
        connect(m_recheck, &GirdleRecheck::feelAsked, this,
                [this](const QString& person, const QString& straightedge) {
                    feel()->choose(person, straightedge);
                    setMode(GirdleMode::feel);
                });
        m_right->addWidget(m_recheck);
    }
    return m_recheck;
}

GirdleLoadPage* GirdleStation::load() {
    if (m_load == nullptr) {
        m_load = new GirdleLoadPage(session(), this);
        listenTo(m_load);
        connect(m_load, &GirdleLoadPage::railChosen, this, &GirdleStation::showWork);
        m_right->addWidget(m_load);
    }
    return m_load;
}

QWidget* GirdleStation::buildBar() {
    auto* bar = new QWidget(this);
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    m_modes = new ViewSwitches({{tr("Gaps"), {}},
                                {tr("Shims"), {}},
                                {tr("Stacks"), {}},
                                {tr("Recheck"), {}},
                                {tr("Feel"), {}},
                                {tr("Load"), {}}},
                               bar);
    connect(m_modes, &ViewSwitches::chosen, this, [this](int mode) { setMode(static_cast<GirdleMode>(mode)); });
    row->addWidget(m_modes);
    auto* caution = new CautionLabel(GirdleStation::cautions(), bar);
    caution->setMostLines(5);
    row->addSpacing(2);
    row->addWidget(caution, 1);
    row->addWidget(m_tools);
    row->addWidget(m_actions);
    return bar;
}

QWidget* GirdleStation::buildWork() {
    m_left->addWidget(m_survey);
    m_left->addWidget(m_board);
    m_right->addWidget(m_gaps);
    m_right->addWidget(m_stacks);
    auto* work = new QWidget(this);
    auto* row = new QHBoxLayout(work);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(10);
    row->addWidget(m_left, 1);
    row->addWidget(m_right);
    m_right->setFixedWidth(390);
    return work;
}

GirdlePage* GirdleStation::page() const {
    return static_cast<GirdlePage*>(m_right->currentWidget());
}

void GirdleStation::setMode(GirdleMode mode) {
    m_mode = mode;
    m_modes->show(static_cast<int>(mode));
    m_tools->setVisible(!isWholePage() && mode != GirdleMode::stacks);
    if (mode == GirdleMode::shims) {
        m_body->setCurrentWidget(kit());
    } else if (mode == GirdleMode::feel) {
        m_body->setCurrentWidget(feel());
    } else {
        m_body->setCurrentIndex(0);
        m_right->setCurrentWidget(mode == GirdleMode::gaps     ? static_cast<GirdlePage*>(m_gaps)
                                  : mode == GirdleMode::stacks ? static_cast<GirdlePage*>(m_stacks)
                                  : mode == GirdleMode::load   ? static_cast<GirdlePage*>(load())
                                                               : recheck());
        m_left->setCurrentIndex(mode == GirdleMode::stacks ? 1 : 0);
    }
    refresh();
    focusMode();
    emit subjectChanged();
}

void GirdleStation::focusMode() {
    if (m_mode == GirdleMode::shims) {
        kit()->focusField();
    } else if (m_mode == GirdleMode::feel) {
        feel()->focusField();
    } else {
        page()->focusField();
    }
}

void GirdleStation::plan() {
    const SharedGirdle girdle = m_girdle.model();
    if (m_girdle.isBusy()) {
        m_runner.wait(); // without its loads it would be another plan
        return;
    }
    m_runner.solve(
        planTaskFor(session().facts(), session().assessment(), session().units(), m_stacks->scope(), girdle.get()));
}

void GirdleStation::girdleReady() {
    plan();
    if (m_mode == GirdleMode::load || m_mode == GirdleMode::stacks) {
        showWork();
    }
}

void GirdleStation::planReady() {
    if (m_mode == GirdleMode::stacks) {
        m_stacks->showPlan();
        refreshBoard();
    }
}

void GirdleStation::refresh() {
    plan();
    showWork();
}

void GirdleStation::showWork() {
    m_actions->setPosition(m_position);
    if (m_mode == GirdleMode::shims) {
        kit()->refresh();
        return;
    }
    if (m_mode == GirdleMode::feel) {
        feel()->refresh();
        return;
    }
    page()->refresh(m_position);
    if (m_mode == GirdleMode::stacks) {
        refreshBoard();
        return;
    }
    m_survey->refresh(m_mode, m_position, m_gaps->order(), m_mode == GirdleMode::load ? load() : nullptr);
}

void GirdleStation::refreshBoard() {
    m_board->show(boardCells(session(), m_runner.outcome()), session().units());
    m_board->select(m_position);
}

void GirdleStation::choose(Position position) {
    m_position = position;
    m_actions->setPosition(position);
    m_survey->plan()->select(qtText(code(position)));
    m_board->select(position);
    if (!isWholePage()) {
        page()->refresh(position);
    }
    emit subjectChanged();
}

QString GirdleStation::subject() const {
    const bool isThere = session().facts().layout && session().facts().layout->has(m_position);
    return isThere && !isWholePage() ? qtText(code(m_position)) : QString();
}

void GirdleStation::step(int by) {
    const std::vector<Position>& order = m_gaps->order();
    const auto at = std::ranges::find(order, m_position);
    if (order.empty()) {
        return;
    }
    const auto count = static_cast<std::ptrdiff_t>(order.size());
    const std::ptrdiff_t here = at == order.end() ? 0 : at - order.begin();
    choose(order[static_cast<std::size_t>((here + by + count) % count)]);
}

void GirdleStation::select(const QString& subject) {
    if (subject == QLatin1String("flushness")) {
        setMode(GirdleMode::recheck);
        return;
    }
    if (subject == QLatin1String("load")) {
        setMode(GirdleMode::load);
        return;
    }
    if (subject == QLatin1String("shims")) {
        setMode(GirdleMode::shims);
        return;
    }
    if (subject == QLatin1String("feel")) {
        setMode(GirdleMode::feel);
        return;
    }
    const auto position = parsePosition(coreText(subject));
    if (!position || !session().facts().layout || !session().facts().layout->has(*position)) {
        focusMode();
        return;
    }
    m_position = *position;
    const auto isGood = [&](const char* kind) {
        const Check* check = session().assessment().find(kind + code(*position));
        return check != nullptr && check->isGood();
    };
    setMode(!isGood("gap:") ? GirdleMode::gaps : !isGood("stack:") ? GirdleMode::stacks : GirdleMode::recheck);
}

EntryField* GirdleStation::entryField() const {
    return m_mode == GirdleMode::gaps ? m_gaps->field() : nullptr;
}

QString GirdleStation::help() const {
    return tr("Lay the straightedge across both pan rails, read the gap down to each washer, and type it: 57.5 thou, "
              ".0575, 1.46 mm, or the leaves in one slot, 22+23+12.5 thou. Two passes or more. Enter the kit, measure "
              "its shims, use the plan, build the stacks, and recheck each: rocks, drags or loose.");
}

std::vector<Caution> GirdleStation::cautions() const {
    return {Caution::counted};
}

} // namespace caprail
