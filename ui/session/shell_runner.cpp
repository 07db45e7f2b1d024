// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/shell_runner.h>

#include <QElapsedTimer>

namespace caprail {

ShellRunner::ShellRunner(QObject* parent) : QObject(parent) {
    m_pool.setMaxThreadCount(1);
}

ShellRunner::~ShellRunner() {
    cancel();
    m_pool.waitForDone();
}

void ShellRunner::cancel() {
    if (m_cancelled) {
        m_cancelled->store(true);
    }
    m_pool.clear();
    ++m_generation;
    m_isBusy = false;
}

void ShellRunner::choose(std::vector<BearingToFit> bearings, std::vector<ShelfShell> shelf, const Units& units) {
    cancel();
    m_isBusy = true;
    m_cancelled = std::make_shared<std::atomic<bool>>(false);
    m_pool.start([this, bearings = std::move(bearings), shelf = std::move(shelf), units, generation = m_generation,
                  cancelled = m_cancelled] {
        QElapsedTimer clock;
        clock.start();
        qint64 toldAt = 0;
        // The answer travels to the screen's thread as an event, which dies with this object.
        const auto tell = [&](const ShellOutcome& outcome) {
            if (cancelled->load()) {
                return;
            }
            QMetaObject::invokeMethod(
                this,
                [this, generation, outcome] {
                    if (generation == m_generation) {
                        m_isBusy = !outcome.isFinal;
                        emit chosen(outcome);
                    }
                },
                Qt::QueuedConnection);
        };
        const auto stop = [&] { return cancelled->load(std::memory_order_relaxed) || clock.elapsed() >= lastLook; };
        const auto better = [&](const std::function<ShellSelection()>& selection) {
            if (clock.elapsed() - toldAt >= pause) {
                toldAt = clock.elapsed();
                tell({selection(), {}, false});
            }
        };
        const auto best = selectShells(bearings, shelf, units, stop, better);
        tell(best ? ShellOutcome{*best, {}, true} : ShellOutcome{{}, best.error().sentence, true});
    });
}

} // namespace caprail
