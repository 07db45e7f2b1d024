// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/feel_steps.h>

#include <algorithm>
#include <assessment/feel_study.h>
#include <base/say.h>
#include <base/text.h>
#include <map>
#include <set>
#include <units/parse.h>

namespace caprail {

namespace {

using Shim = std::pair<std::string, Length>; // name, as measured

constexpr Length alike = nanometres(1270); // 0.00005 in
constexpr int stepsEachWay = 5;

/// Measured ones that lie in no stack, thinnest first.
std::vector<Shim> freeShims(const Facts& facts) {
    std::vector<Shim> list;
    for (const auto& [name, shim] : facts.shims) {
        if (const auto measured = shim.measured(); measured && !shim.inStackAt && !shim.isSetAside) {
            list.emplace_back(name, *measured);
        }
    }
    std::ranges::stable_sort(list, {}, &Shim::second);
    return list;
}

/// One or two shims, of those not taken for rests, that come nearest to a thickness: one, where it is near enough.
FeelStep nearestStep(const std::vector<Shim>& shims, Length rest, Length wanted) {
    FeelStep best;
    std::optional<Length> off;
    const auto look = [&](std::vector<std::string> names, Length thickness) {
        const Length here = (thickness - rest - wanted).magnitude();
        if (!off || here < *off) {
            off = here;
            best = {thickness - rest, std::move(names)};
        }
    };
    for (const Shim& one : shims) {
        look({one.first}, one.second);
    }
    if (off && *off <= alike) {
        return best;
    }
    for (std::size_t i = 0; i < shims.size(); ++i) {
        for (std::size_t j = i + 1; j < shims.size(); ++j) {
            const Length both = shims[i].second + shims[j].second;
            if (!off || (both - rest - wanted).magnitude() < *off) {
                look({shims[i].first, shims[j].first}, both);
            }
        }
    }
    return best;
}

std::vector<std::string_view> namedParts(std::string_view text, std::string_view marks) {
    std::vector<std::string_view> parts = partedBy(text, marks);
    std::erase(parts, std::string_view());
    return parts;
}

Result<FeelStep> stepOfShims(std::string_view text, const Facts& facts, Length rest) {
    FeelStep step{-rest, {}};
    for (const std::string_view part : namedParts(text, "+")) {
        std::string name(part);
        const auto shim = facts.shims.find(name);
        if (shim == facts.shims.end()) {
            return refuse(Core::say("The kit has no shim %1: add it first.", name));
        }
        const auto measured = shim->second.measured();
        if (!measured) {
            return refuse(Core::say("Shim %1 was never measured: a step has a known height only of measured ones.", name));
        }
        if (std::ranges::find(step.shims, name) != step.shims.end()) {
            return refuse(Core::say("Shim %1 is named twice in one step: there is one of it.", name));
        }
        step.height += *measured;
        step.shims.push_back(std::move(name));
    }
    return step;
}

} // namespace

FeelSteps proposeFeelSteps(const Facts& facts) {
    FeelSteps proposal;
    std::vector<Shim> shims = freeShims(facts);
    std::optional<std::size_t> pair;
    for (std::size_t i = 0; i + 1 < shims.size(); ++i) {
        const Length apart = shims[i + 1].second - shims[i].second;
        if (apart <= alike && (!pair || apart < shims[*pair + 1].second - shims[*pair].second)) {
            pair = i;
        }
    }
    if (!pair) {
        return proposal;
    }
    proposal.rests = {shims[*pair].first, shims[*pair + 1].first};
    proposal.rest = Length((shims[*pair].second + shims[*pair + 1].second).value() / 2);
    const auto first = shims.begin() + static_cast<std::ptrdiff_t>(*pair);
    shims.erase(first, first + 2);
    std::set<Length> heights;
    for (int tenth = -stepsEachWay; tenth <= stepsEachWay; ++tenth) {
        const Length wanted = tenths(1) * tenth;
        FeelStep step = nearestStep(shims, proposal.rest, wanted);
        if (!step.shims.empty() && (step.height - wanted).magnitude() <= alike && heights.insert(step.height).second) {
            proposal.steps.push_back(std::move(step));
        }
    }
    std::ranges::stable_sort(proposal.steps, {}, &FeelStep::height);
    return proposal;
}

Result<Length> parseFeelRest(std::string_view text, const Units& units, const Facts& facts) {
    const auto names = partsOf(text, {",", ";", "+"});
    if (names.empty() || !facts.shims.contains(std::string(names.front()))) {
        return parseLength(text, units, {Core::say("the rests"), Length(), inches(20)}).map([](const Entered<Length>& l) {
            return l.value;
        });
    }
    Length sum;
    for (const std::string_view name : names) {
        const auto one = stepOfShims(name, facts, Length());
        if (!one) {
            return tl::unexpected(one.error());
        }
        sum += one->height;
    }
    return Length(sum.value() / static_cast<std::int64_t>(names.size()));
}

Result<std::vector<FeelStep>> parseFeelSteps(std::string_view text, const Units& units, const Facts& facts, Length rest) {
    std::map<Length, FeelStep> steps;
    // A comma is the decimal mark of some people: those part steps by semicolons.
    for (const std::string_view part : namedParts(text, units.decimalMark == ',' ? ";" : ",;")) {
        if (facts.shims.contains(std::string(trimmed(part.substr(0, part.find('+')))))) {
            auto step = stepOfShims(part, facts, rest);
            if (!step) {
                return tl::unexpected(step.error());
            }
            steps.emplace(step->height, std::move(*step));
            continue;
        }
        const auto height = parseLength(part, units, {Core::say("a step"), -thou(10), thou(10)});
        if (!height) {
            return tl::unexpected(height.error());
        }
        steps.emplace(height->value, FeelStep{height->value, {}});
    }
    if (steps.size() < 2) {
        return refuse(Core::say("Name two steps or more: heights like −0.3 thou, or shims like S014+S022."));
    }
    std::vector<FeelStep> list;
    for (auto& [height, step] : steps) {
        list.push_back(std::move(step));
    }
    return list;
}

std::string feelStepsText(const std::vector<FeelStep>& steps, const Units& units) {
    std::string text;
    for (const FeelStep& step : steps) {
        std::string one;
        for (const std::string& shim : step.shims) {
            one += (one.empty() ? "" : "+") + shim;
        }
        text += (text.empty() ? "" : "; ") + (one.empty() ? formatFine(step.height, units) : one);
    }
    return text;
}

std::vector<FeelStep> stepsAnswered(const FeelStudyFact& study) {
    std::map<Length, FeelStep> steps;
    for (const auto& answer : study.answers) {
        steps.emplace(answer.what.height.value, FeelStep{answer.what.height.value, answer.what.shims.names});
    }
    std::vector<FeelStep> list;
    for (auto& [height, step] : steps) {
        list.push_back(std::move(step));
    }
    return list;
}

std::vector<FeelStep> stepsToCome(const std::vector<FeelStep>& steps, const FeelStudyFact* study, std::size_t answers,
                                  std::uint32_t seed) {
    if (steps.empty()) {
        return {};
    }
    std::map<Length, std::size_t> given;
    std::size_t all = 0;
    for (const auto& answer : study == nullptr ? std::vector<Seen<FeelAnswer>>() : study->answers) {
        ++given[answer.what.height.value];
        ++all;
    }
    const std::size_t wanted = std::max(answers, all + 1);
    const std::size_t each = (wanted + steps.size() - 1) / steps.size();
    std::vector<Length> heights;
    for (const FeelStep& step : steps) {
        for (std::size_t n = given[step.height]; n < each; ++n) {
            heights.push_back(step.height);
        }
    }
    std::vector<FeelStep> order;
    const std::size_t count = heights.size();
    for (const Length height : feelOrder(std::move(heights), count, seed)) {
        order.push_back(*std::ranges::find(steps, height, &FeelStep::height));
    }
    return order;
}

} // namespace caprail
