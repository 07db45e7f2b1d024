// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shop_cells.h>

#include <QCoreApplication>
#include <QDateTime>
#include <ledger/qt_text.h>
#include <limits>
#include <session/look.h>

namespace caprail {

namespace {

class ShopCellsText {
    Q_DECLARE_TR_FUNCTIONS(ShopModel)
};

QString engineOf(const RecordSummary& s) {
    return s.serial.empty() ? qtText(s.engine) : qtText(s.engine) + QStringLiteral(", ") + qtText(s.serial);
}

QString dayOf(Date date) {
    return qtText(format(date));
}

bool isOverdue(const RecordSummary& s, UtcTime now) {
    return s.due && s.state != JobState::signedOff && s.due->days < dateOf(now).days;
}

} // namespace

QString jobStateText(JobState state) {
    switch (state) {
    case JobState::locked:
        return ShopCellsText::tr("○ measuring");
    case JobState::trialFitOpen:
        return ShopCellsText::tr("◑ trial fit open");
    case JobState::closingOpen:
        return ShopCellsText::tr("◕ closing open");
    case JobState::signedOff:
        return ShopCellsText::tr("✓ signed off");
    case JobState::unknown:
        break;
    }
    return ShopCellsText::tr("… not read yet");
}

QString shopHeader(int column) {
    using enum shopcolumn::Column;
    switch (column) {
    case customer:
        return ShopCellsText::tr("Customer");
    case engine:
        return ShopCellsText::tr("Engine");
    case state:
        return ShopCellsText::tr("State");
    case round:
        return ShopCellsText::tr("Verify round");
    case out:
        return ShopCellsText::tr("Out");
    case stale:
        return ShopCellsText::tr("Stale");
    case lastEntry:
        return ShopCellsText::tr("Last entry");
    case who:
        return ShopCellsText::tr("Who");
    case due:
        return ShopCellsText::tr("Calibration due");
    case file:
        return ShopCellsText::tr("File");
    default:
        return {};
    }
}

QString shopCell(const ShopRow& row, int column, UtcTime now) {
    using enum shopcolumn::Column;
    const RecordSummary& s = row.summary;
    const bool isKnown = s.state != JobState::unknown;
    switch (column) {
    case customer:
        return qtText(s.customer);
    case engine:
        return engineOf(s) + (s.build > 1 ? ShopCellsText::tr(" (build %1)").arg(s.build) : QString());
    case state:
        return isRecord(row.reading) ? jobStateText(s.state) : QStringLiteral("✕ ") + qtShown(row.reading);
    case round:
        if (s.round == 0) {
            return isKnown ? QStringLiteral("–") : QString();
        }
        switch (s.roundResult) {
        case RoundResult::held:
            return ShopCellsText::tr("✓ %1: all held").arg(s.round);
        case RoundResult::moved:
            return ShopCellsText::tr("✕ %1: %2 moved").arg(s.round).arg(s.moved);
        case RoundResult::fallen:
            return ShopCellsText::tr("↻ %1: no longer counts").arg(s.round);
        default:
            return ShopCellsText::tr("○ %1: %2 pulled").arg(s.round).arg(s.pulled);
        }
    case out:
        return s.out > 0 ? QStringLiteral("✕ %1").arg(s.out) : isKnown ? QStringLiteral("–") : QString();
    case stale:
        return s.stale > 0 ? QStringLiteral("↻ %1").arg(s.stale) : isKnown ? QStringLiteral("–") : QString();
    case lastEntry: {
        if (s.entries == 0) {
            return QString();
        }
        const QString when =
            QDateTime::fromMSecsSinceEpoch(s.lastEntry.milliseconds).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
        return isInFuture(s.lastEntry, now) ? ShopCellsText::tr("%1 (future)").arg(when) : when;
    }
    case who:
        return qtText(s.who);
    case due:
        return s.due ? dayOf(*s.due) + (isOverdue(s, now) ? ShopCellsText::tr(" overdue") : QString()) : QString();
    case file:
        return qtText(plainLine(row.file.path));
    default:
        return {};
    }
}

std::optional<std::int64_t> shopNumber(const ShopRow& row, int column) {
    using enum shopcolumn::Column;
    const RecordSummary& s = row.summary;
    switch (column) {
    case state:
        return isRecord(row.reading) ? static_cast<std::int64_t>(s.state)
                                     : 100 + static_cast<std::int64_t>(row.reading);
    case round:
        return s.round * 10 + static_cast<std::int64_t>(s.roundResult);
    case out:
        return s.out;
    case stale:
        return s.stale;
    case lastEntry:
        return s.lastEntry.milliseconds;
    case due:
        return s.due ? s.due->days : std::numeric_limits<std::int64_t>::max();
    default:
        return {};
    }
}

QVariant shopInk(const ShopRow& row, int column, UtcTime now) {
    using enum shopcolumn::Column;
    const Look look = screenLook();
    const RecordSummary& s = row.summary;
    switch (column) {
    case state:
        return s.state == JobState::signedOff     ? look.good
               : s.state == JobState::closingOpen ? look.accent
               : s.state == JobState::unknown     ? look.quiet
                                                  : look.ink;
    case round:
        return s.roundResult == RoundResult::moved    ? look.out
               : s.roundResult == RoundResult::held   ? look.good
               : s.roundResult == RoundResult::fallen ? look.stale
                                                      : look.quiet;
    case out:
        return s.out > 0 ? look.out : look.quiet;
    case stale:
        return s.stale > 0 ? look.stale : look.quiet;
    case lastEntry:
        return isInFuture(s.lastEntry, now) ? look.close : look.ink;
    case due:
        return isOverdue(s, now) ? look.out : look.quiet;
    case file:
        return look.quiet;
    default:
        return {};
    }
}

QString shopSentence(const ShopRow& row, UtcTime now) {
    if (!isRecord(row.reading)) {
        return QStringLiteral("✕ ") + qtText(plainLine(row.file.path)) + QStringLiteral(" — ") + qtShown(row.reading) +
               QStringLiteral(": ") + qtText(row.sentence);
    }
    QStringList parts;
    for (int column = 0; column < shopcolumn::columns; ++column) {
        const QString value = shopCell(row, column, now);
        if (!value.isEmpty() && value != QStringLiteral("–")) {
            parts << shopHeader(column) + QStringLiteral(": ") + value;
        }
    }
    return parts.join(QStringLiteral("; "));
}

} // namespace caprail
