// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <memory>
#include <store/sqlite/database.h>

class QTemporaryDir;

namespace caprail {

/// Copies of a record and of the journal beside it, as they lie there, in a temporary folder that only this user may
/// enter (0700; the files 0600) and that goes away with this object: to find out what playing the journal back would
/// give, without a byte of the originals being changed.
class PrivateCopy {
public:
    /// Copies both while no other program can put pages in place. Refuses what cannot be read, a journal that names
    /// another file (judged on the copy, which nobody else can change), and when there is no room.
    static Result<PrivateCopy> of(const std::string& path);
    PrivateCopy(PrivateCopy&&) noexcept;
    PrivateCopy& operator=(PrivateCopy&&) noexcept;
    ~PrivateCopy();

    /// True when there was a journal that is not empty, and nobody is in the middle of a write: one was cut off.
    [[nodiscard]] bool isCutOff() const { return m_isCutOff; }
    /// The record as it lies there, half written or not; without its journal, so it can be opened.
    [[nodiscard]] std::string asFound() const;
    /// The journal as it lies there; only when a write was cut off.
    [[nodiscard]] std::string journal() const;
    /// The record as it was before the write that was cut off, as far as the journal gives it. Gives its path; refuses
    /// when there is no room for it.
    Result<std::string> playedBack();

private:
    explicit PrivateCopy(std::string path);
    Result<void> fill();
    std::string m_path;
    std::unique_ptr<QTemporaryDir> m_folder;
    bool m_isCutOff = false;
    bool m_isPlayedBack = false;
};

} // namespace caprail
