// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/budget_window.h>

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QTableWidget>
#include <QVBoxLayout>
#include <stations/common/station_text.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

BudgetWindow::BudgetWindow(const QString& figure, const UncertaintyBudget& budget, const RecordSession& session,
                           QWidget* parent)
    : QDialog(parent), m_table(new QTableWidget(this)) {
    const Units& units = session.units();
    const Coverage coverage = session.facts().rules.coverage == Coverage::student ? Coverage::student : Coverage::two;
    setWindowTitle(literalTitle(tr("Uncertainty of the %1").arg(figure)));
    m_words = qtText(budget.explain(coverage, units));
    auto* words = new Label(m_words, this);
    words->setWordWrap(true);
    words->setTextInteractionFlags(Qt::TextSelectableByMouse);

    const QStringList heads{tr("Source"),      tr("Type"),         tr("Standard uncertainty"),
                            tr("Sensitivity"), tr("Contribution"), tr("Freedom"),
                            tr("Share")};
    const std::vector<BudgetRow> rows = budget.rows(units);
    m_table->setColumnCount(static_cast<int>(heads.size()));
    m_table->setHorizontalHeaderLabels(heads);
    m_table->setRowCount(static_cast<int>(rows.size()));
    m_table->setAccessibleName(windowTitle());
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->verticalHeader()->hide();
    int line = 0;
    for (const BudgetRow& row : rows) {
        const QString source =
            row.correlatedWith.empty() ? qtText(row.name) : tr("%1 (same for all)").arg(qtText(row.name));
        int column = 0;
        for (const QString& text : {source, qtText(row.type), qtText(row.standardUncertainty), qtText(row.sensitivity),
                                    qtText(row.contribution), qtText(row.degreesOfFreedom), qtText(row.share)}) {
            auto* item = new QTableWidgetItem(text);
            item->setTextAlignment((column == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
            m_table->setItem(line, column++, item);
        }
        ++line;
    }
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);

    auto* close = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(close, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(words);
    column->addWidget(m_table, 1);
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
