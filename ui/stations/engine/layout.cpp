// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/engine/layout.h>

#include <QFrame>
#include <QHBoxLayout>
#include <assessment/described_girdle.h>
#include <planview/plan_view.h>
#include <session/girdle_advice.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

std::vector<FormField> engineFields() {
    return {{"engine", EngineLayoutPage::tr("Engine"), EngineLayoutPage::tr("what it is, in a few words"), {}, true},
            {"serial", EngineLayoutPage::tr("Serial"), {}, {}},
            {"customer", EngineLayoutPage::tr("Customer"), {}, {}},
            {"shop", EngineLayoutPage::tr("Shop"), {}, {}},
            {"telephone", EngineLayoutPage::tr("Telephone"), EngineLayoutPage::tr("for the customer's sheet"), {}},
            {"address", EngineLayoutPage::tr("Its address"), {}, {}, true},
            {"note", EngineLayoutPage::tr("Note"), {}, {}, true}};
}

std::vector<FormField> layoutFields() {
    return {{"caps", EngineLayoutPage::tr("Main caps"), {}, {}},
            {"cap_spacing", EngineLayoutPage::tr("Cap to cap"), {}, {}},
            {"fasteners_per_cap", EngineLayoutPage::tr("Fasteners per cap"), {}, {}},
            {"stud_span", EngineLayoutPage::tr("Studs, left to right"), {}, {}},
            {"girdle_ring", EngineLayoutPage::tr("Girdle sits on"), {}, {}},
            {"outer_stud_span", EngineLayoutPage::tr("Outer studs apart"), {}, {}},
            {"tied_first", EngineLayoutPage::tr("Girdle from cap"), {}, {}},
            {"rail_span", EngineLayoutPage::tr("Pan rails apart"), {}, {}},
            {"tied_last", EngineLayoutPage::tr("Girdle to cap"), {}, {}},
            {"pickup_cap", EngineLayoutPage::tr("Pickup at cap"), {}, {}},
            {"rods", EngineLayoutPage::tr("Rods"), {}, {}},
            {"pickup_side", EngineLayoutPage::tr("Pickup side"), {}, {}},
            {"throws", EngineLayoutPage::tr("Crank throws"), {}, {}},
            {"dipstick_cap", EngineLayoutPage::tr("Dipstick at cap"), {}, {}},
            {"dipstick_side", EngineLayoutPage::tr("Dipstick side"), {}, {}},
            {"plate_thickness", EngineLayoutPage::tr("Girdle thickness"), {}, {}},
            {"plate_metal", EngineLayoutPage::tr("Girdle is of"), {}, {}},
            {"plate_modulus", EngineLayoutPage::tr("Modulus, MPa"), EngineLayoutPage::tr("by its metal"), {}},
            {"plate_poisson", EngineLayoutPage::tr("Poisson, 1/1000"), EngineLayoutPage::tr("by its metal"), {}},
            {"window_along", EngineLayoutPage::tr("Windows, along"), EngineLayoutPage::tr("as drawn"), {}},
            {"window_across", EngineLayoutPage::tr("Windows, across"), EngineLayoutPage::tr("as drawn"), {}},
            {"plate_overhang", EngineLayoutPage::tr("Past the end nuts"), EngineLayoutPage::tr("as drawn"), {}},
            {"source", EngineLayoutPage::tr("Who says so"), {}, {}, true}};
}

} // namespace

EngineLayoutPage::EngineLayoutPage(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_engine(new FormFor<EngineDescribed>(session, tr("The engine"), tr("Store engi&ne"), engineFields(), 2, this)),
      m_layout(new FormFor<LayoutSet>(session, tr("Its bottom end"), tr("Store &layout"), layoutFields(), 2, this)),
      m_plan(new PlanView(this)), m_advice(new Label(this)) {
    m_plan->setObjectName(QStringLiteral("layoutPlan"));
    auto* left = new QVBoxLayout;
    left->addWidget(m_engine);
    auto* line = new QFrame(this);
    line->setFrameShape(QFrame::HLine);
    line->setFrameShadow(QFrame::Plain);
    line->setForegroundRole(QPalette::Mid);
    left->addWidget(line);
    left->addWidget(m_layout);
    left->addStretch(1);
    auto* words = new Label(tr("The plan as it lies on the stand, drawn from what is typed. Left and right are as seen "
                               "from the flywheel end with the engine the right way up. Lengths in plan serve the "
                               "drawing, the flushness and the load in the block."),
                            this);
    words->setWordWrap(true);
    words->setForegroundRole(QPalette::PlaceholderText);
    auto* right = new QVBoxLayout;
    right->addWidget(m_plan, 1);
    right->addWidget(words);
    m_advice->setWordWrap(true);
    m_advice->setSubject(tr("Advice on when to consider a girdle"));
    m_advice->setTextInteractionFlags(Qt::TextSelectableByMouse);
    setTip(m_advice, tr("The figures are set under Edit ▸ Preferences"));
    right->addWidget(m_advice);
    auto* row = new QHBoxLayout(this);
    row->addLayout(left, 5);
    row->addLayout(right, 6);
    connect(m_engine, &EntryForm::reverted, this, &EngineLayoutPage::load);
    connect(m_layout, &EntryForm::reverted, this, &EngineLayoutPage::load);
    connect(m_layout, &EntryForm::edited, this, &EngineLayoutPage::drawTyped);
    refresh();
}

void EngineLayoutPage::refresh() {
    load();
}

void EngineLayoutPage::load() {
    m_advice->setText(GirdleAdvice::load().text());
    const Facts& facts = m_session.facts();
    m_engine->load(facts.engine ? facts.engine->what : EngineDescribed{});
    const auto* set = facts.layoutEntry == 0 ? nullptr : m_session.ledger().at(facts.layoutEntry).body.as<LayoutSet>();
    m_layout->load(set == nullptr ? LayoutSet{} : *set);
    drawTyped();
}

void EngineLayoutPage::drawTyped() {
    if (m_session.facts().layoutEntry == 0 && !m_layout->isTouched()) {
        m_layout->setRemark(tr("Nothing is stored yet: correct these starting values and store them."));
        m_layout->offerToStore();
    }
    const auto typed = m_layout->read();
    const auto layout = typed ? EngineLayout::from(*typed) : Result<EngineLayout>(tl::unexpected(typed.error()));
    if (!layout) {
        m_plan->setEmpty(qtText(layout.error().sentence));
        return;
    }
    const auto girdle = describedGirdle(*typed, *layout);
    if (!girdle) {
        m_plan->setEmpty(qtText(girdle.error().sentence));
        return;
    }
    PlanContent content{*layout};
    content.shape = girdle->shape;
    content.layers = PlanLayer::positions | PlanLayer::mainFasteners | PlanLayer::mainJournals | PlanLayer::throws |
                     PlanLayer::girdle | PlanLayer::cutout | PlanLayer::pickup | PlanLayer::dipstick;
    content.title = m_layout->isTouched() ? tr("As typed, not stored yet") : QString();
    m_plan->setContent(std::move(content));
}

} // namespace caprail
