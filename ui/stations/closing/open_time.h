// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QBasicTimer>
#include <optional>
#include <text/label.h>
#include <base/date.h>

namespace caprail {

/// Counts down the sealant's open time in large figures, second by second, and says so when it is over.
class OpenTime : public Label {
    Q_OBJECT
public:
    explicit OpenTime(QWidget* parent = nullptr);
    /// Runs from the moment the bead was laid; without minutes, or once it need not run any more, it is hidden.
    void run(UtcTime beadLaid, std::optional<std::int64_t> openMinutes);
    void stop();
    /// What is shown `now`: "12:34 left" or how long it is over.
    [[nodiscard]] QString words(UtcTime now) const;

protected:
    void timerEvent(QTimerEvent* event) override;

private:
    void tell();
    UtcTime m_ends;
    QBasicTimer m_timer;
};

} // namespace caprail
