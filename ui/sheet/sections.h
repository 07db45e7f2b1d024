// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The sections of the sheet, one file each, in the order in which they are printed. Each writes its heading and all
/// that the record holds about it, and nothing at all where there is nothing to say.
#include <sheet/sheet.h>
#include <sheet/sheet_flow.h>

namespace caprail {
struct BuildComparison;
}

namespace caprail::sheet {

struct Writing {
    SheetFlow& flow;
    const SheetSource& source;
    const SheetOptions& options;
    const QString& times; ///< the zone of the times, as `zoneText` has it: it looks at every entry, hence once

    [[nodiscard]] const Facts& facts() const { return source.facts; }
    [[nodiscard]] const Assessment& assessment() const { return source.assessment; }
    [[nodiscard]] const Units& units() const { return options.units; }
    /// The state of a check by its code; `notDone` when there is no such check.
    [[nodiscard]] CheckState stateOf(const std::string& checkCode) const;
    /// "2026-05-04 09:30" by the clock of the options' time zone; never parted over two lines.
    [[nodiscard]] QString time(UtcTime time) const;
    /// "2026-05-04", the day on which the moment fell in that zone.
    [[nodiscard]] QString day(UtcTime time) const;
    /// "2026-05-04 09:30 – 17:05", with both days where they differ; one moment once.
    [[nodiscard]] QString fromTo(UtcTime first, UtcTime last) const;
    /// "Mira Sand, 2026-05-04 09:30", of anything that has a person and a time.
    template <class T> [[nodiscard]] QString byAndWhen(const T& seen) const {
        return QString::fromStdString(seen.person) + QStringLiteral(", ") + time(seen.time);
    }
};

/// Logo, shop, and what the sheet is, over a line.
void letterhead(const Writing& w, const QString& what);
void titleSection(const Writing&);
/// The verdict over the whole width: signed off, or not finished.
void verdictSection(const Writing&);
/// What nobody may overlook who reads the verdict: salvage, entries from outside, a wrong clock, closing past a gate.
void remarks(const Writing&);
/// Those, what was changed after it was judged, what nobody confirmed, what is weakly measured: a line each.
void standingSection(const Writing&);
void keyFiguresSection(const Writing&);
/// Only of a build that is signed off, as the next one.
void signaturesSection(const Writing&);
void runningInSection(const Writing&);
/// Who signed the ledger with a key, and the seal as a QR code.
void signedSealSection(const Writing&);
void annexSection(const Writing&);
void gatesSection(const Writing&);
void diagramSection(const Writing&);
void bearingsSection(const Writing&);
void fitsSection(const Writing&);
void torquesSection(const Writing&);
void roundsSection(const Writing&);
void surveySection(const Writing&);
void stacksSection(const Writing&);
void flushnessSection(const Writing&);
void loadSection(const Writing&);
void trialFitSection(const Writing&);
void ownChecksSection(const Writing&);
void pickupSection(const Writing&);
void partsSection(const Writing&);
void changesSection(const Writing&);
void valuesSection(const Writing&);
void findingsSection(const Writing&);
void photosSection(const Writing&);
void instrumentsSection(const Writing&);
void struckSection(const Writing&);
void closingSection(const Writing&);
void sealSection(const Writing&);

/// The whole of the sheet of a difference between two builds.
void differenceSection(const Writing& w, const BuildComparison& comparison);

/// A verdict against a band: "in" for good, else the state's own word.
SheetCell verdictCell(CheckState state);
/// The same of a check by its code, with probability and capability under it where a number was judged.
SheetCell verdictCell(const Writing&, const std::string& checkCode);
/// Which decision rule the record judges by, as a sentence.
QString ruleSentence(const RulesSet& rules);
/// Whose figure a value is: who confirmed it, else what it was set with.
QString sourceText(const Writing& w, const std::string& valueCode, const std::string& source);
/// "0.0018 to 0.0025 in, target 0.0022 in (who says so)", of a band that is set.
QString bandText(const Writing& w, std::string_view name);
/// The time zone of the sheet's times with its distance from UTC while the record was made: "Europe/Lisbon, UTC+01:00";
/// both distances where the clocks were changed meanwhile; "UTC" for that.
QString zoneText(const Ledger& ledger, const QTimeZone& zone);
/// Address and telephone of the shop, on one line; may be empty.
QString reachOf(const Writing&);
/// The shop as the options or the record name it; may be empty.
QString shopOf(const SheetSource& source, const SheetOptions& options);

} // namespace caprail::sheet
