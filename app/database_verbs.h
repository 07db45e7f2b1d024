// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "command_line.h"

#include <catalogue/connection.h>

namespace caprail::verbs {

/// The shop's database that a person names, opened, with tables that this program knows. Refuses in one sentence.
Result<Connection> openDatabase(const QString& service);
/// What a database refused, with its name, unless that names none: it may hold a password then. Gives the exit code.
int cannotUse(const QString& service, const Problem& problem, ExitCode exitCode = unusable);

} // namespace caprail::verbs
