// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/history_line.h>

#include <base/plain_text.h>
#include <base/say.h>

namespace caprail {

namespace {

/// The value of a whole-number column, by the unit at the end of its name.
std::string valueText(std::string& name, std::int64_t n, const Units& units) {
    const auto unitIs = [&](std::string_view suffix) {
        if (!name.ends_with(suffix)) {
            return false;
        }
        name.resize(name.size() - suffix.size());
        return true;
    };
    if (unitIs(columnUnit<Length>)) {
        // What has half a digit more is not cut: a limit of error is never shown as nothing.
        const std::int64_t digit = units.length == LengthUnit::inch ? 2'540 : 1'000;
        return n % digit == 0 ? format(Length(n), units) : formatFine(Length(n), units);
    }
    if (unitIs(columnUnit<Torque>)) {
        return format(Torque(n), units);
    }
    if (unitIs(columnUnit<Angle>)) {
        return format(Angle(n), units);
    }
    if (unitIs(columnUnit<Temperature>)) {
        return format(Temperature(n), units);
    }
    if (name.starts_with("is_")) {
        return n == 1 ? Core::say("yes") : Core::say("no");
    }
    return std::to_string(n);
}

} // namespace

std::vector<NamedValue> namedValues(const Body& body, const Units& units) {
    const KindInfo& info = kindOf(body);
    const auto cells = cellsOf(body);
    std::vector<NamedValue> list;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        std::string name = info.columns[i].name;
        std::string value;
        if (const auto* n = std::get_if<std::int64_t>(&cells[i])) {
            value = valueText(name, *n, units);
        } else if (const auto* text = std::get_if<std::string>(&cells[i])) {
            value = info.columns[i].words.empty() ? visibly(*text) : Core::say(*text);
        }
        if (value.empty()) {
            continue;
        }
        for (char& c : name) {
            c = c == '_' ? ' ' : c;
        }
        const std::string_view typed = " typed";
        if (name.ends_with(typed) && !list.empty() && name == list.back().name + std::string(typed)) {
            list.back().value += " " + Core::say("(typed “%1”)", value);
        } else {
            list.push_back({name, value});
        }
    }
    return list;
}

std::string historyLine(const Body& body, const Units& units) {
    if (const auto* signature = std::get_if<SealSigned>(&body)) {
        return Core::say("Signed: everything up to entry %1, with the key of %2", signature->signedEntry,
                         signature->keyName);
    }
    std::string line = Core::say(kindOf(body).title);
    const char* separator = ": ";
    for (const auto& [name, value] : namedValues(body, units)) {
        // "pass" alone is also what a trial fit is answered with.
        line += separator + (name == "pass" ? Core::say("pass %1", value) : Core::say(name) + " " + value);
        separator = ", ";
    }
    return line;
}

} // namespace caprail
