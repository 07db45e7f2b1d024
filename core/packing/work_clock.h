// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <cstdint>
#include <functional>
#include <utility>

namespace caprail::packing {

/// Asked often from within long loops; true: give back the best found so far.
using Stop = std::function<bool()>;

/// Thrown by WorkClock once `stop` said true, and caught only where a solve begins. It is no error, and so no Result:
/// what it does is to leave every walk at once, so that nothing can be concluded from one that was cut short. Where the
/// solver was stopped there is no code left to run that could take “not found yet” for “there is none”.
struct Stopped {};

/// The solver's own time: every loop books the work that it does (some nanoseconds' worth a unit), and `stop` is asked
/// whenever so much has been booked, whatever the loop. So no loop can forget the deadline for longer than one unit of
/// its work, and parts of the solver take turns by it in the same way on any machine. (Deterministic time, as the
/// “ticks” of some general solvers.)
class WorkClock {
public:
    static constexpr std::int64_t between = 50'000; ///< work from one asking to the next; some 50 µs

    /// Without `stop` it only counts.
    explicit WorkClock(Stop stop) : m_stop(std::move(stop)) {}

    /// Throws Stopped.
    void book(std::int64_t work) {
        m_now += work;
        if (m_now >= m_askAt) {
            ask();
        }
    }
    /// For the innermost loops: at the `at`th of `count` steps books the next few hundred of them at once.
    void bookStep(std::size_t at, std::size_t count, std::int64_t workEach) {
        if (at % few == 0) {
            book(workEach * static_cast<std::int64_t>(count - at < few ? count - at : few));
        }
    }
    [[nodiscard]] std::int64_t now() const { return m_now; }

    /// What else is to have a turn now and then, while a long walk goes on. It may book on this clock.
    void alternateWith(std::function<void()> other) { m_other = std::move(other); }
    /// So much more may be booked before `stop` is asked again.
    void grant(std::int64_t work) { m_askAt = m_now + work; }

private:
    static constexpr std::size_t few = 256;

    void ask() {
        m_askAt = m_now + between;
        if (m_stop && m_stop()) {
            throw Stopped{};
        }
        if (m_other && !m_isOther) {
            m_isOther = true;
            m_other();
            m_isOther = false;
        }
    }

    Stop m_stop;
    std::function<void()> m_other;
    bool m_isOther = false;
    std::int64_t m_now = 0;
    std::int64_t m_askAt = between;
};

} // namespace caprail::packing
