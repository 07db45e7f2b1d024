// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <planview/spoken_places.h>
#include <session/look.h>
#include <session/plan_runner.h>
#include <session/record_session.h>

namespace caprail {

/// One leaf of a drawn stack.
struct DrawnLeaf {
    QString name;
    Length thickness;
    bool isMeasured = true;
};

/// What the board draws for one position.
struct BoardCell {
    Position position;
    std::optional<Length> gap;              ///< accepted
    std::vector<DrawnLeaf> leaves;          ///< what stands there, as it was built
    std::optional<Length> residual;         ///< gap − leaves; none while nothing is built
    std::vector<DrawnLeaf> planned;         ///< of the plan, where it is another stack than the one that stands
    std::optional<Length> plannedResidual;  ///< gap − planned; none where the plan has nothing for this place
    std::optional<Feel> feel;               ///< what the straightedge should say on what stands, else on what is planned
    CheckState state = CheckState::notDone; ///< of the stack check
    QString footing;                        ///< "built, on", "built, off", "not built"
    bool isBuilt = false;
    bool isPinned = false;
    bool isUnmet = false;
};

/// How thick the leaves are together, and their names.
Length pileThickness(const std::vector<DrawnLeaf>& leaves);
QStringList leafNames(const std::vector<DrawnLeaf>& leaves);

/// The cells of a record: what stands on the engine, and for open and stale places the plan's stack beside it.
std::vector<BoardCell> boardCells(const RecordSession& session, const PlanOutcome* outcome);

/// All that a cell shows, in words: "cap 3 right, gap 0.0575 in, stands: S14 + S22, residual +0.0003 in, should be:
/// drags, built, on, good".
QString boardSentence(const BoardCell& cell, const Units& units);

/// One position as a drawn stack of leaves, all to one scale of height; for screens and paper alike. `tallest` is the
/// height that fills the cell.
void drawBoardCell(QPainter& painter, const QRectF& area, const BoardCell& cell, Length tallest, bool isSelected,
                   const Units& units, const Look& look);

/// All positions side by side as they lie under the pan rail up: front at the left, the left side above. Arrow keys and
/// clicks choose one. To screen readers it is a list of the positions, each with all that its panel shows.
class GirdleBoard : public QWidget, public SpokenPlaces {
    Q_OBJECT
public:
    explicit GirdleBoard(QWidget* parent = nullptr);
    void show(std::vector<BoardCell> cells, const Units& units);
    void select(Position position);

    [[nodiscard]] const QWidget& spokenOn() const override { return *this; }
    [[nodiscard]] QStringList spokenPlaces() const override;
    [[nodiscard]] QString spokenSentence(const QString& place) const override;
    [[nodiscard]] QRect spokenRect(const QString& place) const override;
    [[nodiscard]] QString spokenSelected() const override;
    void chooseSpoken(const QString& place, bool isActivated) override;

signals:
    void chosen(caprail::Position position);
    /// A letter or digit was typed while the board had the keyboard: it belongs into the field of the stack.
    void typed(const QString& text);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] QRectF areaOf(Position position) const;
    [[nodiscard]] const BoardCell* cellOf(const QString& place) const;
    std::vector<BoardCell> m_cells;
    Units m_units;
    Position m_selected;
};

} // namespace caprail
