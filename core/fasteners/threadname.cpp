// SPDX-License-Identifier: GPL-3.0-or-later
#include <fasteners/text.h>
#include <fasteners/thread.h>
#include <fasteners/threadtables.h>
#include <base/say.h>
#include <base/text.h>

namespace caprail {

using namespace fastenertext;

namespace {

/// Behind a pitch of no series; the second in records of earlier versions.
constexpr std::string_view specialWords[] = {"special", "by hand"};

std::string noThread(std::string_view typed) {
    return Core::say("%1 is not a thread: write inch threads as 7/16-20 and metric ones as M10x1.25, with “special” "
                     "behind a pitch of no series.",
                     quotedText(typed));
}

/// `known`: which threads that diameter has, or empty.
std::string noStandardThread(std::string_view typed, const std::string& known, const Thread& thread) {
    return known.empty() ? Core::say("There is no standard thread %1; if it is really that, write %2.", quotedText(typed),
                                     quotedText(thread.name()))
                         : Core::say("There is no standard thread %1: %2; if it is really that, write %3.",
                                     quotedText(typed), known, quotedText(thread.name()));
}

/// Takes `suffix` off the end of `text` when it stands there as a word of its own.
bool takeSuffix(std::string_view& text, std::string_view suffix) {
    if (text.size() <= suffix.size() || !text.ends_with(suffix)) {
        return false;
    }
    text = trimmed(text.substr(0, text.size() - suffix.size()));
    return true;
}

/// "7/16" → 7/16 in; denominators 2 to 64 by powers of two.
std::optional<Length> fraction(std::string_view text) {
    const auto slash = text.find('/');
    if (slash == std::string_view::npos) {
        return std::nullopt;
    }
    const auto numerator = wholeNumber(text.substr(0, slash));
    const auto denominator = wholeNumber(text.substr(slash + 1));
    if (!numerator || !denominator || *denominator < 2 || *denominator > 64 ||
        (*denominator & (*denominator - 1)) != 0) {
        return std::nullopt;
    }
    return nanometres(nanometresPerInch * *numerator / *denominator);
}

/// "#10", "10" (the number sizes), "1", "7/16", "1 1/8", "1-1/8", "0.4375", ".4375"
std::optional<Length> inchNominal(std::string_view text) {
    const bool isNumbered = text.starts_with('#');
    for (const auto& size : threadtables::inchSizes) {
        if (size.label.front() == '#' && text == (isNumbered ? size.label : size.label.substr(1))) {
            return size.nominal();
        }
    }
    if (isNumbered) {
        return std::nullopt;
    }
    if (const auto gap = text.find_first_of(" -"); gap != std::string_view::npos) {
        const auto whole = wholeNumber(text.substr(0, gap));
        const auto part = fraction(trimmed(text.substr(gap + 1)));
        return whole && part ? std::optional(inches(*whole) + *part) : std::nullopt;
    }
    if (const auto part = fraction(text)) {
        return part;
    }
    const auto decimal = decimalNumber(text);
    return decimal && *decimal < 1'000 ? std::optional(inches(*decimal)) : std::nullopt;
}

std::string metricName(std::int64_t nominalMicrons, std::int64_t pitchMicrons) {
    return "M" + shortNumber(static_cast<double>(nominalMicrons) / 1000, 3) + "×" +
           shortNumber(static_cast<double>(pitchMicrons) / 1000, 3);
}

Result<Thread> parseMetric(std::string_view typed, std::string_view text, bool isSpecial) {
    std::string plain(text.substr(1));
    if (const auto cross = plain.find("×"); cross != std::string::npos) {
        plain.replace(cross, std::string_view("×").size(), "x");
    }
    const auto cross = plain.find('x');
    const auto nominal = decimalNumber(trimmed(std::string_view(plain).substr(0, cross)));
    std::optional<double> pitch;
    if (cross != std::string::npos) {
        pitch = decimalNumber(trimmed(std::string_view(plain).substr(cross + 1)));
    }
    if (!nominal || (cross != std::string::npos && !pitch) || *nominal > 1'000 || pitch.value_or(0) > 1'000) {
        return refuse(noThread(typed));
    }
    const auto* size = threadtables::findMetric(millimetres(*nominal));
    if (!pitch) {
        if (size == nullptr) {
            return refuse(
                Core::say("There is no coarse thread M%1: give its pitch and say so, as in M12.5x1.5 special.",
                          shortNumber(*nominal, 6)));
        }
        return Thread::metric(millimetres(*nominal), microns(size->coarseMicrons));
    }
    auto thread = Thread::metric(millimetres(*nominal), millimetres(*pitch));
    if (!thread || isSpecial || thread->series() != ThreadSeries::special) {
        return thread;
    }
    std::string known;
    if (size != nullptr) {
        std::string fineOnes;
        for (const std::int64_t fine : size->fineMicrons) {
            fineOnes += fine > 0 ? (fineOnes.empty() ? "" : ", ") + metricName(size->nominalMicrons, fine) : "";
        }
        known = Core::say("M%1 is cut as %2 (coarse) or %3 (fine)", shortNumber(*nominal, 3),
                          metricName(size->nominalMicrons, size->coarseMicrons), fineOnes);
    }
    return refuse(noStandardThread(typed, known, *thread));
}

Result<Thread> parseInch(std::string_view typed, std::string_view text, bool isSpecial) {
    const bool saysCoarse = takeSuffix(text, "unc") || takeSuffix(text, "coarse");
    const bool saysFine = !saysCoarse && (takeSuffix(text, "unf") || takeSuffix(text, "fine"));
    const bool namesSeries = saysCoarse || saysFine;

    std::optional<Length> nominal = inchNominal(text);
    std::optional<int> threads;
    const auto dash = text.rfind('-');
    // "1-1/8 UNF": the dash belongs to the diameter when what follows it is no whole number.
    if (dash != std::string_view::npos && wholeNumber(trimmed(text.substr(dash + 1)))) {
        nominal = inchNominal(trimmed(text.substr(0, dash)));
        threads = wholeNumber(trimmed(text.substr(dash + 1)));
    }
    if (!nominal || *nominal > inches(1'000)) {
        return refuse(noThread(typed));
    }
    const auto* size = threadtables::findInch(*nominal);
    const std::string known = size == nullptr ? ""
                                              : Core::say("%1 is cut with %2 (coarse) or %3 (fine) threads per inch",
                                                          size->label, size->coarse, size->fine);
    if (!threads) {
        if (size == nullptr) {
            return refuse(noThread(typed));
        }
        if (!namesSeries) {
            return refuse(Core::say("%1 leaves the pitch open: %2; add it behind a dash.", quotedText(typed), known));
        }
        threads = saysCoarse ? size->coarse : size->fine;
    }
    auto thread = Thread::inch(*nominal, *threads);
    if (!thread) {
        return thread;
    }
    const ThreadSeries series = thread->series();
    if ((saysCoarse && series != ThreadSeries::coarse) || (saysFine && series != ThreadSeries::fine)) {
        return refuse(
            known.empty()
                ? Core::say("%1 contradicts itself; give the number or the series that is meant.", quotedText(typed))
                : Core::say("%1 contradicts itself: %2; give the number or the series that is meant.", quotedText(typed),
                            known));
    }
    if (series == ThreadSeries::special && !isSpecial) {
        return refuse(noStandardThread(typed, known, *thread));
    }
    return thread;
}

} // namespace

Result<Thread> parseThread(std::string_view typed) {
    typed = trimmed(typed);
    const std::string lower = lowered(typed);
    std::string_view text = lower;
    const bool isSpecial = takeSuffix(text, specialWords[0]) || takeSuffix(text, specialWords[1]);
    if (text.empty()) {
        return refuse(Core::say("No thread was given: write inch threads as 7/16-20 and metric ones as M10x1.25."));
    }
    return text.front() == 'm' ? parseMetric(typed, text, isSpecial) : parseInch(typed, text, isSpecial);
}

} // namespace caprail
