// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/filled.h>
#include <sheet/document.h>

#include <sheet/sections.h>
#include <sheet/sheet_text.h>
#include <shop/build_comparison.h>
#include <utility>
#include <work/block_load.h>

namespace caprail::sheet {

QSizeF pageSize(QPageSize::PageSizeId paper) {
    const QSizeF inPoints = QPageSize(paper).size(QPageSize::Point);
    return {points(inPoints.width()), points(inPoints.height())};
}

namespace {

/// The source as it is, with a girdle of its own where nobody gives one: made once, and only if it is asked for.
SheetSource withGirdle(SheetSource source) {
    if (!source.girdle) {
        source.girdle = [&facts = source.facts, own = SharedGirdle(), isMade = false]() mutable {
            if (!std::exchange(isMade, true)) {
                const auto made = girdleModel(facts);
                own = made ? std::make_shared<const GirdleModel>(*made) : nullptr;
            }
            return own;
        };
    }
    return source;
}

} // namespace

Document::Document(const SheetSource& source, const SheetOptions& options, QSizeF page)
    : m_source(withGirdle(source)), m_options(options), m_flow(page, m_type),
      m_times(zoneText(source.ledger, options.zone)),
      m_title(titleOf(Sheet::tr("Build sheet: %1"), Sheet::tr("build %1").arg(source.facts.build))) {
    const Writing w{m_flow, m_source, m_options, m_times};
    using Section = void (*)(const Writing&);
    struct Part {
        Section write;
        bool isWhole = false; ///< not parted where a page holds it
    };
    // The first pages are what a customer frames; the rest is an annex of tables.
    for (const Part part : {Part{titleSection},
                            {verdictSection},
                            {standingSection},
                            {keyFiguresSection, true},
                            {diagramSection, true},
                            {signaturesSection, true},
                            {signedSealSection, true},
                            {runningInSection, true},
                            {m_source.facts.isClosed() ? changesSection : annexSection},
                            {m_source.facts.isClosed() ? annexSection : changesSection},
                            {gatesSection},
                            {valuesSection},
                            {bearingsSection},
                            {fitsSection},
                            {torquesSection},
                            {roundsSection, true},
                            {surveySection},
                            {stacksSection},
                            {flushnessSection, true},
                            {loadSection, true},
                            {trialFitSection},
                            {ownChecksSection},
                            {pickupSection, true},
                            {partsSection},
                            {findingsSection},
                            {photosSection},
                            {instrumentsSection},
                            {struckSection},
                            {closingSection, true},
                            {sealSection, true}}) {
        if (part.isWhole) {
            m_flow.together([&] { part.write(w); });
        } else {
            part.write(w);
        }
    }
}

Document::Document(const SheetSource& source, const SheetOptions& options, QSizeF page,
                   const BuildComparison& comparison)
    : m_source(source), m_options(options), m_flow(page, m_type), m_times(zoneText(source.ledger, options.zone)),
      m_title(titleOf(Sheet::tr("Difference of builds: %1"),
                      Sheet::tr("builds %1 and %2").arg(comparison.then.number).arg(comparison.now.number))) {
    const Writing w{m_flow, m_source, m_options, m_times};
    differenceSection(w, comparison);
    sealSection(w);
}

QString Document::titleOf(const QString& what, const QString& builds) const {
    QStringList parts;
    if (m_source.facts.engine) {
        parts << text(m_source.facts.engine->what.engine) << text(m_source.facts.engine->what.serial);
    }
    return what.arg(joined(parts << builds));
}

void Document::paint(QPainter& painter, int index) const {
    if (index > 0) {
        paintHead(painter);
    }
    m_flow.pages().at(static_cast<std::size_t>(index)).paint(painter);
    paintFoot(painter, index);
}

void Document::paintHead(QPainter& painter) const {
    const qreal width = m_flow.width();
    const QString shop = shopOf(m_source, m_options);
    const qreal y = mm(10);
    // The rest of a long name stands on the first page.
    TextBlock::line(title(), m_type.small, width * 0.6).paint(painter, {m_type.margin, y}, m_type.quiet);
    TextBlock::line(shop, m_type.small, width * 0.4, Qt::AlignRight)
        .paint(painter, {m_type.margin + width * 0.6, y}, m_type.quiet);
    painter.setPen(QPen(m_type.rule, points(0.5)));
    const qreal line = y + points(11.5);
    painter.drawLine(QPointF(m_type.margin, line), QPointF(m_type.margin + width, line));
}

void Document::paintFoot(QPainter& painter, int index) const {
    const qreal width = m_flow.width();
    const qreal y = m_flow.page().height() - mm(16);
    painter.setPen(QPen(m_type.accent, points(0.9)));
    painter.drawLine(QPointF(m_type.margin, y), QPointF(m_type.margin + width, y));
    const QString seal =
        Sheet::tr("Seal %1 over %2 entries").arg(text(shortForm(m_source.ledger.seal()))).arg(m_source.ledger.size());
    const TextBlock first(seal, m_type.small, width * 0.7);
    first.paint(painter, {m_type.margin, y + points(3)}, m_type.ink);
    TextBlock(Sheet::tr("Page %1 of %2").arg(index + 1).arg(pages()), m_type.small, width * 0.3, Qt::AlignRight)
        .paint(painter, {m_type.margin + width * 0.7, y + points(3)}, m_type.ink);
    const qreal second = y + points(3) + first.height();
    TextBlock(Sheet::tr("This seal matches only this exact record. It does not prove that what was entered is true."),
              m_type.small, width * 0.66)
        .paint(painter, {m_type.margin, second}, m_type.quiet);
    const QString times = Sheet::tr("Times: %1").arg(m_times);
    TextBlock::line(times, m_type.small, width * 0.34, Qt::AlignRight)
        .paint(painter, {m_type.margin + width * 0.66, second}, m_type.quiet);
}

} // namespace caprail::sheet
