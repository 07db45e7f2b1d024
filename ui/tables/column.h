// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What a column of a table, or a list's only one, shows of a row.
#include <QIcon>
#include <QString>
#include <functional>
#include <optional>
#include <session/look.h>
#include <type_traits>
#include <variant>

namespace caprail {

/// What rows are sorted by: a number (whole nanometres, days, counts), or a text, in which "S9" comes before "S10".
/// Nothing, where nothing is known: such rows come last, whichever way the column is sorted.
using SortValue = std::variant<std::monostate, double, QString>;

/// Of a count, a day; of a quantity: what it counts in (core/units).
template <class Number>
requires std::is_arithmetic_v<Number> SortValue valueOf(Number number) {
    return static_cast<double>(number);
}
template <class Quantity>
requires requires(const Quantity& quantity) {
    static_cast<double>(quantity.value());
}
SortValue valueOf(const Quantity& quantity) {
    return static_cast<double>(quantity.value());
}
template <class Quantity> SortValue valueOf(const std::optional<Quantity>& quantity) {
    return quantity ? valueOf(*quantity) : SortValue();
}

/// What can be done with a row.
enum class RowKind {
    usual,
    heading, ///< goes over all columns, bold, above the rows that it is about; cannot be selected
    plain,   ///< is read, and cannot be selected
    off,     ///< is greyed out
};

/// A column, described once; all but the text may be left out. The functions are called whenever a cell is drawn:
/// they may look at what the panel shows (units, language, colours), and at nothing that the row should hold itself.
template <class Row> struct TableColumn {
    // Members begin as {} and not as = {}: at the second GCC 12 stops (internal compiler error).
    QString title{}; ///< in the program's language, without its unit; a list has none
    std::function<QString(const Row&)> text{};
    std::function<QString()> unit{}; ///< shown behind the title; for cells that are bare numbers
    /// What it is sorted by; left out: by `state`, where there is one, else by the text.
    std::function<SortValue(const Row&)> value{};
    /// Gives the ink, and the order when sorted: what is out comes first. The text says the state in a word as well.
    std::function<CheckState(const Row&)> state{};
    /// Where no state says it. An invalid colour: the usual one.
    std::function<QColor(const Row&, const Look&)> ink{};
    bool isFigure = false; ///< set to the right
    std::function<bool(const Row&)> isBold{};
    /// Left out: in a table the text, since a cell may be cut off; in a list none. Empty: none.
    std::function<QString(const Row&)> tip{};
    std::function<QString(const Row&)> spoken{}; ///< to a screen reader, where that is not the text
    std::function<QIcon(const Row&)> icon{};
    std::function<bool(const Row&)> isTicked{}; ///< with `tick`: the cell has a box that a person ticks
    std::function<void(Row&, bool)> tick{};
};

} // namespace caprail
