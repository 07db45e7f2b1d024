// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Invented entries and small helpers that the tests of the store share.
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <ledger/entry.h>
#include <sqlite3.h>
#include <store/file/record_file.h>
#include <string>

namespace caprail::samples {

/// A folder that goes away with the test.
class Folder {
public:
    Folder() {
        std::string name = (std::filesystem::temp_directory_path() / "caprail-store-XXXXXX").string();
        m_path = ::mkdtemp(name.data());
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(m_path, ignored);
    }
    [[nodiscard]] std::string operator/(const std::string& name) const { return (m_path / name).string(); }
    [[nodiscard]] std::string path() const { return m_path.string(); }
    /// How many files lie in it, hidden ones too.
    [[nodiscard]] std::ptrdiff_t count() const {
        return std::distance(std::filesystem::directory_iterator(m_path), std::filesystem::directory_iterator());
    }

private:
    std::filesystem::path m_path;
};

inline constexpr UtcTime morning{1'777'887'000'000};

inline Body gap(int cap, Side side, std::int64_t tenthsOfThou) {
    return GapReading{{cap, side}, 1, {tenths(tenthsOfThou), std::to_string(tenthsOfThou) + "e-4"}, "FEELER-1"};
}

/// One entry of every kind, each with its optional fields filled or left out by `filled`.
inline std::vector<Body> oneOfEach(bool filled) {
    std::vector<Body> all;
    for (std::size_t kind = 0; kind < allKinds().size(); ++kind) {
        std::vector<Cell> cells;
        const KindInfo& info = allKinds()[kind];
        for (const Column& column : info.columns) {
            const std::string& name = column.name;
            const auto is = [&](auto... names) { return ((name == names) || ...); };
            if (column.optional && !filled) {
                cells.emplace_back();
            } else if (!column.words.empty()) {
                cells.emplace_back(std::string(column.words.back()));
            } else if (column.type == Column::Type::integer) {
                cells.emplace_back(std::int64_t{1});
            } else if (is("position")) {
                cells.emplace_back(std::string("3R"));
            } else if (is("journal")) {
                cells.emplace_back(std::string("main-3"));
            } else if (is("fastener")) {
                cells.emplace_back(std::string("main-3R"));
            } else if (is("calibrated", "due", "machined_on", "date", "valid_from", "valid_until")) {
                cells.emplace_back(std::string("2026-02-28"));
            } else if (is("taken")) {
                cells.emplace_back(std::string("2026-02-28T14:05:06"));
            } else if (is("sha256")) {
                cells.emplace_back(sha256Hex("x"));
            } else {
                cells.emplace_back(std::string("it's “quoted”, \\ and, longer;é"));
            }
        }
        auto body = bodyFrom(kind, cells);
        if (body) {
            all.push_back(std::move(*body));
            continue;
        }
        // Lists of names stand in some texts: try again with names for them.
        for (auto& cell : cells) {
            if (auto* text = std::get_if<std::string>(&cell); text != nullptr && text->starts_with("it's")) {
                *text = "S014 S022";
            }
        }
        body = bodyFrom(kind, cells);
        EXPECT_TRUE(body) << info.kind << ": " << (body ? "" : body.error().sentence);
        if (body) {
            all.push_back(std::move(*body));
        }
    }
    return all;
}

/// A record in `path` with `count` gap readings, closed again.
inline void makeRecord(const std::string& path, int count) {
    auto file = RecordFile::create(path);
    ASSERT_TRUE(file) << file.error().sentence;
    for (int i = 0; i < count; ++i) {
        auto sequence =
            file->append(UtcTime{morning.milliseconds + i * 1000}, "Ann", gap(1 + i % 5, Side::right, 500 + i));
        ASSERT_TRUE(sequence) << sequence.error().sentence;
        ASSERT_EQ(*sequence, i + 1);
    }
}

inline std::string read(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline void write(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

/// Runs SQL as anyone with the sqlite3 shell could; gives the first column of the first row, or SQLite's message.
inline std::string shell(const std::string& path, const std::string& sql) {
    sqlite3* db = nullptr;
    std::string answer;
    sqlite3_open_v2(path.c_str(), &db, SQLITE_OPEN_READWRITE, nullptr);
    char* message = nullptr;
    const auto keepFirst = [](void* out, int, char** values, char**) {
        auto& text = *static_cast<std::string*>(out);
        if (text.empty() && values[0] != nullptr) {
            text = values[0];
        }
        return 0;
    };
    if (sqlite3_exec(db, sql.c_str(), keepFirst, &answer, &message) != SQLITE_OK) {
        answer = message == nullptr ? "error" : message;
        sqlite3_free(message);
    }
    sqlite3_close(db);
    return answer;
}

} // namespace caprail::samples
