// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/across_columns.h>

#include <ledger/qt_text.h>
#include <records/across_window.h>

namespace caprail {

namespace {

/// A figure, sorted by what it is worth.
template <class Row, class Text, class Value> TableColumn<Row> figure(const QString& title, Text text, Value value) {
    return {.title = title, .text = text, .value = value, .isFigure = true};
}

} // namespace

std::vector<TableColumn<AcrossSpread>> spreadColumns(const Units& units) {
    const auto length = [&units](const QString& title, auto lengthOf) {
        return figure<AcrossSpread>(
            title, [&units, lengthOf](const AcrossSpread& row) { return qtText(format(lengthOf(row), units)); },
            [lengthOf](const AcrossSpread& row) { return valueOf(lengthOf(row)); });
    };
    return {{.title = AcrossWindow::tr("Place"),
             .text =
                 [](const AcrossSpread& row) {
                     return row.place.empty() ? AcrossWindow::tr("engine") : qtText(row.place);
                 }},
            figure<AcrossSpread>(
                AcrossWindow::tr("Values"), [](const AcrossSpread& row) { return QString::number(row.count); },
                [](const AcrossSpread& row) { return valueOf(row.count); }),
            length(AcrossWindow::tr("Smallest"), [](const AcrossSpread& row) { return row.smallest; }),
            length(AcrossWindow::tr("Median"), [](const AcrossSpread& row) { return row.median; }),
            length(AcrossWindow::tr("Largest"), [](const AcrossSpread& row) { return row.largest; }),
            length(AcrossWindow::tr("Range"), [](const AcrossSpread& row) { return row.largest - row.smallest; }),
            figure<AcrossSpread>(
                AcrossWindow::tr("Judged out"), [](const AcrossSpread& row) { return QString::number(row.out); },
                [](const AcrossSpread& row) { return valueOf(row.out); })};
}

std::vector<TableColumn<MovementCount>> movementColumns(const QString& by, const Units& units) {
    return {{.title = by, .text = [](const MovementCount& row) { return qtText(row.what); }},
            figure<MovementCount>(
                AcrossWindow::tr("Moved, of pulls"),
                [](const MovementCount& row) { return AcrossWindow::tr("%1 of %2").arg(row.moved).arg(row.pulled); },
                [](const MovementCount& row) { return valueOf(row.moved); }),
            figure<MovementCount>(
                AcrossWindow::tr("Largest movement"),
                [&units](const MovementCount& row) {
                    return row.moved > 0 ? qtText(format(row.largest, units)) : QStringLiteral("–");
                },
                [](const MovementCount& row) { return row.moved > 0 ? valueOf(row.largest) : SortValue(); })};
}

std::vector<TableColumn<AcrossInstrument>> instrumentsColumns(Date today) {
    using Row = AcrossInstrument;
    const auto day = [](const QString& title, std::optional<Date> Row::*date) {
        return figure<Row>(
            title, [date](const Row& row) { return row.*date ? qtText(format(*(row.*date))) : QStringLiteral("–"); },
            [date](const Row& row) { return row.*date ? valueOf((row.*date)->days) : SortValue(); });
    };
    const auto isOverdue = [today](const Row& row) { return row.due && *row.due < today; };
    auto state = figure<Row>(
        AcrossWindow::tr("State"),
        [today, isOverdue](const Row& row) {
            return isOverdue(row) ? AcrossWindow::tr("✕ overdue")
                   : row.due      ? AcrossWindow::tr("days left: %1").arg(row.due->days - today.days)
                                  : AcrossWindow::tr("no date");
        },
        [](const Row& row) { return row.due ? valueOf(row.due->days) : SortValue(); });
    state.ink = [isOverdue](const Row& row, const Look& look) { return isOverdue(row) ? look.out : QColor(); };
    return {{.title = AcrossWindow::tr("Instrument"),
             .text =
                 [](const Row& row) {
                     return qtText(row.name) +
                            (row.serial.empty() ? QString() : QStringLiteral(", ") + qtText(row.serial));
                 }},
            figure<Row>(
                AcrossWindow::tr("Kind"), [](const Row& row) { return qtShown(row.type); },
                [](const Row& row) { return SortValue(qtShown(row.type)); }),
            day(AcrossWindow::tr("Calibrated"), &Row::calibrated),
            day(AcrossWindow::tr("Due"), &Row::due),
            state,
            figure<Row>(
                AcrossWindow::tr("Pulls"),
                [](const Row& row) {
                    return row.dueCycles ? AcrossWindow::tr("%1 of %2").arg(row.cycles).arg(*row.dueCycles)
                                         : QStringLiteral("–");
                },
                [](const Row& row) { return row.dueCycles ? valueOf(row.cycles) : SortValue(); }),
            figure<Row>(
                AcrossWindow::tr("Records"), [](const Row& row) { return QString::number(row.records); },
                [](const Row& row) { return valueOf(row.records); })};
}

} // namespace caprail
