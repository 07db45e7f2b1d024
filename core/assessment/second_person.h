// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The shop's rule that a second person verifies the torques, and signs off.
#include <assessment/facts.h>

namespace caprail {

/// Refuses a verify round, and an outcome in it, by somebody who tightened one of its fasteners; and a sign-off by
/// somebody who did one of the closing steps: where the rules in force ask for a second person. Says who may.
Result<void> maySecondPerson(const Facts&, std::string_view person, const Body&);

} // namespace caprail
