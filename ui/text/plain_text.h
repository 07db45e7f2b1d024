// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What a record says is shown letter for letter. Qt guesses otherwise in several places: a tool tip that looks like
/// HTML is taken for it (and opens the files that it names), an «&» in a button's text is a key, «[*]» in a title is a
/// mark, a tab in a menu begins a shortcut. Every text that may hold a word of a record goes through here (or through
/// `Label` and `ask.h`) on its way to such a place.
#include <QPoint>
#include <QRect>
#include <QString>

class QAction;
class QFormLayout;
class QWidget;

namespace caprail {

/// The text with everything in sight (base/plain_text.h): U+202E and its like, which turn the letters after them
/// around, become ⟨U+202E⟩. Line breaks and tabs stay.
QString visible(const QString& text);

/// For the text of a button, an action, a tab, or a label with a buddy: an «&» stands for itself.
QString literal(const QString& text);

/// Names an action after something in a record: its text and the tip that Qt makes of it.
void setName(QAction* action, const QString& name);

/// For the title of a window: «[*]» stands for itself.
QString literalTitle(const QString& text);

/// For a tool tip, what's-this or `Qt::ToolTipRole`: the same text, in a form that Qt cannot take for markup.
QString plainTip(const QString& text);

/// The same for a text that is longer than a line: the tip breaks it into lines.
QString wrappedTip(const QString& text);

/// Whether a tip can show nothing but words: Qt takes it for plain text, or it came from here.
bool isPlainTip(const QString& tip);

/// Of a widget, an action, or an item of a list, table or tree without columns.
template <class Target> void setTip(Target* target, const QString& text) {
    target->setToolTip(plainTip(text));
}

/// Shows a tip now, at a point of the screen, while the pointer stays in `area` of the widget.
void showTip(QPoint at, const QString& text, QWidget* widget, const QRect& area = {});

/// A row of a form whose label is plain text too. `text` is the program's own, with its «&».
void addRow(QFormLayout* form, const QString& text, QWidget* input);

} // namespace caprail
