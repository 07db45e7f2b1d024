// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_local_search.h"
#include <algorithm>
#include <numeric>
#include <random>

namespace caprail::plancases {

namespace {

class LocalSearch {
public:
    explicit LocalSearch(const PlanRequest& request) {
        for (const PlanShim& s : request.shims) {
            m_shims.push_back(s.thickness.value());
        }
        std::sort(m_shims.rbegin(), m_shims.rend());
        m_isFree.assign(m_shims.size(), true);
        m_most = request.largestStack == 0 ? m_shims.size() : static_cast<std::size_t>(request.largestStack);
        for (const PlanPosition& p : request.positions) {
            m_seats.push_back({(p.gap - request.band.hi()).value(), (p.gap - request.band.lo()).value(), {}, false});
        }
        std::sort(m_seats.begin(), m_seats.end(), [](const Seat& a, const Seat& b) { return a.lo < b.lo; });
    }

    Served run(const std::function<bool()>& stop) {
        for (Seat& seat : m_seats) {
            serve(seat, 0);
        }
        Served best = count();
        while (!stop()) {
            const std::vector<Seat> seats = m_seats;
            const std::vector<bool> isFree = m_isFree;
            ruinAndRecreate();
            const Served now = count();
            if (now.inBand > best.inBand || (now.inBand == best.inBand && now.shims <= best.shims)) {
                best = now;
            } else {
                m_seats = seats;
                m_isFree = isFree;
            }
        }
        return best;
    }

private:
    struct Seat {
        std::int64_t lo;
        std::int64_t hi;
        std::vector<std::size_t> stack;
        bool isServed;
    };

    void ruinAndRecreate() {
        std::vector<Seat*> open;
        for (Seat& p : m_seats) {
            if (!p.isServed) {
                open.push_back(&p);
            }
        }
        for (std::size_t n = 1 + m_random() % 3; n > 0; --n) {
            Seat& p = m_seats[m_random() % m_seats.size()];
            if (p.isServed) {
                clear(p);
                open.push_back(&p);
            }
        }
        std::shuffle(open.begin(), open.end(), m_random);
        if (m_random() % 2 == 0) {
            std::stable_sort(open.begin(), open.end(), [](const Seat* a, const Seat* b) { return a->lo < b->lo; });
        }
        for (Seat* p : open) {
            serve(*p, m_random() % 3);
        }
    }

    void clear(Seat& p) {
        for (const std::size_t s : p.stack) {
            m_isFree[s] = true;
        }
        p.stack.clear();
        p.isServed = false;
    }

    /// Thick shims first, passing over one in so many by lot; then one exchanged for another.
    void serve(Seat& p, std::uint64_t passOver) {
        std::int64_t total = 0;
        for (std::size_t s = 0; s < m_shims.size() && p.stack.size() < m_most && total < p.lo; ++s) {
            if (m_isFree[s] && total + m_shims[s] <= p.hi && (passOver == 0 || m_random() % (2 * passOver + 2) != 0)) {
                take(p, s, total);
            }
        }
        if (total < p.lo || total > p.hi) {
            exchange(p, total);
        }
        p.isServed = total >= p.lo && total <= p.hi;
        if (!p.isServed) {
            clear(p);
        }
    }

    void exchange(Seat& p, std::int64_t& total) {
        for (std::size_t& used : p.stack) {
            for (std::size_t s = 0; s < m_shims.size(); ++s) {
                const std::int64_t other = total - m_shims[used] + m_shims[s];
                if (m_isFree[s] && other >= p.lo && other <= p.hi) {
                    m_isFree[used] = true;
                    m_isFree[s] = false;
                    used = s;
                    total = other;
                    return;
                }
            }
        }
    }

    void take(Seat& p, std::size_t s, std::int64_t& total) {
        m_isFree[s] = false;
        p.stack.push_back(s);
        total += m_shims[s];
    }

    [[nodiscard]] Served count() const {
        Served served;
        for (const Seat& p : m_seats) {
            served.inBand += p.isServed ? 1 : 0;
            served.shims += static_cast<int>(p.stack.size());
        }
        return served;
    }

    std::vector<std::int64_t> m_shims; ///< thick to thin
    std::vector<bool> m_isFree;
    std::size_t m_most = 0;
    std::vector<Seat> m_seats; ///< small gaps first
    std::mt19937_64 m_random;
};

} // namespace

Served planByLocalSearch(const PlanRequest& request, const std::function<bool()>& stop) {
    return LocalSearch(request).run(stop);
}

} // namespace caprail::plancases
