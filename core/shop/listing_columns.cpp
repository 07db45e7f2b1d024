// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/listing_columns.h>

#include <array>
#include <base/say.h>
#include <shop/listing_line.h>
#include <shop/numbered.h>

namespace caprail {

namespace {

enum class ColumnType { bytes, text, integer };

struct FileColumn {
    std::string_view name;
    ColumnType type;
    std::string_view constraint;
};
// What is known of the file itself; the fields of the summary follow (record_summary.h).
constexpr FileColumn fileColumns[] = {{"path", ColumnType::bytes, " NOT NULL UNIQUE"},
                                      {"size", ColumnType::integer, ""},
                                      {"modified", ColumnType::integer, ""},
                                      {"changed", ColumnType::integer, ""},
                                      {"inode", ColumnType::integer, ""},
                                      {"reading", ColumnType::integer, ""},
                                      {"sentence", ColumnType::text, ""}};
constexpr int firstField = 1 + static_cast<int>(std::size(fileColumns)); // behind the id

/// How a field of the summary is kept in a column.
constexpr ColumnType typeOf(const std::string*) {
    return ColumnType::text;
}
constexpr ColumnType typeOf(const void*) {
    return ColumnType::integer;
}

void bindField(Query& put, int at, const std::string& value) {
    put.bind(at, std::string_view(value));
}
void bindField(Query& put, int at, std::int64_t value) {
    put.bind(at, value);
}
void bindField(Query& put, int at, UtcTime value) {
    put.bind(at, value.milliseconds);
}
void bindField(Query& put, int at, const std::optional<Date>& value) {
    if (value) {
        put.bind(at, value->days);
    } else {
        put.bindNull(at);
    }
}
template <Worded E> void bindField(Query& put, int at, E value) {
    put.bind(at, static_cast<std::int64_t>(value));
}

/// Reads a field; false when it holds what nobody wrote there.
bool readField(const Query& row, int column, std::string& value) {
    value = row.text(column);
    return true;
}
bool readField(const Query& row, int column, std::int64_t& value) {
    value = row.integer(column);
    return true;
}
bool readField(const Query& row, int column, UtcTime& value) {
    value = {row.integer(column)};
    return true;
}
bool readField(const Query& row, int column, std::optional<Date>& value) {
    value = row.isNull(column) ? std::nullopt : std::optional(Date{row.integer(column)});
    return true;
}
template <Worded E> bool readField(const Query& row, int column, E& value) {
    const auto read = numbered<E>(row.integer(column));
    value = read.value_or(value);
    return read.has_value();
}

/// Every column but the id, one after the other, each as `say(name, type, constraint)` writes it.
template <class Say> std::string eachColumn(Say say) {
    std::string text;
    const auto add = [&](std::string_view name, ColumnType type, std::string_view constraint) {
        text += (text.empty() ? "" : ", ") + say(std::string(name), type, std::string(constraint));
    };
    for (const auto& [name, type, constraint] : fileColumns) {
        add(name, type, constraint);
    }
    eachSummaryField([&](const auto& column) {
        using Member = std::remove_cvref_t<decltype(std::declval<RecordSummary>().*column.member)>;
        add(column.name, typeOf(static_cast<const Member*>(nullptr)), "");
    });
    return text;
}

} // namespace

std::string listingDeclared(const Dialect& dialect) {
    return eachColumn([&](const std::string& name, ColumnType type, const std::string& constraint) {
        const std::string_view word = type == ColumnType::bytes  ? dialect.bytes
                                      : type == ColumnType::text ? dialect.text
                                                                 : dialect.integer;
        return name + " " + std::string(word) + constraint;
    });
}

std::string listingSelected(const Dialect& dialect) {
    return "listing.id, " + eachColumn([&](const std::string& name, ColumnType type, const std::string&) {
               return type == ColumnType::integer ? "listing." + name : dialect.asText("listing." + name);
           });
}

std::string listingPut() {
    const auto named = [](const std::string& name, ColumnType, const std::string&) { return name; };
    const auto asked = [](const std::string&, ColumnType, const std::string&) { return std::string("?"); };
    const auto changed = [](const std::string& name, ColumnType, const std::string&) {
        return name + " = excluded." + name;
    };
    return "INSERT INTO listing(" + eachColumn(named) + ", line) VALUES(" + eachColumn(asked) +
           ", ?) ON CONFLICT(path) DO UPDATE SET " + eachColumn(changed) + ", line = excluded.line RETURNING id";
}

void bindListing(Query& put, const ShopRow& row) {
    put.bindBytes(1, row.file.path);
    int at = 2;
    for (const std::int64_t n : {row.file.size, row.file.modified, row.file.changed, row.file.inode}) {
        bindField(put, at++, n);
    }
    bindField(put, at++, row.reading);
    bindField(put, at++, row.sentence);
    eachSummaryField([&](const auto& column) { bindField(put, at++, row.summary.*column.member); });
    put.bindBytes(at, packed(row));
}

Result<ShopRow> listingFrom(const Query& row) {
    ShopRow r;
    r.id = row.integer(0);
    r.file = {row.text(1), row.integer(2), row.integer(3), row.integer(4), row.integer(5)};
    bool isWhole = readField(row, 6, r.reading) && readField(row, 7, r.sentence);
    int column = firstField;
    eachSummaryField(
        [&](const auto& described) { isWhole = readField(row, column++, r.summary.*described.member) && isWhole; });
    return isWhole ? Result<ShopRow>(std::move(r)) : strangeRow();
}

tl::unexpected<Problem> strangeRow() {
    return refuse(Core::say("The list of records holds a row that no program of this version wrote."));
}

} // namespace caprail
