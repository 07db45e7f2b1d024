// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/bearings/fits.h>

#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <base/say.h>
#include <ledger/band_names.h>
#include <ledger/expectations.h>
#include <session/filled.h>
#include <stations/common/budget_window.h>
#include <stations/common/entries_model.h>
#include <stations/common/entries_table.h>
#include <stations/common/entry_field.h>
#include <stations/common/optional_field.h>
#include <stations/common/place_heading.h>
#include <stations/common/instrument_box.h>
#include <stations/common/station_text.h>
#include <stations/common/step_keys.h>
#include <stations/common/tab_order.h>

namespace caprail {

/// A fit: its band, the last reading, and how it stands.
struct FitRow {
    FitId fit;
    Band band;
    std::optional<Length> read;
    CheckState state = CheckState::notDone;
};

namespace {

const Check* fitCheck(const Assessment& assessment, const FitId& id) {
    return assessment.find("fit:" + id.first + ":" + std::to_string(id.second));
}

std::vector<TableColumn<FitRow>> fitColumns(const RecordSession& session) {
    const auto lengthUnit = [&session] { return QString::fromUtf8(symbol(session.units().length)); };
    return {{.title = BearingsFits::tr("Fit"), .text = [](const FitRow& row) { return fitName(row.fit); }},
            {.title = BearingsFits::tr("Band"),
             .text =
                 [&session](const FitRow& row) {
                     const Units& units = session.units();
                     return qtText(formatBare(row.band.lo(), units) + " – " + formatBare(row.band.hi(), units));
                 },
             .unit = lengthUnit,
             .value = [](const FitRow& row) { return valueOf(row.band.lo()); }},
            {.title = BearingsFits::tr("Read"),
             .text =
                 [&session](const FitRow& row) {
                     return row.read ? qtText(formatBare(*row.read, session.units())) : QString();
                 },
             .unit = lengthUnit,
             .value = [](const FitRow& row) { return valueOf(row.read); },
             .isFigure = true},
            {.title = BearingsFits::tr("State"),
             .text = [](const FitRow& row) { return sign(row.state) + QLatin1Char(' ') + stateWord(row.state); },
             .state = [](const FitRow& row) { return row.state; }}};
}

} // namespace

QString fitName(const FitId& id) {
    // A fit of the shop's own has the name that it was given; the others have a word in each language.
    const bool isCommon = id.first == bands::crankEndPlay || id.first == bands::rodSideClearance;
    const QString name = capitalised(qtText(isCommon ? Core::say(id.first) : id.first));
    return id.first == bands::rodSideClearance ? filled(BearingsFits::tr("%1, throw %2"), name, id.second)
           : id.first == bands::crankEndPlay   ? name
                                                  : filled(BearingsFits::tr("%1, place %2"), name, id.second);
}

std::vector<FitId> fitsAsked(const Facts& facts) {
    std::vector<FitId> ids;
    const auto add = [&](const std::string& name) {
        if (name == bands::rodSideClearance) {
            for (int number = 1; facts.layout && number <= facts.layout->throws(); ++number) {
                ids.emplace_back(name, number);
            }
            return;
        }
        std::int64_t last = 0;
        for (const auto& [id, readings] : facts.fits) {
            last = id.first == name ? std::max(last, id.second) : last;
        }
        const std::int64_t count = name == bands::crankEndPlay ? std::max<std::int64_t>(1, last) : last + 1;
        for (std::int64_t number = 1; number <= std::min<std::int64_t>(count, 99); ++number) {
            ids.emplace_back(name, number);
        }
    };
    for (const auto name : {bands::crankEndPlay, bands::rodSideClearance}) {
        if (facts.bandNamed(name) != nullptr) {
            add(std::string(name));
        }
    }
    for (const auto& [name, band] : facts.bands) {
        if (bands::isFit(name) && name != bands::crankEndPlay && name != bands::rodSideClearance) {
            add(name);
        }
    }
    return ids;
}

BearingsFits::BearingsFits(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_heading(new PlaceHeading(this)), m_field(new EntryField(this)),
      m_instrument(new InstrumentBox(
          session, {InstrumentType::feelerGauge, InstrumentType::dialIndicator, InstrumentType::depthGauge}, this)),
      m_temperature(OptionalField::partTemperature(m_field)),
      m_table(new Table<FitRow, FitId>(tr("Fits"), &FitRow::fit, fitColumns(session), this)),
      m_bands(new QPushButton(tr("&Bands, and fits of the shop's own…"), this)),
      m_entries(new EntriesTable(session, this)) {
    build();
    m_ids = fitsAsked(session.facts());
    if (!m_ids.empty()) {
        m_id = m_ids.front();
    }
}

void BearingsFits::build() {
    m_table->setStretched(0); // the state is seen whole; a long name is elided
    m_table->setObjectName(QStringLiteral("fits"));
    m_entries->setColumnHidden(EntriesModel::person, true);
    m_entries->setFilter([this](const Entry& entry) {
        const auto* fit = entry.body.as<FitReading>();
        return fit != nullptr && fit->fit == m_id.first && fit->place == m_id.second;
    });
    m_entries->setLine([this](const Entry& entry) {
        const auto& fit = entry.body.get<FitReading>();
        return qtText(format(fit.value.value, m_session.units())) +
               (fit.instrument.empty() ? QString() : QStringLiteral(" · ") + qtText(fit.instrument));
    });
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_bands->setAutoDefault(false);
    connect(m_bands, &QPushButton::clicked, this, [this] { m_session.goTo({Station::engine, "bands"}); });
    connect(m_table, &TableView::lineSelected, this, [this](int line) {
        const FitRow* row = m_table->at(line);
        if (row != nullptr && row->fit != m_id) {
            go(FitId(row->fit));
        }
    });
    connect(m_table, &TableView::lineActivated, this, &BearingsFits::focusField);
    connect(m_heading, &PlaceHeading::whyAsked, this, [this] {
        BudgetWindow::open(fitName(m_id).toLower(), fitBudgetOf(m_session.facts(), m_id), m_session, this);
    });
    m_field->readWith([this] { return m_instrument; });
    new StepKeys(m_field->lineEdit(), [this](int by) { step(by); });
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_heading);
    column->addWidget(m_field);
    column->addWidget(m_instrument);
    column->addWidget(m_temperature);
    column->addWidget(m_table, 3);
    column->addWidget(m_entries, 2);
    column->addWidget(m_bands);
    setFocusProxy(m_field);
    putProxyFirst(*this);
}

void BearingsFits::refresh() {
    const Facts& facts = m_session.facts();
    const Units& units = m_session.units();
    m_instrument->refresh();
    m_ids = fitsAsked(facts);
    if (std::ranges::find(m_ids, m_id) == m_ids.end() && !m_ids.empty()) {
        m_id = m_ids.front();
    }
    std::vector<FitRow> rows;
    for (const FitId& id : m_ids) {
        const Check* check = fitCheck(m_session.assessment(), id);
        const auto at = facts.fits.find(id);
        rows.push_back({id, facts.bandNamed(id.first)->band,
                        at == facts.fits.end() ? std::nullopt : std::optional(at->second.back().what.value.value),
                        check == nullptr ? CheckState::notDone : check->state});
    }
    m_table->put(std::move(rows));
    m_field->setEnabled(!m_ids.empty());
    m_entries->refresh();
    if (m_ids.empty()) {
        m_heading->show(tr("No fits yet"), {}, CheckState::notDone,
                        tr("A fit is read against a band: set that of the crank end play, the rod side clearance or a "
                           "fit of your own first."));
        return;
    }
    m_table->select(m_id);
    m_temperature->follow(fitName(m_id));
    const Check* check = fitCheck(m_session.assessment(), m_id);
    const auto at = facts.fits.find(m_id);
    m_heading->show(
        fitName(m_id),
        at == facts.fits.end() ? QStringLiteral("—") : qtText(format(at->second.back().what.value.value, units)),
        check == nullptr ? CheckState::notDone : check->state,
        check == nullptr ? tr("Not read.") : qtText(check->sentence) + QLatin1Char(' ') + qtText(check->remedy));
    m_heading->setAskable(at != facts.fits.end());
    m_field->askLength(fitName(m_id), units,
                       expectedLength(FitReading::kind, "value", "the " + fitName(m_id).toLower().toStdString()),
                       [this](const Entered<Length>& value) { return store(value); });
}

Result<void> BearingsFits::store(const Entered<Length>& value) {
    const FitId here = m_id;
    FitReading reading{here.first, here.second, value, m_instrument->instrument()};
    if (auto read = m_temperature->read(reading.partTemperature, m_session.units(), FitReading::kind, "part_temperature");
        !read) {
        return read;
    }
    const auto stored = m_session.append(std::move(reading));
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    // On to the next of the list that was not read; where all below were, stay.
    FitId next = here;
    for (int line = m_table->lineOf(here); const FitRow* row = m_table->at(line); ++line) {
        if (!m_session.facts().fits.contains(row->fit)) {
            next = row->fit;
            break;
        }
    }
    go(next);
    return {};
}

void BearingsFits::go(const FitId& id) {
    m_id = id;
    refresh();
    emit chosen(id);
}

void BearingsFits::choose(const FitId& id) {
    if (std::ranges::find(m_ids, id) != m_ids.end()) {
        m_id = id;
        refresh();
    }
}

void BearingsFits::step(int by) {
    const int count = static_cast<int>(m_table->rows().size());
    if (count > 0) {
        go(FitId(m_table->at((m_table->lineOf(m_id) + by + count) % count)->fit));
    }
}

void BearingsFits::focusField() {
    m_field->setFocus();
}

void BearingsFits::type(const QString& text) {
    m_field->type(text);
}

} // namespace caprail
