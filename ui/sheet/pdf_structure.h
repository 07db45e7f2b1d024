// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <qpdf/QPDF.hh>
#include <sheet/pdf_tags.h>
#include <vector>

namespace caprail::sheet {

/// Makes a tagged PDF (ISO 32000-1, 14.8) of one that was painted under `Tagged`: its marks become marked content, all
/// else on the pages an artifact, and the elements the structure tree; it speaks `language` (BCP 47: "en") and shows
/// its title. Throws what libqpdf throws of a file that it cannot read.
void tagPages(QPDF& document, const std::vector<PdfElement>& elements, const QString& language);

} // namespace caprail::sheet
