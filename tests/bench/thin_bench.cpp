// SPDX-License-Identifier: GPL-3.0-or-later
/// Plans that cannot be proven in time: thin leaves, with and without a stack limit, by processor time of 16 ms, 100
/// ms, 1 s and 5 s, beside a plain local search (plan_local_search.h) and, where it is done in its time, GLPK. One row
/// per family and deadline: places served by each, in per cent of the best known (by anyone in this run, at any
/// deadline, or in the case file); shims of the planner in per cent of the local search's, over the kits where both
/// serve as many; how many kits are proven in places and shims; by how much a deadline was overrun at worst. Goals: 99
/// % of the best known places at 16 ms, all at 1 s; overrun under 5 ms; nowhere worse than the local search.
///
/// Settings, by environment: THIN_BENCH_CASES (12 per family), THIN_BENCH_DEADLINES_MS ("16,100,1000,5000"),
/// THIN_BENCH_GLPK_SECONDS (0: without it).
#include "plan_cases.h"
#include "plan_glpk.h"
#include "plan_local_search.h"
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <sstream>

namespace {

using namespace caprail;
using namespace caprail::plancases;

int setting(const char* name, int otherwise) {
    const char* text = std::getenv(name);
    return text == nullptr ? otherwise : std::atoi(text);
}

double milliseconds() {
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

struct Run {
    Served planner;
    Served plain;
    bool isBound = false; ///< places and shims of the planner are proven best
    double overrun = 0;
};

Run runOne(const PlanCase& c, double deadline) {
    Run run;
    double began = milliseconds();
    const auto stop = [&began, deadline] { return milliseconds() - began > deadline; };
    const StackPlan plan = planStacks(c.request, {stop}).value();
    run.overrun = milliseconds() - began - deadline;
    run.planner = {plan.inBand, plan.shims};
    run.isBound = plan.inBand == plan.bound.inBand && plan.shims == plan.bound.shims;
    began = milliseconds();
    run.plain = planByLocalSearch(c.request, stop);
    return run;
}

double percent(int part, int whole) {
    return whole == 0 ? 100 : 100.0 * part / whole;
}

void runFamily(const char* name, const std::vector<PlanCase>& cases, const std::vector<double>& deadlines) {
    std::vector<std::vector<Run>> runs; // by deadline, by case
    std::vector<int> known(cases.size());
    int glpkDone = 0;
    for (const double deadline : deadlines) {
        auto& row = runs.emplace_back();
        for (std::size_t i = 0; i < cases.size(); ++i) {
            row.push_back(runOne(cases[i], deadline));
            known[i] = std::max({known[i], row.back().planner.inBand, row.back().plain.inBand,
                                 cases[i].best ? cases[i].best->inBand : 0});
        }
    }
    if (const int seconds = setting("THIN_BENCH_GLPK_SECONDS", 0); seconds > 0) {
        for (std::size_t i = 0; i < cases.size(); ++i) {
            if (const auto glpk = planWithGlpk(cases[i].request, seconds)) {
                known[i] = std::max(known[i], glpk->inBand);
                ++glpkDone;
            }
        }
        std::printf("%s: GLPK is done with %d of %zu in %d s each\n", name, glpkDone, cases.size(), seconds);
    }
    for (std::size_t d = 0; d < deadlines.size(); ++d) {
        int served = 0;
        int plain = 0;
        int best = 0;
        int shims = 0;
        int plainShims = 0;
        int bound = 0;
        int worse = 0;
        double overrun = 0;
        for (std::size_t i = 0; i < cases.size(); ++i) {
            const Run& run = runs[d][i];
            served += run.planner.inBand;
            plain += run.plain.inBand;
            best += known[i];
            bound += run.isBound ? 1 : 0;
            overrun = std::max(overrun, run.overrun);
            const bool isEqual = run.planner.inBand == run.plain.inBand;
            shims += isEqual ? run.planner.shims : 0;
            plainShims += isEqual ? run.plain.shims : 0;
            worse += run.planner.inBand < run.plain.inBand || (isEqual && run.planner.shims > run.plain.shims) ? 1 : 0;
        }
        std::printf(
            "%-30s %5.0f ms: planner %6.2f %%, local search %6.2f %% of places; shims %6.2f %% of its; proven %2d "
            "of %zu; worse %d; overrun %.1f ms\n",
            name, deadlines[d], percent(served, best), percent(plain, best), percent(shims, plainShims), bound,
            cases.size(), worse, overrun);
        std::fflush(stdout);
    }
}

} // namespace

int main() {
    const char* text = std::getenv("THIN_BENCH_DEADLINES_MS");
    std::istringstream list(text == nullptr ? "16,100,1000,5000" : text);
    std::vector<double> deadlines;
    for (std::string one; std::getline(list, one, ',');) {
        deadlines.push_back(std::atof(one.c_str()));
    }
    runFamily("case files", readCases(std::string(TEST_DATA) + "/plan-thin"), deadlines);
    const auto count = static_cast<unsigned>(setting("THIN_BENCH_CASES", 12));
    for (const Family family : {Family::thin, Family::thinLimited}) {
        std::vector<PlanCase> cases;
        for (unsigned seed = 1000; seed < 1000 + count; ++seed) {
            cases.push_back(makeCase(family, seed));
        }
        runFamily(nameOf(family), cases, deadlines);
    }
    return 0;
}
