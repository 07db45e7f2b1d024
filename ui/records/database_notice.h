// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTimer>
#include <QWidget>
#include <records/database_link.h>
#include <text/label.h>
#include <utility>
#include <vector>

class QPushButton;

namespace caprail {

/// The line over what a database shows: that it is waited for, or why what is shown may not be what is there, with a
/// button to try again. Hidden where neither is so.
class DatabaseNotice : public QWidget {
    Q_OBJECT
public:
    explicit DatabaseNotice(DatabaseLink& link, QWidget* parent = nullptr);
    /// What is shown of this question stays or is taken away; this says why nothing newer came.
    void fail(const QString& question, const QString& sentence);
    /// The question was answered: what else was refused goes on being said.
    void answer(const QString& question);
    /// All of it is asked anew.
    void clear();

signals:
    void triedAgain();

private:
    void say(const QString& sentence, bool isFailure);
    void sayLast();

    DatabaseLink* m_link;
    Label* m_words;
    QPushButton* m_again;
    QTimer m_patience; ///< a usual answer comes without a word
    std::vector<std::pair<QString, QString>> m_failed; ///< questions and why, the last one said
};

} // namespace caprail
