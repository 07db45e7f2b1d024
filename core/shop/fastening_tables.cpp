// SPDX-License-Identifier: GPL-3.0-or-later
/// Tables of what was tightened, verified and closed.
#include <assessment/fastener_groups.h>
#include <assessment/program_findings.h>
#include <assessment/specified.h>
#include <shop/result_tables_of.h>

namespace caprail::results {

namespace {

/// Of one group, worked out once for all of its places.
struct GroupShare {
    ResultCell nominal, high;
};

std::map<std::int64_t, GroupShare> sharesOf(const Facts& facts) {
    std::map<std::int64_t, GroupShare> shares;
    for (const auto& [key, group] : facts.groups) {
        if (const auto judged = judgeGroup(group.what, facts.rules.torqueScatterPercent, {})) {
            shares[group.entry] = {judged->equivalent.nominal, judged->equivalent.high};
        }
    }
    return shares;
}

/// Every fastener that is asked for or was tightened, by place.
std::set<FastenerId> fastenersIn(const Facts& facts) {
    std::set<FastenerId> all;
    for (const auto& [key, group] : facts.groups) {
        const auto members = membersOf(facts, key);
        all.insert(members.begin(), members.end());
    }
    for (const auto& [fastener, fact] : facts.fasteners) {
        all.insert(fastener);
    }
    return all;
}

} // namespace

ResultTable fastenersTable(const Facts& facts) {
    ResultTable table{"results_fasteners",
                      "Each fastener: what is asked of it, what it was tightened to last, and its share of proof.",
                      {{"fastener", "", "kind, number and side: main-3R"},
                       {"method", "", "how it is to be tightened; empty: no group speaks for it"},
                       {"specified_torque_mNm", "mN·m", "that is asked for"},
                       {"specified_angle_mdeg", "0.001°", "that is asked for"},
                       {"specified_stretch_nm", "nm", "that is asked for"},
                       {"share_of_proof", "1", "of the specified torque with its torsion, 1 is the proof load"},
                       {"share_of_proof_at_low_friction", "1", "the same at the lower friction"},
                       {"torque_mNm", "mN·m", "that it was tightened to last"},
                       {"angle_mdeg", "0.001°", "that it was turned by last"},
                       {"stretch_nm", "nm", "that it was stretched by last"},
                       {"is_as_specified", "1", "1: tight at what is asked for, and not loosened since; 0: not"},
                       {"is_loose", "1", "1: it was loosened since"},
                       {"instrument", "", "the wrench"},
                       {"person", "", "who tightened it"},
                       {"entry", "1", "that says so"}},
                      {}};
    const auto shares = sharesOf(facts);
    for (const FastenerId fastener : fastenersIn(facts)) {
        std::vector<ResultCell> row{code(fastener)};
        const auto* group = facts.groupOf(fastener);
        const auto share = group == nullptr ? shares.end() : shares.find(group->entry);
        if (group == nullptr) {
            row.resize(7);
        } else {
            row.insert(row.end(), {std::string(word(group->what.method)), cellOf(group->what.torque),
                                   cellOf(group->what.angle), cellOf(group->what.stretch),
                                   share == shares.end() ? ResultCell() : share->second.nominal,
                                   share == shares.end() ? ResultCell() : share->second.high});
        }
        const auto at = facts.fasteners.find(fastener);
        if (at == facts.fasteners.end() || !at->second.tightened) {
            row.resize(table.columns.size());
        } else {
            const auto& seen = *at->second.tightened;
            row.insert(row.end(),
                       {cellOf(seen.what.torque), cellOf(seen.what.angle), cellOf(seen.what.stretch),
                        std::int64_t{isTightAsSpecified(facts, fastener) ? 1 : 0},
                        std::int64_t{at->second.isLoose ? 1 : 0}, seen.what.instrument, seen.person, seen.entry});
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

ResultTable roundsTable(const Facts& facts) {
    ResultTable table{"results_rounds",
                      "Every fastener of every verify round of this build.",
                      {{"round", "1", "number of the round"},
                       {"fastener", "", "kind, number and side: main-3R"},
                       {"outcome", "", "held or moved"},
                       {"torque_mNm", "mN·m", "at which it was pulled"},
                       {"angle_mdeg", "0.001°", "by which one that moved turned"},
                       {"stretch_nm", "nm", "as read, where it was verified by its length"},
                       {"counts", "1", "1: it counts; 0: it does not"},
                       {"why_not", "", "why it does not count, for people"},
                       {"instrument", "", "the wrench"},
                       {"person", "", "who verified it"},
                       {"time", "UTC", "when, RFC 3339"},
                       {"entry", "1", "that says so"}},
                      {}};
    for (const RoundFact& round : facts.rounds) {
        for (const auto& [fastener, seen] : round.outcomes) {
            const auto whyNot = whyNotCounted(facts, seen);
            table.rows.push_back({round.begun.what.round, code(fastener), std::string(word(seen.what.outcome)),
                                  cellOf(seen.what.torque), cellOf(seen.what.angle), cellOf(seen.what.stretch),
                                  std::int64_t{whyNot ? 0 : 1}, whyNot.value_or(""), wrenchOf(facts, seen.what),
                                  seen.person, format(seen.time), seen.entry});
        }
    }
    return table;
}

ResultTable closingTable(const Facts& facts, const Assessment& assessment) {
    ResultTable table{"results_closing",
                      "The closing steps and the sign-off, in their order.",
                      {{"step", "", "the step, or “sign-off”"},
                       {"state", "", "good: done, and nothing under it was done again"},
                       {"person", "", "who did it"},
                       {"time", "UTC", "when, RFC 3339"},
                       {"entry", "1", "that says so"}},
                      {}};
    for (const auto& [step, standing] : assessment.closing) {
        const auto done = facts.closing.find(step);
        std::vector<ResultCell> row{std::string(word(step)), std::string(word(standing.state))};
        if (done == facts.closing.end()) {
            row.resize(table.columns.size());
        } else {
            row.insert(row.end(), {done->second.person, format(done->second.time), done->second.entry});
        }
        table.rows.push_back(std::move(row));
    }
    if (facts.signedOff) {
        table.rows.push_back({"sign-off", std::string(word(CheckState::good)), facts.signedOff->person,
                              format(facts.signedOff->time), facts.signedOff->entry});
    }
    return table;
}

} // namespace caprail::results
