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

/// Photos that are printed: forty rows, some ten pages.
constexpr qsizetype mostPhotos = 120;
/// Names of other files.
constexpr qsizetype mostNames = 100;

struct Thumbnail {
    std::string sha256;
    QString words; ///< what it shows
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
    // Each photo is read when its page is painted: all of them at once would fill the memory.
    w.flow.setting(pictureHeight + points(3) + caption, [=, &type, &source = w.source](QPainter& painter,
                                                                                       const QRectF& area) {
        QPointF at = area.topLeft();
        for (const Thumbnail& one : thumbnails) {
            const QRectF room(at, QSizeF(width, pictureHeight));
            painter.fillRect(room, type.tint);
            const QImage picture =
                readScaled(source.attachment ? source.attachment(one.sha256) : QByteArray(), {width, pictureHeight});
            if (picture.isNull()) {
                painter.setPen(type.quiet);
                painter.drawText(room, Qt::AlignCenter, Sheet::tr("cannot be shown"));
            } else {
                const QSizeF size = QSizeF(picture.size()).scaled(room.size(), Qt::KeepAspectRatio);
                const Tagged tagged(painter, PdfRole::figure, one.words);
                painter.drawImage(QRectF(room.center() - QPointF(size.width() / 2, size.height() / 2), size), picture);
            }
            one.caption.paintAs(PdfRole::paragraph, painter, room.bottomLeft() + QPointF(0, points(3)), type.quiet);
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
    const auto isPhoto = [](const auto& seen) { return seen.what.mediaType.starts_with("image/"); };
    const auto photos = std::ranges::count_if(w.facts().attachments, isPhoto);
    qsizetype skipped = 0;
    for (const auto& seen : w.facts().attachments) {
        const AttachmentAdded& what = seen.what;
        if (isPhoto(seen) && skipped < photos - mostPhotos) {
            ++skipped;
            continue;
        }
        if (!isPhoto(seen)) {
            others << text(what.fileName) +
                          (what.caption.empty() ? QString() : QStringLiteral(": ") + text(what.caption));
            continue;
        }
        const QString shows = text(what.caption.empty() ? what.fileName : what.caption);
        QStringList words{shows};
        words << (what.place.empty() ? QString() : text(what.place) + QStringLiteral(" · ")) + w.byAndWhen(seen);
        if (what.taken) {
            words << Sheet::tr("Taken %1 by the camera's clock").arg(text(shown(*what.taken)));
        }
        if (rows.empty() || rows.back().size() == perRow) {
            rows.emplace_back();
        }
        rows.back().push_back(
            {what.sha256, shows, TextBlock(words.join(QLatin1Char('\n')), w.flow.type().small, width)});
    }
    w.flow.heading(Sheet::tr("Photos and files"));
    if (skipped > 0) {
        w.flow.introduction(
            Sheet::tr("Of %1 photos the last %2 are printed. The record holds them all.").arg(photos).arg(mostPhotos));
    }
    for (const auto& one : rows) {
        row(w, one, width, gap);
    }
    if (others.size() > mostNames) {
        w.flow.paragraph(Sheet::tr("Kept in the record, not printed: %1 files; the last are %2")
                             .arg(others.size())
                             .arg(others.mid(others.size() - mostNames).join(QStringLiteral("; "))));
    } else if (!others.isEmpty()) {
        w.flow.paragraph(Sheet::tr("Kept in the record, not printed: %1").arg(others.join(QStringLiteral("; "))));
    }
}

} // namespace caprail::sheet
