// SPDX-License-Identifier: GPL-3.0-or-later
/// What the field of the trial fit asks, line by line, and how it is stored.
#include <stations/trial_fit/station.h>

#include <base/say.h>
#include <session/filled.h>
#include <stations/common/entry_field.h>
#include <stations/common/findings.h>
#include <stations/common/instrument_box.h>
#include <stations/common/station_text.h>
#include <stations/trial_fit/words.h>
#include <work/closing_work.h>
#include <work/tightening.h>
#include <work/trial_answer.h>

namespace caprail {

void TrialFitStation::ask() {
    if (const auto* place = std::get_if<TrialId>(&m_task)) {
        askForAnswer(*place);
    } else if (const auto* stage = std::get_if<TurningStage>(&m_task)) {
        askForTurning(*stage);
    } else if (const auto* own = std::get_if<OwnPlace>(&m_task)) {
        askOwnCheck(*own);
    } else {
        askForNut();
    }
}

void TrialFitStation::askForAnswer(TrialId place) {
    m_field->ask(
        taskTitle(session().facts(), place), QString::fromUtf8(symbol(session().units().length)),
        [this, place](const QString& text) {
            return parseTrialAnswer(coreText(text), place.first, place.second, session().units())
                .map([this](const TrialFitResult& answer) { return describeAnswer(answer, session().units()); });
        },
        [this, place](const QString& text) { return store(place, text); });
}

void TrialFitStation::askForNut() {
    const auto next = nutsAtTorque(session().facts()).next;
    if (!next) {
        m_field->ask(tr("All girdle nuts are at torque"), {}, {}, {});
        return;
    }
    const auto read = [this, nut = *next](const QString& text) {
        return parseTightened(session().facts(), nut, coreText(text), m_instrument->instrument(), session().units());
    };
    m_field->ask(
        tr("%1 brought to (Enter alone: as specified)").arg(capitalised(qtText(describe(*next)))),
        QString::fromUtf8(symbol(session().units().torque)),
        [read, this](const QString& text) {
            return read(text).map([this](const FastenerTightened& entry) {
                return entry.torque ? qtText(format(entry.torque->value, session().units())) : QString();
            });
        },
        [read, this](const QString& text) {
            return storeAndGoOn(read(text).map([](FastenerTightened entry) { return Body(std::move(entry)); }));
        });
}

void TrialFitStation::askForTurning(TurningStage stage) {
    const auto read = [this, stage](const QString& text) {
        return parseTurning(coreText(text), stage, m_instrument->instrument(), session().units());
    };
    m_field->ask(
        tr("%1: to start it / to turn it").arg(taskTitle(session().facts(), stage)),
        QString::fromUtf8(symbol(session().units().torque)),
        [read, this](const QString& text) {
            return read(text).map([this](const TurningTorqueRead& entry) {
                return filled(tr("%1 to start it, %2 to turn it"),
                              qtText(format(entry.breakaway.value, session().units())),
                              qtText(format(entry.running.value, session().units())));
            });
        },
        [read, this](const QString& text) {
            return storeAndGoOn(read(text).map([](TurningTorqueRead entry) { return Body(std::move(entry)); }));
        });
}

void TrialFitStation::askOwnCheck(const OwnPlace& place) {
    const auto read = [this, place](const QString& text) {
        return parseOwnAnswer(session().facts(), place, coreText(text), m_instrument->instrument(), session().units());
    };
    m_field->ask(
        taskTitle(session().facts(), place), {},
        [read](const QString& text) {
            return read(text).map(
                [](const OwnCheckAnswered& entry) { return entry.answer ? qtShown(*entry.answer) : QString(); });
        },
        [read, this](const QString& text) {
            return storeAndGoOn(read(text).map([](OwnCheckAnswered entry) { return Body(std::move(entry)); }));
        });
}

std::vector<BenchWord> TrialFitStation::benchWords() const {
    if (!std::holds_alternative<TrialId>(m_task)) {
        return {};
    }
    return {{tr("Pass"), QStringLiteral("p")}, {tr("Fail"), QStringLiteral("f")}};
}

Result<void> TrialFitStation::storeAndGoOn(Result<Body> entry) {
    if (!entry) {
        return tl::unexpected(entry.error());
    }
    if (const auto stored = session().append(std::move(*entry)); !stored) {
        return tl::unexpected(stored.error());
    }
    if (!std::holds_alternative<GirdleNuts>(m_task) || !nutsAtTorque(session().facts()).next) {
        step(1);
    }
    return {};
}

Result<void> TrialFitStation::store(TrialId place, const QString& text) {
    auto answer = parseTrialAnswer(coreText(text), place.first, place.second, session().units());
    if (!answer) {
        return tl::unexpected(answer.error());
    }
    const bool isFail = answer->result == TrialResult::fail;
    const std::string note = answer->note;
    if (const auto stored = session().append(std::move(*answer)); !stored) {
        return tl::unexpected(stored.error());
    }
    if (isFail) {
        const std::string where = place.second == 0 ? std::string() : "throw " + std::to_string(place.second);
        const std::string seen = note.empty() ? Core::say("trial fit failed: %1", shown(place.first)) : note;
        session().appendAndSay(FindingOpened{nextFinding(session().facts()), where, seen});
    }
    step(1);
    return {};
}

} // namespace caprail
