// SPDX-License-Identifier: GPL-3.0-or-later
/// What the customer reads first: the verdict, what was changed, the figures that matter, signatures, running in.
#include <session/filled.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <algorithm>
#include <assessment/beside_verdict.h>
#include <assessment/fastener_groups.h>
#include <assessment/unconfirmed.h>
#include <ledger/band_names.h>
#include <work/deviations.h>

namespace caprail::sheet {

namespace {

/// A panel over the whole width: nobody overlooks it, in black and white neither.
void panel(const Writing& w, CheckState state, const QString& words, const QString& below) {
    const SheetType& type = w.flow.type();
    const qreal inset = points(8);
    const TextBlock head(words, type.title, w.flow.width() - 2 * inset);
    const TextBlock body(below, type.body, w.flow.width() - 2 * inset);
    const QColor colour = type.look.of(state);
    w.flow.setting(head.height() + body.height() + 2 * inset, [=, &type](QPainter& painter, const QRectF& area) {
        painter.fillRect(area, type.tint);
        painter.setPen(QPen(colour, points(1.8)));
        painter.drawRect(area.adjusted(points(0.9), points(0.9), -points(0.9), -points(0.9)));
        head.paintAs(PdfRole::paragraph, painter, area.topLeft() + QPointF(inset, inset), colour);
        body.paintAs(PdfRole::paragraph, painter, area.topLeft() + QPointF(inset, inset + head.height()), type.ink);
    });
}

/// How many of a gate's checks are not good, and the first of them; without a word on where in the program that is done.
QString stillOpen(const Assessment& assessment) {
    const Gate& closing = assessment.gate(GateKind::closing);
    if (closing.needs.empty()) {
        return Sheet::tr("Nothing was measured yet.");
    }
    if (closing.holding.empty()) {
        return Sheet::tr("Everything was measured and found good; the closing steps and the sign-off are still open.");
    }
    const Check& first = assessment.checks[closing.holding.front()];
    return Sheet::tr("%1 of %2 checks are not good. First of them: %3, %4.")
        .arg(closing.holding.size())
        .arg(closing.needs.size())
        .arg(text(first.title), stateWord(first.state));
}

/// One line of the figures that matter: everything of one kind that was judged by numbers, with its worst verdict.
struct KeyFigure {
    QString what;
    std::optional<Length> smallest, largest;
    std::optional<Band> band;
    bool isOneBand = true;
    std::size_t places = 0, good = 0;
    CheckState worst = CheckState::good;

    void add(const Check& check) {
        ++places;
        good += check.isGood() ? 1 : 0;
        worst = worse(worst, check.state);
        for (const Judged& judged : check.judged) {
            smallest = smallest ? std::min(*smallest, judged.value) : judged.value;
            largest = largest ? std::max(*largest, judged.value) : judged.value;
            isOneBand = isOneBand && (!band || *band == judged.band);
            band = judged.band;
        }
    }
    [[nodiscard]] std::vector<SheetCell> row(const Units& units) const {
        QString found = none();
        if (smallest && largest) {
            found = *smallest == *largest
                        ? text(formatFine(*smallest, units))
                        : text(formatFineBare(*smallest, units)) + QStringLiteral(" – ") + text(formatFine(*largest, units));
        }
        const QString limits = !band || !isOneBand       ? none()
                               : isUpperLimitOnly(*band) ? Sheet::tr("at most %1").arg(text(format(band->hi(), units)))
                                                         : text(format(*band, units));
        SheetCell verdict = worst == CheckState::good && band ? verdictCell(worst) : stateCell(worst);
        verdict.text = Sheet::tr("%1 (%2 of %3)").arg(verdict.text.isEmpty() ? stateWord(worst) : verdict.text).arg(good).arg(places);
        return {strongCell(what), found, limits, verdict};
    }
};

QString figureName(const Check& check) {
    switch (check.kind) {
    case CheckKind::mainClearance:
        return Sheet::tr("Main bearing clearance");
    case CheckKind::rodClearance:
        return Sheet::tr("Rod bearing clearance");
    case CheckKind::stack:
        return Sheet::tr("Gap left under the girdle (residual)");
    case CheckKind::flushness:
        return Sheet::tr("Twist of the girdle");
    case CheckKind::pickup:
        return Sheet::tr("Clearance under the oil pickup");
    case CheckKind::verifyRound:
        return Sheet::tr("Main-cap and rod fasteners at their torque");
    case CheckKind::turningTorque:
        return Sheet::tr("The crank turns freely");
    case CheckKind::trialFit:
        return Sheet::tr("Trial fit: all clear");
    case CheckKind::fit:
        break;
    default:
        return {};
    }
    const auto* place = std::get_if<FitId>(&check.subject);
    return place == nullptr ? text(check.title) : capitalised(text(Core::say(place->first)));
}

} // namespace

void verdictSection(const Writing& w) {
    w.flow.space(points(5));
    if (const auto& signedOff = w.facts().signedOff) {
        const QString by = filled(Sheet::tr("Build %1 was closed and signed off by %2 on %3."), w.facts().build,
                                  text(signedOff->person), w.time(signedOff->time));
        const QString statement = text(signedOff->what.statement);
        panel(w, CheckState::good, Sheet::tr("✓  Signed off"),
              statement.isEmpty() ? by : by + QStringLiteral("\n“") + statement + QStringLiteral("”"));
    } else {
        panel(w, CheckState::out, Sheet::tr("✕  NOT FINISHED"), stillOpen(w.assessment()));
    }
}

void standingSection(const Writing& w) {
    remarks(w);
    const auto deviations = deviationsOf(w.source.ledger, w.facts(), w.units());
    const QString changes = text(deviationsLine(deviations));
    if (deviations.empty()) {
        w.flow.paragraph(changes);
    } else {
        w.flow.stateLine(CheckState::tooCloseToCall, changes + QLatin1Char(' ') + Sheet::tr("They are listed under Changes."));
    }
    const std::string unconfirmed = unconfirmedSentence(valuesOf(w.facts(), w.units()));
    if (unconfirmed.empty()) {
        w.flow.paragraph(Sheet::tr("Somebody has said of every limit and value whose figure it is."));
    } else {
        w.flow.stateLine(CheckState::tooCloseToCall, text(unconfirmed));
    }
    for (const std::string& sentence : besideAllVerdicts(w.assessment())) {
        w.flow.stateLine(CheckState::tooCloseToCall, text(sentence));
    }
}

void keyFiguresSection(const Writing& w) {
    std::vector<KeyFigure> figures;
    for (const Check& check : w.assessment().checks) {
        const QString name = figureName(check);
        if (name.isEmpty()) {
            continue;
        }
        const auto at = std::ranges::find(figures, name, &KeyFigure::what);
        if (at == figures.end()) {
            figures.emplace_back();
            figures.back().what = name;
            figures.back().add(check);
        } else {
            at->add(check);
        }
    }
    SheetTable table{{{Sheet::tr("What")},
                      rightColumn(Sheet::tr("Found")),
                      {Sheet::tr("Limits")},
                      {Sheet::tr("Verdict, places")}},
                     {}};
    for (const KeyFigure& figure : figures) {
        table.rows.push_back(figure.row(w.units()));
    }
    if (table.rows.empty()) {
        return;
    }
    w.flow.heading(Sheet::tr("The figures that matter"));
    w.flow.table(table);
    w.flow.remark(Sheet::tr("Found is the smallest and the largest value of all places. A verdict counts the measuring "
                            "uncertainty; each place with its ± stands in the annex."));
}

void signaturesSection(const Writing& w) {
    if (!w.facts().signedOff) {
        return; // what is not finished is received by nobody
    }
    w.flow.heading(Sheet::tr("Signatures"));
    const SheetType& type = w.flow.type();
    w.flow.setting(mm(17), [&type](QPainter& painter, const QRectF& area) {
        const qreal gap = points(16);
        const qreal width = (area.width() - gap) / 2;
        const QString labels[] = {Sheet::tr("For the shop: name, date, signature"),
                                  Sheet::tr("Received by the customer: name, date, signature")};
        QPointF at(area.left(), area.bottom() - points(12));
        for (const QString& label : labels) {
            painter.setPen(QPen(type.quiet, points(0.6)));
            painter.drawLine(at, at + QPointF(width, 0));
            TextBlock(label, type.small, width)
                .paintAs(PdfRole::paragraph, painter, at + QPointF(0, points(1.5)), type.quiet);
            at.rx() += width + gap;
        }
    });
}

void runningInSection(const Writing& w) {
    if (!w.facts().signedOff) {
        return;
    }
    w.flow.heading(Sheet::tr("Running in and later checks"));
    w.flow.introduction(Sheet::tr("The instructions of the makers of rings, bearings, camshaft and oil come first."));
    QStringList oils;
    for (const auto& part : w.facts().parts) {
        if (part.what.sort == PartSort::oil) {
            oils << joined({text(part.what.maker), text(part.what.what), text(part.what.number)}, QStringLiteral(" "));
        }
    }
    QStringList cautions{
        Sheet::tr("Before the first start: fill with oil and turn the pump, without ignition, until oil pressure shows."),
        Sheet::tr("At the first start: look for oil pressure at once. Stop the engine when it falls, when a new noise is "
                  "heard or when oil runs out anywhere."),
        Sheet::tr("Running in: change load and speed, no full load and no idling for long, as long as the shop says."),
        Sheet::tr("After running in: change oil and filter, cut the filter open and look for metal."),
        Sheet::tr("Do not retighten the fasteners of the main caps, the rods or the girdle: that is a job for the shop, with "
                  "the pan off.")};
    if (!oils.isEmpty()) {
        cautions.prepend(Sheet::tr("Built with this oil: %1.").arg(oils.join(QStringLiteral("; "))));
    }
    for (const QString& caution : cautions) {
        w.flow.paragraph(QStringLiteral("•  ") + caution);
    }
    const QString call = joined({shopOf(w.source, w.options), reachOf(w)});
    if (!call.isEmpty()) {
        w.flow.paragraph(Sheet::tr("Questions, or anything that looks wrong: %1").arg(call), w.flow.type().strong,
                         w.flow.type().ink);
    }
}

} // namespace caprail::sheet
