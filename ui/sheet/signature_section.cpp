// SPDX-License-Identifier: GPL-3.0-or-later
/// On the first page: the seal and by whom it is signed, in words and as a code for a telephone's camera.
#include <sheet/qr_code.h>
#include <sheet/sections.h>
#include <sheet/sheet_text.h>

#include <session/filled.h>

namespace caprail::sheet {

namespace {

constexpr qreal codeSide = mm(24);
constexpr std::size_t mostSaid = 3;

struct SignatureLine {
    CheckState state;
    QString sentence;
};

std::vector<SignatureLine> linesOf(const Writing& w, const std::vector<SignatureFact>& signatures) {
    if (signatures.empty()) {
        return {{CheckState::notDone, Sheet::tr("Not signed with a key: the seal shows that nothing was altered since, "
                                                "and not who made the record.")}};
    }
    std::vector<SignatureLine> lines;
    const std::size_t first = signatures.size() > mostSaid ? signatures.size() - mostSaid : 0;
    for (std::size_t i = signatures.size(); i-- > first;) {
        const SignatureFact& one = signatures[i];
        const QString who = text(one.key.name), finger = text(fingerprint(one.key.publicKey));
        const QString sentence =
            !one.holds()    ? text(sentenceOf(one))
            : one.coversAll ? filled(Sheet::tr("Signed by %1 on %2, all of it. Key %3"), who, w.time(one.time), finger)
                            : filled(Sheet::tr("Signed by %1 on %2, up to entry %3 of %4. Key %5"), who,
                                     w.time(one.time), one.signedEntry, w.source.ledger.size(), finger);
        lines.push_back({stateOf(one), sentence});
    }
    return lines;
}

} // namespace

void signedSealSection(const Writing& w) {
    const SheetType& type = w.flow.type();
    const auto signatures = signaturesOf(w.source.ledger);
    const QString code = sealCodeText(w.source.ledger.seal(), signatures);
    const qreal left = codeSide + points(8);
    const qreal width = w.flow.width() - left;
    std::vector<std::pair<TextBlock, QColor>> blocks;
    const auto add = [&](const QString& words, const QFont& font, const QColor& ink) {
        blocks.emplace_back(TextBlock(words, font, width), ink);
    };
    add(Sheet::tr("Seal %1").arg(text(shortForm(w.source.ledger.seal()))), type.strong, type.ink);
    for (const auto& [state, sentence] : linesOf(w, signatures)) {
        add(sign(state) + QStringLiteral("  ") + sentence, type.body, state == CheckState::notDone ? type.quiet : type.look.of(state));
    }
    add(signatures.empty() ? Sheet::tr("The code holds the seal in full.")
                           : Sheet::tr("The code holds the seal in full and the fingerprint of the key. Compare that with the one "
                                       "that the shop told you by another way."),
        type.small, type.quiet);
    qreal height = 0;
    for (const auto& [block, ink] : blocks) {
        height += block.height() + points(2);
    }
    w.flow.figure(std::max(codeSide, height), [=](QPainter& painter, const QRectF& area) {
        paintQrCode(painter, {area.topLeft(), QSizeF(codeSide, codeSide)}, code);
        QPointF at(area.left() + left, area.top() + std::max(0.0, (area.height() - height) / 2));
        for (const auto& [block, ink] : blocks) {
            block.paint(painter, at, ink);
            at.ry() += block.height() + points(2);
        }
    });
}

} // namespace caprail::sheet
