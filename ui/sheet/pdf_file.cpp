// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/pdf_file.h>

#include <QBuffer>
#include <QPainter>
#include <QXmlStreamWriter>
#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFWriter.hh>
#include <sheet/pdf_structure.h>
#include <sheet/sheet_text.h>
#include <sheet/sheet_type.h>
#include <store/file/output_file.h>
#include <store/file/path_text.h>

namespace caprail::sheet {

namespace {

const QString rdf = QStringLiteral("http://www.w3.org/1999/02/22-rdf-syntax-ns#");
const QString dc = QStringLiteral("http://purl.org/dc/elements/1.1/");
const QString xmp = QStringLiteral("http://ns.adobe.com/xap/1.0/");
const QString pdfNamespace = QStringLiteral("http://ns.adobe.com/pdf/1.3/");
const QString pdfaId = QStringLiteral("http://www.aiim.org/pdfa/ns/id/");
const QString xml = QStringLiteral("http://www.w3.org/XML/1998/namespace");

QString producer() {
    return QStringLiteral("Qt ") + QLatin1String(qVersion());
}

/// ISO 32000-1, 7.9.4, in UTC.
QPDFObjectHandle pdfDate(const QDateTime& time) {
    return QPDFObjectHandle::newString(
        ("D:" + time.toUTC().toString(QStringLiteral("yyyyMMddHHmmss")).toLatin1() + "+00'00'").toStdString());
}

QPDFObjectHandle pdfText(const QString& words) {
    return QPDFObjectHandle::newUnicodeString(words.toStdString());
}

void property(QXmlStreamWriter& out, const QString& space, const QString& name, const QString& container,
              const QString& value) {
    out.writeStartElement(space, name);
    out.writeStartElement(rdf, container);
    out.writeStartElement(rdf, QStringLiteral("li"));
    if (container == QLatin1String("Alt")) {
        out.writeAttribute(QStringLiteral("xml:lang"), QStringLiteral("x-default"));
    }
    out.writeCharacters(value);
    out.writeEndElement();
    out.writeEndElement();
    out.writeEndElement();
}

/// A file as Qt writes it, and what was said of what is on its pages.
struct PaintedPdf {
    QByteArray bytes;
    std::vector<PdfElement> elements;
};

PaintedPdf paintedPdf(const PdfProperties& properties, QPageSize::PageSizeId paper, int pages,
                      const std::function<void(QPainter&, int)>& paint) {
    PaintedPdf pdf;
    QBuffer buffer(&pdf.bytes);
    buffer.open(QIODevice::WriteOnly);
    TaggedPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setTitle(properties.title);
    writer.setCreator(properties.creator);
    writer.setDocumentXmpMetadata(xmpFor(properties));
    writer.setResolution(static_cast<int>(unitsPerInch));
    writer.setPageSize(QPageSize(paper));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    QPainter painter(&writer);
    for (int index = 0; index < pages; ++index) {
        if (index > 0) {
            writer.newPage();
        }
        paint(painter, index);
    }
    painter.end();
    pdf.elements = writer.elements();
    return pdf;
}

} // namespace

QByteArray xmpFor(const PdfProperties& properties) {
    QByteArray packet;
    QXmlStreamWriter out(&packet);
    const QString time =
        properties.written.toUTC().toString(QStringLiteral("yyyy-MM-ddTHH:mm:ss")) + QStringLiteral("+00:00");
    out.writeProcessingInstruction(QStringLiteral("xpacket"),
                                   QStringLiteral("begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\""));
    out.writeNamespace(QStringLiteral("adobe:ns:meta/"), QStringLiteral("x"));
    out.writeStartElement(QStringLiteral("adobe:ns:meta/"), QStringLiteral("xmpmeta"));
    out.writeNamespace(rdf, QStringLiteral("rdf"));
    out.writeStartElement(rdf, QStringLiteral("RDF"));
    out.writeNamespace(dc, QStringLiteral("dc"));
    out.writeNamespace(xmp, QStringLiteral("xmp"));
    out.writeNamespace(pdfNamespace, QStringLiteral("pdf"));
    out.writeNamespace(pdfaId, QStringLiteral("pdfaid"));
    out.writeStartElement(rdf, QStringLiteral("Description"));
    out.writeAttribute(rdf, QStringLiteral("about"), QString());
    out.writeTextElement(pdfaId, QStringLiteral("part"), QStringLiteral("1"));
    out.writeTextElement(pdfaId, QStringLiteral("conformance"), QStringLiteral("B"));
    out.writeTextElement(pdfNamespace, QStringLiteral("Producer"), producer());
    out.writeTextElement(xmp, QStringLiteral("CreatorTool"), properties.creator);
    out.writeTextElement(xmp, QStringLiteral("CreateDate"), time);
    out.writeTextElement(xmp, QStringLiteral("ModifyDate"), time);
    out.writeTextElement(xmp, QStringLiteral("MetadataDate"), time);
    property(out, dc, QStringLiteral("title"), QStringLiteral("Alt"), properties.title);
    if (!properties.author.isEmpty()) {
        property(out, dc, QStringLiteral("creator"), QStringLiteral("Seq"), properties.author);
    }
    out.writeEndElement();
    out.writeEndElement();
    out.writeEndElement();
    out.writeProcessingInstruction(QStringLiteral("xpacket"), QStringLiteral("end=\"w\""));
    return packet;
}

Result<QByteArray> finished(const QByteArray& pdf, const std::vector<PdfElement>& elements,
                            const PdfProperties& properties) {
    try { // libqpdf says by exceptions that something is no PDF
        QPDF document;
        document.setSuppressWarnings(true);
        document.processMemoryFile("sheet", pdf.constData(), static_cast<std::size_t>(pdf.size()));
        QPDFObjectHandle info = document.makeIndirectObject(QPDFObjectHandle::newDictionary());
        info.replaceKey("/Title", pdfText(properties.title));
        if (!properties.author.isEmpty()) {
            info.replaceKey("/Author", pdfText(properties.author));
        }
        info.replaceKey("/Creator", pdfText(properties.creator));
        info.replaceKey("/Producer", pdfText(producer()));
        info.replaceKey("/CreationDate", pdfDate(properties.written));
        info.replaceKey("/ModDate", pdfDate(properties.written));
        document.getTrailer().replaceKey("/Info", info);
        tagPages(document, elements, properties.language);
        QPDFWriter writer(document);
        writer.setOutputMemory();
        writer.setStreamDataMode(qpdf_s_preserve);
        writer.setObjectStreamMode(qpdf_o_disable); // PDF 1.4 has none (ISO 19005-1, 6.1.4)
        writer.setNewlineBeforeEndstream(true);     // 6.1.7
        writer.write();
        const auto written = writer.getBufferSharedPointer();
        return QByteArray(reinterpret_cast<const char*>(written->getBuffer()),
                          static_cast<qsizetype>(written->getSize()));
    } catch (const std::exception& error) {
        return refuse(Sheet::tr("The sheet cannot be finished: %1").arg(QString::fromUtf8(error.what())).toStdString());
    }
}

Result<void> writePdf(const QString& path, bool mayReplace, const PdfProperties& properties,
                      QPageSize::PageSizeId paper, int pages, const std::function<void(QPainter&, int)>& paint) {
    if (auto font = haveFont(); !font) {
        return font;
    }
    // Painted only once a file could be made: there is no point in painting what cannot be kept.
    return writeOutput(pathBytes(path), OutputSort::sheet, mayReplace,
                       [&](const std::string& unfinished) -> Result<void> {
                           const PaintedPdf painted = paintedPdf(properties, paper, pages, paint);
                           const auto pdf = finished(painted.bytes, painted.elements, properties);
                           if (!pdf) {
                               return tl::unexpected(pdf.error());
                           }
                           return fillWith(unfinished, {pdf->constData(), static_cast<std::size_t>(pdf->size())});
                       });
}

} // namespace caprail::sheet
