// SPDX-License-Identifier: GPL-3.0-or-later
#include <fasteners/lubricant.h>
#include <base/say.h>
#include <base/text.h>

namespace caprail {

const std::vector<Lubricant>& lubricants() {
    // Each μ is the one that gives the K beside it on a 1/2-20 thread with a bearing radius of 0.65·D; the tests hold
    // the two together.
    static const std::string handbook = "Shigley, Mechanical Engineering Design, table 8-15 (K); μ worked out from K";
    static const std::string practice = Core::mark("common practice, no source");
    static const std::vector<Lubricant> table{
        {Core::mark("dry, black oxide"), 0.30, 0.24, handbook},
        {Core::mark("dry, zinc plated"), 0.20, 0.155, handbook},
        {Core::mark("engine oil"), 0.18, 0.135, handbook},
        {Core::mark("cadmium plated"), 0.16, 0.12, handbook},
        {Core::mark("assembly lubricant with molybdenum disulphide"), 0.13, 0.095, practice},
        {Core::mark("anti-seize paste"), 0.12, 0.085, handbook},
    };
    return table;
}

Result<Lubricant> findLubricant(std::string_view name) {
    const std::string wanted = lowered(trimmed(name));
    std::string known;
    for (const Lubricant& lubricant : lubricants()) {
        if (lowered(lubricant.name) == wanted) {
            return lubricant;
        }
        known += (known.empty() ? "" : "; ") + lubricant.name;
    }
    return refuse(
        Core::say("%1 is not in the list of lubricants (%2): take one of these or give its nut factor.",
                  quotedText(name), known));
}

} // namespace caprail
