// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <catalogue/connection.h>

namespace caprail::verbs {

/// The shop's database that a person names, opened, with tables that this program knows. Refuses in one sentence.
Result<Connection> openDatabase(const QString& service);

} // namespace caprail::verbs
