// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <work/rounds.h>

namespace caprail {

/// An outcome with person, wrench, time, reading and entry, for a hover or a screen reader.
QString cellStory(const RoundCell&, const Units&);

} // namespace caprail
