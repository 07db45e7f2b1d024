// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/bearings/station.h>

#include <QHBoxLayout>
#include <QStackedWidget>
#include <charts/clearance_chart.h>
#include <ledger/band_names.h>
#include <planview/plan_view.h>
#include <stations/bearings/film.h>
#include <stations/bearings/fits.h>
#include <stations/bearings/measure.h>
#include <stations/bearings/shells.h>
#include <stations/bearings/warm.h>
#include <stations/common/diagram_tools.h>
#include <stations/common/station_text.h>
#include <stations/common/view_switches.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

BearingsStation::BearingsStation(RecordSession& given, QWidget* parent)
    : StationPanel(given, parent), m_plan(new PlanView(this)), m_tools(new PlanTools(m_plan, this)),
      m_chart(new ClearanceChart(this)), m_measure(new BearingsMeasure(given, this)),
      m_fits(new BearingsFits(given, this)), m_shells(new BearingsShells(given, this)),
      m_film(new BearingsFilm(given, this)), m_warm(new BearingsWarm(given, *m_film, this)),
      m_body(new QStackedWidget(this)), m_left(new QStackedWidget(this)), m_right(new QStackedWidget(this)) {
    m_plan->setObjectName(QStringLiteral("plan"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 8, 6);
    column->addWidget(buildBar());
    m_body->addWidget(buildWork());
    m_body->addWidget(m_shells);
    column->addWidget(m_body, 1);
    connect(m_plan, &PlanView::placeSelected, this, &BearingsStation::placeChosen);
    connect(m_chart, &Chart::placeSelected, this, [this](const QString& place) {
        if (isPass(m_mode)) {
            placeChosen(place);
            m_plan->select(place);
        }
    });
    connect(m_plan, &PlanView::placeActivated, this, &BearingsStation::focusField);
    connect(m_plan, &PlanView::typed, this, [this](const QString& text) {
        if (isPass(m_mode)) {
            m_measure->type(text);
        } else if (m_mode == BearingsMode::fits) {
            m_fits->type(text);
        }
    });
    connect(m_measure, &BearingsMeasure::chosen, this, [this] {
        refreshDiagram();
        emit subjectChanged();
    });
    connect(m_fits, &BearingsFits::chosen, this, [this] {
        m_plan->select(selectedPlace());
        emit subjectChanged();
    });
    refresh();
}

QWidget* BearingsStation::buildBar() {
    auto* bar = new QWidget(this);
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    m_modes = new ViewSwitches({{tr("Journals"), tr("Journal diameters")},
                                {tr("Bores"), tr("Bores with the shells in, caps at torque")},
                                {tr("Housings"), tr("Housing bores without shells")},
                                {tr("Strip"), tr("Clearance by gauging strip")},
                                {tr("Fits"), tr("Crank end play, rod side clearance, own fits")},
                                {tr("Shells"), tr("Shells on the shelf and in the engine")},
                                {tr("Warm"), tr("Clearances and oil films at another temperature")}},
                               bar);
    connect(m_modes, &ViewSwitches::chosen, this, [this](int mode) { setMode(static_cast<BearingsMode>(mode)); });
    row->addWidget(m_modes);
    row->addStretch(1);
    row->addWidget(m_tools);
    return bar;
}

QWidget* BearingsStation::buildWork() {
    auto* caution = new CautionLabel(BearingsStation::cautions(), this);
    auto* diagram = new QWidget(this);
    auto* left = new QVBoxLayout(diagram);
    left->setContentsMargins(0, 0, 0, 0);
    left->addWidget(m_plan, 3);
    left->addWidget(m_chart, 2);
    left->addWidget(caution);
    m_left->addWidget(diagram);
    m_left->addWidget(m_film);
    m_right->addWidget(m_measure);
    m_right->addWidget(m_fits);
    m_right->addWidget(m_warm);
    m_right->setFixedWidth(400);
    auto* work = new QWidget(this);
    auto* row = new QHBoxLayout(work);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(10);
    row->addWidget(m_left, 1);
    row->addWidget(m_right);
    return work;
}

void BearingsStation::setMode(BearingsMode mode) {
    m_mode = mode;
    m_modes->show(static_cast<int>(mode));
    m_tools->setVisible(mode != BearingsMode::shells && mode != BearingsMode::warm);
    m_left->setCurrentIndex(mode == BearingsMode::warm ? 1 : 0);
    m_body->setCurrentIndex(mode == BearingsMode::shells ? 1 : 0);
    if (isPass(mode)) {
        m_right->setCurrentWidget(m_measure);
        m_measure->setMode(mode);
    } else if (mode == BearingsMode::fits) {
        m_right->setCurrentWidget(m_fits);
    } else if (mode == BearingsMode::warm) {
        m_right->setCurrentWidget(m_warm);
    }
    refresh();
    focusField();
    emit subjectChanged();
}

void BearingsStation::focusField() {
    if (isPass(m_mode)) {
        m_measure->focusField();
    } else if (m_mode == BearingsMode::fits) {
        m_fits->focusField();
    } else if (m_mode == BearingsMode::shells) {
        m_shells->focusField();
    } else {
        m_warm->focusField();
    }
}

void BearingsStation::refresh() {
    if (m_mode == BearingsMode::shells) {
        m_shells->refresh();
        return;
    }
    if (isPass(m_mode)) {
        m_measure->refresh();
    } else if (m_mode == BearingsMode::fits) {
        m_fits->refresh();
    } else {
        m_warm->refresh();
        return;
    }
    refreshDiagram();
    m_chart->setData(session().facts(), session().assessment(), session().units(), screenLook());
}

QString BearingsStation::subject() const {
    return session().facts().layout ? selectedPlace() : QString();
}

QString BearingsStation::selectedPlace() const {
    if (isPass(m_mode)) {
        return qtText(code(m_measure->slot().journal));
    }
    const FitId& fit = m_fits->id();
    return m_mode == BearingsMode::fits && fit.first == bands::rodSideClearance
               ? QStringLiteral("throw-%1").arg(fit.second)
               : QString();
}

void BearingsStation::refreshDiagram() {
    if (!session().facts().layout) {
        m_plan->setEmpty(tr("Set the engine layout at the engine station: the journals follow from it."));
        return;
    }
    PlanContent content = bearingsContent(session(), m_mode, m_measure->counts());
    content.selected = selectedPlace();
    m_plan->setContent(std::move(content));
}

void BearingsStation::placeChosen(const QString& place) {
    if (isPass(m_mode)) {
        if (const auto journal = parseJournal(coreText(place))) {
            m_measure->choose(*journal);
        }
    } else if (m_mode == BearingsMode::fits && place.startsWith(QLatin1String("throw-"))) {
        m_fits->choose({std::string(bands::rodSideClearance), place.mid(6).toInt()});
    }
    emit subjectChanged();
}

void BearingsStation::select(const QString& subject) {
    const Facts& facts = session().facts();
    const auto journal = parseJournal(coreText(subject));
    if (journal && facts.layout && facts.layout->has(*journal)) {
        const auto at = session().assessment().clearances.find(*journal);
        const bool wantsBore = at != session().assessment().clearances.end() && at->second.journalReadings > 0 &&
                               at->second.boreReadings == 0;
        setMode(wantsBore ? BearingsMode::bores : isPass(m_mode) ? m_mode : BearingsMode::journals);
        placeChosen(subject);
        m_plan->select(subject);
    } else if (subject == QLatin1String("shells")) {
        setMode(BearingsMode::shells);
    } else if (subject == QLatin1String("fits")) {
        setMode(BearingsMode::fits);
    } else if (const qsizetype colon = subject.lastIndexOf(QLatin1Char(':')); colon > 0) {
        setMode(BearingsMode::fits);
        m_fits->choose({coreText(subject.left(colon)), subject.mid(colon + 1).toLongLong()});
        m_plan->select(selectedPlace());
    } else {
        focusField();
    }
}

EntryField* BearingsStation::entryField() const {
    return isPass(m_mode) ? m_measure->field() : m_mode == BearingsMode::fits ? m_fits->field() : nullptr;
}

QString BearingsStation::help() const {
    return tr("Select a journal on the diagram and type its diameter; Enter stores it and goes to the "
              "next place: two stations along the journal, two directions around it. Then the bores, with "
              "the shells in and the caps at full torque. The clearance, its uncertainty and a verdict "
              "appear beside the diagram.");
}

std::vector<Caution> BearingsStation::cautions() const {
    return {Caution::stand, Caution::crank};
}

} // namespace caprail
