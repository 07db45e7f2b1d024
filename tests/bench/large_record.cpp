// SPDX-License-Identifier: GPL-3.0-or-later
#include "large_record.h"

#include <array>
#include <assessment/facts.h>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <ledger/band_names.h>
#include <ledger/entry_json.h>
#include <store/text/text_form.h>

namespace caprail::largerecord {

namespace {

constexpr std::int64_t betweenEntries = 20'000; // ms
constexpr int mostPasses = 99;

[[noreturn]] void stop(const std::string& sentence) {
    std::fprintf(stderr, "large_record: %s\n", sentence.c_str());
    std::exit(1);
}

/// Goes on with a ledger, entry by entry.
class Maker {
public:
    Maker(const std::string& samples, std::int64_t count) : m_count(count) {
        std::ifstream lines(samples + "/mid-survey.jsonl");
        for (std::string line; std::getline(lines, line);) {
            auto draft = fromJson(line);
            if (!draft) {
                stop(draft.error().sentence);
            }
            m_ledger.append(*draft->time, draft->person, std::move(draft->body));
        }
        if (m_ledger.empty()) {
            stop("there is no sample in " + samples);
        }
        m_person = m_ledger.entries().back().person;
        const Facts facts = fold(m_ledger);
        m_layout = facts.layout;
        for (const Position p : m_layout->positions()) {
            const auto read = facts.gaps.find(p);
            m_gaps[p] = read == facts.gaps.end() ? thou(58) : read->second.front().what.value();
        }
        for (const FastenerId f : m_layout->verifiedFasteners()) {
            m_specified[f] = *facts.groupOf(f)->what.torque;
        }
        for (const auto& [name, shim] : facts.shims) {
            m_shims.push_back(name);
        }
        m_ledger.reserve(static_cast<std::size_t>(count));
    }

    Ledger make(Manner manner) {
        for (std::int64_t cycle = 1; !isFull(); ++cycle) {
            if (manner == Manner::worked) {
                work(cycle);
            } else {
                heap(cycle);
            }
        }
        return std::move(m_ledger);
    }

private:
    [[nodiscard]] bool isFull() const { return m_ledger.size() >= m_count; }
    void add(Body body) {
        if (!isFull()) {
            const UtcTime time{m_ledger.entries().back().time.milliseconds + betweenEntries};
            m_ledger.append(time, m_person, std::move(body));
        }
    }

    /// A length as it would be typed in full.
    static Entered<Length> typed(Length value) {
        std::array<char, 32> text{};
        std::snprintf(text.data(), text.size(), "%.6f mm", static_cast<double>(value.value()) / 1e6);
        return {value, text.data()};
    }
    void gaps(std::int64_t cycle) {
        const int pass = static_cast<int>(cycle % mostPasses) + 1;
        for (const Position p : m_layout->positions()) {
            add(GapReading{p, pass, typed(m_gaps.at(p) + Length((cycle + p.cap) % 5 * 2540)), "LEAVES-2", {}, "EDGE-1"});
        }
    }
    void fits(std::int64_t cycle) {
        add(FitReading{std::string(bands::crankEndPlay), 1, typed(thou(5) + Length(cycle % 3 * 1270)), "DIAL-1"});
    }
    void finding(std::int64_t cycle) {
        const std::string name = "F" + std::to_string(cycle);
        add(FindingOpened{name, "3R", "a burr at the edge of the pad, seen in cycle " + std::to_string(cycle)});
        add(FindingSettled{name, "stoned flat and wiped"});
    }
    void round() {
        add(RoundBegun{++m_round, "WRENCH-90"});
        for (const FastenerId f : m_layout->verifiedFasteners()) {
            add(RoundOutcome{m_round, f, Outcome::held, {}, m_specified.at(f), "WRENCH-90"});
        }
    }

    /// One go at the engine: torques verified, a cap tightened anew, what that invalidated measured again.
    void work(std::int64_t cycle) {
        round();
        const auto fasteners = m_layout->verifiedFasteners();
        const FastenerId turned = fasteners[static_cast<std::size_t>(cycle) % fasteners.size()];
        add(FastenerTightened{turned, m_specified.at(turned), {}, {}, "WRENCH-90"});
        gaps(2 * cycle);
        gaps(2 * cycle + 1);
        fits(cycle);
        if (!m_shims.empty()) {
            const std::string& shim = m_shims[static_cast<std::size_t>(cycle) % m_shims.size()];
            add(ShimMeasured{shim, {thou(20), "20 thou"}, "MIC-75"});
        }
        add(NoteAdded{"3R", "looked at again in cycle " + std::to_string(cycle)});
        if (cycle % 3 == 0) {
            finding(cycle);
        }
        if (cycle % 4 == 0 && !isFull()) {
            add(NoteAdded{"", "to be struck"});
            add(Struck{m_ledger.size(), "written twice"});
        }
    }

    void heap(std::int64_t cycle) {
        gaps(cycle);
        for (int i = 0; i < 5; ++i) {
            fits(cycle + i);
        }
        add(PickupReading{PickupTerm::panDepth, {inches(7), "7 in"}, "DEPTH-1"});
        add(NoteAdded{"3R", "looked at again in cycle " + std::to_string(cycle)});
        finding(cycle);
        if (cycle % 10 == 0 && !isFull()) {
            add(NoteAdded{"", "to be struck"});
            add(Struck{m_ledger.size(), "written twice"});
        }
    }

    Ledger m_ledger;
    std::int64_t m_count;
    std::string m_person;
    std::optional<EngineLayout> m_layout;
    std::map<Position, Length> m_gaps;
    std::map<FastenerId, Entered<Torque>> m_specified; ///< about which the readings lie
    std::vector<std::string> m_shims;
    std::int64_t m_round = 0;
};

} // namespace

Ledger ledgerOf(const std::string& samples, std::int64_t count, Manner manner) {
    return Maker(samples, count).make(manner);
}

void makeRecord(const std::string& samples, const std::string& path, std::int64_t count, Manner manner) {
    const std::string text = path + ".jsonl";
    std::filesystem::remove(text);
    const auto done = exportLedger(ledgerOf(samples, count, manner), text);
    const auto made = done ? importLedger(text, path) : tl::unexpected(done.error());
    std::filesystem::remove(text);
    if (!made) {
        stop(made.error().sentence);
    }
}

} // namespace caprail::largerecord
