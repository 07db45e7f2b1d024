// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Crossings between the core's text (UTF-8) and Qt's, and words for screens, used by every panel.
#include <QString>
#include <string>
#include <string_view>
#include <units/words.h>

namespace caprail {

inline QString qtText(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}
inline std::string coreText(const QString& text) {
    return text.trimmed().toStdString();
}
template <Worded E> QString qtWord(E value) {
    return qtText(word(value));
}
/// "Cap 3 right" from "cap 3 right".
inline QString capitalised(QString text) {
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
    }
    return text;
}

} // namespace caprail
