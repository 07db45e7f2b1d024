// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <sys/types.h>
#include <base/problem.h>

namespace caprail {

/// Who may use a file that is made. While it is being made, only its owner may (0600).
///
/// A new file of a customer's data: what the folder says, where it says something (it has a default access list, as
/// `setfacl -d` gives it); else owner and group as the user's umask says, and others nothing (0640 for most). The group
/// is the folder's where the folder hands its own down (set-group-ID), else the user's.
///
/// A copy or a replacement: mode, group and access list of what it is made from (and its owner may always write it: one
/// works in the copy of a record that may only be read). Where the group cannot be given (the
/// user is not in it), the group that the file has instead gets no rights.
///
/// On a disk that knows no permissions (a stick) none of this does anything.
class FileMode {
public:
    /// For a new file or folder, given what the system just made at `path` with all rights asked for (0666, 0777).
    static FileMode ofNew(const std::string& path);
    /// As the file at `path` has it; refuses when that cannot be looked at.
    static Result<FileMode> like(const std::string& path);
    /// Takes group's and others' rights away until `giveTo`.
    static void hide(const std::string& path);
    /// Refuses, with the reason, when the disk does not take it.
    [[nodiscard]] Result<void> giveTo(const std::string& path) const;

private:
    mode_t m_mode = 0600;
    bool m_isCopy = false;
    gid_t m_group = 0;
    std::string m_accessList; ///< the bytes of the attribute; of a copy alone
};

} // namespace caprail
