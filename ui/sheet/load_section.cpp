// SPDX-License-Identifier: GPL-3.0-or-later
#include <charts/deflection_chart.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>
#include <work/block_load.h>

namespace caprail::sheet {

namespace {

QString loadText(const std::optional<Force>& force, const Units& units) {
    if (!force) {
        return none();
    }
    const QString size = text(format(force->magnitude(), units));
    switch (pullOf(*force)) {
    case Pull::up:
        return Sheet::tr("%1 up").arg(size);
    case Pull::down:
        return Sheet::tr("%1 down").arg(size);
    case Pull::none:
        break;
    }
    return size;
}

SheetTable loadsTable(const BlockLoad& load, const Units& units) {
    SheetTable table{{{Sheet::tr("Position")},
                      rightColumn(Sheet::tr("Residual")),
                      rightColumn(Sheet::tr("Load, on the rail")),
                      rightColumn(Sheet::tr("± U")),
                      rightColumn(Sheet::tr("Of the preload")),
                      rightColumn(Sheet::tr("Load, rail free"))},
                     {}};
    for (const PlaceLoad& at : load.places) {
        table.rows.push_back({strongCell(text(code(at.place))), text(formatSigned(at.residual, units)),
                              loadText(at.force, units),
                              at.forceUncertainty ? text(format(*at.forceUncertainty, units)) : Sheet::tr("not known"),
                              at.shareOfPreload ? text(formatPercent(*at.shareOfPreload, units, 1)) : none(),
                              loadText(at.forceFree, units)});
    }
    return table;
}

} // namespace

void loadSection(const Writing& w) {
    const GirdleModel* model = w.source.girdle();
    if (model == nullptr) {
        return;
    }
    const Units& units = w.units();
    const auto load = std::make_shared<const BlockLoad>(blockLoad(*model, w.facts(), w.assessment(), units));
    w.flow.heading(Sheet::tr("Load that the girdle puts into the block"));
    if (!load->held) {
        w.flow.remark(text(load->notKnown));
        return;
    }
    w.flow.figure(mm(64), Sheet::tr("Map of how the plate bends; the table below holds the loads."),
                  [model = *model, load, layout = *w.facts().layout, units,
                   look = w.flow.type().look](QPainter& painter, const QRectF& area) {
                      drawDeflectionChart(painter, area, model, layout, *load, Rail::held, units, look);
                  });
    w.flow.values({{Sheet::tr("Largest load"), text(format(load->largestAt(Rail::held)->force->magnitude(), units))},
                   {Sheet::tr("Largest bending stress in the plate"), text(format(load->held->largestStress, units))},
                   {Sheet::tr("Energy"),
                    QStringLiteral("%1 mJ").arg(text(formatNumber(load->held->energy * 1000, 1, units.decimalMark)))}},
                  3);
    w.flow.table(loadsTable(*load, units));
    QStringList assumptions;
    for (const std::string& sentence : load->assumptions) {
        assumptions << text(sentence);
    }
    w.flow.remark(Sheet::tr("Up: the girdle pulls the cap up; down: it presses on it. %1")
                      .arg(assumptions.join(QLatin1Char(' '))));
}

} // namespace caprail::sheet
