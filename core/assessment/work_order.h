// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The order of the work and the tools for it: what is held against a new entry only, since what was sealed long ago was
/// made under the rules of its day.
#include <assessment/facts.h>

namespace caprail {

/// Whether the instrument's kind can measure, or tighten, what the entry says.
bool fits(InstrumentType, const Body&);

/// The first of the girdle's nuts that is not; none: all are, or there is no layout.
std::optional<FastenerId> looseNut(const Facts&);

/// Refuses, with what to do first: a bore or a journal of a main while the crank is in; a bore while its cap's fasteners
/// are not at their specified value; a gap, end play, side clearance, trial fit, turning torque or verify round while the crank is not in;
/// a trial fit, or a turning torque with the girdle, while one of its nuts is not at torque; a turning torque before the
/// girdle while one is;
/// an instrument of a kind that cannot measure it; an outcome by a pull of a fastener that must not be pulled; a judgement without a reason; an exchange of shims that cannot be made;
/// a change of what something was judged by, without a reason (judged_before.h);
/// a larger sum that is said not to go and is not larger; typed text that is no quantity or contradicts its value.
Result<void> isInOrder(const Facts&, const Body&);

} // namespace caprail
