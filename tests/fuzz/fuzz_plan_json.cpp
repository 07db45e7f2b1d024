// SPDX-License-Identifier: GPL-3.0-or-later
/// A stack-plan case as `caprail plan` reads it: refused with a sentence, or planned without a crash and within a time;
/// what is planned keeps its own word: every shim exists and lies in one stack, residuals are gap minus stack.
#include "scratch_file.h"

#include "../../app/plan_case.h"

#include <chrono>
#include <map>
#include <set>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace caprail;
    const auto read = readPlanCase(QByteArray(reinterpret_cast<const char*>(data), static_cast<qsizetype>(size)));
    if (!read) {
        fuzz::require(!read.error().sentence.empty(), "a refusal without a sentence");
        return 0;
    }
    PlanOptions options;
    const auto end = std::chrono::steady_clock::now() + std::chrono::milliseconds(50);
    options.stop = [end] { return std::chrono::steady_clock::now() > end; };
    const auto plan = planStacks(read->request, options);
    if (!plan) {
        fuzz::require(!plan.error().sentence.empty(), "a refusal without a sentence");
        return 0;
    }
    std::map<std::string, Length> thickness;
    for (const PlanShim& shim : read->request.shims) {
        thickness[shim.id] = shim.thickness;
    }
    std::map<std::string, Length> gaps;
    for (const PlanPosition& position : read->request.positions) {
        gaps[position.id] = position.gap;
    }
    std::set<std::string> used;
    for (const PlannedStack& stack : plan->stacks) {
        Length rest = gaps.at(stack.position);
        for (const std::string& shim : stack.shims) {
            fuzz::require(thickness.contains(shim), "a shim that the kit does not have");
            fuzz::require(used.insert(shim).second, "a shim in two stacks");
            rest = rest - thickness.at(shim);
        }
        fuzz::require(rest == stack.residual, "a residual that is not gap minus stack");
    }
    (void)planJson(*read, *plan);
    return 0;
}
