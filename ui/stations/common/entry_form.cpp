// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/entry_form.h>

#include <QComboBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <session/look.h>
#include <text/label.h>

namespace caprail {

EntryForm::EntryForm(const QString& title, const QString& saveLabel, int columns, QWidget* parent)
    : QWidget(parent), m_grid(new QGridLayout), m_message(new Label(this)), m_save(new QPushButton(saveLabel, this)),
      m_columns(columns) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    if (!title.isEmpty()) {
        auto* heading = new Label(title, this);
        QFont bold = heading->font();
        bold.setBold(true);
        heading->setFont(bold);
        column->addWidget(heading);
    }
    m_grid->setHorizontalSpacing(10);
    m_grid->setVerticalSpacing(4);
    for (int i = 0; i < columns; ++i) {
        m_grid->setColumnStretch(2 * i + 1, 1);
    }
    column->addLayout(m_grid);
    m_message->setWordWrap(true);
    m_message->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_message->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_message->setMinimumHeight(m_message->fontMetrics().lineSpacing() * 2);
    auto* row = new QHBoxLayout;
    row->addWidget(m_message, 1);
    row->addWidget(m_save, 0, Qt::AlignTop);
    column->addLayout(row);
    m_save->setEnabled(false);
    m_save->setAutoDefault(false);
    connect(m_save, &QPushButton::clicked, this, &EntryForm::save);
}

void EntryForm::addField(const FormField& described, const QStringList& choices) {
    QWidget* editor = nullptr;
    if (choices.isEmpty() && described.suggestions.isEmpty()) {
        auto* line = new QLineEdit(this);
        line->setPlaceholderText(described.hint);
        connect(line, &QLineEdit::textEdited, this, &EntryForm::touch);
        connect(line, &QLineEdit::returnPressed, this, &EntryForm::save);
        editor = line;
    } else {
        auto* box = new QComboBox(this);
        box->addItems(choices.isEmpty() ? described.suggestions : choices);
        if (choices.isEmpty()) {
            box->setEditable(true);
            box->setInsertPolicy(QComboBox::NoInsert);
            box->setCurrentIndex(-1);
            box->lineEdit()->setPlaceholderText(described.hint);
            connect(box, &QComboBox::editTextChanged, this, [this, box] {
                if (!box->signalsBlocked()) {
                    touch();
                }
            });
            connect(box->lineEdit(), &QLineEdit::returnPressed, this, &EntryForm::save);
        } else {
            connect(box, &QComboBox::activated, this, &EntryForm::touch);
        }
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(10);
        editor = box;
    }
    editor->setAccessibleName(described.label);
    auto* label = new Label(described.label, this);
    label->setBuddy(editor);
    if (described.isWide) {
        m_count += (m_columns - m_count % m_columns) % m_columns;
    }
    const int row = m_count / m_columns;
    const int column = (m_count % m_columns) * 2;
    m_grid->addWidget(label, row, column);
    m_grid->addWidget(editor, row, column + 1, 1, described.isWide ? 2 * m_columns - 1 : 1);
    m_widgets[described.field] = editor;
    m_count += described.isWide ? m_columns : 1;
    setTabOrder(editor, m_save);
}

QWidget* EntryForm::widget(std::string_view fieldName) const {
    const auto at = m_widgets.find(fieldName);
    return at == m_widgets.end() ? nullptr : at->second;
}

QLineEdit* EntryForm::edit(std::string_view fieldName) const {
    if (auto* box = choice(fieldName)) {
        return box->lineEdit();
    }
    return qobject_cast<QLineEdit*>(widget(fieldName));
}

QComboBox* EntryForm::choice(std::string_view fieldName) const {
    return qobject_cast<QComboBox*>(widget(fieldName));
}

QString EntryForm::text(std::string_view fieldName) const {
    if (const auto* box = choice(fieldName)) {
        return box->currentText();
    }
    const auto* line = edit(fieldName);
    return line == nullptr ? QString() : line->text();
}

void EntryForm::setText(std::string_view fieldName, const QString& text) {
    if (auto* box = choice(fieldName)) {
        const QSignalBlocker quiet(box);
        if (box->isEditable()) {
            box->setEditText(text);
        } else {
            box->setCurrentText(text);
        }
    } else if (auto* line = edit(fieldName)) {
        line->setText(text);
        line->setCursorPosition(0); // the beginning of what is too long is read first
    }
}

void EntryForm::clearField(std::string_view fieldName) {
    if (!m_isTouched) {
        setText(fieldName, {});
    }
}

void EntryForm::type(std::string_view fieldName, const QString& text) {
    setText(fieldName, text);
    touch();
}

void EntryForm::touch() {
    m_isTouched = true;
    m_save->setEnabled(true);
    m_problem.clear();
    m_failed = {};
    setRemark(m_remark);
    emit edited();
}

void EntryForm::putBack() {
    m_isTouched = false;
    m_save->setEnabled(false);
    m_problem.clear();
    setRemark(m_remark);
    emit reverted();
}

void EntryForm::save() {
    m_failed = {};
    if (const auto stored = store(); !stored) {
        showProblem(qtText(stored.error().sentence));
        return;
    }
    putBack();
    emit saved();
}

void EntryForm::setRemark(const QString& text) {
    m_remark = text;
    const bool isProblem = !m_problem.isEmpty();
    m_message->setText(isProblem ? QStringLiteral("✕ ") + m_problem
                       : m_isTouched && text.isEmpty()
                           ? tr("Not stored yet: Enter stores, Esc puts the recorded values back.")
                           : text);
    QPalette palette = m_message->palette();
    palette.setColor(QPalette::WindowText, isProblem ? screenLook().out : screenLook().quiet);
    m_message->setPalette(palette);
}

void EntryForm::offerToStore() {
    m_save->setEnabled(true);
}

void EntryForm::showProblem(const QString& sentence) {
    m_problem = sentence;
    setRemark(m_remark);
    if (!m_failed.empty()) {
        focusField(m_failed);
    }
}

QString EntryForm::problem() const {
    return m_problem;
}

void EntryForm::focusField(std::string_view fieldName) {
    if (auto* line = edit(fieldName)) {
        line->setFocus();
        line->selectAll();
    } else if (auto* other = widget(fieldName)) {
        other->setFocus();
    }
}

void EntryForm::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && m_isTouched) {
        putBack();
        return;
    }
    QWidget::keyPressEvent(event);
}

void EntryForm::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) {
        setRemark(m_remark);
    }
}

} // namespace caprail
