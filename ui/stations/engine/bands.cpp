// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/engine/bands.h>

#include <QComboBox>
#include <QFrame>
#include <QHBoxLayout>
#include <QPushButton>
#include <algorithm>
#include <bearings/clearance.h>
#include <ledger/band_names.h>
#include <text/label.h>

namespace caprail {

/// A band by its name, and what the latest entry says of it; nothing while none does.
struct BandRow {
    std::string name;
    std::optional<BandSet> set;
};

namespace {

/// In the order in which they come up in a build.
constexpr std::string_view ownBands[] = {bands::mainClearance,    bands::rodClearance, bands::crankEndPlay,
                                         bands::rodSideClearance, bands::residual,     bands::twist,
                                         bands::pickupClearance};

QStringList knownNames() {
    QStringList names;
    for (const auto name : ownBands) {
        names << qtText(name);
    }
    return names << EngineBands::tr("piston to bore") << EngineBands::tr("ring gap") << EngineBands::tr("deck height");
}

std::vector<FormField> bandFields() {
    return {
        {"band", EngineBands::tr("Band"), EngineBands::tr("choose, or name a fit of your own"), knownNames()},
        {"lo", EngineBands::tr("From"), {}, {}},
        {"hi", EngineBands::tr("To"), {}, {}},
        {"target", EngineBands::tr("Target"), EngineBands::tr("may be left empty"), {}},
        {"source", EngineBands::tr("Who says so"), EngineBands::tr("part maker's sheet, person, common practice"), {}}};
}

std::vector<FormField> rulesFields() {
    return {{"decision", EngineBands::tr("Verdict"), {}, {}},
            {"coverage", EngineBands::tr("Coverage"), {}, {}},
            {"repeat_limit", EngineBands::tr("Repeat limit"), {}, {}},
            {"minimum_passes", EngineBands::tr("Passes, at least"), {}, {}},
            {"kit_tolerance", EngineBands::tr("Kit tolerance"), {}, {}},
            {"largest_stack", EngineBands::tr("Shims per stack, at most"), {}, {}},
            {"objective", EngineBands::tr("Plan aims for"), {}, {}},
            {"torque_scatter_percent", EngineBands::tr("Torque scatter, %"), {}, {}},
            {"counterweight_minimum", EngineBands::tr("Counterweight clear by"), {}, {}},
            {"second_person_verifies", EngineBands::tr("A second person verifies"), {}, {}},
            {"second_person_signs", EngineBands::tr("A second person signs off"), {}, {}},
            {"pickup_tube_minimum", EngineBands::tr("Pickup tube clear by"),
             EngineBands::tr("empty: 0.100 in, common practice"), {}},
            {"dipstick_minimum", EngineBands::tr("Dipstick clear by"),
             EngineBands::tr("empty: 0.060 in, common practice"), {}},
            {"turning_rise", EngineBands::tr("Turning torque up by, at most"),
             EngineBands::tr("empty: 2 lbf·ft, common practice"), {}},
            {"source", EngineBands::tr("Who says so"), {}, {}}};
}

std::vector<TableColumn<BandRow>> bandColumns(const RecordSession& session) {
    const auto length = [&session](const QString& title, auto lengthOf, const QString& missing) {
        return TableColumn<BandRow>{.title = title,
                               .text =
                                   [&session, lengthOf, missing](const BandRow& row) {
                                       const std::optional<Length> value = row.set ? lengthOf(*row.set) : std::nullopt;
                                       return value     ? exactText(*value, session.units())
                                              : row.set ? QString()
                                                        : missing;
                                   },
                               .value =
                                   [lengthOf](const BandRow& row) {
                                       return row.set ? valueOf(lengthOf(*row.set)) : SortValue();
                                   },
                               .isFigure = true};
    };
    return {{.title = EngineBands::tr("Band"), .text = [](const BandRow& row) { return qtText(row.name); }},
            length(EngineBands::tr("From"), [](const BandSet& set) { return std::optional(set.lo.value); },
                   EngineBands::tr("not set")),
            length(EngineBands::tr("To"), [](const BandSet& set) { return std::optional(set.hi.value); }, {}),
            length(
                EngineBands::tr("Target"),
                [](const BandSet& set) { return set.target ? std::optional(set.target->value) : std::nullopt; }, {}),
            {.title = EngineBands::tr("Who says so"), .text = [](const BandRow& row) {
                 return row.set ? qtText(row.set->source) : QString();
             }}};
}

/// Mean of all diameters read on journals of one kind.
std::optional<Length> meanJournal(const Facts& facts, JournalKind kind) {
    std::int64_t sum = 0, count = 0;
    for (const auto& [journal, readings] : facts.journals) {
        for (const auto& reading : readings) {
            if (journal.kind == kind) {
                sum += reading.what.diameter.value.value();
                ++count;
            }
        }
    }
    return count == 0 ? std::nullopt : std::optional(Length(sum / count));
}

} // namespace

std::optional<BandSet> bandEntry(const RecordSession& session, const std::string& name) {
    const BandFact* fact = session.facts().bandNamed(name);
    if (fact == nullptr) {
        return {};
    }
    const auto* entry = session.ledger().at(fact->entry).body.as<BandSet>();
    return entry == nullptr ? std::nullopt : std::optional(*entry);
}

EngineBands::EngineBands(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_table(new Table<BandRow, std::string>(tr("Bands"), &BandRow::name, bandColumns(session), this)),
      m_band(new FormFor<BandSet>(session, {}, tr("Store &band"), bandFields(), 1, this)),
      m_rules(new FormFor<RulesSet>(session, tr("Rules"), tr("Store &rules"), rulesFields(), 1, this)) {
    m_band->setObjectName(QStringLiteral("bandForm"));
    auto* fresh = new QPushButton(tr("&New fit of the shop's own"), this);
    fresh->setAutoDefault(false);
    auto* left = new QVBoxLayout;
    left->addWidget(m_table, 1);
    left->addWidget(fresh, 0, Qt::AlignLeft);
    left->addWidget(m_band);
    auto* line = new QFrame(this);
    line->setFrameShape(QFrame::VLine);
    line->setFrameShadow(QFrame::Plain);
    line->setForegroundRole(QPalette::Mid);
    auto* right = new QVBoxLayout;
    right->addWidget(m_rules);
    auto* words = new Label(
        tr("Guarded: a value counts as in only when it lies in the band with its whole uncertainty. Simple: the value "
           "alone decides. The sheet says which rule was used. A band that is changed makes stale what was judged by "
           "it."),
        this);
    words->setWordWrap(true);
    words->setForegroundRole(QPalette::PlaceholderText);
    right->addWidget(words);
    right->addStretch(1);
    auto* row = new QHBoxLayout(this);
    row->addLayout(left, 3);
    row->addWidget(line);
    row->addLayout(right, 2);

    connect(m_table, &TableView::lineSelected, this, [this](int at) {
        if (const BandRow* band = m_table->at(at)) {
            showBand(std::string(band->name));
        }
    });
    connect(m_table, &TableView::lineActivated, this, [this] { m_band->focusField("lo"); });
    connect(m_band, &EntryForm::reverted, this,
            [this] { showBand(m_table->selectedKey().value_or(std::string())); });
    connect(m_band, &EntryForm::edited, this, [this] { remarkOn(coreText(m_band->text("band"))); });
    connect(m_rules, &EntryForm::reverted, this, [this] { m_rules->load(m_session.facts().rules); });
    connect(m_band->choice("band"), &QComboBox::activated, this, [this] {
        const std::string name = coreText(m_band->text("band"));
        m_band->putBack();
        showBand(name);
        m_table->select(name);
        m_band->focusField("lo");
    });
    connect(fresh, &QPushButton::clicked, this, [this] {
        m_table->clearSelection();
        m_band->putBack();
        m_band->load(BandSet{});
        m_band->focusField("band");
    });
    refresh();
}

void EngineBands::refresh() {
    const auto& facts = m_session.facts();
    std::vector<BandRow> rows;
    for (const auto name : ownBands) {
        rows.push_back({std::string(name), bandEntry(m_session, std::string(name))});
    }
    for (const auto& [name, fact] : facts.bands) {
        if (std::ranges::find(ownBands, std::string_view(name)) == std::end(ownBands)) {
            rows.push_back({name, bandEntry(m_session, name)});
        }
    }
    m_table->put(std::move(rows));
    const std::string typed = coreText(m_band->text("band"));
    if (m_table->selectedLine() < 0 && typed.empty()) {
        m_table->selectLine(0);
    }
    if (!m_band->isTouched() && !m_band->text("band").isEmpty()) {
        showBand(coreText(m_band->text("band")));
    }
    m_rules->load(facts.rules);
    if (facts.rulesEntry == 0) {
        m_rules->setRemark(tr("These are the program's own starting values; nobody has entered or confirmed any yet."));
    } else {
        m_rules->setRemark({});
    }
}

void EngineBands::selectBand(const QString& name) {
    m_table->select(coreText(name));
    m_band->focusField("lo");
}

void EngineBands::showBand(const std::string& name) {
    BandSet band;
    band.band = name;
    m_band->load(bandEntry(m_session, band.band).value_or(band));
    if (!m_session.facts().bandNamed(band.band) && !m_band->isTouched()) {
        m_band->clearField("lo");
        m_band->clearField("hi");
    }
    remarkOn(name);
}

/// Common practice (no source) for the clearance of a journal, as a proposal: 0.00075 to 0.0010 per inch of diameter.
void EngineBands::remarkOn(const std::string& name) {
    const bool isMain = name == bands::mainClearance;
    if (!isMain && name != bands::rodClearance) {
        m_band->setRemark({});
        return;
    }
    const auto mean = meanJournal(m_session.facts(), isMain ? JournalKind::main : JournalKind::rod);
    const Units& units = m_session.units();
    const auto usual = defaultClearanceBand(mean.value_or(Length())); // none for a journal that was not measured
    m_band->setRemark(usual ? tr("Common practice, no source, for a journal of %1: %2 to %3.")
                                  .arg(qtText(format(*mean, units)), qtText(format(usual->lo(), units)),
                                       qtText(format(usual->hi(), units)))
                            : tr("Common practice, no source: 0.00075 to 0.0010 per inch of journal diameter."));
}

} // namespace caprail
