// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QRectF>
#include <QString>
#include <assessment/signatures.h>

class QPainter;

namespace caprail::sheet {

/// What the sheet's code says: "CAPRAIL SEAL " and the 64 digits of the last seal, and, where a signature holds and
/// covers all of the record, " KEY " and the fingerprint of its key. Capital letters alone, which make a small code.
QString sealCodeText(const Seal& seal, const std::vector<SignatureFact>& signatures);

/// Paints a text as QR code (ISO/IEC 18004, error correction M) into a square, as filled squares with the white border
/// of four modules that readers need. Nothing is painted of a text that is too long for one.
void paintQrCode(QPainter& painter, const QRectF& square, const QString& text);

} // namespace caprail::sheet
