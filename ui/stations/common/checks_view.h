// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QListWidget>
#include <functional>
#include <session/record_session.h>

class QAction;

namespace caprail {

/// A list of checks: sign, title, state in words, what was found and what to do. Enter or a click goes to the place
/// where the check is worked on; J, or the context menu, judges a stale one again where arithmetic alone made it stale.
class ChecksView : public QListWidget {
    Q_OBJECT
public:
    explicit ChecksView(RecordSession& session, QWidget* parent = nullptr);
    void setFilter(std::function<bool(const Check&)> filter);
    void refresh();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void go(QListWidgetItem* item);
    /// The check that a line shows; null without a line.
    [[nodiscard]] const Check* checkOf(const QListWidgetItem* item) const;
    /// Whether the current check can be judged again.
    void offer();
    void judgeAgain();
    RecordSession& m_session;
    std::function<bool(const Check&)> m_filter;
    QAction* m_judge;
};

} // namespace caprail
