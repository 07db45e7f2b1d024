// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPainter>
#include <sheet/sheet.h>
#include <sheet/sheet_type.h>

namespace caprail::sheet {

/// A card at 1 : 1 to lay the shims on before they go in: per position a ring as large as a shim, its label, and the
/// shims that belong there with their thicknesses. The rings lie as on the engine where the paper holds them; else in
/// rows, cap by cap, over as many pages as it takes. A rule of known length shows whether it was printed at 1 : 1.
class LayoutCard {
public:
    /// The record must have a layout and outlive the card; `page` in sheet units.
    LayoutCard(const SheetSource& source, const SheetOptions& options, QSizeF page);

    [[nodiscard]] int pages() const { return static_cast<int>(m_pages.size()); }
    void paint(QPainter& painter, int index) const;
    [[nodiscard]] QString title() const;
    /// Whether the rings lie at the engine's own spacing.
    [[nodiscard]] bool isTrueSpacing() const { return m_isTrue; }

private:
    struct Ring {
        Position position;
        QPointF middle; ///< on its page
    };
    bool placeAsOnEngine(const std::vector<Position>& positions);
    void placeInRows(const std::vector<Position>& positions);
    void paintRing(QPainter& painter, const Ring& ring) const;
    void paintFrame(QPainter& painter, int index) const;
    [[nodiscard]] QString wordsFor(Position position) const;

    SheetSource m_source;
    SheetOptions m_options;
    QSizeF m_page;
    SheetType m_type;
    qreal m_hole; ///< diameter of the stud
    qreal m_ring; ///< diameter of the ring
    bool m_isTrue = false;
    std::vector<std::vector<Ring>> m_pages;
};

} // namespace caprail::sheet
