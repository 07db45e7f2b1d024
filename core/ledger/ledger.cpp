// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/ledger.h>
#include <base/say.h>

namespace caprail {

void Ledger::note(const Entry& entry) {
    m_struckBy.push_back(0);
    if (const auto* strike = std::get_if<Struck>(&entry.body)) {
        if (strike->entry >= 1 && strike->entry < entry.sequence) {
            m_struckBy[static_cast<std::size_t>(strike->entry - 1)] = entry.sequence;
        }
    }
}

const Entry& Ledger::append(UtcTime time, std::string person, Body body) {
    Entry entry{size() + 1, time, std::move(person), std::move(body), {}};
    entry.seal = sealOver(seal(), canonicalText(entry));
    note(entry);
    return m_entries.emplace_back(std::move(entry));
}

Result<void> Ledger::appendSealed(Entry entry) {
    if (entry.sequence != size() + 1) {
        return refuse(
            Core::say("Entry %1 stands where entry %2 must be: entries were removed, inserted or put in another order.",
                      entry.sequence, size() + 1));
    }
    if (sealOver(seal(), canonicalText(entry)) != entry.seal) {
        return refuse(
            Core::say("The seal of entry %1 does not fit: it, or an entry before it, was altered after it was sealed.",
                      entry.sequence));
    }
    appendVerified(std::move(entry));
    return {};
}

void Ledger::appendVerified(Entry entry) {
    note(entry);
    m_entries.push_back(std::move(entry));
}

void Ledger::reserve(std::size_t more) {
    m_entries.reserve(m_entries.size() + more);
    m_struckBy.reserve(m_struckBy.size() + more);
}

} // namespace caprail
