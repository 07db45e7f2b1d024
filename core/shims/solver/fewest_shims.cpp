// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/fewest_shims.h>

namespace caprail::solver {

namespace {
constexpr std::int64_t mostExactSteps = 4096;
constexpr std::int64_t usualSteps = 2048;
constexpr std::size_t mostItems = 192;
constexpr int largestLot = 63; ///< none + this still fits a byte

/// to[s] = min(from[s], from[s − shift] + add), kept plain so that the compiler can vectorise it.
void join(std::uint8_t* to, const std::uint8_t* from, std::size_t shift, std::size_t width, std::uint8_t add) {
    std::copy(from, from + std::min(shift, width), to);
    for (std::size_t s = shift; s < width; ++s) {
        const auto sum = static_cast<std::uint8_t>(from[s - shift] + add);
        to[s] = from[s] < sum ? from[s] : sum;
    }
}
} // namespace

FewestShims::FewestShims(const Instance& instance) : m_instance(instance) {
    std::int64_t largest = 0;
    for (const Seat& p : instance.seats) {
        largest = std::max(largest, p.hi);
    }
    m_step = largest <= mostExactSteps ? 1 : largest / usualSteps + 1;
}

void FewestShims::fill(const std::vector<int>& left, const std::vector<std::uint16_t>& order, std::int64_t most,
                       WorkClock& clock) {
    m_width = index(most / m_step) + 1;
    m_items.clear();
    if (m_rows.size() < (mostItems + 1) * m_width) {
        m_rows.resize((mostItems + 1) * m_width);
    }
    std::fill(m_rows.begin(), m_rows.begin() + static_cast<std::ptrdiff_t>(m_width), std::uint8_t{none});
    m_rows[0] = 0;
    for (const std::uint16_t cls : order) {
        const auto steps = index((m_instance.thickness[cls] + m_step / 2) / m_step);
        int rest = steps == 0 ? 0 : std::min(left[cls], static_cast<int>((m_width - 1) / steps));
        for (int lot = 1; rest > 0 && m_items.size() < mostItems; lot = std::min(2 * lot, largestLot)) {
            const int count = std::min(lot, rest);
            rest -= count;
            const std::size_t shift = steps * static_cast<std::size_t>(count);
            const std::uint8_t* from = &m_rows[m_items.size() * m_width];
            m_items.push_back({cls, static_cast<std::uint16_t>(count), shift});
            join(&m_rows[m_items.size() * m_width], from, shift, m_width, static_cast<std::uint8_t>(count));
            clock.book(static_cast<std::int64_t>(m_width / 8) + 20);
        }
    }
}

void FewestShims::take(std::int64_t steps, std::vector<Part>& stack) const {
    stack.clear();
    std::size_t s = index(steps);
    for (std::size_t i = m_items.size(); i-- > 0 && s > 0;) {
        const std::uint8_t now = m_rows[(i + 1) * m_width + s];
        if (m_rows[i * m_width + s] == now) {
            continue; // as good without
        }
        const Item& item = m_items[i];
        s -= item.steps;
        const auto at = std::find_if(stack.begin(), stack.end(), [&](const Part& p) { return p.cls == item.cls; });
        if (at != stack.end()) {
            at->count = static_cast<std::uint16_t>(at->count + item.count);
        } else {
            stack.push_back({item.cls, item.count});
        }
    }
    std::sort(stack.begin(), stack.end(), [](const Part& a, const Part& b) { return a.cls < b.cls; });
}

} // namespace caprail::solver
