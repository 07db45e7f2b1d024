// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/list_filter.h>

namespace caprail {

namespace {

constexpr std::int64_t soonDays = 30;

/// The state that a filter asks for, where it asks for one.
std::optional<JobState> jobStateOf(ListFilter::State state) {
    switch (state) {
    case ListFilter::State::locked:
        return JobState::locked;
    case ListFilter::State::trialFitOpen:
        return JobState::trialFitOpen;
    case ListFilter::State::closingOpen:
        return JobState::closingOpen;
    case ListFilter::State::signedOff:
        return JobState::signedOff;
    case ListFilter::State::all:
    case ListFilter::State::needsAttention:
    case ListFilter::State::unreadable:
        break;
    }
    return std::nullopt;
}

/// The last day on which a calibration that is shown may fall due.
std::int64_t lastDay(ListFilter::Due due, UtcTime now) {
    return dateOf(now).days + (due == ListFilter::Due::soon ? soonDays : -1);
}

bool isInState(ListFilter::State state, const ShopRow& row) {
    const RecordSummary& s = row.summary;
    if (const auto wanted = jobStateOf(state)) {
        return isRecord(row.reading) && s.state == *wanted;
    }
    return state == ListFilter::State::all ||
           (state == ListFilter::State::needsAttention &&
            (s.out > 0 || s.stale > 0 || s.roundResult == RoundResult::moved)) ||
           (state == ListFilter::State::unreadable && !isRecord(row.reading));
}

template <class E> std::string number(E value) {
    return std::to_string(static_cast<int>(value));
}

} // namespace

bool passes(const ListFilter& filter, const ShopRow& row, UtcTime now) {
    const RecordSummary& s = row.summary;
    if (!isInState(filter.state, row)) {
        return false;
    }
    if (filter.due != ListFilter::Due::all &&
        (!s.due || s.due->days > lastDay(filter.due, now) || s.state == JobState::signedOff)) {
        return false;
    }
    return filter.person.empty() || s.who == filter.person ||
           ("\n" + s.people + "\n").find("\n" + filter.person + "\n") != std::string::npos;
}

std::string conditionsOf(const ListFilter& filter, UtcTime now, std::string_view position,
                         std::vector<std::string>& texts) {
    static_assert(static_cast<int>(FileReading::assessed) == 1, "the records come first");
    std::string sql;
    if (const auto wanted = jobStateOf(filter.state)) {
        sql += " AND listing.reading <= 1 AND listing.state = " + number(*wanted);
    } else if (filter.state == ListFilter::State::needsAttention) {
        sql +=
            " AND (listing.out > 0 OR listing.stale > 0 OR listing.round_result = " + number(RoundResult::moved) + ")";
    } else if (filter.state == ListFilter::State::unreadable) {
        sql += " AND listing.reading > 1";
    }
    if (filter.due != ListFilter::Due::all) {
        sql += " AND listing.calibration_due <= " + std::to_string(lastDay(filter.due, now)) +
               " AND listing.state <> " + number(JobState::signedOff);
    }
    if (!filter.person.empty()) {
        // A name a line; the line feeds come as parameters, since the databases write them differently.
        sql += " AND (listing.who = ? OR " + std::string(position) +
               "(CAST(? AS text) || listing.people || CAST(? AS text), ?) > 0)";
        for (const std::string& text :
             {filter.person, std::string("\n"), std::string("\n"), "\n" + filter.person + "\n"}) {
            texts.push_back(text);
        }
    }
    return sql;
}

} // namespace caprail
