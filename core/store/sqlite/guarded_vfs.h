// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace caprail {

/// The file system layers that records are opened through: SQLite's default one, less what a record never needs. They
/// are the net below `lookBeside`, for what appears while a record is open:
/// - no super-journal is opened, so none is deleted, and no write-ahead file is;
/// - a journal that is a link, pipe, device or folder is not opened;
/// - `guardedVfs` plays no journal back: that fails with SQLITE_READONLY_ROLLBACK, as it does when reading only. Only
///   `recoveringVfs` does, for a journal that was judged before (store/cut_off.h).
/// They are registered when first asked for. To be named in each sqlite3_open_v2.
const char* guardedVfs();
const char* recoveringVfs();

} // namespace caprail
