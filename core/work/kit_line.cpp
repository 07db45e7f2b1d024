// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/kit_line.h>

#include <algorithm>
#include <assessment/admission.h>
#include <base/say.h>
#include <base/text.h>
#include <cctype>
#include <charconv>
#include <ledger/expectations.h>

namespace caprail {

namespace {

constexpr int mostAtOnce = 200;
constexpr std::string_view digits = "0123456789";

/// "S007" for prefix "S", number 7, three digits.
std::string numbered(std::string_view prefix, int number, std::size_t width) {
    std::string text = std::to_string(number);
    text.insert(0, text.size() < width ? width - text.size() : 0, '0');
    return std::string(prefix) + text;
}

int largestNumber(const Facts& facts) {
    int largest = 0;
    for (const auto& [name, shim] : facts.shims) {
        int number = 0;
        if (name.size() > 1 && name.front() == 'S') {
            const auto read = std::from_chars(name.data() + 1, name.data() + name.size(), number);
            largest = read.ptr == name.data() + name.size() ? std::max(largest, number) : largest;
        }
    }
    return largest;
}

/// The kit's shim as typed, or in capitals: gloves miss the shift key.
auto findShim(const Facts& facts, std::string_view typed) {
    const auto asTyped = facts.shims.find(typed);
    return asTyped != facts.shims.end() ? asTyped : facts.shims.find(capitalLetters(typed));
}

/// A run of names: "S001-S012", "S001–012", "S001..S012".
struct NameRun {
    std::string_view prefix, first, lastPrefix, last;
};
std::optional<NameRun> runIn(std::string_view head) {
    for (auto at = head.find_first_of(digits); at != std::string_view::npos;) {
        const auto end = std::min(head.find_first_not_of(digits, at), head.size());
        for (const std::string_view between : {"-", "–", ".."}) {
            const std::string_view rest = head.substr(end);
            if (!rest.starts_with(between)) {
                continue;
            }
            const std::string_view other = rest.substr(between.size());
            const auto lastLetter = other.find_last_not_of(digits);
            const std::size_t split = lastLetter == std::string_view::npos ? 0 : lastLetter + 1;
            if (split < other.size()) {
                return NameRun{head.substr(0, at), head.substr(at, end - at), other.substr(0, split),
                               other.substr(split)};
            }
        }
        at = head.find_first_of(digits, end);
    }
    return {};
}

Result<std::vector<std::string>> namesOf(std::string_view head) {
    const auto run = runIn(head);
    if (!run) {
        return std::vector{std::string(head)};
    }
    if (!run->lastPrefix.empty() && run->lastPrefix != run->prefix) {
        return refuse(Core::say("The run “%1” begins and ends with different letters: use the same.", head));
    }
    const auto first = wholeNumber(run->first);
    const auto last = wholeNumber(run->last);
    if (!first || !last || *last < *first || *last - *first >= mostAtOnce) {
        return refuse(Core::say("The run “%1” must go upwards, and over no more than %2 shims.", head, mostAtOnce));
    }
    std::vector<std::string> names;
    for (int number = *first; number <= *last; ++number) {
        names.push_back(numbered(run->prefix, number, run->first.size()));
    }
    return names;
}

/// A count of one size: "12" and "10 thou" of "12 x 10 thou".
struct CountedSize {
    std::string_view count, size;
};
std::optional<CountedSize> countedIn(std::string_view line) {
    const auto end = line.find_first_not_of(digits);
    if (end == 0 || end == std::string_view::npos) {
        return {};
    }
    const std::string_view rest = trimmed(line.substr(end));
    for (const std::string_view times : {"x", "×", "*"}) {
        if (rest.starts_with(times) && !trimmed(rest.substr(times.size())).empty()) {
            return CountedSize{line.substr(0, end), trimmed(rest.substr(times.size()))};
        }
    }
    return {};
}

/// The names that a line adds and the size of each.
struct NamedSize {
    std::vector<std::string> names;
    std::string_view size;
};
Result<NamedSize> namedSizeIn(std::string_view line, const Facts& facts) {
    if (const auto counted = countedIn(line)) {
        const auto count = wholeNumber(counted->count);
        if (!count || *count < 1 || *count > mostAtOnce) {
            return refuse(Core::say("Between 1 and %1 shims are added at once, not %2.", mostAtOnce, counted->count));
        }
        NamedSize result{{}, counted->size};
        for (int i = 0; i < *count; ++i) {
            result.names.push_back(nextShimName(facts, i));
        }
        return result;
    }
    const auto [head, size] = headAndRest(line);
    if (size.empty()) {
        return refuse(
            Core::say("“%1” does not give a name and a size: type for example S001 10 thou, or 12 x 10 thou.", line));
    }
    return namesOf(head).map([size = size](std::vector<std::string> names) {
        return NamedSize{std::move(names), size};
    });
}

} // namespace

std::string nextShimName(const Facts& facts, int ahead) {
    return numbered("S", largestNumber(facts) + 1 + ahead, 3);
}

Result<std::vector<ShimAdded>> parseKitLine(std::string_view text, const Units& units, const Facts& facts,
                                            std::string_view bag) {
    auto named = namedSizeIn(trimmed(text), facts);
    if (!named) {
        return tl::unexpected(named.error());
    }
    const auto marked =
        parseLength(named->size, units, expectedLength(ShimAdded::kind, "marked", Core::say("the marked thickness")));
    if (!marked) {
        return tl::unexpected(marked.error());
    }
    std::vector<ShimAdded> shims;
    for (std::string& name : named->names) {
        shims.push_back({std::move(name), *marked, std::string(trimmed(bag))});
        if (const auto good = makesSense(facts, shims.back()); !good) {
            return tl::unexpected(good.error());
        }
    }
    return shims;
}

Result<ShimMeasured> parseShimReading(std::string_view text, const Units& units, const Facts& facts,
                                      const std::string& selected) {
    const auto expected = expectedLength(ShimMeasured::kind, "thickness", Core::say("the shim's thickness"));
    const auto [head, rest] = headAndRest(text);
    std::string shim = selected;
    std::string_view reading = trimmed(text);
    if (const auto named = findShim(facts, head); named != facts.shims.end()) {
        shim = named->first;
        reading = rest;
    } else if (!head.empty() && std::isalpha(static_cast<unsigned char>(head.front())) != 0) {
        return refuse(Core::say("The kit has no shim %1: add it first.", head));
    } else if (selected.empty()) {
        return refuse(Core::say("Say which shim was measured: its name, then the value."));
    }
    return parseLength(reading, units, expected).map([&](Entered<Length> value) {
        return ShimMeasured{shim, std::move(value), {}};
    });
}

Result<std::vector<std::string>> parseStack(std::string_view text, const Facts& facts, Position at) {
    std::vector<std::string> stack;
    const auto parts = partsOf(text, {",", ";", "+"});
    if (parts.empty()) {
        return refuse(Core::say("Type the names of the shims, or a dash for a bare position."));
    }
    if (parts.size() == 1 && parts.front() == "-") {
        return stack;
    }
    for (const std::string_view part : parts) {
        const auto shim = findShim(facts, part);
        if (shim == facts.shims.end()) {
            return refuse(Core::say("The kit has no shim %1: add it first.", part));
        }
        stack.push_back(shim->first);
    }
    const auto good = makesSense(facts, StackBuilt{at, {stack}});
    return good ? Result<std::vector<std::string>>(std::move(stack)) : tl::unexpected(good.error());
}

} // namespace caprail
