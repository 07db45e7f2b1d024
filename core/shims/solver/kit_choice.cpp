// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/solver/kit_choice.h>

namespace caprail::solver {

namespace {
/// Wider than this there are too many choices for any of them to say much.
constexpr std::int64_t widestLoss = 1024;
constexpr int mostLeftOver = 24;

/// to |= from shifted up by so many bits.
void join(std::vector<std::uint64_t>& to, const std::vector<std::uint64_t>& from, std::int64_t by) {
    const auto whole = static_cast<std::size_t>(by / 64);
    const auto bits = static_cast<unsigned>(by % 64);
    for (std::size_t i = to.size(); i-- > whole;) {
        std::uint64_t v = from[i - whole] << bits;
        if (bits != 0 && i > whole) {
            v |= from[i - whole - 1] >> (64 - bits);
        }
        to[i] |= v;
    }
}
} // namespace

/// What the walk over the choices carries along.
struct KitChoice::Listing {
    std::int64_t leastLoss;
    std::int64_t mostLoss;
    std::size_t room;
    std::vector<int> now;
    std::vector<WholeKit> kits;
    WorkClock& clock;
};

KitChoice::KitChoice(const Instance& instance, int shims, std::int64_t least, std::int64_t most, WorkClock& clock)
    : m_instance(instance), m_thickest(instance.classes(), 0) {
    int rest = shims;
    for (std::size_t i = 0; i < instance.classes() && rest > 0; ++i) {
        m_thickest[i] = std::min(rest, instance.count[i]);
        rest -= m_thickest[i];
        m_topTotal += m_thickest[i] * instance.thickness[i];
        m_reference = instance.thickness[i];
    }
    m_leastLoss = std::max<std::int64_t>(0, m_topTotal - most);
    m_mostLoss = m_topTotal - least;
    if (rest > 0 || m_mostLoss < 0) {
        m_mostLoss = -1; // there are not so many shims, or they are too thin: no choice at all
        m_isTight = true;
        return;
    }
    m_spread = instance.shims() - shims;
    if (m_mostLoss > widestLoss || m_spread > mostLeftOver) {
        return;
    }
    m_isTight = true;
    const auto balances = 2 * static_cast<std::size_t>(m_spread) + 1;
    const auto words = static_cast<std::size_t>(m_mostLoss / 64 + 1);
    m_rows.assign((instance.classes() + 1) * balances, Row(words, 0));
    m_rows[instance.classes() * balances + static_cast<std::size_t>(m_spread)][0] = 1;
    for (std::size_t i = instance.classes(); i-- > 0;) {
        const std::int64_t step = magnitude(instance.thickness[i] - m_reference);
        for (int balance = -m_spread; balance <= m_spread; ++balance) {
            clock.book(static_cast<std::int64_t>(words) * (1 + instance.count[i]));
            Row& to = m_rows[i * balances + static_cast<std::size_t>(balance + m_spread)];
            for (int n = 0; n <= instance.count[i]; ++n) {
                const int next = balance + n - m_thickest[i]; // more than of the thickest: so many to be left out
                const std::int64_t loss = step * std::abs(n - m_thickest[i]);
                if (std::abs(next) <= m_spread && loss <= m_mostLoss) {
                    join(to, row(i + 1, next), loss);
                }
            }
        }
    }
}

const KitChoice::Row& KitChoice::row(std::size_t cls, int balance) const {
    return m_rows[cls * static_cast<std::size_t>(2 * m_spread + 1) + static_cast<std::size_t>(balance + m_spread)];
}

bool KitChoice::canMake(std::size_t cls, int balance, std::int64_t from, std::int64_t to) const {
    if (std::abs(balance) > m_spread) {
        return false;
    }
    const Row& bits = row(cls, balance);
    for (std::int64_t loss = std::max<std::int64_t>(0, from); loss <= to; ++loss) {
        if ((bits[static_cast<std::size_t>(loss / 64)] >> (loss % 64)) & 1U) {
            return true;
        }
    }
    return false;
}

std::vector<std::int64_t> KitChoice::totals() const {
    std::vector<std::int64_t> out;
    for (std::int64_t loss = m_mostLoss; loss >= m_leastLoss; --loss) {
        if (canMake(0, 0, loss, loss)) {
            out.push_back(m_topTotal - loss);
        }
    }
    return out;
}

void KitChoice::listFrom(std::size_t cls, int balance, std::int64_t loss, Listing& listing) const {
    listing.clock.book(20 + listing.mostLoss - listing.leastLoss);
    if (listing.kits.size() >= listing.room ||
        !canMake(cls, balance, listing.leastLoss - loss, listing.mostLoss - loss)) {
        return;
    }
    if (cls == m_instance.classes()) {
        listing.kits.push_back({listing.now, m_topTotal - loss});
        return;
    }
    const std::int64_t step = magnitude(m_instance.thickness[cls] - m_reference);
    for (int n = m_instance.count[cls]; n >= 0; --n) {
        listing.now.push_back(n);
        listFrom(cls + 1, balance + n - m_thickest[cls], loss + step * std::abs(n - m_thickest[cls]), listing);
        listing.now.pop_back();
    }
}

std::vector<WholeKit> KitChoice::list(std::int64_t least, std::int64_t most, std::size_t room, WorkClock& clock) const {
    Listing listing{
        std::max(m_leastLoss, m_topTotal - most), std::min(m_mostLoss, m_topTotal - least), room, {}, {}, clock};
    if (m_mostLoss >= 0 && listing.leastLoss <= listing.mostLoss) {
        listFrom(0, 0, 0, listing);
    }
    return std::move(listing.kits);
}

} // namespace caprail::solver
