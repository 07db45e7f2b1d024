// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/chart_drawing.h>

#include <QDateTime>
#include <QPicture>
#include <cmath>
#include <numbers>

namespace caprail {

namespace {

class NumberTicker : public QCPAxisTicker {
public:
    explicit NumberTicker(char decimalMark) : m_decimalMark(decimalMark) {}

protected:
    double getTickStep(const QCPRange& range) override {
        const double step = QCPAxisTicker::getTickStep(range);
        // 0.0005 needs four decimals, 0.02 two; the small addition keeps 0.001 from needing four.
        m_decimals = std::clamp(static_cast<int>(std::ceil(-std::log10(step) - 1e-9)), 0, 9);
        const double scaled = step * std::pow(10, m_decimals);
        m_decimals += std::abs(scaled - std::round(scaled)) > 1e-6 ? 1 : 0;
        return step;
    }
    QString getTickLabel(double tick, const QLocale&, QChar, int) override {
        return textOf(formatNumber(tick, m_decimals, m_decimalMark));
    }

private:
    char m_decimalMark;
    int m_decimals = 0;
};

class CountTicker : public QCPAxisTicker {
protected:
    double getTickStep(const QCPRange& range) override {
        return std::max(1.0, std::round(QCPAxisTicker::getTickStep(range)));
    }
    int getSubTickCount(double) override { return 0; }
    QString getTickLabel(double tick, const QLocale&, QChar, int) override { return QString::number(qRound64(tick)); }
};

QPainterPath polygon(int corners, double firstDegrees, double radius) {
    QPainterPath path;
    for (int i = 0; i < corners; ++i) {
        const double angle = (firstDegrees + 360.0 * i / corners) * std::numbers::pi / 180;
        const QPointF p = radius * QPointF(std::cos(angle), std::sin(angle));
        i == 0 ? path.moveTo(p) : path.lineTo(p);
    }
    path.closeSubpath();
    return path;
}

void styleAxis(QCPAxis& axis, const Look& look, const QFont& font) {
    QFont small = font;
    small.pointSizeF() > 0 ? small.setPointSizeF(0.92 * font.pointSizeF())
                           : small.setPixelSize(qRound(0.92 * font.pixelSize()));
    axis.setBasePen(QPen(look.ink, 1));
    axis.setTickPen(QPen(look.ink, 1));
    axis.setSubTicks(false);
    axis.setNumberFormat(QStringLiteral("g")); // a name such as «M1e5» is no power of ten
    axis.setTickLength(0, 4);
    axis.setTickLabelColor(look.ink);
    axis.setLabelColor(look.quiet);
    axis.setTickLabelFont(small);
    axis.setLabelFont(small);
    axis.setLabelPadding(4);
    axis.grid()->setPen(QPen(look.faint, 0.6, Qt::DotLine));
    axis.grid()->setZeroLinePen(Qt::NoPen);
}

} // namespace

void beginChart(QCustomPlot& plot, const Look& look) {
    plot.clearItems();
    plot.clearPlottables();
    plot.setBackground(look.paper);
    styleAxis(*plot.xAxis, look, plot.font());
    styleAxis(*plot.yAxis, look, plot.font());
    plot.xAxis->setTicker(QSharedPointer<QCPAxisTicker>::create());
    plot.xAxis->setLabel({});
    plot.yAxis->setLabel({});
    plot.axisRect()->setVisible(true);
    plot.axisRect()->setBackground(look.paper);
    if (plot.plotLayout()->rowCount() == 1) {
        // The legend gets a line of its own above the chart, so that it never covers a point.
        plot.plotLayout()->insertRow(0);
        plot.plotLayout()->addElement(0, 0, plot.legend);
        plot.plotLayout()->setRowStretchFactor(0, 0.001);
        plot.legend->setFillOrder(QCPLayoutGrid::foColumnsFirst);
        plot.legend->setBorderPen(Qt::NoPen);
        plot.legend->setMargins(QMargins(8, 4, 8, 0));
        plot.plotLayout()->setRowSpacing(0);
    }
    plot.legend->setVisible(true);
    plot.legend->setBrush(Qt::NoBrush);
    plot.legend->setFont(plot.xAxis->labelFont());
    plot.legend->setTextColor(look.quiet);
}

void sayNothingYet(QCustomPlot& plot, const QString& sentence, const Look& look) {
    plot.legend->setVisible(false);
    plot.axisRect()->setVisible(false);
    plot.xAxis->setRange(0, 1);
    plot.yAxis->setRange(0, 1);
    auto* text = new QCPItemText(&plot);
    text->setClipToAxisRect(false);
    text->position->setType(QCPItemPosition::ptViewportRatio);
    text->position->setCoords(0.5, 0.5);
    text->setText(sentence);
    text->setFont(plot.font());
    text->setColor(look.quiet);
}

double shown(Length length, const Units& units) {
    return units.length == LengthUnit::inch ? inInches(length) : inMillimetres(length);
}

double shownNanometres(double nanometres, const Units& units) {
    return nanometres / (units.length == LengthUnit::inch ? static_cast<double>(nanometresPerInch) : 1e6);
}

QString axisName(const QString& what, const Units& units) {
    return what + QStringLiteral(", ") + QString::fromUtf8(symbol(units.length));
}

QSharedPointer<QCPAxisTicker> numberTicker(char decimalMark) {
    return QSharedPointer<NumberTicker>::create(decimalMark);
}

QSharedPointer<QCPAxisTicker> countTicker() {
    return QSharedPointer<CountTicker>::create();
}

QCPScatterStyle sideMarker(Side side, bool isFilled, const QColor& colour, double size) {
    // QCustomPlot draws a custom path of about six units at the size given.
    return {polygon(3, side == Side::left ? 180 : 0, 3.4), QPen(colour, 1.2), isFilled ? QBrush(colour) : Qt::NoBrush,
            size};
}

QCPScatterStyle stateMarker(CheckState state, const Look& look, double size) {
    const QColor colour = look.of(state);
    QPen pen(colour, 1.6);
    switch (state) {
    case CheckState::good:
        return {QCPScatterStyle::ssCircle, pen, QBrush(colour), size};
    case CheckState::out:
        return {polygon(4, 0, 3.8), pen, QBrush(colour), size};
    case CheckState::tooCloseToCall:
        return {polygon(6, 0, 3.3), pen, QBrush(look.paper), size};
    case CheckState::notProven:
        return {QCPScatterStyle::ssSquare, pen, QBrush(look.paper), size};
    case CheckState::stale:
        return {QCPScatterStyle::ssCircle, pen, QBrush(look.paper), size};
    case CheckState::notDone:
        break;
    }
    pen.setStyle(Qt::DotLine);
    return {QCPScatterStyle::ssCircle, pen, QBrush(look.paper), size};
}

QCPGraph* markers(QCustomPlot& plot, const QCPScatterStyle& style, const QString& name) {
    QCPGraph* graph = plot.addGraph();
    graph->setLineStyle(QCPGraph::lsNone);
    graph->setScatterStyle(style);
    graph->setPen(style.pen());
    graph->setName(name);
    return graph;
}

QCPItemText* textAt(QCustomPlot& plot, QPointF at, const QString& text, Qt::Alignment alignment, const QColor& colour) {
    auto* item = new QCPItemText(&plot);
    item->position->setCoords(at);
    item->setPositionAlignment(alignment);
    item->setText(text);
    item->setFont(plot.font());
    item->setColor(colour);
    item->setPadding(QMargins(3, 1, 3, 1));
    return item;
}

QCPItemLine* lineBetween(QCustomPlot& plot, QPointF from, QPointF to, const QPen& pen) {
    auto* item = new QCPItemLine(&plot);
    item->start->setCoords(from);
    item->end->setCoords(to);
    item->setPen(pen);
    return item;
}

double lineHeight(const QCustomPlot& plot) {
    return QFontMetricsF(plot.font()).height();
}

void drawChart(QPainter& painter, const QRectF& area, const std::function<void(QCustomPlot&)>& fill) {
    QCustomPlot plot;
    QFont font = painter.font();
    font.setPixelSize(13);
    plot.setFont(font);
    const double scale = QFontMetricsF(painter.font(), painter.device()).height() / lineHeight(plot);
    const QSize size = (area.size() / scale).toSize().expandedTo({60, 40});
    fill(plot);
    // QCustomPlot paints only with a painter of its own kind; a picture carries its vectors over to any other.
    QPicture picture;
    QCPPainter recorder(&picture);
    recorder.setMode(QCPPainter::pmVectorized);
    recorder.setMode(QCPPainter::pmNoCaching);
    plot.toPainter(&recorder, size.width(), size.height());
    recorder.end();
    painter.save();
    painter.setClipRect(area);
    painter.translate(area.topLeft());
    painter.scale(area.width() / size.width(), area.height() / size.height());
    // A picture scales itself by the device's resolution when it is played; that is undone here.
    painter.scale(1.0 * picture.logicalDpiX() / painter.device()->logicalDpiX(),
                  1.0 * picture.logicalDpiY() / painter.device()->logicalDpiY());
    painter.drawPicture(QPointF(), picture);
    painter.restore();
}

void drawBand(QCustomPlot& plot, const Band& band, double from, double to, const Units& units, const Look& look) {
    auto* area = new QCPItemRect(&plot);
    area->topLeft->setCoords(from, shown(band.hi(), units));
    area->bottomRight->setCoords(to, shown(band.lo(), units));
    area->setBrush(washed(look.good, look.paper, 0.13));
    area->setPen(Qt::NoPen);
    for (const Length level : {band.lo(), band.hi()}) {
        lineBetween(plot, {from, shown(level, units)}, {to, shown(level, units)}, QPen(look.good, 1));
    }
}

QString textOf(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QString whoWithWhatWhen(const std::string& person, const std::string& instrument, UtcTime time) {
    QStringList parts;
    for (const std::string& part : {person, instrument}) {
        if (!part.empty()) {
            parts << textOf(part);
        }
    }
    parts << QDateTime::fromMSecsSinceEpoch(time.milliseconds).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
    return parts.join(QStringLiteral(", "));
}

} // namespace caprail
