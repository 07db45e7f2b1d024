// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A PostgreSQL server for a bench, by the script that starts the one of the tests.
#include <catalogue/connection.h>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <string>
#include <unistd.h>

namespace caprail {

/// Ends the program with the sentence of what went wrong.
inline void must(const Result<void>& done) {
    if (!done) {
        std::fprintf(stderr, "%s\n", done.error().sentence.c_str());
        std::exit(1);
    }
}
/// The same, and gives the value.
template <class T> T must(Result<T> done) {
    if (!done) {
        std::fprintf(stderr, "%s\n", done.error().sentence.c_str());
        std::exit(1);
    }
    return std::move(*done);
}

/// A server of the bench's own; gone at the end of the program.
class BenchServer {
public:
    explicit BenchServer(const std::string& note) : m_note(note) {
        if (std::system((std::string(SERVER_SCRIPT) + " start " + note + " " + std::to_string(::getpid())).c_str()) !=
            0) {
            std::exit(1);
        }
        std::ifstream in(note);
        std::string word, rest;
        in >> word;
        std::getline(in >> std::ws, rest);
        if (word != "folder") {
            std::printf("%s\n", rest.c_str());
            std::exit(0);
        }
        m_folder = rest;
    }
    BenchServer(const BenchServer&) = delete;
    BenchServer& operator=(const BenchServer&) = delete;
    ~BenchServer() {
        if (std::system((std::string(SERVER_SCRIPT) + " stop " + m_note).c_str()) != 0) {
            std::fprintf(stderr, "The server of the bench may still run: see %s.\n", m_folder.c_str());
        }
    }
    [[nodiscard]] const std::string& folder() const { return m_folder; }
    [[nodiscard]] Connection open(const std::string& database) const {
        Connection connection(must(parseService("host=" + m_folder + " dbname=" + database + " user=postgres")));
        must(connection.open());
        return connection;
    }

private:
    std::string m_note, m_folder;
};

} // namespace caprail
