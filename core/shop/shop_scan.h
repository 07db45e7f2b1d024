// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shop/shop_index.h>
#include <unordered_map>

namespace caprail {

/// How far a scan is: first every file is found, then each new or changed one's last entry is read, then read as a whole.
struct ScanProgress {
    enum class Step { finding, summarising, assessing } step = Step::finding;
    std::size_t done = 0;
    std::size_t total = 0; ///< 0 while it is not known
};

/// What a scan tells while it runs, on its own thread. Rows are new or changed; gone ones are named by id.
struct ScanEvents {
    std::function<void(std::vector<ShopRow> rows)> rows;
    std::function<void(std::vector<std::int64_t> ids)> gone;
    std::function<void(const ScanProgress&)> progress;
};

struct ScanReport {
    bool isWhole = true;              ///< false: it was stopped
    std::string rootProblem;          ///< why the folder itself could not be read; what is known of it stays listed
    std::vector<UnreadFolder> unread; ///< folders in it that could not be read
    std::vector<std::string> folders; ///< that were read, below the root
    std::size_t files = 0;
    std::size_t summarised = 0, assessed = 0; ///< files that were read in this scan
};

/// Brings a list of a folder's records up to date, through an index. Files are read without a trace (record_reader.h);
/// what has not changed is not read again. One object serves one folder for as long
/// as it is shown; it may be asked to scan again and again, by one thread at a time.
class ShopScan {
public:
    /// `root` is the folder's real path; both must outlive the scan.
    ShopScan(ShopIndex& index, std::string root) : m_index(index), m_root(std::move(root)) {}

    /// What the index knows, without a look at the folder; told as rows too.
    Result<void> load(const ScanEvents& events);
    /// Refuses only when the index fails: it should then be discarded and made anew.
    Result<ScanReport> run(const std::stop_token& stop, const ScanEvents& events);

private:
    Result<void> forgetGone(const FolderWalk& walk, const ScanEvents& events);
    using ReadOne = std::function<FileFinding(const std::string& path)>;
    Result<std::size_t> readAll(std::vector<FoundFile> files, const ReadOne& readOne, std::size_t chunk,
                                ScanProgress::Step step, const std::stop_token& stop, const ScanEvents& events);
    Result<bool> takeFromIndex(const FoundFile& file, ScanProgress::Step step, std::vector<ShopRow>& rows);

    ShopIndex& m_index;
    std::string m_root;
    /// What the list shows of a path.
    struct Known {
        std::int64_t id = 0;
        FoundFile file;
        FileReading reading = FileReading::summarised;
        UtcTime lastEntry;
    };
    void know(const ShopRow& row);
    std::unordered_map<std::string, Known> m_known;
};

/// A whole list at once, for the command line: opens the index (or works without one kept, when the cache cannot be
/// written), scans, and gives rows sorted by last entry, newest first.
struct ShopListing {
    std::vector<ShopRow> rows;
    ScanReport report;
};
Result<ShopListing> listShop(const std::string& cacheFolder, const std::string& root, std::string_view search = {});

/// The real path of a folder, as bytes; refuses what is no folder that can be read.
Result<std::string> realFolder(const std::string& folder);

} // namespace caprail
