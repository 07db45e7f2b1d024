// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Crossings between the core's text (UTF-8) and Qt's, for everything that knows the ledger.
#include <QString>
#include <string>
#include <string_view>
#include <base/words.h>

namespace caprail {

inline QString qtText(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}
inline std::string coreText(const QString& text) {
    return text.trimmed().toStdString();
}
/// The word of files and of the command line.
template <Worded E> QString qtWord(E value) {
    return qtText(word(value));
}
/// The word for people.
template <Worded E> QString qtShown(E value) {
    return qtText(shown(value));
}

} // namespace caprail
