// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A database of its own on the server that `tests/core/shopserver/server` started: made for one test, and gone with
/// it.
#include <atomic>
#include <catalogue/connection.h>
#include <cstdlib>
#include <fstream>
#include <gtest/gtest.h>
#include <unistd.h>

namespace caprail::servertest {

/// Where the server's socket lies, or why there is none.
struct ServerNote {
    std::string folder;
    std::string sentence = "No server is tried: CAPRAIL_TEST_SERVER names no note of tests/core/shopserver/server.";
};
inline ServerNote serverNote() {
    ServerNote note;
    const char* path = std::getenv("CAPRAIL_TEST_SERVER");
    std::ifstream in(path == nullptr ? "" : path);
    for (std::string word, rest; in >> word && std::getline(in >> std::ws, rest);) {
        (word == "folder" ? note.folder : note.sentence) = rest;
    }
    return note;
}

/// A fixture with an empty database, and the names of logins that have one role each.
class OnAServer : public testing::Test {
protected:
    void SetUp() override {
        const ServerNote note = serverNote();
        if (note.folder.empty()) {
            GTEST_SKIP() << note.sentence;
        }
        m_folder = note.folder;
        static std::atomic<int> count = 0;
        m_name = "t" + std::to_string(::getpid()) + "_" + std::to_string(++count);
        Connection server = opened("postgres", "postgres");
        // Not sorted by bytes of itself: what forgets to ask for an order that both databases have is found.
        done(server.run("CREATE DATABASE " + m_name +
                        " TEMPLATE template0 LOCALE_PROVIDER icu ICU_LOCALE 'und' LOCALE 'C.UTF-8'"));
    }
    void TearDown() override {
        if (!m_name.empty()) {
            Connection server = opened("postgres", "postgres");
            done(server.run("DROP DATABASE " + m_name + " WITH (FORCE)"));
        }
    }

    static void done(const Result<void>& result) { ASSERT_TRUE(result) << result.error().sentence; }
    /// The name of this test's database, as a person gives it.
    [[nodiscard]] std::string service(const std::string& login, const std::string& more = {}) const {
        return "host=" + m_folder + " dbname=" + m_name + " user=" + login + more;
    }
    /// Logins exist once roles do: "bench_1", "reader_1", "keeper_1", and "postgres", who may do everything.
    [[nodiscard]] Connection as(const std::string& login) const { return opened(m_name, login); }
    /// For the logins.
    void makeLogins() {
        Connection owner = as("postgres");
        for (const char* role : {"bench", "reader", "keeper"}) {
            const std::string login = std::string(role) + "_1";
            done(owner.run("DO $$ BEGIN CREATE ROLE " + login + " LOGIN IN ROLE caprail_" + role +
                           "; EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; END $$"));
        }
    }
    /// Ends what a login has open on this test's database. Logins are those of the whole server, and other tests use them.
    void cutOff(const std::string& login) {
        done(as("postgres").run("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = "
                                "current_database() AND usename = '" +
                                login + "'"));
    }
    /// Whether this test's database takes connections of others than `postgres`.
    void takeConnections(bool taken) {
        done(as("postgres").run("ALTER DATABASE " + m_name + " CONNECTION LIMIT " + (taken ? "-1" : "0")));
    }
    [[nodiscard]] const std::string& name() const { return m_name; }

private:
    [[nodiscard]] Connection opened(const std::string& database, const std::string& login) const {
        auto place = parseService("host=" + m_folder + " dbname=" + database + " user=" + login);
        EXPECT_TRUE(place) << place.error().sentence;
        Connection connection(*place);
        const auto open = connection.open();
        EXPECT_TRUE(open) << open.error().sentence;
        return connection;
    }
    std::string m_folder, m_name;
};

} // namespace caprail::servertest
