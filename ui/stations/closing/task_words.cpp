// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/closing/task_words.h>

#include <QCoreApplication>
#include <assessment/turning.h>
#include <fasteners/sequence.h>
#include <session/filled.h>
#include <stations/common/station_text.h>
#include <work/tightening.h>

namespace caprail {

namespace {

using Kind = ClosingTask::Kind;

class ClosingTaskText {
    Q_DECLARE_TR_FUNCTIONS(ClosingTaskText)
};

QString shimsOf(const Facts& facts, Position p) {
    QStringList names;
    if (const auto stack = facts.stacks.find(p); stack != facts.stacks.end()) {
        for (const auto& shim : stack->second.shims) {
            names << qtText(shim);
        }
    }
    return names.isEmpty() ? ClosingTaskText::tr("no shim") : names.join(QStringLiteral(" + "));
}

/// The value that a fastener is brought to, without its name.
QString valueOf(const Facts& facts, FastenerId f, const Units& units) {
    const auto specified = asSpecified(facts, f, {});
    if (!specified) {
        return {};
    }
    QStringList parts;
    if (specified->torque) {
        parts << qtText(format(specified->torque->value, units));
    }
    if (specified->angle) {
        parts << qtText(format(specified->angle->value, units));
    }
    if (specified->stretch) {
        parts << qtText(format(specified->stretch->value, units));
    }
    return parts.join(QStringLiteral(" / "));
}

/// "11.7 → 23.3 → 35.0 lbf·ft"
QString stepsOf(const Facts& facts, FastenerId f, const Units& units) {
    const auto* group = facts.groupOf(f);
    if (group == nullptr || !group->what.torque) {
        return {};
    }
    const auto steps = equalSteps(group->what.torque->value, static_cast<int>(group->what.steps));
    QStringList list;
    for (const Torque step : steps.value_or(std::vector<Torque>{})) {
        list << qtText(format(step, units));
    }
    return list.join(QStringLiteral("  →  "));
}

bool isFastening(ClosingStep step) {
    return step == ClosingStep::nutsTightened || step == ClosingStep::panFastened;
}

QString girdleWay(const Facts& facts) {
    if (!facts.girdleWay) {
        return {};
    }
    const GirdleWaySet& way = facts.girdleWay->what;
    return filled(ClosingTaskText::tr("%1 up, cutout towards the %2 on the %3."), capitalised(qtShown(way.faceUp)),
                  qtShown(way.cutoutTowards), qtShown(way.cutoutSide));
}

QString turningHow(const Facts& facts, const Units& units) {
    const auto before = facts.turning.find(TurningStage::beforeGirdle);
    QString how = ClosingTaskText::tr("By hand and slowly, two full turns at the crank bolt: what starts it, what keeps it "
                                      "turning.");
    if (before != facts.turning.end()) {
        how += QStringLiteral(" ") + filled(ClosingTaskText::tr("Before the girdle %1 / %2; at most %3 more."),
                                            qtText(format(before->second.what.breakaway.value, units)),
                                            qtText(format(before->second.what.running.value, units)),
                                            qtText(format(largestRiseOf(facts), units)));
    }
    return how;
}

QString tickTitle(ClosingStep step) {
    switch (step) {
    case ClosingStep::stacksRefitted:
        return ClosingTaskText::tr("All stacks are on");
    case ClosingStep::girdleLowered:
        return ClosingTaskText::tr("Lower the girdle");
    case ClosingStep::nutsTightened:
        return ClosingTaskText::tr("All girdle nuts are at their value");
    case ClosingStep::crankTurned:
        return ClosingTaskText::tr("Two full turns by hand, nothing binds");
    case ClosingStep::panFastened:
        return ClosingTaskText::tr("All pan fasteners are at their value");
    case ClosingStep::shimsCounted:
    case ClosingStep::beadLaid:
        break;
    }
    return capitalised(qtShown(step));
}

QString ownTitle(const Facts& facts, const OwnPlace& place) {
    const auto* set = facts.ownCheckNamed(place.check);
    return set == nullptr ? QString() : capitalised(qtText(titleOf(set->what, place.place)));
}

} // namespace

QString taskTitle(const RecordSession& session, const ClosingTask& task) {
    const Facts& facts = session.facts();
    switch (task.kind) {
    case Kind::locked:
        return {};
    case Kind::count:
        return ClosingTaskText::tr("Count the shims by hand");
    case Kind::stack:
        return filled(ClosingTaskText::tr("%1:  %2"), qtText(code(*task.stack)), shimsOf(facts, *task.stack));
    case Kind::bead:
        return ClosingTaskText::tr("Lay the sealant bead");
    case Kind::fastener:
        return filled(ClosingTaskText::tr("%1:  %2"), capitalised(qtText(describe(*task.fastener))),
                      valueOf(facts, *task.fastener, session.units()));
    case Kind::turning:
        return filled(ClosingTaskText::tr("Turning torque, %1"), qtShown(*task.turning));
    case Kind::own:
        return ownTitle(facts, *task.own);
    case Kind::tick:
        return tickTitle(task.step);
    case Kind::sign:
        return ClosingTaskText::tr("Everything is closed up: sign off");
    case Kind::closed:
        break;
    }
    return ClosingTaskText::tr("Build %1 is closed").arg(facts.build);
}

QString taskHow(const RecordSession& session, const ClosingTask& task) {
    const Facts& facts = session.facts();
    switch (task.kind) {
    case Kind::count:
        return ClosingTaskText::tr("In the labelled stacks, set aside, left over in their bags. One left inside can destroy "
                                   "the engine.");
    case Kind::stack:
        return ClosingTaskText::tr("By its label, washer and seat wiped clean.");
    case Kind::bead:
        return ClosingTaskText::tr("Thin, outside the holes, wiped inside: a bead squeezed inwards can block the pickup. The "
                                   "clock runs from this entry.");
    case Kind::fastener:
        return stepsOf(facts, *task.fastener, session.units());
    case Kind::turning:
        return turningHow(facts, session.units());
    case Kind::tick:
        return task.step == ClosingStep::girdleLowered ? girdleWay(facts) : QString();
    case Kind::locked:
    case Kind::own:
    case Kind::sign:
    case Kind::closed:
        break;
    }
    return {};
}

std::vector<TaskLine> taskLines(const RecordSession& session, const ClosingTask& task) {
    const Facts& facts = session.facts();
    std::vector<TaskLine> lines;
    if (task.kind == Kind::closed || task.kind == Kind::locked) {
        return lines;
    }
    if (task.step == ClosingStep::stacksRefitted || task.kind == Kind::count) {
        for (const auto& [position, isOn] : stacksToRefit(facts)) {
            lines.push_back({static_cast<int>(lines.size()), qtText(code(position)) + QStringLiteral("   ") + shimsOf(facts, position), isOn,
                             task.stack == position});
        }
    } else if (isFastening(task.step)) {
        int number = 0;
        for (const auto& [fastener, isTight] : fastenersToTighten(facts, task.step)) {
            lines.push_back({number, filled(QStringLiteral("%1   %2"), number + 1, qtText(describe(fastener))), isTight,
                             task.fastener == fastener});
            ++number;
        }
    }
    return lines;
}

PlanContent taskContent(const RecordSession& session, const ClosingTask& task) {
    const Facts& facts = session.facts();
    PlanContent content = planContent(facts);
    content.layers = PlanLayer::positions | PlanLayer::girdle | PlanLayer::cutout | PlanLayer::pickup;
    if (isFastening(task.step) && task.kind != Kind::closed) {
        const bool isPan = task.step == ClosingStep::panFastened;
        content.layers = PlanLayer::girdle | PlanLayer::sequence | (isPan ? PlanLayer::rowFasteners : PlanLayer::girdleNuts);
        int number = 0;
        for (const auto& [fastener, isTight] : fastenersToTighten(facts, task.step)) {
            PlanMark mark;
            mark.place = qtText(code(fastener));
            mark.state = isTight ? CheckState::good : CheckState::notDone;
            content.sequence[mark.place] = ++number;
            content.order << mark.place;
            content.marks.push_back(std::move(mark));
        }
    } else {
        for (const auto& [position, isOn] : stacksToRefit(facts)) {
            PlanMark mark;
            mark.place = qtText(code(position));
            mark.note = shimsOf(facts, position);
            mark.state = isOn ? CheckState::good : CheckState::notDone;
            content.marks.push_back(std::move(mark));
        }
    }
    content.selected = taskPlace(task);
    return content;
}

QString taskPlace(const ClosingTask& task) {
    return task.stack ? qtText(code(*task.stack)) : task.fastener ? qtText(code(*task.fastener)) : QString();
}

QString taskField(const RecordSession& session, const ClosingTask& task) {
    switch (task.kind) {
    case Kind::count:
        return ClosingTaskText::tr("In the stacks + set aside + left over");
    case Kind::stack:
        return ClosingTaskText::tr("Enter when it is on");
    case Kind::bead:
        return session.facts().closing.contains(ClosingStep::beadLaid)
                   ? ClosingTaskText::tr("Product / lot / open time in minutes (Enter alone: as before)")
                   : ClosingTaskText::tr("Product / lot / open time in minutes, from the tube");
    case Kind::fastener:
        return ClosingTaskText::tr("Brought to (Enter alone: as specified)");
    case Kind::turning:
        return ClosingTaskText::tr("To start it / to turn it");
    case Kind::own: {
        const auto* set = session.facts().ownCheckNamed(task.own->check);
        const OwnCheckSort sort = set == nullptr ? OwnCheckSort::yesNo : set->what.sort;
        return sort == OwnCheckSort::yesNo      ? ClosingTaskText::tr("y for yes, n and what was seen for no")
               : sort == OwnCheckSort::measured ? ClosingTaskText::tr("What was measured")
                                                : ClosingTaskText::tr("Enter when its photo is in the record");
    }
    case Kind::tick:
        return ClosingTaskText::tr("Enter when it is done (a note may be typed)");
    case Kind::sign:
        return ClosingTaskText::tr("Type “sign” to sign off (or a statement of your own)");
    case Kind::locked:
    case Kind::closed:
        break;
    }
    return {};
}

QString taskEcho(const Body& entry, const Units& units) {
    if (const auto* step = entry.as<ClosingStepDone>()) {
        if (step->fitted) {
            return filled(ClosingTaskText::tr("%1 in the stacks, %2 set aside, %3 left over: %4 in all"), *step->fitted,
                          *step->aside, *step->leftOver, *step->fitted + *step->aside + *step->leftOver);
        }
        if (step->product) {
            return filled(ClosingTaskText::tr("%1, lot %2, open for %3 min"), qtText(*step->product), qtText(*step->lot),
                          *step->openMinutes);
        }
        return qtText(step->note);
    }
    if (const auto* read = entry.as<TurningTorqueRead>()) {
        return filled(ClosingTaskText::tr("%1 to start it, %2 to turn it"), qtText(format(read->breakaway.value, units)),
                      qtText(format(read->running.value, units)));
    }
    if (const auto* tightened = entry.as<FastenerTightened>()) {
        return tightened->torque    ? qtText(format(tightened->torque->value, units))
               : tightened->stretch ? qtText(format(tightened->stretch->value, units))
                                    : QString();
    }
    if (const auto* own = entry.as<OwnCheckAnswered>()) {
        return own->answer ? qtShown(*own->answer) : own->value ? qtText(format(own->value->value, units)) : QString();
    }
    return {};
}

} // namespace caprail
