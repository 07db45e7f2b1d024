// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/say.h>
#include <ledger/ledger.h>
#include <memory>
#include <sys/mman.h>

namespace caprail {

namespace {

/// Asks the system to give room for very many entries in large pages: else each 4 KiB of it is a fault of its own,
/// which costs as much as reading the entries in it. It is a wish, and does nothing where it is not granted.
void wishForLargePages(void* memory, std::size_t bytes) {
    constexpr std::size_t large = 2UL * 1024 * 1024;
    if (std::align(large, large, memory, bytes) != nullptr && bytes >= 2 * large) {
        (void)::madvise(memory, bytes / large * large, MADV_HUGEPAGE);
    }
}

} // namespace

void Ledger::note(const Entry& entry) {
    m_struckBy.push_back(0);
    if (const auto* strike = entry.body.as<Struck>()) {
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
    wishForLargePages(m_entries.data() + m_entries.size(), more * sizeof(Entry));
    m_struckBy.reserve(m_struckBy.size() + more);
}

} // namespace caprail
