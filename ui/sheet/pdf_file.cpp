// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/pdf_file.h>

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <QRegularExpression>
#include <QXmlStreamWriter>
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

/// A text string of ISO 32000-1, 7.9.2.2: UTF-16 with byte order mark, in hexadecimal.
QByteArray pdfText(const QString& words) {
    QByteArray hex = "<FEFF";
    for (const QChar c : words) {
        hex += QByteArray::number(c.unicode(), 16).rightJustified(4, '0').toUpper();
    }
    return hex + '>';
}

/// ISO 32000-1, 7.9.4, in UTC.
QByteArray pdfDate(const QDateTime& time) {
    return "(D:" + time.toUTC().toString(QStringLiteral("yyyyMMddHHmmss")).toLatin1() + "+00'00')";
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

QByteArray paintedPdf(const PdfProperties& properties, QPageSize::PageSizeId paper, int pages,
                      const std::function<void(QPainter&, int)>& paint) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
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
    return bytes;
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

QByteArray withProperties(const QByteArray& pdf, const PdfProperties& properties) {
    const auto last = [&](const char* pattern) {
        auto matches =
            QRegularExpression(QString::fromLatin1(pattern)).globalMatch(QString::fromLatin1(pdf.right(2048)));
        QRegularExpressionMatch match;
        while (matches.hasNext()) {
            match = matches.next();
        }
        return match;
    };
    const auto start = last("startxref\\s+(\\d+)");
    const auto trailer = last("trailer\\s*<<(.*?)>>\\s*startxref");
    const auto info = last("/Info (\\d+) 0 R");
    if (!start.hasMatch() || !info.hasMatch()) {
        return pdf;
    }
    // What the earlier trailer says of size, root and identity holds on; /Prev leads back to its table.
    QString kept = QString::fromLatin1(pdf.right(2048));
    kept = kept.mid(kept.lastIndexOf(QLatin1String("trailer")) + 7);
    kept = kept.left(kept.lastIndexOf(QLatin1String("startxref"))).trimmed();
    kept.chop(2); // ">>"
    kept.remove(QRegularExpression(QStringLiteral("/Prev \\d+\\s*")));
    QByteArray out = pdf;
    if (!out.endsWith('\n')) {
        out += '\n';
    }
    const qsizetype at = out.size();
    out += info.captured(1).toLatin1() + " 0 obj\n<<\n/Title " + pdfText(properties.title);
    if (!properties.author.isEmpty()) {
        out += "\n/Author " + pdfText(properties.author);
    }
    out += "\n/Creator " + pdfText(properties.creator) + "\n/Producer " + pdfText(producer()) + "\n/CreationDate " +
           pdfDate(properties.written) + "\n/ModDate " + pdfDate(properties.written) + "\n>>\nendobj\n";
    const qsizetype table = out.size();
    out += "xref\n" + info.captured(1).toLatin1() + " 1\n" + QByteArray::number(at).rightJustified(10, '0') +
           " 00000 n \ntrailer\n" + kept.toLatin1().trimmed() + "\n/Prev " + start.captured(1).toLatin1() +
           "\n>>\nstartxref\n" + QByteArray::number(table) + "\n%%EOF\n";
    return out;
}

Result<void> writePdf(const QString& path, bool mayReplace, const PdfProperties& properties,
                      QPageSize::PageSizeId paper, int pages, const std::function<void(QPainter&, int)>& paint) {
    // Painted only once a file could be made: there is no point in painting what cannot be kept.
    return writeOutput(pathBytes(path), OutputSort::sheet, mayReplace, [&](const std::string& unfinished) {
        const QByteArray pdf = withProperties(paintedPdf(properties, paper, pages, paint), properties);
        return fillWith(unfinished, {pdf.constData(), static_cast<std::size_t>(pdf.size())});
    });
}

} // namespace caprail::sheet
