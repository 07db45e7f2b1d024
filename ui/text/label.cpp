// SPDX-License-Identifier: GPL-3.0-or-later
#include <text/label.h>

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
    QLabel::setText(visible(text));
}

void Label::setTable(const std::vector<std::vector<TableCell>>& rows, int padding) {
    QString html = QStringLiteral("<table cellspacing=0 cellpadding=%1>").arg(padding);
    for (const auto& row : rows) {
        html += QStringLiteral("<tr>");
        for (const TableCell& cell : row) {
            QString text = visible(cell.text).toHtmlEscaped();
            text = cell.isBold ? QStringLiteral("<b>") + text + QStringLiteral("</b>") : text;
            html += (cell.isFigure ? QStringLiteral("<td align=right>") : QStringLiteral("<td>")) +
                    (cell.isApart ? QStringLiteral("&nbsp;&nbsp;") : QString()) + text + QStringLiteral("</td>");
        }
        html += QStringLiteral("</tr>");
    }
    if (textFormat() != Qt::RichText) {
        clear();
        setTextFormat(Qt::RichText);
    }
    QLabel::setText(html + QStringLiteral("</table>"));
}

} // namespace caprail
