// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QJsonObject>
#include <QString>
#include <work/block_load.h>

namespace caprail {

/// What `caprail load --json` prints: `places`; `stiffness_lbf_per_thou` (rail held) and `stiffness_free_lbf_per_thou`,
/// rows in the order of the places; `loads_lbf`, `loads_free_lbf` and `loads_uncertainty_lbf` by place (positive: the
/// cap is pulled up; null: not known); `residuals_nm` and `share_of_preload` by place; `largest_load_lbf`,
/// `largest_stress_psi` with `largest_stress_at_in`, `energy_joules`; `missing` and `not_known`, the sentence
/// that says so; and `assumptions`.
QJsonObject loadJson(const GirdleModel& model, const BlockLoad& load);

/// The same for people.
QString loadText(const GirdleModel& model, const BlockLoad& load, const Units& units);

} // namespace caprail
