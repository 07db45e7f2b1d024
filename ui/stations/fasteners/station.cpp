// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/fasteners/station.h>

#include <QHBoxLayout>
#include <QStackedWidget>
#include <algorithm>
#include <planview/plan_view.h>
#include <stations/common/diagram_tools.h>
#include <stations/common/panel_stack.h>
#include <stations/common/station_text.h>
#include <stations/common/view_switches.h>
#include <stations/fasteners/clamp.h>
#include <stations/fasteners/groups.h>
#include <stations/fasteners/tighten.h>
#include <stations/fasteners/verify.h>
#include <stations/fasteners/words.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <work/tightening.h>

namespace caprail {

FastenersStation::FastenersStation(RecordSession& given, QWidget* parent)
    : StationPanel(given, parent), m_plan(new PlanView(this)), m_tools(new PlanTools(m_plan, this)),
      m_tighten(new FastenersTighten(given, this)), m_verify(new FastenersVerify(given, this)),
      m_groups(new FastenersGroups(given, this)), m_clamp(new FastenersClamp(given, this)), m_body(new PanelStack(this)),
      m_right(new QStackedWidget(this)) {
    m_plan->setObjectName(QStringLiteral("plan"));
    m_right->addWidget(m_tighten);
    m_right->addWidget(m_verify);
    m_right->addWidget(m_clamp);
    m_right->setFixedWidth(390);
    auto* work = new QWidget(this);
    auto* row = new QHBoxLayout(work);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(10);
    row->addWidget(m_plan, 1);
    row->addWidget(m_right);
    m_body->addWidget(work);
    m_body->addWidget(m_groups);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 8, 6);
    column->addWidget(buildBar());
    column->addWidget(m_body, 1);

    connect(m_plan, &PlanView::placeSelected, this, [this](const QString& place) {
        if (const auto fastener = parseFastener(coreText(place))) {
            choose(*fastener);
        }
    });
    connect(m_plan, &PlanView::placeActivated, this, [this] { page()->focusField(); });
    connect(m_plan, &PlanView::typed, this, [this](const QString& text) { page()->type(text); });
    for (FastenersPage* each : {static_cast<FastenersPage*>(m_tighten), static_cast<FastenersPage*>(m_verify),
                                static_cast<FastenersPage*>(m_clamp)}) {
        connect(each, &FastenersPage::chosen, this, &FastenersStation::choose);
        connect(each, &FastenersPage::stepped, this, &FastenersStation::step);
    }
    if (const auto order = m_tighten->order(); !order.empty()) {
        m_fastener = order.front();
    }
    if (roundUnderWay(session().facts()) != nullptr) {
        setMode(FastenersMode::verify); // a round that was left goes on where it was
        return;
    }
    refresh();
}

QWidget* FastenersStation::buildBar() {
    auto* bar = new QWidget(this);
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    m_modes = new ViewSwitches(
        {{tr("Tighten"), {}}, {tr("Verify round"), {}}, {tr("Groups"), {}}, {tr("Clamp check"), {}}}, bar);
    connect(m_modes, &ViewSwitches::chosen, this, [this](int mode) { setMode(static_cast<FastenersMode>(mode)); });
    row->addWidget(m_modes);
    auto* caution = new CautionLabel(FastenersStation::cautions(), bar);
    caution->setMostLines(5);
    row->addSpacing(10);
    row->addWidget(caution, 1);
    row->addWidget(m_tools);
    return bar;
}

FastenersPage* FastenersStation::page() const {
    return static_cast<FastenersPage*>(m_right->currentWidget());
}

void FastenersStation::setMode(FastenersMode mode) {
    m_mode = mode;
    m_modes->show(static_cast<int>(mode));
    const bool isGroups = mode == FastenersMode::groups;
    m_body->setCurrentIndex(isGroups ? 1 : 0);
    m_tools->setVisible(!isGroups);
    if (isGroups) {
        m_groups->refresh();
        m_groups->focusField();
        emit subjectChanged();
        return;
    }
    m_right->setCurrentIndex(mode == FastenersMode::verify ? 1 : mode == FastenersMode::clamp ? 2 : 0);
    if (mode == FastenersMode::verify) {
        // The round goes on where it was left.
        m_fastener = m_verify->next().value_or(m_fastener);
    }
    const auto order = page()->order();
    if (std::ranges::find(order, m_fastener) == order.end() && !order.empty()) {
        m_fastener = order.front();
    }
    refresh();
    page()->focusField();
    emit subjectChanged();
}

void FastenersStation::refresh() {
    if (m_mode == FastenersMode::groups) {
        m_groups->refresh();
        return;
    }
    page()->refresh(m_fastener);
    refreshDiagram();
}

void FastenersStation::refreshDiagram() {
    const Facts& facts = session().facts();
    if (!facts.layout) {
        m_plan->setEmpty(tr("Set the engine layout at the engine station: the fasteners follow from it."));
        return;
    }
    PlanContent content =
        m_mode == FastenersMode::verify
            ? roundContent(facts, facts.rounds.empty() ? nullptr : &facts.rounds.back(), session().units())
            : tightenedContent(facts, m_fastener.kind, session().units());
    content.selected = qtText(code(m_fastener));
    m_plan->setContent(std::move(content));
}

void FastenersStation::choose(FastenerId fastener) {
    const bool isOtherKind = fastener.kind != m_fastener.kind;
    m_fastener = fastener;
    page()->refresh(fastener);
    if (isOtherKind && m_mode == FastenersMode::tighten) {
        refreshDiagram();
    } else {
        m_plan->select(qtText(code(fastener)));
    }
    emit subjectChanged();
}

QString FastenersStation::subject() const {
    const bool isThere = session().facts().layout && session().facts().layout->has(m_fastener);
    return isThere && m_mode != FastenersMode::groups ? qtText(code(m_fastener)) : QString();
}

void FastenersStation::step(int by) {
    const auto order = page()->order();
    if (order.empty()) {
        return;
    }
    const auto at = std::ranges::find(order, m_fastener);
    const auto count = static_cast<std::ptrdiff_t>(order.size());
    const std::ptrdiff_t here = at == order.end() ? 0 : at - order.begin();
    choose(order[static_cast<std::size_t>((here + by + count) % count)]);
}

void FastenersStation::select(const QString& subject) {
    if (subject == QLatin1String("groups")) {
        setMode(FastenersMode::groups);
        return;
    }
    if (subject == QLatin1String("round")) {
        setMode(FastenersMode::verify);
        return;
    }
    const auto fastener = parseFastener(coreText(subject));
    if (fastener && session().facts().layout && session().facts().layout->has(*fastener)) {
        m_fastener = *fastener;
        setMode(roundUnderWay(session().facts()) != nullptr && isVerified(fastener->kind) ? FastenersMode::verify
                                                                                          : FastenersMode::tighten);
        choose(*fastener);
    } else if (m_mode != FastenersMode::groups) {
        page()->focusField();
    }
}

std::vector<BenchWord> FastenersStation::benchWords() const {
    return m_mode == FastenersMode::verify ? m_verify->words() : std::vector<BenchWord>();
}

EntryField* FastenersStation::entryField() const {
    return m_mode == FastenersMode::tighten  ? m_tighten->field()
           : m_mode == FastenersMode::verify ? m_verify->field()
           : m_mode == FastenersMode::clamp  ? m_clamp->field()
                                             : nullptr;
}

QString FastenersStation::help() const {
    return tr("What each group is tightened to, and what each fastener was tightened to. A verify round "
              "goes over every main-cap and rod fastener again with the stacks off, without backing them "
              "off: it held, or it moved by an angle. One that moved makes the gaps of its cap stale.");
}

std::vector<Caution> FastenersStation::cautions() const {
    return {Caution::wrench, Caution::yielded};
}

} // namespace caprail
