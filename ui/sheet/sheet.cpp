// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sheet.h>

#include <QBuffer>
#include <QDir>
#include <QFileInfo>
#include <QPrinter>
#include <QRegularExpression>
#include <algorithm>
#include <base/say.h>
#include <cstdio>
#include <session/language.h>
#include <sheet/document.h>
#include <sheet/layout_card.h>
#include <sheet/pdf_file.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>
#include <store/file/output_file.h>
#include <store/file/path_text.h>
#include <store/sqlite/database.h>

namespace caprail {

using sheet::Sheet; // by this name alone, so that its words have one context for translators

namespace {

sheet::PdfProperties propertiesFor(const QString& title, const SheetSource& source, const SheetOptions& options) {
    return {title, sheet::shopOf(source, options), (QStringLiteral("Caprail ") + options.appVersion).trimmed(),
            QDateTime::currentDateTimeUtc(), spokenLanguage()};
}

Result<void> writeDocument(const sheet::Document& document, const SheetSource& source, const QString& pdfPath,
                           const SheetOptions& options) {
    return sheet::writePdf(pdfPath, options.mayReplace, propertiesFor(document.title(), source, options),
                           options.pageSize, document.pages(),
                           [&](QPainter& painter, int index) { document.paint(painter, index); });
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
    if (auto font = sheet::haveFont(); !font) {
        return tl::unexpected(font.error());
    }
    const std::vector<QImage> pages = sheetPages(source, options, dotsPerInch);
    const int digits = static_cast<int>(QString::number(pages.size()).size());
    const QFileInfo target(pngPath);
    const auto pathOf = [&](int page) {
        const QString number = QStringLiteral("%1").arg(page, digits, 10, QLatin1Char('0'));
        return QStringLiteral("%1/%2-%3.png").arg(target.path(), target.completeBaseName(), number);
    };
    // No page is written while another one's place is not good.
    for (int page = 1; page <= static_cast<int>(pages.size()); ++page) {
        const std::string path = pathBytes(pathOf(page));
        if (auto good = judgeOutputPath(path, OutputSort::sheet); !good) {
            return tl::unexpected(good.error());
        }
        if (!options.mayReplace && QFileInfo::exists(pathOf(page))) {
            return refuse(Core::say("%1 exists already and is not overwritten: choose another name.", inQuotes(path)));
        }
    }
    QStringList written;
    for (const QImage& page : pages) {
        const QString path = pathOf(static_cast<int>(written.size()) + 1);
        QBuffer buffer;
        buffer.open(QIODevice::WriteOnly);
        page.save(&buffer, "PNG");
        const QByteArray& bytes = buffer.data();
        auto done = writeOutput(pathBytes(path), OutputSort::sheet, options.mayReplace,
                                std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
        if (!done) {
            for (const QString& one : options.mayReplace ? QStringList() : written) {
                (void)std::remove(pathBytes(one).c_str());
            }
            return tl::unexpected(done.error());
        }
        written << path;
    }
    return written;
}

QStringList existingPages(const QString& pngPath) {
    const QFileInfo target(pngPath);
    const QRegularExpression page(
        QStringLiteral("^%1-[0-9]+\\.png$").arg(QRegularExpression::escape(target.completeBaseName())));
    return target.dir().entryList(QDir::Files).filter(page);
}

Result<void> writeLayoutCard(const SheetSource& source, const QString& pdfPath, const SheetOptions& options) {
    if (!source.facts.layout) {
        return refuse(
            Sheet::tr("There is no layout card without an engine layout: set it at the engine station.").toStdString());
    }
    const sheet::LayoutCard card(source, options, sheet::pageSize(options.pageSize));
    return sheet::writePdf(pdfPath, options.mayReplace, propertiesFor(card.title(), source, options), options.pageSize,
                           card.pages(), [&](QPainter& painter, int index) { card.paint(painter, index); });
}

} // namespace caprail
