// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/plan_content.h>

#include <assessment/fastener_groups.h>

namespace caprail {

namespace {

constexpr FastenerKind kinds[] = {FastenerKind::mainCap, FastenerKind::rod,   FastenerKind::girdleNut,
                                  FastenerKind::panRail, FastenerKind::front, FastenerKind::rear};

/// How many fasteners the groups of a record count in each row.
std::map<FastenerKind, int> rowsOf(const Facts& facts) {
    std::map<FastenerKind, int> rows;
    for (const FastenerKind kind : kinds) {
        if (const int count = hasSides(kind) ? 0 : rowCount(facts, kind); count > 0) {
            rows[kind] = count;
        }
    }
    return rows;
}

std::map<QString, FastenerPiece> piecesOf(const Facts& facts) {
    std::map<QString, FastenerPiece> pieces;
    for (const FastenerKind kind : kinds) {
        const FastenerPiece usual = kind == FastenerKind::mainCap || kind == FastenerKind::girdleNut ? FastenerPiece::stud
                                                                                                     : FastenerPiece::bolt;
        for (const FastenerId f : fastenersOf(facts, kind)) {
            if (const FastenerPiece piece = pieceOf(facts, f); piece != usual) {
                pieces[QString::fromStdString(code(f))] = piece;
            }
        }
    }
    return pieces;
}

} // namespace

PlanContent planContent(const Facts& facts) {
    PlanContent content{*facts.layout, {}, {}, {}, {}, {}, {}, {}, {}, {}};
    content.rows = rowsOf(facts);
    content.pieces = piecesOf(facts);
    content.shape = facts.girdleShape;
    return content;
}

} // namespace caprail
