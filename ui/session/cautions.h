// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStringList>
#include <vector>

namespace caprail {

/// What a person must mind. Each station names its own; the customer's sheet has cautions of its
/// own.
enum class Caution { precedence, stand, crank, wrench, counted, sealant, yielded };

/// A caution, in a sentence or two.
QString shown(Caution caution);
/// Several, one after another; empty where there is nothing to mind.
QString cautionText(const std::vector<Caution>& cautions);
/// All cautions, one a line.
QStringList allCautions();

} // namespace caprail
