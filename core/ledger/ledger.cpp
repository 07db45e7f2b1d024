// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/ledger.h>

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

void Ledger::appendVerified(Entry entry) {
    note(entry);
    m_entries.push_back(std::move(entry));
}

void Ledger::reserve(std::size_t more) {
    m_entries.reserve(m_entries.size() + more);
    m_struckBy.reserve(m_struckBy.size() + more);
}

} // namespace caprail
