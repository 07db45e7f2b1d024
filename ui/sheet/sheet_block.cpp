// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sheet_block.h>

#include <QFontMetricsF>
#include <QPainter>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <sheet/sheet_text.h>

namespace caprail::sheet {

namespace {

constexpr qreal leading = 1.22; ///< from line to line, in font sizes

qreal lineStep(const QFont& font) {
    return font.pixelSize() * leading;
}

/// As much of a text as is printed, and what is left out.
QString printed(const QString& text) {
    if (text.size() <= mostCharacters) {
        return text;
    }
    const qsizetype end = text.at(mostCharacters - 1).isHighSurrogate() ? mostCharacters - 1 : mostCharacters;
    return text.left(end) + QStringLiteral("… ") +
           Sheet::tr("[cut off here: it has %1 characters, and the record holds them all]").arg(text.size());
}

} // namespace

TextBlock::TextBlock(const QString& text, const QFont& font, qreal width, Qt::Alignment alignment) {
    QString lines = printed(text);
    lines.replace(QLatin1Char('\n'), QChar::LineSeparator);
    m_layout = std::make_shared<QTextLayout>(lines, font);
    QTextOption option(alignment);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setUseDesignMetrics(true);
    m_layout->setTextOption(option);
    m_layout->setCacheEnabled(true);
    m_layout->beginLayout();
    qreal y = 0;
    for (QTextLine line = m_layout->createLine(); line.isValid(); line = m_layout->createLine()) {
        line.setLineWidth(std::max(width, 1.0));
        // The same step whatever font a line falls back to, so that rows stay even.
        line.setPosition(
            {0, y + (lineStep(font) - font.pixelSize() * 0.97) / 2 + font.pixelSize() * 0.9 - line.ascent()});
        y += lineStep(font);
    }
    m_layout->endLayout();
}

TextBlock TextBlock::line(const QString& text, const QFont& font, qreal width, Qt::Alignment alignment) {
    QString joined = text;
    joined.replace(QLatin1Char('\n'), QLatin1Char(' '));
    // A little less than there is room for: shaping in the layout may round the other way.
    return {QFontMetricsF(font).elidedText(joined, Qt::ElideRight, width * 0.97), font, width, alignment};
}

qreal TextBlock::height() const {
    return heightOf(0, lines());
}

qreal TextBlock::heightOf(int first, int last) const {
    return lineStep(m_layout->font()) * std::max(last - first, 0);
}

int TextBlock::linesWithin(int first, qreal height) const {
    return std::min(lines() - first, static_cast<int>(std::floor(height / lineStep(m_layout->font()) + 1e-6)));
}

qreal TextBlock::textWidth() const {
    qreal widest = 0;
    for (int i = 0; i < lines(); ++i) {
        widest = std::max(widest, m_layout->lineAt(i).naturalTextWidth());
    }
    return widest;
}

void TextBlock::paint(QPainter& painter, QPointF at, const QColor& colour, int first, int last) const {
    painter.setPen(colour);
    const QPointF top = at - QPointF(0, heightOf(0, first));
    for (int i = first; i < std::min(last, lines()); ++i) {
        m_layout->lineAt(i).draw(&painter, top);
    }
}

QString TextBlock::wordsOverLines() const {
    return lines() > 1 ? m_layout->text().replace(QChar::LineSeparator, QLatin1Char('\n')) : QString();
}

void TextBlock::paintAs(PdfRole role, QPainter& painter, QPointF at, const QColor& colour) const {
    const Tagged tagged(painter, role, wordsOverLines());
    paint(painter, at, colour);
}

TextBlock::Widths TextBlock::widthsOf(const QString& text, const QFont& font) {
    const QFontMetricsF metrics(font);
    Widths widths;
    for (const QString& line : printed(text).split(QLatin1Char('\n'))) {
        widths.line = std::max(widths.line, metrics.horizontalAdvance(line));
        for (const QString& piece : line.split(QLatin1Char(' '))) {
            widths.word = std::max(widths.word, metrics.horizontalAdvance(piece));
        }
    }
    // A hair more than measured: shaping in the layout may round the other way.
    return {widths.line * 1.01 + 2, widths.word * 1.01 + 2};
}

} // namespace caprail::sheet
