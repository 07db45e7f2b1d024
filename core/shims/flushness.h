// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <span>
#include <string>
#include <units/length.h>
#include <vector>

namespace caprail {

/// The height of the girdle over one bearing place: its residual, positive where the stack is low.
struct HeightAt {
    Length along;  ///< the place along the crank, from any origin
    int side = -1; ///< −1 left, +1 right
    Length residual;
};

/// How the plate would lie: the least-squares fit r ≈ a + b·x + c·s + d·x·s over the places given. Heights are in
/// nanometres: `offset` is a; `pitch`, `roll` and `twist` are the differences of height that the term makes from end to
/// end (b over the whole length; c from left to right; d from one diagonal to the other), so each can be read on a
/// straightedge. A term that the places cannot tell from others is left out, and so are those others:
/// on one diagonal a pitch looks like a roll, so neither is given.
struct Flushness {
    std::optional<double> offset, pitch, roll, twist;
    std::vector<double> localError; ///< what is left at each place, in the order given
    std::string sentence;           ///< which terms are left out and why; empty when all are there
};

/// Least twist is what bends a block: offset, pitch and roll move the plate as a whole. Takes any number of places;
/// with none, nothing is determined.
Flushness flushnessOf(std::span<const HeightAt> heights);

} // namespace caprail
