// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sheet.h>

#include <QFileInfo>
#include <QPrinter>
#include <QSaveFile>
#include <algorithm>
#include <sheet/document.h>
#include <sheet/layout_card.h>
#include <sheet/pdf_file.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

namespace caprail {

using sheet::Sheet; // by this name alone, so that its words have one context for translators

namespace {

sheet::PdfProperties propertiesFor(const QString& title, const SheetSource& source, const SheetOptions& options) {
    return {title, sheet::shopOf(source, options), (QStringLiteral("Caprail ") + options.appVersion).trimmed(),
            QDateTime::currentDateTimeUtc()};
}

Result<void> writeDocument(const sheet::Document& document, const SheetSource& source, const QString& pdfPath,
                           const SheetOptions& options) {
    return sheet::writePdf(pdfPath, propertiesFor(document.title(), source, options), options.pageSize,
                           document.pages(), [&](QPainter& painter, int index) { document.paint(painter, index); });
}

std::vector<QImage> pagesOf(const sheet::Document& document, const SheetOptions& options, int dotsPerInch) {
    const QSizeF page = sheet::pageSize(options.pageSize);
    const qreal scale = std::clamp(dotsPerInch, 20, 600) / sheet::unitsPerInch;
    std::vector<QImage> pictures;
    for (int index = 0; index < document.pages(); ++index) {
        QImage picture((page * scale).toSize(), QImage::Format_RGB32);
        picture.fill(Qt::white);
        picture.setDotsPerMeterX(qRound(scale * sheet::unitsPerInch / 0.0254));
        picture.setDotsPerMeterY(picture.dotsPerMeterX());
        QPainter painter(&picture);
        painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform);
        painter.scale(scale, scale);
        document.paint(painter, index);
        pictures.push_back(std::move(picture));
    }
    return pictures;
}

} // namespace

Result<void> writeSheet(const SheetSource& source, const QString& pdfPath, const SheetOptions& options) {
    const sheet::Document document(source, options, sheet::pageSize(options.pageSize));
    return writeDocument(document, source, pdfPath, options);
}

Result<void> writeDifferenceSheet(const SheetSource& source, const BuildComparison& comparison, const QString& pdfPath,
                                  const SheetOptions& options) {
    const sheet::Document document(source, options, sheet::pageSize(options.pageSize), comparison);
    return writeDocument(document, source, pdfPath, options);
}

void paintSheet(const SheetSource& source, QPrinter& printer, const SheetOptions& options) {
    const QSizeF paper = printer.pageLayout().fullRectPoints().size();
    const sheet::Document document(source, options, {sheet::points(paper.width()), sheet::points(paper.height())});
    printer.setFullPage(true);
    printer.setDocName(document.title());
    const bool isRange = printer.printRange() == QPrinter::PageRange && printer.fromPage() > 0;
    const int first = isRange ? printer.fromPage() - 1 : 0;
    const int last = isRange ? std::min(printer.toPage(), document.pages()) : document.pages();
    QPainter painter(&printer);
    painter.scale(printer.logicalDpiX() / sheet::unitsPerInch, printer.logicalDpiY() / sheet::unitsPerInch);
    for (int index = first; index < last; ++index) {
        if (index > first) {
            printer.newPage();
        }
        document.paint(painter, index);
    }
}

std::vector<QImage> sheetPages(const SheetSource& source, const SheetOptions& options, int dotsPerInch) {
    return pagesOf(sheet::Document(source, options, sheet::pageSize(options.pageSize)), options, dotsPerInch);
}

std::vector<QImage> differencePages(const SheetSource& source, const BuildComparison& comparison,
                                    const SheetOptions& options, int dotsPerInch) {
    return pagesOf(sheet::Document(source, options, sheet::pageSize(options.pageSize), comparison), options,
                   dotsPerInch);
}

Result<QStringList> writeSheetPages(const SheetSource& source, const QString& pngPath, const SheetOptions& options,
                                    int dotsPerInch) {
    const std::vector<QImage> pages = sheetPages(source, options, dotsPerInch);
    const int digits = static_cast<int>(QString::number(pages.size()).size());
    const QFileInfo target(pngPath);
    QStringList written;
    for (const QImage& page : pages) {
        const QString number = QStringLiteral("%1").arg(written.size() + 1, digits, 10, QLatin1Char('0'));
        const QString path = QStringLiteral("%1/%2-%3.png").arg(target.path(), target.completeBaseName(), number);
        QSaveFile file(path);
        if (!file.open(QIODevice::WriteOnly) || !page.save(&file, "PNG") || !file.commit()) {
            return refuse(Sheet::tr("“%1” cannot be written (%2): choose another folder or name, or free some space.")
                              .arg(QFileInfo(path).fileName(), file.errorString())
                              .toStdString());
        }
        written << path;
    }
    return written;
}

Result<void> writeLayoutCard(const SheetSource& source, const QString& pdfPath, const SheetOptions& options) {
    if (!source.facts.layout) {
        return refuse(
            Sheet::tr("There is no layout card without an engine layout: set it at the engine station.").toStdString());
    }
    const sheet::LayoutCard card(source, options, sheet::pageSize(options.pageSize));
    return sheet::writePdf(pdfPath, propertiesFor(card.title(), source, options), options.pageSize, card.pages(),
                           [&](QPainter& painter, int index) { card.paint(painter, index); });
}

} // namespace caprail
