// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <span>
#include <string_view>

namespace caprail {

/// What people read for the columns of all entry kinds, marked for translation: the column's name with spaces for
/// underscores and without the unit at its end ("limit_of_error_nm" is "limit of error"). Say one with `Core::say`;
/// the pass of a reading has its number inside, because “pass” alone is an answer of the trial fit.
std::span<const std::string_view> columnLabels();

} // namespace caprail
