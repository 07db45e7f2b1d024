// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <session/cautions.h>
#include <text/label.h>

namespace caprail {

/// What to mind at a station. Where the room is small it folds to one word, whose tip says all of it: the work
/// comes first.
class CautionLabel : public Label {
public:
    /// A station at least so large, in pixels, shows its cautions in full.
    static constexpr int roomyWidth = 900, roomyHeight = 520;

    explicit CautionLabel(const std::vector<Caution>& cautions, QWidget* parent);
    void fold(bool isFolded);
    /// Folds or unfolds what stands in a station, by its size.
    static void fitAllIn(const QWidget& station);

private:
    QString m_text;
};

} // namespace caprail
