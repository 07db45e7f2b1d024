// SPDX-License-Identifier: GPL-3.0-or-later
#include <text/plain_text.h>

#include <QAction>
#include <QFormLayout>
#include <QToolTip>
#include <algorithm>
#include <text/label.h>

namespace caprail {

namespace {

/// Shows nothing by itself and may change how other letters are shown: controls, the marks that set the direction of
/// writing (Unicode Standard Annex #9, section 2), and the two separators of lines.
bool isHidden(QChar letter) {
    const ushort code = letter.unicode();
    if (code == u'\n' || code == u'\t') {
        return false;
    }
    return letter.category() == QChar::Other_Control || code == 0x061C || (code >= 0x200E && code <= 0x200F) ||
           (code >= 0x2028 && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069);
}

} // namespace

QString visible(const QString& text) {
    if (std::ranges::none_of(text, isHidden)) {
        return text;
    }
    QString shown;
    for (const QChar letter : text) {
        shown +=
            isHidden(letter)
                ? QStringLiteral("⟨U+%1⟩").arg(static_cast<uint>(letter.unicode()), 4, 16, QLatin1Char('0')).toUpper()
                : QString(letter);
    }
    return shown;
}

QString literal(const QString& text) {
    return visible(text).replace(QLatin1Char('&'), QStringLiteral("&&")).replace(QLatin1Char('\t'), QLatin1Char(' '));
}

void setName(QAction* action, const QString& name) {
    action->setText(literal(name));
    action->setToolTip(plainTip(name));
}

QString literalTitle(const QString& text) {
    return visible(text).replace(QStringLiteral("[*]"), QStringLiteral("[*][*]"));
}

QString plainTip(const QString& text) {
    const QString shown = visible(text);
    return Qt::mightBeRichText(shown) ? wrappedTip(shown) : shown;
}

QString wrappedTip(const QString& text) {
    return QStringLiteral("<p>") + visible(text).toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br>")) +
           QStringLiteral("</p>");
}

bool isPlainTip(const QString& tip) {
    QString words = tip;
    for (const char* tag : {"<p>", "</p>", "<br>"}) {
        words.remove(QLatin1String(tag));
    }
    return !Qt::mightBeRichText(tip) || !words.contains(QLatin1Char('<'));
}

void showTip(QPoint at, const QString& text, QWidget* widget, const QRect& area) {
    QToolTip::showText(at, plainTip(text), widget, area);
}

void addRow(QFormLayout* form, const QString& text, QWidget* field) {
    auto* label = new Label(text);
    label->setBuddy(field);
    form->addRow(label, field);
}

} // namespace caprail
