// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// How well the people of a record repeat themselves with their instruments, from the readings that they made anyway.
#include <assessment/facts.h>
#include <measure/statistics.h>
#include <measure/variance_split.h>
#include <memory>
#include <tuple>
#include <base/say.h>

namespace caprail {

/// What is measured, for which a person's scatter is pooled apart.
enum class MeasuredQuantity { gap, journal, bore, shim, shell, fit, pickup };
template <> struct WordsOf<MeasuredQuantity> {
    static constexpr std::array<Word<MeasuredQuantity>, 7> list{
        {{MeasuredQuantity::gap, Core::mark("gaps")},
         {MeasuredQuantity::journal, Core::mark("journal diameters")},
         {MeasuredQuantity::bore, Core::mark("bores")},
         {MeasuredQuantity::shim, Core::mark("shims")},
         {MeasuredQuantity::shell, Core::mark("bearing shells")},
         {MeasuredQuantity::fit, Core::mark("fits")},
         {MeasuredQuantity::pickup, Core::mark("pickup terms")}}};
};

/// One person with one instrument at one kind of measurement, over the whole record.
struct PersonalRepeatability {
    MeasuredQuantity quantity = MeasuredQuantity::gap;
    std::string person;
    std::string instrument;        ///< empty: none was named
    std::size_t readings = 0;      ///< live ones
    std::size_t places = 0;        ///< read twice or more while nothing changed there
    std::optional<Pooled> scatter; ///< over those places (JCGM 100:2008, 4.2.4); none while there is no such place
};

/// Readings that can be split into what the places differ by, what the people differ by, and repeatability: every one
/// of `people` has read every one of `places` at least `passes` times while nothing changed there.
struct CrossedReadings {
    MeasuredQuantity quantity = MeasuredQuantity::gap;
    std::vector<std::string> people, places; ///< of the study; empty while nothing is complete
    int passes = 0;                          ///< 2 or 3
    std::vector<StudyReading> readings;      ///< people × places × passes of them
    /// How often each person has read each place that anyone has: what is still missing can be seen here.
    std::map<std::string, std::map<std::string, int>> counts; ///< place → person → readings
};
/// The band that readings are made for, which their scatter is held against.
struct StudyBand {
    std::string name;
    Band band;
};
/// Gaps and shims serve the residual, journals, bores and shells the clearance of their bearing (of mains and rods
/// together the narrower one), fits their own band, the terms of the pickup its clearance. None: no band is set, or the
/// readings serve several.
std::optional<StudyBand> bandOfStudy(const Facts&, const CrossedReadings&);

/// The readings of a record, kept by who read what where: every live entry, all builds, collected by
/// `ReadingsGathering`. Readings of one place belong together only while nothing changed there between them: a gap
/// before and after its cap moved are two places.
class ReadingsByPerson {
public:
    /// Sorted by quantity, person, instrument.
    [[nodiscard]] std::vector<PersonalRepeatability> pooled() const;
    /// The largest study that the record holds of a quantity: the people and places with the most readings in common
    /// (of as many, more people). Uses the readings that stand, the first three of each person at a place. Of shims and
    /// shells it uses all.
    [[nodiscard]] CrossedReadings crossed(MeasuredQuantity) const;

private:
    friend class ReadingsCollector;
    friend class ReadingsGathering;
    ReadingsByPerson() = default;
    /// Whose readings they are.
    using Who = std::tuple<MeasuredQuantity, std::string, std::string>;
    /// Where was read, in which build, and since what.
    using Where = std::tuple<std::string, std::int64_t, std::int64_t>;
    /// Destination → person → values in order, of the last era of each place.
    [[nodiscard]] std::map<std::string, std::map<std::string, std::vector<Length>>> current(MeasuredQuantity) const;

    std::map<Who, std::map<Where, std::vector<Length>>> m_readings;
    /// Since when the readings of a place belong together, as of its last reading.
    std::map<std::pair<MeasuredQuantity, std::string>, std::pair<std::int64_t, std::int64_t>> m_last;
};

class ReadingsCollector;

/// Collects the readings of a growing ledger a piece at a time: in one so long that all at once would hold a window up,
/// and at each further entry only what is new.
class ReadingsGathering {
public:
    ReadingsGathering();
    ReadingsGathering(const ReadingsGathering&) = delete;
    ReadingsGathering& operator=(const ReadingsGathering&) = delete;
    ~ReadingsGathering();

    /// Takes at most so many entries more; true once none is left. Begins anew where an entry that it took was struck
    /// since, or the ledger is another one.
    bool takeMore(const Ledger& ledger, std::int64_t most);
    [[nodiscard]] std::int64_t taken() const { return m_taken; }
    /// Of what was taken so far.
    [[nodiscard]] const ReadingsByPerson& readings() const { return m_readings; }

private:
    void beginAnew();
    ReadingsByPerson m_readings;
    std::unique_ptr<ReadingsCollector> m_collector;
    std::int64_t m_taken = 0;
    std::int64_t m_strikesKnown = 0; ///< strikes up to this entry were known when the first entry was taken
    Seal m_lastSeal;
};

} // namespace caprail
