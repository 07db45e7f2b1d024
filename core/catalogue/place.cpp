// SPDX-License-Identifier: GPL-3.0-or-later
#include <catalogue/place.h>

#include <QByteArray>
#include <algorithm>
#include <array>
#include <base/say.h>
#include <optional>
#include <utility>
#include <vector>

namespace caprail {

namespace {

using Words = std::vector<std::pair<std::string, std::string>>;

/// What PostgreSQL's manual, 34.1.2, has for the name of a database, up to version 17, but for the words that are
/// secrets. Whatever else stands there is a slip of the hand, and may be a part of a password.
constexpr std::array<std::string_view, 41> knownWords{"application_name",
                                                      "channel_binding",
                                                      "client_encoding",
                                                      "connect_timeout",
                                                      "dbname",
                                                      "fallback_application_name",
                                                      "gssdelegation",
                                                      "gssencmode",
                                                      "gsslib",
                                                      "host",
                                                      "hostaddr",
                                                      "keepalives",
                                                      "keepalives_count",
                                                      "keepalives_idle",
                                                      "keepalives_interval",
                                                      "krbsrvname",
                                                      "load_balance_hosts",
                                                      "options",
                                                      "passfile",
                                                      "port",
                                                      "replication",
                                                      "require_auth",
                                                      "requirepeer",
                                                      "requiressl",
                                                      "service",
                                                      "ssl_max_protocol_version",
                                                      "ssl_min_protocol_version",
                                                      "sslcert",
                                                      "sslcertmode",
                                                      "sslcompression",
                                                      "sslcrl",
                                                      "sslcrldir",
                                                      "sslkey",
                                                      "sslmode",
                                                      "sslnegotiation",
                                                      "sslrootcert",
                                                      "sslsni",
                                                      "target_session_attrs",
                                                      "tcp_user_timeout",
                                                      "tty",
                                                      "user"};

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    const auto last = text.find_last_not_of(" \t\r\n");
    return first == std::string_view::npos ? std::string() : std::string(text.substr(first, last - first + 1));
}

/// Percent-encoding undone (RFC 3986, 2.1).
std::string decoded(std::string_view text) {
    return QByteArray::fromPercentEncoding(QByteArray(text.data(), static_cast<qsizetype>(text.size()))).toStdString();
}

/// What stands before a sign, and takes both off `rest`; all of it when the sign is not there.
std::string_view upTo(std::string_view& rest, char sign) {
    const auto at = rest.find(sign);
    const std::string_view first = rest.substr(0, at);
    rest = at == std::string_view::npos ? std::string_view() : rest.substr(at + 1);
    return first;
}

void addHosts(std::string_view hosts, Words& words) {
    std::string names, ports;
    while (!hosts.empty()) {
        std::string_view one = upTo(hosts, ',');
        std::string_view port;
        if (one.starts_with('[')) { // an IPv6 address
            one.remove_prefix(1);
            port = one;
            one = upTo(port, ']');
            port = port.starts_with(':') ? port.substr(1) : std::string_view();
        } else if (const auto colon = one.find(':'); colon != std::string_view::npos) {
            port = one.substr(colon + 1);
            one = one.substr(0, colon);
        }
        names += (names.empty() ? "" : ",") + decoded(one);
        ports += (ports.empty() && names.find(',') == std::string::npos ? "" : ",") + decoded(port);
    }
    if (!names.empty()) {
        words.emplace_back("host", names);
    }
    if (ports.find_first_not_of(',') != std::string::npos) {
        words.emplace_back("port", ports);
    }
}

/// postgresql://[user@][host[:port],…][/database][?word=value&…] (PostgreSQL's manual, 34.1.1.2).
Words wordsOfUrl(std::string_view url) {
    Words words;
    std::string_view query = url.substr(url.find("://") + 3);
    std::string_view path = upTo(query, '?');
    std::string_view hosts = upTo(path, '/');
    if (path.find('@') !=
        std::string_view::npos) { // what stands before it is the rest of a password with a stroke in it
        return {{"password", {}}};
    }
    if (const auto at = hosts.rfind('@'); at != std::string_view::npos) {
        std::string_view password = hosts.substr(0, at);
        const std::string_view user = upTo(password, ':');
        hosts = hosts.substr(at + 1);
        words.emplace_back("user", decoded(user));
        if (!password.empty()) {
            words.emplace_back("password", decoded(password));
        }
    }
    addHosts(hosts, words);
    if (!path.empty()) {
        words.emplace_back("dbname", decoded(path));
    }
    while (!query.empty()) {
        std::string_view value = upTo(query, '&');
        const std::string_view name = upTo(value, '=');
        words.emplace_back(decoded(name), decoded(value));
    }
    return words;
}

/// word = value, where a value may stand in apostrophes and a backslash takes the next sign as it is (34.1.1.1).
std::optional<Words> wordsOfString(std::string_view text) {
    Words words;
    while (!trimmed(text).empty()) {
        const bool hasValue = text.find('=') != std::string_view::npos;
        const std::string name = trimmed(upTo(text, '='));
        text.remove_prefix(std::min(text.find_first_not_of(" \t"), text.size()));
        const bool isQuoted = text.starts_with('\'');
        text.remove_prefix(isQuoted ? 1 : 0);
        std::string value;
        bool isClosed = !isQuoted;
        while (!text.empty()) {
            char sign = text.front();
            text.remove_prefix(1);
            if (isQuoted ? sign == '\'' : sign == ' ' || sign == '\t') {
                isClosed = true;
                break;
            }
            if (sign == '\\' && !text.empty()) {
                sign = text.front();
                text.remove_prefix(1);
            }
            value += sign;
        }
        if (!hasValue || name.empty() || name.find_first_of(" \t'") != std::string::npos || !isClosed) {
            return std::nullopt;
        }
        words.emplace_back(name, value);
    }
    return words;
}

std::string inApostrophes(const std::string& value) {
    std::string quoted = "'";
    for (const char sign : value) {
        quoted += sign == '\'' || sign == '\\' ? "\\" : "";
        quoted += sign;
    }
    return quoted + "'";
}

bool isServiceName(std::string_view text) {
    return std::ranges::all_of(text, [](unsigned char c) {
        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '-' || c == '_' ||
               c == '.' || c >= 0x80;
    });
}

/// No refusal says again what was typed: it may hold a password.
tl::unexpected<Problem> namesNone() {
    return refuse(Core::say("This names no database: give a service of ~/.pg_service.conf, or a URL such as "
                            "postgresql://bench@server/caprail."));
}

Result<Words> wordsOf(const std::string& name) {
    const auto scheme = name.find("://");
    if (name.starts_with("postgresql://") || name.starts_with("postgres://")) {
        return wordsOfUrl(name);
    }
    if (scheme == std::string::npos && name.find('=') != std::string::npos) {
        if (auto words = wordsOfString(name)) {
            return std::move(*words);
        }
    } else if (isServiceName(name)) {
        return Words{{"service", name}};
    }
    return namesNone();
}

bool isSecret(std::string word) {
    std::ranges::transform(word, word.begin(),
                           [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return word == "password" || word == "sslpassword";
}

/// Whether the library takes a value for what it is meant to be. It would say it again where it does not: a password
/// that stands in the place of a port, or a whole other name in that of the database.
bool isMeant(const std::string& word, const std::string& value) {
    return word == "port"     ? value.find_first_not_of("0123456789,") == std::string::npos
           : word == "host"   ? value.find('@', 1) == std::string::npos // a socket without a file begins with one
           : word == "dbname" ? value.find('=') == std::string::npos && value.find("://") == std::string::npos
                              : std::ranges::find(knownWords, word) != knownWords.end();
}

} // namespace

Result<DatabasePlace> parseService(std::string_view typed) {
    const std::string name = trimmed(typed);
    if (name.empty()) {
        return refuse(Core::say("No database is named: give a service of ~/.pg_service.conf, or a URL such as "
                                "postgresql://bench@server/caprail."));
    }
    auto words = wordsOf(name);
    if (!words) {
        return tl::unexpected(words.error());
    }
    std::string where;
    for (const auto& [word, value] : *words) {
        if (isSecret(word)) {
            return refuse(Core::say("A password does not belong into the name of a database, which is kept and shown: "
                                    "write it into ~/.pgpass or the service file, readable by you alone."));
        }
        if (!isMeant(word, value)) {
            return namesNone();
        }
        // The driver parts its options by semicolons.
        if (value.find_first_of(std::string_view(";\0\n", 3)) != std::string::npos) {
            return refuse(Core::say("The name of the database holds a sign that it cannot have."));
        }
        where += (where.empty() ? "" : " ") + word + "=" + inApostrophes(value);
    }
    return DatabasePlace{DatabasePlace::Kind::postgres, where, name};
}

void askForTls() {
    static const bool isAsked = [] {
        return qEnvironmentVariableIsSet("PGSSLMODE") || qputenv("PGSSLMODE", "verify-full");
    }();
    (void)isAsked; // once is enough
}

} // namespace caprail
