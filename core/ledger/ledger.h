// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <algorithm>
#include <ledger/entry.h>
#include <span>
#include <vector>

namespace caprail {

/// The append-only list of entries of one record. It keeps sequence numbers and seals right, and knows which entries
/// are struck. Whether an entry makes sense in this record is not its business: see assessment/admission.h.
class Ledger {
public:
    [[nodiscard]] const std::vector<Entry>& entries() const { return m_entries; }
    [[nodiscard]] bool empty() const { return m_entries.empty(); }
    [[nodiscard]] std::int64_t size() const { return static_cast<std::int64_t>(m_entries.size()); }
    /// `sequence` from 1 to size().
    [[nodiscard]] const Entry& at(std::int64_t sequence) const {
        return m_entries.at(static_cast<std::size_t>(sequence - 1));
    }

    /// From `sequence` on, or all where it is below 1; none where it lies past the end.
    [[nodiscard]] std::span<const Entry> entriesFrom(std::int64_t sequence) const {
        const auto all = std::span(m_entries);
        return all.subspan(std::min(all.size(), static_cast<std::size_t>(std::max<std::int64_t>(sequence, 1) - 1)));
    }

    /// Numbers, seals and appends.
    const Entry& append(UtcTime time, std::string person, Body body);
    /// Appends an entry that carries its own number and seal (read from a file); refuses one that does not follow or
    /// whose seal does not fit, naming it.
    Result<void> appendSealed(Entry entry);
    /// Appends an entry whose number and seal the caller has checked as `appendSealed` would: the store does so for a
    /// whole file on several cores at once.
    void appendVerified(Entry entry);
    /// Makes room for so many entries more.
    void reserve(std::size_t more);

    /// The seal over the whole ledger; zeros when it is empty.
    [[nodiscard]] Seal seal() const { return m_entries.empty() ? Seal{} : m_entries.back().seal; }

    /// The entry that strikes `sequence`, or 0.
    [[nodiscard]] std::int64_t struckBy(std::int64_t sequence) const {
        return m_struckBy.at(static_cast<std::size_t>(sequence - 1));
    }
    [[nodiscard]] bool isStruck(std::int64_t sequence) const { return struckBy(sequence) != 0; }

private:
    void note(const Entry&);
    std::vector<Entry> m_entries;
    std::vector<std::int64_t> m_struckBy;
};

} // namespace caprail
