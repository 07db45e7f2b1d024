// SPDX-License-Identifier: GPL-3.0-or-later
#include <sheet/sheet_type.h>

#include <QCoreApplication>
#include <QFontDatabase>
#include <QFontMetricsF>

namespace caprail::sheet {

namespace {

class SheetFont {
    Q_DECLARE_TR_FUNCTIONS(SheetFont)
};

/// The first families are what the sheet is drawn for; DejaVu has the signs of the states, and where it is not there, the
/// program's own font of signs (session/signs.h).
QStringList textFamilies() {
    return {QStringLiteral("Roboto"), QStringLiteral("DejaVu Sans"), QStringLiteral("Caprail Signs")};
}
QStringList narrowFamilies() {
    return {QStringLiteral("Roboto Condensed"), QStringLiteral("DejaVu Sans Condensed"), QStringLiteral("DejaVu Sans"),
            QStringLiteral("Caprail Signs")};
}

/// DejaVu runs wider and taller than the others: a smaller size reads alike.
qreal scaleFor(const QStringList& families) {
    return QFontDatabase::hasFamily(families.front()) ? 1.0 : 0.88;
}

QFont font(const QStringList& families, qreal size, QFont::Weight weight = QFont::Normal) {
    QFont f;
    f.setFamilies(families);
    f.setPixelSize(qRound(points(size) * scaleFor(families)));
    f.setWeight(weight);
    // No ligatures: "fits" must be found when the sheet is searched. Any letter spacing switches them off.
    f.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    f.setHintingPreference(QFont::PreferNoHinting);
    f.setStyleStrategy(QFont::ForceOutline);
    return f;
}

} // namespace

Result<void> haveFont() {
    // The list of families is never empty (it has names that stand for others); what draws boxes knows no letter.
    if (!QFontMetricsF(font(textFamilies(), 9)).inFont(QLatin1Char('a'))) {
        return refuse(SheetFont::tr("There is no usable font on this computer, and nothing was written: install one, such "
                                    "as DejaVu Sans (Debian: fonts-dejavu-core).")
                          .toStdString());
    }
    return {};
}

SheetType::SheetType()
    : title(font(textFamilies(), 21, QFont::Medium)), heading(font(textFamilies(), 13, QFont::Medium)),
      subheading(font(textFamilies(), 9.5, QFont::Bold)), body(font(textFamilies(), 9)),
      strong(font(textFamilies(), 9, QFont::Bold)), small(font(textFamilies(), 7.5)), cell(font(narrowFamilies(), 8.5)),
      cellStrong(font(narrowFamilies(), 8.5, QFont::Bold)), cellHead(font(narrowFamilies(), 7.5)),
      figure(font(narrowFamilies(), 8)), ink("#1d2327"), quiet("#59625f"), rule("#c9cdcb"), tint("#f1f4f3"),
      accent("#0b6a75"), look(paperLook()) {}

} // namespace caprail::sheet
