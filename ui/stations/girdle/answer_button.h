// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPushButton>
#include <session/storing_press.h>
#include <stations/common/station_text.h>
#include <stations/girdle/recheck_words.h>
#include <text/label.h>

namespace caprail {

/// A large button for one answer of the straightedge. The keyboard stays where it is: the answers have keys of their own.
inline QPushButton* answerButton(Feel feel, QWidget* parent) {
    auto* button = new QPushButton(feelMeaning(feel), parent);
    button->setAccessibleName(qtShown(feel));
    button->setMinimumHeight(76);
    button->setFocusPolicy(Qt::NoFocus);
    return button;
}

/// Whether an answer came twice within half a second and stores nothing; then the label says so.
inline bool isAskedBack(Feel feel, Label& task) {
    const auto question = StoringPress::askedBack(feelKey(feel));
    if (question) {
        task.setText(QStringLiteral("✕ ") + *question);
        task.setAccessibleDescription(*question);
    }
    return question.has_value();
}

} // namespace caprail
