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
    /// What the text is about, to who hears it: said before the text, never in its place.
    void setSubject(const QString& subject);
    /// What follows from the text, to who hears it: said behind the text.
    void setSequel(const QString& sequel);
    /// Both at once, which screen readers are told as one.
    void tell(const QString& text, const QString& sequel);
    /// As QLabel's. A label that can be selected is no stop while it is empty.
    void setTextInteractionFlags(Qt::TextInteractionFlags flags);

private:
    /// What screen readers have: the subject, and the text, a table row by row.
    void speak(const QString& words);
    QString m_subject, m_sequel;
    QString m_words; ///< as they are heard
};

} // namespace caprail
