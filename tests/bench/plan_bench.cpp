// SPDX-License-Identifier: GPL-3.0-or-later
/// The stack planner, family by family, side by side with GLPK in one run. The columns of the table: median, 99th
/// percentile and worst time of a plan in milliseconds, the share that was proven within the deadline, and how many
/// times as long GLPK takes for the first two aims alone (median over a few cases of the family; where GLPK runs out of
/// its time, that time counts, so the true ratio is larger).
/// Goals: median under 1 ms and 99th percentile under 16 ms for plentiful, measured, scarce and exact fit; under 100 ms
/// for the adversarial families and with least twist; 20 × 200 under 1 s.
///
/// Settings, by environment: PLAN_BENCH_CASES (200 per family), PLAN_BENCH_DEADLINE_MS (2000 for one plan),
/// PLAN_BENCH_GLPK_CASES (3 per family), PLAN_BENCH_GLPK_SECONDS (10 for one case).
#include "plan_cases.h"
#include "plan_glpk.h"
#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdlib>
#include <ctime>

namespace {

using namespace caprail;
using namespace caprail::plancases;

int setting(const char* name, int otherwise) {
    const char* text = std::getenv(name);
    return text == nullptr ? otherwise : std::atoi(text);
}

/// Processor time of this process: what else the machine does meanwhile does not count.
double milliseconds() {
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

double percentile(std::vector<double> values, double share) {
    std::sort(values.begin(), values.end());
    const double at = share * static_cast<double>(values.size() - 1) + 0.5;
    return values[static_cast<std::size_t>(at)];
}

/// One row of the table.
void runFamily(benchmark::State& state, const std::vector<PlanCase>& cases, Objective objective) {
    const double deadline = setting("PLAN_BENCH_DEADLINE_MS", 2000);
    for ([[maybe_unused]] auto unused : state) {
        std::vector<double> times;
        std::vector<double> ratios;
        int proven = 0;
        std::size_t slowest = 0;
        for (std::size_t i = 0; i < cases.size(); ++i) {
            PlanRequest request = cases[i].request;
            request.objective = objective;
            const double began = milliseconds();
            const auto plan = planStacks(request, {[&] { return milliseconds() - began > deadline; }});
            times.push_back(milliseconds() - began);
            proven += plan && plan->proven ? 1 : 0;
            slowest = times[i] > times[slowest] ? i : slowest;
            if (static_cast<int>(i) < setting("PLAN_BENCH_GLPK_CASES", 3) && objective == Objective::smallestResidual) {
                const double glpkBegan = milliseconds();
                benchmark::DoNotOptimize(planWithGlpk(request, setting("PLAN_BENCH_GLPK_SECONDS", 10)));
                ratios.push_back((milliseconds() - glpkBegan) / times[i]);
            }
        }
        double sum = 0;
        for (double t : times) {
            sum += t;
        }
        state.SetIterationTime(sum / static_cast<double>(times.size()) / 1e3);
        state.SetLabel("slowest: " + cases[slowest].name);
        state.counters["median_ms"] = percentile(times, 0.5);
        state.counters["p99_ms"] = percentile(times, 0.99);
        state.counters["worst_ms"] = percentile(times, 1.0);
        state.counters["proven"] = static_cast<double>(proven) / static_cast<double>(cases.size());
        if (!ratios.empty()) {
            state.counters["glpk_ratio"] = percentile(ratios, 0.5);
        }
    }
}

void addFamily(const std::string& name, const std::vector<PlanCase>& cases) {
    for (const Objective objective : {Objective::smallestResidual, Objective::leastTwist}) {
        const std::string row = name + (objective == Objective::leastTwist ? ", least twist" : "");
        benchmark::RegisterBenchmark(
            row.c_str(), [cases, objective](benchmark::State& state) { runFamily(state, cases, objective); })
            ->Iterations(1)
            ->UseManualTime()
            ->Unit(benchmark::kMillisecond);
    }
}

} // namespace

int main(int argc, char** argv) {
    addFamily("case files", readCases(std::string(TEST_DATA) + "/plan"));
    const auto count = static_cast<unsigned>(setting("PLAN_BENCH_CASES", 200));
    for (const Family family : allFamilies) {
        std::vector<PlanCase> cases;
        for (unsigned seed = 1000; seed < 1000 + count; ++seed) {
            cases.push_back(makeCase(family, seed));
        }
        addFamily(nameOf(family), cases);
    }
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
