// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTimer>
#include <QWidget>
#include <records/database_link.h>
#include <text/label.h>

class QPushButton;

namespace caprail {

/// The line over what a database shows: that it is waited for, or why what is shown may not be what is there, with a
/// button to try again. Hidden where neither is so.
class DatabaseNotice : public QWidget {
    Q_OBJECT
public:
    explicit DatabaseNotice(DatabaseLink& link, QWidget* parent = nullptr);
    /// What is shown stays; this says why nothing newer came.
    void fail(const QString& sentence);
    /// The database has answered.
    void clear();

signals:
    void triedAgain();

private:
    void say(const QString& sentence, bool isFailure);

    DatabaseLink* m_link;
    Label* m_words;
    QPushButton* m_again;
    QTimer m_patience; ///< a usual answer comes without a word
    bool m_hasFailed = false;
};

} // namespace caprail
