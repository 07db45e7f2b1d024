// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/qr_code.h>

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <memory>
#include <qrencode.h>

namespace caprail::sheet {

QString sealCodeText(const Seal& seal, const std::vector<SignatureFact>& signatures) {
    QString said = QStringLiteral("CAPRAIL SEAL ") + QString::fromStdString(toHex(seal));
    const auto whole = std::ranges::find_if(signatures, &SignatureFact::coversAll);
    if (whole != signatures.end()) {
        said += QStringLiteral(" KEY ") + QString::fromStdString(fingerprint(whole->key.publicKey));
    }
    return said.toUpper();
}

void paintQrCode(QPainter& painter, const QRectF& square, const QString& text) {
    const std::unique_ptr<QRcode, void (*)(QRcode*)> code(
        QRcode_encodeString(text.toUtf8().constData(), 0, QR_ECLEVEL_M, QR_MODE_8, 1), &QRcode_free);
    if (!code) {
        return;
    }
    constexpr int border = 4; // modules
    const qreal module = square.width() / (code->width + 2 * border);
    painter.fillRect(square, Qt::white);
    // One path, so that no reader and no printer sees hairlines between modules.
    QPainterPath dark;
    for (int y = 0; y < code->width; ++y) {
        for (int x = 0; x < code->width;) {
            const auto isDark = [&](int column) { return (code->data[y * code->width + column] & 1) != 0; };
            int end = x;
            while (end < code->width && isDark(end)) {
                ++end;
            }
            if (end > x) {
                dark.addRect(square.left() + (x + border) * module, square.top() + (y + border) * module,
                             (end - x) * module, module);
            }
            x = end + 1;
        }
    }
    dark.setFillRule(Qt::WindingFill);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillPath(dark, Qt::black);
    painter.restore();
}

} // namespace caprail::sheet
