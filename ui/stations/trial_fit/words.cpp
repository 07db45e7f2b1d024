// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/trial_fit/words.h>

#include <QCoreApplication>
#include <assessment/own_check.h>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

class TrialFitText {
    Q_DECLARE_TR_FUNCTIONS(TrialFitText)
};

} // namespace

QString describeAnswer(const TrialFitResult& answer, const Units& units) {
    QString words = answer.clearance ? TrialFitText::tr("%1 clear").arg(qtText(format(answer.clearance->value, units)))
                                     : qtShown(answer.result);
    if (!answer.note.empty()) {
        words += QStringLiteral(": ") + qtText(answer.note);
    }
    return words;
}

QString taskTitle(const Facts& facts, const TrialTask& task) {
    if (const auto* stage = std::get_if<TurningStage>(&task)) {
        return TrialFitText::tr("Turning torque, %1").arg(qtShown(*stage));
    }
    if (const auto* own = std::get_if<OwnPlace>(&task)) {
        const auto* set = facts.ownCheckNamed(own->check);
        return set == nullptr ? QString() : capitalised(qtText(titleOf(set->what, own->place)));
    }
    const auto* place = std::get_if<TrialId>(&task);
    if (place == nullptr) {
        return TrialFitText::tr("Girdle nuts at torque");
    }
    return place->second == 0 ? capitalised(qtShown(place->first))
                              : TrialFitText::tr("Throw %1: %2").arg(place->second).arg(qtShown(place->first));
}

QString taskFound(const Facts& facts, const TrialTask& task, const Units& units) {
    if (const auto* stage = std::get_if<TurningStage>(&task)) {
        const auto read = facts.turning.find(*stage);
        return read == facts.turning.end() ? QString()
                                           : qtText(format(read->second.what.breakaway.value, units)) +
                                                 QStringLiteral(" / ") +
                                                 qtText(format(read->second.what.running.value, units));
    }
    if (const auto* own = std::get_if<OwnPlace>(&task)) {
        return qtText(ownStandingOf(facts, *own, units).sentence);
    }
    const auto* place = std::get_if<TrialId>(&task);
    if (place == nullptr) {
        const NutsAtTorque nuts = nutsAtTorque(facts);
        return TrialFitText::tr("%1 of %2").arg(nuts.tight).arg(nuts.all);
    }
    const auto given = facts.trialFits.find(*place);
    return given == facts.trialFits.end() ? QString() : describeAnswer(given->second.what, units);
}

bool isNamed(const TrialTask& task, const QString& subject) {
    if (const auto* stage = std::get_if<TurningStage>(&task)) {
        return subject == QStringLiteral("turning-") + qtWord(*stage);
    }
    if (const auto* own = std::get_if<OwnPlace>(&task)) {
        return subject == QStringLiteral("own-%1:%2").arg(qtText(own->check)).arg(own->place);
    }
    const auto* place = std::get_if<TrialId>(&task);
    return place == nullptr ? subject == QLatin1String("girdle-nuts")
                            : subject == qtWord(place->first) ||
                                  (place->second != 0 && subject == QStringLiteral("throw-%1").arg(place->second));
}

} // namespace caprail
