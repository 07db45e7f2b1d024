// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/list_columns.h>

#include <base/say.h>
#include <ledger/remarks.h>
#include <limits>

namespace caprail {

namespace {

constexpr const char* dash = "–";

bool isKnown(const ShopRow& row) {
    return row.summary.state != JobState::unknown;
}

/// "✕ 2", "–" where there is none, nothing while it is not known.
std::string counted(const ShopRow& row, const char* sign, std::int64_t count) {
    return count > 0 ? sign + std::string(" ") + std::to_string(count) : isKnown(row) ? dash : "";
}

std::string saidValue(const ShopRow&, const std::string& text) {
    return text;
}
std::string saidValue(const ShopRow& row, std::int64_t number) {
    return number != 0 ? std::to_string(number) : isKnown(row) ? dash : "";
}
std::string saidValue(const ShopRow&, const std::optional<Date>& day) {
    return day ? format(*day) : "";
}
std::string saidValue(const ShopRow&, UtcTime time) {
    return format(time);
}
template <Worded E> std::string saidValue(const ShopRow&, E value) {
    return shown(value);
}

std::int64_t ordered(const std::string&) {
    return 0;
}
std::int64_t ordered(std::int64_t number) {
    return number;
}
std::int64_t ordered(const std::optional<Date>& day) {
    return day ? day->days : std::numeric_limits<std::int64_t>::max();
}
std::int64_t ordered(UtcTime time) {
    return time.milliseconds;
}
template <Worded E> std::int64_t ordered(E value) {
    return static_cast<std::int64_t>(value);
}

Tone usual(const ShopRow&, const Seeing&) {
    return Tone::usual;
}

template <std::size_t I> constexpr auto fieldAt() {
    return std::get<I>(RecordSummary::fields());
}
template <std::size_t I> std::string textAt(const ShopRow& row, const Seeing& seeing) {
    constexpr auto column = fieldAt<I>();
    return column.listed.text != nullptr ? column.listed.text(row, seeing) : saidValue(row, row.summary.*column.member);
}
template <std::size_t I> std::int64_t orderAt(const ShopRow& row) {
    constexpr auto column = fieldAt<I>();
    return column.listed.order != nullptr ? column.listed.order(row) : ordered(row.summary.*column.member);
}
template <std::size_t I> void addColumn(std::vector<ListColumn>& columns) {
    constexpr auto column = fieldAt<I>();
    if constexpr (column.listed.title != nullptr) {
        using Member = std::remove_cvref_t<decltype(std::declval<RecordSummary>().*column.member)>;
        columns.push_back({column.name, column.listed.title, column.listed.width, !std::is_same_v<Member, std::string>,
                           textAt<I>, orderAt<I>, column.listed.tone != nullptr ? column.listed.tone : usual});
    }
}

std::string pathOf(const ShopRow& row, const Seeing&) {
    return plainLine(row.file.path);
}
std::int64_t noOrder(const ShopRow&) {
    return 0;
}
Tone quiet(const ShopRow&, const Seeing&) {
    return Tone::quiet;
}

} // namespace

const std::vector<ListColumn>& listColumns() {
    static const std::vector<ListColumn> all = [] {
        std::vector<ListColumn> columns;
        constexpr std::size_t count = std::tuple_size_v<decltype(RecordSummary::fields())>;
        [&]<std::size_t... I>(std::index_sequence<I...>) {
            (addColumn<I>(columns), ...);
        }
        (std::make_index_sequence<count>());
        columns.push_back({"file", Core::mark("File"), 10, false, pathOf, noOrder, quiet});
        return columns;
    }();
    return all;
}

std::string signedWord(JobState state) {
    const char* sign = state == JobState::locked         ? "○ "
                       : state == JobState::trialFitOpen ? "◑ "
                       : state == JobState::closingOpen  ? "◕ "
                       : state == JobState::signedOff    ? "✓ "
                                                         : "… ";
    return sign + shown(state);
}

bool isOverdue(const RecordSummary& s, UtcTime now) {
    return s.due && s.state != JobState::signedOff && s.due->days < dateOf(now).days;
}

namespace listed {

std::string engine(const ShopRow& row, const Seeing&) {
    const RecordSummary& s = row.summary;
    const std::string name = s.serial.empty() ? s.engine : s.engine + ", " + s.serial;
    return s.build > 1 ? Core::say("%1 (build %2)", name, s.build) : name;
}
std::string engineLine(const ShopRow& row, const Seeing&) {
    const RecordSummary& s = row.summary;
    return s.engine + (s.engine.empty() || s.serial.empty() ? "" : " ") + s.serial;
}

std::string state(const ShopRow& row, const Seeing&) {
    return isRecord(row.reading) ? signedWord(row.summary.state) : "✕ " + shown(row.reading);
}
std::string stateLine(const ShopRow& row, const Seeing&) {
    return std::string(word(row.summary.state));
}
std::int64_t stateOrder(const ShopRow& row) {
    return isRecord(row.reading) ? static_cast<std::int64_t>(row.summary.state)
                                 : 100 + static_cast<std::int64_t>(row.reading);
}
Tone stateTone(const ShopRow& row, const Seeing&) {
    switch (row.summary.state) {
    case JobState::signedOff:
        return Tone::good;
    case JobState::closingOpen:
        return Tone::accent;
    case JobState::unknown:
        return Tone::quiet;
    case JobState::locked:
    case JobState::trialFitOpen:
        break;
    }
    return Tone::usual;
}

std::string round(const ShopRow& row, const Seeing&) {
    const RecordSummary& s = row.summary;
    if (s.round == 0) {
        return isKnown(row) ? dash : "";
    }
    switch (s.roundResult) {
    case RoundResult::held:
        return Core::say("✓ %1: all held", s.round);
    case RoundResult::moved:
        return Core::say("✕ %1: %2 moved", s.round, s.moved);
    case RoundResult::voided:
        return Core::say("↻ %1: no longer counts", s.round);
    case RoundResult::none:
    case RoundResult::begun:
        break;
    }
    return Core::say("○ %1: %2 verified", s.round, s.pulled);
}
std::string roundLine(const ShopRow& row, const Seeing&) {
    const RecordSummary& s = row.summary;
    return s.round > 0 ? "round " + std::to_string(s.round) + " " + std::string(word(s.roundResult)) : "";
}
std::int64_t roundOrder(const ShopRow& row) {
    return row.summary.round * 10 + static_cast<std::int64_t>(row.summary.roundResult);
}
Tone roundTone(const ShopRow& row, const Seeing&) {
    switch (row.summary.roundResult) {
    case RoundResult::moved:
        return Tone::out;
    case RoundResult::held:
        return Tone::good;
    case RoundResult::voided:
        return Tone::stale;
    case RoundResult::none:
    case RoundResult::begun:
        break;
    }
    return Tone::quiet;
}

std::string out(const ShopRow& row, const Seeing&) {
    return counted(row, "✕", row.summary.out);
}
std::string outLine(const ShopRow& row, const Seeing&) {
    return row.summary.out > 0 ? std::to_string(row.summary.out) + " out" : "";
}
Tone outTone(const ShopRow& row, const Seeing&) {
    return row.summary.out > 0 ? Tone::out : Tone::quiet;
}

std::string stale(const ShopRow& row, const Seeing&) {
    return counted(row, "↻", row.summary.stale);
}
std::string staleLine(const ShopRow& row, const Seeing&) {
    return row.summary.stale > 0 ? std::to_string(row.summary.stale) + " stale" : "";
}
Tone staleTone(const ShopRow& row, const Seeing&) {
    return row.summary.stale > 0 ? Tone::stale : Tone::quiet;
}

std::string lastEntry(const ShopRow& row, const Seeing& seeing) {
    const RecordSummary& s = row.summary;
    if (s.entries == 0) {
        return {};
    }
    const std::string when = seeing.moment(s.lastEntry);
    return isInFuture(s.lastEntry, seeing.now) ? Core::say("%1 (future)", when) : when;
}
std::string lastEntryLine(const ShopRow& row, const Seeing& seeing) {
    const RecordSummary& s = row.summary;
    return s.entries == 0 ? std::string()
                          : seeing.moment(s.lastEntry) +
                                (isInFuture(s.lastEntry, seeing.now) ? " (in the future: a clock was wrong)" : "");
}
Tone lastEntryTone(const ShopRow& row, const Seeing& seeing) {
    return isInFuture(row.summary.lastEntry, seeing.now) ? Tone::close : Tone::usual;
}

std::string due(const ShopRow& row, const Seeing& seeing) {
    const RecordSummary& s = row.summary;
    return !s.due ? "" : isOverdue(s, seeing.now) ? Core::say("%1 overdue", format(*s.due)) : format(*s.due);
}
std::int64_t dueOrder(const ShopRow& row) {
    return ordered(row.summary.due);
}
Tone dueTone(const ShopRow& row, const Seeing& seeing) {
    return isOverdue(row.summary, seeing.now) ? Tone::out : Tone::quiet;
}

} // namespace listed

std::string listSentence(const ShopRow& row, const Seeing& seeing) {
    if (!isRecord(row.reading)) {
        return "✕ " + plainLine(row.file.path) + " — " + shown(row.reading) + ": " + row.sentence;
    }
    std::string sentence;
    for (const ListColumn& column : listColumns()) {
        const std::string value = column.text(row, seeing);
        if (!value.empty() && value != dash) {
            sentence += (sentence.empty() ? "" : "; ") + Core::say(column.title) + ": " + value;
        }
    }
    return sentence;
}

std::string listLine(const ShopRow& row, const Seeing& seeing) {
    const std::string file = plainLine(row.file.path);
    if (!isRecord(row.reading)) {
        return file + ": " + std::string(word(row.reading)) + ". " + row.sentence;
    }
    std::string said;
    eachSummaryField([&](const auto& column) {
        if (column.listed.isInLine) {
            const std::string value = column.listed.line != nullptr ? column.listed.line(row, seeing)
                                                                    : saidValue(row, row.summary.*column.member);
            said += value.empty() ? "" : (said.empty() ? "" : ", ") + value;
        }
    });
    return file + ": " + said;
}

std::string listHead() {
    std::string said;
    eachSummaryField([&](const auto& column) {
        if (column.listed.isInLine) {
            std::string name(column.name);
            std::ranges::replace(name, '_', ' ');
            said += (said.empty() ? "" : ", ") + name;
        }
    });
    return "file: " + said;
}

} // namespace caprail
