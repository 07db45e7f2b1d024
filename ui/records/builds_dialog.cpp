// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/builds_dialog.h>

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <session/look.h>
#include <sheet/difference_tables.h>
#include <shop/builds.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

BuildsDialog::BuildsDialog(RecordSession& session, QWidget* parent)
    : QDialog(parent), m_session(session), m_then(new QComboBox), m_now(new QComboBox), m_words(new Label),
      m_tables(new QTreeWidget), m_comparison(compareLastBuilds(session.ledger())) {
    setWindowTitle(tr("Builds compared"));
    resize(1040, 720);
    m_then->setAccessibleName(tr("Earlier build"));
    m_now->setAccessibleName(tr("Later build"));
    m_words->setWordWrap(true);
    m_tables->setAccessibleName(tr("What is different"));
    m_tables->setUniformRowHeights(true);
    m_tables->setAlternatingRowColors(true);
    m_tables->setHeaderHidden(true);
    m_tables->setRootIsDecorated(false);
    m_tables->setSelectionBehavior(QAbstractItemView::SelectRows);
    const std::vector<Build> builds = buildsOf(session.ledger());
    for (const Build& build : builds) {
        const QString line = buildLine({build.number, build.begun, build.last, build.why, build.facts.isClosed()});
        m_then->addItem(line, static_cast<qint64>(build.number));
        m_now->addItem(line, static_cast<qint64>(build.number));
    }
    m_then->setCurrentIndex(std::max(0, m_then->count() - 2));
    m_now->setCurrentIndex(m_now->count() - 1);
    for (QComboBox* box : {m_then, m_now}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(40);
        connect(box, &QComboBox::currentIndexChanged, this, &BuildsDialog::compare);
    }
    auto* form = new QFormLayout;
    addRow(form, tr("&Then"), m_then);
    addRow(form, tr("&Now"), m_now);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    auto* sheet = buttons->addButton(tr("&Sheet of the difference (PDF)…"), QDialogButtonBox::ActionRole);
    connect(sheet, &QPushButton::clicked, this, &BuildsDialog::sheetRequested);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(m_words);
    column->addWidget(m_tables, 1);
    column->addWidget(buttons);
    sheet->setEnabled(m_comparison.has_value());
    compare();
}

void BuildsDialog::compare() {
    m_comparison = m_then->count() < 2 ? compareLastBuilds(m_session.ledger())
                                       : compareBuilds(m_session.ledger(), m_then->currentData().toLongLong(),
                                                       m_now->currentData().toLongLong());
    m_tables->clear();
    if (!m_comparison) {
        m_words->setText(QString::fromStdString(m_comparison.error().sentence));
        return;
    }
    const auto tables = differenceTables(*m_comparison, m_session.units());
    m_words->setText(tables.empty() ? tr("Neither build holds anything that could be compared yet.")
                                    : tr("± U is the expanded uncertainty of the difference. A difference within it is "
                                         "no measured change. Wear is positive where metal went."));
    const Look look = screenLook();
    qsizetype columns = 1;
    for (const DifferenceTable& table : tables) {
        columns = std::max(columns, table.heads.size());
    }
    m_tables->setColumnCount(static_cast<int>(columns));
    QFont bold = font();
    bold.setBold(true);
    for (const DifferenceTable& table : tables) {
        auto* title = new QTreeWidgetItem(m_tables, {table.title});
        title->setFirstColumnSpanned(true);
        title->setSizeHint(0, {0, fontMetrics().height() + 9}); // the height of every line
        title->setFont(0, bold);
        title->setBackground(0, washed(look.accent, look.paper, 0.10));
        title->setFlags(Qt::ItemIsEnabled);
        auto* heads = new QTreeWidgetItem(m_tables, table.heads);
        heads->setFlags(Qt::ItemIsEnabled);
        for (int i = 0; i < heads->columnCount(); ++i) {
            heads->setForeground(i, look.quiet);
        }
        for (std::size_t row = 0; row < table.rows.size(); ++row) {
            auto* item = new QTreeWidgetItem(m_tables, table.rows[row]);
            QStringList spoken;
            for (qsizetype i = 0; i < table.rows[row].size(); ++i) {
                spoken << table.heads.value(i) + QStringLiteral(": ") + table.rows[row][i];
                if (i > 0) {
                    item->setTextAlignment(static_cast<int>(i), Qt::AlignRight | Qt::AlignVCenter);
                }
            }
            item->setData(0, Qt::AccessibleTextRole, spoken.join(QStringLiteral(", ")));
            const int last = item->columnCount() - 1;
            if (table.changes.contains(row)) {
                item->setFont(last, bold);
                item->setForeground(last, look.close);
                item->setText(last, QStringLiteral("● ") + item->text(last));
            }
        }
        for (int i = 1; i < heads->columnCount(); ++i) {
            heads->setTextAlignment(i, Qt::AlignRight | Qt::AlignVCenter);
        }
    }
    for (int i = 0; i < m_tables->columnCount(); ++i) {
        m_tables->resizeColumnToContents(i);
        m_tables->setColumnWidth(i, m_tables->columnWidth(i) + 12);
    }
}

} // namespace caprail
