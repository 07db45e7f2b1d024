// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QByteArray>
#include <QStringList>

namespace caprail {

/// The specification templates that the program carries: engine layout, bands, rules and fastener groups, one JSON
/// entry a line, as `caprail append` takes them. Their values are starting points: the part maker's instructions come
/// first.
QStringList templateTitles();
/// The lines of a template by its title; empty for an unknown one.
QByteArray templateLines(const QString& title);

} // namespace caprail
