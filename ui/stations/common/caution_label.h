// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <session/cautions.h>
#include <text/label.h>

namespace caprail {

/// What to mind at a station. Where the room is small it folds to one word, whose tip says all of it: the work
/// comes first.
class CautionLabel : public Label {
public:
    explicit CautionLabel(const std::vector<Caution>& cautions, QWidget* parent);
    /// Folds too where it would take more lines than these, in a row of buttons, which would grow with it. It has what
    /// the others in the row leave, folded or not: so whether it folds hangs on that alone, and it unfolds as it
    /// folded.
    void setMostLines(int lines);
    /// Whether a station, with text as large as it has, is wide enough to show all that it could do without.
    static bool isWide(const QWidget& station);
    /// Folds or unfolds what stands in a station, by its size.
    static void fitAllIn(const QWidget& station);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent*) override;

private:
    void fold(bool isFolded);
    void foldOrUnfold();
    [[nodiscard]] bool isCramped() const;

    QString m_text;
    int m_mostLines = 0; ///< 0: any number
    bool m_isFolded = false;
    bool m_isStationSmall = false;
};

} // namespace caprail
