// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shop_cells.h>

#include <QDateTime>
#include <base/say.h>
#include <ledger/qt_text.h>
#include <ledger/remarks.h>
#include <records/shop_model.h>
#include <session/filled.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

std::string localMoment(UtcTime time) {
    return QDateTime::fromMSecsSinceEpoch(time.milliseconds).toString(QStringLiteral("yyyy-MM-dd HH:mm")).toStdString();
}

} // namespace

Seeing onScreen(UtcTime now) {
    return {now, localMoment};
}

QVariant inkOf(Tone tone, const Look& look) {
    switch (tone) {
    case Tone::usual:
        break;
    case Tone::quiet:
        return look.quiet;
    case Tone::accent:
        return look.accent;
    case Tone::good:
        return look.good;
    case Tone::close:
        return look.close;
    case Tone::out:
        return look.out;
    case Tone::stale:
        return look.stale;
    }
    return {};
}

QVariant shopCell(const ShopRow& row, int column, int role, UtcTime now, bool isReachable) {
    const ListColumn& listed = listColumns()[static_cast<std::size_t>(column)];
    const auto cell = [&] { return qtText(listed.text(row, onScreen(now))); };
    switch (role) {
    case Qt::DisplayRole:
        return cell();
    case Qt::ToolTipRole:
        if (column == ShopModel::lastEntry && isInFuture(row.summary.lastEntry, now)) {
            return ShopModel::tr("Later than this computer's clock: one of the two clocks was wrong.");
        }
        return plainTip(isRecord(row.reading) ? cell() : qtText(row.sentence));
    case Qt::AccessibleTextRole:
        return column == 0 ? qtText(listSentence(row, onScreen(now))) : cell();
    case Qt::ForegroundRole: {
        const Look look = screenLook();
        if (!isReachable || !isRecord(row.reading)) {
            return isReachable ? look.out : look.quiet;
        }
        return inkOf(listed.tone(row, onScreen(now)), look);
    }
    case ShopModel::acrossRole:
        return isRecord(row.reading) ? QVariant() : QVariant(qtText(listSentence(row, onScreen(now))));
    case ShopModel::rowIdRole:
        return static_cast<qint64>(row.id);
    default:
        return {};
    }
}

QString groupName(ListingWish::Grouping by, const std::string& customer, JobState state) {
    return by == ListingWish::Grouping::state ? qtText(signedWord(state))
           : customer.empty()                 ? ShopModel::tr("No customer named")
                                              : qtText(customer);
}

QString groupHead(const QString& name, std::int64_t records) {
    return filled(ShopModel::tr("%1  (%2)"), name, records);
}

QVariant headCell(const QString& head, int column, int role) {
    const bool isText = role == ShopModel::acrossRole || role == Qt::AccessibleTextRole;
    return isText || (role == Qt::DisplayRole && column == 0) ? QVariant(head)
           : role == ShopModel::isHeadingRole                 ? QVariant(true)
                                                              : QVariant();
}

QVariant shopHeader(int column, int role) {
    if (role != Qt::DisplayRole || column < 0 || column >= static_cast<int>(listColumns().size())) {
        return {};
    }
    return qtText(Core::say(listColumns()[static_cast<std::size_t>(column)].title));
}

void addHead(CsvWriter& csv) {
    for (const ListColumn& column : listColumns()) {
        csv.text(Core::say(column.title));
    }
    csv.endLine();
}

void addRow(CsvWriter& csv, const ShopRow& row, const Seeing& seeing) {
    for (const ListColumn& column : listColumns()) {
        csv.text(column.text(row, seeing));
    }
    csv.endLine();
}

} // namespace caprail
