// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/logo.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <work/sittings.h>

namespace caprail::sheet {

namespace {

constexpr qreal logoHeight = mm(logoHeightMm);
constexpr qreal logoWidth = mm(logoWidthMm);

/// PDF/A-1 knows no transparency (ISO 19005-1, 6.4): a logo is laid on white first.
QImage onWhite(const QImage& logo) {
    QImage flat(logo.size(), QImage::Format_RGB32);
    flat.fill(Qt::white);
    QPainter painter(&flat);
    painter.drawImage(0, 0, logo);
    return flat;
}

/// Everyone who made a live entry in this build, in the order of their first.
QString peopleOf(const SheetSource& source) {
    QStringList names;
    for (const Entry& entry : source.ledger.entries()) {
        const QString name = text(entry.person);
        if (entry.sequence >= source.facts.buildEntry && !names.contains(name)) {
            names << name;
        }
    }
    return names.join(QStringLiteral(", "));
}

/// "ties caps 1 to 4"
QString tiedText(const Facts& facts) {
    if (!facts.layout) {
        return none();
    }
    const LayoutDescription& d = facts.layout->description();
    return d.tiedFirst == d.tiedLast ? Sheet::tr("ties cap %1").arg(d.tiedFirst)
                                     : Sheet::tr("ties caps %1 to %2 of %3").arg(d.tiedFirst).arg(d.tiedLast).arg(d.caps);
}

} // namespace

void letterhead(const Writing& w, const QString& title) {
    const SheetType& type = w.flow.type();
    const QImage logo = w.options.logo.isNull() ? QImage() : onWhite(w.options.logo);
    QSizeF logoSize;
    if (!logo.isNull()) {
        logoSize = QSizeF(logo.size()).scaled(logoWidth, logoHeight, Qt::KeepAspectRatio);
    }
    const qreal left = logo.isNull() ? 0 : logoSize.width() + points(10);
    const TextBlock what(title, type.heading, w.flow.width() / 4, Qt::AlignRight);
    const qreal wide = w.flow.width() * 3 / 4 - left - points(10);
    const TextBlock shop(shopOf(w.source, w.options), type.heading, wide);
    const QString reach = reachOf(w);
    const TextBlock address(reach, type.small, wide);
    const qreal words = shop.height() + (reach.isEmpty() ? 0 : address.height());
    const qreal height = std::max(logoSize.height(), words);
    w.flow.setting(height + points(6), [=, &type](QPainter& painter, const QRectF& area) {
        if (!logo.isNull()) {
            // As it was drawn: a logo's flat colours and edges do not bear a photo's compression.
            painter.setRenderHint(QPainter::LosslessImageRendering);
            const Tagged tagged(painter, PdfRole::figure, Sheet::tr("The shop's logo"));
            painter.drawImage(QRectF(QPointF(area.left(), area.top() + (height - logoSize.height()) / 2), logoSize),
                              logo);
        }
        shop.paintAs(PdfRole::paragraph, painter, {area.left() + left, area.top() + height - words}, type.ink);
        if (!reach.isEmpty()) {
            address.paintAs(PdfRole::paragraph, painter, {area.left() + left, area.top() + height - address.height()},
                            type.quiet);
        }
        what.paintAs(PdfRole::title, painter, {area.right() - w.flow.width() / 4, area.top() + height - what.height()},
                     type.accent);
        painter.fillRect(QRectF(area.left(), area.bottom() - points(1.6), area.width(), points(1.6)), type.accent);
    });
}

void titleSection(const Writing& w) {
    letterhead(w, Sheet::tr("Build sheet"));
    const SheetType& type = w.flow.type();
    const Facts& facts = w.facts();
    const auto said = [&](std::string EngineDescribed::*field) {
        return orNone(facts.engine ? text(facts.engine->what.*field) : QString());
    };
    w.flow.paragraph(facts.engine && !facts.engine->what.engine.empty() ? text(facts.engine->what.engine)
                                                                        : Sheet::tr("Engine not described"),
                     type.title, type.ink);
    const auto& entries = w.source.ledger.entries();
    const std::size_t first = facts.buildEntry > 0 ? static_cast<std::size_t>(facts.buildEntry - 1) : 0;
    w.flow.values(
        {{Sheet::tr("Customer"), said(&EngineDescribed::customer)},
         {Sheet::tr("Serial number"), said(&EngineDescribed::serial)},
         {Sheet::tr("Build"), QString::number(facts.build)},
         {Sheet::tr("Begun and last entry"),
          entries.empty() ? none() : w.fromTo(entries.at(first).time, entries.back().time)},
         {Sheet::tr("Work"), entries.empty() ? none()
                                             : text(describeWork(sittingsOf(w.source.ledger, facts.buildEntry),
                                                                 w.units().decimalMark))},
         {Sheet::tr("By"), entries.empty() ? none() : peopleOf(w.source)},
         {Sheet::tr("Girdle"), tiedText(facts)}},
        4);
    if (facts.engine && !facts.engine->what.note.empty()) {
        w.flow.paragraph(text(facts.engine->what.note));
    }
}

} // namespace caprail::sheet
