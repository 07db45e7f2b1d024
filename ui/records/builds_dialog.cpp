// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/builds_dialog.h>

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QVBoxLayout>
#include <session/look.h>
#include <sheet/difference_tables.h>
#include <shop/builds.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

/// A line of the tables one below the other: a title over all columns, the heads of a table, or one of its rows.
struct DifferenceLine {
    std::size_t position = 0;
    RowKind kind = RowKind::usual;
    QStringList cells;
    bool isChange = false; ///< beyond its uncertainty: the last cell says so
    QString spoken;        ///< the row with its heads, to a screen reader
};

namespace {

TableColumn<DifferenceLine> differenceColumn(int column) {
    const auto isChange = [column](const DifferenceLine& line) {
        return line.isChange && column == line.cells.size() - 1;
    };
    return {.text =
                [column, isChange](const DifferenceLine& line) {
                    return (isChange(line) ? QStringLiteral("● ") : QString()) + line.cells.value(column);
                },
            .ink =
                [isChange](const DifferenceLine& line, const Look& look) {
                    return line.kind == RowKind::plain ? look.quiet : isChange(line) ? look.close : QColor();
                },
            .isFigure = column > 0,
            .isBold = isChange,
            .spoken = [column](const DifferenceLine& line) { return column == 0 ? line.spoken : QString(); }};
}

std::vector<DifferenceLine> linesOf(const std::vector<DifferenceTable>& tables) {
    std::vector<DifferenceLine> lines;
    for (const DifferenceTable& table : tables) {
        lines.push_back({lines.size(), RowKind::heading, {table.title}, false, {}});
        lines.push_back({lines.size(), RowKind::plain, table.heads, false, {}});
        for (std::size_t row = 0; row < table.rows.size(); ++row) {
            const QStringList& cells = table.rows[row];
            QStringList spoken;
            for (qsizetype i = 0; i < cells.size(); ++i) {
                spoken << table.heads.value(i) + QStringLiteral(": ") + cells[i];
            }
            lines.push_back(
                {lines.size(), RowKind::usual, cells, table.changes.contains(row), spoken.join(QStringLiteral(", "))});
        }
    }
    return lines;
}

} // namespace

BuildsDialog::BuildsDialog(RecordSession& session, QWidget* parent)
    : QDialog(parent), m_session(session), m_then(new QComboBox), m_now(new QComboBox), m_words(new Label),
      m_tables(new Table<DifferenceLine, std::size_t>(tr("What is different"), &DifferenceLine::position,
                                                      {differenceColumn(0)}, this)),
      m_comparison(compareLastBuilds(session.ledger())) {
    setWindowTitle(tr("Builds compared"));
    resize(1040, 720);
    m_then->setAccessibleName(tr("Earlier build"));
    m_now->setAccessibleName(tr("Later build"));
    m_words->setWordWrap(true);
    m_tables->setKind([](const DifferenceLine& line) { return line.kind; });
    m_tables->setSortingEnabled(false); // several tables one below the other, each with its own heads
    m_tables->setStretched(-1);
    m_tables->horizontalHeader()->hide();
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
    if (!m_comparison) {
        m_tables->put({});
        m_words->setText(QString::fromStdString(m_comparison.error().sentence));
        return;
    }
    const auto tables = differenceTables(*m_comparison, m_session.units());
    m_words->setText(tables.empty() ? tr("There is nothing to compare yet: neither build holds a measured value.")
                                    : tr("± U is the expanded uncertainty of the difference. A difference within it is "
                                         "not a measured change. Positive is worn."));
    qsizetype count = 1;
    for (const DifferenceTable& table : tables) {
        count = std::max(count, table.heads.size());
    }
    std::vector<TableColumn<DifferenceLine>> columns;
    for (int column = 0; column < static_cast<int>(count); ++column) {
        columns.push_back(differenceColumn(column));
    }
    m_tables->put(std::move(columns), linesOf(tables));
}

} // namespace caprail
