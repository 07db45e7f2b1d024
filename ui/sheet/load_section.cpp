// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/deflection_chart.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>
#include <work/block_load.h>

namespace caprail::sheet {

namespace {

QString loadText(Force force, const Units& units) {
    const QString size = text(format(force.magnitude(), units));
    switch (pullOf(force, units)) {
    case Pull::up:
        return Sheet::tr("%1 up").arg(size);
    case Pull::down:
        return Sheet::tr("%1 down").arg(size);
    case Pull::none:
        break;
    }
    return size;
}

SheetTable loadsTable(const std::vector<PlaceResidual>& places, const KnownLoad& load, const Units& units) {
    SheetTable table{{{Sheet::tr("Position")},
                      rightColumn(Sheet::tr("Residual")),
                      rightColumn(Sheet::tr("Load, on the rail")),
                      rightColumn(Sheet::tr("± U")),
                      rightColumn(Sheet::tr("Of the preload")),
                      rightColumn(Sheet::tr("Load, rail free"))},
                     {}};
    for (std::size_t i = 0; i < places.size(); ++i) {
        const std::optional<double> share = load.shareOfPreload[i];
        table.rows.push_back({strongCell(text(code(places[i].place))), text(formatSigned(places[i].residual, units)),
                              loadText(load.held.force[i], units),
                              load.uncertainty ? text(formatUp((*load.uncertainty)[i], units)) : Sheet::tr("not known"),
                              share ? text(formatPercent(*share, units, 1)) : none(),
                              loadText(load.free.force[i], units)});
    }
    return table;
}

} // namespace

void loadSection(const Writing& w) {
    const SharedGirdle model = w.source.girdle();
    if (!model) {
        return;
    }
    const Units& units = w.units();
    const auto load = std::make_shared<const BlockLoad>(blockLoad(*model, w.facts(), w.assessment(), units));
    w.flow.heading(Sheet::tr("Load that the girdle puts into the block"));
    if (!load->known) {
        w.flow.remark(text(load->known.error().sentence));
        return;
    }
    w.flow.figure(mm(64), Sheet::tr("Map of how the plate bends; the table below holds the loads."),
                  [model, load, layout = *w.facts().layout, units, look = w.flow.type().look](QPainter& painter,
                                                                                              const QRectF& area) {
                      drawDeflectionChart(painter, area, *model, layout, *load, Rail::held, units, look);
                  });
    const GirdleLoad& held = load->known->held;
    const Force largest = held.force[load->known->largestAt(Rail::held)];
    w.flow.values({{Sheet::tr("Largest load"), text(format(largest.magnitude(), units))},
                   {Sheet::tr("Largest bending stress in the plate"), text(format(held.largestStress, units))},
                   {Sheet::tr("Energy"),
                    QStringLiteral("%1 mJ").arg(text(formatNumber(held.energy * 1000, 1, units.decimalMark)))}},
                  3);
    w.flow.table(loadsTable(load->places, *load->known, units));
    QStringList assumptions;
    for (const std::string& sentence : load->assumptions) {
        assumptions << text(sentence);
    }
    w.flow.remark(Sheet::tr("Up: the girdle pulls the cap up; down: it presses on it. %1")
                      .arg(assumptions.join(QLatin1Char(' '))));
}

} // namespace caprail::sheet
