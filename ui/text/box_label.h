// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QComboBox;

namespace caprail {

/// Sees to it that a screen reader hears what a box asks for: Qt gives it what is chosen in the box as its name, and
/// what is asked only as a label beside it. A box without one gets one that is not seen, with its accessible name or its
/// tip; so does the field in a box that can be typed into. Called once for each box, before it is shown first.
void labelBox(QComboBox& box);

} // namespace caprail
