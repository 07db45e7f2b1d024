// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/picture.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <algorithm>

namespace caprail::sheet {

namespace {

constexpr int perRow = 3;
constexpr qreal pictureHeight = mm(42);
constexpr qreal picturesPerInch = 220; ///< fine enough for print, small enough for a mail

struct Thumbnail {
    QImage picture; ///< null: it cannot be read
    TextBlock caption;
};

/// Reads a picture no larger than it is printed: a photo of many megapixels costs neither time nor file.
QImage readScaled(const QByteArray& bytes, QSizeF room) {
    const qreal pixelsPerUnit = picturesPerInch / unitsPerInch;
    // Wide enough whichever way the picture lies.
    const int longest = qRound(std::max(room.width(), room.height()) * pixelsPerUnit);
    const auto read = readPicture(bytes, [longest](QSize size) {
        return size.width() > longest || size.height() > longest ? size.scaled(longest, longest, Qt::KeepAspectRatio)
                                                                 : size;
    });
    if (!read) {
        return {};
    }
    QImage flat(read->size(), QImage::Format_RGB32);
    flat.fill(Qt::white);
    QPainter painter(&flat);
    painter.drawImage(0, 0, *read);
    return flat;
}

void row(const Writing& w, const std::vector<Thumbnail>& thumbnails, qreal width, qreal gap) {
    qreal caption = 0;
    for (const Thumbnail& one : thumbnails) {
        caption = std::max(caption, one.caption.height());
    }
    const SheetType& type = w.flow.type();
    w.flow.figure(pictureHeight + points(3) + caption, [=, &type](QPainter& painter, const QRectF& area) {
        QPointF at = area.topLeft();
        for (const Thumbnail& one : thumbnails) {
            const QRectF room(at, QSizeF(width, pictureHeight));
            painter.fillRect(room, type.tint);
            if (one.picture.isNull()) {
                painter.setPen(type.quiet);
                painter.drawText(room, Qt::AlignCenter, Sheet::tr("cannot be shown"));
            } else {
                const QSizeF size = QSizeF(one.picture.size()).scaled(room.size(), Qt::KeepAspectRatio);
                painter.drawImage(QRectF(room.center() - QPointF(size.width() / 2, size.height() / 2), size),
                                  one.picture);
            }
            one.caption.paint(painter, room.bottomLeft() + QPointF(0, points(3)), type.quiet);
            at.rx() += width + gap;
        }
    });
}

} // namespace

void photosSection(const Writing& w) {
    if (w.facts().attachments.empty()) {
        return;
    }
    const qreal gap = points(9);
    const qreal width = (w.flow.width() - gap * (perRow - 1)) / perRow;
    std::vector<std::vector<Thumbnail>> rows;
    QStringList others;
    for (const auto& seen : w.facts().attachments) {
        const AttachmentAdded& what = seen.what;
        if (!text(what.mediaType).startsWith(QLatin1String("image/"))) {
            others << text(what.fileName) +
                          (what.caption.empty() ? QString() : QStringLiteral(": ") + text(what.caption));
            continue;
        }
        QStringList words{text(what.caption.empty() ? what.fileName : what.caption)};
        words << (what.place.empty() ? QString() : text(what.place) + QStringLiteral(" · ")) + w.byAndWhen(seen);
        if (rows.empty() || rows.back().size() == perRow) {
            rows.emplace_back();
        }
        const QByteArray bytes = w.source.attachment ? w.source.attachment(what.sha256) : QByteArray();
        rows.back().push_back({readScaled(bytes, {width, pictureHeight}),
                               TextBlock(words.join(QLatin1Char('\n')), w.flow.type().small, width)});
    }
    w.flow.heading(Sheet::tr("Photos and files"));
    for (const auto& one : rows) {
        row(w, one, width, gap);
    }
    if (!others.isEmpty()) {
        w.flow.paragraph(Sheet::tr("Kept in the record, not printed: %1").arg(others.join(QStringLiteral("; "))));
    }
}

} // namespace caprail::sheet
