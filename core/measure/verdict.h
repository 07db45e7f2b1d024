// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <units/band.h>

namespace caprail {

enum class Verdict { in, out, tooCloseToCall };

/// Guarded: the decision rule with guard bands of ISO 14253-1 and JCGM 106 (section 8.3): in only when the whole interval
/// x ± U lies inside the band, out only when it lies wholly outside. Simple acceptance looks at x alone.
enum class DecisionRule { guarded, simple };

/// `expandedUncertainty` in nanometres, 0 or more.
Verdict judge(Length x, double expandedUncertainty, Band band, DecisionRule rule);

} // namespace caprail
