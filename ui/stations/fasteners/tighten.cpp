// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/fasteners/tighten.h>

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>
#include <stations/common/entries_model.h>
#include <stations/common/entries_table.h>
#include <stations/common/entry_field.h>
#include <stations/fasteners/words.h>
#include <work/tightening.h>
#include <stations/common/wrench_words.h>
#include <stations/common/place_heading.h>
#include <stations/common/instrument_box.h>
#include <stations/common/station_text.h>
#include <stations/common/step_keys.h>
#include <stations/common/tab_order.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <base/say.h>

namespace caprail {

FastenersTighten::FastenersTighten(RecordSession& given, QWidget* parent)
    : FastenersPage(given, parent), m_heading(new PlaceHeading(this)), m_field(new EntryField(this)),
      m_kind(new QComboBox(this)),
      m_instrument(new InstrumentBox(given, {InstrumentType::torqueWrench, InstrumentType::stretchGauge}, this)),
      m_remark(new Label(this)), m_group(new QPushButton(this)), m_loose(new QPushButton(tr("&Loosened"), this)),
      m_isNew(new QCheckBox(tr("A &new one was fitted"), this)), m_entries(new EntriesTable(given, this)) {
    build();
}

void FastenersTighten::build() {
    m_group->setObjectName(QStringLiteral("wholeGroup"));
    m_loose->setObjectName(QStringLiteral("loosened"));
    const std::pair<FastenerKind, QString> kinds[] = {
        {FastenerKind::mainCap, tr("Main caps")},     {FastenerKind::rod, tr("Rods")},
        {FastenerKind::girdleNut, tr("Girdle nuts")}, {FastenerKind::panRail, tr("Pan rail")},
        {FastenerKind::front, tr("Front")},           {FastenerKind::rear, tr("Rear")}};
    for (const auto& [kind, name] : kinds) {
        m_kind->addItem(name, static_cast<int>(kind));
    }
    nameBox(*m_kind, tr("Which fasteners"));
    m_remark->setWordWrap(true);
    m_loose->setAutoDefault(false);
    m_group->setAutoDefault(false);
    m_isNew->setObjectName(QStringLiteral("isNew"));
    setTip(m_isNew, tr("This kind is used once: a piece that is tightened for the second time opens a finding"));
    setTip(m_loose, tr("The fastener was loosened: what rests on it becomes stale"));
    m_entries->setColumnHidden(EntriesModel::person, true);
    m_entries->setFilter([this](const Entry& entry) {
        const auto* tightened = entry.body.as<FastenerTightened>();
        const auto* loosened = entry.body.as<FastenerLoosened>();
        const auto* outcome = entry.body.as<RoundOutcome>();
        return (tightened != nullptr && tightened->fastener == m_fastener) ||
               (loosened != nullptr && loosened->fastener == m_fastener) ||
               (outcome != nullptr && outcome->fastener == m_fastener);
    });
    m_entries->setLine([this](const Entry& entry) {
        QString line;
        std::string with;
        if (const auto* tightened = entry.body.as<FastenerTightened>()) {
            line = broughtTo(*tightened, units()) +
                   (tightened->isNew.value_or(false) ? QStringLiteral(" · ") + tr("new") : QString());
            with = tightened->instrument;
        } else if (const auto* outcome = entry.body.as<RoundOutcome>()) {
            line = tr("round %1: %2").arg(outcome->round).arg(foundText(*outcome, units()));
            with = outcome->instrument;
        } else {
            line = tr("loosened");
        }
        return with.empty() ? line : line + QStringLiteral(" · ") + qtText(with);
    });
    m_field->readWith([this] { return m_instrument; });
    new StepKeys(m_field->lineEdit(), [this](int by) { emit stepped(by); });
    connect(m_kind, &QComboBox::activated, this, [this] {
        const auto list = order();
        if (!list.empty()) {
            emit chosen(list.front());
        } else {
            refresh({kind(), 1, Side::left, Ring::inner});
        }
        focusField();
    });
    connect(m_group, &QPushButton::clicked, this, &FastenersTighten::tightenGroup);
    connect(m_loose, &QPushButton::clicked, this, &FastenersTighten::loosen);
    connect(m_instrument, &QComboBox::activated, this, [this] { refresh(m_fastener); });

    auto* settings = new QHBoxLayout;
    settings->addWidget(m_kind);
    settings->addWidget(m_instrument, 1);
    auto* actions = new QHBoxLayout;
    actions->addWidget(m_group, 1);
    actions->addWidget(m_loose);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_heading);
    column->addLayout(settings);
    column->addWidget(m_isNew);
    column->addWidget(m_field);
    column->addWidget(m_remark);
    column->addLayout(actions);
    column->addWidget(m_entries, 1);
    setFocusProxy(m_field);
    putProxyFirst(*this);
}

FastenerKind FastenersTighten::kind() const {
    return static_cast<FastenerKind>(m_kind->currentData().toInt());
}

std::vector<FastenerId> FastenersTighten::order() const {
    return tighteningOrder(facts(), kind());
}

void FastenersTighten::refresh(FastenerId selected) {
    m_fastener = selected;
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(selected.kind)));
    m_instrument->refresh();
    m_entries->refresh();
    const auto list = order();
    const auto at = facts().fasteners.find(m_fastener);
    const bool isKnown = at != facts().fasteners.end() && at->second.tightened;
    const CheckState state = !isKnown                             ? CheckState::notDone
                             : isTightAsSpecified(facts(), m_fastener) ? CheckState::good
                             : at->second.isLoose                 ? CheckState::stale
                                                                  : CheckState::out;
    const QString figure = !isKnown             ? QStringLiteral("—")
                           : at->second.isLoose ? tr("loose")
                                                : broughtTo(at->second.tightened->what, units());
    m_heading->show(capitalised(qtText(describe(m_fastener))), figure, state,
                    specifiedText(facts(), m_fastener, units()));
    const auto open = std::ranges::count_if(list, [&](FastenerId f) { return !isTightAsSpecified(facts(), f); });
    m_group->setText(open == 0 ? tr("All %1 are as specified").arg(list.size()) : tr("&All %1 as specified").arg(open));
    m_group->setEnabled(open > 0);
    setTip(m_group, tr("Enters every fastener of this kind that is not yet at its specified value, one entry each, in "
                       "sequence"));
    m_loose->setEnabled(isKnown && !at->second.isLoose);
    m_field->setEnabled(!list.empty());
    const auto* group = facts().groupOf(m_fastener);
    m_isNew->setVisible(group != nullptr && isSingleUse(group->what));
    const auto specified = asSpecified(facts(), m_fastener, {});
    m_remark->setText(wrenchRemark(
        facts(), m_instrument->instrument(),
        specified && specified->torque ? std::optional(specified->torque->value) : std::nullopt, today(), units()));
    if (!m_remark->text().isEmpty()) {
        m_remark->setText(QStringLiteral("⚑ ") + m_remark->text());
    }
    QPalette palette = m_remark->palette();
    palette.setColor(QPalette::WindowText, screenLook().close);
    m_remark->setPalette(palette);
    askForValue();
}

void FastenersTighten::askForValue() {
    const auto specified = asSpecified(facts(), m_fastener, {});
    const bool isStretch = specified && specified->stretch;
    m_field->ask(
        tr("%1 brought to (Enter alone: as specified)").arg(capitalised(qtText(describe(m_fastener)))),
        isStretch ? qtText(symbol(units().length)) : qtText(symbol(units().torque)),
        [this](const QString& text) {
            return read(text).map([this](const FastenerTightened& entry) { return broughtTo(entry, units()); });
        },
        [this](const QString& text) -> Result<void> {
            auto entry = read(text);
            return entry ? store(std::move(*entry)) : Result<void>(tl::unexpected(entry.error()));
        });
}

Result<FastenerTightened> FastenersTighten::read(const QString& text) const {
    return parseTightened(facts(), m_fastener, coreText(text), m_instrument->instrument(), units());
}

Result<void> FastenersTighten::store(FastenerTightened entry) {
    if (m_isNew->isVisibleTo(this) && m_isNew->isChecked()) {
        entry.isNew = true;
    }
    const auto stored = session().append(std::move(entry));
    if (!stored) {
        return tl::unexpected(stored.error());
    }
    m_isNew->setChecked(false);
    goOn();
    return {};
}

/// To the next one in sequence that is not as specified; around the end, else stays.
void FastenersTighten::goOn() {
    const auto list = order();
    const auto here = std::ranges::find(list, m_fastener);
    if (here == list.end()) {
        return;
    }
    const auto isOpen = [&](FastenerId f) { return !isTightAsSpecified(facts(), f); };
    auto next = std::find_if(here + 1, list.end(), isOpen);
    if (next == list.end()) {
        next = std::find_if(list.begin(), here, isOpen);
        if (next == here) {
            return;
        }
    }
    emit chosen(*next);
}

void FastenersTighten::tightenGroup() {
    std::vector<Body> entries;
    for (const FastenerId f : order()) {
        if (isTightAsSpecified(facts(), f)) {
            continue;
        }
        auto entry = asSpecified(facts(), f, m_instrument->instrument());
        if (!entry) {
            m_field->showProblem(qtText(entry.error().sentence));
            return;
        }
        entries.emplace_back(std::move(*entry));
    }
    if (const auto stored = session().appendAll(std::move(entries)); !stored) {
        m_field->showProblem(qtText(stored.error().sentence));
    }
}

void FastenersTighten::loosen() {
    if (const auto stored = session().append(FastenerLoosened{m_fastener, {}}); !stored) {
        m_field->showProblem(qtText(stored.error().sentence));
    }
    focusField();
}

void FastenersTighten::focusField() {
    m_field->setFocus();
}

void FastenersTighten::type(const QString& text) {
    m_field->type(text);
}

} // namespace caprail
