// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <sheet/sheet.h>
#include <sheet/sheet_flow.h>

namespace caprail {
struct BuildComparison;
}

namespace caprail::sheet {

/// A build sheet set on pages of one size, ready to be painted anywhere. The source must outlive it.
class Document {
public:
    /// `page` in sheet units.
    Document(const SheetSource& source, const SheetOptions& options, QSizeF page);
    /// Of the difference between two builds.
    Document(const SheetSource& source, const SheetOptions& options, QSizeF page, const BuildComparison& comparison);
    Document(const Document&) = delete; // the pages refer to the type
    Document& operator=(const Document&) = delete;

    [[nodiscard]] int pages() const { return static_cast<int>(m_flow.pages().size()); }
    /// Paints page `index` (from 0) into a painter whose unit is the sheet's.
    void paint(QPainter& painter, int index) const;
    /// "Build sheet: Kestrel V8, KL-2207, build 1"
    [[nodiscard]] QString title() const { return m_title; }

private:
    [[nodiscard]] QString titleOf(const QString& what, const QString& builds) const;
    void paintHead(QPainter& painter) const;
    void paintFoot(QPainter& painter, int index) const;

    SheetSource m_source;
    SheetOptions m_options;
    SheetType m_type;
    SheetFlow m_flow;
    QString m_times; ///< the zone of the times, with its distance from UTC
    QString m_title;
};

/// The size of a paper in sheet units, upright.
QSizeF pageSize(QPageSize::PageSizeId paper);

} // namespace caprail::sheet
