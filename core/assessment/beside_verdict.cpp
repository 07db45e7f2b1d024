// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/beside_verdict.h>

#include <cmath>
#include <base/say.h>

namespace caprail {

namespace {

std::string cutDown(double value, int decimals, const Units& units) {
    const double scale = std::pow(10.0, decimals);
    return formatNumber(std::floor(value * scale * (1 + 1e-12)) / scale, decimals, units.decimalMark);
}

bool isWorse(const Conformity& a, const Conformity& b) {
    return a.probability < b.probability || (a.probability == b.probability && a.capability < b.capability);
}

} // namespace

std::string besideVerdict(const Judged& judged, const Units& units) {
    if (!judged.conformity) {
        return {};
    }
    constexpr double mostPrinted = 99; // beyond it a capability says no more
    const Conformity& c = *judged.conformity;
    return c.capability > mostPrinted
               ? Core::say("p %1 %, C over 99", cutDown(c.probability * 100, 1, units))
               : Core::say("p %1 %, C %2", cutDown(c.probability * 100, 1, units), cutDown(c.capability, 2, units));
}

std::string besideVerdict(const Check& check, const Units& units) {
    const Judged* worst = nullptr;
    for (const Judged& one : check.judged) {
        if (one.conformity && (worst == nullptr || isWorse(*one.conformity, *worst->conformity))) {
            worst = &one;
        }
    }
    return worst == nullptr || check.state == CheckState::stale ? std::string() : besideVerdict(*worst, units);
}

std::vector<std::string> besideAllVerdicts(const Assessment& a) {
    std::vector<std::string> sentences;
    if (a.weaklyMeasured > 0) {
        sentences.push_back(Core::count(static_cast<int>(a.weaklyMeasured),
                                        Core::mark("%1 verdict is weakly measured: its band is narrower than four times "
                                                   "the standard uncertainty (C below 1)."),
                                        Core::mark("%1 verdicts are weakly measured: their bands are narrower than four "
                                                   "times the standard uncertainty (C below 1).")));
    }
    if (a.passedByEye > 0) {
        sentences.push_back(Core::count(static_cast<int>(a.passedByEye),
                                        Core::mark("%1 clearance of the trial fit was passed by eye, not measured."),
                                        Core::mark("%1 clearances of the trial fit were passed by eye, not measured.")));
    }
    return sentences;
}

} // namespace caprail
