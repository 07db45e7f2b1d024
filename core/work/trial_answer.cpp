// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/trial_fit/answer.h>

#include <QCoreApplication>
#include <ledger/expectations.h>
#include <stations/common/station_text.h>
#include <base/say.h>

namespace caprail {

Result<TrialFitResult> parseTrialAnswer(const QString& text, TrialItem item, std::int64_t throwNumber,
                                        const Units& units) {
    TrialFitResult answer{item, throwNumber, TrialResult::pass, {}, {}};
    const QString plainText = text.trimmed();
    const QString first = plainText.section(QLatin1Char(' '), 0, 0).toLower();
    const QString remark = plainText.section(QLatin1Char(' '), 1).trimmed();
    if (first == QLatin1String("p") || first == QLatin1String("pass")) {
        answer.note = coreText(remark);
        return answer;
    }
    if (first == QLatin1String("f") || first == QLatin1String("fail")) {
        answer.result = TrialResult::fail;
        answer.note = coreText(remark);
        return answer;
    }
    const bool isNumber = !plainText.isEmpty() && (plainText[0].isDigit() || plainText[0] == QLatin1Char('.') ||
                                                   plainText[0] == QLatin1Char(','));
    if (!isNumber) {
        return refuse(Core::say(
            "“%1” is no answer here: type p for pass, f for fail with what was seen, or the measured clearance.",
            coreText(plainText)));
    }
    auto length =
        parseLength(coreText(plainText), units, expectedLength(TrialFitResult::kind, "clearance", "the clearance"));
    if (!length) {
        return tl::unexpected(length.error());
    }
    answer.result = TrialResult::measured;
    answer.clearance = std::move(*length);
    return answer;
}

QString describeAnswer(const TrialFitResult& answer, const Units& units) {
    QString words = answer.clearance ? QCoreApplication::translate("TrialFitStation", "%1 clear")
                                           .arg(qtText(format(answer.clearance->value, units)))
                                     : qtShown(answer.result);
    if (!answer.note.empty()) {
        words += QStringLiteral(": ") + qtText(answer.note);
    }
    return words;
}

} // namespace caprail
