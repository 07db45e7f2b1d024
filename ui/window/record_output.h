// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <sheet/sheet.h>
#include <window/preferences.h>

namespace caprail {

class RecordSession;

/// Paper, units, shop and logo as the person chose them.
SheetOptions sheetOptionsOf(const Preferences& preferences);
/// What a sheet of an open record is made from; the session must outlive it.
SheetSource sheetSourceOf(RecordSession& session);

} // namespace caprail
