// SPDX-License-Identifier: GPL-3.0-or-later
/// The code on the sheet's first page, read back by another program's reader.
#include "sheet_sample.h"

#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <sheet/qr_code.h>
#include <zbar.h>

using namespace caprail;

namespace {

/// What zbar finds in a picture.
QStringList codesIn(const QImage& picture) {
    const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
    QByteArray bytes;
    for (int y = 0; y < grey.height(); ++y) {
        bytes.append(reinterpret_cast<const char*>(grey.constScanLine(y)), grey.width());
    }
    zbar::ImageScanner scanner;
    scanner.set_config(zbar::ZBAR_NONE, zbar::ZBAR_CFG_ENABLE, 0);
    scanner.set_config(zbar::ZBAR_QRCODE, zbar::ZBAR_CFG_ENABLE, 1);
    zbar::Image image(static_cast<unsigned>(grey.width()), static_cast<unsigned>(grey.height()), "Y800",
                      bytes.constData(), static_cast<unsigned long>(bytes.size()));
    scanner.scan(image);
    QStringList found;
    for (auto symbol = image.symbol_begin(); symbol != image.symbol_end(); ++symbol) {
        found << QString::fromStdString(symbol->get_data());
    }
    return found;
}

/// On the two pages that the customer keeps.
QStringList codesForTheCustomer(const SheetSample& sample, QPageSize::PageSizeId paper) {
    SheetOptions options;
    options.pageSize = paper;
    const auto pages = sheetPages(sample.source(), options, 200);
    return codesIn(pages.at(0)) + codesIn(pages.at(1));
}

} // namespace

TEST(SheetCode, on_the_customers_pages_is_the_seal_in_full) {
    const SheetSample sample;
    const QString seal = QString::fromStdString(toHex(sample.ledger.seal())).toUpper();
    for (const auto paper : {QPageSize::A4, QPageSize::Letter}) {
        EXPECT_EQ(codesForTheCustomer(sample, paper), QStringList{QStringLiteral("CAPRAIL SEAL ") + seal});
    }
}

TEST(SheetCode, names_the_key_that_signed_all_of_the_record) {
    SheetSample sample;
    const SecretKey secret({4, 2});
    const auto key = makeKey("Kestrel Lane", {}, {}, secret);
    sample.make(*signLastSeal(sample.ledger, key->note, secret, Date{20'000}));
    const QString finger = QString::fromStdString(fingerprint(key->note.publicKey)).toUpper();
    const QString seal = QString::fromStdString(toHex(sample.ledger.seal())).toUpper();
    EXPECT_EQ(codesForTheCustomer(sample, QPageSize::A4),
              QStringList{QStringLiteral("CAPRAIL SEAL ") + seal + QStringLiteral(" KEY ") + finger});
    sample.make(NoteAdded{"", "added later, and not signed"});
    EXPECT_THAT(codesForTheCustomer(sample, QPageSize::A4).join(QString()).toStdString(),
                testing::Not(testing::HasSubstr("KEY")));
}

TEST(SheetCode, is_drawn_in_squares_and_not_as_a_picture) {
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("sheet.pdf"));
    ASSERT_TRUE(writeSheet(SheetSample().source(), pdf, {}));
    QProcess pictures; // of poppler: two lines of titles, and one for each picture
    pictures.start(QStringLiteral("pdfimages"), {"-list", "-f", "1", "-l", "2", pdf});
    ASSERT_TRUE(pictures.waitForFinished(30'000));
    EXPECT_EQ(pictures.readAllStandardOutput().count('\n'), 2);
}

TEST(SheetCode, brings_its_own_border_and_is_left_out_where_a_text_is_too_long_for_one) {
    QImage small(400, 400, QImage::Format_RGB32);
    small.fill(Qt::darkGray);
    QPainter painter(&small);
    sheet::paintQrCode(painter, {50, 50, 300, 300}, QStringLiteral("CAPRAIL SEAL 00FF"));
    painter.end();
    EXPECT_EQ(codesIn(small), QStringList{QStringLiteral("CAPRAIL SEAL 00FF")}) << "its own white border is enough";
    QImage none(60, 60, QImage::Format_RGB32);
    none.fill(Qt::darkGray);
    const QImage before = none;
    QPainter other(&none);
    sheet::paintQrCode(other, {0, 0, 60, 60}, QString(5000, QLatin1Char('x')));
    other.end();
    EXPECT_EQ(none, before) << "a text that no code holds is not painted";
}
