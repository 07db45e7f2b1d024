// SPDX-License-Identifier: GPL-3.0-or-later
#include <catalogue/sql_problem.h>

#include <QString>
#include <algorithm>
#include <array>
#include <base/say.h>

namespace caprail {

namespace {

/// What the database itself said, on one line, without its code behind it.
std::string detailOf(const QSqlError& error) {
    QString text = error.databaseText().isEmpty() ? error.driverText() : error.databaseText();
    text = text.section(QLatin1Char('\n'), 0, 0).trimmed();
    const qsizetype colon = text.indexOf(QLatin1String(":  ")); // "ERROR:  relation …"
    text = colon > 0 ? text.mid(colon + 3) : text;
    while (text.endsWith(QLatin1Char('.'))) {
        text.chop(1);
    }
    return text.toStdString();
}

bool isAnyOf(const std::string& code, std::initializer_list<const char*> codes) {
    return std::ranges::any_of(codes, [&](const char* one) { return code.starts_with(one); });
}

std::string serverIsAway(const DatabasePlace& place, const std::string& detail) {
    return Core::say("The database %1 does not answer (%2): check the network and the server.", place.shownAs, detail);
}

/// Codes: PostgreSQL's manual, appendix A.
SqlProblem postgresProblem(const QSqlError& error, const DatabasePlace& place, bool isAlive) {
    const std::string code = error.nativeErrorCode().toStdString();
    const std::string detail = detailOf(error);
    const std::string& name = place.shownAs;
    if (!isAlive || code.empty() || isAnyOf(code, {"08", "57P", "53300"})) {
        return {code, true, serverIsAway(place, detail)};
    }
    if (code == "57014") {
        return {code, true, Core::say("The database %1 took too long to answer: try again.", name)};
    }
    if (isAnyOf(code, {"40001", "40P01", "55P03"})) {
        return {code, true, Core::say("The database %1 was busy with the same records: try again.", name)};
    }
    if (code == "42501") {
        return {code, false,
                Core::say("The database %1 does not allow this (%2): its keeper gives the right.", name, detail)};
    }
    if (code == "25006") {
        return {code, false, Core::say("The database %1 only lets its records be read, for now or for ever.", name)};
    }
    if (isAnyOf(code, {"53100", "53200", "53400"})) {
        return {code, true, Core::say("The database %1 has no room left (%2): its keeper makes room.", name, detail)};
    }
    if (isAnyOf(code, {"42P01", "42883", "42704", "42703", "3F000"})) {
        return {code, false,
                Core::say("The database %1 has no tables for records, or other ones (%2): its keeper makes them.", name,
                          detail)};
    }
    return {code, false, Core::say("The database %1 refused: %2.", name, detail)};
}

/// Codes: “Result and Error Codes” of SQLite's documentation.
SqlProblem sqliteProblem(const QSqlError& error, const DatabasePlace& place) {
    const int primary = error.nativeErrorCode().toInt() & 0xff;
    const std::string code = std::to_string(primary);
    const std::string name = "“" + place.shownAs + "”";
    switch (primary) {
    case 5: // SQLITE_BUSY
    case 6: // SQLITE_LOCKED
        return {code, true, Core::say("%1 is in use by another program: try again.", name)};
    case 7: // SQLITE_NOMEM
        return {code, true, Core::say("%1 cannot be used for want of memory: close other programs.", name)};
    case 8: // SQLITE_READONLY
        return {code, false, Core::say("%1 may not be written: check its rights.", name)};
    case 10: // SQLITE_IOERR
    case 14: // SQLITE_CANTOPEN
        return {code, true, Core::say("%1 cannot be opened, read or written: check its disk and its rights.", name)};
    case 13: // SQLITE_FULL
        return {code, true, Core::say("%1 cannot be written, since the disk is full: make room.", name)};
    case 11: // SQLITE_CORRUPT
    case 26: // SQLITE_NOTADB
        return {code, false, Core::say("%1 is damaged.", name)};
    default:
        return {code, false, Core::say("%1 cannot be used: %2.", name, detailOf(error))};
    }
}

} // namespace

SqlProblem statementProblem(const QSqlError& error, const DatabasePlace& place, bool isAlive) {
    return place.kind == DatabasePlace::Kind::postgres ? postgresProblem(error, place, isAlive)
                                                       : sqliteProblem(error, place);
}

SqlProblem openingProblem(const QSqlError& error, const DatabasePlace& place) {
    if (place.kind == DatabasePlace::Kind::sqlite) {
        return sqliteProblem(error, place);
    }
    // libpq gives no code here. A server that answered and refused says FATAL; of those, the ones that pass are known.
    const QString all = error.databaseText();
    const auto holds = [&](std::initializer_list<const char*> words) {
        return std::ranges::any_of(
            words, [&](const char* word) { return all.contains(QLatin1String(word), Qt::CaseInsensitive); });
    };
    const bool passes = holds({"starting up", "shutting down", "too many", "remaining connection slots", "recovery"});
    std::string detail = all.trimmed().section(QLatin1Char('\n'), -1).trimmed().toStdString();
    if (detail.ends_with('.')) {
        detail.pop_back();
    }
    if (!passes && holds({"FATAL", "certificate", "SSL", "password", "definition of service", "service file", "invalid",
                          "missing"})) {
        return {"", false, Core::say("The database %1 lets nobody in like this: %2.", place.shownAs, detail)};
    }
    return {"", true, serverIsAway(place, detail)};
}

SqlProblem driverProblem(const DatabasePlace& place) {
    return {"", false,
            place.kind == DatabasePlace::Kind::postgres
                ? Core::say("This computer cannot speak with PostgreSQL: install the Debian package libqt6sql6-psql.")
                : Core::say("This computer cannot keep an index: install the Debian package libqt6sql6-sqlite.")};
}

} // namespace caprail
