// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/filled.h>
#include <sheet/layout_card.h>

#include <algorithm>
#include <cmath>
#include <fasteners/thread.h>
#include <sheet/pdf_tags.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

namespace caprail::sheet {

namespace {

constexpr qreal textWidth = mm(46); ///< beside a ring
constexpr qreal headHeight = mm(29);
constexpr qreal footHeight = mm(22);

qreal onPaper(Length length) {
    return mm(inMillimetres(length));
}

/// The main stud's diameter from its group's thread; half an inch where that is not known.
qreal studDiameter(const Facts& facts) {
    const auto positions = facts.layout->positions();
    const FastenerId stud{FastenerKind::mainCap, positions.front().cap, positions.front().side,
                          facts.layout->description().girdleRing};
    const auto* group = facts.groupOf(stud);
    const auto thread = group == nullptr ? Result<Thread>(refuse("")) : parseThread(group->what.thread);
    return onPaper(thread ? thread->nominal() : inches(0.5));
}

} // namespace

LayoutCard::LayoutCard(const SheetSource& source, const SheetOptions& options, QSizeF page)
    : m_source(source), m_options(options), m_page(page), m_hole(studDiameter(source.facts)),
      m_ring(std::max(m_hole * 2.2, mm(22))) { // as wide as a washer: common practice, no source
    const auto positions = source.facts.layout->positions();
    m_isTrue = placeAsOnEngine(positions);
    if (!m_isTrue) {
        placeInRows(positions);
    }
}

QString LayoutCard::title() const {
    const auto& engine = m_source.facts.engine;
    const QString which = engine ? joined({text(engine->what.engine), text(engine->what.serial)}) : QString();
    return which.isEmpty() ? Sheet::tr("Layout card") : Sheet::tr("Layout card: %1").arg(which);
}

bool LayoutCard::placeAsOnEngine(const std::vector<Position>& positions) {
    // The crank runs down the page, front at the top, left on the left: as the card lies beside an engine on its back,
    // seen from the flywheel end it reads the right way.
    qreal top = 0;
    qreal bottom = 0;
    qreal half = 0;
    std::vector<QPointF> points;
    for (const Position p : positions) {
        const PlanPoint at = m_source.facts.layout->at(p);
        points.emplace_back(onPaper(at.y), onPaper(at.x));
        top = points.size() == 1 ? points.back().y() : std::min(top, points.back().y());
        bottom = points.size() == 1 ? points.back().y() : std::max(bottom, points.back().y());
        half = std::max(half, std::abs(points.back().x()));
    }
    const qreal room = m_page.height() - headHeight - footHeight;
    const bool fitsAcross = 2 * half + m_ring + 2 * textWidth <= m_page.width() - 2 * m_type.margin;
    const bool fitsAlong = bottom - top + m_ring <= room;
    const auto tooClose = [&](const QPointF& a, const QPointF& b) {
        return &a != &b && std::hypot(a.x() - b.x(), a.y() - b.y()) < m_ring + mm(2);
    };
    const bool overlap = std::ranges::any_of(points, [&](const QPointF& a) {
        return std::ranges::any_of(points, [&](const QPointF& b) { return tooClose(a, b); });
    });
    if (!fitsAcross || !fitsAlong || overlap) {
        return false;
    }
    auto& page = m_pages.emplace_back();
    const QPointF origin(m_page.width() / 2, headHeight + (room - (bottom - top)) / 2 - top);
    for (std::size_t i = 0; i < positions.size(); ++i) {
        page.push_back({positions[i], origin + points[i]});
    }
    return true;
}

void LayoutCard::placeInRows(const std::vector<Position>& positions) {
    // As far apart as the page allows, and never closer than a finger's breadth needs to lift a shim.
    const qreal room = m_page.height() - headHeight - footHeight;
    const int caps = positions.back().cap - positions.front().cap + 1;
    const int most = std::max(1, static_cast<int>(room / (m_ring + mm(1.5))));
    const int pages = (caps + most - 1) / most;
    const int perPage = (caps + pages - 1) / pages;
    const qreal step = std::min(room / perPage, m_ring + mm(6));
    int row = perPage; // the first cap begins a page
    int cap = 0;
    for (const Position p : positions) {
        if (p.cap != cap) {
            cap = p.cap;
            ++row;
            if (row >= perPage) {
                m_pages.emplace_back();
                row = 0;
            }
        }
        // Rings next to the middle, what belongs on them outside.
        const qreal side = (m_ring / 2 + mm(6)) * (p.side == Side::left ? -1 : 1);
        m_pages.back().push_back({p, {m_page.width() / 2 + side, headHeight + (step * (2 * row + 1)) / 2}});
    }
}

QString LayoutCard::wordsFor(Position position) const {
    const Units& units = m_options.units;
    QStringList lines;
    const auto at = m_source.assessment.stacks.find(position);
    if (at == m_source.assessment.stacks.end()) {
        return Sheet::tr("no stack yet");
    }
    for (const std::string& name : at->second.shims) {
        const auto shim = m_source.facts.shims.find(name);
        QString line = text(name);
        if (shim != m_source.facts.shims.end()) {
            const QString thickness = text(format(shim->second.thickness(), units));
            line +=
                QStringLiteral("  ") + (shim->second.measured() ? thickness : Sheet::tr("%1 as marked").arg(thickness));
        }
        lines << line;
    }
    if (lines.isEmpty()) {
        return Sheet::tr("no shim needed");
    }
    if (lines.size() > 1) {
        lines << QStringLiteral("= ") + text(format(at->second.thickness, units));
    }
    return lines.join(QLatin1Char('\n'));
}

void LayoutCard::paintRing(QPainter& painter, const Ring& ring) const {
    const bool isLeft = ring.position.side == Side::left;
    painter.setBrush(m_type.tint);
    painter.setPen(QPen(m_type.ink, points(0.8)));
    painter.drawEllipse(ring.middle, m_ring / 2, m_ring / 2);
    painter.setBrush(Qt::white);
    painter.setPen(QPen(m_type.rule, points(0.6)));
    painter.drawEllipse(ring.middle, m_hole / 2, m_hole / 2);
    const QRectF hole(ring.middle - QPointF(m_hole, m_hole) / 2, QSizeF(m_hole, m_hole));
    painter.setFont(m_type.subheading);
    painter.setPen(m_type.accent);
    painter.drawText(hole, Qt::AlignCenter, text(code(ring.position)));

    const qreal gap = mm(3);
    const qreal room = std::min(isLeft ? ring.middle.x() - m_ring / 2 - gap - m_type.margin
                                       : m_page.width() - m_type.margin - ring.middle.x() - m_ring / 2 - gap,
                                mm(62));
    const Qt::Alignment side = isLeft ? Qt::AlignRight : Qt::AlignLeft;
    const TextBlock label(capitalised(text(describe(ring.position))), m_type.strong, room, side);
    // A ring leaves room for so many lines; a taller stack is set smaller, down to what can still be read.
    QFont font = m_type.body;
    TextBlock shims(wordsFor(ring.position), font, room, side);
    while (label.height() + shims.height() > m_ring + mm(4) && font.pixelSize() > points(6)) {
        font.setPixelSize(font.pixelSize() - static_cast<int>(points(0.5)));
        shims = TextBlock(wordsFor(ring.position), font, room, side);
    }
    const qreal x = isLeft ? ring.middle.x() - m_ring / 2 - gap - room : ring.middle.x() + m_ring / 2 + gap;
    const qreal y = ring.middle.y() - (label.height() + shims.height()) / 2;
    label.paintAs(PdfRole::paragraph, painter, {x, y}, m_type.ink);
    shims.paintAs(PdfRole::paragraph, painter, {x, y + label.height()}, m_type.ink);
}

void LayoutCard::paintFrame(QPainter& painter, int index) const {
    const qreal width = m_page.width() - 2 * m_type.margin;
    const TextBlock head = TextBlock::line(title(), m_type.heading, width);
    {
        const Tagged tagged(painter, PdfRole::title);
        head.paint(painter, {m_type.margin, mm(11)}, m_type.accent, 0, 1);
    }
    const QString how =
        m_isTrue ? Sheet::tr("The rings lie as the positions do on the engine. Lay each shim on its ring, and "
                             "count them before they go in.")
                 : Sheet::tr("Cap by cap from the front. Lay each shim on its ring, and count them before "
                             "they go in.");
    TextBlock(how, m_type.small, width)
        .paintAs(PdfRole::paragraph, painter, {m_type.margin, mm(11) + head.heightOf(0, 1) + points(2)}, m_type.quiet);
    painter.setFont(m_type.small);
    painter.setPen(m_type.quiet);
    painter.drawText(QRectF(m_type.margin, headHeight - mm(5), width, mm(4)), Qt::AlignCenter, Sheet::tr("▲ front"));

    const bool isInch = m_options.units.length == LengthUnit::inch;
    const qreal length = isInch ? unitsPerInch * 2 : mm(50);
    const qreal y = m_page.height() - mm(17);
    painter.setPen(QPen(m_type.ink, points(0.8)));
    painter.drawLine(QPointF(m_type.margin, y), QPointF(m_type.margin + length, y));
    const int ticks = isInch ? 8 : 10;
    for (int i = 0; i <= ticks; ++i) {
        const qreal x = m_type.margin + length * i / ticks;
        painter.drawLine(QPointF(x, y), QPointF(x, y - (i % (ticks / 2) == 0 ? mm(3) : mm(1.6))));
    }
    TextBlock(isInch ? Sheet::tr("2 in when printed at 1 : 1 (100 %, not “fit to page”)")
                     : Sheet::tr("50 mm when printed at 1 : 1 (100 %, not “fit to page”)"),
              m_type.small, width - length - mm(40))
        .paint(painter, {m_type.margin + length + mm(4), y - points(7)}, m_type.quiet);
    TextBlock(Sheet::tr("Page %1 of %2").arg(index + 1).arg(pages()), m_type.small, mm(34), Qt::AlignRight)
        .paint(painter, {m_page.width() - m_type.margin - mm(34), y - points(7)}, m_type.quiet);
    TextBlock(Sheet::tr("Seal %1").arg(text(shortForm(m_source.ledger.seal()))), m_type.small, width)
        .paint(painter, {m_type.margin, y + points(4)}, m_type.quiet);
}

void LayoutCard::paint(QPainter& painter, int index) const {
    paintFrame(painter, index);
    for (const Ring& ring : m_pages.at(static_cast<std::size_t>(index))) {
        painter.save();
        paintRing(painter, ring);
        painter.restore();
    }
}

} // namespace caprail::sheet
