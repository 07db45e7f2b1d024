// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QJsonArray>
#include <QJsonObject>
#include <QString>
#include <assessment/assessment.h>

namespace caprail {

/// The assessment as `caprail show --json` prints it: checks with code, state, sentence, remedy, the entries that they
/// rest on and what made them stale; gates with what holds them; lengths in whole nanometres. Its member “schema” is another
/// text once a member changes its meaning or goes away; members may be added.
QJsonObject assessmentJson(const Ledger&, const Facts&, const Assessment&);

/// Who signed the ledger: an object for each signature, with its key and whether it holds and covers all.
QJsonArray signaturesJson(const Ledger&);
/// The tables of results (shop/result_tables.h): by their names, lists of objects with a member per column; what is not
/// known is null.
QJsonObject resultsJson(const Facts&, const Assessment&);

/// The same for people: gates first, then every check with its state and reasons, one line each.
QString assessmentText(const Ledger&, const Facts&, const Assessment&, const Units&);

} // namespace caprail
