// SPDX-License-Identifier: GPL-3.0-or-later
/// Records whose every text is an attack, shown by every window and dialog and printed on the sheet: no file is opened,
/// nothing is taken for markup, a key or a placeholder of a sentence.
#include "../find.h"
#include "../pictures.h"
#include "../records/many_records.h"
#include "hostile_text.h"

#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>
#include <records/across_window.h>
#include <records/builds_dialog.h>
#include <records/shelf_dialogs.h>
#include <records/shop_config.h>
#include <records/shop_window.h>
#include <records/template_dialogs.h>
#include <sheet/sheet.h>
#include <stations/common/budget_window.h>
#include <stations/common/entry_field.h>
#include <stations/common/photo_tools.h>
#include <stations/common/station.h>
#include <window/bench_view.h>
#include <window/main_window.h>
#include <window/menus.h>
#include <window/new_record_dialog.h>
#include <window/open_windows.h>
#include <window/preferences_dialog.h>
#include <window/record_output.h>
#include <window/start_page.h>

using namespace caprail;
using namespace caprail::hostile;

namespace {

/// With everything: fits, findings, notes, shims set aside, a round in which fasteners moved, a second build.
Ledger fullLedger() {
    shoptest::Maker maker;
    maker.begin("Orrin Vale", "6.2 V8", "KL-2207", "Three mains");
    maker.make(NoteAdded{"", "crank polished"});
    maker.make(NoteAdded{"main-2", "oil hole chamfered"});
    maker.make(FindingOpened{"F1", "2R", "burr on the rail"});
    maker.make(FindingSettled{"F1", "stoned away"});
    maker.make(FindingOpened{"F2", "", "a thread insert is missing"});
    maker.readyToClose(50);
    return maker.ledger;
}

class HostileWindows : public testing::TestWithParam<int> {
protected:
    void SetUp() override {
        useSettingsIn(m_folder.path());
        qputenv("XDG_CONFIG_HOME", m_folder.path().toUtf8());
        qputenv("XDG_CACHE_HOME", m_folder.path().toUtf8());
        attack = attacks(bait.path())[static_cast<std::size_t>(GetParam())];
    }
    void TearDown() override {
        QTest::qWait(20);
        EXPECT_EQ(bait.taken(), 0) << "a file that a record names was opened";
    }
    /// A sample with the attack in every text.
    [[nodiscard]] Ledger sample(const std::string& name) const {
        const auto file = RecordFile::open(std::string(SAMPLE_BUILDS "/") + name, OpenMode::readOnly);
        EXPECT_TRUE(file);
        return poisoned(file->ledger(), attack.text);
    }
    QString written(const Ledger& ledger, const std::string& name) const {
        const QString path = m_folder.filePath(QString::fromStdString(name));
        shoptest::write(path.toStdString(), ledger);
        return path;
    }
    void look(QWidget& widget) {
        widget.show();
        QApplication::processEvents();
        widget.grab();
        walk(&widget, walked);
    }
    QTemporaryDir m_folder;
    Bait bait;
    Attack attack;
    Walked walked;
};

std::vector<Destination> destinationsIn(const RecordSession& session, std::size_t most) {
    std::vector<Destination> destinations;
    for (const auto& station : allWords<Station>()) {
        destinations.push_back({station.value, {}});
    }
    for (const char* page : {"2R", "1L", "shims", "flushness"}) {
        if (destinations.size() < most) {
            destinations.push_back({Station::girdle, page});
        }
    }
    for (const Check& check : session.assessment().checks) {
        if (destinations.size() < most) {
            destinations.push_back(check.destination);
        }
    }
    return destinations;
}

} // namespace

TEST_P(HostileWindows, the_record_window_at_every_station_with_its_bars_and_menus) {
    // Long texts take their time to be laid out (a stack of marks the square of its height): one record is enough.
    const bool isLong = attack.text.size() > 100;
    const std::vector<std::string> all{"closed.caprail", "mid-survey.caprail", "moved-in-verify-round.caprail"};
    for (const std::string& name : isLong ? std::vector<std::string>{"mid-survey.caprail"} : all) {
        const Ledger ledger = sample(name);
        ASSERT_GT(countPoisoned(ledger, attack.text).first, isLong ? 8 : 20);
        MainWindow window;
        window.setAttribute(Qt::WA_DeleteOnClose, false);
        window.resize(1280, 800);
        ASSERT_TRUE(window.openFile(written(ledger, name)));
        for (const Destination& destination : destinationsIn(*window.session(), isLong ? 8 : 24)) {
            window.showDestination(destination);
            for (auto* tabs : window.findChildren<QTabWidget*>()) {
                for (int i = tabs->count() - 1; i >= 0; --i) {
                    tabs->setCurrentIndex(i);
                    QApplication::processEvents();
                }
            }
            look(window);
        }
        for (QMenu* menu : window.findChildren<QMenu*>()) {
            emit menu->aboutToShow();
        }
        look(window);
        window.toggleBench();
        look(window);
        child<BenchView>(window)->hide();
        // What comes of typing: a refusal, an entry on the disk, one that waits.
        window.session()->setPerson(attack.text + QStringLiteral("Mira Solheim"));
        (void)window.session()->append(NoteAdded{"", attack.text.toStdString()});
        (void)window.session()->append(FindingOpened{attack.text.toStdString(), "", attack.text.toStdString()});
        (void)window.session()->append(ShellsFitted{{JournalKind::main, 1}, attack.text.toStdString(), "x"});
        ASSERT_TRUE(QFile::rename(window.session()->path(), m_folder.filePath("aside")));
        (void)window.session()->append(NoteAdded{"", attack.text.toStdString()});
        QApplication::processEvents();
        look(window);
        ASSERT_TRUE(QFile::rename(m_folder.filePath("aside"), window.session()->path()));
        window.session()->dropUnstored();
        const DialogWalk dialogs(walked);
        askAndStrike(window, 1);
        offerSalvage(window, window.session()->path(), attack.text);
        EXPECT_EQ(dialogs.seen(), 2);
        window.session()->dropUnstored();
    }
    EXPECT_GT(walked.labels, 400);
    EXPECT_GT(walked.cells, 400);
    EXPECT_GT(walked.tips, 50);
}

TEST_P(HostileWindows, the_dialogs_of_a_record) {
    const Ledger ledger = poisoned(fullLedger(), attack.text);
    auto session = std::move(*RecordSession::open(written(ledger, "full.caprail")));
    {
        TemplateEditor editor(ledger);
        look(editor);
        BuildsDialog builds(*session);
        look(builds);
        ShelfDialog shelf(session.get());
        look(shelf);
        Shelf kept;
        for (const auto& [name, person] : session->facts().people) {
            kept.keep(PersonAdded{name, "assembler"});
        }
        for (const auto& [name, instrument] : session->facts().instruments) {
            kept.keep(instrument.latest());
        }
        (void)writeShelf(shelfPath(), kept);
        AddFromShelfDialog add(*session, kept);
        look(add);
        NewRecordDialog begin(attack.text);
        look(begin);
        PreferencesDialog preferences(Preferences::load());
        look(preferences);
        if (const auto offered = templateFrom(ledger, {attack.text.toStdString(), 1, attack.text.toStdString()})) {
            (void)ownTemplates().keep(*offered);
        }
        TemplatesDialog templates;
        look(templates);
        UncertaintyBudget budget;
        BudgetWindow window(attack.text, budget, *session, nullptr);
        look(window);
    }
    QWidget parent;
    const DialogWalk dialogs(walked);
    const auto stored =
        session->attach({"", attack.text.left(100).toStdString() + ".png", "image/png", "", "", "", 0}, "x");
    for (const auto& seen : session->facts().attachments) {
        (void)showPhoto(*session, seen.what, &parent);
    }
    EXPECT_EQ(dialogs.seen(), static_cast<int>(session->facts().attachments.size())) << stored.has_value();
    EXPECT_GT(walked.labels, 30);
}

TEST_P(HostileWindows, the_start_page_and_the_shop) {
    const std::string poison = attack.text.toStdString();
    shoptest::Folder folder;
    shoptest::write(folder / "a.caprail", poisoned(fullLedger(), attack.text));
    shoptest::write(folder / "b.caprail", poisoned(shoptest::shortLedger("Orrin Vale", "V8", "note"), attack.text));
    QString fileName = attack.text.left(60);
    fileName.replace(QLatin1Char('/'), QLatin1Char('_'));
    shoptest::write(folder / (fileName.toStdString() + ".caprail"), shoptest::shortLedger("Orrin Vale", "V8"));
    std::ofstream(folder / (fileName.toStdString() + "-torn.caprail")) << "no record";
    ShopWindow shop;
    shop.setAttribute(Qt::WA_DeleteOnClose, false);
    shop.resize(1280, 800);
    shop.show();
    QSignalSpy scanned(&shop, &ShopWindow::scanned);
    shop.showFolder(QString::fromStdString(folder.path()));
    ASSERT_TRUE(scanned.wait(20'000));
    look(shop);
    for (auto* box : shop.findChildren<QComboBox*>()) {
        for (int i = 0; i < box->count(); ++i) {
            box->setCurrentIndex(i);
            QApplication::processEvents();
        }
        box->setCurrentIndex(0);
    }
    look(shop);
    for (QAction* action : shop.findChildren<QAction*>()) {
        if (action->text() == QLatin1String("Compare &engines…")) {
            action->trigger();
        }
    }
    for (const auto& across : openWindows<AcrossWindow>()) {
        auto* of = across->findChild<QComboBox*>();
        ASSERT_TRUE(QTest::qWaitFor([&] { return of->count() > 0; })); // the index is asked in the background
        for (auto* box : across->findChildren<QComboBox*>()) {
            box->setCurrentIndex(box->count() - 1);
            QTest::qWait(50);
        }
        look(*across);
        delete across.data();
    }
    noteRecentFile(QString::fromStdString(folder / (fileName.toStdString() + ".caprail")), QStringLiteral("<b>V8</b> &x · %1"));
    StartPage start;
    look(start);
    EXPECT_GT(walked.cells, 20);
}

TEST_P(HostileWindows, the_sheet_prints_letters) {
    for (const char* name : {"closed.caprail", "moved-in-verify-round.caprail"}) {
        auto session = std::move(*RecordSession::open(written(sample(name), name)));
        // Pages of a text without end are another matter; here it is what is printed.
        if (attack.text.size() < 1000) {
            EXPECT_FALSE(sheetPages(sheetSourceOf(*session), {}, 40).empty());
            const QString pdf = m_folder.filePath(QString::fromUtf8(name) + QStringLiteral(".pdf"));
            ASSERT_TRUE(writeSheet(sheetSourceOf(*session), pdf, {}));
            QProcess reader;
            reader.start(QStringLiteral("pdftotext"), {pdf, QStringLiteral("-")});
            ASSERT_TRUE(reader.waitForFinished(60'000));
            const std::string words = reader.readAllStandardOutput().toStdString();
            const std::string first = attack.text.section(QLatin1Char(' '), 0, 0).left(11).toStdString();
            const std::string sort = attack.name;
            if (sort != "turned_around" && sort != "combining") { // those are set in another order
                EXPECT_THAT(words, testing::HasSubstr(first)); // "<b>GOOD</b>", "&File", "%1"
            }
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Attack, HostileWindows, testing::Range(0, 9), [](const auto& given) {
    return std::string(attacks({})[static_cast<std::size_t>(given.param)].name);
});
