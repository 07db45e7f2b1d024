// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// PDF/A-1b files (ISO 19005-1) with their title, author and language, tagged for readers that speak.
#include <QByteArray>
#include <QDateTime>
#include <QPageSize>
#include <QString>
#include <base/problem.h>
#include <functional>
#include <sheet/pdf_tags.h>
#include <vector>

class QPainter;

namespace caprail::sheet {

struct PdfProperties {
    QString title;
    QString author;  ///< empty: none
    QString creator; ///< the program: "Caprail 0.1.0"
    QDateTime written;
    QString language; ///< that its words are in (BCP 47): "en"
};

/// Paints `pages` pages by `paint(painter, index from 0)`, whose unit is the sheet's and whose origin is the corner of
/// the paper, and writes them to `path` at once: an earlier sheet stays as it is until the new one is complete, and is
/// replaced only where `mayReplace`. Refuses, naming the file, what cannot be written and what store/output_file.h does.
Result<void> writePdf(const QString& path, bool mayReplace, const PdfProperties& properties,
                      QPageSize::PageSizeId paper, int pages, const std::function<void(QPainter&, int)>& paint);

/// The XMP metadata (ISO 16684-1) that PDF/A-1b asks for (ISO 19005-1, 6.7), saying the same as the file's properties.
QByteArray xmpFor(const PdfProperties& properties);

/// Qt's writer knows no author and no structure: the same file with a document information that says everything in
/// `properties`, and tagged with what its painters said (pdf_tags.h). Refuses what is no PDF.
Result<QByteArray> finished(const QByteArray& pdf, const std::vector<PdfElement>& elements,
                            const PdfProperties& properties);

} // namespace caprail::sheet
