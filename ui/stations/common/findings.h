// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>
#include <string>

namespace caprail {

/// The name of the next finding of this record: "F1", "F2" …; one more than the largest number used.
std::string nextFinding(const Facts& facts);

} // namespace caprail
