// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <work/rounds.h>

class QPrinter;
class QWidget;

namespace caprail {

/// Asks for a file and writes the bytes into it; says so when that fails, and leaves no half-written file.
void saveAsTable(QWidget* parent, const QString& suggestedName, const QByteArray& bytes);

/// Prints the matrix that is in sight: as many rounds side by side as fit a page, every fastener down, the head
/// repeated on each page. One title line tells what was filtered.
void printRounds(QPrinter& printer, const RoundHistory& history, const VisibleRounds& visible,
                 const RoundChoice& choice, const QString& title, const Units& units);

} // namespace caprail
