// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <bearings/shell_selection.h>
#include <memory>
#include <optional>

namespace caprail {

/// The newest selection, or why there can be none.
struct ShellOutcome {
    std::optional<ShellSelection> selection;
    std::string problem;  ///< empty when there is one
    bool isFinal = false; ///< nothing better will follow
};

/// Chooses shells away from the screen's thread, live: each better selection is announced as it is found, at most every
/// `pause`, and the last one when it is proven or after `lastLook`. A new request, or `cancel`, ends the one before;
/// an answer to an outdated request is never shown.
class ShellRunner : public QObject {
    Q_OBJECT
public:
    static constexpr int pause = 100;      ///< milliseconds from one announcement to the next
    static constexpr int lastLook = 5'000; ///< milliseconds

    explicit ShellRunner(QObject* parent = nullptr);
    ~ShellRunner() override;

    void choose(std::vector<BearingToFit> bearings, std::vector<ShelfShell> shelf, const Units& units);
    void cancel();
    [[nodiscard]] bool isBusy() const { return m_isBusy; }

signals:
    void chosen(const caprail::ShellOutcome& outcome);

private:
    QThreadPool m_pool;
    std::shared_ptr<std::atomic<bool>> m_cancelled;
    std::uint64_t m_generation = 0;
    bool m_isBusy = false;
};

} // namespace caprail
