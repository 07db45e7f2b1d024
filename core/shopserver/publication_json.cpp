// SPDX-License-Identifier: GPL-3.0-or-later
#include <shopserver/publication_json.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <catalogue/dialect.h>
#include <ledger/qt_text.h>
#include <set>
#include <shop/figure_rows.h>
#include <shop/folder_walk.h>
#include <shop/record_reader.h>
#include <utility>

namespace caprail {

namespace {

/// All words of a record may have a mebibyte.
constexpr std::size_t mostWords = 400UL * 1024;

/// A text of the list, which the server has in an index: two of them may have 2704 bytes there. In UTF-16.
constexpr qsizetype longestListed = 400;

QString shortened(std::string_view text) {
    QString all = qtText(text);
    if (all.size() > longestListed) {
        all.truncate(longestListed - 1 - (all.at(longestListed - 2).isHighSurrogate() ? 1 : 0));
        all += QChar(0x2026); // …
    }
    return all;
}

QJsonValue jsonValue(const std::string& text) {
    return qtText(text);
}
QJsonValue jsonValue(std::int64_t number) {
    return static_cast<qint64>(number);
}
QJsonValue jsonValue(UtcTime moment) {
    return jsonValue(moment.milliseconds);
}
QJsonValue jsonValue(Length length) {
    return jsonValue(static_cast<std::int64_t>(length.value()));
}
QJsonValue jsonValue(Date day) {
    return jsonValue(static_cast<std::int64_t>(day.days));
}
template <Worded E> QJsonValue jsonValue(E value) {
    return static_cast<int>(value);
}
template <class T> QJsonValue jsonValue(const std::optional<T>& value) {
    return value ? jsonValue(*value) : QJsonValue(QJsonValue::Null);
}

std::string textOf(const QJsonObject& object) {
    return QJsonDocument(object).toJson(QJsonDocument::Compact).toStdString();
}

} // namespace

std::string listingJson(const RecordSummary& summary, std::string_view fileName, std::int64_t size) {
    // What only a file on a disk has is not the server's to know.
    QJsonObject row{{"path", shortened(plainLine(fileName))},
                    {"size", jsonValue(size)},
                    {"modified", 0},
                    {"changed", 0},
                    {"inode", 0},
                    {"reading", jsonValue(FileReading::assessed)},
                    {"sentence", ""}};
    eachSummaryField([&](const auto& column) { row.insert(qtText(column.name), jsonValue(summary.*column.member)); });
    for (const auto& [name, text] : {std::pair("customer", &summary.customer), std::pair("engine", &summary.engine),
                                     std::pair("serial", &summary.serial), std::pair("who", &summary.who)}) {
        row.insert(QLatin1String(name), shortened(*text));
    }
    return textOf(row);
}

std::string figuresJson(const RecordFigures& figures) {
    QJsonArray banded;
    for (const BandedFigure& f : figures.banded) {
        banded.append(QJsonObject{{"build", jsonValue(f.build)},
                                  {"band", qtText(f.band)},
                                  {"place", qtText(f.place)},
                                  {"place_order", qtText(placeOrder(f.place))},
                                  {"value_nm", jsonValue(f.value)},
                                  {"state", jsonValue(f.state)},
                                  {"lower_nm", f.limits ? jsonValue(f.limits->lo()) : QJsonValue()},
                                  {"upper_nm", f.limits ? jsonValue(f.limits->hi()) : QJsonValue()}});
    }
    QJsonArray movement;
    for (const PullFigure& f : figures.pulls) {
        movement.append(QJsonObject{{"fastener", qtText(f.fastener)},
                                    {"wrench", qtText(f.wrench)},
                                    {"person", qtText(f.person)},
                                    {"pulled", jsonValue(f.pulled)},
                                    {"moved", jsonValue(f.moved)},
                                    {"largest_mdeg", jsonValue(static_cast<std::int64_t>(f.largest.value()))}});
    }
    QJsonArray instrument;
    for (const InstrumentFigure& f : figures.instruments) {
        instrument.append(QJsonObject{{"name", qtText(f.name)},
                                      {"kind", jsonValue(f.type)},
                                      {"serial", qtText(f.serial)},
                                      {"calibrated", jsonValue(f.calibrated)},
                                      {"due", jsonValue(f.due)},
                                      {"cycles", jsonValue(f.cycles)},
                                      {"due_cycles", jsonValue(f.dueCycles)}});
    }
    return textOf({{"banded", banded}, {"movement", movement}, {"instrument", instrument}});
}

std::string distinctWords(std::string_view text) {
    std::set<std::string> seen;
    std::string all;
    for (const std::string& word : wordsIn(text)) {
        const std::string kept = foldedWord(word);
        if (all.size() + kept.size() < mostWords && seen.insert(kept).second) {
            all += (all.empty() ? "" : " ") + kept;
        }
    }
    return all;
}

} // namespace caprail
