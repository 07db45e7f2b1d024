// SPDX-License-Identifier: GPL-3.0-or-later
#include <store/file/path_text.h>

#include <QUtf8StringView>
#include <algorithm>

namespace caprail {

namespace {

constexpr char16_t firstHeld = 0xDC80;
constexpr char16_t lastHeld = 0xDCFF;

/// Length of the UTF-8 sequence that begins there; 0 when none does.
std::size_t sequenceAt(std::string_view bytes) {
    for (std::size_t length = 1; length <= std::min<std::size_t>(4, bytes.size()); ++length) {
        if (QUtf8StringView(bytes.data(), static_cast<qsizetype>(length)).isValidUtf8()) {
            return length;
        }
    }
    return 0;
}

} // namespace

QString qtPath(std::string_view bytes) {
    const QUtf8StringView whole(bytes.data(), static_cast<qsizetype>(bytes.size()));
    if (whole.isValidUtf8()) {
        return whole.toString();
    }
    QString path;
    while (!bytes.empty()) {
        const std::size_t length = sequenceAt(bytes);
        if (length == 0) {
            path += QChar(static_cast<char16_t>(0xDC00 + static_cast<unsigned char>(bytes.front())));
        } else {
            path += QString::fromUtf8(bytes.data(), static_cast<qsizetype>(length));
        }
        bytes.remove_prefix(std::max<std::size_t>(length, 1));
    }
    return path;
}

std::string pathBytes(const QString& path) {
    std::string bytes;
    qsizetype begin = 0;
    const auto takeTextUpTo = [&](qsizetype end) {
        bytes += QStringView(path).mid(begin, end - begin).toUtf8().toStdString();
        begin = end + 1;
    };
    for (qsizetype i = 0; i < path.size(); ++i) {
        const char16_t c = path[i].unicode();
        const bool isPaired = i > begin && path[i - 1].isHighSurrogate();
        if (c >= firstHeld && c <= lastHeld && !isPaired) {
            takeTextUpTo(i);
            bytes += static_cast<char>(c & 0xFFU);
        }
    }
    takeTextUpTo(path.size());
    return bytes;
}

} // namespace caprail
