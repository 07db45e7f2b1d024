// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <compare>
#include <string>
#include <string_view>
#include <base/words.h>

namespace caprail {

/// Left and right as seen from the flywheel end with the engine in its installed attitude. The diagram may be turned
/// or flipped; the labels never change.
enum class Side { left, right };
template <>
struct WordsOf<Side> {
    static constexpr std::array<Word<Side>, 2> list{
        {{Side::left, Core::mark("left")}, {Side::right, Core::mark("right")}}};
};

/// Which pair of a four-fastener cap: the two next to the crank, or the two outside them. A two-fastener cap has
/// only an inner pair.
enum class Ring { inner, outer };
template <>
struct WordsOf<Ring> {
    static constexpr std::array<Word<Ring>, 2> list{
        {{Ring::inner, Core::mark("inner")}, {Ring::outer, Core::mark("outer")}}};
};

/// One place where the girdle bears on a main fastener. Caps count from 1 at the front of the engine.
struct Position {
    int cap = 1;
    Side side = Side::left;
    friend constexpr auto operator<=>(Position, Position) = default;
};
/// "3R"
std::string code(Position);
/// "cap 3 right"
std::string describe(Position);
/// Reads "3R", "3r", "cap 3 right" or "C3R".
Result<Position> parsePosition(std::string_view);

enum class JournalKind { main, rod };
template <>
struct WordsOf<JournalKind> {
    static constexpr std::array<Word<JournalKind>, 2> list{
        {{JournalKind::main, Core::mark("main")}, {JournalKind::rod, Core::mark("rod")}}};
};

/// A crank journal with the bearing that runs on it: main 1 … caps, rod 1 … cylinders.
struct JournalId {
    JournalKind kind = JournalKind::main;
    int number = 1;
    friend constexpr auto operator<=>(JournalId, JournalId) = default;
};
/// "main-3"
std::string code(JournalId);
/// "main 3"
std::string describe(JournalId);
/// Reads "main-3" or "main 3".
Result<JournalId> parseJournal(std::string_view);

enum class FastenerKind { mainCap, rod, girdleNut, panRail, front, rear };
template <>
struct WordsOf<FastenerKind> {
    static constexpr std::array<Word<FastenerKind>, 6> list{{{FastenerKind::mainCap, Core::mark("main")},
                                                             {FastenerKind::rod, Core::mark("rod")},
                                                             {FastenerKind::girdleNut, Core::mark("girdle")},
                                                             {FastenerKind::panRail, Core::mark("pan")},
                                                             {FastenerKind::front, Core::mark("front")},
                                                             {FastenerKind::rear, Core::mark("rear")}}};
};

/// One fastener. Main-cap and rod fasteners and girdle nuts have a side; pan, front and rear fasteners only a number
/// (their side is `left` and means nothing).
struct FastenerId {
    FastenerKind kind = FastenerKind::mainCap;
    int number = 1; ///< the cap, the rod, or the place in the row
    Side side = Side::left;
    Ring ring = Ring::inner;
    friend constexpr auto operator<=>(FastenerId, FastenerId) = default;
};
/// "main-3R", "main-3R-outer", "rod-5L", "girdle-2L", "pan-7"
std::string code(FastenerId);
/// "main 3 right", "main 3 right outer", "rod 5 left", "girdle nut 2 left", "pan rail 7"
std::string describe(FastenerId);
/// Reads what `code` writes.
Result<FastenerId> parseFastener(std::string_view);
/// True for the fasteners that a verify round pulls again: main caps and rods.
constexpr bool isVerified(FastenerKind kind) { return kind == FastenerKind::mainCap || kind == FastenerKind::rod; }
/// Whether fasteners of this kind come in left and right.
constexpr bool hasSides(FastenerKind kind) { return isVerified(kind) || kind == FastenerKind::girdleNut; }

} // namespace caprail
