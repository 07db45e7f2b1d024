// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/column_labels.h>

#include <algorithm>
#include <array>
#include <base/say.h>
#include <ledger/entries.h>

namespace caprail {

namespace {

constexpr auto labels = std::to_array<std::string_view>({
    Core::mark("angle"),
    Core::mark("bag"),
    Core::mark("band"),
    Core::mark("build"),
    Core::mark("calibrated"),
    Core::mark("cap spacing"),
    Core::mark("caps"),
    Core::mark("caption"),
    Core::mark("check"),
    Core::mark("clearance"),
    Core::mark("corrects"),
    Core::mark("count"),
    Core::mark("counterweight minimum"),
    Core::mark("coverage"),
    Core::mark("customer"),
    Core::mark("cutout side"),
    Core::mark("cutout towards"),
    Core::mark("cycles"),
    Core::mark("decision"),
    Core::mark("diameter"),
    Core::mark("dipstick cap"),
    Core::mark("dipstick side"),
    Core::mark("direction"),
    Core::mark("does not go"),
    Core::mark("done"),
    Core::mark("due cycles"),
    Core::mark("due"),
    Core::mark("engine"),
    Core::mark("entry"),
    Core::mark("face up"),
    Core::mark("fastener group"),
    Core::mark("fastener"),
    Core::mark("fasteners per cap"),
    Core::mark("feel"),
    Core::mark("felt"),
    Core::mark("file name"),
    Core::mark("finding"),
    Core::mark("fit"),
    Core::mark("fits"),
    Core::mark("gap"),
    Core::mark("girdle ring"),
    Core::mark("grade"),
    Core::mark("half"),
    Core::mark("height"),
    Core::mark("hi"),
    Core::mark("instrument"),
    Core::mark("is aside"),
    Core::mark("is in"),
    Core::mark("is marked"),
    Core::mark("is pinned"),
    Core::mark("item"),
    Core::mark("journal"),
    Core::mark("kit tolerance"),
    Core::mark("largest stack"),
    Core::mark("largest torque"),
    Core::mark("last seal"),
    Core::mark("limit of error"),
    Core::mark("lo"),
    Core::mark("lost"),
    Core::mark("lower"),
    Core::mark("lubricant"),
    Core::mark("maker"),
    Core::mark("marked"),
    Core::mark("media type"),
    Core::mark("method"),
    Core::mark("minimum passes"),
    Core::mark("move"),
    Core::mark("name"),
    Core::mark("note"),
    Core::mark("objective"),
    Core::mark("open minutes"),
    Core::mark("original sha256"),
    Core::mark("outcome"),
    Core::mark("outer stud span"),
    Core::mark("part temperature"),
    Core::mark("part"),
    Core::mark("pass %1"),
    Core::mark("pickup cap"),
    Core::mark("pickup side"),
    Core::mark("place"),
    Core::mark("plate metal"),
    Core::mark("plate modulus"),
    Core::mark("plate overhang"),
    Core::mark("plate poisson"),
    Core::mark("plate thickness"),
    Core::mark("position"),
    Core::mark("rail span"),
    Core::mark("repeat limit"),
    Core::mark("result"),
    Core::mark("ring"),
    Core::mark("rods"),
    Core::mark("role"),
    Core::mark("round"),
    Core::mark("serial"),
    Core::mark("set up"),
    Core::mark("set with"),
    Core::mark("sha256"),
    Core::mark("shell"),
    Core::mark("shim"),
    Core::mark("shims"),
    Core::mark("shop"),
    Core::mark("size bytes"),
    Core::mark("smallest torque"),
    Core::mark("source"),
    Core::mark("statement"),
    Core::mark("station"),
    Core::mark("step"),
    Core::mark("steps"),
    Core::mark("straightedge"),
    Core::mark("stretch"),
    Core::mark("stud span"),
    Core::mark("study"),
    Core::mark("target"),
    Core::mark("temperature spread"),
    Core::mark("term"),
    Core::mark("text"),
    Core::mark("thicker felt"),
    Core::mark("thicker in"),
    Core::mark("thicker out"),
    Core::mark("thickness"),
    Core::mark("thinner felt"),
    Core::mark("thinner in"),
    Core::mark("thinner out"),
    Core::mark("thread"),
    Core::mark("throw number"),
    Core::mark("throws"),
    Core::mark("tied first"),
    Core::mark("tied last"),
    Core::mark("tightening order"),
    Core::mark("torque scatter percent"),
    Core::mark("torque"),
    Core::mark("type"),
    Core::mark("unsealed"),
    Core::mark("upper"),
    Core::mark("value"),
    Core::mark("what"),
    Core::mark("whose"),
    Core::mark("why"),
    Core::mark("window across"),
    Core::mark("window along"),
});

/// The label of a field reads as its name does, with spaces for underscores; a pass has its number inside.
constexpr bool isLabelOf(std::string_view label, std::string_view name) {
    const std::string_view number = " %1";
    if (label.ends_with(number)) {
        label.remove_suffix(number.size());
    }
    return std::ranges::equal(label, name, {}, {}, [](char c) { return c == '_' ? ' ' : c; });
}

template <class Kind> struct Labelled {
    static constexpr bool isWhole = std::apply(
        [](const auto&... described) {
            return (std::ranges::any_of(labels, [&](auto label) { return isLabelOf(label, described.name); }) && ...);
        },
        Kind::fields());
    static_assert(isWhole, "a field of this kind has no label above");
};
template <class... Kind> constexpr bool areLabelled(const std::variant<Kind...>*) {
    return (Labelled<Kind>::isWhole && ...);
}
static_assert(areLabelled(static_cast<const Body*>(nullptr)));

} // namespace

std::span<const std::string_view> columnLabels() {
    return labels;
}

} // namespace caprail
