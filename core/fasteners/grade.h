// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <fasteners/thread.h>
#include <string>
#include <string_view>
#include <units/force.h>
#include <base/problem.h>

namespace caprail {

enum class StandardGrade { sae5, sae8, iso8_8, iso10_9, iso12_9 };

/// Young's modulus of bolt steel unless something else is given: 205 GPa (VDI 2230-1 table, from memory).
inline constexpr Stress steelModulus = kilopascals(205'000'000);

/// The modulus itself; refuses one outside 40 to 400 GPa.
Result<Stress> plausibleModulus(Stress modulus);

/// What a fastener is made of, as far as its preload goes: proof stress (by size, where the standard has it so) and
/// Young's modulus. A grade without a positive proof stress and modulus cannot be built.
class Grade {
public:
    static Grade of(StandardGrade grade);
    /// A grade with the proof stress that the part maker states. Refuses a proof stress outside 50 to 3000 MPa and
    /// what plausibleModulus refuses.
    static Result<Grade> ofProofStress(Stress proof, Stress modulus = steelModulus);

    /// Proof stress for this thread. SAE J429 table 1: grade 5 85 000 psi (1/4 to 1 in), 74 000 psi (over 1 to 1 1/2),
    /// grade 8 120 000 psi (1/4 to 1 1/2). ISO 898-1 table 3: 8.8 580 MPa to M16, 600 MPa above; 10.9 830 MPa; 12.9
    /// 970 MPa (M1.6 to M39). Refuses a size that the standard does not list, and a metric thread with an SAE grade or
    /// an inch thread with an ISO class (give its proof stress).
    [[nodiscard]] Result<Stress> proofStress(const Thread& thread) const;
    [[nodiscard]] Stress modulus() const { return m_modulus; }
    /// As parseGrade reads it back: "SAE J429 grade 5", "ISO 898-1 class 10.9", "proof stress 1310 MPa".
    [[nodiscard]] std::string name() const;

    friend bool operator==(const Grade&, const Grade&) = default;

private:
    Grade(bool isStress, StandardGrade standard, Stress proof, Stress modulus)
        : m_isStress(isStress), m_standard(standard), m_proof(proof), m_modulus(modulus) {}

    bool m_isStress;
    StandardGrade m_standard; ///< meaningful unless a proof stress was given
    Stress m_proof;           ///< meaningful only where it was given
    Stress m_modulus;
};

/// Reads "SAE 5", "grade 8", "SAE J429 grade 8", "10.9", "ISO 898-1 class 12.9", "1310 MPa", "proof stress 190 ksi",
/// "830 MPa, E 114 GPa"; "by hand" before it, as records of earlier versions have it, is passed over. Refuses others with a sentence that lists what is known.
Result<Grade> parseGrade(std::string_view text);

/// Proof load = proof stress × stress area. Refuses what Grade::proofStress refuses.
Result<Force> proofLoad(const Thread& thread, const Grade& grade);

} // namespace caprail
