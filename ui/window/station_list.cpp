// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/station_list.h>

#include <algorithm>
#include <session/look.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

/// The worst state among a station's checks; nothing where it has none.
std::optional<CheckState> worstAt(const Assessment& assessment, Station station) {
    static constexpr CheckState worstFirst[] = {CheckState::out, CheckState::stale, CheckState::notProven,
                                                CheckState::tooCloseToCall, CheckState::notDone, CheckState::good};
    for (const CheckState state : worstFirst) {
        if (std::ranges::any_of(assessment.checks,
                                [&](const Check& c) { return c.destination.station == station && c.state == state; })) {
            return state;
        }
    }
    return {};
}

} // namespace

StationList::StationList(RecordSession& session, QWidget* parent) : QListWidget(parent), m_session(session) {
    setAccessibleName(tr("Stations"));
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    const int rowHeight = 2 * fontMetrics().lineSpacing() + 2;
    int widest = 0;
    for (const auto& station : allWords<Station>()) {
        const QString text = QStringLiteral("↻  %1   00  ").arg(QString::fromStdString(shown(station.value)));
        widest = std::max(widest, fontMetrics().horizontalAdvance(text));
    }
    setFixedWidth(widest + 24);
    for (const auto& station : allWords<Station>()) {
        auto* item = new QListWidgetItem(this);
        item->setData(Qt::UserRole, static_cast<int>(station.value));
        item->setSizeHint({0, rowHeight});
    }
    setFixedHeight(count() * rowHeight + 2);
    connect(this, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0) {
            emit stationChosen(static_cast<Station>(item(row)->data(Qt::UserRole).toInt()));
        }
    });
    refresh();
}

void StationList::refresh() {
    const Look look = screenLook();
    for (int row = 0; row < count(); ++row) {
        const auto station = static_cast<Station>(item(row)->data(Qt::UserRole).toInt());
        const std::string stationWord = shown(station);
        const QString name = QString::fromUtf8(stationWord.data(), static_cast<qsizetype>(stationWord.size()));
        const auto worst = worstAt(m_session.assessment(), station);
        const std::size_t open = m_session.assessment().openAt(station);
        // What its findings say is not the whole of the closing station: its steps are locked or open.
        const bool isLocked = station == Station::closing && !m_session.facts().isClosed() &&
                              !m_session.assessment().gate(GateKind::closing).isOpen;
        const QString mark = isLocked ? QStringLiteral("▣") : worst ? sign(*worst) : QStringLiteral(" ");
        QString text = mark + QStringLiteral("  ") + name;
        if (open > 0) {
            text += QStringLiteral("  %1").arg(open);
        }
        item(row)->setText(text);
        item(row)->setForeground(isLocked ? look.out : worst ? look.of(*worst) : look.ink);
        const QString shortcut = QStringLiteral("Ctrl+%1").arg(row + 1);
        setTip(
            item(row),
            worst
                ? tr("%1: worst is %2, %n open (%3)", "", static_cast<int>(open)).arg(name, stateWord(*worst), shortcut)
                : QStringLiteral("%1 (%2)").arg(name, shortcut));
        item(row)->setData(Qt::AccessibleTextRole, item(row)->toolTip());
    }
}

void StationList::show(Station station) {
    for (int row = 0; row < count(); ++row) {
        if (item(row)->data(Qt::UserRole).toInt() == static_cast<int>(station)) {
            setCurrentRow(row);
        }
    }
}

} // namespace caprail
