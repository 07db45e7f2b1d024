// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/bearings/measure.h>

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <algorithm>
#include <ledger/expectations.h>
#include <stations/common/budget_window.h>
#include <stations/common/entries_model.h>
#include <stations/common/entries_table.h>
#include <stations/common/entry_field.h>
#include <stations/common/instrument_box.h>
#include <stations/common/optional_field.h>
#include <stations/common/place_heading.h>
#include <stations/common/station_text.h>
#include <stations/common/step_keys.h>
#include <stations/common/tab_order.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

BearingsMeasure::BearingsMeasure(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_heading(new PlaceHeading(this)), m_field(new EntryField(this)),
      m_stations(new QSpinBox(this)),
      m_directions(new QSpinBox(this)), m_instruments{new InstrumentBox(session, {InstrumentType::micrometer}, this),
                                                      new InstrumentBox(session, {InstrumentType::boreGauge}, this),
                                                      new InstrumentBox(session, {InstrumentType::gaugingStrip}, this)},
      m_temperature(OptionalField::partTemperature(m_field)),
      m_places(new Label(this)), m_results(new Label(this)), m_next(new Label(this)),
      m_crank(new QPushButton(tr("&Crank changed"), this)), m_shells(new QPushButton(this)), m_laidIn(new QPushButton(this)),
      m_entries(new EntriesTable(session, this)) {
    build();
    const auto order = bearingSlots(session.facts(), m_mode, counts());
    if (!order.empty()) {
        m_slot =
            nextOpenSlot(session.facts(), session.assessment(), m_mode, order, order.front()).value_or(order.front());
    }
}

void BearingsMeasure::build() {
    m_crank->setObjectName(QStringLiteral("crank"));
    m_shells->setObjectName(QStringLiteral("shells"));
    m_stations->setRange(1, 9);
    m_stations->setValue(2);
    m_stations->setSuffix(tr(" stations"));
    m_stations->setAccessibleName(tr("Stations along the journal"));
    m_directions->setRange(1, 4);
    m_directions->setValue(2);
    m_directions->setSuffix(tr(" directions"));
    m_directions->setAccessibleName(tr("Directions around the journal"));
    for (Label* label : {m_places, m_results}) {
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
        label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    }
    m_results->setWordWrap(true);
    m_places->setSubject(tr("Readings of this journal"));
    m_results->setSubject(tr("What they come to"));
    m_next->setForegroundRole(QPalette::PlaceholderText);
    m_next->setWordWrap(true);
    setTip(m_crank, tr("Another crank, or it was worked on: its journals are measured again"));
    setTip(m_shells, tr("Other shells lie in this bearing: its bore is measured again"));
    m_crank->setAutoDefault(false);
    m_laidIn->setAutoDefault(false);
    m_laidIn->setObjectName(QStringLiteral("crank-laid-in"));
    setTip(m_laidIn, tr("Bores and journals are measured before, gaps and all else after"));
    m_shells->setAutoDefault(false);
    m_entries->setMinimumHeight(3 * m_entries->fontMetrics().height()); // the words above come first
    m_entries->setColumnHidden(EntriesModel::person, true);
    m_entries->setFilter([this](const Entry& entry) {
        const auto* journal = entry.body.as<JournalReading>();
        const auto* bore = entry.body.as<BoreReading>();
        const auto* shells = entry.body.as<ShellsFitted>();
        return (journal != nullptr && journal->journal == m_slot.journal) ||
               (bore != nullptr && bore->journal == m_slot.journal) ||
               (shells != nullptr && shells->journal == m_slot.journal);
    });
    m_entries->setLine([this](const Entry& entry) { return bearingLine(entry, m_session.units()); });
    connect(m_heading, &PlaceHeading::whyAsked, this, [this] {
        BudgetWindow::open(tr("clearance at %1").arg(qtText(describe(m_slot.journal))),
                           clearanceBudgetOf(m_session.facts(), m_slot.journal), m_session, this);
    });
    m_field->readWith([this] { return instrument(); });
    new StepKeys(m_field->lineEdit(), [this](int by) { step(by); });
    for (QSpinBox* box : {m_stations, m_directions}) {
        connect(box, &QSpinBox::valueChanged, this, [this] {
            choose(m_slot.journal);
            emit chosen(m_slot.journal);
        });
    }
    connect(m_crank, &QPushButton::clicked, this, [this] {
        m_session.appendAndSay(PartChanged{Part::crank, {}, {}});
        focusField();
    });
    connect(m_laidIn, &QPushButton::clicked, this, [this] {
        m_session.appendAndSay(CrankLaidIn{!m_session.facts().isCrankIn(), {}});
        focusField();
    });
    connect(m_shells, &QPushButton::clicked, this, [this] {
        m_session.appendAndSay(PartChanged{Part::shells, code(m_slot.journal), {}});
        focusField();
    });

    auto* settings = new QHBoxLayout;
    for (InstrumentBox* box : m_instruments) {
        settings->addWidget(box, 1);
    }
    settings->addWidget(m_stations);
    settings->addWidget(m_directions);
    auto* parts = new QGridLayout; // in two rows: in other languages they are longer
    parts->addWidget(m_laidIn, 0, 0);
    parts->addWidget(m_crank, 0, 1);
    parts->addWidget(m_shells, 1, 0, 1, 2);
    parts->setColumnStretch(1, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_heading);
    column->addWidget(m_field);
    column->addLayout(settings);
    column->addWidget(m_temperature);
    column->addWidget(m_places);
    column->addWidget(m_next);
    column->addWidget(m_results);
    column->addWidget(m_entries, 1);
    column->addLayout(parts);
    setFocusProxy(m_field);
    putProxyFirst(*this);
}

SlotCounts BearingsMeasure::counts() const {
    return {m_stations->value(), m_directions->value()};
}

InstrumentBox* BearingsMeasure::instrument() const {
    return m_instruments[m_mode == BearingsMode::journals ? 0 : m_mode == BearingsMode::strip ? 2 : 1];
}

void BearingsMeasure::setMode(BearingsMode mode) {
    m_mode = mode;
    const auto order = bearingSlots(m_session.facts(), mode, counts());
    if (std::ranges::find(order, m_slot) == order.end() ||
        currentAt(m_session.facts(), m_session.assessment(), mode, m_slot)) {
        choose(m_slot.journal);
    }
}

void BearingsMeasure::refresh() {
    const Facts& facts = m_session.facts();
    m_laidIn->setText(facts.isCrankIn() ? tr("Crank lifted &out") : tr("Crank laid &in, caps at torque"));
    for (InstrumentBox* box : m_instruments) {
        box->refresh();
        box->setVisible(box == instrument());
    }
    m_temperature->follow(qtText(code(m_slot.journal)) + QString::number(static_cast<int>(m_mode)));
    m_stations->setVisible(m_mode != BearingsMode::strip);
    m_directions->setVisible(m_mode == BearingsMode::journals);
    m_shells->setText(tr("She&lls changed in %1").arg(qtText(describe(m_slot.journal))));
    m_entries->refresh();
    const bool hasPlaces = facts.layout.has_value();
    for (QWidget* each : std::initializer_list<QWidget*>{m_field, m_crank, m_shells}) {
        each->setEnabled(hasPlaces);
    }
    if (!hasPlaces) {
        m_heading->show(tr("No layout"), {}, CheckState::notDone,
                        tr("The journals follow from the engine layout: set it at the engine station."));
        return;
    }
    const auto here = currentAt(facts, m_session.assessment(), m_mode, m_slot);
    const auto at = m_session.assessment().clearances.find(m_slot.journal);
    const bool hasClearance = at != m_session.assessment().clearances.end() && at->second.clearance;
    const Check* check = clearanceCheckOf(m_session.assessment(), m_slot.journal);
    m_heading->show(capitalised(qtText(describe(m_slot.journal))),
                    hasClearance ? qtText(format(*at->second.clearance, m_session.units()))
                    : here       ? qtText(format(here->value, m_session.units()))
                                 : QStringLiteral("—"),
                    check == nullptr ? CheckState::notDone : check->state,
                    check == nullptr
                        ? tr("No band is set for its clearance.")
                        : qtText(check->sentence) + (check->remedy.empty() ? QString() : QStringLiteral(" ")) +
                              qtText(check->remedy));
    m_heading->setAskable(hasClearance);
    m_places->setTable(slotTable(m_session, m_mode, m_slot, counts()), 2);
    if (const auto table = clearanceTable(m_session, m_slot.journal); !table.empty()) {
        m_results->setTable(table, 1);
    } else {
        m_results->setText(noBandSentence());
    }
    const auto order = bearingSlots(facts, m_mode, counts());
    const auto open = std::ranges::count_if(
        order, [&](const BearingSlot& slot) { return !currentAt(facts, m_session.assessment(), m_mode, slot); });
    m_next->setText(open == 0
                        ? tr("Every place of this pass is read.")
                        : tr("%1 of %2 places still to read. ↑ ↓ step through them.").arg(open).arg(order.size()));
    if (m_mode == BearingsMode::bores || m_mode == BearingsMode::housings) {
        m_next->setText(m_next->text() + QLatin1Char(' ') + tr("Measured square to the parting line."));
    }
    askForValue();
}

void BearingsMeasure::askForValue() {
    const std::string journal = describe(m_slot.journal);
    const QString place = slotName(m_mode, m_slot, counts());
    Expected<Length> expected;
    QString title;
    switch (m_mode) {
    case BearingsMode::journals:
        expected = expectedLength(JournalReading::kind, "diameter", "the diameter of journal " + journal);
        title = tr("Journal %1, %2");
        break;
    case BearingsMode::strip:
        expected = {"the clearance at " + journal, thou(0.2), thou(20)};
        title = tr("Clearance at %1, %2");
        break;
    case BearingsMode::housings:
        expected = {"the housing bore of " + journal, inches(0.75), inches(9)};
        title = tr("Housing of %1, %2");
        break;
    default:
        expected = {"the bore of " + journal, inches(0.75), inches(9)};
        title = tr("Bore of %1 with shells, %2");
        break;
    }
    m_field->askLength(title.arg(qtText(journal), place), m_session.units(), expected,
                       [this](const Entered<Length>& value) { return store(value); });
}

Result<Body> BearingsMeasure::entryOf(const Entered<Length>& value) const {
    const std::string with = instrument()->instrument();
    const auto at = [this](auto reading) -> Result<Body> {
        using Reading = decltype(reading);
        auto read = m_temperature->read(reading.partTemperature, m_session.units(), Reading::kind, "part_temperature");
        return read ? Result<Body>(Body(std::move(reading))) : tl::unexpected(read.error());
    };
    return m_mode == BearingsMode::journals
               ? at(JournalReading{m_slot.journal, m_slot.station, m_slot.direction, value, with})
               : at(BoreReading{m_slot.journal, methodOf(m_mode), m_slot.station, value, with});
}

Result<void> BearingsMeasure::store(const Entered<Length>& value) {
    const BearingSlot here = m_slot;
    auto entry = entryOf(value);
    if (!entry) {
        return tl::unexpected(entry.error());
    }
    const auto stored = m_session.append(std::move(*entry));
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    const auto order = bearingSlots(m_session.facts(), m_mode, counts());
    go(nextOpenSlot(m_session.facts(), m_session.assessment(), m_mode, order, here).value_or(here));
    return {};
}

void BearingsMeasure::go(const BearingSlot& slot) {
    m_slot = slot;
    refresh();
    emit chosen(slot.journal);
}

void BearingsMeasure::step(int by) {
    const auto order = bearingSlots(m_session.facts(), m_mode, counts());
    if (order.empty()) {
        return;
    }
    const auto at = std::ranges::find(order, m_slot);
    const auto count = static_cast<std::ptrdiff_t>(order.size());
    const std::ptrdiff_t here = at == order.end() ? 0 : at - order.begin();
    go(order[static_cast<std::size_t>((here + by + count) % count)]);
}

void BearingsMeasure::choose(JournalId journal) {
    const Facts& facts = m_session.facts();
    m_slot = {journal, 1, 1};
    for (const BearingSlot& slot : bearingSlots(facts, m_mode, counts())) {
        if (slot.journal == journal && !currentAt(facts, m_session.assessment(), m_mode, slot)) {
            m_slot = slot;
            break;
        }
    }
    refresh();
}

void BearingsMeasure::focusField() {
    m_field->setFocus();
}

void BearingsMeasure::type(const QString& text) {
    m_field->type(text);
}

} // namespace caprail
