// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/fasteners/working.h>

#include <QCoreApplication>
#include <fasteners/lubricant.h>
#include <fasteners/preload.h>
#include <fasteners/sequence.h>
#include <fasteners/wrench.h>
#include <stations/common/station_text.h>
#include <units/parse.h>
#include <base/say.h>

namespace caprail {

namespace {

struct WorkingText {
    Q_DECLARE_TR_FUNCTIONS(FastenersStation)
};

void addLines(QStringList& lines, const QString& heading, const std::vector<std::string>& working) {
    lines << heading;
    for (const auto& line : working) {
        lines << QStringLiteral("    ") + qtText(line);
    }
}

void addSteps(GroupWorking& result, const FastenerGroupSet& group, const Units& units) {
    const auto steps = equalSteps(group.torque->value, static_cast<int>(group.steps));
    if (!steps) {
        result.missing << qtText(steps.error().sentence);
        return;
    }
    QStringList values;
    for (const Torque step : *steps) {
        values << qtText(format(step, units));
    }
    result.lines << WorkingText::tr("Steps: %1").arg(values.join(QStringLiteral("  →  ")));
}

} // namespace

GroupWorking workingOf(const FastenerGroupSet& group, std::int64_t scatterPercent, const Units& units) {
    GroupWorking result;
    if (!group.torque) {
        result.missing << WorkingText::tr("No torque is given: there is nothing to work out a preload from.");
        return result;
    }
    addSteps(result, group, units);
    if (group.method == TighteningMethod::torqueAndAngle) {
        result.missing << WorkingText::tr("By torque and angle: what follows is the preload before the angle.");
    }
    const auto thread = parseThread(group.thread);
    const auto grade = parseGrade(group.grade);
    const auto lubricant = findLubricant(group.lubricant);
    if (!thread) {
        result.missing << qtText(thread.error().sentence);
    }
    if (!lubricant) {
        result.missing << qtText(lubricant.error().sentence);
    }
    if (!thread || !lubricant) {
        return result;
    }
    result.lines << WorkingText::tr("%1: K = %2, μ = %3 (%4)")
                        .arg(qtText(lubricant->name), qtText(formatNumber(lubricant->nutFactor, 2, units.decimalMark)),
                             qtText(formatNumber(lubricant->friction, 3, units.decimalMark)),
                             qtText(lubricant->source));
    if (const auto shortForm = preloadShortForm(group.torque->value, *thread, lubricant->nutFactor, units)) {
        addLines(result.lines, WorkingText::tr("Preload, short form: %1").arg(qtText(format(shortForm->value, units))),
                 shortForm->working);
    } else {
        result.missing << qtText(shortForm.error().sentence);
        return result;
    }
    const JointFriction friction{lubricant->friction, lubricant->friction, usualBearingRadius(*thread)};
    if (const auto longForm = preloadLongForm(group.torque->value, *thread, friction, units)) {
        addLines(result.lines, WorkingText::tr("Preload, long form: %1").arg(qtText(format(longForm->value, units))),
                 longForm->working);
    }
    if (!grade) {
        result.missing << qtText(grade.error().sentence);
        return result;
    }
    const auto judged = judgeTorque(group.torque->value, *thread, *grade, lubricant->nutFactor,
                                    static_cast<double>(scatterPercent) / 100.0, units);
    if (!judged) {
        result.missing << qtText(judged.error().sentence);
        return result;
    }
    const auto percent = [&](double share) {
        return qtText(formatNumber(share * 100.0, 0, units.decimalMark)) + QStringLiteral(" %");
    };
    addLines(result.lines,
             WorkingText::tr("Share of proof load: %1 (%2 to %3 with ± %4 % scatter)")
                 .arg(percent(judged->share.nominal), percent(judged->share.low), percent(judged->share.high))
                 .arg(scatterPercent),
             judged->share.working);
    for (const auto& warning : judged->warnings) {
        result.warnings << qtText(warning.sentence);
    }
    return result;
}

Result<void> groupMakesSense(const Facts& facts, const FastenerGroupSet& group) {
    if (!group.thread.empty()) {
        if (const auto thread = parseThread(group.thread); !thread) {
            return tl::unexpected(thread.error());
        }
    }
    if (!facts.layout) {
        return {};
    }
    for (const auto& name : group.sequence.names) {
        const auto fastener = parseFastener(name);
        if (!fastener) {
            return tl::unexpected(fastener.error());
        }
        if (!facts.layout->has(*fastener)) {
            return refuse(Core::say("The sequence names %1, but this engine has no such fastener: take it out.", name));
        }
        if (group.ring && fastener->ring != *group.ring) {
            return refuse(Core::say("The sequence names %1, which is not of the %2 pair: take it out.", name,
                                    shown(*group.ring)));
        }
    }
    return {};
}

QString extensionText(Torque wanted, const QString& length, const QString& offset, const QString& angle,
                      const Units& units) {
    const auto wrench = parseLength(coreText(length), units, {"the wrench's length", {}, {}});
    const auto reach = parseLength(coreText(offset), units, {"the extension's length", {}, {}});
    const auto turn = parseAngle(coreText(angle), units, {"the extension's angle", {}, {}});
    if (!wrench || !reach || !turn) {
        return qtText((!wrench ? wrench.error() : !reach ? reach.error() : turn.error()).sentence);
    }
    const auto setting = wrenchSetting(wanted, {wrench->value, reach->value, turn->value}, units);
    if (!setting) {
        return qtText(setting.error().sentence);
    }
    QStringList lines{WorkingText::tr("Set the wrench to %1").arg(qtText(format(setting->value, units)))};
    for (const auto& line : setting->working) {
        lines << QStringLiteral("    ") + qtText(line);
    }
    return lines.join(QLatin1Char('\n'));
}

} // namespace caprail
