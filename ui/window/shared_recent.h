// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

namespace caprail {

/// Notes a record in the list of recently used files that the desktop's programs share (the freedesktop “Desktop
/// Bookmarks” file, recently-used.xbel in the user's data folder). A list that cannot be read or written is left as it is:
/// it is a convenience of the desktop's.
void noteInSharedRecent(const QString& path);

} // namespace caprail
