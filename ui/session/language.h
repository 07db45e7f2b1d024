// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QLocale>
#include <QString>
#include <QStringList>

namespace caprail {

/// The languages that the program speaks, as codes of ISO 639-1; the first one, English, is that of the source.
QStringList languages();

/// The language that was chosen in the preferences; empty: that of the desktop.
QString chosenLanguage();
void keepChosenLanguage(const QString& languageCode);

/// The one of `languages()` that `choice` asks for; an empty one asks for `desktop`'s. English where neither is spoken.
QString languageFor(const QString& choice, const QLocale& desktop);

/// The language that the program speaks in this run.
QString spokenLanguage();

/// Sets the language of everything the program says: the window, the core's sentences, and Qt's own dialogs where Debian
/// has them translated. Call it once, after the application object was made and before anything is said.
void speak(const QString& languageCode);

} // namespace caprail
