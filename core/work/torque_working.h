// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <QStringList>
#include <assessment/facts.h>
#include <units/format.h>

namespace caprail {

/// What a group's specification comes to: preload by short and long form, share of proof load with the scatter, steps,
/// each with its working; and what to mind about it.
struct GroupWorking {
    QStringList warnings; ///< 90 % of proof at the lower friction; a value that looks like the wrong unit
    QStringList missing;  ///< why a part of the working is not there
    QStringList lines;
};
/// `scatterPercent` is that of the record's rules.
GroupWorking workingOf(const FastenerGroupSet& group, std::int64_t scatterPercent, const Units& units);

/// What only this program can know to be wrong with a group: a thread that does not exist, a sequence over fasteners
/// that the layout lacks.
Result<void> groupMakesSense(const Facts& facts, const FastenerGroupSet& group);

/// What to set on a wrench with an extension: typed as "wrench length, offset, angle"; the working, or why not.
QString extensionText(Torque wanted, const QString& length, const QString& offset, const QString& angle,
                      const Units& units);

} // namespace caprail
