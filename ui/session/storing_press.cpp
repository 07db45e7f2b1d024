// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/storing_press.h>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <algorithm>
#include <session/filled.h>

namespace caprail {

namespace {

struct LastPress {
    StoringPress::Clock clock;
    QString word;
    std::optional<qint64> at;
};

LastPress& lastPress() {
    static LastPress last;
    return last;
}

qint64 pressTime() {
    if (const StoringPress::Clock& given = lastPress().clock) {
        return given();
    }
    static const QElapsedTimer running = [] {
        QElapsedTimer timer;
        timer.start();
        return timer;
    }();
    return running.elapsed();
}

QString asWord(const QString& text) {
    return text.trimmed().toLower();
}

bool isValue(const QString& word) {
    return std::ranges::any_of(word, [](QChar c) { return c.isDigit(); });
}

} // namespace

void StoringPress::setClock(Clock clock) {
    lastPress() = {std::move(clock), {}, {}};
}

std::optional<QString> StoringPress::askedBack(const QString& text) {
    const QString word = asWord(text);
    LastPress& last = lastPress();
    if (isValue(word) || !last.at || last.word != word) {
        return {};
    }
    const qint64 time = pressTime();
    if (time - *last.at >= apart) {
        return {};
    }
    last.at = time;
    return word.isEmpty()
               ? QCoreApplication::translate("StoringPress",
                                             "Enter came twice within half a second, so the second one stored nothing. If "
                                             "this one is done too, press it again.")
               : filled(QCoreApplication::translate("StoringPress",
                                                    "“%1” came twice within half a second, so the second one stored "
                                                    "nothing. If it is meant for this place too, press it again."),
                        word);
}

void StoringPress::beginAnew(const QString& text) {
    lastPress().word = asWord(text);
    lastPress().at = pressTime();
}

} // namespace caprail
