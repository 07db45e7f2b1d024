// SPDX-License-Identifier: GPL-3.0-or-later
#include <text/ask.h>

#include <QInputDialog>
#include <QLabel>
#include <text/plain_text.h>

namespace caprail {

namespace {

/// For the labels that Qt makes.
void keepPlain(const QDialog& dialog) {
    for (auto* label : dialog.findChildren<QLabel*>()) {
        label->setTextFormat(Qt::PlainText);
    }
}

/// The question stands in a label with a buddy, which Qt makes.
void put(QInputDialog& dialog, const QString& title, const QString& question) {
    dialog.setWindowTitle(literalTitle(title));
    dialog.setLabelText(literal(question));
    keepPlain(dialog);
}

} // namespace

PlainBox::PlainBox(Icon icon, const QString& title, const QString& text, StandardButtons buttons, QWidget* parent)
    : QMessageBox(parent) {
    setIcon(icon);
    setWindowTitle(literalTitle(title));
    setTextFormat(Qt::PlainText);
    setText(visible(text));
    setStandardButtons(buttons);
    keepPlain(*this);
}

void inform(QWidget* parent, const QString& title, const QString& text) {
    PlainBox(QMessageBox::Information, title, text, QMessageBox::Ok, parent).exec();
}

void warn(QWidget* parent, const QString& title, const QString& text) {
    PlainBox(QMessageBox::Warning, title, text, QMessageBox::Ok, parent).exec();
}

QMessageBox::StandardButton ask(QWidget* parent, const QString& title, const QString& question,
                                QMessageBox::StandardButtons buttons, QMessageBox::StandardButton preset) {
    PlainBox box(QMessageBox::Question, title, question, buttons, parent);
    if (preset != QMessageBox::NoButton) {
        box.setDefaultButton(preset);
    }
    return static_cast<QMessageBox::StandardButton>(box.exec());
}

std::optional<QString> askText(QWidget* parent, const QString& title, const QString& question, const QString& preset) {
    QInputDialog dialog(parent);
    put(dialog, title, question);
    dialog.setTextValue(preset);
    return dialog.exec() == QDialog::Accepted ? std::optional(dialog.textValue()) : std::nullopt;
}

std::optional<QString> askSecret(QWidget* parent, const QString& title, const QString& question) {
    QInputDialog dialog(parent);
    put(dialog, title, question);
    dialog.setTextEchoMode(QLineEdit::Password);
    return dialog.exec() == QDialog::Accepted ? std::optional(dialog.textValue()) : std::nullopt;
}

std::optional<QString> askChoice(QWidget* parent, const QString& title, const QString& question,
                                 const QStringList& choices, int preset, bool isEditable) {
    QInputDialog dialog(parent);
    put(dialog, title, question);
    dialog.setComboBoxItems(choices);
    dialog.setTextValue(choices.value(preset));
    dialog.setComboBoxEditable(isEditable);
    return dialog.exec() == QDialog::Accepted ? std::optional(dialog.textValue()) : std::nullopt;
}

} // namespace caprail
