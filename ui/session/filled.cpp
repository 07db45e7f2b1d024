// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/filled.h>

namespace caprail {

QString filledWith(const QString& pattern, std::initializer_list<Filling> texts) {
    QString sentence;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const int placeholder = i + 1 < pattern.size() ? pattern[i + 1].unicode() - u'1' : -1;
        if (pattern[i] == QLatin1Char('%') && placeholder >= 0 && placeholder < static_cast<int>(texts.size())) {
            sentence += texts.begin()[placeholder].text();
            ++i;
        } else {
            sentence += pattern[i];
        }
    }
    return sentence;
}

QString joined(QStringList parts, const QString& separator) {
    parts.removeAll(QString());
    return parts.join(separator);
}

} // namespace caprail
