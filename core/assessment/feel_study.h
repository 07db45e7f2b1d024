// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// How well a person feels a step under a straightedge, tried like an instrument: steps of known height in random order,
/// and a probit fit of «rocks» and of «loose» over them.
#include <assessment/facts.h>
#include <measure/probit.h>
#include <optional>

namespace caprail {

/// Answers that a study needs before it says anything.
inline constexpr std::size_t feelAnswersNeeded = 25;
/// A study is made again after so many days.
inline constexpr std::int64_t feelStudyDays = 365;

/// What a study comes to so far.
struct FeelConclusion {
    std::size_t answers = 0;
    std::vector<Response> rocks, loose;        ///< by height in nanometres, loose by its negative: for the plot and the fit
    std::optional<ProbitFit> rocksFit, looseFit; ///< none where one step parts all answers
    /// The step that is answered rightly 95 times of 100, at the unfavourable end of its 95 % confidence; of both ways the
    /// larger one is δ, this person's limit of error with this straightedge. None while the study is not concluded.
    std::optional<Length> deltaRocks, deltaLoose, delta;
    bool putsNoBound = false; ///< it has its answers, and none of the steps tried is surely felt
    std::string missing;      ///< what it still needs, as a sentence; empty when it is concluded
    UtcTime last;        ///< of the answers
};
/// `upTo`: only answers up to that entry; none: all.
FeelConclusion concludeFeel(const FeelStudyFact&, std::optional<std::int64_t> upTo = {});

/// δ of the newest study of this person with this straightedge that was concluded before an entry, and within a year of
/// its time. None: there is none, or the newest that had its answers puts no bound to what is felt (an older and better
/// one does not stand against it).
std::optional<Length> feelLimitAt(const Facts&, const std::string& person, const std::string& straightedge,
                                  std::int64_t entry, UtcTime time);

/// What is known of one person's feel with one straightedge.
struct FeelStanding {
    std::string person, straightedge;
    std::int64_t study = 0; ///< the newest that counts; where none was concluded, the newest that was begun
    FeelConclusion conclusion;
    /// Concluded, and not older than a year at `now`.
    [[nodiscard]] bool stands(UtcTime now) const;
    /// The day on which it is due again; none while none was concluded.
    [[nodiscard]] std::optional<Date> due() const;
};
/// Of everybody whose feel was ever tried with any straightedge, by person and straightedge.
std::vector<FeelStanding> feelStandings(const Facts&);
/// None: this person's feel was never tried with this straightedge.
std::optional<FeelStanding> feelStandingOf(const Facts&, const std::string& person, const std::string& straightedge);

/// Steps to try, so many in all, each of `heights` about equally often, in an order that `seed` fixes and nobody can
/// guess at the bench. Empty for no heights.
std::vector<Length> feelOrder(std::vector<Length> heights, std::size_t answers, std::uint32_t seed);

} // namespace caprail
