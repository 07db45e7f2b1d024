// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/words.h>

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <session/filled.h>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

class GirdleWordsText {
    Q_DECLARE_TR_FUNCTIONS(GirdleWordsText)
};

/// Longer lists of unmet positions leave no room for the work.
constexpr std::size_t mostUnmetTold = 3;

const QString betweenParts = QStringLiteral(" · ");

QString signedHeight(double nanometres, const Units& units) {
    return qtText(formatSigned(Length(toNearest(nanometres)), units));
}

QString names(const std::vector<std::string>& shims) {
    QStringList list;
    for (const std::string& shim : shims) {
        list << qtText(shim);
    }
    return list.isEmpty() ? GirdleWordsText::tr("no shim") : list.join(QStringLiteral(" + "));
}

} // namespace

QString surveySentence(const Assessment& assessment, const Units& units) {
    const SurveyResult& survey = assessment.survey;
    QStringList parts{GirdleWordsText::tr("%1 of %2 gaps accepted").arg(survey.accepted).arg(survey.positions)};
    if (survey.spread) {
        parts << GirdleWordsText::tr("spread %1 (%2 to %3)")
                     .arg(qtText(format(*survey.spread, units)), qtText(formatBare(*survey.smallest, units)),
                          qtText(formatBare(*survey.largest, units)));
    }
    if (survey.pooledStandardDeviation) {
        parts << GirdleWordsText::tr("repeatability s = %1")
                     .arg(qtText(formatSpread(*survey.pooledStandardDeviation, units)));
    }
    return parts.join(betweenParts);
}

QString flushnessSentence(const Assessment& assessment, const Units& units) {
    const FlushnessResult& flush = assessment.flushness;
    QStringList parts;
    const auto add = [&](const std::optional<double>& term, const char* name) {
        if (term) {
            parts << GirdleWordsText::tr(name).arg(signedHeight(*term, units));
        }
    };
    add(flush.offset, QT_TRANSLATE_NOOP("GirdleWordsText", "offset %1"));
    add(flush.pitch, QT_TRANSLATE_NOOP("GirdleWordsText", "pitch %1"));
    add(flush.roll, QT_TRANSLATE_NOOP("GirdleWordsText", "roll %1"));
    add(flush.twist, QT_TRANSLATE_NOOP("GirdleWordsText", "twist %1"));
    const auto worst =
        std::ranges::max_element(flush.localError, {}, [](const auto& place) { return std::abs(place.second); });
    if (worst != flush.localError.end()) {
        parts << GirdleWordsText::tr("local up to %1 at %2")
                     .arg(signedHeight(worst->second, units), qtText(code(worst->first)));
    }
    return joined({parts.join(betweenParts), qtText(flush.sentence)}, QStringLiteral("\n"));
}

QString ringLegend(const Facts& facts, const Units& units) {
    const Band band = residualBand(facts).band;
    return filled(GirdleWordsText::tr("Rings: the residual of the stack. Thin: in its band, %1 to %2 · disc with rays: proud of "
                                      "it · dashed ring: loose"),
                  qtText(formatSigned(band.lo(), units)), qtText(formatSigned(band.hi(), units)));
}

QString signedShort(Length length, const Units& units) {
    return (length > Length() ? QStringLiteral("+") : QString()) + qtText(formatShort(length, units));
}

QString usualBandNote(const ResidualBand& band, const Units& units) {
    return GirdleWordsText::tr("no residual band is set, the usual %1 to %2 is taken")
        .arg(qtText(formatSigned(band.band.lo(), units)), qtText(formatSigned(band.band.hi(), units)));
}

QString usualBandSentence(const ResidualBand& band, const Units& units) {
    return GirdleWordsText::tr("No residual band is set: the usual %1 to %2 is taken (common practice, no source). "
                               "Set the band “residual” at the engine station.")
        .arg(qtText(formatSigned(band.band.lo(), units)), qtText(formatSigned(band.band.hi(), units)));
}

/// "8 of 10 in band, 12 shims, largest residual 0.3 thou".
static QString figuresText(const StackPlan& plan, const Units& units) {
    QStringList figures{GirdleWordsText::tr("%1 of %2 in band").arg(plan.inBand).arg(plan.stacks.size()),
                        GirdleWordsText::tr("%n shims", nullptr, plan.shims),
                        GirdleWordsText::tr("largest residual %1").arg(qtText(format(plan.largestResidual, units)))};
    if (!plan.loads.empty()) {
        figures << GirdleWordsText::tr("largest load %1").arg(qtText(format(newtons(plan.largestLoad), units)));
    }
    return figures.join(QStringLiteral(", "));
}

/// What a plan that is not proven may still lack.
static QString shortfall(const StackPlan& plan, const ShareOfBound& share) {
    switch (share.figure) {
    case PlanFigure::inBand:
    case PlanFigure::shims:
        return GirdleWordsText::tr("No plan can have more than %1 in band, nor then fewer than %2 shims: this is at "
                                   "least %3 % of what can be.")
            .arg(plan.bound.inBand)
            .arg(plan.bound.shims)
            .arg(std::floor(100 * share.share));
    case PlanFigure::largestResidual:
    case PlanFigure::sumResidual:
        return GirdleWordsText::tr("No plan has more in band, nor as many with fewer shims; only the residuals may "
                                   "still be bettered.");
    case PlanFigure::twistSum:
        return GirdleWordsText::tr("No plan has more in band, nor as many with fewer shims; only the twist and the "
                                   "residuals may still be bettered.");
    case PlanFigure::largestLoad:
    case PlanFigure::sumSquareLoad:
        return GirdleWordsText::tr("No plan has more in band, nor as many with fewer shims; only the loads may still "
                                   "be bettered.");
    case PlanFigure::none:
        break;
    }
    return GirdleWordsText::tr("No plan is better in any figure.");
}

QString planSentence(const PlanOutcome& outcome, const Units& units) {
    if (!outcome.plan) {
        return outcome.problem;
    }
    const StackPlan& plan = *outcome.plan;
    if (outcome.task.isClosed) {
        return GirdleWordsText::tr("Closed: these stacks are in the engine.");
    }
    if (!plan.stacks.empty() && outcome.task.stays.size() == plan.stacks.size()) {
        return GirdleWordsText::tr("Every stack stands and stays: there is nothing to plan.");
    }
    if (plan.stacks.empty()) {
        return GirdleWordsText::tr("Nothing to plan yet: the plan begins with the first accepted gap.");
    }
    if (outcome.task.request.shims.empty()) {
        return GirdleWordsText::tr("The kit is empty: add its shims first (Alt+2).");
    }
    QStringList sentences;
    if (const std::size_t stays = outcome.task.stays.size(); stays > 0) {
        sentences << filled(GirdleWordsText::tr("%1 stacks stand and stay; the plan is for the other %2."), stays,
                            plan.stacks.size() - stays);
    }
    sentences << (plan.proven ? GirdleWordsText::tr("Proven best: %1 (%2 ms).")
                              : GirdleWordsText::tr("Best found so far: %1 (%2 ms)."))
                     .arg(figuresText(plan, units))
                     .arg(outcome.milliseconds, 0, 'f', outcome.milliseconds < 10 ? 1 : 0);
    if (!plan.proven) {
        sentences << shortfall(plan, shareOfBound(plan, outcome.task.request.objective));
    }
    if (!outcome.task.band.isSet) {
        sentences << usualBandSentence(outcome.task.band, units);
    }
    sentences << qtText(outcome.doubt);
    return joined(sentences, QStringLiteral(" "));
}

QString unmetSentence(const PlanOutcome& outcome, const Units& units) {
    if (!outcome.plan) {
        return {};
    }
    if (outcome.task.request.shims.empty()) {
        return {};
    }
    QStringList lines;
    for (const UnmetPosition& unmet : outcome.plan->unmet) {
        if (lines.size() == static_cast<qsizetype>(mostUnmetTold)) {
            lines << GirdleWordsText::tr("… and %1 more: see the drawing.")
                         .arg(outcome.plan->unmet.size() - mostUnmetTold);
            break;
        }
        QString line =
            (outcome.plan->inBand == outcome.plan->bound.inBand
                 ? GirdleWordsText::tr("%1 cannot be met: nearest %2, residual %3.")
                 : GirdleWordsText::tr("%1 is not met by the plan found so far: nearest %2, residual %3."))
                .arg(qtText(unmet.position), names(unmet.nearest), qtText(formatSigned(unmet.residual, units)));
        for (const Remedy& remedy : outcome.remedies) {
            if (remedy.position != unmet.position) {
                continue;
            }
            line += QLatin1Char(' ');
            line += remedy.kind == Remedy::Kind::buy
                        ? GirdleWordsText::tr("Buy a shim of %1.").arg(qtText(format(remedy.thickness, units)))
                        : GirdleWordsText::tr("Or lap %1 from %2 to %3.")
                              .arg(qtText(remedy.shim), qtText(format(remedy.from, units)),
                                   qtText(format(remedy.thickness, units)));
        }
        lines << line;
    }
    return lines.join(QLatin1Char('\n'));
}

/// What the best plan saves, by the figure that decides between it and the stacks as built. What is written as nothing
/// is saved all the same, but not told by its figure.
static QString savedByPlan(const PlanComparison& built, const Units& units) {
    const auto figure = [&](auto saved) {
        return isWrittenAsNothing(saved, units) ? QString() : qtText(format(saved, units));
    };
    switch (built.decides) {
    case PlanFigure::inBand:
        return GirdleWordsText::tr("The plan has %1 more in band.").arg(built.fewerInBand);
    case PlanFigure::shims:
        return GirdleWordsText::tr("The plan saves %n shims.", nullptr, built.moreShims);
    case PlanFigure::largestLoad: {
        const QString load = figure(newtons(built.largerLoad));
        return load.isEmpty() ? GirdleWordsText::tr("The plan's largest load is a little smaller.")
                              : GirdleWordsText::tr("The plan's largest load is %1 smaller.").arg(load);
    }
    case PlanFigure::largestResidual: {
        const QString residual = figure(built.largerResidual);
        return residual.isEmpty() ? GirdleWordsText::tr("The plan's largest residual is a little smaller.")
                                  : GirdleWordsText::tr("The plan's largest residual is %1 smaller.").arg(residual);
    }
    case PlanFigure::sumResidual: {
        const QString sum = figure(built.largerSum);
        return sum.isEmpty() ? GirdleWordsText::tr("The plan's residuals add up to a little less.")
                             : GirdleWordsText::tr("The plan's residuals add up to %1 less.").arg(sum);
    }
    case PlanFigure::twistSum:
        return GirdleWordsText::tr("The plan twists the plate less.");
    case PlanFigure::sumSquareLoad:
        return GirdleWordsText::tr("The plan's loads are smaller together.");
    case PlanFigure::none:
        break;
    }
    return {};
}

QString comparisonSentence(const PlanComparison& built, const Units& units) {
    if (built.isAsGood()) {
        return GirdleWordsText::tr("The stacks as built are as good as the best plan.");
    }
    QStringList tooLarge;
    for (const std::string& position : built.tooLarge) {
        tooLarge << qtText(position);
    }
    const QString larger = tooLarge.isEmpty() ? QString()
                                              : GirdleWordsText::tr("More shims than the rules allow in one stack: %1.")
                                                    .arg(tooLarge.join(QStringLiteral(", ")));
    if (built.isBetter) {
        return joined({tooLarge.isEmpty()
                           ? GirdleWordsText::tr("The stacks as built are better than the plan found so far.")
                           : GirdleWordsText::tr("The stacks as built are better than the plan."),
                       larger},
                      QStringLiteral(" "));
    }
    QStringList figures{GirdleWordsText::tr("%1 in band").arg(built.inBand),
                        GirdleWordsText::tr("%n shims", nullptr, built.shims)};
    if (built.inBand > 0) {
        figures << GirdleWordsText::tr("largest residual %1").arg(qtText(format(built.largestResidual, units)));
    }
    if (built.decides == PlanFigure::largestLoad || built.decides == PlanFigure::sumSquareLoad) {
        figures << GirdleWordsText::tr("largest load %1").arg(qtText(format(newtons(built.largestLoad), units)));
    }
    return joined({GirdleWordsText::tr("As built: %1.").arg(figures.join(QStringLiteral(", "))),
                   savedByPlan(built, units), larger},
                  QStringLiteral(" "));
}

QString loadWord(Force force, const Units& units) {
    switch (pullOf(force, units)) {
    case Pull::up:
        return GirdleWordsText::tr("up");
    case Pull::down:
        return GirdleWordsText::tr("down");
    case Pull::none:
        break;
    }
    return GirdleWordsText::tr("none");
}

QString loadText(Force force, const Units& units) {
    const Pull pull = pullOf(force, units);
    const QString shape = pull == Pull::up     ? QStringLiteral("▲ ")
                          : pull == Pull::down ? QStringLiteral("▼ ")
                                               : QString();
    return shape + qtText(format(force.magnitude(), units)) + QLatin1Char(' ') + loadWord(force, units);
}

QString loadSentence(const BlockLoad& load, Rail rail, const Units& units) {
    if (!load.known) {
        return qtText(load.known.error().sentence);
    }
    const GirdleLoad& here = load.known->under(rail);
    const std::size_t most = load.known->largestAt(rail);
    const Force force = here.force[most];
    return GirdleWordsText::tr("Largest load %1 at %2, %3. Largest bending stress in the plate %4; energy %5 mJ.")
        .arg(qtText(format(force.magnitude(), units)), qtText(describe(load.places[most].place)),
             loadWord(force, units), qtText(format(here.largestStress, units)),
             qtText(formatNumber(here.energy * 1000, 1, units.decimalMark)));
}

QString gapSentence(const GapResult& gap, const Units& units) {
    QString text;
    if (gap.accepted) {
        text = GirdleWordsText::tr("accepted %1 %2")
                   .arg(qtText(format(*gap.accepted, units)), qtText(describe(gap.uncertainty, units)));
    } else if (gap.current.empty()) {
        text = gap.outdated.empty() ? GirdleWordsText::tr("not read yet") : GirdleWordsText::tr("to be read again");
    } else {
        text = GirdleWordsText::tr("not accepted yet");
    }
    QStringList parts{text};
    if (gap.current.size() == 1) {
        parts << GirdleWordsText::tr("one reading");
    } else if (!gap.current.empty()) {
        parts << GirdleWordsText::tr("%1 readings within %2, s = %3")
                     .arg(gap.current.size())
                     .arg(qtText(format(gap.range, units)), qtText(formatSpread(gap.standardDeviation, units)));
    }
    if (gap.movement) {
        parts << GirdleWordsText::tr("expected %1 after what moved").arg(qtText(format(gap.movement->window, units)));
    }
    return parts.join(betweenParts);
}

} // namespace caprail
