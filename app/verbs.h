// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStringList>

namespace caprail::verbs {

/// Each verb takes its arguments after its name and gives the exit code (command_line.h). What it takes is told in
/// verb_table.cpp.
int newRecord(const QStringList& arguments);
int plan(const QStringList& arguments);
/// `caprail load FILE [--json]`: what the stacks put into the block, and the plate's stiffness.
int load(const QStringList& arguments);
int film(const QStringList& arguments);
int show(const QStringList& arguments);
int check(const QStringList& arguments);
int sheet(const QStringList& arguments);
int exportRecord(const QStringList& arguments);
int importLedger(const QStringList& arguments);
int append(const QStringList& arguments);
/// Signing keys: made, shown, listed.
int key(const QStringList& arguments);
/// A signature over the last seal.
int sign(const QStringList& arguments);
int salvage(const QStringList& arguments);
/// JSON Schema of what the program reads.
int schema(const QStringList& arguments);
int help(const QStringList& arguments);
/// The records of a folder as a list: only asked when it is printed.
int shop(const QStringList& arguments);

/// The customer's folder.
int handOver(const QStringList& arguments);
/// `sheet --difference`: the last build against the one before.
int sheetOfDifference(const QStringList& arguments);

/// The folder of a call of `shop` that asks for the window: it has a display and neither --list nor --json. Empty
/// otherwise.
QString shopWindowFolder(const QStringList& arguments);

} // namespace caprail::verbs
