// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/recheck_words.h>

#include <QCoreApplication>
#include <assessment/feel_study.h>
#include <session/filled.h>
#include <stations/common/station_text.h>

namespace caprail {

namespace {

class RecheckWordsText {
    Q_DECLARE_TR_FUNCTIONS(RecheckWordsText)
};

QString joined(const std::vector<std::string>& shims) {
    QStringList list;
    for (const std::string& shim : shims) {
        list << qtText(shim);
    }
    return list.join(QStringLiteral(" + "));
}

} // namespace

QString feelMeaning(Feel feel) {
    switch (feel) {
    case Feel::rocks:
        return RecheckWordsText::tr("R\nrocks\nproud: too thick");
    case Feel::drags:
        return RecheckWordsText::tr("D\ndrags\nright");
    case Feel::loose:
        break;
    }
    return RecheckWordsText::tr("L\nloose\nlow: too thin");
}

QString feelKey(Feel feel) {
    return feelMeaning(feel).left(1);
}

QString recheckSteps(const Facts& facts, Position position, RecheckAsk ask) {
    const auto made = facts.rechecks.find(position);
    const RecheckMade* recheck =
        made == facts.rechecks.end() || ask == RecheckAsk::asBuilt ? nullptr : &made->second.what;
    QStringList parts;
    const auto add = [&](RecheckAsk step, const QString& name, const std::optional<Feel>& felt) {
        const bool isNext = step == ask;
        parts << (isNext ? QStringLiteral("▸ ") : felt ? QStringLiteral("✓ ") : QStringLiteral("○ ")) + name +
                     (felt && !isNext ? QStringLiteral(": ") + qtShown(*felt) : QString());
    };
    add(RecheckAsk::asBuilt, RecheckWordsText::tr("as built"),
        recheck == nullptr ? std::nullopt : std::optional(recheck->feel));
    add(RecheckAsk::thicker, RecheckWordsText::tr("thicker"), recheck == nullptr ? std::nullopt : recheck->thickerFelt);
    add(RecheckAsk::thinner, RecheckWordsText::tr("thinner"), recheck == nullptr ? std::nullopt : recheck->thinnerFelt);
    return parts.join(QStringLiteral("   "));
}

QString exchangeSentence(const RecheckGuide& guide, const Units& units) {
    if (!guide.exchange) {
        return {};
    }
    const Exchange& e = *guide.exchange;
    const QString what = e.out.empty()  ? filled(RecheckWordsText::tr("Lay in %1"), joined(e.in))
                         : e.in.empty() ? filled(RecheckWordsText::tr("Take out %1"), joined(e.out))
                                        : filled(RecheckWordsText::tr("Take out %1, lay in %2"), joined(e.out), joined(e.in));
    const QString change = qtText(formatFine(e.change.magnitude(), units));
    return guide.ask == RecheckAsk::thicker
               ? filled(RecheckWordsText::tr("%1: the stack is %2 thicker. It should rock."), what, change)
               : filled(RecheckWordsText::tr("%1: the stack is %2 thinner. It should be loose."), what, change);
}

QString carriedLines(const StackResult& stack, const Units& units) {
    if (!stack.residual) {
        return {};
    }
    const auto line = [&](const QString& by, Length residual, const Uncertainty& uncertainty) {
        return filled(RecheckWordsText::tr("%1: %2 %3"), by, qtText(formatFineSigned(residual, units)),
                      qtText(describe(uncertainty, units)));
    };
    const QString arithmetic = line(RecheckWordsText::tr("by arithmetic"), *stack.residual, stack.uncertainty);
    if (!stack.feltResidual) {
        return RecheckWordsText::tr("The verdict is carried %1").arg(arithmetic);
    }
    const bool isFeltCarrying = stack.carriedBy != ResidualBy::arithmetic;
    const QString felt = line(stack.feltBy == ResidualBy::bracket ? RecheckWordsText::tr("by the bracketed recheck")
                                                                  : RecheckWordsText::tr("by a feel that was tried"),
                              *stack.feltResidual, stack.feltUncertainty);
    return RecheckWordsText::tr("The verdict is carried %1").arg(isFeltCarrying ? felt : arithmetic) +
           QStringLiteral("\n") + (isFeltCarrying ? arithmetic : felt);
}

QString feelSentence(const Facts& facts, const WhoFeels& who, const Units& units, UtcTime now) {
    if (who.straightedge.empty()) {
        return RecheckWordsText::tr("Name the straightedge: without it the recheck carries no verdict.");
    }
    const auto standing = feelStandingOf(facts, who.person, who.straightedge);
    const QString person = qtText(who.person);
    const QString edge = qtText(who.straightedge);
    if (!standing) {
        return filled(RecheckWordsText::tr("The feel of %1 with %2 was never tried."), person, edge);
    }
    if (!standing->conclusion.delta) {
        return filled(RecheckWordsText::tr("The feel of %1 with %2: %3"), person, edge,
                      qtText(standing->conclusion.missing));
    }
    const QString delta = qtText(formatUncertainty(static_cast<double>(standing->conclusion.delta->value()), units));
    const QString due = qtText(format(*standing->due()));
    return standing->stands(now)
               ? filled(RecheckWordsText::tr("The feel of %1 with %2 is worth ± %3, until %4."), person, edge, delta, due)
               : filled(RecheckWordsText::tr("⚑ The feel of %1 with %2 was worth ± %3 and was to be tried again by %4."),
                        person, edge, delta, due);
}

} // namespace caprail
