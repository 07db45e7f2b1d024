// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Tables of the sheet: what stands in them, and how they are set to a width.
#include <QColor>
#include <QString>
#include <assessment/check.h>
#include <optional>
#include <sheet/sheet_block.h>
#include <sheet/sheet_type.h>
#include <vector>

namespace caprail::sheet {

struct SheetCell {
    SheetCell(QString words = {}) : text(std::move(words)) {} // NOLINT(google-explicit-constructor)
    QString text;                                             ///< may hold line breaks
    bool isStrong = false;
    bool isQuiet = false;
    bool isStruck = false;
    std::optional<CheckState> state; ///< the text is this state's: its sign goes before it, its colour on it
};
SheetCell strongCell(const QString& text);
SheetCell quietCell(const QString& text);
/// The sign and word of a state: "✓ good"; with `words`, those instead of the state's own.
SheetCell stateCell(CheckState state, const QString& words = {});

struct SheetColumn {
    QString head;
    Qt::Alignment alignment = Qt::AlignLeft;
};
inline SheetColumn rightColumn(const QString& head) {
    return {head, Qt::AlignRight};
}

struct SheetTable {
    std::vector<SheetColumn> columns;
    std::vector<std::vector<SheetCell>> rows; ///< each with at most as many cells as there are columns
};

/// Rows that a table prints at most, and characters in them.
inline constexpr std::size_t mostRows = 200;
inline constexpr qsizetype mostInTable = 400'000;
/// Takes rows out of a larger table: for one half the last stay, for the other half the last before them that are not
/// good, so that a long history hides nothing that holds the engine up. Gives the sentence that says what was left out,
/// with how many of it are not good; empty where nothing was.
QString abridge(SheetTable& table);

/// Takes a column out of a table of two rows or more where it says the same in every row, to be said once above it.
/// Nothing when it does not, or says nothing.
std::optional<QString> takeCommon(SheetTable& table, std::size_t column);

/// A table set to a width: columns as wide as their texts ask for; where they do not fit, the wide ones wrap. A table
/// is never wider than `width`, whatever it holds.
class TableLayout {
public:
    TableLayout(const SheetTable& table, const SheetType& type, qreal width);

    [[nodiscard]] std::size_t rows() const { return m_rows.size(); }
    [[nodiscard]] qreal headHeight() const { return m_headHeight; }
    [[nodiscard]] qreal rowHeight(std::size_t row) const;
    [[nodiscard]] qreal height() const;
    /// The most lines that a cell of this row has.
    [[nodiscard]] int linesOf(std::size_t row) const;
    /// How many of a row's lines, from `first` on, fit into a height.
    [[nodiscard]] int linesWithin(std::size_t row, int first, qreal height) const;
    /// The height of some lines of a row.
    [[nodiscard]] qreal heightOf(std::size_t row, int first, int last) const;

    void paintHead(QPainter& painter, QPointF at) const;
    /// Paints the lines of a row from `first` up to `last`.
    void paintRow(QPainter& painter, QPointF at, std::size_t row, int first, int last) const;

    [[nodiscard]] const std::vector<qreal>& widths() const { return m_widths; }

private:
    struct SetCell {
        TextBlock block;
        QColor colour;
    };
    void chooseWidths(const SheetTable& table, qreal width);

    const SheetType& m_type;
    std::vector<qreal> m_widths; ///< with the space to the next column
    std::vector<TextBlock> m_heads;
    std::vector<std::vector<SetCell>> m_rows;
    qreal m_headHeight = 0;
    qreal m_width = 0;
};

} // namespace caprail::sheet
