// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A text set to a width: the smallest thing that the sheet lays out.
#include <QFont>
#include <QString>
#include <QTextLayout>
#include <memory>
#include <sheet/pdf_tags.h>

class QPainter;

namespace caprail::sheet {

/// Characters of one text that are printed, some ten pages of them: no text that a record may hold takes hours to set.
inline constexpr qsizetype mostCharacters = 40'000;

/// A text broken into lines of one width. A word wider than that is broken anywhere, so nothing runs over the edge.
/// Longer than `mostCharacters`, it is cut there and says so.
class TextBlock {
public:
    TextBlock(const QString& text, const QFont& font, qreal width, Qt::Alignment alignment = Qt::AlignLeft);
    /// A single line of that width, whatever is in the text: of one that does not fit, the beginning and an ellipsis.
    static TextBlock line(const QString& text, const QFont& font, qreal width, Qt::Alignment alignment = Qt::AlignLeft);

    [[nodiscard]] int lines() const { return m_layout->lineCount(); }
    [[nodiscard]] qreal height() const;
    /// Of the lines from `first` up to, not including, `last`.
    [[nodiscard]] qreal heightOf(int first, int last) const;
    /// How many lines from `first` on fit into a height.
    [[nodiscard]] int linesWithin(int first, qreal height) const;
    /// The width of the widest line.
    [[nodiscard]] qreal textWidth() const;
    /// Paints the lines from `first` up to `last` with the left top of the first at `at`.
    void paint(QPainter& painter, QPointF at, const QColor& colour, int first, int last) const;
    void paint(QPainter& painter, QPointF at, const QColor& colour) const { paint(painter, at, colour, 0, lines()); }
    /// All of it, as an element of the file's structure.
    void paintAs(PdfRole role, QPainter& painter, QPointF at, const QColor& colour) const;

    /// What tells this text from all others.
    [[nodiscard]] const void* layout() const { return m_layout.get(); }
    /// The text where it takes several lines, between which no space is painted; else empty.
    [[nodiscard]] QString wordsOverLines() const;

    /// The widest line and the widest word of a text set without a limit.
    struct Widths {
        qreal line = 0;
        qreal word = 0;
    };
    static Widths widthsOf(const QString& text, const QFont& font);

private:
    std::shared_ptr<QTextLayout> m_layout;
};

} // namespace caprail::sheet
