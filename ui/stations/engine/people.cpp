// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/engine/people.h>

#include <QFrame>
#include <QHBoxLayout>
#include <QDateTime>
#include <QPushButton>
#include <assessment/feel_study.h>
#include <session/look.h>
#include <stations/common/plain_table.h>
#include <stations/common/wrench_words.h>

namespace caprail {

namespace {

std::vector<FormField> instrumentFields() {
    return {{"instrument", EnginePeople::tr("Name"), EnginePeople::tr("without spaces: MIC-1"), {}},
            {"type", EnginePeople::tr("Kind"), {}, {}},
            {"maker", EnginePeople::tr("Maker"), {}, {}},
            {"serial", EnginePeople::tr("Serial"), {}, {}},
            {"limit_of_error", EnginePeople::tr("Limit of error ±"), EnginePeople::tr("gauges: half-width"), {}},
            {"step", EnginePeople::tr("Smallest step"), EnginePeople::tr("that it is read to"), {}},
            {"set_with", EnginePeople::tr("Set with"), EnginePeople::tr("bore gauges: the micrometer"), {}},
            {"corrects", EnginePeople::tr("Corrects"), EnginePeople::tr("empty: it holds from now on"), {}},
            {"calibrated", EnginePeople::tr("Calibrated on"), EnginePeople::tr("2026-05-04"), {}},
            {"smallest_torque", EnginePeople::tr("Wrench from"), EnginePeople::tr("empty: 20 % of the largest"), {}},
            {"due", EnginePeople::tr("Due on"), EnginePeople::tr("wrenches, empty: a year later"), {}},
            {"largest_torque", EnginePeople::tr("Wrench up to"), {}, {}},
            {"due_cycles", EnginePeople::tr("Due after pulls"), EnginePeople::tr("wrenches, empty: 5000"), {}},
            {"cycles", EnginePeople::tr("Pulls before now"), EnginePeople::tr("since the calibration"), {}}};
}

/// The day until which a person's feel stands, of several straightedges the first to be due; empty: it was never tried.
QString feelDue(const std::vector<FeelStanding>& feels, const std::string& person) {
    std::optional<Date> first;
    bool stands = true;
    for (const FeelStanding& one : feels) {
        if (const auto due = one.due(); due && one.person == person) {
            first = std::min(first.value_or(*due), *due);
            stands = stands && one.stands({QDateTime::currentMSecsSinceEpoch()});
        }
    }
    return !first ? QString() : (stands ? QString() : QStringLiteral("⚑ ")) + qtText(format(*first));
}

} // namespace

EnginePeople::EnginePeople(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_people(new PlainTable(tr("People"), {tr("Name"), tr("Role"), tr("Feel, due")}, this)),
      m_person(new FormFor<PersonAdded>(
          session, tr("A person"), tr("Store &person"),
          {{"name", tr("Name"), {}, {}}, {"role", tr("Role"), {}, {tr("assembler"), tr("machinist"), tr("checker")}}},
          1, this)),
      m_instruments(new PlainTable(
          tr("Instruments"), {tr("Name"), tr("Kind"), tr("Error / range"), tr("Calibrated"), tr("Due"), tr("Today")},
          this)),
      m_instrument(new FormFor<InstrumentAdded>(session, tr("An instrument, or a new calibration of one"),
                                                tr("Store &instrument"), instrumentFields(), 2, this)) {
    auto* left = new QVBoxLayout;
    left->addWidget(m_people, 1);
    left->addWidget(m_person);
    auto* line = new QFrame(this);
    line->setFrameShape(QFrame::VLine);
    line->setFrameShadow(QFrame::Plain);
    line->setForegroundRole(QPalette::Mid);
    auto* fresh = new QPushButton(tr("Ne&w instrument"), this);
    fresh->setAutoDefault(false);
    auto* right = new QVBoxLayout;
    right->addWidget(m_instruments, 1);
    right->addWidget(fresh, 0, Qt::AlignLeft);
    right->addWidget(m_instrument);
    auto* row = new QHBoxLayout(this);
    row->addLayout(left, 2);
    row->addWidget(line);
    row->addLayout(right, 5);

    connect(m_people, &PlainTable::keySelected, this, [this](const QString& name) {
        const auto at = m_session.facts().people.find(coreText(name));
        if (at != m_session.facts().people.end()) {
            m_person->load(at->second);
        }
    });
    connect(m_people, &PlainTable::keyActivated, this, [this] { m_person->focusField("role"); });
    connect(m_person, &EntryForm::saved, this, [this] {
        m_person->load(PersonAdded{});
        m_people->clearSelection();
        m_person->focusField("name");
    });
    connect(m_instruments, &PlainTable::keySelected, this, &EnginePeople::showInstrument);
    connect(m_instruments, &PlainTable::keyActivated, this, [this] { m_instrument->focusField("calibrated"); });
    connect(m_instrument, &EntryForm::reverted, this, [this] { showInstrument(m_instruments->selectedKey()); });
    connect(fresh, &QPushButton::clicked, this, [this] {
        m_instruments->clearSelection();
        m_instrument->putBack();
        m_instrument->load(InstrumentAdded{});
        m_instrument->focusField("instrument");
    });
    refresh();
}

void EnginePeople::refresh() {
    const Facts& facts = m_session.facts();
    const std::vector<FeelStanding> feels = feelStandings(facts);
    std::vector<QStringList> people;
    for (const auto& [name, person] : facts.people) {
        people.push_back({qtText(name), qtText(person.role), feelDue(feels, name)});
    }
    m_people->show(people);

    std::vector<QStringList> rows;
    for (const auto& [name, seen] : facts.instruments) {
        const InstrumentAdded& i = seen.latest();
        const QString error = i.limitOfError
                                  ? QStringLiteral("± ") + exactText(i.limitOfError->value, m_session.units())
                                  : rangeText(i, m_session.units());
        const QString remark = calibrationRemark(facts, i, today());
        rows.push_back({qtText(name), qtShown(i.type), error, fieldText(i.calibrated, m_session.units()),
                        fieldText(i.due, m_session.units()),
                        remark.isEmpty() ? tr("✓ no remark") : QStringLiteral("⚑ ") + remark});
    }
    m_instruments->show(rows);
    for (int row = 0; row < m_instruments->rowCount(); ++row) {
        if (m_instruments->item(row, 5)->text().startsWith(QStringLiteral("⚑"))) {
            m_instruments->item(row, 5)->setForeground(screenLook().close);
        }
    }
    showInstrument(m_instruments->selectedKey());
}

void EnginePeople::selectInstrument(const QString& name) {
    m_instruments->selectKey(name);
    m_instrument->focusField("calibrated");
}

void EnginePeople::showInstrument(const QString& name) {
    const auto at = m_session.facts().instruments.find(coreText(name));
    InstrumentAdded latest = at == m_session.facts().instruments.end() ? InstrumentAdded{} : at->second.latest();
    latest.corrects.reset(); // of the statement before; a new one corrects only what it says itself
    m_instrument->load(latest);
}

} // namespace caprail
