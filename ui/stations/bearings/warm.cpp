// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/bearings/warm.h>

#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <base/say.h>
#include <session/look.h>
#include <stations/bearings/film.h>
#include <stations/common/station_text.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <units/parse.h>
#include <work/shells.h>

namespace caprail {

/// The clearance of a bearing as it was measured, and as it would be.
struct WarmRow {
    JournalId journal;
    Length measured;
    std::optional<Length> then; ///< none: it could not be worked out
};

namespace {

/// A coefficient in millionths per kelvin, as handbooks print it.
Result<Expansion> parseExpansion(const QString& text, const std::string& what) {
    QString plain = text.trimmed();
    plain.replace(QLatin1Char(','), QLatin1Char('.'));
    bool isNumber = false;
    const double value = plain.toDouble(&isNumber);
    if (!isNumber) {
        return refuse(
            Core::say("“%1” is not a coefficient for the %2: type millionths per kelvin, 11.4 for grey cast iron.",
                      coreText(text), what));
    }
    return millionthsPerKelvin(value);
}

std::vector<TableColumn<WarmRow>> warmColumns(const RecordSession& session) {
    const auto change = [](const WarmRow& row) {
        return row.then ? std::optional(*row.then - row.measured) : std::nullopt;
    };
    return {{.title = BearingsWarm::tr("Bearing"),
             .text = [](const WarmRow& row) { return capitalised(qtText(describe(row.journal))); }},
            {.title = BearingsWarm::tr("Measured"),
             .text = [&session](const WarmRow& row) { return qtText(format(row.measured, session.units())); },
             .value = [](const WarmRow& row) { return valueOf(row.measured); },
             .isFigure = true},
            {.title = BearingsWarm::tr("Then"),
             .text =
                 [&session](const WarmRow& row) {
                     return row.then ? qtText(format(*row.then, session.units())) : QString();
                 },
             .value = [](const WarmRow& row) { return valueOf(row.then); },
             .isFigure = true},
            {.title = BearingsWarm::tr("Change"),
             .text =
                 [&session, change](const WarmRow& row) {
                     return row.then ? qtText(formatSigned(*change(row), session.units())) : QString();
                 },
             .value = [change](const WarmRow& row) { return valueOf(change(row)); }}};
}

} // namespace

BearingsWarm::BearingsWarm(RecordSession& session, BearingsFilm& film, QWidget* parent)
    : QWidget(parent), m_session(session), m_film(film), m_blockIs(new QComboBox(this)), m_crankIs(new QComboBox(this)),
      m_block(new QLineEdit(this)), m_crank(new QLineEdit(this)), m_measuredAt(new QLineEdit(this)),
      m_blockNow(new QLineEdit(this)), m_crankNow(new QLineEdit(this)),
      m_table(new Table<WarmRow, JournalId>(tr("Clearances"), &WarmRow::journal, warmColumns(session), this)),
      m_remark(new Label(this)) {
    build();
    refresh();
}

void BearingsWarm::build() {
    m_blockNow->setObjectName(QStringLiteral("blockThen"));
    m_block->setObjectName(QStringLiteral("blockCoefficient"));
    m_table->setObjectName(QStringLiteral("warmClearances"));
    m_remark->setObjectName(QStringLiteral("warmRemark"));
    auto* grid = new QGridLayout;
    int row = 0;
    const auto add = [&](const QString& name, QWidget* first, QWidget* second) {
        auto* label = new Label(name, this);
        label->setBuddy(first);
        first->setAccessibleName(name);
        grid->addWidget(label, row, 0);
        grid->addWidget(first, row, 1);
        if (second != nullptr) {
            second->setAccessibleName(tr("%1: millionths per kelvin").arg(name));
            grid->addWidget(second, row, 2);
            grid->addWidget(new Label(tr("10⁻⁶/K"), this), row, 3);
        }
        ++row;
    };
    add(tr("Block is of"), m_blockIs, m_block);
    add(tr("Crank is of"), m_crankIs, m_crank);
    add(tr("Measured at"), m_measuredAt, nullptr);
    add(tr("Block then at"), m_blockNow, nullptr);
    add(tr("Crank then at"), m_crankNow, nullptr);
    grid->setColumnStretch(1, 1);
    for (QLineEdit* edit : {m_block, m_crank}) {
        edit->setMaximumWidth(edit->fontMetrics().horizontalAdvance(QStringLiteral("000.000")) + 24);
    }
    for (QComboBox* box : {m_blockIs, m_crankIs}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        for (const MaterialExpansion& material : knownExpansions()) {
            box->addItem(qtText(material.material), qtText(material.source));
            box->setItemData(box->count() - 1, plainTip(qtText(material.source)), Qt::ToolTipRole);
        }
        box->addItem(tr("a figure of your own"), tr("as typed"));
    }
    m_crankIs->setCurrentIndex(m_crankIs->findText(QStringLiteral("steel 4340")));
    takeMaterial(m_blockIs, m_block);
    takeMaterial(m_crankIs, m_crank);
    m_measuredAt->setText(QStringLiteral("20 °C"));
    m_blockNow->setText(QStringLiteral("90 °C"));
    m_crankNow->setText(QStringLiteral("90 °C"));
    m_remark->setWordWrap(true);
    m_remark->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(grid);
    column->addWidget(m_table, 1);
    column->addWidget(m_remark);
    connect(&m_film, &BearingsFilm::edited, this, &BearingsWarm::refresh);

    connect(m_blockIs, &QComboBox::activated, this, [this] { takeMaterial(m_blockIs, m_block); });
    connect(m_crankIs, &QComboBox::activated, this, [this] { takeMaterial(m_crankIs, m_crank); });
    connect(m_block, &QLineEdit::textEdited, this, [this] { m_blockIs->setCurrentIndex(m_blockIs->count() - 1); });
    connect(m_crank, &QLineEdit::textEdited, this, [this] { m_crankIs->setCurrentIndex(m_crankIs->count() - 1); });
    for (QLineEdit* edit : {m_block, m_crank, m_measuredAt, m_blockNow, m_crankNow}) {
        connect(edit, &QLineEdit::textChanged, this, &BearingsWarm::refresh);
    }
}

void BearingsWarm::takeMaterial(const QComboBox* box, QLineEdit* coefficient) {
    const auto known = knownExpansions();
    const auto index = static_cast<std::size_t>(std::max(0, box->currentIndex()));
    if (index < known.size()) {
        coefficient->setText(
            qtText(formatNumber(inMillionthsPerKelvin(known[index].coefficient), 1, m_session.units().decimalMark)));
    }
}

Result<Warming> BearingsWarm::read() const {
    const auto block = parseExpansion(m_block->text(), "block");
    const auto crank = parseExpansion(m_crank->text(), "crank");
    const Units& units = m_session.units();
    const auto measured =
        parseTemperature(coreText(m_measuredAt->text()), units, {"the temperature when measured", {}, {}});
    const auto blockNow = parseTemperature(coreText(m_blockNow->text()), units, {"the block's temperature", {}, {}});
    const auto crankNow = parseTemperature(coreText(m_crankNow->text()), units, {"the crank's temperature", {}, {}});
    if (!block || !crank) {
        return tl::unexpected(!block ? block.error() : crank.error());
    }
    if (!measured || !blockNow || !crankNow) {
        return tl::unexpected(!measured ? measured.error() : !blockNow ? blockNow.error() : crankNow.error());
    }
    return Warming{*block, *crank, measured->value, blockNow->value, crankNow->value, {}};
}

void BearingsWarm::refresh() {
    const auto warming = read();
    QString problem = warming ? QString() : qtText(warming.error().sentence);
    std::vector<WarmRow> rows;
    for (const auto& [journal, result] : m_session.assessment().clearances) {
        if (!result.clearance || !result.journalMean) {
            continue;
        }
        WarmRow row{journal, *result.clearance, {}};
        if (warming) {
            Warming here = *warming;
            here.shells = warmShells(m_session.facts(), journal);
            if (const auto then = clearanceAt(*result.clearance, *result.journalMean, here)) {
                row.then = *then;
            } else {
                problem = qtText(then.error().sentence);
            }
        }
        rows.push_back(row);
    }
    m_film.refresh(warming ? &*warming : nullptr);
    const bool isBare = rows.empty() && problem.isEmpty();
    m_table->put(std::move(rows));
    const QString block = m_blockIs->currentData().toString();
    const QString crank = m_crankIs->currentData().toString();
    m_remark->setText(!problem.isEmpty() ? QStringLiteral("✕ ") + problem
                      : isBare
                          ? tr("No clearance is measured with a micrometer yet: measure journals and bores first.")
                          : tr("A look ahead by α·D·ΔT, the shells with their steel backs where their thickness is "
                               "known, common practice, no source: it leaves out that a cap may be of another metal. "
                               "No verdict, not stored. Coefficients: %1.")
                                .arg(block == crank ? block : tr("block %1; crank %2").arg(block, crank)));
    QPalette palette = m_remark->palette();
    palette.setColor(QPalette::WindowText, problem.isEmpty() ? screenLook().quiet : screenLook().out);
    m_remark->setPalette(palette);
}

void BearingsWarm::focusField() {
    m_blockNow->setFocus();
    m_blockNow->selectAll();
}

} // namespace caprail
