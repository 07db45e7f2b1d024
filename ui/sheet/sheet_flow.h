// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Blocks of text, tables and figures that flow over pages.
#include <QPainter>
#include <QRectF>
#include <QSizeF>
#include <functional>
#include <sheet/pdf_tags.h>
#include <sheet/sheet_table.h>
#include <sheet/sheet_type.h>
#include <vector>

namespace caprail::sheet {

using Mark = std::function<void(QPainter&)>;
using Drawing = std::function<void(QPainter&, const QRectF&)>;

/// What is painted on one page, in order.
struct SheetPage {
    std::vector<Mark> marks;
    void paint(QPainter& painter) const;
};

/// A label above a value, for facts that need no table.
struct LabelledValue {
    QString label;
    QString value;
};

/// Sets blocks one under the other and begins a new page where one does not fit. A heading stays with what follows;
/// a table's head is repeated on each page that the table runs over; small tables and figures are not parted.
class SheetFlow {
public:
    /// `page` in sheet units; `type` must outlive the pages.
    SheetFlow(QSizeF page, const SheetType& type);

    [[nodiscard]] const SheetType& type() const { return m_type; }
    [[nodiscard]] qreal width() const { return m_page.width() - 2 * m_type.margin; }
    [[nodiscard]] QSizeF page() const { return m_page; }

    void heading(const QString& text);
    void subheading(const QString& text);
    /// A sentence or two between a heading and its table; stays with both.
    void introduction(const QString& text);
    void paragraph(const QString& text) { paragraph(text, m_type.body, m_type.ink); }
    void remark(const QString& text) { paragraph(text, m_type.small, m_type.quiet); }
    void paragraph(const QString& text, const QFont& font, const QColor& colour);
    /// As below, over a table: stays with it.
    void stateHeading(CheckState state, const QString& sentence);
    /// One state with a sentence: the sign and the sentence in the state's colour.
    void stateLine(CheckState state, const QString& sentence);
    /// Facts in so many columns side by side.
    void values(const std::vector<LabelledValue>& list, int columns);
    /// Of a table longer than `mostRows` some rows, with a sentence over it that says which.
    void table(SheetTable table);
    /// A drawing over the whole width; `words` say what it shows to a reader that cannot see it.
    void figure(qreal height, const QString& words, const Drawing& drawing);
    /// Over the whole width, what paints and tags itself (pdf_tags.h): texts that no other block sets so.
    void setting(qreal height, const Drawing& drawing);
    void space(qreal height);
    /// What is left of this page under what was set, less what waits to be set over the next block.
    [[nodiscard]] qreal room() const;
    /// What follows begins on a new page; nothing at the top of one.
    void pageBreak();
    /// What `write` sets stays on one page where a page holds it; else it begins on a new one. It may be called twice.
    void together(const std::function<void()>& write);

    [[nodiscard]] const std::vector<SheetPage>& pages() const { return m_pages; }

private:
    /// A text that waits for what it stands over.
    struct Held {
        TextBlock block;
        QColor colour;
        qreal above; ///< left out at the top of a page
        qreal below;
        PdfRole role = PdfRole::paragraph;
        bool isRuled = false; ///< with a line under it over the whole width
    };
    [[nodiscard]] qreal bottom() const { return m_page.height() - m_type.bottomMargin; }
    void newPage();
    /// Makes room for so much height after the headings that wait; sets those, and gives the place.
    QPointF claim(qreal height);
    void put(Mark mark) { m_pages.back().marks.push_back(std::move(mark)); }
    void putHeld(const Held& held);
    void tallRow(const std::shared_ptr<const TableLayout>& layout, std::size_t row);

    QSizeF m_page;
    const SheetType& m_type;
    std::vector<SheetPage> m_pages;
    std::vector<Held> m_held;
    qreal m_y = 0;
};

} // namespace caprail::sheet
