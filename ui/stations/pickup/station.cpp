// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/pickup/station.h>

#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <assessment/current_readings.h>
#include <clearances/pickup.h>
#include <ledger/band_names.h>
#include <ledger/expectations.h>
#include <stations/common/budget_window.h>
#include <stations/common/entries_model.h>
#include <stations/common/entries_table.h>
#include <stations/common/entry_field.h>
#include <stations/common/instrument_box.h>
#include <stations/common/optional_field.h>
#include <stations/common/station_text.h>
#include <stations/common/step_keys.h>
#include <stations/common/tab_order.h>
#include <stations/pickup/section_view.h>
#include <stations/pickup/terms.h>
#include <text/ask.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

PickupStation::PickupStation(RecordSession& given, QWidget* parent)
    : StationPanel(given, parent), m_section(new PickupSectionView(this)), m_terms(new List<PickupTerm, PickupTerm>(
          tr("Terms of the stack-up"), [](PickupTerm term) { return term; },
          {{.text =
                [&given](PickupTerm term) {
                    return capitalised(qtShown(term)) + QStringLiteral("\n     ") +
                           termLine(given.facts(), term, given.units());
                }}},
          this)),
      m_how(new Label(this)), m_field(new EntryField(this)),
      m_instrument(new InstrumentBox(given, {InstrumentType::depthGauge, InstrumentType::calliper}, this)),
      m_temperature(OptionalField::partTemperature(m_field)),
      m_clearance(new Label(this)), m_verdict(new Label(this)), m_advice(new Label(this)),
      m_change(new QPushButton(this)), m_why(new QPushButton(tr("Why ±?"), this)),
      m_entries(new EntriesTable(given, this)) {
    build();
    refresh();
}

void PickupStation::build() {
    m_terms->setFixedHeight(fontMetrics().lineSpacing() * 11);
    m_terms->setSpacing(1);
    connect(m_terms, &ListView::lineSelected, this, [this](int line) {
        if (const PickupTerm* term = m_terms->at(line)) {
            choose(*term);
        }
    });
    for (Label* label : {m_how, m_verdict, m_advice}) {
        label->setWordWrap(true);
    }
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 2.6);
    m_clearance->setFont(large);
    m_clearance->setSubject(tr("Clearance under the pickup"));
    auto* caution = new CautionLabel(PickupStation::cautions(), this);
    m_entries->setColumnHidden(EntriesModel::time, true);
    m_entries->setColumnHidden(EntriesModel::person, true);
    m_entries->setFilter([](const Entry& entry) {
        const auto* part = entry.body.as<PartChanged>();
        return entry.body.is<PickupReading>() ||
               (part != nullptr && (part->part == Part::pan || part->part == Part::gasket ||
                                    part->part == Part::plate || part->part == Part::pickup));
    });
    m_field->readWith([this] { return m_instrument; });
    new StepKeys(m_field->lineEdit(), [this](int by) {
        m_terms->selectLine(std::clamp(m_terms->selectedLine() + by, 0, m_terms->count() - 1));
    });
    connect(m_change, &QPushButton::clicked, this, &PickupStation::changePart);

    setTip(m_why, tr("The uncertainty of the clearance, source by source"));
    connect(m_why, &QPushButton::clicked, this,
            [this] { BudgetWindow::open(tr("clearance"), pickupBudget(session().facts()), session(), this); });

    auto* left = new QVBoxLayout;
    left->addWidget(m_section, 7);
    left->addWidget(m_entries, 3); // two readings of each term, without a scroll bar
    auto* instrumentRow = new QFormLayout;
    addRow(instrumentRow, tr("&Instrument"), m_instrument);
    auto* right = new QVBoxLayout;
    auto* figure = new QHBoxLayout;
    figure->addWidget(m_clearance, 1);
    figure->addWidget(m_why);
    right->addLayout(figure);
    right->addWidget(m_verdict);
    right->addWidget(m_advice);
    right->addSpacing(6);
    right->addWidget(m_terms);
    right->addWidget(m_field);
    right->addWidget(m_how);
    right->addLayout(instrumentRow);
    right->addWidget(m_temperature);
    right->addWidget(m_change, 0, Qt::AlignLeft);
    right->addStretch(1);
    right->addWidget(caution);
    auto* page = new QHBoxLayout(this);
    page->addLayout(left, 5);
    page->addLayout(right, 3);
    setFocusProxy(m_field);
    putProxyFirst(*this);
}

void PickupStation::refresh() {
    const Facts& facts = session().facts();
    const Assessment& assessment = session().assessment();
    const Units& units = session().units();
    m_instrument->refresh();
    m_entries->refresh();
    std::vector<PickupTerm> terms;
    for (const auto& entry : allWords<PickupTerm>()) {
        terms.push_back(entry.value);
    }
    m_terms->put(std::move(terms));
    const Look look = screenLook();
    const auto check = std::ranges::find(assessment.checks, CheckKind::pickup, &Check::kind);
    const CheckState state = check == assessment.checks.end() ? CheckState::notDone : check->state;
    const auto colour = [](Label* label, const QColor& ink) {
        QPalette palette = label->palette();
        palette.setColor(QPalette::WindowText, ink);
        label->setPalette(palette);
    };
    m_clearance->setText(assessment.pickup.clearance ? qtText(format(*assessment.pickup.clearance, units))
                                                     : QStringLiteral("—"));
    m_why->setVisible(assessment.pickup.clearance.has_value());
    QString verdict = sign(state) + QStringLiteral(" ") + stateWord(state);
    if (check != assessment.checks.end()) {
        // With a clearance, what to do is said below, by how much and either way.
        const std::string remedy = assessment.pickup.clearance ? std::string() : check->remedy;
        for (const std::string& more : {check->sentence, remedy}) {
            verdict += more.empty() ? QString() : QStringLiteral("\n") + qtText(more);
        }
    }
    if (facts.bandNamed(bands::pickupClearance) == nullptr) {
        verdict +=
            QLatin1Char('\n') +
            tr("This record sets no band for it: set “%1” at the engine station.").arg(qtText(bands::pickupClearance));
    }
    m_verdict->setText(verdict);
    colour(m_clearance, look.of(state));
    colour(m_verdict, look.of(state));
    m_advice->setText(towardsMiddle(facts, assessment, units));
    m_advice->setVisible(!m_advice->text().isEmpty());
    choose(m_term);
}

void PickupStation::choose(PickupTerm term) {
    m_term = term;
    m_terms->select(term);
    m_how->setText(howToMeasure(term));
    m_temperature->follow(qtWord(term));
    m_change->setText(tr("Another %1 is fitted…").arg(qtShown(partOf(term))));
    setTip(m_change, tr("What was measured with the old one must be measured again."));
    PickupSection section = pickupSectionOf(session().facts(), session().assessment(), session().units());
    section.selected = term;
    m_section->show(std::move(section));
    askForTerm();
}

void PickupStation::askForTerm() {
    const PickupTerm term = m_term;
    const auto number = currentPickup(session().facts(), term).size() + 1;
    const QString title = number <= pickupReadingsNeeded
                              ? tr("%1, reading %2 of %3").arg(capitalised(qtShown(term))).arg(number).arg(pickupReadingsNeeded)
                              : tr("%1, reading %2").arg(capitalised(qtShown(term))).arg(number);
    m_field->askLength(title, session().units(), expectedPickupTerm(term, shown(term)),
                       [this, term](const Entered<Length>& value) { return store(term, value); });
}

Result<void> PickupStation::store(PickupTerm term, const Entered<Length>& value) {
    PickupReading reading{term, value, m_instrument->instrument()};
    if (auto read = m_temperature->read(reading.partTemperature, session().units(), PickupReading::kind,
                                        "part_temperature");
        !read) {
        return read;
    }
    const auto stored = session().append(std::move(reading));
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    // On to the next term only when this one is measured often enough.
    if (currentPickup(session().facts(), term).size() >= pickupReadingsNeeded) {
        m_terms->selectLine((m_terms->lineOf(term) + 1) % m_terms->count());
    }
    return {};
}

void PickupStation::changePart() {
    const Part part = partOf(m_term);
    const auto what = askText(this, tr("Another %1").arg(qtShown(part)),
                              tr("Which %1 is fitted now, or what was done to it?").arg(qtShown(part)));
    if (what) {
        session().appendAndSay(PartChanged{part, {}, coreText(*what)});
    }
}

void PickupStation::select(const QString& subject) {
    for (const auto& entry : allWords<PickupTerm>()) {
        if (subject == qtText(entry.word) || subject == qtWord(partOf(entry.value))) {
            choose(entry.value);
        }
    }
    m_field->setFocus();
}

QString PickupStation::help() const {
    return tr("Clearance under the pickup: pan depth, plus the compressed gasket, plus the girdle plate "
              "between, minus how far the pickup hangs below the rail. Read each term twice. It must be "
              "right before anything is sealed.");
}

std::vector<Caution> PickupStation::cautions() const {
    return {Caution::stand};
}

} // namespace caprail
