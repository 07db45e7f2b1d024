// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/look.h>
#include <text/label.h>

class QToolButton;

namespace caprail {

/// The head of a column: a place, the figure that matters there, read at arm's length, and its state in words.
class PlaceHeading : public QWidget {
    Q_OBJECT
public:
    explicit PlaceHeading(QWidget* parent = nullptr);
    void show(const QString& place, const QString& figure, CheckState state, const QString& words);
    /// Whether the figure has an uncertainty that can be asked about.
    void setAskable(bool isAskable);
    [[nodiscard]] QString figure() const;

signals:
    void whyAsked();

private:
    Label* m_place;
    Label* m_figure;
    Label* m_words;
    QToolButton* m_why;
};

} // namespace caprail
