// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QJsonObject>
#include <QString>
#include <assessment/assessment.h>

namespace caprail {

/// The assessment as `caprail show --json` prints it: checks with code, state, sentence, remedy, the entries that they
/// rest on and what made them stale; gates with what holds them; lengths in whole nanometres.
QJsonObject assessmentJson(const Ledger&, const Facts&, const Assessment&);

/// The same for people: gates first, then every check with its state and reasons, one line each.
QString assessmentText(const Ledger&, const Facts&, const Assessment&, const Units&);

} // namespace caprail
