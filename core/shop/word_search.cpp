// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/word_search.h>

#include <algorithm>
#include <iterator>

namespace caprail {

Result<std::vector<std::int64_t>> WordSearch::idsWith(const std::string& word) {
    const Dialect& dialect = m_connection->dialect();
    const auto query = m_connection->ready(m_query, dialect.found);
    if (!query) {
        return tl::unexpected(query.error());
    }
    (*query)->bind(1, dialect.foundTerm(word));
    std::vector<std::int64_t> ids; // FTS5 gives them in ascending order
    const auto read = (*query)->each([&](const Query& row) -> Result<void> {
        ids.push_back(row.integer(0));
        return {};
    });
    return read ? Result<std::vector<std::int64_t>>(std::move(ids)) : tl::unexpected(read.error());
}

Result<void> WordSearch::forgetWhatOthersChanged() {
    if (const auto query = m_connection->ready(m_version, "PRAGMA data_version"); !query) {
        return tl::unexpected(query.error());
    }
    const auto row = m_version->step();
    if (!row) {
        return tl::unexpected(row.error());
    }
    const std::int64_t version = *row ? m_version->integer(0) : 0;
    m_version->reset();
    if (version != m_foundIn) {
        m_found.clear();
        m_foundIn = version;
    }
    return {};
}

Result<std::vector<std::int64_t>> WordSearch::ids(std::string_view typed) {
    if (auto looked = forgetWhatOthersChanged(); !looked) {
        return tl::unexpected(looked.error());
    }
    std::map<std::string, std::vector<std::int64_t>> now;
    for (const std::string& word : wordsIn(typed)) {
        if (const auto known = m_found.find(word); known != m_found.end()) {
            now.insert(m_found.extract(known));
        } else if (!now.contains(word)) {
            auto ids = idsWith(word);
            if (!ids) {
                return ids;
            }
            now.emplace(word, std::move(*ids));
        }
    }
    m_found = std::move(now);
    std::vector<std::int64_t> all;
    bool isFirst = true;
    for (const auto& [word, hits] : m_found) {
        std::vector<std::int64_t> both;
        if (isFirst) {
            both = hits;
        } else {
            std::ranges::set_intersection(all, hits, std::back_inserter(both));
        }
        all = std::move(both);
        isFirst = false;
    }
    return all;
}

} // namespace caprail
