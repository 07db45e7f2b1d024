// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <memory>
#include <optional>
#include <shims/plan/stack_plan.h>
#include <work/stack_planning.h>

namespace caprail {

/// What came of one request.
struct PlanOutcome {
    PlanTask task;
    PlanRequest request; ///< of the task, with the bands that the plan keeps to
    std::optional<StackPlan> plan;
    std::string doubt;            ///< why a stack that is in band need not be judged good; empty: each will be
    QString problem;              ///< why there is no plan; empty when there is one
    std::vector<Remedy> remedies; ///< for unmet positions, once they are worked out
    bool isFinal = false;         ///< nothing better will follow
    double milliseconds = 0;      ///< that the plan took
};

/// Solves the stack plan away from the screen's thread. A new request cancels the one before; an answer to an outdated
/// request is never shown. The answer comes within a frame where the solver proves it so soon; else what it has after
/// `firstLook`, and then whatever is better, until it is proven or `lastLook` has come: one solve, so a later answer is
/// never a worse one. What would help unmet positions comes last.
class PlanRunner : public QObject {
    Q_OBJECT
public:
    static constexpr int firstLook = 250;  ///< milliseconds
    static constexpr int lastLook = 8'000; ///< milliseconds

    explicit PlanRunner(QObject* parent = nullptr);
    ~PlanRunner() override;

    /// Begins to solve, unless the same request is solved or being solved already.
    void solve(const PlanTask& task);
    /// Forgets what was asked and shows no answer any more, because the next request is still being made ready: busy
    /// until then.
    void wait();
    /// The newest answer to the newest request; null while there is none.
    [[nodiscard]] const PlanOutcome* outcome() const { return m_outcome ? &*m_outcome : nullptr; }
    [[nodiscard]] bool isBusy() const { return m_isBusy; }

signals:
    void planReady();

private:
    void take(std::uint64_t generation, PlanOutcome outcome);

    QThreadPool m_pool;
    std::shared_ptr<std::atomic<bool>> m_cancelled;
    std::optional<PlanTask> m_task;
    std::optional<PlanOutcome> m_outcome;
    std::uint64_t m_generation = 0;
    bool m_isBusy = false;
};

} // namespace caprail
