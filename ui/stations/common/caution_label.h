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
    /// Folds too where it would take more lines than these: in a row of buttons, which would grow with it.
    void setMostLines(int lines);
    /// Whether a station, with text as large as it has, is wide enough to show all that it could do without.
    static bool isWide(const QWidget& station);
    /// Folds or unfolds what stands in a station, by its size.
    static void fitAllIn(const QWidget& station);

protected:
    void resizeEvent(QResizeEvent*) override;

private:
    void fold(bool isFolded);
    void foldIfCramped();

    QString m_text;
    int m_mostLines = 0; ///< 0: any number
    bool m_isFolded = false;
    const QWidget* m_station = nullptr; ///< what it stands in
    int m_crampedAt = 0;                ///< the station's width, in pixels, at which it took too many lines
};

} // namespace caprail
