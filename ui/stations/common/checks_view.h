// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <session/record_session.h>
#include <tables/table.h>

class QAction;

namespace caprail {

/// A list of checks: sign, title, state in words, what was found and what to do. Enter or a click goes to the place
/// where the check is worked on; J, or the context menu, judges a stale one again where arithmetic alone made it stale.
class ChecksView : public List<Check, std::string> {
    Q_OBJECT
public:
    explicit ChecksView(RecordSession& session, QWidget* parent = nullptr);
    void setFilter(std::function<bool(const Check&)> filter);
    void refresh();

private:
    void go(int line);
    /// Whether the current check can be judged again.
    void offer();
    void judgeAgain();
    RecordSession& m_session;
    std::function<bool(const Check&)> m_filter;
    QAction* m_judge;
};

} // namespace caprail
