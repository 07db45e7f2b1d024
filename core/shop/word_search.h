// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/connection.h>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace caprail {

/// The search of an index as somebody types: what each word of the last search found is kept, since another letter
/// changes one word of it.
class WordSearch {
public:
    explicit WordSearch(Connection& connection) : m_connection(&connection) {}
    /// Ids of the listings that hold every word of `typed`, or one that begins with it, in ascending order.
    Result<std::vector<std::int64_t>> ids(std::string_view typed);
    /// This connection has changed something.
    void forget() { m_found.clear(); }

private:
    Result<std::vector<std::int64_t>> idsWith(const std::string& word);
    Result<void> forgetWhatOthersChanged();

    Connection* m_connection;
    std::optional<Query> m_query, m_version;
    std::map<std::string, std::vector<std::int64_t>> m_found;
    std::int64_t m_foundIn = 0; ///< SQLite's data_version at that time: another one when another program has written
};

} // namespace caprail
