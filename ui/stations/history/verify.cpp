// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/history/verify.h>

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSplitter>
#include <QTabWidget>
#include <QTableView>
#include <charts/verify_history_chart.h>
#include <session/filled.h>
#include <set>
#include <stations/common/station_text.h>
#include <stations/history/files.h>
#include <stations/history/matrix.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

/// How often something moved: a fastener, or all that one wrench, person or round had to do with.
struct MovementRow {
    QString what;
    std::int64_t moved = 0, pulled = 0;
    Angle largest;
};

namespace {

QComboBox* choiceBox(const QString& name, QWidget* parent) {
    auto* box = new QComboBox(parent);
    box->setAccessibleName(name);
    setTip(box, name);
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    return box;
}

QLineEdit* dayEdit(const QString& name, QWidget* parent) {
    auto* edit = new QLineEdit(parent);
    edit->setAccessibleName(name);
    edit->setPlaceholderText(name);
    edit->setMaximumWidth(edit->fontMetrics().horizontalAdvance(QStringLiteral("0000-00-00   ")) + 16);
    return edit;
}

void refill(QComboBox* box, const std::vector<std::pair<QString, QVariant>>& items) {
    const QVariant chosen = box->currentData();
    box->clear();
    for (const auto& [name, data] : items) {
        box->addItem(name, data);
    }
    box->setCurrentIndex(std::max(0, box->findData(chosen)));
}

Table<MovementRow, QString>* movementTable(const QString& name, const QString& what, const RecordSession& session,
                                           QWidget* parent) {
    return new Table<MovementRow, QString>(
        name, &MovementRow::what,
        {{.title = what, .text = [](const MovementRow& row) { return row.what; }},
         {.title = HistoryVerify::tr("Moved"),
          .text = [](const MovementRow& row) { return QString::number(row.moved); },
          .value = [](const MovementRow& row) { return valueOf(row.moved); },
          .isFigure = true},
         {.title = HistoryVerify::tr("Pulled"),
          .text = [](const MovementRow& row) { return QString::number(row.pulled); },
          .value = [](const MovementRow& row) { return valueOf(row.pulled); },
          .isFigure = true},
         {.title = HistoryVerify::tr("Largest"),
          .text =
              [&session](const MovementRow& row) {
                  return row.moved == 0 ? QString() : qtText(format(row.largest, session.units()));
              },
          .value = [](const MovementRow& row) { return row.moved == 0 ? SortValue() : valueOf(row.largest); }}},
        parent);
}

std::vector<MovementRow> movementRows(const std::vector<MovementCount>& counts) {
    std::vector<MovementRow> rows;
    for (const MovementCount& count : counts) {
        rows.push_back({capitalised(qtText(count.what)), count.moved, count.pulled, count.largest});
    }
    return rows;
}

} // namespace

HistoryVerify::HistoryVerify(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_cap(choiceBox(tr("Which fasteners"), this)),
      m_person(choiceBox(tr("Person"), this)), m_wrench(choiceBox(tr("Wrench"), this)),
      m_outcome(choiceBox(tr("Outcome"), this)), m_order(choiceBox(tr("Order of the rows"), this)),
      m_from(dayEdit(tr("from day"), this)), m_to(dayEdit(tr("to day"), this)), m_count(new Label(this)),
      m_matrix(new QTableView(this)), m_model(new HistoryMatrix(this)), m_chart(new VerifyHistoryChart(this)),
      m_review(new QTabWidget(this)),
      m_places(movementTable(tr("Movements by place"), tr("Place"), session, this)),
      m_wrenches(movementTable(tr("Movements by wrench"), tr("Wrench"), session, this)),
      m_people(movementTable(tr("Movements by person"), tr("Person"), session, this)),
      m_perRound(movementTable(tr("Movements by round"), tr("Round"), session, this)),
      m_trend(new Label(this)) {
    build();
}

QWidget* HistoryVerify::buildFilters() {
    using Outcomes = RoundChoice::Outcomes;
    for (const auto& [name, value] : {std::pair{tr("every outcome"), Outcomes::any},
                                      {tr("moved"), Outcomes::moved},
                                      {tr("held"), Outcomes::held},
                                      {tr("struck"), Outcomes::struck}}) {
        m_outcome->addItem(name, static_cast<int>(value));
    }
    for (const auto& [name, value] : {std::pair{tr("by place"), RoundOrder::place},
                                      {tr("most moved"), RoundOrder::mostMovements},
                                      {tr("largest angle"), RoundOrder::largestAngle}}) {
        m_order->addItem(name, static_cast<int>(value));
    }
    auto* print = new QPushButton(tr("P&rint…"), this);
    auto* table = new QPushButton(tr("E&xport…"), this);
    connect(print, &QPushButton::clicked, this, &HistoryVerify::print);
    connect(table, &QPushButton::clicked, this, [this] { saveAsTable(this, tr("verify-rounds.csv"), csv()); });
    auto* bar = new QWidget(this);
    auto* filters = new QHBoxLayout;
    for (QWidget* each : std::initializer_list<QWidget*>{m_cap, m_person, m_wrench, m_outcome, m_from, m_to}) {
        filters->addWidget(each);
    }
    filters->addStretch(1);
    auto* shown = new QHBoxLayout;
    shown->addWidget(m_order);
    shown->addWidget(m_count, 1);
    shown->addWidget(table);
    shown->addWidget(print);
    auto* rows = new QVBoxLayout(bar);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addLayout(filters);
    rows->addLayout(shown);
    for (QComboBox* box : {m_cap, m_person, m_wrench, m_outcome, m_order}) {
        connect(box, &QComboBox::activated, this, &HistoryVerify::showAnew);
    }
    for (QLineEdit* edit : {m_from, m_to}) {
        connect(edit, &QLineEdit::textChanged, this, &HistoryVerify::showAnew);
    }
    return bar;
}

void HistoryVerify::build() {
    m_matrix->setObjectName(QStringLiteral("roundMatrix"));
    m_cap->setObjectName(QStringLiteral("whichFasteners"));
    m_outcome->setObjectName(QStringLiteral("outcome"));
    m_order->setObjectName(QStringLiteral("rowOrder"));
    m_from->setObjectName(QStringLiteral("fromDay"));
    m_places->setObjectName(QStringLiteral("movementsByPlace"));
    m_matrix->setModel(m_model);
    m_matrix->setAccessibleName(tr("Outcome of every fastener in every round"));
    m_matrix->setTabKeyNavigation(false);
    m_matrix->setCornerButtonEnabled(false);
    m_matrix->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    // Fixed sizes: nothing is measured cell by cell, however many there are.
    m_matrix->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_matrix->horizontalHeader()->setDefaultSectionSize(
        m_matrix->fontMetrics().horizontalAdvance(QStringLiteral("[↷ 00.0°]")) + 12);
    m_matrix->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_matrix->verticalHeader()->setDefaultSectionSize(m_matrix->fontMetrics().lineSpacing() + 6);
    m_trend->setWordWrap(true);
    m_review->addTab(m_places, tr("Places"));
    m_review->addTab(m_wrenches, tr("Wrenches"));
    m_review->addTab(m_people, tr("People"));
    m_review->addTab(m_perRound, tr("Rounds"));
    m_review->setAccessibleName(tr("Counts of movements"));

    auto* review = new QWidget(this);
    auto* reviewColumn = new QVBoxLayout(review);
    reviewColumn->setContentsMargins(0, 0, 0, 0);
    reviewColumn->addWidget(m_review, 1);
    reviewColumn->addWidget(m_trend);
    auto* under = new QSplitter(Qt::Horizontal, this);
    under->addWidget(m_chart);
    under->addWidget(review);
    under->setSizes({580, 440});
    auto* split = new QSplitter(Qt::Vertical, this);
    split->addWidget(m_matrix);
    split->addWidget(under);
    split->setSizes({340, 260});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 8, 6);
    column->addWidget(buildFilters());
    column->addWidget(split, 1);

    connect(m_matrix, &QTableView::activated, this, [this](const QModelIndex& index) {
        if (const RoundCell* cell = m_model->cellAt(index)) {
            emit entryChosen(cell->entry);
        }
    });
    connect(m_matrix->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &HistoryVerify::followRow);
    connect(m_chart, &Chart::entrySelected, this, &HistoryVerify::entryChosen);
}

void HistoryVerify::refresh() {
    if (m_readTo != m_session.ledger().size()) {
        m_history = roundHistory(m_session.ledger());
        m_readTo = m_session.ledger().size();
        refreshChoices();
    }
    m_chart->setData(m_session.facts(), m_session.units(), screenLook());
    showAnew();
}

void HistoryVerify::refreshChoices() {
    std::set<int> caps;
    std::set<std::string> people, wrenches;
    for (const auto& round : m_history.cells) {
        for (const auto& cell : round) {
            if (cell) {
                people.insert(cell->person);
                wrenches.insert(cell->what.instrument);
            }
        }
    }
    for (const FastenerId& f : m_history.fasteners) {
        if (f.kind == FastenerKind::mainCap) {
            caps.insert(f.number);
        }
    }
    wrenches.erase(std::string());
    std::vector<std::pair<QString, QVariant>> capItems{{tr("every place"), 0}, {tr("rods"), -1}};
    for (const int cap : caps) {
        capItems.emplace_back(tr("cap %1").arg(cap), cap);
    }
    std::vector<std::pair<QString, QVariant>> personItems{{tr("everybody"), QString()}};
    for (const auto& person : people) {
        personItems.emplace_back(qtText(person), qtText(person));
    }
    std::vector<std::pair<QString, QVariant>> wrenchItems{{tr("every wrench"), QString()}};
    for (const auto& wrench : wrenches) {
        wrenchItems.emplace_back(qtText(wrench), qtText(wrench));
    }
    refill(m_cap, capItems);
    refill(m_person, personItems);
    refill(m_wrench, wrenchItems);
}

void HistoryVerify::showAnew() {
    const auto day = [](const QLineEdit* edit) -> std::optional<Date> {
        const auto read = parseDate(coreText(edit->text()));
        return read ? std::optional(*read) : std::nullopt;
    };
    m_choice.cap = m_cap->currentData().toInt();
    m_choice.person = m_person->currentData().toString().toStdString();
    m_choice.wrench = m_wrench->currentData().toString().toStdString();
    m_choice.outcomes = static_cast<RoundChoice::Outcomes>(m_outcome->currentData().toInt());
    m_choice.from = day(m_from);
    m_choice.to = day(m_to);
    m_visible = visibleRounds(m_history, m_choice, static_cast<RoundOrder>(m_order->currentData().toInt()));
    m_model->show(m_history, m_visible, m_choice, m_session.units());
    QString counts = tr("rounds: %1, outcomes: %2").arg(m_visible.rounds.size()).arg(m_visible.cells);
    if (m_history.leftOut > 0) {
        counts += QStringLiteral(" · ") + tr("the last %1 of %2 rounds are looked at")
                                              .arg(m_history.rounds.size())
                                              .arg(m_history.rounds.size() + m_history.leftOut);
    }
    const bool isHalfTyped = (!m_from->text().isEmpty() && !m_choice.from) || (!m_to->text().isEmpty() && !m_choice.to);
    m_count->setText(isHalfTyped ? tr("day as 2026-05-04") : counts);
    m_chart->setFilter([choice = m_choice](const RoundPoint& point) {
        return choice.takes(
            {point.outcome->entry, false, 0, point.outcome->time, point.outcome->person, point.outcome->what});
    });
    showReview();
}

void HistoryVerify::showReview() {
    const auto rows = reviewRows(m_history, m_visible, m_choice);
    const MovementReview review = reviewMovement(rows);
    m_places->put(movementRows(review.fasteners));
    m_wrenches->put(movementRows(review.wrenches));
    m_people->put(movementRows(review.persons));
    std::vector<MovementRow> rounds;
    for (const RoundMovement& round : review.rounds) {
        rounds.push_back({qtText(m_history.rounds[static_cast<std::size_t>(round.round - 1)].name(m_history.hasBuilds)),
                          round.moved, round.pulled, round.largest});
    }
    m_perRound->put(std::move(rounds));
    m_trend->setText(m_history.rounds.empty()
                         ? tr("No verify round has been made yet. Rounds are made at the fasteners station.")
                         : qtText(review.trendSentence));
}

/// The chart joins the dots of the fastener whose row is selected.
void HistoryVerify::followRow() {
    const int row = m_matrix->currentIndex().row();
    m_chart->follow(row < 0 ? QString()
                            : qtText(code(m_history.fasteners[m_visible.fasteners[static_cast<std::size_t>(row)]])));
}

QByteArray HistoryVerify::csv() const {
    return QByteArray::fromStdString(roundsCsv(m_history, m_visible, m_choice));
}

QString HistoryVerify::titleText() const {
    QStringList parts{m_session.facts().engine ? qtText(m_session.facts().engine->what.engine) : QString(),
                      tr("verify rounds")};
    for (const QComboBox* box : {m_cap, m_person, m_wrench, m_outcome}) {
        if (box->currentIndex() > 0) {
            parts << box->currentText();
        }
    }
    return joined(parts, QStringLiteral(" · "));
}

void HistoryVerify::print() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageOrientation(QPageLayout::Landscape);
    printer.setDocName(titleText());
    QPrintPreviewDialog dialog(&printer, this);
    connect(&dialog, &QPrintPreviewDialog::paintRequested, this,
            [this](QPrinter* p) { printRounds(*p, m_history, m_visible, m_choice, titleText(), m_session.units()); });
    dialog.exec();
}

void HistoryVerify::focusMatrix() {
    m_matrix->setFocus();
}

} // namespace caprail
