// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The calls to the system that the store makes itself, beside those of SQLite: open, fsync, chmod, rename and link.
/// The linker puts ours in their place (ld's --wrap), so that the n-th of them can fail.
namespace caprail::samples {

struct FaultyCalls {
    /// The `n`-th call from now fails with EIO (from 1); 0: none does.
    static void failAt(int n);
    static bool hasFailed();
};

} // namespace caprail::samples
