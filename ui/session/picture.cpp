// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/picture.h>

#include <QBuffer>
#include <QImageReader>
#include <algorithm>
#include <array>
#include <base/say.h>

namespace caprail {

namespace {

constexpr qint64 mostPixels = 200'000'000;

/// ISO/IEC 23008-12, clause 10 (from memory): the brands of still pictures in HEIF, after "ftyp" in the first box.
bool isHeif(const QByteArray& bytes) {
    constexpr std::array brands{"heic", "heix", "heim", "heis", "mif1"};
    return bytes.size() >= 12 && bytes.mid(4, 4) == "ftyp" &&
           std::ranges::any_of(brands, [&](const char* brand) { return bytes.mid(8, 4) == brand; });
}

} // namespace

QByteArray pictureFormat(const QByteArray& bytes) {
    if (bytes.startsWith("\xFF\xD8\xFF")) {
        return "jpeg";
    }
    if (bytes.startsWith("\x89PNG\r\n\x1A\n")) {
        return "png";
    }
    if (bytes.startsWith("RIFF") && bytes.mid(8, 4) == "WEBP") {
        return "webp";
    }
    return isHeif(bytes) ? "heif" : QByteArray();
}

QString readablePictures() {
    const QList<QByteArray> known = QImageReader::supportedImageFormats();
    QStringList endings{QStringLiteral("*.jpg"), QStringLiteral("*.jpeg"), QStringLiteral("*.png")};
    if (known.contains("webp")) {
        endings << QStringLiteral("*.webp");
    }
    if (known.contains("heif")) {
        endings << QStringLiteral("*.heic") << QStringLiteral("*.heif");
    }
    return endings.join(QLatin1Char(' '));
}

Result<QImage> readPicture(const QByteArray& bytes, const WantedSize& wanted) {
    const QByteArray format = pictureFormat(bytes);
    if (format.isEmpty()) {
        return refuse(Core::say("it is not a JPEG, PNG, WebP or HEIF picture"));
    }
    QBuffer buffer;
    buffer.setData(bytes);
    QImageReader reader(&buffer, format);
    reader.setAutoDetectImageFormat(false); // else another reader may take what this one does not
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid() && qint64{size.width()} * size.height() > mostPixels) {
        return refuse(Core::say("it has too many pixels"));
    }
    if (wanted && size.isValid() && wanted(size) != size) {
        reader.setScaledSize(wanted(size).expandedTo({1, 1}));
    }
    QImage picture = reader.read();
    if (picture.isNull()) {
        return refuse(reader.error() == QImageReader::UnsupportedFormatError
                          ? Core::say("pictures of the kind %1 cannot be read on this computer", format.constData())
                          : reader.errorString().toStdString());
    }
    return picture;
}

} // namespace caprail
