// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <optional>
#include <qcustomplot.h>
#include <session/look.h>
#include <units/format.h>
#include <vector>

namespace caprail {

/// One drawn point of a chart, in the coordinates of its axes.
struct ChartPoint {
    QPointF at;
    QString place;          ///< what it is about: "3R", "main-3", "main-3R-outer"
    QString words;          ///< for the tooltip and for screen readers, a line or more
    std::int64_t entry = 0; ///< the ledger entry that it shows; 0: it is worked out from several
};

/// What a filler drew: the points, and the whole in words.
struct ChartText {
    std::vector<ChartPoint> points;
    QString name;        ///< "Gap survey"
    QString description; ///< the data summarised in a sentence or two
    QString nothing{};   ///< why there is no point yet; empty: what is drawn here once there are any
};

/// What the charts of the program have in common: points that can be pointed at, clicked and walked over with the
/// arrow keys; the look; a name and a description for screen readers.
class Chart : public QCustomPlot {
    Q_OBJECT
public:
    explicit Chart(QWidget* parent = nullptr);

    [[nodiscard]] const std::vector<ChartPoint>& points() const { return m_text.points; }
    /// The point nearest to a point of the widget, within reach of a finger; null: none.
    [[nodiscard]] const ChartPoint* pointAt(QPointF widgetPoint) const;
    /// Where a point lies in the widget.
    [[nodiscard]] QPointF widgetPointOf(const ChartPoint& point) const;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] QSize sizeHint() const override;

signals:
    void placeSelected(const QString& place);
    void entrySelected(qint64 entry); ///< only for points that show one entry

protected:
    /// Takes over what a filler drew into this plot and paints it.
    void take(ChartText text, const Look& look);
    bool event(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void step(int by);
    void choose(std::size_t index);

    ChartText m_text;
    std::optional<Look> m_look;
    std::optional<std::size_t> m_current;
};

} // namespace caprail
