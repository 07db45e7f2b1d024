// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPointer>
#include <QWidget>
#include <stations/common/station.h>

class QGridLayout;
class QPushButton;

namespace caprail {

/// The keys of the bench view for a hand in a glove: digits and marks, Enter, the place before and after, the words
/// that the station takes (held …), and strike. The keyboard stays in the field that it types into.
class BenchPad : public QWidget {
    Q_OBJECT
public:
    static constexpr int least = 48; ///< pixels, each key both ways

    explicit BenchPad(QWidget* parent);
    /// What it types into; null: nothing.
    void typeInto(EntryField* field);
    void showWords(const std::vector<BenchWord>& words);

signals:
    void strikeAsked();
    void leaveAsked();

private:
    QPushButton* add(const QString& text, const QString& name, int row, int column, int columns = 1);
    void insert(const QString& text);
    void press(int key);
    QPointer<EntryField> m_field;
    QGridLayout* m_grid;
    std::vector<BenchWord> m_shown;
    std::vector<QPushButton*> m_words; ///< their keys
};

} // namespace caprail
