// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The bench of the assessment's tests with what the work at it needs besides.
#include "../assessment/bench.h"

namespace caprail {

inline const Units inchUnits;

class WorkBench : public Bench {
public:
    [[nodiscard]] std::vector<Position> positions() const { return facts.layout->positions(); }
    void shim(const std::string& name, double marked, std::optional<double> measured) {
        make(ShimAdded{name, {thou(marked), ""}, ""});
        if (measured) {
            make(ShimMeasured{name, {thou(*measured), ""}, ""});
        }
    }
};

} // namespace caprail
