// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <QStringList>
#include <concepts>
#include <initializer_list>

namespace caprail {

/// What may stand at a placeholder of a sentence: a text, or a whole number written in plain digits.
class Filling {
public:
    Filling(const QString& text) : m_text(text) {}
    Filling(std::integral auto number) : m_text(QString::number(number)) {}
    [[nodiscard]] const QString& text() const { return m_text; }

private:
    QString m_text;
};

QString filledWith(const QString& pattern, std::initializer_list<Filling> texts);

/// The sentence with its placeholders %1 to %9 filled, all at once: a text that is filled in is not searched for
/// placeholders again, as it is where one `arg` follows another, and a name such as «50 %2» stays as it is.
template <class... Texts> QString filled(const QString& pattern, const Texts&... texts) {
    return filledWith(pattern, {Filling(texts)...});
}

/// Those parts that say something, with the separator between them.
QString joined(QStringList parts, const QString& separator = QStringLiteral(", "));

} // namespace caprail
