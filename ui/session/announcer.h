// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>

namespace caprail {

/// What whoever does not see the screen must hear and what has no place of its own to be heard from, as a sentence that
/// a field refuses its value with. The window says it on the one live node that it has.
class Announcer : public QObject {
    Q_OBJECT
public:
    static Announcer& instance();
    void say(const QString& sentence) { emit said(sentence); }

signals:
    void said(const QString& sentence);
};

} // namespace caprail
