// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <units/format.h>
#include <work/trial_work.h>

namespace caprail {

/// The name of a line of the trial fit, and what was found there.
QString taskTitle(const Facts& facts, const TrialTask& task);
QString taskFound(const Facts& facts, const TrialTask& task, const Units& units);
/// An answer in words, for the echo.
QString describeAnswer(const TrialFitResult& answer, const Units& units);
/// Whether a place that a person jumped to names this line.
bool isNamed(const TrialTask& task, const QString& subject);

} // namespace caprail
