// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/bench_pad.h>

#include <QApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <session/look.h>
#include <stations/common/entry_field.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

constexpr int columns = 4;
constexpr int firstWord = 6; ///< row

} // namespace

BenchPad::BenchPad(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setSpacing(6);
    const QString digits = QStringLiteral("789456123");
    for (int i = 0; i < digits.size(); ++i) {
        const QString digit = digits.mid(i, 1);
        connect(add(digit, {}, i / 3, i % 3), &QPushButton::clicked, this, [this, digit] { insert(digit); });
    }
    connect(add(QStringLiteral("0"), {}, 3, 0), &QPushButton::clicked, this, [this] { insert(QStringLiteral("0")); });
    connect(add(QStringLiteral("."), tr("decimal point"), 3, 1), &QPushButton::clicked, this,
            [this] { insert(QStringLiteral(".")); });
    connect(add(QStringLiteral("+"), tr("plus"), 3, 2), &QPushButton::clicked, this,
            [this] { insert(QStringLiteral("+")); });
    connect(add(tr("Del"), tr("Take the last sign away: Del"), 0, 3), &QPushButton::clicked, this,
            [this] { press(Qt::Key_Backspace); });
    connect(add(QStringLiteral("!"), tr("Insist on the value"), 1, 3), &QPushButton::clicked, this,
            [this] { insert(QStringLiteral("!")); });
    connect(add(QStringLiteral("/"), tr("per"), 2, 3), &QPushButton::clicked, this,
            [this] { insert(QStringLiteral("/")); });
    connect(add(QStringLiteral("-"), tr("minus"), 3, 3), &QPushButton::clicked, this,
            [this] { insert(QStringLiteral("-")); });
    connect(add(tr("▲ Back"), tr("Back: the place before"), 4, 0, 2), &QPushButton::clicked, this,
            [this] { press(Qt::Key_Up); });
    connect(add(tr("▼ Next"), tr("Next: the place after"), 4, 2, 2), &QPushButton::clicked, this,
            [this] { press(Qt::Key_Down); });
    auto* enter = add(tr("Enter"), {}, 5, 0, columns);
    enter->setObjectName(QStringLiteral("padEnter"));
    connect(enter, &QPushButton::clicked, this, [this] { press(Qt::Key_Return); });
    auto* strike = add(tr("Strike the last"), {}, firstWord + 1, 0, 3);
    connect(strike, &QPushButton::clicked, this, &BenchPad::strikeAsked);
    connect(add(tr("Esc"), tr("Esc: leave the bench view"), firstWord + 1, 3), &QPushButton::clicked, this,
            &BenchPad::leaveAsked);
    m_grid->setRowStretch(firstWord + 2, 1);
}

QPushButton* BenchPad::add(const QString& text, const QString& name, int row, int column, int columns) {
    auto* button = new QPushButton(text, this);
    button->setFocusPolicy(Qt::NoFocus);
    button->setAutoDefault(false);
    if (!name.isEmpty()) {
        button->setAccessibleName(name);
    }
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.3);
    button->setFont(large);
    // A longer word has more room; a style's least width for any button would push the field aside.
    const QSize words = QFontMetrics(large).size(Qt::TextShowMnemonic, text) + QSize(16, 12);
    button->setMinimumSize(words.expandedTo({least, least}));
    m_grid->addWidget(button, row, column, 1, columns);
    return button;
}

void BenchPad::typeInto(EntryField* field) {
    m_field = field;
}

void BenchPad::showWords(const std::vector<BenchWord>& words) {
    if (words == m_shown) {
        return;
    }
    m_shown = words;
    for (QPushButton* button : std::exchange(m_words, {})) {
        button->hide();
        button->deleteLater(); // it may be the one that was pressed
    }
    int column = 0;
    const int each = words.empty() ? columns : std::max(1, columns / static_cast<int>(words.size()));
    for (const BenchWord& word : words) {
        QPushButton* button = add(literal(word.name), {}, firstWord, column, each);
        connect(button, &QPushButton::clicked, this, [this, typed = word.typed] {
            if (m_field) {
                m_field->type((typed + QLatin1Char(' ') + m_field->text()).trimmed()); // a remark stays behind it
                m_field->submit();
            }
        });
        column += each;
        m_words.push_back(button);
    }
}

void BenchPad::insert(const QString& text) {
    if (m_field) {
        m_field->setFocus();
        m_field->lineEdit()->insert(text);
    }
}

/// As the key does, so that a finger has all that the keyboard has.
void BenchPad::press(int key) {
    if (!m_field) {
        return;
    }
    m_field->setFocus();
    for (const auto kind : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event(kind, key, Qt::NoModifier);
        if (m_field) {
            QApplication::sendEvent(m_field->lineEdit(), &event);
        }
    }
}

} // namespace caprail
