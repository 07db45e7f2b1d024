// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/plan_runner.h>

#include <QElapsedTimer>
#include <algorithm>

namespace caprail {

namespace {

bool isSame(const PlanRequest& a, const PlanRequest& b) {
    const auto sameShim = [](const PlanShim& x, const PlanShim& y) {
        return x.id == y.id && x.thickness == y.thickness;
    };
    const auto samePosition = [](const PlanPosition& x, const PlanPosition& y) {
        return x.id == y.id && x.cap == y.cap && x.side == y.side && x.gap == y.gap && x.pinned == y.pinned;
    };
    return a.band == b.band && a.largestStack == b.largestStack && a.caps == b.caps && a.objective == b.objective &&
           std::ranges::equal(a.shims, b.shims, sameShim) && std::ranges::equal(a.positions, b.positions, samePosition);
}

/// Solves once with a deadline; `cancelled` is looked at on the way.
PlanOutcome solveWithin(const PlanTask& task, int milliseconds, const std::atomic<bool>& cancelled) {
    QElapsedTimer clock;
    clock.start();
    PlanOptions options;
    options.stop = [&] { return cancelled.load(std::memory_order_relaxed) || clock.elapsed() >= milliseconds; };
    PlanOutcome outcome;
    outcome.task = task;
    if (auto plan = planStacks(task.request, options)) {
        outcome.plan = std::move(*plan);
    } else {
        outcome.problem = QString::fromStdString(plan.error().sentence);
    }
    outcome.milliseconds = static_cast<double>(clock.nsecsElapsed()) / 1e6;
    return outcome;
}

} // namespace

PlanRunner::PlanRunner(QObject* parent) : QObject(parent) {
    m_pool.setMaxThreadCount(1);
}

PlanRunner::~PlanRunner() {
    if (m_cancelled) {
        m_cancelled->store(true);
    }
    m_pool.clear();
    m_pool.waitForDone();
}

void PlanRunner::solve(const PlanTask& task) {
    if (m_task && m_task->band == task.band && isSame(m_task->request, task.request)) {
        return;
    }
    if (m_cancelled) {
        m_cancelled->store(true);
    }
    m_pool.clear();
    m_task = task;
    m_outcome.reset();
    m_isBusy = true;
    const std::uint64_t generation = ++m_generation;
    m_cancelled = std::make_shared<std::atomic<bool>>(false);
    m_pool.start([this, task, generation, cancelled = m_cancelled] {
        // The answer travels to the screen's thread as an event, which dies with this object.
        const auto tell = [&](const PlanOutcome& outcome) {
            if (!cancelled->load()) {
                QMetaObject::invokeMethod(
                    this, [this, generation, outcome] { take(generation, outcome); }, Qt::QueuedConnection);
            }
        };
        PlanOutcome outcome = solveWithin(task, firstLook, *cancelled);
        if (outcome.plan && !outcome.plan->proven && !cancelled->load()) {
            tell(outcome);
            outcome = solveWithin(task, lastLook, *cancelled);
        }
        const bool someUnmet = outcome.plan && !outcome.plan->unmet.empty();
        outcome.isFinal = !someUnmet;
        tell(outcome);
        if (someUnmet && !cancelled->load()) {
            QElapsedTimer clock;
            clock.start();
            PlanOptions options;
            options.stop = [&] { return cancelled->load() || clock.elapsed() >= lastLook; };
            if (auto remedies = whatWouldHelp(task.request, *outcome.plan, options)) {
                outcome.remedies = std::move(*remedies);
            }
            outcome.isFinal = true;
            tell(outcome);
        }
    });
}

void PlanRunner::take(std::uint64_t generation, PlanOutcome outcome) {
    if (generation != m_generation) {
        return;
    }
    m_isBusy = !outcome.isFinal;
    m_outcome = std::move(outcome);
    emit planReady();
}

} // namespace caprail
