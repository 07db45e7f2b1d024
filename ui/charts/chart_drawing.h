// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <charts/chart.h>
#include <engine/place.h>
#include <functional>
#include <units/band.h>

namespace caprail {

/// What the fillers share: the look of axes and legend, markers, numbers on axes, and the way onto paper.

/// Takes off what was drawn before and gives ground, axes, grid and legend the look, with texts in the plot's own font.
void beginChart(QCustomPlot& plot, const Look& look);
/// A plot without data says so, and what to do.
void sayNothingYet(QCustomPlot& plot, const QString& sentence, const Look& look);

/// A length on an axis: in inches or millimetres.
double shown(Length length, const Units& units);
double shownNanometres(double nanometres, const Units& units);
/// "gap, in" with the unit after the name.
QString axisName(const QString& what, const Units& units);
/// Numbers on an axis with as many decimals as its step needs, and the user's decimal mark.
QSharedPointer<QCPAxisTicker> numberTicker(char decimalMark);
/// Whole numbers only.
QSharedPointer<QCPAxisTicker> countTicker();

/// A triangle that points to its side; filled or hollow.
QCPScatterStyle sideMarker(Side side, bool isFilled, const QColor& colour, double size);
/// A scatter of its own shape per state, as in the plan drawing: disc, diamond, hexagon, hollow circle, dotted circle.
QCPScatterStyle stateMarker(CheckState state, const Look& look, double size);
/// An empty graph of markers only.
QCPGraph* markers(QCustomPlot& plot, const QCPScatterStyle& style, const QString& name);
/// A text of the plot's font at a point of its axes.
QCPItemText* textAt(QCustomPlot& plot, QPointF at, const QString& text, Qt::Alignment alignment, const QColor& colour);
QCPItemLine* lineBetween(QCustomPlot& plot, QPointF from, QPointF to, const QPen& pen);
/// What values are judged by, behind them, from one place of the axis to another.
void drawBand(QCustomPlot& plot, const Band& band, double from, double to, const Units& units, const Look& look);
/// Height of a line of the plot's font in pixels: sizes of markers follow it.
double lineHeight(const QCustomPlot& plot);

/// Fills a plot and draws it into `area` of a painter as vectors, in sizes about the painter's font.
void drawChart(QPainter& painter, const QRectF& area, const std::function<void(QCustomPlot&)>& fill);

QString textOf(const std::string& utf8);
/// "A. Ames, FG-2, 2026-05-04 14:30": who, with what, when (local time).
QString whoWithWhatWhen(const std::string& person, const std::string& instrument, UtcTime time);

} // namespace caprail
