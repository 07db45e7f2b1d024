// SPDX-License-Identifier: GPL-3.0-or-later
/// The manual in its window, and that its pages tell of the program as it is: no page, link or picture is missing, and
/// every key, button, menu, sign, caution and refusal that they name is one of the program's.
#include "../every_view.h"
#include "../find.h"
#include "../pictures.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QDir>
#include <QLineEdit>
#include <QMenuBar>
#include <QRegularExpression>
#include <QScrollBar>
#include <QShortcut>
#include <QTextBlock>
#include <QXmlStreamReader>
#include <gauges/gauges_dialog.h>
#include <ledger/qt_text.h>
#include <records/shelf_dialogs.h>
#include <records/shop_window.h>
#include <records/template_dialogs.h>
#include <session/cautions.h>
#include <session/language.h>
#include <session/signs.h>
#include <set>
#include <stations/common/view_switches.h>
#include <text/page_browser.h>
#include <window/key_list.h>
#include <window/manual.h>
#include <window/shop_wiring.h>

namespace caprail {
namespace {

using testing::IsEmpty;

class ManualTest : public testing::Test {
protected:
    void SetUp() override { useSettingsIn(m_folder.path()); }

    std::unique_ptr<MainWindow> opened(const QString& sample) {
        const QString copy = m_folder.filePath(sample + QStringLiteral(".caprail"));
        EXPECT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/") + sample + QStringLiteral(".caprail"), copy));
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        auto window = std::make_unique<MainWindow>();
        window->setAttribute(Qt::WA_DeleteOnClose, false);
        window->resize(1280, 800);
        window->show();
        EXPECT_TRUE(window->openFile(copy));
        return window;
    }
    QTemporaryDir m_folder;
};

TEST_F(ManualTest, reads_no_page_for_an_empty_search) {
    const auto write = [this](const char* text) {
        QFile page(m_folder.filePath(QStringLiteral("page.md")));
        ASSERT_TRUE(page.open(QIODevice::WriteOnly));
        page.write(text);
    };
    write("# A page\n\nof before");
    const PageBrowser pages({m_folder.path()});
    EXPECT_EQ(pages.countOf(QStringLiteral("page.md"), {}), 0);
    write("# A page\n\nof later and later"); // a page that was read is kept as it was
    EXPECT_EQ(pages.countOf(QStringLiteral("page.md"), {QStringLiteral("later")}), 2);
}

/// Says German to the end of the process: ctest runs each test in one of its own.
class GermanManual : public ManualTest {
protected:
    void SetUp() override {
        ManualTest::SetUp();
        speak(QStringLiteral("de"));
    }
};

/// F1, by the entry of the menu that has it.
void pressF1(const QMainWindow& window) {
    for (const QAction* menu : window.menuBar()->actions()) {
        for (QAction* entry : menu->menu()->actions()) {
            if (entry->shortcut() == QKeySequence(Qt::Key_F1)) {
                entry->trigger();
            }
        }
    }
}

Manual& manualOf(const QWidget& window) {
    return *child<Manual>(window, "manual");
}
PageBrowser& pageOf(const QWidget& window) {
    return *child<PageBrowser>(manualOf(window), "page");
}

/// The pages of the language that is spoken; those that nobody translated yet are left out.
QStringList pagesHere() {
    QStringList pages = manualPages();
    pages.removeIf(
        [](const QString& page) { return !QFile::exists(manualFolders().front() + QLatin1Char('/') + page); });
    return pages;
}

QString markdownOf(const QString& page) {
    QFile file(manualFolders().front() + QLatin1Char('/') + page);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << page.toStdString();
    return QString::fromUtf8(file.readAll());
}

/// What a page says but for what is typed or called.
QString wordsOf(const QString& page) {
    static const QRegularExpression code(QStringLiteral("`[^`]*`|^    .*$"), QRegularExpression::MultilineOption);
    return markdownOf(page).remove(code);
}

QStringList all(const QString& pattern, const QString& text) {
    QStringList found;
    const QRegularExpression expression(pattern, QRegularExpression::MultilineOption);
    for (const auto& match : expression.globalMatch(text)) {
        found << match.captured(match.lastCapturedIndex());
    }
    return found;
}

/// A label as it is compared: without its key, its dots and its count.
QString bare(QString label) {
    static const QRegularExpression dots(QStringLiteral("[ …:]+$")), digits(QStringLiteral("[0-9]+"));
    static const QRegularExpression view(QStringLiteral("^[0-9]  "));
    return label.remove(view)
        .remove(QLatin1Char('&'))
        .replace(QLatin1Char('\n'), QLatin1Char(' '))
        .remove(dots)
        .replace(digits, QStringLiteral("#"));
}

void addLabels(std::set<QString>& labels, const QWidget& window) {
    for (const QAbstractButton* button : window.findChildren<QAbstractButton*>()) {
        labels.insert(bare(button->text()));
    }
    for (const QAction* action : window.findChildren<QAction*>()) {
        labels.insert(bare(action->text()));
    }
    for (const QTabWidget* tabs : window.findChildren<QTabWidget*>()) {
        for (int page = 0; page < tabs->count(); ++page) {
            labels.insert(bare(tabs->tabText(page)));
        }
    }
}

void addMenus(std::set<QString>& labels, const QMainWindow& window) {
    for (const QAction* menu : window.menuBar()->actions()) {
        for (const QAction* entry : menu->menu()->actions()) {
            labels.insert(bare(menu->text()) + QStringLiteral(" ▸ ") + bare(entry->text()));
        }
    }
}

/// Every button, entry of a menu and view of the window on a record, as it stands at each of its places.
void addWindow(std::set<QString>& labels, MainWindow& window) {
    addMenus(labels, window);
    inEveryView(window, [&](const std::string&) {
        addLabels(labels, window);
        for (const auto& station : allWords<Station>()) {
            const StationPanel* panel = window.panel(station.value);
            if (panel->isVisible()) {
                labels.insert(qtShown(station.value) + QStringLiteral(" ▸ ") + shownView(*panel));
            }
        }
    });
}

/// The labels of the whole program.
std::set<QString> labelsOf(MainWindow& atWork, MainWindow& closed) {
    std::set<QString> labels;
    addWindow(labels, atWork);
    addWindow(labels, closed);
    RecordSession& session = *atWork.session(); // some buttons are there only while something is taken apart
    session.setReasonAsker([](qint64) { return QStringLiteral("taken apart"); });
    EXPECT_TRUE(session.append(FastenerLoosened{{FastenerKind::mainCap, 1, Side::left}, "taken apart"}));
    EXPECT_TRUE(session.append(CrankLaidIn{false, "taken apart"}));
    for (const Station station : {Station::bearings, Station::fasteners}) {
        atWork.showDestination({station, station == Station::fasteners ? "main-1L" : "main-1"});
        QApplication::processEvents();
        addLabels(labels, atWork);
    }
    const GaugesDialog gauges({}, {});
    const TemplatesDialog templates;
    const ShelfDialog shelf(atWork.session());
    ShopWindow* shop = showShop(QDir::tempPath());
    for (const QWidget* one : std::initializer_list<const QWidget*>{&gauges, &templates, &shelf, shop}) {
        addLabels(labels, *one);
    }
    delete shop;
    return labels;
}

/// Names each label between « and » that the program does not have.
void expectLabels(MainWindow& atWork, MainWindow& closed) {
    const std::set<QString> labels = labelsOf(atWork, closed);
    int named = 0;
    for (const QString& page : pagesHere()) {
        for (const QString& label : all(QStringLiteral("«([^»]+)»"), wordsOf(page).simplified())) {
            ++named;
            EXPECT_TRUE(labels.contains(bare(label))) << page.toStdString() << ": «" << label.toStdString() << "»";
        }
    }
    EXPECT_GT(named, 60);
}

/// The keys of the window and of the manual's own, one by one.
std::set<QString> keysOf(const QWidget& window) {
    std::set<QString> keys;
    for (const KeyTold& told : keyList()) {
        const QStringList some =
            told.shownKeys().remove(QStringLiteral(", …")).split(QRegularExpression(QStringLiteral(", | to | bis ")));
        keys.insert(some.begin(), some.end());
        for (int digit = 1; digit < 9 && some.size() > 1 && some.front().endsWith(QLatin1Char('1')); ++digit) {
            keys.insert(some.front().chopped(1) + QString::number(digit));
        }
    }
    for (const QAction* action : window.findChildren<QAction*>()) {
        keys.insert(action->shortcut().toString(QKeySequence::NativeText));
    }
    for (const QAbstractButton* button : window.findChildren<QAbstractButton*>()) {
        keys.insert(button->shortcut().toString(QKeySequence::NativeText));
    }
    for (const QShortcut* key : window.findChildren<QShortcut*>()) {
        keys.insert(key->key().toString(QKeySequence::NativeText));
    }
    return keys;
}

/// Names each key that the program does not have.
void expectKeys(MainWindow& window) {
    pressF1(window);
    const std::set<QString> keys = keysOf(window);
    int named = 0;
    for (const QString& page : pagesHere()) {
        for (const QString& key :
             all(QStringLiteral("(?<!\\w)(?:(?:Ctrl|Strg|Alt|Shift|Umschalt)\\+)+(?:\\w+|\\+|-)|\\bF\\d+\\b|"
                                "\\bEsc\\b|\\bDelete\\b|\\bEntf\\b"),
                 wordsOf(page))) {
            ++named;
            EXPECT_TRUE(keys.contains(key)) << page.toStdString() << ": " << key.toStdString();
        }
    }
    EXPECT_GT(named, 40);
    const QString told =
        pagesHere().contains(QStringLiteral("keys.md")) ? markdownOf(QStringLiteral("keys.md")) : QString();
    for (const KeyTold& one : keyList()) {
        EXPECT_TRUE(told.contains(QStringLiteral("| %1 | %2 |").arg(one.shownKeys(), one.shownUse())))
            << one.keys << " as it stands in the list of keys";
    }
}

/// Whether the words, with … for what changes, are said by one of the sentences.
bool isSaid(const QString& words, const QStringList& sentences) {
    QStringList parts;
    static const QRegularExpression gap(QStringLiteral("[“„]?…[”“]?"));
    for (const QString& part : words.split(gap)) {
        parts << QRegularExpression::escape(part.trimmed());
    }
    const QRegularExpression wanted(parts.join(QStringLiteral(".*")), QRegularExpression::CaseInsensitiveOption);
    return std::ranges::any_of(sentences, [&](const QString& sentence) { return sentence.contains(wanted); });
}

/// All that the program says in German, or what it is said for in English.
QStringList sentencesOf(const QString& element) {
    QFile file(QStringLiteral(CATALOGUES "/caprail_de.ts"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QStringList said;
    for (QXmlStreamReader xml(&file); !xml.atEnd();) {
        if (xml.readNext() == QXmlStreamReader::StartElement && xml.name() == element) {
            said << xml.readElementText(QXmlStreamReader::IncludeChildElements).remove(QLatin1Char('&')).simplified();
        }
    }
    return said;
}

/// Names each refusal, "- *…*: what to do", that the program does not say.
void expectRefusals(const QString& element) {
    const QStringList sentences = sentencesOf(element);
    int named = 0;
    for (const QString& page : pagesHere()) {
        for (const QString& words : all(QStringLiteral("^- \\*([^*]+)\\*:"), wordsOf(page))) {
            ++named;
            EXPECT_TRUE(isSaid(words.simplified(), sentences)) << page.toStdString() << ": " << words.toStdString();
        }
    }
    EXPECT_GT(named, 30);
}

void expectCautions(MainWindow& window) {
    for (const auto& station : allWords<Station>()) {
        const QString page = manualPage(station.value);
        const QString text =
            pagesHere().contains(page) ? markdownOf(page).remove(QStringLiteral("\n>")).simplified() : QString();
        for (const Caution caution : window.panel(station.value)->cautions()) {
            EXPECT_TRUE(text.contains(shown(caution))) << page.toStdString() << ": " << shown(caution).toStdString();
        }
    }
}

/// A view without a heading of its own on its station's page would be opened at the top of it.
void expectViews(MainWindow& window) {
    int views = 0;
    inEveryView(window, [&](const std::string& name) {
        pressF1(window);
        for (const auto& station : allWords<Station>()) {
            const StationPanel* panel = window.panel(station.value);
            if (panel->isVisible() && !shownView(*panel).isEmpty()) {
                ++views;
                EXPECT_EQ(pageOf(window).page(), manualPage(station.value));
                const QTextBlock at = pageOf(window).textCursor().block();
                EXPECT_EQ(at.text(), shownView(*panel)) << name;
                EXPECT_GT(at.blockFormat().headingLevel(), 0) << name;
            }
        }
    });
    EXPECT_GT(views, 25);
}

void expectSigns() {
    const QString page = markdownOf(QStringLiteral("marks.md"));
    for (const QChar one : allSigns()) {
        EXPECT_TRUE(page.contains(one)) << QString(one).toStdString();
    }
    for (const auto& state : allWords<CheckState>()) {
        EXPECT_TRUE(page.contains(QStringLiteral("| %1 | %2 |").arg(sign(state.value), stateWord(state.value))))
            << state.word;
    }
}

void expectLinks() {
    const PageBrowser pages(manualFolders());
    int links = 0;
    for (const QString& page : pagesHere()) {
        EXPECT_FALSE(pages.titleOf(page).isEmpty());
        for (const QString& link : all(QStringLiteral("\\]\\(([^)]+)\\)"), markdownOf(page))) {
            ++links;
            EXPECT_FALSE(pages.pathOf(link).isEmpty()) << page.toStdString() << ": " << link.toStdString();
        }
        const auto lines = markdownOf(page).count(QLatin1Char('\n'));
        EXPECT_LE(lines, 150) << page.toStdString();
    }
    EXPECT_GT(links, 30);
}

} // namespace

TEST_F(ManualTest, opens_by_F1_at_the_page_of_each_station_and_of_its_view) {
    const auto window = opened(QStringLiteral("moved-in-verify-round"));
    for (const auto& station : allWords<Station>()) {
        window->showDestination({station.value, {}});
        pressF1(*window);
        EXPECT_EQ(pageOf(*window).page(), manualPage(station.value));
        EXPECT_TRUE(manualOf(*window).isVisible());
    }
    expectViews(*window);
}

TEST_F(ManualTest, opens_with_the_whole_job_where_no_record_is_open_and_with_the_shop_from_the_shop) {
    MainWindow window;
    window.setAttribute(Qt::WA_DeleteOnClose, false);
    window.show();
    pressF1(window);
    EXPECT_EQ(pageOf(window).page(), "job.md");
    ShopWindow* shop = showShop(m_folder.path());
    pressF1(*shop);
    EXPECT_EQ(pageOf(*shop).page(), "shop.md");
    delete shop;
}

TEST_F(ManualTest, has_every_page_that_its_contents_list_and_lists_every_page) {
    EXPECT_EQ(pagesHere(), manualPages());
    QStringList files = QDir(manualFolders().front()).entryList();
    QStringList listed = manualPages();
    files.sort();
    listed.sort();
    EXPECT_EQ(files, listed);
}

TEST_F(ManualTest, links_to_pages_and_pictures_that_are_there) {
    expectLinks();
    QString pages;
    for (const QString& page : manualPages()) {
        pages += markdownOf(page);
    }
    const QDir pictures(manualFolders().back());
    EXPECT_GE(pictures.entryList().size(), 8);
    for (const QString& name : pictures.entryList()) {
        EXPECT_TRUE(pages.contains(name)) << name.toStdString() << " is shown nowhere";
        EXPECT_LE(QFileInfo(pictures.filePath(name)).size(), 70'000) << name.toStdString();
        EXPECT_LE(QImage(pictures.filePath(name)).width(), 900) << name.toStdString();
    }
}

TEST_F(ManualTest, names_only_keys_that_the_program_has_and_tells_each_of_its_list) {
    expectKeys(*opened(QStringLiteral("moved-in-verify-round")));
}

TEST_F(ManualTest, names_only_buttons_menus_and_views_that_the_program_has) {
    const auto closed = opened(QStringLiteral("closed"));
    expectLabels(*opened(QStringLiteral("moved-in-verify-round")), *closed);
}

TEST_F(ManualTest, quotes_only_refusals_that_the_program_makes) {
    expectRefusals(QStringLiteral("source"));
}

TEST_F(ManualTest, explains_every_sign_and_every_state) {
    expectSigns();
}

TEST_F(ManualTest, says_at_each_station_what_is_to_be_minded_there) {
    expectCautions(*opened(QStringLiteral("moved-in-verify-round")));
}

TEST_F(ManualTest, is_searched_over_all_pages_and_goes_from_find_to_find) {
    MainWindow window;
    window.setAttribute(Qt::WA_DeleteOnClose, false);
    window.show();
    pressF1(window);
    auto& manual = manualOf(window);
    auto* search = child<QLineEdit>(manual, "search");
    auto* contents = child<QAbstractItemView>(manual, "contents");
    EXPECT_EQ(lines(contents), manualPages().size());
    search->setText(QStringLiteral("feeler LEAVES"));
    ASSERT_GT(lines(contents), 0);
    ASSERT_LT(lines(contents), 4);
    const QString last = cell(contents, lines(contents) - 1);
    EXPECT_THAT(last.toStdString(), testing::ContainsRegex("\\([0-9]+\\)$"));
    std::set<QString> visited;
    for (int press = 0; press < 12; ++press) {
        QTest::keyClick(search, Qt::Key_Return);
        visited.insert(pageOf(window).page());
        const QString found = pageOf(window).textCursor().selectedText().toLower();
        EXPECT_TRUE(found == "feeler" || found == "leaves") << found.toStdString();
    }
    EXPECT_EQ(static_cast<int>(visited.size()), lines(contents));
    EXPECT_FALSE(pageOf(window).extraSelections().isEmpty());
    search->setText(QStringLiteral("shim zyzzyva"));
    EXPECT_EQ(lines(contents), 0);
    QTest::keyClick(search, Qt::Key_Return);
    search->clear();
    EXPECT_EQ(lines(contents), manualPages().size());
    EXPECT_TRUE(pageOf(window).extraSelections().isEmpty());
}

TEST_F(ManualTest, goes_back_and_forward_and_larger_and_leaves_by_keys_alone) {
    MainWindow window;
    window.setAttribute(Qt::WA_DeleteOnClose, false);
    window.show();
    pressF1(window);
    auto& manual = manualOf(window);
    auto& page = pageOf(window);
    auto* contents = child<ListView>(manual, "contents");
    ASSERT_TRUE(QTest::qWaitForWindowActive(&manual));
    contents->selectLine(static_cast<int>(manualPages().indexOf(QStringLiteral("girdle.md"))));
    EXPECT_EQ(page.page(), "girdle.md");
    // A button is pressed by its key a moment later, so that it is seen.
    QTest::keyClick(&manual, Qt::Key_Left, Qt::AltModifier);
    EXPECT_TRUE(QTest::qWaitFor([&] { return page.page() == "job.md"; }));
    EXPECT_EQ(contents->selectedLine(), 0);
    QTest::keyClick(&manual, Qt::Key_Right, Qt::AltModifier);
    EXPECT_TRUE(QTest::qWaitFor([&] { return page.page() == "girdle.md"; }));
    const double before = page.font().pointSizeF();
    QTest::keyClick(&manual, Qt::Key_Plus, Qt::ControlModifier);
    EXPECT_TRUE(QTest::qWaitFor([&] { return page.font().pointSizeF() > before; }));
    QTest::keyClick(&manual, Qt::Key_F, Qt::ControlModifier);
    EXPECT_TRUE(child<QLineEdit>(manual, "search")->hasFocus());
    QTest::keyClicks(child<QLineEdit>(manual, "search"), QStringLiteral("shim"));
    QTest::keyClick(&manual, Qt::Key_Escape);
    EXPECT_TRUE(manual.isVisible());
    QTest::keyClick(&manual, Qt::Key_Escape);
    EXPECT_FALSE(manual.isVisible());
    pressF1(window);
    EXPECT_TRUE(manual.isVisible());
    EXPECT_GT(pageOf(window).font().pointSizeF(), before);
}

TEST_F(ManualTest, names_to_a_screen_reader_all_that_takes_the_keyboard) {
    MainWindow window;
    window.setAttribute(Qt::WA_DeleteOnClose, false);
    const Manual* manual = Manual::show(&window, QStringLiteral("job.md"));
    int stops = 0;
    for (QWidget* widget : manual->findChildren<QWidget*>()) {
        if (widget->isVisible() && (widget->focusPolicy() & Qt::TabFocus) != 0) {
            ++stops;
            QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(heard, nullptr);
            EXPECT_FALSE(heard->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
        }
    }
    EXPECT_GE(stops, 6); // search, four buttons, contents, page; what is greyed among them
}

TEST_F(ManualTest, shows_its_own_pages_and_no_file_whatever_a_link_says) {
    PageBrowser pages(manualFolders());
    ASSERT_TRUE(pages.open(QStringLiteral("girdle.md")));
    EXPECT_FALSE(pages.open(QStringLiteral("nowhere.md")));
    QFile secret(m_folder.filePath(QStringLiteral("secret.md")));
    ASSERT_TRUE(secret.open(QIODevice::WriteOnly));
    secret.write("# secret\n");
    secret.close();
    pages.setSource(QUrl::fromLocalFile(secret.fileName()));
    pages.setSource(QUrl(QStringLiteral("https://example.org/secret.md")));
    EXPECT_EQ(pages.page(), "girdle.md");
    EXPECT_FALSE(pages.toPlainText().contains(QStringLiteral("secret")));
}

TEST_F(ManualTest, is_english_where_nobody_translated_a_page) {
    PageBrowser pages(QStringList{QStringLiteral(":/caprail/manual/xx")} + manualFolders());
    ASSERT_TRUE(pages.open(QStringLiteral("girdle.md"), QStringLiteral("a view of the language xx")));
    EXPECT_TRUE(pages.toPlainText().startsWith(QStringLiteral("Girdle\n")));
}

TEST_F(ManualTest, fits_its_pictures_into_a_narrow_window) {
    PageBrowser pages(manualFolders());
    pages.resize(480, 600);
    pages.show();
    ASSERT_TRUE(pages.open(QStringLiteral("pickup.md")));
    QApplication::processEvents();
    EXPECT_EQ(pages.horizontalScrollBar()->maximum(), 0);
    pages.resize(400, 600);
    QTest::qWait(10);
    EXPECT_EQ(pages.horizontalScrollBar()->maximum(), 0);
}

TEST_F(ManualTest, is_drawn_in_each_look) {
    for (const auto& [look, name] : {std::pair(LookChoice::light, "light"), std::pair(LookChoice::dark, "dark")}) {
        applyLook(look);
        MainWindow window;
        window.setAttribute(Qt::WA_DeleteOnClose, false);
        window.show();
        QApplication::processEvents();
        picture(window, QStringLiteral("start-page-%1").arg(QLatin1String(name)));
        for (const QString& page :
             {QStringLiteral("job.md"), QStringLiteral("girdle.md"), QStringLiteral("marks.md")}) {
            Manual* manual = Manual::show(&window, page);
            QApplication::processEvents();
            picture(*manual, QStringLiteral("manual-%1-%2").arg(page.chopped(3), QLatin1String(name)));
        }
        const QPalette palette = pageOf(window).palette();
        EXPECT_GT(contrast(palette.color(QPalette::Base), palette.color(QPalette::Text)), 7);
        EXPECT_GT(contrast(palette.color(QPalette::Base), palette.color(QPalette::Link)), 4.5);
    }
}

TEST_F(GermanManual, tells_of_the_program_as_it_speaks_german) {
    expectLinks();
    expectRefusals(QStringLiteral("translation"));
    expectSigns();
    const auto window = opened(QStringLiteral("moved-in-verify-round"));
    expectCautions(*window);
    expectKeys(*window);
    expectViews(*window);
    const auto closed = opened(QStringLiteral("closed"));
    expectLabels(*window, *closed);
    pressF1(*window);
    picture(manualOf(*window), QStringLiteral("manual-german"));
}

} // namespace caprail
