// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/plan_runner.h>

#include <QElapsedTimer>
#include <algorithm>

namespace caprail {

namespace {

/// Solves up to the last look; `tell` gets better plans on the way, at most every `firstLook`. `cancelled` is looked at
/// all the time.
PlanOutcome solveLive(const PlanTask& task, const std::atomic<bool>& cancelled,
                      const std::function<void(const PlanOutcome&)>& tell) {
    QElapsedTimer clock;
    clock.start();
    const auto elapsed = [&clock] { return static_cast<double>(clock.nsecsElapsed()) / 1e6; };
    PlanOutcome outcome;
    outcome.task = task;
    outcome.request = task.request;
    qint64 toldAt = 0;
    PlanOptions options;
    options.stop = [&] { return cancelled.load(std::memory_order_relaxed) || clock.elapsed() >= PlanRunner::lastLook; };
    options.better = [&](const std::function<StackPlan()>& plan) {
        if (clock.elapsed() - toldAt < PlanRunner::firstLook) {
            return;
        }
        toldAt = clock.elapsed();
        PlanOutcome soFar;
        soFar.task = task;
        soFar.request = task.request;
        soFar.plan = plan();
        soFar.milliseconds = elapsed();
        tell(soFar);
    };
    if (auto answer = planForVerdicts(task, options)) {
        outcome.request = std::move(answer->request);
        outcome.plan = std::move(answer->plan);
        outcome.doubt = std::move(answer->doubt);
    } else {
        outcome.problem = QString::fromStdString(answer.error().sentence);
    }
    outcome.milliseconds = elapsed();
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

void PlanRunner::wait() {
    if (m_cancelled) {
        m_cancelled->store(true);
    }
    m_pool.clear();
    m_task.reset();
    m_outcome.reset();
    m_isBusy = true;
    ++m_generation;
}

void PlanRunner::solve(const PlanTask& task) {
    if (m_task == task) {
        return;
    }
    wait();
    m_task = task;
    const std::uint64_t generation = m_generation;
    m_cancelled = std::make_shared<std::atomic<bool>>(false);
    m_pool.start([this, task, generation, cancelled = m_cancelled] {
        // The answer travels to the screen's thread as an event, which dies with this object.
        const auto tell = [&](const PlanOutcome& outcome) {
            if (!cancelled->load()) {
                QMetaObject::invokeMethod(
                    this, [this, generation, outcome] { take(generation, outcome); }, Qt::QueuedConnection);
            }
        };
        PlanOutcome outcome = solveLive(task, *cancelled, tell);
        const bool someUnmet = outcome.plan && !outcome.plan->unmet.empty();
        outcome.isFinal = !someUnmet;
        tell(outcome);
        if (someUnmet && !cancelled->load()) {
            QElapsedTimer clock;
            clock.start();
            PlanOptions options;
            options.stop = [&] { return cancelled->load() || clock.elapsed() >= lastLook; };
            if (auto remedies = whatWouldHelp(outcome.request, *outcome.plan, options)) {
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
