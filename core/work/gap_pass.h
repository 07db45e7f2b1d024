// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// In which order the gaps under a girdle are read, and where a pass goes on.
#include <assessment/assessment.h>
#include <vector>

namespace caprail {

/// Orders of a pass that a person can choose from instead of typing one.
enum class PassOrder {
    capByCap,  ///< front to rear, left then right at each cap
    sideBySide ///< all of the left from front to rear, then the right from rear to front: one walk round the stand
};
std::vector<Position> passOrder(const EngineLayout& layout, PassOrder order);

/// Reads an order as typed: "1L 1R 2R 2L …". Refuses unknown places, one named twice, and any left out, by name.
Result<std::vector<Position>> parsePassOrder(std::string_view text, const EngineLayout& layout);
/// "1L 1R 2L …"
std::string passOrderText(const std::vector<Position>& order);

/// Where a gap pass goes on: the place and the number of the pass.
struct PassStep {
    Position position;
    std::int64_t pass = 1;
    std::size_t left = 0;    ///< places that this pass still needs, this one included
    bool isFinished = false; ///< nothing is needed any more; the place is where the last reading was made
};

/// After a reading at `from` in `pass`: the next place in the order that this pass still needs. Places whose gap is not
/// good come first; when all of those were read in this pass, the next pass begins. When every gap is good the pass
/// goes on over the rest of the order, and is finished at its end.
/// With `asIfRead` the place itself counts as read: where a person will go once the reading is made.
PassStep nextInPass(const std::vector<Position>& order, Position from, std::int64_t pass, const Assessment& assessment,
                    bool asIfRead = false);
/// Where to begin when the panel is opened.
PassStep beginPass(const std::vector<Position>& order, const Assessment& assessment);

} // namespace caprail
