// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/engine/station.h>

#include <QTabWidget>
#include <QVBoxLayout>
#include <stations/common/view_switches.h>
#include <stations/engine/bands.h>
#include <stations/engine/layout.h>
#include <stations/engine/own_checks.h>
#include <stations/engine/parts.h>
#include <stations/engine/people.h>
#include <stations/engine/values.h>
#include <text/tab_order.h>

namespace caprail {

EngineStation::EngineStation(RecordSession& given, QWidget* parent)
    : StationPanel(given, parent), m_tabs(new QTabWidget(this)), m_layout(new EngineLayoutPage(given, this)),
      m_bands(new EngineBands(given, this)), m_people(new EnginePeople(given, this)),
      m_ownChecks(new EngineOwnChecks(given, this)), m_values(new EngineValues(given, this)),
      m_parts(new EngineParts(given, this)) {
    m_tabs->setDocumentMode(true);
    m_tabs->setAccessibleName(tr("Engine"));
    m_tabs->addTab(m_layout, tr("Engine and layout"));
    m_tabs->addTab(m_bands, tr("Bands and rules"));
    m_tabs->addTab(m_people, tr("People and instruments"));
    m_tabs->addTab(m_ownChecks, tr("Own checks"));
    m_tabs->addTab(m_values, tr("Whose figures"));
    m_tabs->addTab(m_parts, tr("Parts"));
    giveDigits(*m_tabs);
    for (int page = 0; page < m_tabs->count(); ++page) {
        orderAsRead(*m_tabs->widget(page));
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_tabs);
}

void EngineStation::refresh() {
    m_layout->refresh();
    m_bands->refresh();
    m_people->refresh();
    m_ownChecks->refresh();
    m_values->refresh();
    m_parts->refresh();
}

void EngineStation::select(const QString& subject) {
    const Facts& facts = session().facts();
    if (subject == QLatin1String("engine")) {
        m_tabs->setCurrentWidget(m_layout);
        m_layout->engineForm()->focusField("engine");
    } else if (subject == QLatin1String("layout")) {
        m_tabs->setCurrentWidget(m_layout);
        m_layout->layoutForm()->focusField("caps");
    } else if (subject == QLatin1String("bands") || subject == QLatin1String("rules") ||
               facts.bandNamed(coreText(subject)) != nullptr) {
        m_tabs->setCurrentWidget(m_bands);
        if (subject == QLatin1String("rules")) {
            m_bands->rulesForm()->focusField("decision");
        } else if (subject != QLatin1String("bands")) {
            m_bands->selectBand(subject);
        }
    } else if (subject == QLatin1String("people")) {
        m_tabs->setCurrentWidget(m_people);
        m_people->personForm()->focusField("name");
    } else if (subject == QLatin1String("values")) {
        m_tabs->setCurrentWidget(m_values);
        m_values->selectOpen();
    } else if (subject == QLatin1String("parts")) {
        m_tabs->setCurrentWidget(m_parts);
        m_parts->selectFirst();
    } else if (subject == QLatin1String("zero checks")) {
        m_tabs->setCurrentWidget(m_people);
        m_people->zeroForm()->focusField("instrument");
    } else if (subject == QLatin1String("own checks") || facts.ownCheckNamed(coreText(subject)) != nullptr) {
        m_tabs->setCurrentWidget(m_ownChecks);
        m_ownChecks->selectCheck(subject == QLatin1String("own checks") ? QString() : subject);
    } else if (subject == QLatin1String("instruments") || facts.instruments.contains(coreText(subject))) {
        m_tabs->setCurrentWidget(m_people);
        m_people->selectInstrument(subject);
    }
}

QString EngineStation::help() const {
    return tr("Whose engine this is, where its caps and fasteners lie, the bands that it is judged by, the people who "
              "work on it and their instruments, whose figures the values are, and the parts. All of these are entries: changing a band in mid-build makes earlier "
              "results stale.");
}

std::vector<Caution> EngineStation::cautions() const {
    return {Caution::precedence};
}

} // namespace caprail
