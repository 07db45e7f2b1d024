// SPDX-License-Identifier: GPL-3.0-or-later
#include <tables/tsv.h>

#include <QClipboard>
#include <QGuiApplication>
#include <base/csv.h>
#include <numeric>

namespace caprail {

QString tsvOf(const QAbstractItemModel& model, const std::vector<int>& lines) {
    QString text;
    for (const int line : lines) {
        QStringList cells;
        for (int column = 0; column < model.columnCount(); ++column) {
            QString cell = model.index(line, column).data().toString();
            for (const char breaks : {'\t', '\n', '\r'}) {
                cell.replace(QLatin1Char(breaks), QLatin1Char(' '));
            }
            cells << QString::fromStdString(harmlessCell(cell.toStdString()));
        }
        text += cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
    }
    return text;
}

QString tsvOf(const QAbstractItemModel& model) {
    std::vector<int> lines(static_cast<std::size_t>(model.rowCount()));
    std::iota(lines.begin(), lines.end(), 0);
    return tsvOf(model, lines);
}

void copyToClipboard(const QString& text) {
    QGuiApplication::clipboard()->setText(text);
}

} // namespace caprail
