// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sheet_flow.h>

#include <algorithm>

namespace caprail::sheet {

void SheetPage::paint(QPainter& painter) const {
    for (const Mark& mark : marks) {
        painter.save();
        mark(painter);
        painter.restore();
    }
}

SheetFlow::SheetFlow(QSizeF page, const SheetType& type) : m_page(page), m_type(type) {
    newPage();
}

void SheetFlow::newPage() {
    m_pages.emplace_back();
    m_y = m_type.topMargin;
}

void SheetFlow::putHeld(const Held& held) {
    m_y += m_y > m_type.topMargin ? held.above : 0;
    put([at = QPointF(m_type.margin, m_y), held, right = m_page.width() - m_type.margin,
         rule = QPen(m_type.rule, points(0.5))](QPainter& painter) {
        held.block.paintAs(held.role, painter, at, held.colour);
        if (held.isRuled) {
            painter.setPen(rule);
            const qreal line = at.y() + held.block.height() + points(1.5);
            painter.drawLine(QPointF(at.x(), line), QPointF(right, line));
        }
    });
    m_y += held.block.height() + held.below;
}

QPointF SheetFlow::claim(qreal height) {
    qreal held = 0;
    for (const Held& one : m_held) {
        held += one.above + one.block.height() + one.below;
    }
    if (m_y + held + height > bottom() && m_y > m_type.topMargin) {
        newPage();
    }
    for (const Held& one : std::exchange(m_held, {})) {
        putHeld(one);
    }
    const QPointF at(m_type.margin, m_y);
    m_y += height;
    return at;
}

void SheetFlow::heading(const QString& text) {
    m_held.push_back(
        {TextBlock(text, m_type.heading, width()), m_type.accent, points(15), points(5.5), PdfRole::heading, true});
}

void SheetFlow::subheading(const QString& text) {
    m_held.push_back({TextBlock(text, m_type.subheading, width()), m_type.ink, points(m_held.empty() ? 8 : 3),
                      points(1.5), PdfRole::subheading});
}

void SheetFlow::introduction(const QString& text) {
    m_held.push_back({TextBlock(text, m_type.small, width()), m_type.quiet, 0, points(3)});
}

void SheetFlow::paragraph(const QString& text, const QFont& font, const QColor& colour) {
    const TextBlock block(text, font, width());
    int line = 0;
    while (line < block.lines()) {
        const int least = std::min(2, block.lines() - line);
        const QPointF at = claim(block.heightOf(line, line + least));
        int last = line + least + block.linesWithin(line + least, bottom() - m_y);
        if (last == block.lines() - 1 && last - line > 2) {
            --last; // no single line on the next page
        }
        m_y += block.heightOf(line + least, last);
        put([=](QPainter& painter) {
            const Tagged tagged(painter, PdfRole::paragraph, block.wordsOverLines(), {block.layout()});
            block.paint(painter, at, colour, line, last);
        });
        line = last;
    }
    m_y += points(3);
}

void SheetFlow::stateHeading(CheckState state, const QString& sentence) {
    m_held.push_back({TextBlock(sign(state) + QStringLiteral("  ") + sentence, m_type.strong, width()),
                      m_type.look.of(state), points(5), points(2)});
}

void SheetFlow::stateLine(CheckState state, const QString& sentence) {
    paragraph(sign(state) + QStringLiteral("  ") + sentence, m_type.strong, m_type.look.of(state));
}

void SheetFlow::values(const std::vector<LabelledValue>& list, int columns) {
    const qreal gap = points(10);
    const qreal each = (width() - gap * (columns - 1)) / columns;
    for (std::size_t first = 0; first < list.size(); first += static_cast<std::size_t>(columns)) {
        std::vector<std::pair<TextBlock, TextBlock>> row;
        qreal label = 0;
        qreal value = 0;
        for (std::size_t i = first; i < std::min(list.size(), first + static_cast<std::size_t>(columns)); ++i) {
            row.emplace_back(TextBlock(list[i].label, m_type.small, each), TextBlock(list[i].value, m_type.body, each));
            label = std::max(label, row.back().first.height());
            value = std::max(value, row.back().second.height());
        }
        const QPointF at = claim(label + value);
        put([=, &type = m_type](QPainter& painter) {
            QPointF corner = at;
            for (const auto& [name, what] : row) {
                // Labels of different heights stand on the same line, right above their values.
                name.paintAs(PdfRole::paragraph, painter, corner + QPointF(0, label - name.height()), type.quiet);
                what.paintAs(PdfRole::paragraph, painter, corner + QPointF(0, label), type.ink);
                corner.rx() += each + gap;
            }
        });
        m_y += points(4);
    }
}

void SheetFlow::tallRow(const std::shared_ptr<const TableLayout>& layout, std::size_t row) {
    int line = 0;
    while (line < layout->linesOf(row)) {
        // At least one line, so that the row always comes to its end.
        const int fitting = std::max(1, layout->linesWithin(row, line, bottom() - m_y));
        const int last = line + fitting;
        const QPointF at(m_type.margin, m_y);
        put([=](QPainter& painter) { layout->paintRow(painter, at, row, line, last); });
        m_y += layout->heightOf(row, line, last);
        line = last;
        if (line < layout->linesOf(row)) {
            newPage();
            put([=, head = QPointF(m_type.margin, m_y)](QPainter& painter) { layout->paintHead(painter, head); });
            m_y += layout->headHeight();
        }
    }
}

void SheetFlow::table(SheetTable table) {
    if (table.rows.empty()) {
        return;
    }
    if (const QString leftOut = abridge(table); !leftOut.isEmpty()) {
        introduction(leftOut);
    }
    const auto layout = std::make_shared<const TableLayout>(table, m_type, width());
    const qreal whole = bottom() - m_type.topMargin;
    const auto isTall = [&](std::size_t row) { return layout->rowHeight(row) > whole / 3; };
    // A small table moves to the next page as one; a larger one begins with two rows or more under its head.
    qreal beginning = layout->headHeight();
    for (std::size_t row = 0; row < std::min<std::size_t>(2, layout->rows()); ++row) {
        beginning += isTall(row) ? whole / 8 : layout->rowHeight(row);
    }
    const QPointF head = claim(layout->height() < whole * 0.3 ? layout->height() : beginning);
    put([=](QPainter& painter) { layout->paintHead(painter, head); });
    m_y = head.y() + layout->headHeight();
    for (std::size_t row = 0; row < layout->rows(); ++row) {
        const qreal height = layout->rowHeight(row);
        if (isTall(row)) {
            tallRow(layout, row);
            continue;
        }
        // The last row does not stand alone on a page: the one before it goes along.
        const bool isLastButOne = row + 2 == layout->rows() && row > 1 && !isTall(row + 1);
        const qreal needed = height + (isLastButOne ? layout->rowHeight(row + 1) : 0);
        if (m_y + needed > bottom() && m_y > m_type.topMargin + layout->headHeight()) {
            newPage();
            put([=, at = QPointF(m_type.margin, m_y)](QPainter& painter) { layout->paintHead(painter, at); });
            m_y += layout->headHeight();
        }
        put([=, at = QPointF(m_type.margin, m_y)](QPainter& painter) {
            layout->paintRow(painter, at, row, 0, layout->linesOf(row));
        });
        m_y += height;
    }
    m_y += points(6);
}

void SheetFlow::figure(qreal height, const QString& words, const Drawing& drawing) {
    setting(height, [words, drawing](QPainter& painter, const QRectF& area) {
        const Tagged tagged(painter, PdfRole::figure, words);
        drawing(painter, area);
    });
}

void SheetFlow::setting(qreal height, const Drawing& drawing) {
    const QPointF at = claim(height);
    put([=, area = QRectF(at, QSizeF(width(), height)), font = m_type.figure](QPainter& painter) {
        painter.setFont(font);
        drawing(painter, area);
    });
    m_y += points(4);
}

void SheetFlow::together(const std::function<void()>& write) {
    const std::size_t pages = m_pages.size();
    const std::size_t marks = m_pages.back().marks.size();
    const std::vector<Held> held = m_held;
    const qreal y = m_y;
    write();
    if (m_pages.size() > pages && y > m_type.topMargin) {
        m_pages.resize(pages);
        m_pages.back().marks.resize(marks);
        m_held = held;
        newPage();
        write();
    }
}

qreal SheetFlow::room() const {
    qreal waiting = 0;
    for (const Held& held : m_held) {
        waiting += held.above + held.block.height() + held.below;
    }
    return bottom() - m_y - waiting;
}

void SheetFlow::pageBreak() {
    if (m_y > m_type.topMargin) {
        newPage();
    }
}

void SheetFlow::space(qreal height) {
    if (m_y > m_type.topMargin) {
        m_y += height;
    }
}

} // namespace caprail::sheet
