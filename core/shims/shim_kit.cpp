// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/shim_kit.h>
#include <units/format.h>
#include <base/say.h>

namespace caprail {

Result<Shim> Shim::marked(std::string id, Length thickness) {
    if (id.empty()) {
        return refuse(Core::say("A shim needs a name of its own, to be told from the others: give it one."));
    }
    if (thickness <= Length()) {
        return refuse(Core::say("Shim %1 is marked %2: a shim is thicker than 0; correct the marking.", id,
                                format(thickness, LengthUnit::inch)));
    }
    return Shim(std::move(id), thickness);
}

Result<void> Shim::measure(Length reading) {
    if (reading <= Length()) {
        return refuse(
            Core::say("Shim %1 was read as %2: a shim is thicker than 0; check the micrometer's zero and read again.",
                      m_id, format(reading, LengthUnit::inch)));
    }
    m_readings.push_back(reading);
    return {};
}

std::optional<Length> Shim::measuredThickness() const {
    if (m_readings.empty()) {
        return std::nullopt;
    }
    std::int64_t sum = 0;
    for (const Length reading : m_readings) {
        sum += reading.value();
    }
    // Readings are positive, so half away from zero is half up.
    const auto n = static_cast<std::int64_t>(m_readings.size());
    return Length((2 * sum + n) / (2 * n));
}

Result<ShimKit> ShimKit::withTolerance(Length tolerance) {
    if (tolerance < Length()) {
        return refuse(Core::say("The kit's tolerance is given as %1: it is a difference, 0 or more.",
                                format(tolerance, LengthUnit::inch)));
    }
    ShimKit kit;
    kit.m_tolerance = tolerance;
    return kit;
}

Shim* ShimKit::findMutable(const std::string& id) {
    const auto at = std::find_if(m_shims.begin(), m_shims.end(), [&id](const Shim& s) { return s.id() == id; });
    return at == m_shims.end() ? nullptr : &*at;
}

const Shim* ShimKit::find(const std::string& id) const {
    const auto at = std::find_if(m_shims.begin(), m_shims.end(), [&id](const Shim& s) { return s.id() == id; });
    return at == m_shims.end() ? nullptr : &*at;
}

Result<void> ShimKit::add(Shim shim) {
    if (find(shim.id()) != nullptr) {
        return refuse(Core::say("The kit already has a shim %1: give the new one a name of its own.", shim.id()));
    }
    m_shims.push_back(std::move(shim));
    return {};
}

Result<void> ShimKit::measure(const std::string& id, Length reading) {
    Shim* shim = findMutable(id);
    if (shim == nullptr) {
        return refuse(Core::say("The kit has no shim %1: add it first.", id));
    }
    return shim->measure(reading);
}

Result<void> ShimKit::move(const std::string& id, ShimState to) {
    Shim* shim = findMutable(id);
    if (shim == nullptr) {
        return refuse(Core::say("The kit has no shim %1: add it first.", id));
    }
    if (to == ShimState::setAside && shim->m_state == ShimState::inStack) {
        return refuse(Core::say("Shim %1 is in a stack: take the stack apart before setting it aside.", id));
    }
    shim->m_state = to;
    return {};
}

bool ShimKit::isFlagged(const Shim& shim) const {
    const auto measured = shim.measuredThickness();
    return measured && (*measured - shim.markedThickness()).magnitude() > m_tolerance;
}

} // namespace caprail
