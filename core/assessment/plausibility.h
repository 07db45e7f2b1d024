// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What is asked back before it is stored: values that are far more often a slip than a measurement.
#include <assessment/assessment.h>
#include <optional>
#include <string>

namespace caprail {

/// Why an entry is asked back, as a sentence that ends with what to do; none: it is plausible. It looks at every quantity's
/// expected range; at a new gap against the window predicted after a movement, against the passes before it and against
/// the other side of its cap; at the temperature of a part against the others; at a torque against the wrench's range.
/// Typing the value again with a `!` behind it insists on it: the mark stays with the entry, and counts as a deviation.
std::optional<std::string> askedBack(const Facts&, const Body&, const Units&);

} // namespace caprail
