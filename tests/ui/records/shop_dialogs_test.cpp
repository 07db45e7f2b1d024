// SPDX-License-Identifier: GPL-3.0-or-later
/// What a shop has for many engines: templates, the shelf, builds compared, engines compared; used and looked at.
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QTabBar>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <gmock/gmock.h>
#include <records/across_chart.h>
#include <records/across_window.h>
#include <records/builds_dialog.h>
#include <records/shelf_dialogs.h>
#include <records/shop_config.h>
#include <records/template_dialogs.h>
#include <sheet/difference_tables.h>
#include <sheet/sheet.h>
#include <shop/entry_text.h>
#include <shop/shop_index.h>
#include <window/new_record_dialog.h>
#include <window/preferences.h>

#include "many_records.h"
#include "../find.h"
#include "../pictures.h"

using namespace caprail;
using testing::HasSubstr;

namespace {

class ShopDialogs : public testing::Test {
protected:
    void SetUp() override {
        useSettingsIn(m_config.path());
        qputenv("XDG_CONFIG_HOME", m_config.path().toUtf8());
    }
    /// Opened for writing.
    std::unique_ptr<RecordSession> sessionOf(const Ledger& ledger, const std::string& name = "a.caprail") {
        shoptest::write(folder / name, ledger);
        auto session = RecordSession::open(QString::fromStdString(folder / name));
        EXPECT_TRUE(session) << (session ? "" : session.error().sentence);
        return std::move(*session);
    }
    static QPushButton* button(QWidget& widget, const char* words) {
        for (auto* one : widget.findChildren<QPushButton*>()) {
            if (one->text().remove(QLatin1Char('&')).startsWith(QLatin1String(words))) {
                return one;
            }
        }
        ADD_FAILURE() << "no button " << words;
        return nullptr;
    }
    static Ledger rebuilt() {
        shoptest::Maker maker;
        maker.begin("Orrin Vale", "6.2 V8", "KL-2207");
        maker.readyToClose(50);
        maker.close();
        maker.at({shoptest::morning.milliseconds + 400LL * 86'400'000});
        maker.make(BuildBegun{2, "a season of racing"});
        maker.tightenAll(72);
        maker.bearings(2.4475, 2.4504);
        maker.survey(51.5);
        return maker.ledger;
    }
    shoptest::Folder folder;
    QTemporaryDir m_config;
};

} // namespace

TEST_F(ShopDialogs, save_a_template_from_a_record_and_offer_it_to_the_next_one) {
    const Ledger ledger = shoptest::shortLedger("Orrin Vale", "6.2 V8");
    TemplateEditor editor(ledger);
    editor.findChildren<QLineEdit*>().at(0)->setText("Race block");
    editor.findChildren<QLineEdit*>().at(1)->setText("the maker's manual");
    button(editor, "Keep")->click();
    EXPECT_EQ(editor.result(), QDialog::Accepted);
    ASSERT_EQ(offeredTemplates().front().engineTemplate.note, (TemplateNote{"Race block", 1, "the maker's manual"}));
    EXPECT_GT(offeredTemplates().size(), 4U) << "those that the program carries are offered too";

    Shelf shelf;
    shelf.keep(PersonAdded{"Petra Nowak", "assembler"});
    shelf.keep(InstrumentAdded{"W9", InstrumentType::torqueWrench, "", "", {}, {}, {}, {}, {}, {}, {}});
    ASSERT_TRUE(writeShelf(shelfPath(), shelf));
    NewRecordDialog dialog(QStringLiteral("Kestrel Lane"));
    dialog.show();
    const auto boxes = dialog.findChildren<QComboBox*>();
    for (QComboBox* box : boxes) {
        if (box->isEditable()) {
            EXPECT_EQ(box->itemText(0), "Petra Nowak");
            box->setCurrentText("Jon Berg");
        } else {
            EXPECT_EQ(box->itemText(0), "Race block (revision 1)");
            box->setCurrentIndex(0);
        }
    }
    const auto fields = dialog.findChildren<QLineEdit*>();
    for (QLineEdit* field : fields) {
        if (field->placeholderText().startsWith("for example")) {
            field->setText("7.0 V8");
        } else if (field->text().endsWith(".caprail")) {
            field->setText(QString::fromStdString(folder / "new.caprail"));
        }
    }
    picture(dialog, "shop-new-record");
    button(dialog, "Make")->click();
    const auto session = dialog.takeSession();
    ASSERT_TRUE(session) << dialog.findChildren<QLabel*>().back()->text().toStdString();
    EXPECT_EQ(templateNoteOf(session->facts())->name, "Race block");
    EXPECT_TRUE(session->facts().people.contains("Petra Nowak"));
    EXPECT_TRUE(session->facts().people.contains("Jon Berg"));
    EXPECT_TRUE(session->facts().instruments.contains("W9"));
    EXPECT_TRUE(session->facts().layout);
}

TEST_F(ShopDialogs, edit_a_template_at_the_stations_and_keep_its_next_revision) {
    ASSERT_TRUE(ownTemplates().keep(*templateFrom(shoptest::shortLedger("a", "b"), {"Race block", 1, ""})));
    TemplateEditor editor(ownTemplates().named("Race block").value());
    editor.show();
    QApplication::processEvents();
    picture(editor, "shop-template-editor");
    QStringList tabs;
    for (const QTabBar* bar : editor.findChildren<QTabBar*>()) {
        for (int i = 0; bar->isVisible() && i < bar->count(); ++i) {
            tabs += bar->isTabVisible(i) ? QStringList{bar->tabText(i)} : QStringList();
        }
    }
    EXPECT_THAT(tabs, testing::Contains(QStringLiteral("2  Bands and rules")));
    EXPECT_TRUE(tabs.filter(QStringLiteral("People and instruments")).isEmpty());
    button(editor, "Keep")->click();
    EXPECT_EQ(ownTemplates().named("Race block")->note.revision, 2);
    EXPECT_EQ(ownTemplates().named("Race block")->entries.size(),
              templateFrom(shoptest::shortLedger("a", "b"), {"Race block", 1, ""})->entries.size());
    TemplatesDialog dialog;
    dialog.show();
    QApplication::processEvents();
    picture(dialog, "shop-templates");
    button(dialog, "Remove")->click();
    EXPECT_FALSE(ownTemplates().named("Race block"));
}

TEST_F(ShopDialogs, keep_a_records_people_and_kit_on_the_shelf_and_copy_them_into_the_next) {
    shoptest::Maker maker;
    maker.begin("Orrin Vale", "6.2 V8");
    maker.kit();
    const auto first = sessionOf(maker.ledger, "first.caprail");
    {
        ShelfDialog dialog(first.get());
        dialog.show();
        dialog.findChild<QLineEdit*>()->setText("box 3");
        button(dialog, "Keep")->click();
        QApplication::processEvents();
        picture(dialog, "shop-shelf");
    }
    ASSERT_EQ(loadShelf().kits.size(), 1U);
    shoptest::Maker other("Jon Berg");
    other.make(PersonAdded{"Jon Berg", "assembler"});
    const auto second = sessionOf(other.ledger, "second.caprail");
    AddFromShelfDialog dialog(*second, loadShelf());
    dialog.show();
    auto* list = child<QTableView>(dialog);
    for (const char* name : {"Mira Solheim", "box 3"}) {
        EXPECT_TRUE(list->model()->setData(list->model()->index(lineOf(list, name), 0), Qt::Checked, Qt::CheckStateRole));
    }
    picture(dialog, "shop-add-from-shelf");
    button(dialog, "Copy")->click();
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_TRUE(second->facts().people.contains("Mira Solheim"));
    EXPECT_EQ(second->facts().instruments.size(), 6U);
    EXPECT_EQ(second->facts().shims.size(), 6U);
}

TEST_F(ShopDialogs, say_that_a_broken_shelf_cannot_be_used_and_leave_its_file_alone) {
    ASSERT_TRUE(writeText(shelfPath(), "{\"version\": 99}"));
    ShelfDialog dialog(nullptr);
    EXPECT_FALSE(button(dialog, "Take")->isEnabled());
    EXPECT_THAT(dialog.findChild<QLabel*>()->text().toStdString(), HasSubstr("newer version"));
    EXPECT_EQ(*readText(shelfPath()), "{\"version\": 99}");
}

TEST_F(ShopDialogs, show_the_earlier_build_beside_the_present_one) {
    const auto session = sessionOf(rebuilt());
    for (const LookChoice look : {LookChoice::light, LookChoice::dark}) {
        applyLook(look);
        BuildsDialog dialog(*session);
        dialog.show();
        QApplication::processEvents();
        picture(dialog, QStringLiteral("shop-builds-") + (look == LookChoice::dark ? "dark" : "light"));
        ASSERT_TRUE(dialog.comparison());
        const auto* tables = child<QTableView>(dialog);
        EXPECT_EQ(cell(tables, lineOf(tables, "Main 1"), 3), "+0.0007");
    }
    applyLook(LookChoice::light);
    const auto comparison = compareLastBuilds(session->ledger());
    const SheetSource source{session->ledger(), session->facts(), session->assessment(),
                             [](const std::string&) { return QByteArray(); }};
    const auto pages = differencePages(source, *comparison, {}, 90);
    ASSERT_FALSE(pages.empty());
    picture(pages.front(), "shop-difference-sheet");
    const QString pdf = QString::fromStdString(folder / "difference.pdf");
    ASSERT_TRUE(writeDifferenceSheet(source, *comparison, pdf, {}));
    EXPECT_GT(QFileInfo(pdf).size(), 5'000);
}

/// The index of a folder with so many records, and where it is.
struct Compared {
    ShopIndex index;
    explicit Compared(const std::string& cache, int count) : index(*ShopIndex::open(cache, "/srv/engines")) {
        for (int i = 0; i < count; ++i) {
            const RecordDigest d = digest(shoptest::recordOf(i));
            ShopRow row;
            row.file.path = std::to_string(i) + ".caprail";
            row.reading = FileReading::assessed;
            row.summary = d.summary;
            EXPECT_TRUE(index.put(row, d.words, d.figures));
        }
    }
};

TEST_F(ShopDialogs, compare_no_engines_while_the_figures_of_one_cannot_be_read) {
    Compared compared(folder / "cache", 6);
    ASSERT_TRUE(compared.index.connection().run(
        "UPDATE banded SET state = 77 WHERE listing = (SELECT max(listing) FROM banded)"));
    AcrossWindow window(compared.index.connection().place(), {}, shoptest::morning);
    window.setAttribute(Qt::WA_DeleteOnClose, false);
    window.show();
    auto* notice = window.findChild<DatabaseNotice*>();
    const auto isSaid = [&] { // on a busy machine it says first that it waits
        return notice->findChild<QLabel*>()->text().contains("no program of this version wrote");
    };
    ASSERT_TRUE(QTest::qWaitFor(isSaid, 20'000));
    EXPECT_TRUE(window.findChild<AcrossChart*>()->points().empty()) << "some engines of many are no comparison";
}

TEST_F(ShopDialogs, compare_engines_by_counts_and_ranges) {
    Compared compared(folder / "cache", 24);
    for (const LookChoice look : {LookChoice::light, LookChoice::dark}) {
        applyLook(look);
        AcrossWindow window(compared.index.connection().place(), {}, shoptest::morning);
        window.setAttribute(Qt::WA_DeleteOnClose, false);
        window.show();
        auto* chart = window.findChild<AcrossChart*>();
        auto* instruments = window.findChildren<QTableView*>().last();
        ASSERT_TRUE(QTest::qWaitFor([&] { return !chart->points().empty() && instruments->model()->rowCount() > 0; }));
        picture(window, QStringLiteral("shop-across-") + (look == LookChoice::dark ? "dark" : "light"));
        EXPECT_LE(window.minimumSizeHint().width(), 1280);
        EXPECT_THAT(chart->accessibleDescription().toStdString(), HasSubstr("values at 3 places"));
        const auto drawn = chart->layer("main")->children(); // in the order in which they are painted
        const auto isBand = [](QCPLayerable* one) { return qobject_cast<QCPItemRect*>(one) != nullptr; };
        const auto isGraph = [](QCPLayerable* one) { return qobject_cast<QCPGraph*>(one) != nullptr; };
        const auto band = std::ranges::find_if(drawn, isBand);
        ASSERT_NE(band, drawn.end());
        EXPECT_LT(band, std::ranges::find_if(drawn, isGraph)) << "no value lies under the band";
        for (auto* box : window.findChildren<QComboBox*>()) {
            EXPECT_FALSE(box->accessibleName().isEmpty());
            if (box->accessibleName() == "Which records") {
                const auto all = chart->points().size();
                box->setCurrentIndex(1); // one template
                EXPECT_TRUE(QTest::qWaitFor([&] { return chart->points().size() < all && !chart->points().empty(); }));
                box->setCurrentIndex(0);
                EXPECT_TRUE(QTest::qWaitFor([&] { return chart->points().size() == all; }));
            }
        }
        auto* tabs = window.findChild<QTabWidget*>();
        for (int tab = 1; tab < tabs->count(); ++tab) {
            tabs->setCurrentIndex(tab);
            QApplication::processEvents();
            picture(window, QStringLiteral("shop-across-%1-").arg(tab) + (look == LookChoice::dark ? "dark" : "light"));
        }
    }
    applyLook(LookChoice::light);
}
