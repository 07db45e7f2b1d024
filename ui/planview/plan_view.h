// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <optional>
#include <pictures/given_picture.h>
#include <planview/plan_drawing.h>
#include <planview/spoken_places.h>

namespace caprail {

/// The plan of the pan rail as the form: a place is selected by a click or the arrow keys, and what is typed then is
/// handed on to whoever keeps the entry field. Each place is a child of its own to screen readers.
///
/// Keys: arrows move by direction on the screen; Home and End to the first and last place; Enter activates;
/// Ctrl +, Ctrl −, Ctrl 0 and Ctrl with the wheel zoom; other text is `typed`.
class PlanView : public QWidget, public SpokenPlaces {
    Q_OBJECT
public:
    explicit PlanView(QWidget* parent = nullptr);
    ~PlanView() override;

    /// Takes over the content with its selected place. A place that is drawn no more is no longer selected.
    void setContent(PlanContent content);
    /// No layout yet: the drawing gives way to a sentence that says what to do.
    void setEmpty(const QString& sentence);
    [[nodiscard]] const PlanContent* content() const { return m_content ? &*m_content : nullptr; }

    void setOrientation(const PlanOrientation& orientation);
    [[nodiscard]] PlanOrientation orientation() const { return m_orientation; }
    /// Draws these layers whatever the content says, and leaves those out.
    void setLayers(PlanLayers shown, PlanLayers hidden);
    /// Draws in this look; until it is called, in that of the system's palette.
    void setLook(const Look& look);

    /// Selects without announcing it. Empty or a place that is not drawn: none.
    void select(const QString& place);
    [[nodiscard]] QString selected() const;
    /// What can be selected, in the order of a pass; known before the drawing is laid out.
    [[nodiscard]] QStringList places() const;

    [[nodiscard]] qreal zoom() const { return m_zoom; }
    /// From 1 (the whole drawing) to 8; keeps the point `about` of the widget where it is.
    void setZoom(qreal zoom, QPointF about);

    /// The drawing as it is laid out now; null without content. In the coordinates of the unzoomed widget.
    [[nodiscard]] const PlanDrawing* drawing() const;
    /// All of it as it is drawn unzoomed, to be copied or saved; empty without content.
    [[nodiscard]] GivenPicture given() const;
    /// Where a place lies in the widget, zoom and scrolling included.
    [[nodiscard]] QRectF widgetRectOf(const QString& place) const;
    /// The place at a point of the widget; empty: none.
    [[nodiscard]] QString placeAt(QPointF widgetPoint) const;

    [[nodiscard]] const QWidget& spokenOn() const override { return *this; }
    [[nodiscard]] QStringList spokenPlaces() const override;
    [[nodiscard]] QString spokenSentence(const QString& place) const override;
    [[nodiscard]] QString spokenFigure(const QString& place) const override;
    [[nodiscard]] QRect spokenRect(const QString& place) const override;
    [[nodiscard]] QString spokenSelected() const override { return selected(); }
    void chooseSpoken(const QString& place, bool isActivated) override;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

public slots:
    void turn(); ///< a quarter turn clockwise
    void flip();
    void zoomIn();
    void zoomOut();
    void zoomToAll();

signals:
    void placeSelected(const QString& place);
    void placeActivated(const QString& place);
    /// A mouse button went down on a place, selected already or not.
    void placeClicked(const QString& place);
    /// A key that writes: digits, marks, letters. The entry field takes it from here.
    void typed(const QString& text);
    void orientationChanged();

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void layOutAnew();
    void go(const QString& place);
    void keepInside();
    void bringIntoSight(const QString& place);
    [[nodiscard]] QPointF toDrawing(QPointF widgetPoint) const;
    [[nodiscard]] Look look() const;

    std::optional<PlanContent> m_content;
    QString m_sentence;
    PlanOrientation m_orientation;
    PlanLayers m_given; ///< the layers that the content came with
    PlanLayers m_shown, m_hidden;
    std::optional<Look> m_look;
    mutable std::optional<PlanDrawing> m_drawing;
    qreal m_zoom = 1;
    QPointF m_scroll; ///< where the drawing's origin lies in the widget
    std::optional<QPointF> m_grip;
};

} // namespace caprail
