// SPDX-License-Identifier: GPL-3.0-or-later
#include <work/trial_answer.h>

#include <base/say.h>
#include <base/text.h>
#include <ledger/expectations.h>

namespace caprail {

Result<TrialFitResult> parseTrialAnswer(std::string_view typed, TrialItem item, std::int64_t throwNumber,
                                        const Units& units) {
    TrialFitResult answer{item, throwNumber, TrialResult::pass, {}, {}};
    const std::string_view text = trimmed(typed);
    const auto [head, remark] = headAndRest(text);
    const std::string first = lowered(head);
    if (first == "p" || first == "pass") {
        answer.note = remark;
        return answer;
    }
    if (first == "f" || first == "fail") {
        answer.result = TrialResult::fail;
        answer.note = remark;
        return answer;
    }
    const bool isNumber = text.find_first_of("0123456789.,") == 0;
    if (!isNumber) {
        return refuse(Core::say(
            "“%1” is not an answer here: type p for pass, f for fail with what was seen, or the measured clearance.",
            text));
    }
    auto length =
        parseLength(text, units, expectedLength(TrialFitResult::kind, "clearance", Core::say("the clearance")));
    if (!length) {
        return tl::unexpected(length.error());
    }
    answer.result = TrialResult::measured;
    answer.clearance = std::move(*length);
    return answer;
}

} // namespace caprail
