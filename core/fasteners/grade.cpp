// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <fasteners/grade.h>
#include <fasteners/text.h>
#include <base/say.h>
#include <base/text.h>

namespace caprail {

using namespace fastenertext;

namespace {

/// One line of a standard's table: the proof stress from (or above) one size up to another.
struct ProofRow {
    StandardGrade grade;
    Length from;
    Length upTo;
    Stress proof;
};

/// Rows of a grade are in rising size and a size belongs to the first row that holds it.
const std::array<ProofRow, 7> proofRows{{
    {StandardGrade::sae5, inches(0.25), inches(1), psi(85'000)},
    {StandardGrade::sae5, inches(1), inches(1.5), psi(74'000)},
    {StandardGrade::sae8, inches(0.25), inches(1.5), psi(120'000)},
    {StandardGrade::iso8_8, millimetres(1.6), millimetres(16), megapascals(580)},
    {StandardGrade::iso8_8, millimetres(16), millimetres(39), megapascals(600)},
    {StandardGrade::iso10_9, millimetres(1.6), millimetres(39), megapascals(830)},
    {StandardGrade::iso12_9, millimetres(1.6), millimetres(39), megapascals(970)},
}};

struct GradeName {
    StandardGrade grade;
    std::string_view name;
    std::array<std::string_view, 4> alsoRead; ///< in lower case
};
constexpr std::array<GradeName, 5> gradeNames{{
    {StandardGrade::sae5, "SAE J429 grade 5", {"sae j429 grade 5", "sae 5", "grade 5", "sae grade 5"}},
    {StandardGrade::sae8, "SAE J429 grade 8", {"sae j429 grade 8", "sae 8", "grade 8", "sae grade 8"}},
    {StandardGrade::iso8_8, "ISO 898-1 class 8.8", {"iso 898-1 class 8.8", "8.8", "iso 8.8", "class 8.8"}},
    {StandardGrade::iso10_9, "ISO 898-1 class 10.9", {"iso 898-1 class 10.9", "10.9", "iso 10.9", "class 10.9"}},
    {StandardGrade::iso12_9, "ISO 898-1 class 12.9", {"iso 898-1 class 12.9", "12.9", "iso 12.9", "class 12.9"}},
}};

ThreadSystem systemOf(StandardGrade grade) {
    return grade == StandardGrade::sae5 || grade == StandardGrade::sae8 ? ThreadSystem::inch : ThreadSystem::metric;
}

/// "1310 mpa", "190 ksi", "190000 psi", "205 gpa"
std::optional<Stress> stressFrom(std::string_view text) {
    const auto unitAt = text.find_first_not_of("0123456789.,");
    if (unitAt == std::string_view::npos) {
        return std::nullopt;
    }
    const auto number = decimalNumber(text.substr(0, unitAt));
    const auto suffix = trimmed(text.substr(unitAt));
    if (!number || *number > 1e9) {
        return std::nullopt;
    }
    return suffix == "mpa"   ? std::optional(megapascals(*number))
           : suffix == "gpa" ? std::optional(megapascals(*number * 1'000))
           : suffix == "ksi" ? std::optional(psi(*number * 1'000))
           : suffix == "psi" ? std::optional(psi(*number))
                             : std::nullopt;
}

} // namespace

Result<Stress> plausibleModulus(Stress modulus) {
    if (modulus < megapascals(40'000) || modulus > megapascals(400'000)) {
        return refuse(
            Core::say("A modulus of %1 GPa is outside 40 to 400 GPa: steel has about 205, titanium about 114.",
                      shortNumber(inMegapascals(modulus) / 1'000, 6)));
    }
    return modulus;
}

Grade Grade::of(StandardGrade grade) {
    return {false, grade, Stress(), steelModulus};
}

Result<Grade> Grade::ofProofStress(Stress proof, Stress modulus) {
    if (proof < megapascals(50) || proof > megapascals(3'000)) {
        return refuse(
            Core::say("A proof stress of %1 MPa (%2 psi) is outside 50 to 3000 MPa: check the figure and its unit.",
                      shortNumber(inMegapascals(proof), 3), formatNumber(inPsi(proof), 0)));
    }
    return plausibleModulus(modulus).map(
        [&](Stress checked) { return Grade(true, StandardGrade::sae5, proof, checked); });
}

std::string Grade::name() const {
    if (m_isStress) {
        const std::string proof = "proof stress " + shortNumber(inMegapascals(m_proof), 3) + " MPa";
        return m_modulus == steelModulus ? proof
                                         : proof + ", E " + shortNumber(inMegapascals(m_modulus) / 1'000, 6) + " GPa";
    }
    for (const GradeName& known : gradeNames) {
        if (known.grade == m_standard) {
            return std::string(known.name);
        }
    }
    return {};
}

Result<Stress> Grade::proofStress(const Thread& thread) const {
    if (m_isStress) {
        return m_proof;
    }
    if (systemOf(m_standard) != thread.system()) {
        return refuse(
            systemOf(m_standard) == ThreadSystem::inch
                ? Core::say("%1 is defined for inch threads only, and %2 is not: give its proof stress, as in “190 ksi”.",
                            name(), thread.name())
                : Core::say("%1 is defined for metric threads only, and %2 is not: give its proof stress, as in “190 ksi”.",
                            name(), thread.name()));
    }
    for (const ProofRow& row : proofRows) {
        if (row.grade == m_standard && row.from <= thread.nominal() && thread.nominal() <= row.upTo) {
            return row.proof;
        }
    }
    return refuse(
        Core::say("%1 lists no proof stress for the size of %2 (%3 are listed): give its proof stress, as in “190 ksi”.", name(),
                  thread.name(),
                  thread.system() == ThreadSystem::inch ? Core::say("1/4 to 1 1/2 in") : Core::say("M1.6 to M39")));
}

Result<Grade> parseGrade(std::string_view typed) {
    typed = trimmed(typed);
    const std::string text = lowered(typed);
    for (const GradeName& known : gradeNames) {
        for (const std::string_view also : known.alsoRead) {
            if (text == also) {
                return Grade::of(known.grade);
            }
        }
    }
    std::string_view rest = text;
    for (const std::string_view prefix : {"by hand", "proof stress"}) { // the first in records of earlier versions
        rest = rest.starts_with(prefix) ? trimmed(rest.substr(prefix.size())) : rest;
    }
    const auto comma = rest.find(", e ");
    const auto proof = stressFrom(rest.substr(0, comma));
    const auto modulus =
        comma == std::string_view::npos ? std::optional(steelModulus) : stressFrom(trimmed(rest.substr(comma + 4)));
    if (proof && modulus) {
        return Grade::ofProofStress(*proof, *modulus);
    }
    return refuse(Core::say("%1 is not a known grade: use SAE 5, SAE 8, 8.8, 10.9 or 12.9, or give the proof stress as "
                            "in “1310 MPa” or “190 ksi”.",
                            quotedText(typed)));
}

Result<Force> proofLoad(const Thread& thread, const Grade& grade) {
    return grade.proofStress(thread).map([&](Stress proof) {
        return newtons(inMegapascals(proof) * inSquareMillimetres(thread.stressArea())); // 1 MPa·mm² = 1 N
    });
}

} // namespace caprail
