// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>

class QKeyEvent;

namespace caprail {

/// The one rule for keys, over all windows, stations and dialogs:
///
/// - A key that is held down moves about and edits text. It never stores, strikes, answers or opens anything: a glove or a
///   tool that lies on a key must not verify an engine. So of a repeated key only arrows, Home, End, the page keys, Tab,
///   Backspace and Delete in a text, and zooming arrive.
/// - A word that stores (H, D, p, Enter alone) and comes again within half a second is asked back, whether by key or by
///   button: session/storing_press.h, which every field and every page with answering keys asks.
/// - Enter presses the button that has the focus, as the space bar does.
/// - Alt with a letter or digit is a key of the program, never text in a field, also where nothing answers to it.
///
/// What a station's own keys do is told on their buttons and in the hint under its field.
class KeyRule : public QObject {
public:
    /// For the whole program; calling it again changes nothing.
    static void install();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    using QObject::QObject;
};

} // namespace caprail
