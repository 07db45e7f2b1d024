// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/bearings/warm.h>

#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <session/look.h>
#include <stations/bearings/film.h>
#include <stations/common/station_text.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <units/parse.h>
#include <work/warm_look.h>

namespace caprail {

namespace {

std::vector<TableColumn<WarmClearance>> warmColumns(const RecordSession& session) {
    const auto change = [](const WarmClearance& row) {
        return row.warm ? std::optional(*row.warm - row.asMeasured) : std::nullopt;
    };
    return {{.title = BearingsWarm::tr("Bearing"),
             .text = [](const WarmClearance& row) { return capitalised(qtText(describe(row.bearing))); }},
            {.title = BearingsWarm::tr("Measured"),
             .text = [&session](const WarmClearance& row) { return qtText(format(row.asMeasured, session.units())); },
             .value = [](const WarmClearance& row) { return valueOf(row.asMeasured); },
             .isFigure = true},
            {.title = BearingsWarm::tr("Then"),
             .text =
                 [&session](const WarmClearance& row) {
                     return row.warm ? qtText(format(*row.warm, session.units())) : QString();
                 },
             .value = [](const WarmClearance& row) { return row.warm ? valueOf(*row.warm) : SortValue(); },
             .isFigure = true},
            {.title = BearingsWarm::tr("Change"),
             .text =
                 [&session, change](const WarmClearance& row) {
                     return row.warm ? qtText(formatSigned(*change(row), session.units())) : QString();
                 },
             .value = [change](const WarmClearance& row) { return valueOf(change(row)); }}};
}

} // namespace

BearingsWarm::BearingsWarm(RecordSession& session, BearingsFilm& film, QWidget* parent)
    : QWidget(parent), m_session(session), m_film(film), m_blockIs(new QComboBox(this)), m_crankIs(new QComboBox(this)),
      m_block(new QLineEdit(this)), m_crank(new QLineEdit(this)), m_measuredAt(new QLineEdit(this)),
      m_blockNow(new QLineEdit(this)), m_crankNow(new QLineEdit(this)),
      m_table(
          new Table<WarmClearance, JournalId>(tr("Clearances"), &WarmClearance::bearing, warmColumns(session), this)),
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
    const Warming usual = usualWarming();
    m_blockIs->setCurrentIndex(m_blockIs->findText(qtText(usualBlockMaterial)));
    m_crankIs->setCurrentIndex(m_crankIs->findText(qtText(usualCrankMaterial)));
    takeMaterial(m_blockIs, m_block);
    takeMaterial(m_crankIs, m_crank);
    m_measuredAt->setText(qtText(format(usual.measuredAt, m_session.units())));
    m_blockNow->setText(qtText(format(usual.blockNow, m_session.units())));
    m_crankNow->setText(qtText(format(usual.crankNow, m_session.units())));
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
    const auto block = parseExpansion(coreText(m_block->text()), coreText(tr("the block")));
    const auto crank = parseExpansion(coreText(m_crank->text()), coreText(tr("the crank")));
    const Units& units = m_session.units();
    const auto measured = parseTemperature(coreText(m_measuredAt->text()), units,
                                           {coreText(tr("the temperature when measured")), {}, {}});
    const auto blockNow =
        parseTemperature(coreText(m_blockNow->text()), units, {coreText(tr("the block's temperature")), {}, {}});
    const auto crankNow =
        parseTemperature(coreText(m_crankNow->text()), units, {coreText(tr("the crank's temperature")), {}, {}});
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
    // Without temperatures the clearances still stand there, as they were measured.
    std::vector<WarmClearance> rows =
        warmClearances(m_session.facts(), m_session.assessment(), warming.value_or(usualWarming()));
    for (WarmClearance& row : rows) {
        if (!warming) {
            row.warm = tl::unexpected(warming.error());
        } else if (!row.warm) {
            problem = qtText(row.warm.error().sentence);
        }
    }
    m_film.refresh(rows, warming ? std::optional(warming->blockNow) : std::nullopt);
    const bool isBare = rows.empty() && problem.isEmpty();
    m_table->put(std::move(rows));
    const QString block = m_blockIs->currentData().toString();
    const QString crank = m_crankIs->currentData().toString();
    m_remark->setText(
        !problem.isEmpty() ? QStringLiteral("✕ ") + problem
        : isBare
            ? qtText(noClearanceYet().sentence)
            : qtText(warmAssumptions()) + QLatin1Char(' ') +
                  tr("Coefficients: %1.").arg(block == crank ? block : tr("block %1; crank %2").arg(block, crank)));
    QPalette palette = m_remark->palette();
    palette.setColor(QPalette::WindowText, problem.isEmpty() ? screenLook().quiet : screenLook().out);
    m_remark->setPalette(palette);
}

void BearingsWarm::focusField() {
    m_blockNow->setFocus();
    m_blockNow->selectAll();
}

} // namespace caprail
