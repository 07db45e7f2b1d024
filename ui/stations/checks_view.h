// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QListWidget>
#include <functional>
#include <session/record_session.h>

namespace caprail {

/// A list of checks: sign, title, state in words, what was found and what to do. Enter or a click goes to the place
/// where the check is worked on; J on a stale one judges it again where arithmetic alone made it stale.
class ChecksView : public QListWidget {
    Q_OBJECT
public:
    explicit ChecksView(RecordSession& session, QWidget* parent = nullptr);
    void setFilter(std::function<bool(const Check&)> filter);
    void refresh();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void go(QListWidgetItem* item);
    RecordSession& m_session;
    std::function<bool(const Check&)> m_filter;
};

} // namespace caprail
