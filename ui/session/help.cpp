// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/help.h>

#include <QCoreApplication>

namespace caprail {

namespace {

class HelpText {
    Q_DECLARE_TR_FUNCTIONS(HelpText)
};

} // namespace

QString helpFor(Station station) {
    switch (station) {
    case Station::engine:
        return HelpText::tr("Whose engine this is, where its caps and fasteners lie, the bands that it is judged by, "
                            "the people who work "
                            "on it and their instruments. All of it are entries: a band changed in mid-build makes "
                            "stale what it judged.");
    case Station::bearings:
        return HelpText::tr(
            "Select a journal on the diagram and type its diameter; Enter stores it and goes to the next place: two "
            "stations along the journal, two directions around it. Then the bores, with the shells in and the caps at "
            "full torque. The clearance, its uncertainty and a verdict appear beside the diagram.");
    case Station::fasteners:
        return HelpText::tr(
            "What each group is tightened to, and what each fastener was tightened to. A verify round goes over every "
            "main-cap and rod fastener again with the stacks off, without backing them off: it held, or it moved by an "
            "angle. One that moved makes the gaps of its cap stale.");
    case Station::girdle:
        return HelpText::tr("Lay the straightedge across both pan rails, read the gap down to each washer, and type "
                            "it: 57.5 thou, .0575, "
                            "1.46 mm, or the leaves in one slot, 22+23+12.5 thou. Two passes or more. Enter the kit, "
                            "measure its shims, "
                            "take the plan over, build the stacks, and recheck each: rocks, drags or loose.");
    case Station::trialFit:
        return HelpText::tr(
            "With the girdle on its stacks: which way round it goes, and that dipstick, pickup tube, counterweights "
            "and "
            "rod bolts are clear through two turns by hand. It unlocks once every stack was rechecked.");
    case Station::pickup:
        return HelpText::tr(
            "Clearance under the pickup: pan depth, plus the compressed gasket, plus the girdle plate between, minus "
            "how "
            "far the pickup hangs below the rail. Read each term twice. It must be right before anything is sealed.");
    case Station::closing:
        return HelpText::tr(
            "The steps that hide everything else. They unlock when no check is out, open or stale, and a verify round "
            "newer than the last trial fit found every fastener held. Each step is ticked by a person, by name.");
    case Station::history:
        break;
    }
    return HelpText::tr(
        "Every entry, in order; nothing is ever erased. Strike a wrong one with Delete and give the reason. The verify "
        "history shows every round, fastener by fastener.");
}

} // namespace caprail
