// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAccessible>
#include <QString>
#include <QStringList>
#include <utility>
#include <vector>

class QWidget;

namespace caprail {

/// A drawing of places as screen readers have it: a list with one item per place. The widget that draws them is one of
/// these too, and says here what each item is; an item asks it anew each time, so it never tells an old figure.
class SpokenPlaces {
public:
    SpokenPlaces() = default;
    virtual ~SpokenPlaces() = default;
    SpokenPlaces(const SpokenPlaces&) = delete;
    SpokenPlaces& operator=(const SpokenPlaces&) = delete;

    [[nodiscard]] virtual const QWidget& spokenOn() const = 0; ///< itself
    /// The codes of all that can be chosen, in the order of reading.
    [[nodiscard]] virtual QStringList spokenPlaces() const = 0;
    /// "cap 3 right, gap 0.0575 in, stale": its name, what stands there with its unit, and its state in words.
    [[nodiscard]] virtual QString spokenSentence(const QString& place) const = 0;
    [[nodiscard]] virtual QString spokenFigure(const QString&) const { return {}; } ///< as it stands on the drawing
    [[nodiscard]] virtual QRect spokenRect(const QString& place) const = 0;         ///< in the widget
    [[nodiscard]] virtual QString spokenSelected() const = 0;                       ///< empty: none
    /// As a click does; activated, as Enter does then.
    virtual void chooseSpoken(const QString& place, bool isActivated) = 0;
};

/// Makes every widget that has spoken places a list to screen readers. Called by each; only the first call does
/// anything.
void installSpokenPlaces();

/// Tells screen readers that the content changed, and which place is selected now (empty: only the former).
void announcePlaces(const SpokenPlaces& places);
void announceSelection(const SpokenPlaces& places);

/// What screen readers are told of the selected place: events about the child of this index. None: nothing is selected.
std::vector<std::pair<QAccessible::Event, int>> selectionNews(const SpokenPlaces& places);

} // namespace caprail
