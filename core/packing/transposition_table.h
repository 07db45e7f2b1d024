// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <cstdint>
#include <vector>

namespace caprail::packing {

/// A 128-bit fingerprint of a search state, summed up from its parts so that it can be kept up to date step by step.
/// Two states are taken for the same when their fingerprints agree; the odds of a false match in a search of a billion
/// states are below 1 in 10^20.
struct StateKey {
    std::uint64_t a = 0;
    std::uint64_t b = 0;

    /// The fingerprint of one fact: `what` happened, with value `x`.
    static constexpr StateKey of(std::uint64_t what, std::uint64_t x) {
        return {mix(what * 0x9E3779B97F4A7C15U + x), mix((what + 0x5851F42DU) * 0xD1342543DE82EF95U + x * 3)};
    }
    constexpr StateKey& operator+=(StateKey o) {
        a += o.a;
        b += o.b;
        return *this;
    }
    constexpr StateKey& operator-=(StateKey o) {
        a -= o.a;
        b -= o.b;
        return *this;
    }
    friend constexpr bool operator==(const StateKey&, const StateKey&) = default;

private:
    /// Mixes all bits (a finaliser after Steele, Lea, Flood, “Fast splittable pseudorandom number generators”, OOPSLA
    /// 2014; constants from memory): a hash, no random numbers.
    static constexpr std::uint64_t mix(std::uint64_t z) {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9U;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBU;
        return z ^ (z >> 31);
    }
};

/// States from which no plan within the limits was found, with the room for |residual| that they had then: less room
/// cannot do better. A fixed table; a newer state displaces an older one.
class TranspositionTable {
public:
    void remember(const StateKey& state, std::int64_t room) {
        if (m_table.empty()) {
            m_table.resize(size);
        }
        m_isUsed = true;
        m_table[state.a % size] = {state, room, m_generation};
    }
    [[nodiscard]] bool knows(const StateKey& state, std::int64_t room) const {
        if (m_table.empty()) {
            return false;
        }
        const Entry& e = m_table[state.a % size];
        return e.generation == m_generation && e.state == state && room <= e.room;
    }
    /// Nothing was remembered since the last clearing, or ever.
    [[nodiscard]] bool isEmpty() const { return m_table.empty() || !m_isUsed; }
    /// Without touching the table: it is large, and most searches are short.
    void clear() {
        ++m_generation;
        m_isUsed = false;
    }

private:
    static constexpr std::size_t size = std::size_t{1} << 16;
    struct Entry {
        StateKey state;
        std::int64_t room = 0;
        std::uint32_t generation = 0; ///< 0: never set
    };
    std::vector<Entry> m_table;
    std::uint32_t m_generation = 1;
    bool m_isUsed = false;
};

} // namespace caprail::packing
