// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/station_list.h>

#include <QKeySequence>
#include <algorithm>
#include <ledger/qt_text.h>
#include <session/look.h>

namespace caprail {

namespace {

/// The worst state among a station's checks; nothing where it has none.
std::optional<CheckState> worstAt(const Assessment& assessment, Station station) {
    std::optional<CheckState> worst;
    for (const Check& check : assessment.checks) {
        if (check.destination.station == station && (!worst || severity(check.state) < severity(*worst))) {
            worst = check.state;
        }
    }
    return worst;
}

/// What its findings say is not the whole of the closing station: its steps are locked or open.
bool isLocked(const RecordSession& session, Station station) {
    return station == Station::closing && !session.facts().isClosed() &&
           !session.assessment().gate(GateKind::closing).isOpen;
}

QString stationText(const RecordSession& session, Station station, bool isCompact) {
    const auto worst = worstAt(session.assessment(), station);
    const std::size_t open = session.assessment().openAt(station);
    const QString mark = isLocked(session, station) ? QStringLiteral("▣") : worst ? sign(*worst) : QStringLiteral(" ");
    if (isCompact) {
        return QStringLiteral("%1  ").arg(static_cast<int>(station) + 1) + mark +
               (open > 0 ? QStringLiteral(" %1").arg(open) : QString());
    }
    const QString text = mark + QStringLiteral("  ") + qtShown(station);
    return open > 0 ? text + QStringLiteral("  %1").arg(open) : text;
}

QString stationTip(const RecordSession& session, Station station) {
    const auto worst = worstAt(session.assessment(), station);
    const int open = static_cast<int>(session.assessment().openAt(station));
    const QKeySequence key(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(station)));
    const QString shortcut = key.toString(QKeySequence::NativeText);
    if (isLocked(session, station)) {
        const auto holding = static_cast<int>(session.assessment().gate(GateKind::closing).holding.size());
        return holding == 0
                   ? StationList::tr("%1: locked (%2)").arg(qtShown(station), shortcut)
                   : StationList::tr("%1: locked, held by %n (%2)", "", holding).arg(qtShown(station), shortcut);
    }
    return worst ? StationList::tr("%1: worst is %2, %n open (%3)", "", open)
                       .arg(qtShown(station), stateWord(*worst), shortcut)
                 : QStringLiteral("%1 (%2)").arg(qtShown(station), shortcut);
}

QColor stationInk(const RecordSession& session, Station station, const Look& look) {
    const auto worst = worstAt(session.assessment(), station);
    return isLocked(session, station) ? look.out : worst ? look.of(*worst) : look.ink;
}

} // namespace

StationList::StationList(RecordSession& session, QWidget* parent)
    : List(
          tr("Stations"), [](Station station) { return station; },
          {{.text = [this, &session](Station station) { return stationText(session, station, m_isCompact); },
            .ink = [&session](Station station, const Look& look) { return stationInk(session, station, look); },
            .tip = [&session](Station station) { return stationTip(session, station); },
            .spoken = [&session](Station station) { return stationTip(session, station); }}},
          parent) {
    setFrameShape(QFrame::NoFrame);
    const int rowHeight = 2 * fontMetrics().lineSpacing() + 2;
    setLineHeight(rowHeight);
    setFixedWidth(widthFor(false));
    refresh();
    setFixedHeight(count() * rowHeight + 2);
    connect(this, &ListView::lineSelected, this, [this](int line) {
        if (const Station* station = at(line)) {
            emit stationChosen(Station(*station));
        }
    });
}

int StationList::widthFor(bool isCompact) const {
    int widest = 0;
    for (const auto& station : allWords<Station>()) {
        const QString text = isCompact ? QStringLiteral("8  ↻ 00 ") : QStringLiteral("↻  %1   00  ").arg(qtShown(station.value));
        widest = std::max(widest, fontMetrics().horizontalAdvance(text));
    }
    return widest + (isCompact ? 12 : 24);
}

void StationList::setCompact(bool isCompact) {
    if (m_isCompact != isCompact) {
        m_isCompact = isCompact;
        setFixedWidth(widthFor(isCompact));
        refresh();
    }
}

void StationList::refresh() {
    std::vector<Station> stations;
    for (const auto& station : allWords<Station>()) {
        stations.push_back(station.value);
    }
    put(std::move(stations));
}

void StationList::show(Station station) {
    select(station);
}

} // namespace caprail
