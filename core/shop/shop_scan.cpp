// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/shop_scan.h>

#include <algorithm>
#include <array>
#include <climits>
#include <cstdlib>
#include <filesystem>
#include <base/say.h>
#include <unordered_set>

namespace caprail {

namespace {

/// Files of one transaction. Small enough that another window waits no longer than it takes to notice.
constexpr std::size_t summaryChunk = 256;
constexpr std::size_t assessChunk = 24;

/// Looks at some files, one after another; the findings stand in the files' order. Several threads would not be faster:
/// SQLite counts its memory under one lock for the whole program, as its heap limit (store/defences.h) needs.
template <class Read>
std::vector<FileFinding> readThem(const std::string& root, const std::vector<FoundFile>& files, const Read& readOne,
                                   const std::stop_token& stop) {
    std::vector<FileFinding> findings(files.size());
    for (std::size_t i = 0; i < files.size() && !stop.stop_requested(); ++i) {
        findings[i] = readOne(root + "/" + files[i].path);
    }
    return findings;
}

std::string summaryWords(const RecordSummary& s) {
    return s.customer + "\n" + s.engine + "\n" + s.serial + "\n" + s.who;
}

bool isBelow(std::string_view path, std::string_view folder) {
    return folder.empty() || (path.starts_with(folder) && path.size() > folder.size() && path[folder.size()] == '/');
}

} // namespace

void ShopScan::know(const ShopRow& row) {
    m_known.insert_or_assign(row.file.path, Known{row.id, row.file, row.reading, row.summary.lastEntry});
}

Result<void> ShopScan::load(const ScanEvents& events) {
    auto rows = m_index.rows();
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    m_known.clear();
    m_known.reserve(rows->size());
    for (const ShopRow& row : *rows) {
        know(row);
    }
    if (events.rows && !rows->empty()) {
        events.rows(std::move(*rows));
    }
    return {};
}

Result<void> ShopScan::forgetGone(const FolderWalk& walk, const ScanEvents& events) {
    std::unordered_set<std::string_view> there;
    for (const FoundFile& file : walk.files) {
        there.insert(file.path);
    }
    std::vector<std::int64_t> ids;
    for (const auto& [path, row] : m_known) {
        const bool isUnread = std::ranges::any_of(
            walk.unread, [&path = path](const UnreadFolder& folder) { return isBelow(path, folder.path); });
        if (!isUnread && !there.contains(path)) {
            ids.push_back(row.id);
        }
    }
    if (ids.empty()) {
        return {};
    }
    auto done = m_index.together([&]() -> Result<void> {
        for (const std::int64_t id : ids) {
            if (auto removed = m_index.remove(id); !removed) {
                return removed;
            }
        }
        return {};
    });
    if (!done) {
        return done;
    }
    const std::unordered_set<std::int64_t> gone(ids.begin(), ids.end());
    std::erase_if(m_known, [&](const auto& known) { return gone.contains(known.second.id); });
    if (events.gone) {
        events.gone(std::move(ids));
    }
    return {};
}

/// Another window may have read the very same state of a file meanwhile.
Result<bool> ShopScan::takeFromIndex(const FoundFile& file, ScanProgress::Step step, std::vector<ShopRow>& rows) {
    auto row = m_index.find(file.path);
    if (!row) {
        return tl::unexpected(row.error());
    }
    const bool isEnough = *row && (*row)->file == file &&
                          ((*row)->reading == FileReading::assessed ||
                           (step == ScanProgress::Step::summarising && (*row)->reading == FileReading::summarised));
    if (isEnough) {
        know(**row);
        rows.push_back(std::move(**row));
    }
    return isEnough;
}

Result<std::size_t> ShopScan::readAll(std::vector<FoundFile> files, const ReadOne& readOne, std::size_t chunk,
                                      ScanProgress::Step step, const std::stop_token& stop, const ScanEvents& events) {
    std::size_t read = 0;
    for (std::size_t at = 0; at < files.size() && !stop.stop_requested(); at += chunk) {
        if (events.progress) {
            events.progress({step, at, files.size()});
        }
        std::vector<FoundFile> wanted;
        std::vector<ShopRow> rows;
        for (std::size_t i = at; i < std::min(files.size(), at + chunk); ++i) {
            const auto isTaken = takeFromIndex(files[i], step, rows);
            if (!isTaken) {
                return tl::unexpected(isTaken.error());
            }
            if (!*isTaken) {
                wanted.push_back(files[i]);
            }
        }
        std::vector<FileFinding> findings = readThem(m_root, wanted, readOne, stop);
        if (stop.stop_requested()) {
            break;
        }
        auto stored = m_index.together([&]() -> Result<void> {
            for (std::size_t i = 0; i < wanted.size(); ++i) {
                RecordDigest& d = findings[i].digest;
                ShopRow row{0, wanted[i], findings[i].reading, std::move(findings[i].sentence), std::move(d.summary)};
                const std::string words = d.words.empty() ? summaryWords(row.summary) : std::move(d.words);
                if (auto put = m_index.put(row, words, d.figures); !put) {
                    return put;
                }
                rows.push_back(std::move(row));
            }
            return {};
        });
        if (!stored) {
            return tl::unexpected(stored.error());
        }
        read += wanted.size();
        for (const ShopRow& row : rows) {
            know(row);
        }
        if (events.rows) {
            events.rows(std::move(rows));
        }
    }
    return read;
}

Result<ScanReport> ShopScan::run(const std::stop_token& stop, const ScanEvents& events) {
    ScanReport report;
    if (events.progress) {
        events.progress({ScanProgress::Step::finding, 0, 0});
    }
    auto walk = walkFolder(m_root, stop, [&](std::size_t count) {
        if (events.progress) {
            events.progress({ScanProgress::Step::finding, count, 0});
        }
    });
    if (!walk) {
        report.rootProblem = walk.error().sentence;
        report.isWhole = false;
        return report;
    }
    report.unread = walk->unread;
    report.folders = walk->folders;
    report.files = walk->files.size();
    if (!walk->isWhole) {
        report.isWhole = false;
        return report;
    }
    if (auto done = forgetGone(*walk, events); !done) {
        return tl::unexpected(done.error());
    }
    std::vector<FoundFile> changed;
    for (const FoundFile& file : walk->files) {
        const auto known = m_known.find(file.path);
        const bool isAsBefore = known != m_known.end() && known->second.file == file &&
                                known->second.reading != FileReading::beingWritten &&
                                known->second.reading != FileReading::unreadable;
        if (!isAsBefore) {
            changed.push_back(file);
        }
    }
    RecordReader reader; // it goes with this scan, so that no file of the folder stays open
    const ReadOne summaries = [&](const std::string& path) { return reader.readSummary(path); };
    const auto summarised =
        readAll(std::move(changed), summaries, summaryChunk, ScanProgress::Step::summarising, stop, events);
    if (!summarised) {
        return tl::unexpected(summarised.error());
    }
    report.summarised = *summarised;
    // What was worked on last is read first: it is what a person looks for.
    std::vector<const Known*> waiting;
    for (const auto& [path, row] : m_known) {
        if (row.reading == FileReading::summarised) {
            waiting.push_back(&row);
        }
    }
    std::ranges::sort(waiting, std::greater<>(), &Known::lastEntry);
    std::vector<FoundFile> files;
    for (const Known* known : waiting) {
        files.push_back(known->file);
    }
    const ReadOne whole = [&](const std::string& path) { return reader.readWhole(path); };
    const auto assessed = readAll(std::move(files), whole, assessChunk, ScanProgress::Step::assessing, stop, events);
    if (!assessed) {
        return tl::unexpected(assessed.error());
    }
    report.assessed = *assessed;
    report.isWhole = !stop.stop_requested();
    return report;
}

Result<std::string> realFolder(const std::string& folder) {
    std::array<char, PATH_MAX> real{};
    std::error_code error;
    if (::realpath(folder.c_str(), real.data()) == nullptr || !std::filesystem::is_directory(real.data(), error)) {
        return refuse(
            Core::say("%1 is not a folder that can be read: check its name, or whether its disk or share is connected.",
                      inQuotes(plainLine(folder))));
    }
    return std::string(real.data());
}

Result<ShopListing> listShop(const std::string& cacheFolder, const std::string& root, std::string_view search) {
    const auto real = realFolder(root);
    if (!real) {
        return tl::unexpected(real.error());
    }
    Result<ScanReport> report = refuse("");
    // An index that cannot be kept, or fails twice in its place, is made in memory: the list needs no cache.
    constexpr int lastAttempt = 3;
    bool isKept = true;
    for (int attempt = 1; attempt <= lastAttempt && !report; ++attempt) {
        auto index = isKept && attempt < lastAttempt ? ShopIndex::open(cacheFolder, *real) : ShopIndex::inMemory(*real);
        if (!index && isKept) {
            isKept = false;
            continue;
        }
        if (!index) {
            return tl::unexpected(index.error());
        }
        ShopScan scan(*index, *real);
        auto loaded = index->verify();
        loaded = loaded ? scan.load({}) : loaded;
        if (loaded) {
            report = scan.run({}, {});
        } else {
            report = tl::unexpected(loaded.error());
        }
        if (!report) {
            if (isKept) {
                ShopIndex::discard(cacheFolder, *real);
            }
            continue;
        }
        auto rows = index->rows();
        if (!rows) {
            return tl::unexpected(rows.error());
        }
        if (!report->rootProblem.empty()) {
            return refuse(report->rootProblem);
        }
        if (!search.empty()) {
            const auto ids = index->search(search);
            if (!ids) {
                return tl::unexpected(ids.error());
            }
            const std::unordered_set<std::int64_t> found(ids->begin(), ids->end());
            std::erase_if(*rows, [&](const ShopRow& row) { return !found.contains(row.id); });
        }
        std::ranges::sort(*rows, std::greater<>(), [](const ShopRow& row) { return row.summary.lastEntry; });
        return ShopListing{std::move(*rows), std::move(*report)};
    }
    return tl::unexpected(report.error());
}

} // namespace caprail
