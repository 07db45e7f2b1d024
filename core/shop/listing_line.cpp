// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/listing_line.h>

#include <shop/numbered.h>

namespace caprail {

namespace {

void write(std::string& line, std::int64_t value) {
    const auto bits = static_cast<std::uint64_t>(value);
    std::uint64_t rest = value < 0 ? ~(bits << 1) : bits << 1;
    for (; rest >= 0x80; rest >>= 7) {
        line += static_cast<char>(rest | 0x80);
    }
    line += static_cast<char>(rest);
}
void write(std::string& line, const std::string& value) {
    write(line, static_cast<std::int64_t>(value.size()));
    line += value;
}
void write(std::string& line, UtcTime value) {
    write(line, value.milliseconds);
}
void write(std::string& line, const std::optional<Date>& value) {
    write(line, std::int64_t(value.has_value()));
    if (value) {
        write(line, value->days);
    }
}
template <Worded E> void write(std::string& line, E value) {
    write(line, static_cast<std::int64_t>(value));
}

/// Takes value after value off the front; false from the first that is not whole.
struct Reading {
    std::string_view rest;
    bool isWhole = true;

    void take(std::int64_t& value) {
        std::uint64_t bits = 0;
        for (int shift = 0; isWhole; shift += 7) {
            if (rest.empty() || shift > 63) {
                isWhole = false;
                return;
            }
            const auto byte = static_cast<unsigned char>(rest.front());
            rest.remove_prefix(1);
            bits |= std::uint64_t(byte & 0x7fU) << shift;
            if (byte < 0x80) {
                break;
            }
        }
        value = static_cast<std::int64_t>((bits & 1) != 0 ? ~(bits >> 1) : bits >> 1);
    }
    void take(std::string& value) {
        std::int64_t size = 0;
        take(size);
        isWhole = isWhole && size >= 0 && static_cast<std::uint64_t>(size) <= rest.size();
        if (isWhole) {
            value.assign(rest.substr(0, static_cast<std::size_t>(size)));
            rest.remove_prefix(static_cast<std::size_t>(size));
        }
    }
    void take(UtcTime& value) { take(value.milliseconds); }
    void take(std::optional<Date>& value) {
        std::int64_t hasValue = 0;
        take(hasValue);
        isWhole = isWhole && (hasValue == 0 || hasValue == 1);
        if (isWhole && hasValue == 1) {
            value.emplace();
            take(value->days);
        }
    }
    template <Worded E> void take(E& value) {
        std::int64_t number = 0;
        take(number);
        const auto read = numbered<E>(number);
        isWhole = isWhole && read;
        value = read.value_or(value);
    }
};

/// Everything of a row but its id, in one order for writing and reading.
template <class Row, class Each> void eachPart(Row& row, Each each) {
    each(row.file.path);
    each(row.file.size);
    each(row.file.modified);
    each(row.file.changed);
    each(row.file.inode);
    each(row.reading);
    each(row.sentence);
    eachSummaryField([&](const auto& column) { each(row.summary.*column.member); });
}

} // namespace

std::string packed(const ShopRow& row) {
    std::string line;
    eachPart(row, [&](const auto& part) { write(line, part); });
    return line;
}

std::optional<ShopRow> unpacked(std::int64_t id, std::string_view line) {
    ShopRow row;
    row.id = id;
    Reading reading{line};
    eachPart(row, [&](auto& part) { reading.take(part); });
    return reading.isWhole && reading.rest.empty() ? std::optional(std::move(row)) : std::nullopt;
}

} // namespace caprail
