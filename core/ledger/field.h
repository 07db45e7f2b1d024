// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <engine/place.h>
#include <optional>
#include <string>
#include <string_view>
#include <base/date.h>
#include <base/rare.h>
#include <span>
#include <units/parse.h>
#include <base/words.h>
#include <variant>
#include <vector>

namespace caprail {

/// What one column of one entry holds: nothing, a whole number or a text. Everything that an entry says is made of
/// these three, which is all that a table, a JSON line, a seal and a CSV cell need to agree on.
using Cell = std::variant<std::monostate, std::int64_t, std::string>;

/// A cell that is looked at where its text lies, and not copied. The text must outlive it.
using CellView = std::variant<std::monostate, std::int64_t, std::string_view>;
/// The same cells, looked at.
std::vector<CellView> viewsOf(const std::vector<Cell>&);

/// One column of an entry kind.
struct Column {
    enum class Type { integer, text };
    std::string name; ///< with its unit: "gap_nm", "torque_mNm"
    Type type = Type::text;
    bool optional = false;
    /// Words that alone are allowed here; empty: any text.
    std::vector<std::string_view> words;
    friend bool operator==(const Column&, const Column&) = default;
};

/// One field of an entry kind: its name and the member that holds it. See entries.h.
template <class Struct, class Member> struct Field {
    std::string_view name;
    Member Struct::*member;
};

template <class Struct, class Member>
constexpr Field<Struct, Member> field(std::string_view name, Member Struct::*member) {
    return {name, member};
}

/// How one C++ type is laid out in columns: `width` columns, which `columns(name)` describes; `write(value, cells)`;
/// and `read(cells, value)`, which takes as many cells, or gives false once the reader was told why. A new field type
/// is one specialisation.
template <class T> struct Codec;

/// Takes the cells of one entry one after another; every refusal names the column. Whole ledgers are read through it,
/// so what is good costs no allocation but that of the value itself.
class CellReader {
public:
    CellReader(const std::vector<Column>& columns, std::span<const CellView> cells)
        : m_columns(columns), m_cells(cells) {}
    [[nodiscard]] bool atEmpty() const { return std::holds_alternative<std::monostate>(m_cells[m_at]); }
    void skip(std::size_t n) { m_at += n; }
    bool integer(std::int64_t& out) {
        const auto* n = std::get_if<std::int64_t>(&m_cells[m_at++]);
        out = n == nullptr ? 0 : *n;
        return n != nullptr || refuseType(Column::Type::integer);
    }
    bool text(std::string_view& out) {
        const auto* s = std::get_if<std::string_view>(&m_cells[m_at++]);
        out = s == nullptr ? std::string_view() : *s;
        return s != nullptr || refuseType(Column::Type::text);
    }
    /// Keeps the sentence, with the name of the column read last in front of it; false.
    bool refuseLast(const std::string& sentence);
    /// Why the last `read` gave false.
    [[nodiscard]] const std::string& refusal() const { return m_refusal; }

private:
    bool refuseType(Column::Type wanted);
    const std::vector<Column>& m_columns;
    std::span<const CellView> m_cells;
    std::size_t m_at = 0;
    std::string m_refusal;
};

template <> struct Codec<std::string> {
    static constexpr std::size_t width = 1;
    static std::vector<Column> columns(std::string_view name) {
        return {{std::string(name), Column::Type::text, false, {}}};
    }
    static void write(const std::string& value, std::vector<Cell>& out) { out.emplace_back(value); }
    static bool read(CellReader& in, std::string& value) {
        std::string_view text;
        if (!in.text(text)) {
            return false;
        }
        value.assign(text);
        return true;
    }
};

template <> struct Codec<std::int64_t> {
    static constexpr std::size_t width = 1;
    static std::vector<Column> columns(std::string_view name) {
        return {{std::string(name), Column::Type::integer, false, {}}};
    }
    static void write(std::int64_t value, std::vector<Cell>& out) { out.emplace_back(value); }
    static bool read(CellReader& in, std::int64_t& value) { return in.integer(value); }
};

template <> struct Codec<bool> {
    static constexpr std::size_t width = 1;
    static std::vector<Column> columns(std::string_view name) { return Codec<std::int64_t>::columns(name); }
    static void write(bool value, std::vector<Cell>& out) { out.emplace_back(std::int64_t(value ? 1 : 0)); }
    static bool read(CellReader& in, bool& value) {
        std::int64_t n = 0;
        if (!in.integer(n)) {
            return false;
        }
        value = n == 1;
        return n == 0 || n == 1 || in.refuseLast(Core::say("must be 0 or 1"));
    }
};

template <Worded E> struct Codec<E> {
    static constexpr std::size_t width = 1;
    static std::vector<Column> columns(std::string_view name) {
        Column column{std::string(name), Column::Type::text, false, {}};
        for (const auto& entry : allWords<E>()) {
            column.words.push_back(entry.word);
        }
        return {column};
    }
    static void write(E value, std::vector<Cell>& out) { out.emplace_back(std::string(word(value))); }
    static bool read(CellReader& in, E& value) {
        std::string_view text;
        if (!in.text(text)) {
            return false;
        }
        if (const E* known = valueOf<E>(text)) {
            value = *known;
            return true;
        }
        return in.refuseLast(Core::say("holds a word it does not know: %1", fromWord<E>(text).error().sentence));
    }
};

/// The unit at the end of a quantity's column name.
template <class Q> constexpr std::string_view columnUnit = "";
template <> inline constexpr std::string_view columnUnit<Length> = "_nm";
template <> inline constexpr std::string_view columnUnit<Torque> = "_mNm";
template <> inline constexpr std::string_view columnUnit<Angle> = "_mdeg";
template <> inline constexpr std::string_view columnUnit<Temperature> = "_mdegC";
template <> inline constexpr std::string_view columnUnit<Force> = "_mN";
template <> inline constexpr std::string_view columnUnit<Stress> = "_kPa";

template <class Tag> struct Codec<Quantity<Tag>> {
    using Q = Quantity<Tag>;
    static_assert(!columnUnit<Q>.empty());
    static constexpr std::size_t width = 1;
    static std::vector<Column> columns(std::string_view name) {
        return Codec<std::int64_t>::columns(std::string(name) + std::string(columnUnit<Q>));
    }
    static void write(Q value, std::vector<Cell>& out) { out.emplace_back(value.value()); }
    static bool read(CellReader& in, Q& value) {
        std::int64_t n = 0;
        if (!in.integer(n)) {
            return false;
        }
        value = Q(n);
        // Ten times the size of any engine, in any unit: beyond it sums could run over.
        return (n <= 1'000'000'000'000'000 && n >= -1'000'000'000'000'000) ||
               in.refuseLast(Core::say("holds a number too large for any engine"));
    }
};

/// A quantity and what was typed for it: two columns, "gap_nm" and "gap_typed".
template <class Q> struct Codec<Entered<Q>> {
    static constexpr std::size_t width = 2;
    static std::vector<Column> columns(std::string_view name) {
        auto list = Codec<Q>::columns(name);
        list.push_back({std::string(name) + "_typed", Column::Type::text, false, {}});
        return list;
    }
    static void write(const Entered<Q>& value, std::vector<Cell>& out) {
        Codec<Q>::write(value.value, out);
        out.emplace_back(value.typed);
    }
    static bool read(CellReader& in, Entered<Q>& value) {
        return Codec<Q>::read(in, value.value) && Codec<std::string>::read(in, value.typed);
    }
};

/// What may be empty: its columns are empty then.
template <class Optional> struct OptionalCodec {
    using Value = Codec<typename Optional::value_type>;
    static constexpr std::size_t width = Value::width;
    static std::vector<Column> columns(std::string_view name) {
        auto list = Value::columns(name);
        for (auto& column : list) {
            column.optional = true;
        }
        return list;
    }
    static void write(const Optional& value, std::vector<Cell>& out) {
        if (value) {
            Value::write(*value, out);
        } else {
            out.resize(out.size() + width);
        }
    }
    static bool read(CellReader& in, Optional& value) {
        if (in.atEmpty()) {
            in.skip(width);
            value.reset();
            return true;
        }
        return Value::read(in, value.emplace());
    }
};
template <class T> struct Codec<std::optional<T>> : OptionalCodec<std::optional<T>> {};
template <class T> struct Codec<Rare<T>> : OptionalCodec<Rare<T>> {};

/// Ids are written by their code ("3R", "main-3", "main-3R-outer") and read back by their parser; a day likewise.
template <class Id, std::string (*Write)(Id), Result<Id> (*Parse)(std::string_view)> struct CodeCodec {
    static constexpr std::size_t width = 1;
    static std::vector<Column> columns(std::string_view name) { return Codec<std::string>::columns(name); }
    static void write(Id value, std::vector<Cell>& out) { out.emplace_back(Write(value)); }
    static bool read(CellReader& in, Id& value) {
        std::string_view text;
        if (!in.text(text)) {
            return false;
        }
        const auto parsed = Parse(text);
        if (!parsed) {
            return in.refuseLast(parsed.error().sentence);
        }
        value = *parsed;
        return true;
    }
};
template <> struct Codec<Position> : CodeCodec<Position, code, parsePosition> {};
template <> struct Codec<JournalId> : CodeCodec<JournalId, code, parseJournal> {};
template <> struct Codec<FastenerId> : CodeCodec<FastenerId, code, parseFastener> {};
template <> struct Codec<Date> : CodeCodec<Date, format, parseDate> {};
template <> struct Codec<ClockTime> : CodeCodec<ClockTime, format, parseClockTime> {};

/// A list of names in one text column, parted by single spaces: "S014 S022". Names hold no spaces.
struct NameList {
    std::vector<std::string> names;
    friend bool operator==(const NameList&, const NameList&) = default;
};
template <> struct Codec<NameList> {
    static constexpr std::size_t width = 1;
    static std::vector<Column> columns(std::string_view name) { return Codec<std::string>::columns(name); }
    static void write(const NameList& value, std::vector<Cell>& out);
    static bool read(CellReader& in, NameList& value);
};

} // namespace caprail
