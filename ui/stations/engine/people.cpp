// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/engine/people.h>

#include <QDateTime>
#include <QFrame>
#include <QHBoxLayout>
#include <QPushButton>
#include <assessment/feel_study.h>
#include <assessment/specified.h>
#include <session/look.h>
#include <stations/common/wrench_words.h>

namespace caprail {

/// A person, and until when their feel stands.
struct PersonRow {
    PersonAdded what;
    QString feelDue; ///< empty: it was never tried
};

/// An instrument as it is known now, and what is to be said of its calibration today.
struct InstrumentRow {
    InstrumentAdded what;
    QString remark;   ///< empty: none
    QString notKnown; ///< what was never said of it; empty: nothing
};

namespace {

std::vector<FormField> zeroFields() {
    return {{"instrument", EnginePeople::tr("Instrument"), EnginePeople::tr("MIC-1"), {}},
            {"standard", EnginePeople::tr("Standard"), EnginePeople::tr("setting rod no. 4"), {}},
            {"nominal", EnginePeople::tr("It is"), EnginePeople::tr("0 for closed anvils"), {}},
            {"reading", EnginePeople::tr("Reading"), {}, {}},
            {"temperature", EnginePeople::tr("Temperature"), EnginePeople::tr("may be left empty"), {}}};
}

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

std::vector<TableColumn<PersonRow>> peopleColumns() {
    return {{.title = EnginePeople::tr("Name"), .text = [](const PersonRow& row) { return qtText(row.what.name); }},
            {.title = EnginePeople::tr("Role"), .text = [](const PersonRow& row) { return qtText(row.what.role); }},
            {.title = EnginePeople::tr("Feel, due"), .text = [](const PersonRow& row) { return row.feelDue; }}};
}

std::vector<TableColumn<InstrumentRow>> instrumentColumns(const RecordSession& session) {
    const auto day = [&session](const QString& title, std::optional<Date> (*date)(const InstrumentAdded&)) {
        return TableColumn<InstrumentRow>{
            .title = title,
            .text =
                [&session, date](const InstrumentRow& row) {
                    const auto at = date(row.what);
                    return at ? fieldText(*at, session.units()) : QString();
                },
            .value = [date](const InstrumentRow& row) {
                const auto at = date(row.what);
                return at ? valueOf(at->days) : SortValue();
            }};
    };
    return {{.title = EnginePeople::tr("Name"),
             .text = [](const InstrumentRow& row) { return qtText(row.what.instrument); }},
            {.title = EnginePeople::tr("Kind"),
             .text = [](const InstrumentRow& row) { return qtShown(row.what.type); }},
            {.title = EnginePeople::tr("Error / range"),
             .text =
                 [&session](const InstrumentRow& row) {
                     const auto& error = row.what.limitOfError;
                     return error ? QStringLiteral("± ") + exactText(error->value, session.units())
                                  : rangeText(row.what, session.units());
                 },
             .value =
                 [](const InstrumentRow& row) {
                     return row.what.limitOfError ? valueOf(row.what.limitOfError->value) : SortValue();
                 }},
            day(EnginePeople::tr("Calibrated"),
                [](const InstrumentAdded& i) -> std::optional<Date> { return i.calibrated; }),
            day(EnginePeople::tr("Due"), &dueOf),
            {.title = EnginePeople::tr("Today"),
             .text =
                 [](const InstrumentRow& row) {
                     return !row.remark.isEmpty()    ? QStringLiteral("⚑ ") + row.remark
                            : row.notKnown.isEmpty() ? EnginePeople::tr("✓ no remark")
                                                     : QStringLiteral("? ") + row.notKnown;
                 },
             .ink =
                 [](const InstrumentRow& row, const Look& look) {
                     return !row.remark.isEmpty() ? look.close : row.notKnown.isEmpty() ? QColor() : look.quiet;
                 }}};
}

} // namespace

EnginePeople::EnginePeople(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_people(new Table<PersonRow, std::string>(
          tr("People"), [](const PersonRow& row) { return row.what.name; }, peopleColumns(), this)),
      m_person(new FormFor<PersonAdded>(
          session, tr("A person"), tr("Store pe&rson"),
          {{"name", tr("Name"), {}, {}}, {"role", tr("Role"), {}, {tr("assembler"), tr("machinist"), tr("checker")}}},
          1, this)),
      m_instruments(new Table<InstrumentRow, std::string>(
          tr("Instruments"), [](const InstrumentRow& row) { return row.what.instrument; }, instrumentColumns(session),
          this)),
      m_instrument(new FormFor<InstrumentAdded>(session, tr("An instrument, or a new calibration of one"),
                                                tr("Store &instrument"), instrumentFields(), 2, this)),
      m_zero(new FormFor<ZeroChecked>(session, tr("A zero check, on the standard"), tr("Store &zero check"),
                                      zeroFields(), 1, this)) {
    m_zero->setObjectName(QStringLiteral("zeroForm"));
    m_instrument->setObjectName(QStringLiteral("instrumentForm"));
    auto* left = new QVBoxLayout;
    left->addWidget(m_people, 1);
    left->addWidget(m_person);
    left->addWidget(m_zero);
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

    connect(m_people, &TableView::lineSelected, this, [this](int at) {
        if (const PersonRow* person = m_people->at(at)) {
            m_person->load(person->what);
        }
    });
    connect(m_people, &TableView::lineActivated, this, [this] { m_person->focusField("role"); });
    connect(m_person, &EntryForm::reverted, this, [this] {
        const PersonRow* person = m_people->selected();
        m_person->load(person == nullptr ? PersonAdded{} : person->what);
    });
    connect(m_person, &EntryForm::saved, this, [this] {
        m_people->clearSelection();
        m_person->load(PersonAdded{});
        m_person->focusField("name");
    });
    connect(m_instruments, &TableView::lineSelected, this, [this](int at) {
        if (at >= 0) {
            showInstrument();
        }
    });
    connect(m_zero, &EntryForm::reverted, this, &EnginePeople::showZero);
    connect(m_instruments, &TableView::lineActivated, this, [this] { m_instrument->focusField("calibrated"); });
    connect(m_instrument, &EntryForm::reverted, this, &EnginePeople::showInstrument);
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
    const auto feels = feelStandings(facts);
    std::vector<PersonRow> people;
    for (const auto& [name, person] : facts.people) {
        people.push_back({person, feelDue(feels, name)});
    }
    m_people->put(std::move(people));

    std::vector<InstrumentRow> rows;
    for (const auto& [name, seen] : facts.instruments) {
        rows.push_back(
            {seen.latest(), calibrationRemark(facts, seen.latest(), today()), whatIsNotKnown(seen.latest())});
    }
    m_instruments->put(std::move(rows));
    showInstrument();
}

void EnginePeople::selectInstrument(const QString& name) {
    m_instruments->select(coreText(name));
    m_instrument->focusField("calibrated");
}

void EnginePeople::showInstrument() {
    const InstrumentRow* row = m_instruments->selected();
    InstrumentAdded latest = row == nullptr ? InstrumentAdded{} : row->what;
    latest.corrects.reset(); // of the statement before; a new one corrects only what it says itself
    m_instrument->load(latest);
    showZero();
}

void EnginePeople::showZero() {
    const InstrumentRow* row = m_instruments->selected();
    ZeroChecked check;
    check.instrument = row == nullptr ? std::string() : row->what.instrument;
    m_zero->load(check);
    m_zero->clearField("nominal");
    m_zero->clearField("reading");
}

} // namespace caprail
