// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The build sheet that the customer gets: a record's present state on paper, and the layout card for its shims.
/// File, printer, preview and pictures are painted by the same code from the same pages.
#include <QByteArray>
#include <QImage>
#include <QPageSize>
#include <QString>
#include <QStringList>
#include <QTimeZone>
#include <assessment/assessment.h>
#include <functional>
#include <memory>
#include <ledger/ledger.h>
#include <optional>
#include <units/format.h>
#include <vector>

class QPrinter;

namespace caprail {

struct BuildComparison;
class GirdleModel;

struct SheetOptions {
    QPageSize::PageSizeId pageSize = QPageSize::A4;
    Units units;
    QString shopName;                             ///< empty: the shop that the record names
    QImage logo;                                  ///< null: none; see sheet/logo.h
    bool mayReplace = false;                      ///< an earlier sheet at its place: the person said that it goes
    std::optional<UtcTime> now;                   ///< the clock's, to tell entries in the future; none: not told
    QString appVersion;                           ///< "0.1.0"; printed in the file's properties
    QTimeZone zone = QTimeZone::systemTimeZone(); ///< whose clock the sheet's times are by; it is named on every page
};

/// What a sheet is made from. All are held by reference: they must outlive the call.
struct SheetSource {
    const Ledger& ledger;
    const Facts& facts;           ///< fold(ledger)
    const Assessment& assessment; ///< in the units of the options, for its sentences
    /// The bytes kept under a hash (64 hexadecimal digits); empty when there are none.
    std::function<QByteArray(const std::string& sha256)> attachment;
    /// The model of the girdle, null where there is none; empty: the sheet makes its own, which takes 100 to 200 ms.
    std::function<std::shared_ptr<const GirdleModel>()> girdle = {};
};

/// Writes the sheet as PDF/A-1b (ISO 19005-1) with title and author, tagged for readers that speak (ISO 32000-1, 14.8);
/// an earlier one is replaced only where the options say so, and once the new one is complete. Refuses when the file
/// cannot be written, and where anything stands that is neither PDF nor PNG, such as a record.
Result<void> writeSheet(const SheetSource& source, const QString& pdfPath, const SheetOptions& options);

/// Writes the sheet of what is different between two builds of the engine, likewise.
Result<void> writeDifferenceSheet(const SheetSource& source, const BuildComparison& comparison, const QString& pdfPath,
                                  const SheetOptions& options);
/// Its pages as pictures, as `sheetPages`.
std::vector<QImage> differencePages(const SheetSource& source, const BuildComparison& comparison,
                                    const SheetOptions& options, int dotsPerInch);

/// Paints the sheet on the printer's own paper, or that part of its pages that the printer was asked for.
void paintSheet(const SheetSource& source, QPrinter& printer, const SheetOptions& options);

/// The sheet's pages as pictures, for a message; `dotsPerInch` from 20 to 600, others are brought into that range.
std::vector<QImage> sheetPages(const SheetSource& source, const SheetOptions& options, int dotsPerInch);

/// Writes those pictures as PNG beside each other, for a message: OUT-1.png, OUT-2.png … for "OUT.png" (OUT-01.png …
/// from ten pages on, so that they sort). Gives their paths in order. Refuses when one cannot be written, as writeSheet
/// does; then none of them is new.
Result<QStringList> writeSheetPages(const SheetSource& source, const QString& pngPath, const SheetOptions& options,
                                    int dotsPerInch = 150);

/// The pictures of an earlier sheet that stand beside such a path: OUT-1.png and so on.
QStringList existingPages(const QString& pngPath);

/// Writes a card at 1 : 1 with a circle per position to lay its shims on before they go in, with what belongs there.
/// The circles lie as the positions do on the engine where the paper is large enough, else in rows, cap by cap.
/// Refuses a record without an engine layout, and a file that cannot be written.
Result<void> writeLayoutCard(const SheetSource& source, const QString& pdfPath, const SheetOptions& options);

} // namespace caprail
