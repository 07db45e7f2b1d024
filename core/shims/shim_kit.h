// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <optional>
#include <string>
#include <units/length.h>
#include <base/problem.h>
#include <base/words.h>
#include <vector>

namespace caprail {

/// Where a shim is.
enum class ShimState { free, inStack, setAside };
template <> struct WordsOf<ShimState> {
    static constexpr std::array<Word<ShimState>, 3> list{{{ShimState::free, Core::mark("free")},
                                                          {ShimState::inStack, Core::mark("in a stack")},
                                                          {ShimState::setAside, Core::mark("set aside")}}};
};

/// One individual shim of the kit: what is marked on its bag, and what the micrometer says.
class Shim {
public:
    /// Refuses an empty id, and a marked thickness of 0 or less.
    static Result<Shim> marked(std::string id, Length thickness);

    /// Adds a micrometer reading; refuses 0 or less.
    Result<void> measure(Length reading);

    [[nodiscard]] const std::string& id() const { return m_id; }
    [[nodiscard]] Length markedThickness() const { return m_marked; }
    [[nodiscard]] const std::vector<Length>& readings() const { return m_readings; }
    [[nodiscard]] bool isMeasured() const { return !m_readings.empty(); }
    /// Mean of the readings, rounded half away from zero to whole nanometres; none without a reading.
    [[nodiscard]] std::optional<Length> measuredThickness() const;
    /// Measured where there is a measurement, else as marked: what a plan reckons with.
    [[nodiscard]] Length thickness() const { return measuredThickness().value_or(m_marked); }
    [[nodiscard]] ShimState state() const { return m_state; }

private:
    friend class ShimKit;
    Shim(std::string id, Length thickness) : m_id(std::move(id)), m_marked(thickness) {}
    std::string m_id;
    Length m_marked;
    std::vector<Length> m_readings;
    ShimState m_state = ShimState::free;
};

/// A finite number of individual shims. A shim whose measured thickness differs from its marking by more than the
/// kit's tolerance is flagged: it was in the wrong bag, or is burred or dirty.
class ShimKit {
public:
    /// 0.0005 in: common practice, no source.
    static constexpr Length defaultTolerance = tenths(5);

    /// Refuses a negative tolerance.
    static Result<ShimKit> withTolerance(Length tolerance);
    ShimKit() = default;

    /// Refuses a second shim of the same id.
    Result<void> add(Shim shim);
    /// A micrometer reading of one shim; refuses an unknown shim and a reading of 0 or less.
    Result<void> measure(const std::string& id, Length reading);
    /// Refuses an unknown shim, and setting aside one that is in a stack: take the stack apart first.
    Result<void> move(const std::string& id, ShimState to);

    [[nodiscard]] const std::vector<Shim>& shims() const { return m_shims; }
    /// Null if the kit has no such shim.
    [[nodiscard]] const Shim* find(const std::string& id) const;
    [[nodiscard]] Length tolerance() const { return m_tolerance; }
    /// Measured, and more than the tolerance off its marking.
    [[nodiscard]] bool isFlagged(const Shim& shim) const;

private:
    Shim* findMutable(const std::string& id);
    std::vector<Shim> m_shims;
    Length m_tolerance = defaultTolerance;
};

} // namespace caprail
