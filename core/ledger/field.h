// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <engine/place.h>
#include <optional>
#include <string>
#include <string_view>
#include <base/date.h>
#include <units/parse.h>
#include <base/words.h>
#include <variant>
#include <vector>

namespace caprail {

/// What one column of one entry holds: nothing, a whole number or a text. Everything that an entry says is made of
/// these three, which is all that a table, a JSON line, a seal and a CSV cell need to agree on.
using Cell = std::variant<std::monostate, std::int64_t, std::string>;

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

/// How one C++ type is laid out in columns: `columns(name)`, `write(value, cells)`, and `read(cells, at)` which takes
/// as many cells as `columns` gives, or refuses. A new field type is one specialisation.
template <class T> struct Codec;

/// Takes the cells of one entry one after another; every refusal names the column.
class CellReader {
public:
    CellReader(const std::vector<Column>& columns, const std::vector<Cell>& cells)
        : m_columns(columns), m_cells(cells) {}
    [[nodiscard]] bool atEmpty() const { return std::holds_alternative<std::monostate>(m_cells[m_at]); }
    void skip(std::size_t n) { m_at += n; }
    Result<std::int64_t> integer();
    Result<std::string> text();
    /// Names the column read last in front of a sentence.
    [[nodiscard]] tl::unexpected<Problem> refuseLast(const std::string& sentence) const;

private:
    const std::vector<Column>& m_columns;
    const std::vector<Cell>& m_cells;
    std::size_t m_at = 0;
};

template <> struct Codec<std::string> {
    static std::vector<Column> columns(std::string_view name) {
        return {{std::string(name), Column::Type::text, false, {}}};
    }
    static void write(const std::string& value, std::vector<Cell>& out) { out.emplace_back(value); }
    static Result<std::string> read(CellReader& in) { return in.text(); }
};

template <> struct Codec<std::int64_t> {
    static std::vector<Column> columns(std::string_view name) {
        return {{std::string(name), Column::Type::integer, false, {}}};
    }
    static void write(std::int64_t value, std::vector<Cell>& out) { out.emplace_back(value); }
    static Result<std::int64_t> read(CellReader& in) { return in.integer(); }
};

template <> struct Codec<bool> {
    static std::vector<Column> columns(std::string_view name) { return Codec<std::int64_t>::columns(name); }
    static void write(bool value, std::vector<Cell>& out) { out.emplace_back(std::int64_t(value ? 1 : 0)); }
    static Result<bool> read(CellReader& in) {
        auto n = in.integer();
        if (n && *n != 0 && *n != 1) {
            return in.refuseLast(Core::say("must be 0 or 1"));
        }
        return n.map([](std::int64_t value) { return value == 1; });
    }
};

template <Worded E> struct Codec<E> {
    static std::vector<Column> columns(std::string_view name) {
        Column column{std::string(name), Column::Type::text, false, {}};
        for (const auto& entry : allWords<E>()) {
            column.words.push_back(entry.word);
        }
        return {column};
    }
    static void write(E value, std::vector<Cell>& out) { out.emplace_back(std::string(word(value))); }
    static Result<E> read(CellReader& in) {
        auto text = in.text();
        if (!text) {
            return tl::unexpected(text.error());
        }
        auto value = fromWord<E>(*text);
        return value ? value : in.refuseLast(Core::say("holds a word it does not know: %1", value.error().sentence));
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
    static std::vector<Column> columns(std::string_view name) {
        return Codec<std::int64_t>::columns(std::string(name) + std::string(columnUnit<Q>));
    }
    static void write(Q value, std::vector<Cell>& out) { out.emplace_back(value.value()); }
    static Result<Q> read(CellReader& in) {
        auto n = in.integer();
        // Ten times the size of any engine, in any unit: beyond it sums could run over.
        if (n && (*n > 1'000'000'000'000'000 || *n < -1'000'000'000'000'000)) {
            return in.refuseLast(Core::say("holds a number too large for any engine"));
        }
        return n.map([](std::int64_t value) { return Q(value); });
    }
};

/// A quantity and what was typed for it: two columns, "gap_nm" and "gap_typed".
template <class Q> struct Codec<Entered<Q>> {
    static std::vector<Column> columns(std::string_view name) {
        auto list = Codec<Q>::columns(name);
        list.push_back({std::string(name) + "_typed", Column::Type::text, false, {}});
        return list;
    }
    static void write(const Entered<Q>& value, std::vector<Cell>& out) {
        Codec<Q>::write(value.value, out);
        out.emplace_back(value.typed);
    }
    static Result<Entered<Q>> read(CellReader& in) {
        auto value = Codec<Q>::read(in);
        if (!value) {
            return tl::unexpected(value.error());
        }
        return in.text().map([&](std::string typed) { return Entered<Q>{*value, std::move(typed)}; });
    }
};

template <class T> struct Codec<std::optional<T>> {
    static std::vector<Column> columns(std::string_view name) {
        auto list = Codec<T>::columns(name);
        for (auto& column : list) {
            column.optional = true;
        }
        return list;
    }
    static void write(const std::optional<T>& value, std::vector<Cell>& out) {
        if (value) {
            Codec<T>::write(*value, out);
        } else {
            out.resize(out.size() + columns("").size());
        }
    }
    static Result<std::optional<T>> read(CellReader& in) {
        if (in.atEmpty()) {
            in.skip(columns("").size());
            return std::optional<T>();
        }
        return Codec<T>::read(in).map([](T value) { return std::optional<T>(std::move(value)); });
    }
};

/// Ids are written by their code ("3R", "main-3", "main-3R-outer") and read back by their parser.
template <class Id, Result<Id> (*Parse)(std::string_view)> struct CodeCodec {
    static std::vector<Column> columns(std::string_view name) { return Codec<std::string>::columns(name); }
    static void write(Id value, std::vector<Cell>& out) { out.emplace_back(code(value)); }
    static Result<Id> read(CellReader& in) {
        auto text = in.text();
        if (!text) {
            return tl::unexpected(text.error());
        }
        auto value = Parse(*text);
        return value ? value : in.refuseLast(value.error().sentence);
    }
};
template <> struct Codec<Position> : CodeCodec<Position, parsePosition> {};
template <> struct Codec<JournalId> : CodeCodec<JournalId, parseJournal> {};
template <> struct Codec<FastenerId> : CodeCodec<FastenerId, parseFastener> {};

template <> struct Codec<Date> {
    static std::vector<Column> columns(std::string_view name) { return Codec<std::string>::columns(name); }
    static void write(Date value, std::vector<Cell>& out) { out.emplace_back(format(value)); }
    static Result<Date> read(CellReader& in) {
        auto text = in.text();
        if (!text) {
            return tl::unexpected(text.error());
        }
        auto value = parseDate(*text);
        return value ? value : in.refuseLast(value.error().sentence);
    }
};

/// A list of names in one text column, parted by single spaces: "S014 S022". Names hold no spaces.
struct NameList {
    std::vector<std::string> names;
    friend bool operator==(const NameList&, const NameList&) = default;
};
template <> struct Codec<NameList> {
    static std::vector<Column> columns(std::string_view name) { return Codec<std::string>::columns(name); }
    static void write(const NameList& value, std::vector<Cell>& out);
    static Result<NameList> read(CellReader& in);
};

} // namespace caprail
