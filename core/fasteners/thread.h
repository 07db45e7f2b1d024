// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <fasteners/area.h>
#include <string>
#include <string_view>
#include <units/length.h>
#include <base/problem.h>

namespace caprail {

enum class ThreadSystem { inch, metric };
/// Coarse and fine as the standards list them (inch: UNC, UNF; metric: ISO 261/262); `special` for every other pitch.
enum class ThreadSeries { coarse, fine, special };

/// The geometry of one 60° screw thread. A thread without a sensible pitch cannot be built.
class Thread {
public:
    /// An inch thread from its nominal diameter D and its whole number n of threads per inch.
    /// Refuses D outside 0.05 to 4 in, and a pitch coarser than a third or finer than a hundredth of D.
    static Result<Thread> inch(Length nominal, int threadsPerInch);
    /// A metric thread from its nominal diameter d and pitch P. Refuses d outside 1 to 100 mm, P as above.
    static Result<Thread> metric(Length nominal, Length pitch);

    [[nodiscard]] ThreadSystem system() const { return m_system; }
    [[nodiscard]] ThreadSeries series() const;
    /// Nominal (basic major) diameter.
    [[nodiscard]] Length nominal() const { return m_nominal; }
    /// Axial advance in one turn, to the nearest nanometre.
    [[nodiscard]] Length pitch() const { return m_pitch; }
    /// Inch threads only; 0 for a metric thread.
    [[nodiscard]] int threadsPerInch() const { return m_threadsPerInch; }
    /// Basic pitch diameter d2 = d − 0.649519·P (ISO 724; the same in ASME B1.1).
    [[nodiscard]] Length pitchDiameter() const;
    /// Minor diameter of the bolt with rounded root: metric d3 = d − 1.226869·P (ISO 898-1, 9.1.6), inch
    /// D − 1.190785·P (ASME B1.1, UNR).
    [[nodiscard]] Length minorDiameter() const;
    /// Tensile stress area: inch 0.7854·(D − 0.9743/n)² (ASME B1.1), metric (π/4)·((d2 + d3)/2)² (ISO 898-1, 9.1.6).
    [[nodiscard]] Area stressArea() const;
    /// As a person writes it, and as parseThread reads it back: "7/16-20", "#10-32", "M10×1.5", "M10×0.9 special".
    [[nodiscard]] std::string name() const;

    friend bool operator==(const Thread&, const Thread&) = default;

private:
    Thread(ThreadSystem system, Length nominal, Length pitch, int threadsPerInch)
        : m_system(system), m_nominal(nominal), m_pitch(pitch), m_threadsPerInch(threadsPerInch) {}

    ThreadSystem m_system;
    Length m_nominal;
    Length m_pitch;
    int m_threadsPerInch;
};

/// Reads a thread by its name: "7/16-20", "1/2-13 UNC", "7/16 UNF", "#10-32", "0.4375-20", "1 1/8-12"; "M12" (coarse),
/// "M10x1.25", "M10×1,25". Refuses, in one sentence that lists what exists, a thread that is in neither the coarse nor
/// the fine series, unless it ends in "special" ("7/16-21 special"; in records of earlier versions "by hand"), which says that diameter and pitch are meant so.
/// Tables: inch #4 to 1 1/2 (ASME B1.1, UNC and UNF), metric M3 to M39 (ISO 261/262).
Result<Thread> parseThread(std::string_view text);

} // namespace caprail
