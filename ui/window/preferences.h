// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPageSize>
#include <QString>
#include <QStringList>
#include <QVariant>
#include <session/girdle_advice.h>
#include <units/format.h>
#include <window/confirmation.h>

namespace caprail {

enum class LookChoice { system, light, dark };

/// What a person chose once for all records; kept in the user's configuration. Nothing of it changes a record.
struct Preferences {
    Units units;
    LookChoice look = LookChoice::system;
    QString language; ///< one of `languages()`; empty: like the desktop. Spoken from the next start.
    QString shopName;
    QString logoPath;
    QPageSize::PageSizeId paper = QPageSize::A4;
    GirdleAdvice advice;
    ConfirmationChoice confirmation = ConfirmationChoice::silent;

    static Preferences load();
    void save() const;
};

/// Dresses the whole application in the chosen look.
void applyLook(LookChoice look);

/// Keeps one setting. One that is kept already is not written: a write waits for the disk.
void keepSetting(const QString& key, const QVariant& value);

/// The last ten record files, newest first; those that are gone are left out.
QStringList recentFiles();
/// `whose`: the engine and its customer, to be shown with the file's name.
void noteRecentFile(const QString& path, const QString& whose);
/// What was noted with a file; empty: nothing.
QString whoseRecord(const QString& path);

} // namespace caprail
