// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPushButton>
#include <stations/common/station_text.h>
#include <stations/girdle/recheck_words.h>

namespace caprail {

/// A large button for one answer of the straightedge. The keyboard stays where it is: the answers have keys of their own.
inline QPushButton* answerButton(Feel feel, QWidget* parent) {
    auto* button = new QPushButton(feelMeaning(feel), parent);
    button->setAccessibleName(qtShown(feel));
    button->setMinimumHeight(76);
    button->setFocusPolicy(Qt::NoFocus);
    return button;
}

} // namespace caprail
