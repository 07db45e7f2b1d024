// SPDX-License-Identifier: GPL-3.0-or-later
#include <assessment/repeatability.h>
#include <assessment/standing.h>

namespace caprail {

namespace {

/// Whose scatter it is.
using Who = std::tuple<MeasuredQuantity, std::string, std::string>;
/// Where was read, in which build, and since what.
using Where = std::tuple<std::string, std::int64_t, std::int64_t>;

class Collector {
public:
    explicit Collector(const Facts& facts) : m_facts(facts) {}

    /// Looks at an entry before it is folded in.
    void take(const Entry& entry) {
        std::visit([&](const auto& body) { this->read(entry.person, body); }, entry.body);
    }

    [[nodiscard]] std::vector<PersonalRepeatability> result() const {
        std::vector<PersonalRepeatability> list;
        for (const auto& [who, places] : m_readings) {
            PersonalRepeatability one{std::get<0>(who), std::get<1>(who), std::get<2>(who), 0, 0, {}};
            std::vector<Summary> summaries;
            for (const auto& [where, values] : places) {
                one.readings += values.size();
                one.places += values.size() > 1 ? 1 : 0;
                summaries.push_back(summarise(values));
            }
            one.scatter = pool(summaries);
            list.push_back(std::move(one));
        }
        return list;
    }

private:
    void add(MeasuredQuantity quantity, const std::string& person, const std::string& instrument, std::string place,
             std::int64_t since, Length value) {
        m_readings[{quantity, person, instrument}][{std::move(place), m_facts.build, since}].push_back(value);
    }

    void read(const std::string& person, const GapReading& r) {
        add(MeasuredQuantity::gap, person, r.instrument, code(r.position), m_facts.gapFelledBy(r.position).entry,
            r.gap.value);
    }
    void read(const std::string& person, const JournalReading& r) {
        add(MeasuredQuantity::journal, person, r.instrument,
            code(r.journal) + " " + std::to_string(r.station) + " " + std::to_string(r.direction),
            m_facts.changeOf(Topic::crank).entry, r.diameter.value);
    }
    void read(const std::string& person, const BoreReading& r) {
        add(MeasuredQuantity::bore, person, r.instrument,
            code(r.journal) + " " + std::to_string(r.station) + " " + std::string(word(r.method)),
            boreFelledBy(m_facts, r.journal).entry, r.value.value);
    }
    void read(const std::string& person, const ShimMeasured& r) {
        add(MeasuredQuantity::shim, person, r.instrument, r.shim, 0, r.thickness.value);
    }
    void read(const std::string& person, const ShellMeasured& r) {
        if (!r.isMarked) {
            add(MeasuredQuantity::shell, person, r.instrument, r.shell, 0, r.thickness.value);
        }
    }
    void read(const std::string& person, const FitReading& r) {
        add(MeasuredQuantity::fit, person, r.instrument, r.fit + " " + std::to_string(r.place),
            m_facts.changeOf(Topic::crank).entry, r.value.value);
    }
    void read(const std::string& person, const PickupReading& r) {
        const auto topic = [&] {
            switch (r.term) {
            case PickupTerm::panDepth:
                return Topic::pan;
            case PickupTerm::gasket:
                return Topic::gasket;
            case PickupTerm::plate:
                return Topic::plate;
            case PickupTerm::pickupDepth:
                break;
            }
            return Topic::pickup;
        }();
        add(MeasuredQuantity::pickup, person, r.instrument, std::string(word(r.term)), m_facts.changeOf(topic).entry,
            r.value.value);
    }
    template <class Other> void read(const std::string&, const Other&) {}

    const Facts& m_facts;
    std::map<Who, std::map<Where, std::vector<Length>>> m_readings;
};

} // namespace

std::vector<PersonalRepeatability> repeatabilityOver(const Ledger& ledger) {
    Facts facts;
    Collector collector(facts);
    for (const Entry& entry : ledger.entries()) {
        if (!ledger.isStruck(entry.sequence) && !std::holds_alternative<Struck>(entry.body)) {
            collector.take(entry);
            apply(facts, entry);
        }
    }
    return collector.result();
}

} // namespace caprail
