// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/load_page.h>

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <session/filled.h>
#include <session/girdle_runner.h>
#include <session/look.h>
#include <stations/common/station_text.h>
#include <stations/common/tab_order.h>
#include <stations/girdle/words.h>
#include <text/plain_text.h>
#include <units/parse.h>
#include <work/stack_planning.h>

namespace caprail {

namespace {

std::vector<TableColumn<LoadRow>> loadColumns(const RecordSession& session) {
    return {
        {.title = GirdleLoadPage::tr("At"), .text = [](const LoadRow& row) { return qtText(code(row.at.place)); }},
        {.title = GirdleLoadPage::tr("Residual"),
         .text =
             [&session](const LoadRow& row) {
                 return row.at.isKnown() ? qtText(formatSigned(row.at.residual, session.units())) : QStringLiteral("—");
             },
         .value = [](const LoadRow& row) { return row.at.isKnown() ? valueOf(row.at.residual) : SortValue(); },
         .isFigure = true},
        {.title = GirdleLoadPage::tr("Load"),
         .text =
             [&session](const LoadRow& row) { return row.force ? loadText(*row.force, session.units()) : QString(); },
         .value = [](const LoadRow& row) { return valueOf(row.force); },
         .isFigure = true},
        {.title = GirdleLoadPage::tr("± U"),
         .text =
             [&session](const LoadRow& row) {
                 return !row.isHeld || !row.force ? QString()
                        : row.uncertainty         ? qtText(formatUp(*row.uncertainty, session.units()))
                                                  : GirdleLoadPage::tr("not known");
             },
         .value = [](const LoadRow& row) { return valueOf(row.uncertainty); },
         .isFigure = true},
        {.title = GirdleLoadPage::tr("Of preload"),
         .text =
             [&session](const LoadRow& row) {
                 return row.shareOfPreload ? qtText(formatPercent(*row.shareOfPreload, session.units(), 1)) : QString();
             },
         .value = [](const LoadRow& row) { return row.shareOfPreload ? valueOf(*row.shareOfPreload) : SortValue(); },
         .isFigure = true}};
}

} // namespace

GirdleLoadPage::GirdleLoadPage(RecordSession& given, QWidget* parent)
    : GirdlePage(given, parent), m_summary(new Label(this)), m_rail(new QComboBox(this)),
      m_table(new Table<LoadRow, Position>(
          tr("Loads"), [](const LoadRow& row) { return row.at.place; }, loadColumns(given), this)),
      m_largest(new QLineEdit(this)), m_band(new QLineEdit(this)), m_bandFor(new Label(this)),
      m_costOf(new Label(this)), m_assumptions(new Label(this)) {
    build();
}

void GirdleLoadPage::build() {
    m_table->setObjectName(QStringLiteral("loads"));
    m_summary->setObjectName(QStringLiteral("loadSummary"));
    m_largest->setObjectName(QStringLiteral("largestLoad"));
    m_band->setObjectName(QStringLiteral("bandOfResidual"));
    m_bandFor->setObjectName(QStringLiteral("bandForLoad"));
    m_costOf->setObjectName(QStringLiteral("costOfBand"));
    for (Label* label : {m_summary, m_bandFor, m_costOf, m_assumptions}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    m_assumptions->setForegroundRole(QPalette::PlaceholderText);
    m_assumptions->setAlignment(Qt::AlignTop);
    m_rail->addItem(tr("bolted to the pan rail"));
    m_rail->addItem(tr("on its nuts alone"));
    nameBox(*m_rail, tr("How the girdle is held"));
    const bool isInch = units().length == LengthUnit::inch;
    m_largest->setText(isInch ? QStringLiteral("50 lbf") : QStringLiteral("200 N"));
    m_band->setText(qtText(format(residualBand(facts()).band.hi().magnitude(), units())));
    auto* form = new QFormLayout;
    addRow(form, tr("The girdle is"), m_rail);
    auto* worth = new QFormLayout;
    addRow(worth, tr("No load over"), m_largest);
    worth->addRow(m_bandFor);
    addRow(worth, tr("Residuals within ±"), m_band);
    worth->addRow(m_costOf);
    auto* assumptions = new QScrollArea(this);
    assumptions->setWidget(m_assumptions);
    assumptions->setWidgetResizable(true);
    assumptions->setFrameShape(QFrame::NoFrame);
    assumptions->setAccessibleName(tr("What the loads assume"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_summary);
    column->addLayout(form);
    column->addWidget(m_table, 3);
    column->addLayout(worth);
    column->addWidget(assumptions, 2);
    setFocusProxy(m_table);
    putProxyFirst(*this);
    connect(m_rail, &QComboBox::activated, this, &GirdleLoadPage::railChosen);
    connect(m_table, &TableView::lineSelected, this, [this] {
        if (const auto place = m_table->selectedKey()) {
            emit chosen(*place);
        }
    });
    for (QLineEdit* edit : {m_largest, m_band}) {
        connect(edit, &QLineEdit::textChanged, this, &GirdleLoadPage::showWorth);
    }
}

Rail GirdleLoadPage::rail() const {
    return m_rail->currentIndex() == 1 ? Rail::free : Rail::held;
}

void GirdleLoadPage::refresh(Position selected) {
    GirdleRunner& girdle = GirdleRunner::of(session());
    m_girdle = girdle.model();
    m_load = m_girdle ? std::optional(blockLoad(*m_girdle, facts(), assessment(), units())) : std::nullopt;
    m_problem = m_girdle ? QString() : girdle.isBusy() ? tr("Working out …") : qtText(girdle.problem());
    m_summary->setText(m_load ? loadSentence(*m_load, rail(), units()) : m_problem);
    QStringList assumptions;
    if (m_load) {
        for (const std::string& sentence : m_load->assumptions) {
            assumptions << qtText(sentence);
        }
    }
    m_assumptions->setText(assumptions.join(QLatin1Char(' ')));
    showTable(selected);
    showWorth();
}

std::vector<LoadRow> GirdleLoadPage::rows() const {
    std::vector<LoadRow> list;
    for (std::size_t i = 0; m_load && i < m_load->places.size(); ++i) {
        LoadRow& row = list.emplace_back(LoadRow{m_load->places[i], {}, rail() == Rail::held, {}, {}});
        if (!m_load->known) {
            continue;
        }
        const KnownLoad& known = *m_load->known;
        row.force = known.under(rail()).force[i];
        if (row.isHeld) {
            row.uncertainty = known.uncertainty ? std::optional((*known.uncertainty)[i]) : std::nullopt;
            row.shareOfPreload = known.shareOfPreload[i];
        }
    }
    return list;
}

void GirdleLoadPage::showTable(Position selected) {
    const QSignalBlocker quiet(m_table); // what the station chose is no choice of the person's
    m_table->put(rows());
    m_table->select(selected);
}

QString GirdleLoadPage::bandFor(const GirdleModel& model) const {
    const auto largest =
        parseForce(coreText(m_largest->text()), units(), {coreText(tr("the largest load")), newtons(1), newtons(1e6)});
    if (!largest) {
        return qtText(largest.error().sentence);
    }
    const auto band = model.bandFor(largest->value, rail());
    return band ? tr("Residuals within ± %1 keep every load at or below %2, however they are spread.")
                      .arg(qtText(formatFineDown(*band, units())), qtText(format(largest->value, units())))
                : tr("Held like this, no residual makes a load.");
}

QString GirdleLoadPage::costOf(const GirdleModel& model) const {
    const auto band = parseLength(coreText(m_band->text()), units(),
                                  {coreText(tr("the band of the residual")), Length(1), thou(100)});
    return band ? tr("Residuals within ± %1 can cost up to %2 at one place.")
                      .arg(qtText(format(band->value, units())),
                           qtText(formatUp(model.largestWithin(band->value, rail()), units())))
                : qtText(band.error().sentence);
}

void GirdleLoadPage::showWorth() {
    m_bandFor->setText(m_girdle ? bandFor(*m_girdle) : QString());
    m_costOf->setText(m_girdle ? costOf(*m_girdle) : QString());
}

void GirdleLoadPage::focusField() {
    m_table->setFocus();
}

bool GirdleLoadPage::type(const QString&) {
    return false;
}

} // namespace caprail
