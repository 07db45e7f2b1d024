// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <string>
#include <string_view>

namespace caprail {

/// A path as Qt's strings can hold it, and back, without the loss of a byte. A file's name is any bytes, but Qt knows
/// only text: a byte that is no UTF-8 is held as a lone surrogate, U+DC80 to U+DCFF, which stands in no text. (The same
/// is done elsewhere under the name “surrogateescape”: Python Enhancement Proposal 383, from memory.) Such a text may
/// be shown; Qt's own file classes cannot open it, which is what the store is for.
QString qtPath(std::string_view bytes);
std::string pathBytes(const QString& path);

} // namespace caprail
