// SPDX-License-Identifier: GPL-3.0-or-later
#include <tables/tsv.h>

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>
#include <base/csv.h>
#include <numeric>

namespace caprail {

namespace {

QString cellText(const QAbstractItemModel& model, int line, int column) {
    QString cell = model.index(line, column).data().toString();
    for (const char breaks : {'\t', '\n', '\r'}) {
        cell.replace(QLatin1Char(breaks), QLatin1Char(' '));
    }
    return QString::fromStdString(harmlessCell(cell.toStdString()));
}

} // namespace

QString tsvOf(const QAbstractItemModel& model, const std::vector<int>& lines) {
    QString text;
    for (const int line : lines) {
        QStringList cells;
        for (int column = 0; column < model.columnCount(); ++column) {
            cells << cellText(model, line, column);
        }
        text += cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
    }
    return text;
}

QString htmlOf(const QAbstractItemModel& model, const std::vector<int>& lines) {
    const auto row = [&](const QString& tag, const auto& textOf) {
        QString cells;
        for (int column = 0; column < model.columnCount(); ++column) {
            cells += QStringLiteral("<%1>%2</%1>").arg(tag, QString(textOf(column)).toHtmlEscaped());
        }
        return QStringLiteral("<tr>") + cells + QStringLiteral("</tr>\n");
    };
    QString html = QStringLiteral("<table>\n");
    const auto title = [&](int column) { return model.headerData(column, Qt::Horizontal).toString(); };
    if (model.columnCount() > 1) { // a list has no titles
        html += row(QStringLiteral("th"), title);
    }
    for (const int line : lines) {
        html += row(QStringLiteral("td"), [&](int column) { return cellText(model, line, column); });
    }
    return html + QStringLiteral("</table>\n");
}

void copyToClipboard(const QAbstractItemModel& model, const std::vector<int>& lines) {
    auto* data = new QMimeData; // the clipboard takes it over
    data->setText(tsvOf(model, lines));
    data->setData(QStringLiteral("text/html"), htmlOf(model, lines).toUtf8());
    QGuiApplication::clipboard()->setMimeData(data);
}

void copyToClipboard(const QAbstractItemModel& model) {
    std::vector<int> lines(static_cast<std::size_t>(model.rowCount()));
    std::iota(lines.begin(), lines.end(), 0);
    copyToClipboard(model, lines);
}

} // namespace caprail
