// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/kit.h>

#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>
#include <session/filled.h>
#include <session/look.h>
#include <stations/common/entry_field.h>
#include <stations/common/instrument_box.h>
#include <stations/common/station_text.h>
#include <stations/common/step_keys.h>
#include <text/ask.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <work/kit_line.h>

namespace caprail {

/// A shim of the kit, and what is known of it.
struct KitRow {
    std::string name;
    Length marked;
    std::optional<Length> measured, off;
    std::size_t readings = 0;
    bool isOffMarking = false, isSetAside = false;
    std::string whyAside;
    std::optional<Position> inStackAt;
};

namespace {

QString whereItIs(const KitRow& shim) {
    QString where = GirdleKit::tr("free");
    if (shim.isSetAside) {
        where = GirdleKit::tr("set aside") +
                (shim.whyAside.empty() ? QString() : QStringLiteral(": ") + qtText(shim.whyAside));
    } else if (shim.inStackAt) {
        where = GirdleKit::tr("in the stack at %1").arg(qtText(code(*shim.inStackAt)));
    }
    return shim.isOffMarking ? GirdleKit::tr("✕ off its marking") + QStringLiteral(" · ") + where : where;
}

std::vector<TableColumn<KitRow>> kitColumns(const RecordSession& session) {
    const auto ink = [](const KitRow& shim, const Look& look) {
        return shim.isOffMarking ? look.out : shim.isSetAside ? look.quiet : QColor();
    };
    const auto unmeasuredInk = [ink](const KitRow& shim, const Look& look) {
        const QColor usual = ink(shim, look);
        return !usual.isValid() && !shim.measured ? look.quiet : usual;
    };
    return {{.title = GirdleKit::tr("Shim"), .text = [](const KitRow& shim) { return qtText(shim.name); }, .ink = ink},
            {.title = GirdleKit::tr("Marked"),
             .text = [&session](const KitRow& shim) { return qtText(format(shim.marked, session.units())); },
             .value = [](const KitRow& shim) { return valueOf(shim.marked); },
             .ink = ink,
             .isFigure = true},
            {.title = GirdleKit::tr("Measured"),
             .text =
                 [&session](const KitRow& shim) {
                     return shim.measured ? qtText(format(*shim.measured, session.units())) : QStringLiteral("—");
                 },
             .value = [](const KitRow& shim) { return valueOf(shim.measured); },
             .ink = unmeasuredInk,
             .isFigure = true},
            {.title = GirdleKit::tr("Readings"),
             .text = [](const KitRow& shim) { return QString::number(shim.readings); },
             .value = [](const KitRow& shim) { return valueOf(shim.readings); },
             .ink = ink,
             .isFigure = true},
            {.title = GirdleKit::tr("Off marking"),
             .text =
                 [&session](const KitRow& shim) {
                     return shim.off ? qtText(formatSigned(*shim.off, session.units())) : QString();
                 },
             .value = [](const KitRow& shim) { return valueOf(shim.off); },
             .ink = ink,
             .isFigure = true},
            {.title = GirdleKit::tr("Where it is"), .text = whereItIs, .ink = ink}};
}

} // namespace

GirdleKit::GirdleKit(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_table(new Table<KitRow, std::string>(tr("Shims of the kit"), &KitRow::name, kitColumns(session), this)),
      m_summary(new Label(this)), m_add(new EntryField(this)), m_bag(new QLineEdit(this)),
      m_measure(new EntryField(this)), m_instrument(new InstrumentBox(session, {InstrumentType::micrometer}, this)),
      m_aside(new QPushButton(this)) {
    build();
    refresh();
}

void GirdleKit::build() {
    m_add->setObjectName(QStringLiteral("addShims"));
    m_measure->setObjectName(QStringLiteral("measureShim"));
    m_table->setObjectName(QStringLiteral("kit"));
    connect(m_table, &TableView::lineSelected, this, &GirdleKit::askToMeasure);
    m_measure->readWith([this] { return m_instrument; });
    new StepKeys(m_measure->lineEdit(), [this](int by) { stepTo(by); });
    m_bag->setPlaceholderText(tr("bag or maker, if told apart"));
    m_bag->setAccessibleName(tr("Bag of the added shims"));
    m_summary->setWordWrap(true);
    connect(m_aside, &QPushButton::clicked, this, &GirdleKit::setAside);

    auto* column = new QVBoxLayout;
    column->addWidget(m_summary);
    column->addSpacing(8);
    column->addWidget(m_measure);
    auto* micrometer = new QFormLayout;
    addRow(micrometer, tr("Micrometer"), m_instrument);
    column->addLayout(micrometer);
    column->addWidget(m_aside, 0, Qt::AlignLeft);
    column->addSpacing(12);
    column->addWidget(m_add);
    auto* bag = new QFormLayout;
    addRow(bag, tr("Bag"), m_bag);
    column->addLayout(bag);
    column->addStretch(1);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_table, 5);
    row->addLayout(column, 3);
    askToAdd();
}

QString GirdleKit::summary() const {
    std::size_t unmeasured = 0;
    std::size_t flagged = 0;
    std::size_t aside = 0;
    const Facts& facts = m_session.facts();
    for (const auto& [shimName, shim] : facts.shims) {
        unmeasured += shim.measured() ? 0 : 1;
        flagged += shim.isOffMarking(facts.rules) ? 1 : 0;
        aside += shim.isSetAside ? 1 : 0;
    }
    if (facts.shims.empty()) {
        return tr("The kit is empty. Add its shims below: one by name, or a count of one size.");
    }
    return tr("%1 shims in the kit · %2 not measured · %3 off their marking by more than %4 · %5 set aside")
        .arg(facts.shims.size())
        .arg(unmeasured)
        .arg(flagged)
        .arg(qtText(format(facts.rules.kitTolerance, m_session.units())))
        .arg(aside);
}

void GirdleKit::refresh() {
    m_instrument->refresh();
    m_summary->setText(summary());
    const Facts& facts = m_session.facts();
    std::vector<KitRow> rows;
    for (const auto& [name, shim] : facts.shims) {
        rows.push_back({name, shim.added.what.marked.value, shim.measured(), shim.offMarking(), shim.readings.size(),
                        shim.isOffMarking(facts.rules), shim.isSetAside, shim.whyAside, shim.inStackAt});
    }
    m_table->put(std::move(rows));
    if (m_table->selectedLine() < 0 && !m_table->rows().empty()) {
        const QSignalBlocker quiet(m_table);
        m_table->selectLine(0);
    }
    askToMeasure();
}

std::string GirdleKit::selectedShim() const {
    return m_table->selectedKey().value_or(std::string());
}

void GirdleKit::selectShim(const std::string& shim) {
    if (!m_table->select(shim) && m_table->selectedLine() < 0 && !m_table->rows().empty()) {
        m_table->selectLine(0);
    }
}

void GirdleKit::stepTo(int by) {
    const int lines = static_cast<int>(m_table->rows().size());
    m_table->selectLine(std::clamp(m_table->selectedLine() + by, lines > 0 ? 0 : -1, lines - 1));
}

/// The next in the order in which the list is shown, around its end.
void GirdleKit::selectNextUnmeasured(const std::string& after) {
    const int lines = static_cast<int>(m_table->rows().size());
    const int from = m_table->lineOf(after);
    for (int i = 1; i <= lines; ++i) {
        const int line = (from + i) % lines;
        if (const KitRow* shim = m_table->at(line); shim->readings == 0 && !shim->isSetAside) {
            m_table->selectLine(line);
            return;
        }
    }
    selectShim(after);
}

void GirdleKit::askToAdd() {
    const auto read = [this](const QString& text) {
        return parseKitLine(coreText(text), m_session.units(), m_session.facts(), coreText(m_bag->text()));
    };
    m_add->ask(
        tr("Add shims: “S001 10 thou”, “S001-S012 10 thou” or “12 x 10 thou”"), {},
        [this, read](const QString& text) {
            return read(text).map([&](const std::vector<ShimAdded>& shims) {
                QString names = qtText(shims.front().shim);
                if (shims.size() > 1) {
                    names += QStringLiteral(" – ") + qtText(shims.back().shim);
                }
                return filled(tr("%1: %2 of %3"), names, shims.size(),
                              qtText(format(shims.front().marked.value, m_session.units())));
            });
        },
        [this, read](const QString& text) -> Result<void> {
            auto shims = read(text);
            if (!shims) {
                return tl::unexpected(shims.error());
            }
            std::vector<Body> entries;
            for (ShimAdded& shim : *shims) {
                entries.emplace_back(std::move(shim));
            }
            return m_session.appendAll(std::move(entries));
        });
}

void GirdleKit::askToMeasure() {
    const std::string shim = selectedShim();
    const auto& shims = m_session.facts().shims;
    const auto at = shims.find(shim);
    const auto read = [this, shim](const QString& text) {
        return parseShimReading(coreText(text), m_session.units(), m_session.facts(), shim);
    };
    const QString title = at == shims.end() ? tr("Measure: a shim's name, then its thickness")
                                            : filled(tr("Measure %1, reading %2 (or a shim's name first)"),
                                                     qtText(shim), at->second.readings.size() + 1);
    m_measure->ask(
        title, QString::fromUtf8(symbol(m_session.units().length)),
        [this, read](const QString& text) {
            return read(text).map([&](const ShimMeasured& reading) {
                return qtText(reading.shim) + QStringLiteral("  ") +
                       qtText(format(reading.thickness.value, m_session.units()));
            });
        },
        [this, read](const QString& text) -> Result<void> {
            auto reading = read(text);
            if (!reading) {
                return tl::unexpected(reading.error());
            }
            reading->instrument = m_instrument->instrument();
            const std::string measuredShim = reading->shim;
            if (auto stored = m_session.append(std::move(*reading)); !stored) {
                return tl::unexpected(stored.error());
            }
            selectNextUnmeasured(measuredShim);
            return {};
        });
    const bool isAside = at != shims.end() && at->second.isSetAside;
    m_aside->setText(isAside ? tr("Take %1 back into the kit").arg(literal(qtText(shim)))
                             : tr("Set %1 aside…").arg(literal(qtText(shim))));
    m_aside->setVisible(at != shims.end());
}

void GirdleKit::setAside() {
    const std::string shim = selectedShim();
    const auto at = m_session.facts().shims.find(shim);
    if (at == m_session.facts().shims.end()) {
        return;
    }
    if (at->second.isSetAside) {
        m_session.appendAndSay(ShimSetAside{shim, false, {}});
        return;
    }
    if (const auto why = askText(this, tr("Set aside"), tr("Why is %1 set aside?").arg(qtText(shim)))) {
        m_session.appendAndSay(ShimSetAside{shim, true, coreText(*why)});
    }
}

void GirdleKit::focusField() {
    (m_session.facts().shims.empty() ? m_add : m_measure)->setFocus();
}

} // namespace caprail
