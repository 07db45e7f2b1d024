// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/survey_view.h>

#include <QVBoxLayout>
#include <charts/deflection_chart.h>
#include <charts/spread_chart.h>
#include <planview/plan_view.h>
#include <session/look.h>
#include <stations/common/station_text.h>
#include <stations/girdle/load_page.h>
#include <stations/girdle/words.h>
#include <text/plain_text.h>

namespace caprail {

GirdleSurvey::GirdleSurvey(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_plan(new PlanView(this)), m_survey(new Label(this)),
      m_column(new QVBoxLayout(this)) {
    m_plan->setObjectName(QStringLiteral("plan"));
    m_survey->setWordWrap(true);
    m_survey->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->addWidget(m_plan, 3);
    m_column->addWidget(m_survey);
    connect(m_plan, &PlanView::placeSelected, this, &GirdleSurvey::choose);
}

void GirdleSurvey::choose(const QString& place) {
    if (const auto position = parsePosition(coreText(place))) {
        emit chosen(*position);
    }
}

void GirdleSurvey::addChart(Chart* chart) {
    connect(chart, &Chart::placeSelected, this, &GirdleSurvey::choose);
    m_column->addWidget(chart, 2);
}

SpreadChart* GirdleSurvey::spread() {
    if (m_spread == nullptr) {
        m_spread = new SpreadChart(this);
        addChart(m_spread);
    }
    return m_spread;
}

DeflectionChart* GirdleSurvey::deflections() {
    if (m_deflections == nullptr) {
        m_deflections = new DeflectionChart(this);
        addChart(m_deflections);
    }
    return m_deflections;
}

void GirdleSurvey::refresh(GirdleMode mode, Position selected, const std::vector<Position>& order,
                           const GirdleLoadPage* load) {
    showDiagram(mode, selected, order, load);
    if (load != nullptr) {
        showLoad(*load);
    } else {
        showSpread(mode);
    }
    m_survey->setVisible(load == nullptr);
    if (m_spread != nullptr) {
        m_spread->setVisible(load == nullptr);
    }
    if (m_deflections != nullptr) {
        m_deflections->setVisible(load != nullptr);
    }
}

void GirdleSurvey::showDiagram(GirdleMode mode, Position selected, const std::vector<Position>& order,
                               const GirdleLoadPage* load) {
    if (!m_session.facts().layout) {
        m_plan->setEmpty(tr("Set the engine layout at the engine station: the pan rail is drawn from it."));
        return;
    }
    PlanContent content = load != nullptr               ? loadContent(m_session, load->load(), load->rail())
                          : mode == GirdleMode::recheck ? recheckContent(m_session)
                                                        : gapContent(m_session, order);
    content.selected = qtText(code(selected));
    m_plan->setContent(std::move(content));
}

void GirdleSurvey::showSpread(GirdleMode mode) {
    m_survey->setText(mode == GirdleMode::recheck ? ringLegend(m_session.facts(), m_session.units())
                                                  : surveySentence(m_session.assessment(), m_session.units()));
    spread()->setData(m_session.assessment(), m_session.units(), screenLook());
}

void GirdleSurvey::showLoad(const GirdleLoadPage& load) {
    const BlockLoad* now = load.load();
    if (now == nullptr || !now->known) {
        deflections()->setNothing(now == nullptr ? load.problem() : qtText(now->known.error().sentence), screenLook());
        return;
    }
    deflections()->setData(*load.model(), *m_session.facts().layout, *now, load.rail(), m_session.units(),
                           screenLook());
}

} // namespace caprail
