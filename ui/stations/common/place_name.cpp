// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/place_name.h>

#include <QCoreApplication>
#include <engine/place.h>
#include <ledger/entry_words.h>
#include <ledger/qt_text.h>
#include <stations/common/station_text.h>

namespace caprail {

QString placeName(const QString& placeCode) {
    const std::string text = coreText(placeCode);
    if (const auto position = parsePosition(text)) {
        return qtText(describe(*position));
    }
    if (const auto fastener = parseFastener(text)) {
        return qtText(describe(*fastener));
    }
    if (const auto journal = parseJournal(text)) {
        return qtText(describe(*journal));
    }
    // What the diagram names besides, in its words: "throw-2" (a finding says "throw 2"), "pickup", "dipstick".
    constexpr QLatin1String throwWord("throw");
    if (placeCode.startsWith(throwWord) && placeCode.size() > throwWord.size() + 1) {
        return QCoreApplication::translate("PlanDrawing", "throw %1").arg(placeCode.mid(throwWord.size() + 1));
    }
    if (const auto item = fromWord<TrialItem>(text)) {
        return qtShown(*item);
    }
    return QCoreApplication::translate("PlanDrawing", text.c_str());
}

bool isSamePlace(const std::string& typed, const QString& placeCode) {
    const QString text = qtText(typed).trimmed();
    return !placeCode.isEmpty() && (text.compare(placeCode, Qt::CaseInsensitive) == 0 ||
                                    placeName(text).compare(placeName(placeCode), Qt::CaseInsensitive) == 0);
}

} // namespace caprail
