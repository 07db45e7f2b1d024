// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <ledger/kinds.h>
#include <base/date.h>

namespace caprail {

/// The hash that chains an entry to all before it: SHA-256 (FIPS 180-4), 32 bytes.
struct Seal {
    std::array<std::uint8_t, 32> bytes{};
    friend bool operator==(const Seal&, const Seal&) = default;
};

/// 64 hexadecimal digits.
std::string toHex(const Seal&);
/// Refuses anything but 64 lower-case hexadecimal digits.
Result<Seal> sealFromHex(std::string_view);
/// The short form printed on the sheet: the first 80 bits as five groups of four digits, "3f2a-91c0-…".
std::string shortForm(const Seal&);

/// One entry of the ledger: what was seen or done, when, by whom, and the seal over it and all before it.
struct Entry {
    std::int64_t sequence = 0; ///< 1, 2, 3 … without gaps
    UtcTime time;
    std::string person;
    Body body;
    Seal seal;
    friend bool operator==(const Entry&, const Entry&);
};

/// What the seal is computed over: the entry as one JSON object in the canonical form of RFC 8785 (members sorted by
/// name, no white space, whole numbers, shortest escapes, UTF-8), without its seal. Empty optional fields are left out.
std::string canonicalText(std::int64_t sequence, UtcTime time, std::string_view person, const KindInfo&,
                          const std::vector<Cell>&);
std::string canonicalText(const Entry&);
/// Writes canonical texts one after another into the same memory: for whole ledgers.
class CanonicalWriter {
public:
    /// `time` is the moment as it is written (`format` of it). The text lives until the next call.
    std::string_view write(std::int64_t sequence, std::string_view time, std::string_view person, const KindInfo&,
                           std::span<const CellView>);

private:
    void text(std::string_view text);
    void number(std::int64_t number);
    void copy(std::string_view bytes);
    std::vector<char> m_memory;
    char* m_end = nullptr; ///< of what is written
};

/// SHA-256 over the 32 bytes of the earlier seal (zeros before the first entry) followed by the canonical text.
Seal sealOver(const Seal& previous, std::string_view canonicalText);

/// SHA-256 of bytes as 64 hexadecimal digits; for attachments.
std::string sha256Hex(std::string_view bytes);

} // namespace caprail
