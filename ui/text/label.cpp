// SPDX-License-Identifier: GPL-3.0-or-later
#include <text/label.h>

#include <QAccessible>
#include <text/plain_text.h>

namespace caprail {

Label::Label(QWidget* parent) : QLabel(parent) {
    setTextFormat(Qt::PlainText);
}

Label::Label(const QString& text, QWidget* parent) : Label(parent) {
    setText(text);
}

void Label::setText(const QString& text) {
    if (textFormat() != Qt::PlainText) {
        clear();
        setTextFormat(Qt::PlainText);
    }
    speak(visible(text)); // first: QLabel tells of itself only where it has no other name
    QLabel::setText(visible(text));
}

void Label::setTable(const std::vector<std::vector<TableCell>>& rows, int padding) {
    QString html = QStringLiteral("<table cellspacing=0 cellpadding=%1>").arg(padding);
    QStringList lines;
    for (const auto& row : rows) {
        QStringList cells;
        html += QStringLiteral("<tr>");
        for (const TableCell& cell : row) {
            if (!cell.text.trimmed().isEmpty()) {
                cells << visible(cell.text).trimmed();
            }
            QString text = visible(cell.text).toHtmlEscaped();
            text = cell.isBold ? QStringLiteral("<b>") + text + QStringLiteral("</b>") : text;
            html += (cell.isFigure ? QStringLiteral("<td align=right>") : QStringLiteral("<td>")) +
                    (cell.isApart ? QStringLiteral("&nbsp;&nbsp;") : QString()) + text + QStringLiteral("</td>");
        }
        html += QStringLiteral("</tr>");
        lines << cells.join(QStringLiteral(", "));
    }
    if (textFormat() != Qt::RichText) {
        clear();
        setTextFormat(Qt::RichText);
    }
    speak(lines.join(QStringLiteral("; ")));
    QLabel::setText(html + QStringLiteral("</table>"));
}

void Label::setSubject(const QString& subject) {
    m_subject = subject;
    speak(m_words);
}

void Label::setSequel(const QString& sequel) {
    const bool isAgain = !sequel.isEmpty() && sequel == m_sequel;
    m_sequel = sequel;
    speak(m_words);
    if (isAgain) { // Qt tells a name that is set only where it is another
        QAccessibleEvent event(this, QAccessible::NameChanged);
        QAccessible::updateAccessibility(&event);
    }
}

void Label::tell(const QString& text, const QString& sequel) {
    m_sequel = sequel;
    setText(text);
}

void Label::setTextInteractionFlags(Qt::TextInteractionFlags flags) {
    QLabel::setTextInteractionFlags(flags);
    speak(m_words);
}

void Label::speak(const QString& words) {
    m_words = words;
    if (textInteractionFlags().testFlag(Qt::TextSelectableByMouse)) {
        setFocusPolicy(words.isEmpty() ? Qt::NoFocus : Qt::ClickFocus);
    }
    // Plain text without a subject is its own name. Told only when it changed: each name that is set is told.
    QString name;
    if (textFormat() != Qt::PlainText || !m_subject.isEmpty() || !m_sequel.isEmpty()) {
        name = m_subject.isEmpty() || words.isEmpty() ? words : m_subject + QStringLiteral(": ") + words;
        name += (name.isEmpty() || m_sequel.isEmpty() ? QString() : QStringLiteral(" ")) + m_sequel;
    }
    if (name != accessibleName()) {
        setAccessibleName(name);
    }
}

} // namespace caprail
