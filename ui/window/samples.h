// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStringList>
#include <base/problem.h>

namespace caprail {

/// The sample records that lie beside the program or in its data folder.
QStringList sampleFiles();
/// Copies a sample, so that it stays as it is. Refuses a place where something stands, and a sample above 64 MB.
Result<void> copySample(const QString& sample, const QString& copy);

} // namespace caprail
