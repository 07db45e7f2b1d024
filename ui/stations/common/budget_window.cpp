// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/budget_window.h>

#include <QDialogButtonBox>
#include <QVBoxLayout>
#include <cmath>
#include <limits>
#include <stations/common/station_text.h>
#include <tables/table.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

/// A line of the budget: as it is shown, and what it is worth.
struct BudgetLine {
    std::size_t position;
    BudgetRow shown;
    UncertaintyTerm term;
};

std::vector<TableColumn<BudgetLine>> budgetColumns() {
    const auto figure = [](const QString& title, std::string BudgetRow::*text, auto value) {
        return TableColumn<BudgetLine>{.title = title,
                                  .text = [text](const BudgetLine& line) { return qtText(line.shown.*text); },
                                  .value = value,
                                  .isFigure = true};
    };
    return {{.title = BudgetWindow::tr("Source"),
             .text =
                 [](const BudgetLine& line) {
                     const QString name = qtText(line.shown.name);
                     return line.shown.correlatedWith.empty() ? name : BudgetWindow::tr("%1 (same for all)").arg(name);
                 }},
            {.title = BudgetWindow::tr("Type"),
             .text = [](const BudgetLine& line) { return qtText(line.shown.type); },
             .isFigure = true},
            figure(BudgetWindow::tr("Standard uncertainty"), &BudgetRow::standardUncertainty,
                   [](const BudgetLine& line) { return valueOf(line.term.standardUncertainty); }),
            figure(BudgetWindow::tr("Sensitivity"), &BudgetRow::sensitivity,
                   [](const BudgetLine& line) { return valueOf(line.term.sensitivity); }),
            figure(BudgetWindow::tr("Contribution"), &BudgetRow::contribution,
                   [](const BudgetLine& line) {
                       return valueOf(std::abs(line.term.sensitivity * line.term.standardUncertainty));
                   }),
            figure(BudgetWindow::tr("Freedom"), &BudgetRow::degreesOfFreedom,
                   [](const BudgetLine& line) {
                       return valueOf(
                           line.term.degreesOfFreedom.value_or(std::numeric_limits<double>::infinity()));
                   }),
            figure(BudgetWindow::tr("Share"), &BudgetRow::share,
                   [](const BudgetLine& line) { return valueOf(line.shown.shareOfVariance); })};
}

} // namespace

BudgetWindow::BudgetWindow(const QString& figure, const UncertaintyBudget& budget, const RecordSession& session,
                           QWidget* parent)
    : QDialog(parent) {
    const Units& units = session.units();
    const Coverage coverage = session.facts().rules.coverage == Coverage::student ? Coverage::student : Coverage::two;
    setWindowTitle(literalTitle(tr("Uncertainty of the %1").arg(figure)));
    auto* words = new Label(qtText(budget.explain(coverage, units)), this);
    words->setObjectName(QStringLiteral("budgetWords"));
    words->setWordWrap(true);
    words->setTextInteractionFlags(Qt::TextSelectableByMouse);

    auto* table = new Table<BudgetLine, std::size_t>(windowTitle(), &BudgetLine::position, budgetColumns(), this);
    table->setObjectName(QStringLiteral("budget"));
    table->setStretched(0);
    std::vector<BudgetLine> lines;
    for (BudgetRow& row : budget.rows(units)) {
        const std::size_t position = lines.size();
        lines.push_back({position, std::move(row), budget.terms[position]});
    }
    table->put(std::move(lines));

    auto* close = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(close, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(words);
    column->addWidget(table, 1);
    column->addWidget(close);
    resize(780, 320);
}

BudgetWindow* BudgetWindow::open(const QString& figure, const UncertaintyBudget& budget, const RecordSession& session,
                                 QWidget* parent) {
    auto* window = new BudgetWindow(figure, budget, session, parent);
    window->setAttribute(Qt::WA_DeleteOnClose);
    window->show();
    return window;
}

} // namespace caprail
