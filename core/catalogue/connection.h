// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// A connection to a database and its prepared statements, over Qt Sql; no type of Qt Sql is seen outside this folder.
/// Everything that goes wrong comes back as one sentence that names the place and says what to do.
#include <catalogue/dialect.h>
#include <chrono>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>

namespace caprail {

class Connection;

/// A statement, prepared once. It belongs to its connection and must not outlive it. Rows come one at a time, forward
/// only; until they are read to the end, or `reset`, the connection takes no other statement (PostgreSQL sends them as
/// they are asked for, so that a long answer needs no memory).
class Query {
public:
    Query(Query&&) noexcept;
    Query& operator=(Query&&) noexcept;
    ~Query();

    /// Values by position, the first is 1; they stay for the next run. What is given is copied.
    void bind(int at, std::int64_t value);
    void bind(int at, std::string_view text); ///< UTF-8
    void bindBytes(int at, std::string_view bytes);
    void bindNull(int at);

    /// Runs up to the next row: true when there is one, false when it is done.
    Result<bool> step();
    /// Runs to the end: for statements whose rows are of no interest.
    Result<void> run();
    /// Calls `take` for each row; ends early, and refuses, where it does.
    Result<void> each(const std::function<Result<void>(const Query& row)>& take);
    /// Lets go of rows that were not read.
    void reset();

    /// Of the present row; columns count from 0.
    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] std::string bytes(int column) const;

private:
    friend class Connection;
    struct State;
    explicit Query(std::unique_ptr<State> state);
    std::unique_ptr<State> m_state;
};

/// One connection. It belongs to the thread that opened it.
class Connection {
public:
    explicit Connection(DatabasePlace place);
    Connection(Connection&&) noexcept;
    Connection& operator=(Connection&&) noexcept;
    ~Connection();

    /// Opens it, or opens it again after it was lost; queries of before are of no use then. On PostgreSQL, names
    /// without a schema are those of the schema `caprail`, and moments are UTC. Refuses when the driver is not
    /// installed, the server is away, or does not let this user in.
    Result<void> open();
    [[nodiscard]] bool isOpen() const;
    /// Statements that take longer are called off by the server; zero: none are. SQLite takes no notice.
    Result<void> limitTo(std::chrono::milliseconds patience);

    /// Placeholders are `?`. On SQLite the statement is checked here, on PostgreSQL the server is asked.
    Result<Query> prepare(std::string_view sql);
    /// A statement that is kept, prepared the first time that it is asked for.
    Result<Query*> ready(std::optional<Query>& kept, std::string_view sql);
    /// Runs one statement that gives no rows.
    Result<void> run(std::string_view sql);
    /// The first column of the first row; refuses when there is none.
    Result<std::int64_t> integer(std::string_view sql);
    Result<std::string> text(std::string_view sql);
    /// Runs `change` in one transaction; undone when it refuses.
    Result<void> together(const std::function<Result<void>()>& change);

    /// Whether the last refusal came of a server or disk that did not answer, or was busy: the same may succeed later,
    /// after `open` where `isOpen` is false.
    [[nodiscard]] bool isOffline() const;
    /// The last refusal's code: SQLSTATE ("23505") or SQLite's number; empty where there is none.
    [[nodiscard]] const std::string& lastCode() const;

    [[nodiscard]] const DatabasePlace& place() const;
    [[nodiscard]] const Dialect& dialect() const { return dialectOf(place().kind); }

private:
    friend class Query;
    struct State;
    std::unique_ptr<State> m_state;
};

} // namespace caprail
