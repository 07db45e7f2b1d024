// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QLabel>
#include <vector>

namespace caprail {

/// One cell of a small table in a label.
struct TableCell {
    QString text;
    bool isFigure = false; ///< set to the right
    bool isBold = false;
    bool isApart = false; ///< some room to the left of it
};

/// A label that shows its text letter for letter. A bare QLabel guesses: what looks like HTML is taken for it, and the
/// files that it names are opened.
class Label : public QLabel {
public:
    explicit Label(QWidget* parent = nullptr);
    explicit Label(const QString& text, QWidget* parent = nullptr);
    /// Control characters are made visible.
    void setText(const QString& text);
    /// A table, row by row, with `padding` pixels around each cell: the one use of markup, and every text in it is
    /// escaped.
    void setTable(const std::vector<std::vector<TableCell>>& rows, int padding);
};

} // namespace caprail
