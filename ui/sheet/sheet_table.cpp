// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sheet_table.h>

#include <QPainter>
#include <algorithm>
#include <numeric>
#include <sheet/pdf_tags.h>
#include <sheet/sheet_text.h>

namespace caprail::sheet {

namespace {

constexpr qreal columnGap = points(7);
constexpr qreal turnGap = points(7);  ///< more, from a column set to the right to one set to the left
constexpr qreal rowPad = points(1.6); ///< above and below the text of a row
constexpr qreal headPad = points(2);

QFont fontOf(const SheetCell& cell, const SheetType& type) {
    QFont font = cell.isStrong ? type.cellStrong : type.cell;
    font.setStrikeOut(cell.isStruck);
    return font;
}

QColor colourOf(const SheetCell& cell, const SheetType& type) {
    if (cell.state) {
        return type.look.of(*cell.state);
    }
    return cell.isQuiet || cell.isStruck ? type.quiet : type.ink;
}

} // namespace

SheetCell strongCell(const QString& text) {
    SheetCell cell(text);
    cell.isStrong = true;
    return cell;
}

SheetCell quietCell(const QString& text) {
    SheetCell cell(text);
    cell.isQuiet = true;
    return cell;
}

SheetCell stateCell(CheckState state, const QString& words) {
    SheetCell cell(sign(state) + QChar(QChar::Nbsp) + (words.isEmpty() ? stateWord(state) : words));
    cell.state = state;
    cell.isStrong = state != CheckState::good && state != CheckState::notDone;
    return cell;
}

namespace {

qsizetype charactersIn(const std::vector<SheetCell>& row) {
    return std::accumulate(row.begin(), row.end(), qsizetype{0}, [](qsizetype sum, const SheetCell& cell) {
        return sum + std::min(cell.text.size(), mostCharacters);
    });
}

bool isNotGood(const std::vector<SheetCell>& row) {
    return std::ranges::any_of(row, [](const SheetCell& c) { return c.state && *c.state != CheckState::good; });
}

} // namespace

QString abridge(SheetTable& table) {
    const std::size_t all = table.rows.size();
    qsizetype characters = 0;
    for (const auto& row : table.rows) {
        characters += charactersIn(row);
    }
    if (all <= mostRows && characters <= mostInTable) {
        return {};
    }
    std::vector<std::vector<SheetCell>> kept; // the last first
    characters = 0;
    std::size_t from = all;
    while (from > 0 && kept.size() < mostRows / 2 && (kept.empty() || characters < mostInTable / 2)) {
        characters += charactersIn(table.rows[--from]);
        kept.push_back(std::move(table.rows[from]));
    }
    const std::size_t last = kept.size();
    std::size_t leftOut = 0;
    while (from > 0) {
        auto& row = table.rows[--from];
        if (!isNotGood(row)) {
            continue;
        }
        if (kept.size() < mostRows && characters < mostInTable) {
            characters += charactersIn(row);
            kept.push_back(std::move(row));
        } else {
            ++leftOut;
        }
    }
    std::ranges::reverse(kept);
    table.rows = std::move(kept);
    QStringList said{table.rows.size() == last
                         ? Sheet::tr("Of %1 rows the last %2 are printed.").arg(all).arg(last)
                         : Sheet::tr("Of %1 rows %2 are printed: the last %3, and before them %4 that are not good.")
                               .arg(all)
                               .arg(table.rows.size())
                               .arg(last)
                               .arg(table.rows.size() - last)};
    if (leftOut > 0) {
        said << Sheet::tr("%1 more that are not good are not printed.").arg(leftOut);
    }
    said << Sheet::tr("The record holds them all.");
    return said.join(QLatin1Char(' '));
}

std::optional<QString> takeCommon(SheetTable& table, std::size_t column) {
    if (table.rows.size() < 2) {
        return {};
    }
    const QString text = table.rows.front().at(column).text;
    const auto isAlike = [&](const std::vector<SheetCell>& row) { return row.at(column).text == text; };
    if (text.isEmpty() || text == QStringLiteral("–") || !std::ranges::all_of(table.rows, isAlike)) {
        return {};
    }
    const auto at = static_cast<std::ptrdiff_t>(column);
    table.columns.erase(table.columns.begin() + at);
    for (auto& row : table.rows) {
        row.erase(row.begin() + at);
    }
    return text;
}

/// The space between a column and the next; none after the last.
static qreal gapAfter(const SheetTable& table, std::size_t column) {
    if (column + 1 >= table.columns.size()) {
        return 0;
    }
    const bool turns = (table.columns[column].alignment & Qt::AlignRight) != 0 &&
                       (table.columns[column + 1].alignment & Qt::AlignRight) == 0;
    return columnGap + (turns ? turnGap : 0);
}

void TableLayout::chooseWidths(const SheetTable& table, qreal width) {
    const std::size_t count = table.columns.size();
    std::vector<qreal> least(count, 0);
    std::vector<qreal> natural(count, 0);
    for (std::size_t c = 0; c < count; ++c) {
        const auto take = [&](const TextBlock::Widths& w, bool mayWrap) {
            natural[c] = std::max(natural[c], w.line + gapAfter(table, c));
            least[c] = std::max(least[c], (mayWrap ? w.word : w.line) + gapAfter(table, c));
        };
        const auto head = TextBlock::widthsOf(table.columns[c].head, m_type.cellHead);
        // A head may wrap at its spaces; it does not make a column wide by itself.
        take({head.word, head.word}, true);
        for (const auto& row : table.rows) {
            if (c < row.size()) {
                take(TextBlock::widthsOf(row[c].text, fontOf(row[c], m_type)), true);
            }
        }
        // No word, however long, may starve the other columns.
        least[c] = std::min(least[c], width / static_cast<qreal>(std::max<std::size_t>(count, 3)));
        natural[c] = std::max(natural[c], least[c]);
    }
    const qreal leastSum = std::accumulate(least.begin(), least.end(), 0.0);
    const qreal naturalSum = std::accumulate(natural.begin(), natural.end(), 0.0);
    m_widths.resize(count);
    if (naturalSum <= width || leastSum >= width) {
        const auto& from = naturalSum <= width ? natural : least;
        const qreal stretch = width / (naturalSum <= width ? naturalSum : leastSum);
        std::ranges::transform(from, m_widths.begin(), [&](qreal w) { return w * stretch; });
        return;
    }
    // Short columns keep their width; only those wider than a common limit wrap. The limit is found by halving.
    qreal low = 0;
    qreal high = width;
    for (int step = 0; step < 40; ++step) {
        const qreal limit = (low + high) / 2;
        qreal sum = 0;
        for (std::size_t c = 0; c < count; ++c) {
            m_widths[c] = std::max(least[c], std::min(natural[c], limit));
            sum += m_widths[c];
        }
        (sum > width ? high : low) = limit;
    }
    // What the halving leaves is a hair, and goes to the widest.
    *std::ranges::max_element(m_widths) += width - std::accumulate(m_widths.begin(), m_widths.end(), 0.0);
}

TableLayout::TableLayout(const SheetTable& table, const SheetType& type, qreal width) : m_type(type), m_width(width) {
    chooseWidths(table, width);
    const std::size_t count = table.columns.size();
    const auto inner = [&](std::size_t c) { return m_widths[c] - gapAfter(table, c); };
    for (std::size_t c = 0; c < count; ++c) {
        m_heads.emplace_back(table.columns[c].head, type.cellHead, inner(c), table.columns[c].alignment);
        m_headHeight = std::max(m_headHeight, m_heads.back().height());
    }
    m_headHeight += 2 * headPad;
    for (const auto& row : table.rows) {
        auto& cells = m_rows.emplace_back();
        for (std::size_t c = 0; c < std::min(row.size(), count); ++c) {
            cells.push_back({TextBlock(row[c].text, fontOf(row[c], type), inner(c), table.columns[c].alignment),
                             colourOf(row[c], type)});
        }
    }
}

int TableLayout::linesOf(std::size_t row) const {
    int lines = 1;
    for (const SetCell& cell : m_rows[row]) {
        lines = std::max(lines, cell.block.lines());
    }
    return lines;
}

qreal TableLayout::heightOf(std::size_t row, int first, int last) const {
    qreal tallest = m_type.cell.pixelSize();
    for (const SetCell& cell : m_rows[row]) {
        tallest = std::max(tallest, cell.block.heightOf(first, std::min(last, cell.block.lines())));
    }
    return tallest + 2 * rowPad;
}

qreal TableLayout::rowHeight(std::size_t row) const {
    return heightOf(row, 0, linesOf(row));
}

qreal TableLayout::height() const {
    qreal sum = m_headHeight;
    for (std::size_t row = 0; row < rows(); ++row) {
        sum += rowHeight(row);
    }
    return sum;
}

int TableLayout::linesWithin(std::size_t row, int first, qreal height) const {
    int lines = linesOf(row) - first;
    for (const SetCell& cell : m_rows[row]) {
        if (cell.block.lines() > first) {
            const int fitting = cell.block.linesWithin(first, height - 2 * rowPad);
            lines = fitting < cell.block.lines() - first ? std::min(lines, fitting) : lines;
        }
    }
    return lines;
}

void TableLayout::paintHead(QPainter& painter, QPointF at) const {
    {
        const Tagged table(painter, PdfRole::table, {}, {this});
        const Tagged row(painter, PdfRole::row, {}, {this});
        qreal x = at.x();
        for (std::size_t c = 0; c < m_heads.size(); ++c) {
            const Tagged cell(painter, PdfRole::headCell, m_heads[c].wordsOverLines(), {this, c});
            // Heads of different heights stand on the same line.
            m_heads[c].paint(painter, {x, at.y() + m_headHeight - headPad - m_heads[c].height()}, m_type.quiet);
            x += m_widths[c];
        }
    }
    painter.setPen(QPen(m_type.accent, points(0.9)));
    painter.drawLine(QPointF(at.x(), at.y() + m_headHeight), QPointF(at.x() + m_width, at.y() + m_headHeight));
}

void TableLayout::paintRow(QPainter& painter, QPointF at, std::size_t row, int first, int last) const {
    {
        const Tagged table(painter, PdfRole::table, {}, {this});
        const Tagged told(painter, PdfRole::row, {}, {this, row + 1}); // the head is row 0
        qreal x = at.x();
        for (std::size_t c = 0; c < m_rows[row].size(); ++c) {
            const SetCell& cell = m_rows[row][c];
            if (first < cell.block.lines()) {
                const Tagged one(painter, PdfRole::cell, cell.block.wordsOverLines(),
                                 {this, row * m_widths.size() + c});
                cell.block.paint(painter, {x, at.y() + rowPad}, cell.colour, first, last);
            }
            x += m_widths[c];
        }
    }
    const qreal bottom = at.y() + heightOf(row, first, last);
    painter.setPen(QPen(m_type.rule, points(0.35)));
    painter.drawLine(QPointF(at.x(), bottom), QPointF(at.x() + m_width, bottom));
}

} // namespace caprail::sheet
