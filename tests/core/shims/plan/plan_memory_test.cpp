// SPDX-License-Identifier: GPL-3.0-or-later
// How much memory a plan takes at most: every allocation of this program is counted, so the figure is the solver's own
// and the same on any machine, whatever the system keeps in reserve.
#include "plan_cases.h"
#include <algorithm>
#include <cstdlib>
#include <gtest/gtest.h>
#include <malloc.h>
#include <new>

using namespace caprail;
using caprail::plancases::Family;
using caprail::plancases::makeCase;

namespace {

std::size_t inUse = 0; // the planner works on the thread of the call
std::size_t peak = 0;

void* counted(std::size_t size) {
    void* block = std::malloc(size);
    if (block == nullptr) {
        throw std::bad_alloc();
    }
    inUse += malloc_usable_size(block);
    peak = std::max(peak, inUse);
    return block;
}

void uncounted(void* block) noexcept {
    if (block != nullptr) {
        inUse -= malloc_usable_size(block);
        std::free(block);
    }
}

/// The most that was in use at once while the plan was made, in bytes, above what was in use before. Stopped after so
/// many askings: a search keeps no more in mind the longer it runs, once its tables are made.
std::size_t memoryOf(const PlanRequest& request, int askings) {
    const std::size_t before = inUse;
    peak = inUse;
    int asked = 0;
    const auto plan = planStacks(request, {[&asked, askings] { return ++asked > askings; }});
    EXPECT_TRUE(plan);
    return peak - before;
}

} // namespace

void* operator new(std::size_t size) {
    return counted(size);
}
void* operator new[](std::size_t size) {
    return counted(size);
}
void operator delete(void* block) noexcept {
    uncounted(block);
}
void operator delete[](void* block) noexcept {
    uncounted(block);
}
void operator delete(void* block, std::size_t /*size*/) noexcept {
    uncounted(block);
}
void operator delete[](void* block, std::size_t /*size*/) noexcept {
    uncounted(block);
}

TEST(StackPlanMemory, stays_under_64_MiB_for_the_hungriest_families) {
    std::size_t most = 0;
    for (const Family family : {Family::tight, Family::noLimit, Family::noLimitAny, Family::large, Family::measured120,
                                Family::scarce, Family::twinsAny}) {
        for (unsigned seed = 4000; seed < 4005; ++seed) {
            plancases::PlanCase c = makeCase(family, seed);
            for (const Objective objective : {Objective::smallestResidual, Objective::leastTwist}) {
                SCOPED_TRACE(c.name + (objective == Objective::leastTwist ? ", least twist" : ""));
                c.request.objective = objective;
                const std::size_t bytes = memoryOf(c.request, 2000);
                EXPECT_LT(bytes, std::size_t{64} << 20);
                most = std::max(most, bytes);
            }
        }
    }
    RecordProperty("mostMiB", static_cast<int>(most >> 20));
    EXPECT_GT(most, std::size_t{1} << 16) << "the counting does not work";
}

TEST(StackPlanMemory, stays_under_64_MiB_where_lengths_are_fine_to_the_nanometre) {
    // A unit of one nanometre: no table can have an entry for every total.
    plancases::PlanCase c = makeCase(Family::noLimitAny, 4003);
    std::int64_t odd = 1;
    for (PlanShim& s : c.request.shims) {
        s.thickness += nanometres(odd = odd * 7 % 1013);
    }
    EXPECT_LT(memoryOf(c.request, 2000), std::size_t{64} << 20);
}
