// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <gtest/gtest.h>
#include <sqlite3.h>

namespace caprail {

/// Allocations of SQLite that fail on demand: the n-th from when it was asked for.
struct FaultyMemory {
    static inline sqlite3_mem_methods real{};
    static inline int at = 0;
    static inline int calls = 0;
    static bool fails() {
        ++calls;
        return at != 0 && calls == at;
    }
    static void* allocate(int size) { return fails() ? nullptr : real.xMalloc(size); }
    static void* enlarge(void* memory, int size) { return fails() ? nullptr : real.xRealloc(memory, size); }
    /// Before SQLite is first used in this process.
    static void install() {
        sqlite3_config(SQLITE_CONFIG_GETMALLOC, &real);
        sqlite3_mem_methods methods = real;
        methods.xMalloc = allocate;
        methods.xRealloc = enlarge;
        ASSERT_EQ(sqlite3_config(SQLITE_CONFIG_MALLOC, &methods), SQLITE_OK);
    }
    static void failAt(int n) {
        at = n;
        calls = 0;
    }
};

} // namespace caprail
