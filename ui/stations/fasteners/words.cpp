// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/fasteners/words.h>

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <fasteners/sequence.h>
#include <session/filled.h>
#include <stations/common/station_text.h>
#include <work/tightening.h>
#include <work/torque_working.h>

namespace caprail {

namespace {

struct FastenersText {
    Q_DECLARE_TR_FUNCTIONS(FastenersStation)
};

template <class Q> QString valueText(const Entered<Q>& entered, const Units& units) {
    return qtText(format(entered.value, units));
}

/// As written beside a fastener: the number alone.
QString shortTorque(Torque torque, const Units& units) {
    const QString text = qtText(format(torque, units)).section(QLatin1Char(' '), 0, 0);
    return text.endsWith(QStringLiteral(".0")) || text.endsWith(QStringLiteral(",0")) ? text.chopped(2) : text;
}

PlanContent fastenerContent(const Facts& facts, PlanLayers layers, const std::vector<FastenerId>& order) {
    PlanContent content = planContent(facts);
    content.layers = layers | PlanLayer::sequence;
    for (const auto& [fastener, number] : sequenceNumbers(order)) {
        content.sequence[qtText(code(fastener))] = number;
    }
    for (const FastenerId& f : order) {
        content.order << qtText(code(f));
    }
    return content;
}

/// The steps up to a torque as bare numbers: "25.0", "50.0", "75.0".
QStringList stepTexts(Torque torque, std::int64_t count, const Units& units) {
    QStringList steps;
    for (const Torque step : equalSteps(torque, static_cast<int>(count)).value_or(std::vector<Torque>())) {
        steps << qtText(format(step, units)).section(QLatin1Char(' '), 0, 0);
    }
    return steps;
}

/// "main outer: 25.0 → 50.0 → 75.0 lbf·ft"; empty when nothing is specified.
QString stepsText(const FastenerGroupSet& group, const Units& units) {
    QString line;
    if (group.torque && group.method != TighteningMethod::stretch && isSpecified(group)) {
        line = stepTexts(group.torque->value, group.steps, units).join(QStringLiteral(" → ")) + QLatin1Char(' ') +
               qtText(symbol(units.torque));
    }
    if (group.angle && hasAngle(group.method)) {
        const QString angle = valueText(*group.angle, units);
        line = line.isEmpty() ? angle : FastenersText::tr("%1, then %2").arg(line, angle);
    }
    if (group.stretch && group.method == TighteningMethod::stretch) {
        line = FastenersText::tr("stretch %1").arg(valueText(*group.stretch, units));
    }
    return line.isEmpty() ? line : groupName(group) + QStringLiteral(": ") + line;
}

PlanLayer layerOf(FastenerKind kind) {
    switch (kind) {
    case FastenerKind::mainCap:
        return PlanLayer::mainFasteners;
    case FastenerKind::rod:
        return PlanLayer::rodFasteners;
    case FastenerKind::girdleNut:
        return PlanLayer::girdleNuts;
    case FastenerKind::panRail:
    case FastenerKind::front:
    case FastenerKind::rear:
        break;
    }
    return PlanLayer::rowFasteners;
}

/// Only the rows that a drawing of this kind is about, and the holes of the pan rail.
void keepRowsFor(PlanContent& content, FastenerKind kind) {
    std::erase_if(content.rows,
                  [&](const auto& row) { return row.first != kind && row.first != FastenerKind::panRail; });
    if (kind != FastenerKind::panRail && layerOf(kind) == PlanLayer::rowFasteners) {
        content.rows.erase(FastenerKind::panRail);
    }
}

} // namespace

QString groupName(const FastenerGroupSet& group) {
    return group.ring                              ? qtShown(group.group) + QLatin1Char(' ') + qtShown(*group.ring)
           : group.name && !group.name->empty() ? qtShown(group.group) + QStringLiteral(": ") + qtText(*group.name)
                                                   : qtShown(group.group);
}

QString verifiedText(VerifyMethod method) {
    switch (method) {
    case VerifyMethod::torque:
        break;
    case VerifyMethod::length:
        return FastenersText::tr("verified by its length, never pulled again");
    case VerifyMethod::witnessMark:
        return FastenersText::tr("verified by its witness mark, never pulled again");
    }
    return {};
}

QString foundText(const RoundOutcome& outcome, const Units& units) {
    if (outcome.outcome == Outcome::moved) {
        return outcome.angle ? FastenersText::tr("moved %1").arg(valueText(*outcome.angle, units)) : FastenersText::tr("moved");
    }
    if (outcome.stretch) {
        return FastenersText::tr("held, %1 stretch").arg(valueText(*outcome.stretch, units));
    }
    return outcome.by == VerifyMethod::witnessMark ? FastenersText::tr("its mark lines up") : FastenersText::tr("held");
}

QString broughtTo(const FastenerTightened& tightened, const Units& units) {
    QStringList parts;
    if (tightened.torque) {
        parts << valueText(*tightened.torque, units);
    }
    if (tightened.angle) {
        parts << valueText(*tightened.angle, units);
    }
    if (tightened.stretch) {
        parts << FastenersText::tr("%1 stretch").arg(valueText(*tightened.stretch, units));
    }
    return parts.join(QStringLiteral(" + "));
}

QString specifiedText(const Facts& facts, FastenerId fastener, const Units& units) {
    const auto* group = facts.groupOf(fastener);
    const auto specified = asSpecified(facts, fastener, {});
    if (group == nullptr || !specified) {
        return FastenersText::tr("Nothing is specified for it yet: set its group under Groups.");
    }
    QString text = FastenersText::tr("Specified: %1").arg(broughtTo(*specified, units));
    if (specified->torque && group->what.steps > 1) {
        const QStringList steps = stepTexts(specified->torque->value, group->what.steps, units);
        text = FastenersText::tr("%1, in steps of %2").arg(text, steps.join(QStringLiteral(" · ")));
    }
    for (const std::string& more : {group->what.thread, group->what.lubricant}) {
        text += more.empty() ? QString() : QStringLiteral(", ") + qtText(more);
    }
    const QString how = isVerified(fastener.kind) ? verifiedText(verifiedBy(group->what)) : QString();
    text += how.isEmpty() ? how : QStringLiteral(", ") + how;
    text += isSingleUse(group->what) ? QStringLiteral(", ") + FastenersText::tr("used once") : QString();
    return group->what.source.empty() ? text
                                      : filled(FastenersText::tr("%1 (says %2)"), text, qtText(group->what.source));
}

QString consequenceText(const Facts& facts, const Assessment& assessment, const Seen<RoundOutcome>& moved,
                        const Units& units) {
    const FastenerId f = moved.what.fastener;
    if (moved.what.outcome == Outcome::held) {
        return {};
    }
    const QString name = capitalised(qtText(describe(f)));
    QStringList sentences{moved.what.angle
                              ? FastenersText::tr("%1 moved %2.").arg(name, valueText(*moved.what.angle, units))
                              : FastenersText::tr("%1 moved.").arg(name)};
    if (f.kind == FastenerKind::mainCap) {
        for (const Side side : {Side::left, Side::right}) {
            const Position p{f.number, side};
            const auto gap = assessment.gaps.find(p);
            if (gap == assessment.gaps.end() || !gap->second.movement) {
                continue;
            }
            const GapAfterMovement& after = *gap->second.movement;
            sentences << FastenersText::tr("The gap at %1 now lies between %2 and %3.")
                             .arg(qtText(describe(p)), qtText(format(after.window.lo(), units)),
                                  qtText(format(after.window.hi(), units)));
            if (side == f.side) {
                sentences << qtText(describeLikely(after, units));
            }
        }
    }
    QStringList stale;
    for (const Check& check : assessment.checks) {
        if (check.state == CheckState::stale && check.staleBecause.entry == moved.entry) {
            stale << qtText(check.title);
        }
    }
    constexpr qsizetype most = 6;
    if (!stale.isEmpty()) {
        const qsizetype more = stale.size() - most;
        const QString named = stale.mid(0, most).join(QStringLiteral(", "));
        sentences << (more > 0 ? FastenersText::tr("Stale by it: %1 and %2 more.").arg(named).arg(more)
                               : FastenersText::tr("Stale by it: %1.").arg(named));
    }
    if (facts.layout) {
        sentences << FastenersText::tr("It must hold in a later round.");
    }
    return joined(sentences, QStringLiteral(" "));
}

QString extensionText(Torque wanted, const QString& length, const QString& offset, const QString& angle,
                      const Units& units) {
    const auto setting = settingAsTyped(wanted, coreText(length), coreText(offset), coreText(angle), units);
    if (!setting) {
        return qtText(setting.error().sentence);
    }
    QStringList lines{FastenersText::tr("Set the wrench to %1").arg(qtText(format(setting->value, units)))};
    for (const auto& line : setting->working) {
        lines << QStringLiteral("    ") + qtText(line);
    }
    return lines.join(QLatin1Char('\n'));
}

PlanContent tightenedContent(const Facts& facts, FastenerKind kind, const Units& units) {
    const PlanLayer layer = layerOf(kind);
    PlanContent content = fastenerContent(facts, layer, tighteningOrder(facts, kind));
    keepRowsFor(content, kind);
    QStringList titles;
    for (const auto& [key, group] : facts.groups) {
        const bool isInForce = key.kind == kind && !membersOf(facts, key).empty();
        if (const QString line = stepsText(group.what, units); isInForce && !line.isEmpty()) {
            titles << line;
        }
    }
    content.title = titles.join(QStringLiteral("    "));
    for (const FastenerId& f : tighteningOrder(facts, kind)) {
        PlanMark mark;
        mark.place = qtText(code(f));
        const auto at = facts.fasteners.find(f);
        if (at != facts.fasteners.end() && at->second.tightened) {
            const FastenerTightened& is = at->second.tightened->what;
            // The rows are too close together for figures: their badges stand at the fasteners.
            mark.figure = layer == PlanLayer::rowFasteners ? QString()
                          : is.torque                      ? shortTorque(is.torque->value, units)
                          : is.stretch                     ? qtText(formatShort(is.stretch->value, units))
                                                           : QString();
            mark.state = at->second.isLoose            ? CheckState::stale
                         : isTightAsSpecified(facts, f) ? CheckState::good
                         : facts.groupOf(f) == nullptr ? CheckState::notDone
                                                       : CheckState::out;
            mark.note = at->second.isLoose ? FastenersText::tr("loose") : QString();
            mark.spoken = at->second.isLoose ? FastenersText::tr("loosened") : broughtTo(is, units);
        }
        content.marks.push_back(std::move(mark));
    }
    return content;
}

PlanContent groupContent(const Facts& facts, const FastenerGroupSet& group, const Units& units) {
    // As if it were stored: its places and pieces are drawn as it says.
    Facts with;
    with.layout = facts.layout;
    with.groups = facts.groups;
    const GroupKey key = keyOf(group);
    with.groups.insert_or_assign(key, Seen<FastenerGroupSet>{facts.lastEntry + 1, {}, {}, group});
    std::vector<FastenerGroupSet> groups{group};
    for (const auto& [other, set] : facts.groups) {
        if (other.kind == group.group && other != key) {
            groups.push_back(set.what);
        }
    }
    std::ranges::stable_sort(groups, {}, [](const FastenerGroupSet& g) { return g.ring; });
    PlanContent content = fastenerContent(with, layerOf(group.group), tighteningOrder(with, group.group, groups));
    keepRowsFor(content, group.group);
    const auto members = membersOf(with, key);
    const auto all = fastenersOf(with, group.group);
    for (const FastenerId f : members.size() == all.size() ? std::vector<FastenerId>() : all) {
        const bool isMember = std::ranges::find(members, f) != members.end();
        const auto* other = with.groupOf(f);
        PlanMark mark;
        mark.place = qtText(code(f));
        mark.state = isMember ? CheckState::good : CheckState::notDone;
        mark.spoken = isMember ? FastenersText::tr("in this group")
                      : other == nullptr ? FastenersText::tr("in no group")
                                         : FastenersText::tr("in the group %1").arg(groupName(other->what));
        content.marks.push_back(std::move(mark));
    }
    content.title = stepsText(group, units);
    return content;
}

PlanContent roundContent(const Facts& facts, const RoundFact* round, const Units& units) {
    PlanContent content =
        fastenerContent(facts, PlanLayer::mainFasteners | PlanLayer::rodFasteners, verifyOrder(facts));
    for (const FastenerId& f : verifyOrder(facts)) {
        PlanMark mark;
        mark.place = qtText(code(f));
        if (round != nullptr && round->outcomes.contains(f)) {
            const RoundOutcome& outcome = round->outcomes.at(f).what;
            const bool hasMoved = outcome.outcome == Outcome::moved;
            const auto fault = whyNotCounted(facts, round->outcomes.at(f), units);
            mark.figure = hasMoved && outcome.angle ? valueText(*outcome.angle, units) : QString();
            mark.spoken = fault ? qtText(*fault) : foundText(outcome, units);
            mark.state = hasMoved                       ? CheckState::out
                         : round->voidedBy.entry != 0 ? CheckState::stale
                         : fault                        ? CheckState::notProven
                                                        : CheckState::good;
        }
        content.marks.push_back(std::move(mark));
    }
    return content;
}

} // namespace caprail
