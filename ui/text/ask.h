// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Message boxes and questions whose text is shown letter for letter. Qt's own guess whether it is HTML.
#include <QMessageBox>
#include <optional>

namespace caprail {

/// A message box with plain text.
class PlainBox : public QMessageBox {
public:
    PlainBox(Icon icon, const QString& title, const QString& text, StandardButtons buttons, QWidget* parent);
};

void inform(QWidget* parent, const QString& title, const QString& text);
void warn(QWidget* parent, const QString& title, const QString& text);
/// Gives the button that was pressed; Enter presses `preset`.
QMessageBox::StandardButton ask(QWidget* parent, const QString& title, const QString& question,
                                QMessageBox::StandardButtons buttons,
                                QMessageBox::StandardButton preset = QMessageBox::NoButton);

/// Asks for a line of text. Empty: cancelled.
std::optional<QString> askText(QWidget* parent, const QString& title, const QString& question,
                               const QString& preset = {});
/// The same for a text that is not shown while it is typed.
std::optional<QString> askSecret(QWidget* parent, const QString& title, const QString& question);
/// Asks for one of `choices`, or for a text of one's own where `isEditable`. Empty: cancelled.
std::optional<QString> askChoice(QWidget* parent, const QString& title, const QString& question,
                                 const QStringList& choices, int preset, bool isEditable);

} // namespace caprail
