// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QLocale>
#include <QPageSize>
#include <QString>
#include <QStringList>
#include <QVariant>
#include <session/girdle_advice.h>
#include <units/format.h>
#include <window/confirmation.h>

namespace caprail {

enum class LookChoice { system, light, dark, contrast };

/// Text sizes that can be chosen, per cent of the desktop's own.
inline constexpr int textSizes[] = {100, 115, 130, 150, 175, 200};

/// What a person chose once for all records; kept in the user's configuration. Nothing of it changes a record.
struct Preferences {
    Units units;
    LookChoice look = LookChoice::system;
    int textSize = 100; ///< one of `textSizes`
    QString language; ///< one of `languages()`; empty: like the desktop. Spoken from the next start.
    QString shopName;
    QString logoPath;
    QPageSize::PageSizeId paper = QPageSize::A4;
    GirdleAdvice advice;
    ConfirmationChoice confirmation = ConfirmationChoice::silent;

    /// What was kept; what never was is as the desktop has it: its language, decimal mark, units and paper.
    static Preferences load();
    void save() const;
};

/// Inch and lbf·ft where people measure so, else millimetre and N·m; the program's own inch where the desktop has no
/// country ("C").
Units unitsOf(const QLocale& locale);
/// US Letter where paper is cut so, else A4.
QPageSize::PageSizeId paperOf(const QLocale& locale);

/// Dresses the whole application in the chosen look. One like the desktop has more contrast where the desktop's has.
void applyLook(LookChoice look);
/// Sets the whole application in letters of this size, per cent of the desktop's; whole only in windows built later.
void applyTextSize(int percent);

/// Keeps one setting. One that is kept already is not written: a write waits for the disk.
void keepSetting(const QString& key, const QVariant& value);

/// The last ten record files, newest first; those that are gone are left out.
QStringList recentFiles();
/// `whose`: the engine and its customer, to be shown with the file's name.
void noteRecentFile(const QString& path, const QString& whose);
/// What was noted with a file; empty: nothing.
QString whoseRecord(const QString& path);

} // namespace caprail
