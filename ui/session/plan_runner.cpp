// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/plan_runner.h>

#include <QElapsedTimer>
#include <assessment/budget_of.h>
#include <ledger/band_names.h>
#include <measure/verdict.h>

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

/// Solves up to the last look; `tell` gets better plans on the way, at most every `firstLook`. `cancelled` is looked at
/// all the time.
PlanOutcome solveLive(const PlanRequest& request, const std::atomic<bool>& cancelled,
                      const std::function<void(const PlanOutcome&)>& tell) {
    QElapsedTimer clock;
    clock.start();
    const auto elapsed = [&clock] { return static_cast<double>(clock.nsecsElapsed()) / 1e6; };
    PlanOutcome outcome;
    outcome.request = request;
    qint64 toldAt = 0;
    PlanOptions options;
    options.stop = [&] { return cancelled.load(std::memory_order_relaxed) || clock.elapsed() >= PlanRunner::lastLook; };
    options.better = [&](const std::function<StackPlan()>& plan) {
        if (clock.elapsed() - toldAt < PlanRunner::firstLook) {
            return;
        }
        toldAt = clock.elapsed();
        PlanOutcome soFar;
        soFar.request = request;
        soFar.plan = plan();
        soFar.milliseconds = elapsed();
        tell(soFar);
    };
    if (auto plan = planStacks(request, options)) {
        outcome.plan = std::move(*plan);
    } else {
        outcome.problem = QString::fromStdString(plan.error().sentence);
    }
    outcome.milliseconds = elapsed();
    return outcome;
}

/// Under guard bands a stack at the very end of the band is too close to call, so the plan aims at the zone in which
/// every stack will be judged in. Where the measurement is too coarse to leave such a zone, it aims at the whole band.
Band bandToAimAt(const Facts& facts, const std::vector<PlanPosition>& positions, Band band) {
    if (facts.rules.decision != DecisionWord::guarded) {
        return band;
    }
    double uncertainty = 0;
    for (const PlanPosition& position : positions) {
        if (const auto p = parsePosition(position.id)) {
            uncertainty = std::max(uncertainty, expectedResidualUncertainty(facts, *p));
        }
    }
    return acceptanceZone(band, uncertainty, DecisionRule::guarded).value_or(band);
}

} // namespace

Band residualBand(const Facts& facts) {
    const BandFact* band = facts.bandNamed(bands::residual);
    return band != nullptr ? band->band : *Band::between(tenths(-5), tenths(5));
}

PlanRequest planRequestFor(const Facts& facts, const Assessment& assessment) {
    PlanRequest request;
    request.band = residualBand(facts);
    request.largestStack = static_cast<int>(facts.rules.largestStack);
    request.objective =
        facts.rules.objective == ObjectiveWord::leastTwist ? Objective::leastTwist : Objective::smallestResidual;
    if (!facts.layout) {
        return request;
    }
    request.caps = facts.layout->caps();
    for (const Position p : facts.layout->positions()) {
        const auto gap = assessment.gaps.find(p);
        if (gap == assessment.gaps.end() || !gap->second.accepted) {
            continue;
        }
        PlanPosition position{code(p), p.cap, p.side == Side::left ? -1 : 1, *gap->second.accepted, {}};
        if (const auto pin = facts.pins.find(p); pin != facts.pins.end()) {
            position.pinned = pin->second;
        }
        request.positions.push_back(std::move(position));
    }
    for (const auto& [name, shim] : facts.shims) {
        if (!shim.isSetAside) {
            request.shims.push_back({name, shim.thickness()});
        }
    }
    request.band = bandToAimAt(facts, request.positions, request.band);
    return request;
}

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

void PlanRunner::solve(const PlanRequest& request) {
    if (m_request && isSame(*m_request, request)) {
        return;
    }
    if (m_cancelled) {
        m_cancelled->store(true);
    }
    m_pool.clear();
    m_request = request;
    m_outcome.reset();
    m_isBusy = true;
    const std::uint64_t generation = ++m_generation;
    m_cancelled = std::make_shared<std::atomic<bool>>(false);
    m_pool.start([this, request, generation, cancelled = m_cancelled] {
        // The answer travels to the screen's thread as an event, which dies with this object.
        const auto tell = [&](const PlanOutcome& outcome) {
            if (!cancelled->load()) {
                QMetaObject::invokeMethod(
                    this, [this, generation, outcome] { take(generation, outcome); }, Qt::QueuedConnection);
            }
        };
        PlanOutcome outcome = solveLive(request, *cancelled, tell);
        const bool someUnmet = outcome.plan && !outcome.plan->unmet.empty();
        outcome.isFinal = !someUnmet;
        tell(outcome);
        if (someUnmet && !cancelled->load()) {
            QElapsedTimer clock;
            clock.start();
            PlanOptions options;
            options.stop = [&] { return cancelled->load() || clock.elapsed() >= lastLook; };
            if (auto remedies = whatWouldHelp(request, *outcome.plan, options)) {
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
