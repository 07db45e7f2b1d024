// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/kit.h>

#include <QFormLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
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

namespace {
enum Column { name, marked, measured, readings, off, where, columns };
} // namespace

GirdleKit::GirdleKit(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_table(new QTableWidget(this)), m_summary(new Label(this)),
      m_add(new EntryField(this)), m_bag(new QLineEdit(this)), m_measure(new EntryField(this)),
      m_instrument(new InstrumentBox(session, {InstrumentType::micrometer}, this)), m_aside(new QPushButton(this)) {
    build();
    refresh();
}

void GirdleKit::build() {
    m_table->setColumnCount(columns);
    m_table->setHorizontalHeaderLabels(
        {tr("Shim"), tr("Marked"), tr("Measured"), tr("Readings"), tr("Off marking"), tr("Where it is")});
    m_table->setAccessibleName(tr("Shims of the kit"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(fontMetrics().lineSpacing() + 8);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(where, QHeaderView::Stretch);
    m_table->horizontalHeader()->setHighlightSections(false);
    connect(m_table, &QTableWidget::currentCellChanged, this, [this](int row, int, int before, int) {
        if (row != before) {
            askToMeasure();
        }
    });
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

void GirdleKit::fillRow(int row, const std::string& shimName, const ShimFact& shim) {
    const Units& units = m_session.units();
    const Look look = screenLook();
    const bool flagged = shim.isOffMarking(m_session.facts().rules);
    QString place = tr("free");
    if (shim.isSetAside) {
        place = tr("set aside") + (shim.whyAside.empty() ? QString() : QStringLiteral(": ") + qtText(shim.whyAside));
    } else if (shim.inStackAt) {
        place = tr("in the stack at %1").arg(qtText(code(*shim.inStackAt)));
    }
    if (flagged) {
        place = tr("✕ off its marking") + QStringLiteral(" · ") + place;
    }
    const auto value = shim.measured();
    const QString texts[] = {qtText(shimName),
                             qtText(format(shim.added.what.marked.value, units)),
                             value ? qtText(format(*value, units)) : QStringLiteral("—"),
                             QString::number(shim.readings.size()),
                             value ? qtText(formatSigned(*shim.offMarking(), units)) : QString(),
                             place};
    for (int column = 0; column < columns; ++column) {
        auto* item = new QTableWidgetItem(QStringLiteral(" ") + texts[column] + QStringLiteral(" "));
        item->setTextAlignment((column == name || column == where ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
        if (flagged) {
            item->setForeground(look.out);
        } else if (shim.isSetAside || (column == measured && !value)) {
            item->setForeground(look.quiet);
        }
        m_table->setItem(row, column, item);
    }
}

void GirdleKit::refresh() {
    const std::string selected = selectedShim();
    m_instrument->refresh();
    m_summary->setText(summary());
    const auto& shims = m_session.facts().shims;
    {
        const QSignalBlocker quiet(m_table);
        m_table->setRowCount(static_cast<int>(shims.size()));
        int row = 0;
        for (const auto& [shimName, shim] : shims) {
            fillRow(row++, shimName, shim);
        }
        selectShim(selected);
    }
    askToMeasure();
}

std::string GirdleKit::selectedShim() const {
    const QTableWidgetItem* item = m_table->currentRow() < 0 ? nullptr : m_table->item(m_table->currentRow(), name);
    return item == nullptr ? std::string() : coreText(item->text());
}

void GirdleKit::selectShim(const std::string& shim) {
    const auto& shims = m_session.facts().shims;
    const auto at = shims.find(shim);
    if (at != shims.end()) {
        m_table->setCurrentCell(static_cast<int>(std::distance(shims.begin(), at)), name);
    } else if (m_table->currentRow() < 0 && m_table->rowCount() > 0) {
        m_table->setCurrentCell(0, name);
    }
}

void GirdleKit::stepTo(int by) {
    const int row = std::clamp(m_table->currentRow() + by, 0, std::max(0, m_table->rowCount() - 1));
    m_table->setCurrentCell(row, name);
}

void GirdleKit::selectNextUnmeasured(const std::string& after) {
    const auto& shims = m_session.facts().shims;
    auto at = shims.upper_bound(after);
    for (std::size_t i = 0; i < shims.size(); ++i, ++at) {
        at = at == shims.end() ? shims.begin() : at;
        if (at->second.readings.empty() && !at->second.isSetAside) {
            selectShim(at->first);
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
