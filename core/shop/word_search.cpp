// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/word_search.h>

#include <algorithm>
#include <iterator>

namespace caprail {

Result<std::vector<std::int64_t>> WordSearch::idsWith(const std::string& word) {
    const Dialect& dialect = m_connection->dialect();
    if (!m_query) {
        auto made = m_connection->prepare(dialect.found);
        if (!made) {
            return tl::unexpected(made.error());
        }
        m_query = std::move(*made);
    }
    m_query->bind(1, dialect.foundTerm(word));
    std::vector<std::int64_t> ids;
    auto more = m_query->step();
    while (more && *more) {
        ids.push_back(m_query->integer(0));
        more = m_query->step();
    }
    if (!more) {
        return tl::unexpected(more.error());
    }
    return ids; // FTS5 gives them in ascending order
}

Result<void> WordSearch::forgetWhatOthersChanged() {
    if (!m_version) {
        auto made = m_connection->prepare("PRAGMA data_version");
        if (!made) {
            return tl::unexpected(made.error());
        }
        m_version = std::move(*made);
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
