// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/history/files.h>

#include <QCoreApplication>
#include <QFileDialog>
#include <QPainter>
#include <QPrinter>
#include <algorithm>
#include <session/look.h>
#include <stations/common/station_text.h>
#include <store/file/output_file.h>
#include <store/file/path_text.h>
#include <text/ask.h>

namespace caprail {

namespace {

struct HistoryFilesText {
    Q_DECLARE_TR_FUNCTIONS(HistoryStation)
};

} // namespace

void saveAsTable(QWidget* parent, const QString& suggestedName, const QByteArray& bytes) {
    const QString path = QFileDialog::getSaveFileName(parent, HistoryFilesText::tr("Export what is shown"),
                                                      suggestedName, HistoryFilesText::tr("Tables (*.csv)"));
    if (path.isEmpty()) {
        return;
    }
    // The dialog asked before an earlier table is replaced; what is no text is not replaced all the same.
    const std::string_view table(bytes.constData(), static_cast<std::size_t>(bytes.size()));
    if (const auto written = writeOutput(pathBytes(path), OutputSort::text, true, table); !written) {
        warn(parent, HistoryFilesText::tr("Export"), qtText(written.error().sentence));
    }
}

void printRounds(QPrinter& printer, const RoundHistory& history, const VisibleRounds& visible,
                 const RoundChoice& choice, const QString& title, const Units& units) {
    QPainter painter(&printer);
    QFont font = painter.font();
    font.setPointSizeF(8);
    painter.setFont(font);
    const QFontMetrics metrics(font, &printer);
    const QRect page = painter.viewport();
    const int line = metrics.lineSpacing() * 5 / 4;
    int nameWidth = 0;
    for (const std::size_t f : visible.fasteners) {
        nameWidth = std::max(nameWidth, metrics.horizontalAdvance(qtText(describe(history.fasteners[f]))));
    }
    nameWidth += metrics.averageCharWidth() * 2;
    const int cellWidth = metrics.horizontalAdvance(QStringLiteral("[↷ 00.0°]")) + metrics.averageCharWidth();
    const auto across = static_cast<std::size_t>(std::max(1, (page.width() - nameWidth) / cellWidth));
    const auto down = static_cast<std::size_t>(std::max(1, page.height() / line - 4));
    const Look look = paperLook();
    bool isFirst = true;
    int number = 0;
    for (std::size_t r = 0; r < visible.rounds.size(); r += across) {
        for (std::size_t f = 0; f < visible.fasteners.size(); f += down) {
            if (!isFirst) {
                printer.newPage();
            }
            isFirst = false;
            const std::size_t lastRound = std::min(visible.rounds.size(), r + across);
            const std::size_t lastFastener = std::min(visible.fasteners.size(), f + down);
            painter.setPen(look.ink);
            painter.drawText(QRect(0, 0, page.width(), line), Qt::AlignLeft, title);
            painter.drawText(QRect(0, 0, page.width(), line), Qt::AlignRight,
                             HistoryFilesText::tr("page %1").arg(++number));
            for (std::size_t column = r; column < lastRound; ++column) {
                const QRect head(nameWidth + static_cast<int>(column - r) * cellWidth, 2 * line, cellWidth, line);
                painter.drawText(head, Qt::AlignCenter,
                                 qtText(history.rounds[visible.rounds[column]].name(history.hasBuilds)));
            }
            painter.drawLine(0, 3 * line, nameWidth + static_cast<int>(lastRound - r) * cellWidth, 3 * line);
            for (std::size_t row = f; row < lastFastener; ++row) {
                const int y = (3 + static_cast<int>(row - f)) * line;
                painter.setPen(look.ink);
                painter.drawText(QRect(0, y, nameWidth, line), Qt::AlignLeft | Qt::AlignVCenter,
                                 qtText(describe(history.fasteners[visible.fasteners[row]])));
                for (std::size_t column = r; column < lastRound; ++column) {
                    const auto& cell = history.cells[visible.rounds[column]][visible.fasteners[row]];
                    if (cell && choice.takes(*cell)) {
                        painter.setPen(cell->isStruck                         ? look.quiet
                                       : cell->what.outcome == Outcome::moved ? look.out
                                                                              : look.ink);
                        painter.drawText(
                            QRect(nameWidth + static_cast<int>(column - r) * cellWidth, y, cellWidth, line),
                            Qt::AlignCenter, qtText(cellText(*cell, units)));
                    }
                }
            }
        }
    }
}

} // namespace caprail
