// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What stands beside a verdict, in the same words in window, sheet and command line.
#include <assessment/assessment.h>
#include <units/format.h>

namespace caprail {

/// "p 99.8 %, C 1.34": the probability that the value lies in its band, and how many times over the band holds 4 u. Both
/// are cut down, so that neither is ever printed larger than it is. Empty while nothing is proven.
std::string besideVerdict(const Judged&, const Units&);

/// Of a check the value that is likeliest to lie outside its band (of equal ones the weakest measured): its line alone
/// stands beside the check's verdict. Empty where no number was judged, none is proven, or the check is stale.
std::string besideVerdict(const Check&, const Units&);

/// What whoever reads the verdict must know of how it was come by, a sentence each: "3 verdicts are weakly measured: …",
/// "2 clearances of the trial fit were passed by eye, not measured."
std::vector<std::string> besideAllVerdicts(const Assessment&);

} // namespace caprail
