// SPDX-License-Identifier: GPL-3.0-or-later
#include <text/plain_text.h>

#include <QAction>
#include <QFormLayout>
#include <QToolTip>
#include <base/plain_text.h>
#include <text/label.h>

namespace caprail {

QString visible(const QString& text) {
    QStringList visibleText;
    for (const QString& part : text.split(QLatin1Char('\t'))) {
        visibleText << QString::fromStdString(visibleLines(part.toStdString()));
    }
    return visibleText.join(QLatin1Char('\t'));
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
    const QString visibleText = visible(text);
    return Qt::mightBeRichText(visibleText) ? wrappedTip(visibleText) : visibleText;
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

void addRow(QFormLayout* form, const QString& text, QWidget* input) {
    auto* label = new Label(text);
    label->setBuddy(input);
    form->addRow(label, input);
}

} // namespace caprail
