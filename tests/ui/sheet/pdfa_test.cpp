// SPDX-License-Identifier: GPL-3.0-or-later
/// What ISO 19005-1:2005 (PDF/A-1), level B, asks of a file, as far as it can be seen without a validator of its own
/// (Debian 12 packages none). The clauses are from memory. qpdf writes the file out readably; poppler reads the XMP.
#include "sheet_sample.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <gmock/gmock.h>
#include <sheet/logo.h>

namespace caprail {
namespace {

using testing::HasSubstr;
using testing::Not;

QByteArray output(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(60'000)) << program.toStdString();
    return process.readAllStandardOutput();
}

/// The text of each property of an XMP packet, without the lists around it.
QHash<QString, QString> propertiesIn(const QByteArray& packet) {
    QHash<QString, QString> properties;
    QXmlStreamReader in(packet);
    QString name;
    while (!in.atEnd()) {
        in.readNext();
        static const QStringList containers{QStringLiteral("li"), QStringLiteral("Alt"), QStringLiteral("Seq")};
        if (in.isStartElement() && !containers.contains(in.name())) {
            name = in.name().toString();
        } else if (in.isCharacters() && !in.isWhitespace()) {
            properties[name] += in.text();
        }
    }
    EXPECT_FALSE(in.hasError()) << in.errorString().toStdString();
    return properties;
}

/// A sheet with photos, a diagram, charts and a logo that is half transparent: all that could break the rules.
class PdfA : public testing::Test {
protected:
    static void SetUpTestSuite() {
        folder = new QTemporaryDir;
        path = folder->filePath(QStringLiteral("sheet.pdf"));
        SheetOptions options;
        options.appVersion = QStringLiteral("0.1.0");
        QImage logo(320, 80, QImage::Format_ARGB32);
        logo.fill(QColor(0xa0, 0x30, 0x20, 0x80));
        ASSERT_TRUE(logo.save(folder->filePath(QStringLiteral("logo.png"))));
        options.logo = sheet::readLogo(folder->filePath(QStringLiteral("logo.png"))).value();
        const SheetSample sample;
        ASSERT_TRUE(writeSheet(sample.source(), path, options));
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        raw = file.readAll();
        plain = output(QStringLiteral("qpdf"), {QStringLiteral("--qdf"), QStringLiteral("--no-original-object-ids"),
                                                QStringLiteral("--stream-data=uncompress"), path, QStringLiteral("-")});
        ASSERT_GT(plain.size(), raw.size());
    }
    static void TearDownTestSuite() { delete folder; }

    /// The dictionaries (`N 0 obj << … >>`) that hold a name.
    static QList<QByteArray> dictionariesWith(const QByteArray& name) {
        QList<QByteArray> found;
        for (const QByteArray& object : QByteArray(plain).replace("endobj", "\x01").split('\x01')) {
            const QByteArray head =
                object.left(object.indexOf("stream\n") < 0 ? object.size() : object.indexOf("stream\n"));
            if (head.contains(name)) {
                found << head;
            }
        }
        return found;
    }

    static inline QTemporaryDir* folder = nullptr;
    static inline QString path;
    static inline QByteArray raw;
    static inline QByteArray plain;
};

TEST_F(PdfA, begins_and_ends_as_an_archive_file_does) {
    EXPECT_TRUE(raw.startsWith("%PDF-1.4\n%")); // 6.1.2: header, then a comment …
    for (const char byte : raw.mid(10, 4)) {
        EXPECT_GT(static_cast<unsigned char>(byte), 127); // … of four bytes beyond ASCII
    }
    EXPECT_TRUE(raw.endsWith("%%EOF\n")); // 6.1.3: nothing after the end
    const QByteArray trailer = raw.mid(raw.lastIndexOf("trailer"));
    EXPECT_THAT(trailer.toStdString(), HasSubstr("/ID")); // 6.1.3
    EXPECT_THAT(trailer.toStdString(), Not(HasSubstr("/Encrypt")));
    EXPECT_THAT(raw.toStdString(), Not(HasSubstr("/ObjStm")));    // 6.1.4: no compressed objects, PDF 1.4 has none
    EXPECT_THAT(raw.toStdString(), Not(HasSubstr("/LZWDecode"))); // 6.1.10
}

TEST_F(PdfA, names_the_colours_that_it_means) {
    const auto intents = dictionariesWith("/GTS_PDFA1"); // 6.2.2
    ASSERT_EQ(intents.size(), 1);
    EXPECT_TRUE(intents.front().contains("/DestOutputProfile"));
    // 6.2.3: device colours are those of the output intent, which is RGB: no CMYK beside it.
    EXPECT_EQ(dictionariesWith("/DeviceCMYK").size(), 0);
    static const QRegularExpression cmyk(QStringLiteral("^[\\d. ]+ [kK]$"), QRegularExpression::MultilineOption);
    EXPECT_FALSE(cmyk.match(QString::fromLatin1(plain)).hasMatch());
    EXPECT_TRUE(plain.contains("acsp")); // the profile itself lies in the file (signature of an ICC profile)
}

TEST_F(PdfA, has_no_transparency_and_no_picture_made_smooth_by_the_viewer) {
    for (const QByteArray& mask : dictionariesWith("/SMask")) { // 6.4
        EXPECT_TRUE(mask.contains("/SMask /None")) << mask.toStdString();
    }
    static const QRegularExpression alpha(QStringLiteral("/(ca|CA) (?!1(\\.0)?\\s)"));
    EXPECT_FALSE(alpha.match(QString::fromLatin1(plain)).hasMatch());
    static const QRegularExpression blend(QStringLiteral("/BM /(?!Normal|Compatible)"));
    EXPECT_FALSE(blend.match(QString::fromLatin1(plain)).hasMatch());
    EXPECT_EQ(dictionariesWith("/Transparency").size(), 0);
    for (const QByteArray& picture : dictionariesWith("/Subtype /Image")) { // 6.2.4
        EXPECT_FALSE(picture.contains("/Interpolate true")) << picture.toStdString();
        EXPECT_FALSE(picture.contains("/Alternates"));
    }
    EXPECT_GE(dictionariesWith("/Subtype /Image").size(), 3); // two photos and the logo
}

TEST_F(PdfA, carries_every_font_and_says_which_of_its_glyphs) {
    const auto fonts = dictionariesWith("/Type /FontDescriptor");
    ASSERT_GE(fonts.size(), 3);
    for (const QByteArray& font : fonts) {
        EXPECT_TRUE(font.contains("/FontFile")) << font.toStdString(); // 6.3.4
        EXPECT_TRUE(font.contains("/CIDSet")) << font.toStdString();   // 6.3.5, of subsets
    }
    for (const QByteArray& font : dictionariesWith("/Subtype /CIDFontType2")) {
        EXPECT_TRUE(font.contains("/CIDToGIDMap")) << font.toStdString(); // 6.3.3.2
    }
    EXPECT_EQ(dictionariesWith("/Type3").size(), 0);
}

TEST_F(PdfA, does_nothing_when_it_is_opened) {
    for (const char* name : {"/JavaScript", "/Launch", "/AA", "/OpenAction", "/EmbeddedFile", "/AcroForm"}) {
        EXPECT_EQ(dictionariesWith(QByteArray(name) + ' ').size(), 0) << name; // 6.5, 6.6, 6.9
    }
    static const QRegularExpression annotation(QStringLiteral("/Annots \\[\\s*[^\\s\\]]"));
    EXPECT_FALSE(annotation.match(QString::fromLatin1(plain)).hasMatch());
}

TEST_F(PdfA, says_the_same_in_its_metadata_as_in_its_properties) {
    const auto streams = dictionariesWith("/Type /Metadata"); // 6.7.2
    ASSERT_EQ(streams.size(), 1);
    EXPECT_FALSE(raw.mid(raw.indexOf("/Type /Metadata"), 60).contains("/Filter")); // plain, for programs that scan it
    const auto xmp = propertiesIn(output(QStringLiteral("pdfinfo"), {QStringLiteral("-meta"), path}));
    const auto said = [&](const char* name) { return xmp.value(QString::fromLatin1(name)).toStdString(); };
    EXPECT_EQ(said("part"), "1"); // 6.7.11
    EXPECT_EQ(said("conformance"), "B");
    const std::string info = output(QStringLiteral("pdfinfo"), {QStringLiteral("-isodates"), path}).toStdString();
    // 6.7.3: what stands in both is the same.
    EXPECT_THAT(info, HasSubstr("Title:           " + said("title") + "\n"));
    EXPECT_THAT(info, HasSubstr("Author:          " + said("creator") + "\n"));
    EXPECT_THAT(info, HasSubstr("Creator:         " + said("CreatorTool") + "\n"));
    EXPECT_THAT(info, HasSubstr("Producer:        " + said("Producer") + "\n"));
    const QString begun = QString::fromStdString(said("CreateDate")).left(19); // without the zone, both are UTC
    EXPECT_THAT(info, HasSubstr("CreationDate:    " + begun.toStdString()));
    EXPECT_EQ(raw.count("/Producer"), 1) << "nothing that was said before lies under it";
    EXPECT_EQ(raw.count("startxref"), 1);
    EXPECT_FALSE(said("title").empty());
    EXPECT_FALSE(said("creator").empty());
}

} // namespace
} // namespace caprail
