// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/kit_text.h>

#include <QRegularExpression>
#include <algorithm>
#include <charconv>
#include <ledger/expectations.h>
#include <set>
#include <stations/common/station_text.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr int mostAtOnce = 200;

/// "S007" for prefix "S", number 7, three digits.
std::string numbered(const std::string& prefix, int number, std::size_t digits) {
    std::string text = std::to_string(number);
    text.insert(0, text.size() < digits ? digits - text.size() : 0, '0');
    return prefix + text;
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
auto findShim(const Facts& facts, const QString& typed) {
    const auto asTyped = facts.shims.find(coreText(typed));
    return asTyped != facts.shims.end() ? asTyped : facts.shims.find(coreText(typed.toUpper()));
}

Result<std::vector<std::string>> namesOf(const QString& head, const Facts& facts) {
    static const QRegularExpression run(QStringLiteral("^(\\S*?)(\\d+)(?:-|–|\\.\\.)(\\S*?)(\\d+)$"));
    std::vector<std::string> names;
    if (const auto match = run.match(head); match.hasMatch()) {
        const int first = match.captured(2).toInt();
        const int last = match.captured(4).toInt();
        if (!match.captured(3).isEmpty() && match.captured(3) != match.captured(1)) {
            return refuse(
                Core::say("The run “%1” begins and ends with different letters: use the same.", coreText(head)));
        }
        if (last < first || last - first >= mostAtOnce) {
            return refuse(
                Core::say("The run “%1” must go upwards, and over no more than %2 shims.", coreText(head), mostAtOnce));
        }
        for (int number = first; number <= last; ++number) {
            names.push_back(
                numbered(match.captured(1).toStdString(), number, static_cast<std::size_t>(match.captured(2).size())));
        }
        return names;
    }
    if (facts.shims.contains(coreText(head))) {
        return refuse(Core::say("The kit has a shim %1 already: give this one another name.", coreText(head)));
    }
    return std::vector{coreText(head)};
}

} // namespace

std::string nextShimName(const Facts& facts, int ahead) {
    return numbered("S", largestNumber(facts) + 1 + ahead, 3);
}

Result<std::vector<ShimAdded>> parseKitLine(const QString& text, const Units& units, const Facts& facts,
                                            const QString& bag) {
    static const QRegularExpression counted(QStringLiteral("^(\\d+)\\s*[x×*]\\s*(.+)$"));
    const QString line = text.trimmed();
    const auto expected = expectedLength(ShimAdded::kind, "marked", "the marked thickness");
    std::vector<std::string> names;
    QString size;
    if (const auto match = counted.match(line); match.hasMatch()) {
        const int count = match.captured(1).toInt();
        if (count < 1 || count > mostAtOnce) {
            return refuse(Core::say("Between 1 and %1 shims are added at once, not %2.", mostAtOnce,
                                    match.captured(1).toStdString()));
        }
        for (int i = 0; i < count; ++i) {
            names.push_back(nextShimName(facts, i));
        }
        size = match.captured(2);
    } else {
        const QString head = line.section(QLatin1Char(' '), 0, 0);
        size = line.section(QLatin1Char(' '), 1).trimmed();
        if (size.isEmpty()) {
            return refuse(Core::say("“%1” gives no name and size: type for example S001 10 thou, or 12 x 10 thou.",
                                    coreText(line)));
        }
        auto named = namesOf(head, facts);
        if (!named) {
            return tl::unexpected(named.error());
        }
        names = std::move(*named);
    }
    const auto marked = parseLength(coreText(size), units, expected);
    if (!marked) {
        return tl::unexpected(marked.error());
    }
    std::vector<ShimAdded> shims;
    for (std::string& name : names) {
        if (facts.shims.contains(name)) {
            return refuse(Core::say("The kit has a shim %1 already: give this one another name.", name));
        }
        shims.push_back({std::move(name), *marked, coreText(bag)});
    }
    return shims;
}

Result<ShimMeasured> parseShimReading(const QString& text, const Units& units, const Facts& facts,
                                      const std::string& selected) {
    const auto expected = expectedLength(ShimMeasured::kind, "thickness", "the shim's thickness");
    const QString line = text.trimmed();
    const std::string head = coreText(line.section(QLatin1Char(' '), 0, 0));
    if (const auto shim = findShim(facts, line.section(QLatin1Char(' '), 0, 0)); shim != facts.shims.end()) {
        const auto value = parseLength(coreText(line.section(QLatin1Char(' '), 1)), units, expected);
        return value ? Result<ShimMeasured>(ShimMeasured{shim->first, *value, {}}) : tl::unexpected(value.error());
    }
    if (!head.empty() && std::isalpha(static_cast<unsigned char>(head.front())) != 0) {
        return refuse(Core::say("The kit has no shim %1: add it first.", head));
    }
    if (selected.empty()) {
        return refuse(Core::say("Say which shim was measured: its name, then the value."));
    }
    const auto value = parseLength(coreText(line), units, expected);
    return value ? Result<ShimMeasured>(ShimMeasured{selected, *value, {}}) : tl::unexpected(value.error());
}

Result<std::vector<std::string>> parseStack(const QString& text, const Facts& facts) {
    static const QRegularExpression between(QStringLiteral("[\\s,;+]+"));
    std::vector<std::string> stack;
    std::set<std::string> seen;
    const QStringList parts = text.split(between, Qt::SkipEmptyParts);
    if (parts.isEmpty()) {
        return refuse(Core::say("Type the names of the shims, or a dash for a bare position."));
    }
    if (parts == QStringList{QStringLiteral("-")}) {
        return stack;
    }
    for (const QString& part : parts) {
        const auto shim = findShim(facts, part);
        if (shim == facts.shims.end()) {
            return refuse(Core::say("The kit has no shim %1: add it first.", coreText(part)));
        }
        std::string name = shim->first;
        if (shim->second.isSetAside) {
            return refuse(Core::say("Shim %1 is set aside: take it back into the kit first.", name));
        }
        if (!seen.insert(name).second) {
            return refuse(Core::say("Shim %1 is named twice: there is one of it.", name));
        }
        stack.push_back(std::move(name));
    }
    return stack;
}

std::optional<Length> offMarking(const ShimFact& shim) {
    const auto measured = shim.measured();
    return measured ? std::optional(*measured - shim.added.what.marked.value) : std::nullopt;
}

bool isFlagged(const ShimFact& shim, const RulesSet& rules) {
    const auto off = offMarking(shim);
    return off && off->magnitude() > rules.kitTolerance;
}

} // namespace caprail
