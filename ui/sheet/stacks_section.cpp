// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <algorithm>
#include <cmath>
#include <assessment/feel_study.h>
#include <ledger/band_names.h>
#include <session/filled.h>

namespace caprail::sheet {

namespace {

QString shimLine(const Facts& facts, const StackResult& stack, const std::string& name, const Units& units) {
    const auto at = facts.shims.find(name);
    if (at == facts.shims.end()) {
        return text(name);
    }
    const auto measured = at->second.measured();
    QString line = text(name) + QStringLiteral("  ") + bare(at->second.added.what.marked.value, units) +
                   QStringLiteral(" / ") + (measured ? bare(measured, units) : Sheet::tr("not measured"));
    if (std::ranges::find(stack.suspect, name) != stack.suspect.end()) {
        line = Sheet::tr("%1 (differs from its marking)").arg(line);
    }
    return line;
}

SheetCell recheckCell(const Writing& w, Position p) {
    const auto at = w.facts().rechecks.find(p);
    const CheckState state = w.stateOf("recheck:" + code(p));
    if (at == w.facts().rechecks.end()) {
        return stateCell(state);
    }
    const QString felt = wordText(at->second.what.feel);
    return stateCell(state, state == CheckState::stale ? felt + QStringLiteral(", ") + stateWord(state) : felt);
}

/// What the printed gap and thickness come to; and what the recheck says, where that carries the verdict.
QString residualText(const StackResult& stack, const std::optional<Length>& gap, const Units& units) {
    if (!stack.residual || !gap) {
        return none();
    }
    const Length printed = asPrinted(*gap, units) - asPrinted(stack.thickness, units);
    const auto signedText = [&](Length l) { return text(formatFineSigned(l, units)).section(QLatin1Char(' '), 0, 0); };
    switch (stack.carriedBy) {
    case ResidualBy::bracket:
        return signedText(printed) + QLatin1Char('\n') +
               Sheet::tr("bracketed: %1").arg(signedText(stack.carriedResidual.value_or(printed)));
    case ResidualBy::feel:
        return signedText(printed) + QLatin1Char('\n') + Sheet::tr("by feel");
    case ResidualBy::arithmetic:
        break;
    }
    return signedText(printed);
}

std::vector<SheetCell> rowFor(const Writing& w, Position p) {
    const Units& units = w.units();
    const auto at = w.assessment().stacks.find(p);
    const auto gap = w.assessment().gaps.find(p);
    const std::optional<Length> gapValue = gap == w.assessment().gaps.end() ? std::nullopt : gap->second.last;
    if (at == w.assessment().stacks.end()) {
        return {strongCell(text(code(p))),
                quietCell(Sheet::tr("no stack")),
                none(),
                bare(gapValue, units),
                none(),
                none(),
                recheckCell(w, p),
                verdictCell(w, "stack:" + code(p))};
    }
    const StackResult& stack = at->second;
    QStringList shims;
    for (const std::string& name : stack.shims) {
        shims << shimLine(w.facts(), stack, name, units);
    }
    if (shims.isEmpty()) {
        shims << Sheet::tr("no shim needed");
    }
    return {strongCell(text(code(p))),
            shims.join(QLatin1Char('\n')),
            bareFine(stack.thickness, units),
            bareFine(gapValue, units),
            strongCell(residualText(stack, gapValue, units)),
            stack.residual ? bareU(stack.carriedUncertainty, units) : none(),
            recheckCell(w, p),
            verdictCell(w, "stack:" + code(p))};
}

/// What was left out of the engine: free shims and those set aside, so that all are counted.
QString countOfShims(const Facts& facts) {
    const auto inStack =
        std::ranges::count_if(facts.shims, [](const auto& one) { return one.second.inStackAt.has_value(); });
    const auto aside = std::ranges::count_if(facts.shims, [](const auto& one) { return one.second.isSetAside; });
    return Sheet::tr("The kit has %1 shims: %2 in stacks, %3 set aside, %4 free.")
        .arg(facts.shims.size())
        .arg(inStack)
        .arg(aside)
        .arg(static_cast<std::ptrdiff_t>(facts.shims.size()) - inStack - aside);
}

/// The figures of a good one stand above already.
QString goodFlushness(const Writing& w) {
    const FlushnessResult& f = w.assessment().flushness;
    const BandFact* band = w.facts().bandNamed(bands::twist);
    return joined({band != nullptr && f.twist
                       ? Sheet::tr("Twist is within its limits: %1.").arg(bandText(w, bands::twist))
                       : Sheet::tr("Worked out from every stack as built."),
                   text(f.sentence)},
                  QStringLiteral(" "));
}

/// One end of a bracket: which shims went out and in, by how much, and how it felt.
QString exchangeText(const Writing& w, const Rare<NameList>& out, const Rare<NameList>& in,
                     const std::optional<Feel>& felt) {
    if (!felt || !out || !in) {
        return none();
    }
    Length change;
    QStringList words;
    for (const auto& [list, sign] : {std::pair(&*out, -1), std::pair(&*in, 1)}) {
        for (const std::string& name : list->names) {
            words << (sign < 0 ? QStringLiteral("− ") : QStringLiteral("+ ")) + text(name);
            if (const auto shim = w.facts().shims.find(name); shim != w.facts().shims.end()) {
                change += shim->second.thickness() * sign;
            }
        }
    }
    return words.join(QLatin1Char(' ')) + QStringLiteral("  (") +
           text(formatFineSigned(change, w.units())).section(QLatin1Char(' '), 0, 0) + QStringLiteral("): ") +
           wordText(*felt);
}

/// The rechecks that were bracketed, with the shims that were exchanged: what the verdict of those stacks stands on.
void bracketsTable(const Writing& w) {
    SheetTable table{{{Sheet::tr("Position")},
                      {inUnit(Sheet::tr("Thicker"), w.units())},
                      {inUnit(Sheet::tr("Thinner"), w.units())},
                      {Sheet::tr("Straightedge")},
                      {Sheet::tr("By, when")}},
                     {}};
    for (const auto& [position, recheck] : w.facts().rechecks) {
        const RecheckMade& r = recheck.what;
        if (r.thickerFelt || r.thinnerFelt) {
            table.rows.push_back({strongCell(text(code(position))),
                                  exchangeText(w, r.thickerOut, r.thickerIn, r.thickerFelt),
                                  exchangeText(w, r.thinnerOut, r.thinnerIn, r.thinnerFelt), text(r.instrument),
                                  quietCell(w.byAndWhen(recheck))});
        }
    }
    if (table.rows.empty()) {
        return;
    }
    w.flow.subheading(Sheet::tr("Bracketed rechecks"));
    w.flow.introduction(Sheet::tr("With shims exchanged for thicker ones the straightedge rocks, for thinner ones it is "
                                  "loose: the residual lies between."));
    w.flow.table(table);
}

/// The feels that carry a verdict: whose, tried when, and what they are worth.
void feelRemarks(const Writing& w) {
    std::vector<std::pair<std::string, std::string>> said;
    for (const auto& [position, stack] : w.assessment().stacks) {
        const auto recheck = w.facts().rechecks.find(position);
        if (stack.carriedBy != ResidualBy::feel || recheck == w.facts().rechecks.end()) {
            continue;
        }
        const std::pair who(recheck->second.person, recheck->second.what.instrument);
        const auto standing = feelStandingOf(w.facts(), who.first, who.second);
        if (!standing || !standing->conclusion.delta || std::ranges::find(said, who) != said.end()) {
            continue;
        }
        said.push_back(who);
        w.flow.remark(filled(Sheet::tr("The feel of %1 with %2 was tried on %3: %4 answers, ± %5."), text(who.first),
                             text(who.second), w.day(standing->conclusion.last), standing->conclusion.answers,
                             text(formatUncertainty(static_cast<double>(standing->conclusion.delta->value()),
                                                    w.units()))));
    }
}

} // namespace

void stacksSection(const Writing& w) {
    if (!w.facts().layout || (w.facts().stacks.empty() && w.facts().shims.empty())) {
        return;
    }
    const Units& units = w.units();
    SheetTable table{{{Sheet::tr("Position")},
                      {inUnit(Sheet::tr("Shim  marked / measured"), units)},
                      rightColumn(Sheet::tr("Thickness")),
                      rightColumn(Sheet::tr("Gap")),
                      rightColumn(Sheet::tr("Residual")),
                      rightColumn(Sheet::tr("± U")),
                      {Sheet::tr("Straightedge")},
                      {Sheet::tr("Verdict")}},
                     {}};
    for (const Position p : w.facts().layout->positions()) {
        table.rows.push_back(rowFor(w, p));
    }
    w.flow.heading(Sheet::tr("Shim stacks"));
    if (w.facts().bandNamed(bands::residual) != nullptr) {
        w.flow.introduction(
            Sheet::tr("Limits of the residual (gap less stack; positive is loose): %1").arg(bandText(w, bands::residual)));
    }
    w.flow.table(table);
    w.flow.remark(countOfShims(w.facts()));
    bracketsTable(w);
    feelRemarks(w);
}

void flushnessSection(const Writing& w) {
    const FlushnessResult& f = w.assessment().flushness;
    if (!w.facts().layout || f.localError.empty()) {
        return;
    }
    const Units& units = w.units();
    const auto height = [&](const std::optional<double>& nanometres) {
        return nanometres ? text(formatSigned(Length(toNearest(*nanometres)), units)) : Sheet::tr("cannot be told");
    };
    w.flow.heading(Sheet::tr("Flushness of the girdle on its stacks"));
    w.flow.values({{Sheet::tr("Offset"), height(f.offset)},
                   {Sheet::tr("Pitch, front to rear"), height(f.pitch)},
                   {Sheet::tr("Roll, left to right"), height(f.roll)},
                   {Sheet::tr("Twist, diagonal to diagonal"), height(f.twist)}},
                  4);
    SheetTable table{{{Sheet::tr("Local error, %1").arg(QLatin1String(symbol(units.length)))}}, {}};
    const EngineLayout& layout = *w.facts().layout;
    std::vector<SheetCell> left{strongCell(capitalised(wordText(Side::left)))};
    std::vector<SheetCell> right{strongCell(capitalised(wordText(Side::right)))};
    for (int cap = 1; cap <= layout.caps(); ++cap) {
        if (!layout.isTied(cap)) {
            continue;
        }
        table.columns.push_back(rightColumn(Sheet::tr("Cap %1").arg(cap)));
        for (auto* row : {&left, &right}) {
            const auto at = f.localError.find({cap, row == &left ? Side::left : Side::right});
            row->emplace_back(at == f.localError.end() ? none() : bareSigned(Length(toNearest(at->second)), units));
        }
    }
    table.rows = {left, right};
    constexpr double nothing = 5'080; // 0.0002 in: less is no form, but the reading of the leaves
    if (std::ranges::any_of(f.localError, [&](const auto& one) { return std::abs(one.second) >= nothing; })) {
        w.flow.table(table);
    } else {
        w.flow.remark(Sheet::tr("No place lies off the plane of the others by %1 or more.")
                          .arg(text(format(Length(toNearest(nothing)), units))));
    }
    if (const Check* check = w.assessment().find("flushness"); check != nullptr) {
        w.flow.stateLine(check->state, check->isGood() ? goodFlushness(w) : capitalised(text(check->sentence)));
    }
    w.flow.remark(Sheet::tr("Heights are over the bolted span. Positive: the girdle sits low there. Twist is what "
                            "bends a block; offset, pitch and roll move the plate as a whole."));
}

} // namespace caprail::sheet
