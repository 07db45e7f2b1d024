// SPDX-License-Identifier: GPL-3.0-or-later
/// The girdle's load: condensing the plate of the largest layout (nine caps, all tied; goal under 200 ms), and F = K·r
/// for one change of a shim (goal under 0.1 ms), beside the same with energy and stress.
#include "../girdles.h"

#include <benchmark/benchmark.h>

namespace {

using namespace caprail;

EngineLayout largest() {
    LayoutDescription d;
    d.caps = 9;
    d.tiedLast = 9;
    return *EngineLayout::from(d);
}
GirdlePlate steel() {
    return {inches(0.25), psi(30e6), 0.292};
}

void condense(benchmark::State& state) {
    const EngineLayout layout = largest();
    for ([[maybe_unused]] auto unused : state) {
        benchmark::DoNotOptimize(SolvedGirdle::from(layout, steel(), 40));
    }
}
BENCHMARK(condense)->Unit(benchmark::kMillisecond);

std::vector<Length> spread(std::size_t places) {
    std::vector<Length> list;
    for (std::size_t i = 0; i < places; ++i) {
        list.push_back(tenths(static_cast<int>(i * i % 11) - 5));
    }
    return list;
}

void forces(benchmark::State& state) {
    const GirdleModel model = *girdleOf(largest(), steel(), 40);
    const std::vector<Length> residuals = spread(model.places().size());
    for ([[maybe_unused]] auto unused : state) {
        benchmark::DoNotOptimize(model.forces(residuals, Rail::held));
    }
}
BENCHMARK(forces)->Unit(benchmark::kMicrosecond);

void forcesWithStress(benchmark::State& state) {
    const GirdleModel model = *girdleOf(largest(), steel(), 40);
    const std::vector<Length> residuals = spread(model.places().size());
    for ([[maybe_unused]] auto unused : state) {
        benchmark::DoNotOptimize(model.load(residuals, Rail::held));
    }
}
BENCHMARK(forcesWithStress)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
