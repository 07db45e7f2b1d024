// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/remarks.h>

#include <base/say.h>

namespace caprail {

namespace {

std::string sentenceOf(const Entry& entry, const Salvaged& s) {
    std::string sentence =
        Core::say("Entry %1: salvaged on %2 from %3 (%4 bytes, SHA-256 %5), whose last readable seal was %6.",
                  entry.sequence, format(dateOf(entry.time)), "“" + s.fileName + "”", s.size, s.sha256.substr(0, 16),
                  s.lastSeal.empty() ? Core::say("none") : s.lastSeal);
    if (s.unsealed.names.empty() && s.lost.names.empty()) {
        return sentence + " " + Core::say("Every entry that was found matched its seal.");
    }
    const auto numbers = [](const NameList& list) {
        constexpr std::size_t most = 20;
        std::string text;
        for (std::size_t i = 0; i < list.names.size() && i < most; ++i) {
            text += (i == 0 ? "" : ", ") + list.names[i];
        }
        return text + (list.names.size() > most ? " …" : "");
    };
    if (!s.unsealed.names.empty()) {
        sentence += " " + Core::say("Kept though its seal did not fit: %1.", numbers(s.unsealed));
    }
    if (!s.lost.names.empty()) {
        sentence += " " + Core::say("Lost: %1.", numbers(s.lost));
    }
    return sentence;
}

} // namespace

bool isInFuture(UtcTime moment, UtcTime now) {
    constexpr std::int64_t slack = std::int64_t{10} * 60 * 1000; // two computers' clocks may differ by so much
    return moment.milliseconds > now.milliseconds + slack;
}

std::vector<LedgerRemark> clockRemarks(const Ledger& ledger, std::optional<UtcTime> now) {
    std::vector<LedgerRemark> remarks;
    bool wasInFuture = false;
    const Entry* before = nullptr;
    for (const Entry& entry : ledger.entries()) {
        if (before != nullptr && entry.time < before->time) {
            remarks.push_back({entry.sequence,
                               Core::say("Entry %1 (%2) is older than entry %3 (%4): look at the clock.",
                                         entry.sequence, format(entry.time), before->sequence, format(before->time))});
        }
        const bool isAhead = now && isInFuture(entry.time, *now);
        if (isAhead && !wasInFuture) {
            remarks.push_back({entry.sequence, Core::say("Entry %1 (%2) lies in the future: look at the clock.",
                                                         entry.sequence, format(entry.time))});
        }
        wasInFuture = isAhead;
        before = &entry;
    }
    return remarks;
}

std::vector<LedgerRemark> outsideRemarks(const Ledger& ledger) {
    std::vector<LedgerRemark> remarks;
    for (const Entry& entry : ledger.entries()) {
        if (const auto* brought = entry.body.as<BroughtIn>()) {
            remarks.push_back({entry.sequence,
                               Core::say("Entries %1 to %2 came in from a text without seals%3: who made them and when is what "
                                         "that text says.",
                                         entry.sequence + 1, entry.sequence + brought->count,
                                         brought->fileName.empty() ? std::string() : " (“" + brought->fileName + "”)")});
        }
    }
    return remarks;
}

std::vector<LedgerRemark> salvageRemarks(const Ledger& ledger) {
    std::vector<LedgerRemark> remarks;
    for (const Entry& entry : ledger.entries()) {
        if (const auto* salvaged = entry.body.as<Salvaged>()) {
            remarks.push_back({entry.sequence, sentenceOf(entry, *salvaged)});
        }
    }
    return remarks;
}

} // namespace caprail
