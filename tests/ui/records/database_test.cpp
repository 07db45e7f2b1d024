// SPDX-License-Identifier: GPL-3.0-or-later
/// The shop's window on a database: paged, alive while nobody answers, and with what was listed when it is lost.
#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QStatusBar>
#include <QTableView>
#include <QTest>
#include <gmock/gmock.h>
#include <records/across_chart.h>
#include <records/across_window.h>
#include <records/database_notice.h>
#include <records/database_window.h>
#include <records/shop_model.h>
#include <records/shop_tools.h>
#include <shop/shop_index.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <window/preferences.h>

#include "../../core/shopserver/publishing.h"
#include "../find.h"
#include "../pictures.h"
#include "many_records.h"

using namespace caprail;
using testing::HasSubstr;

namespace {

template <class Done> bool until(Done done, int milliseconds = 10'000) {
    return QTest::qWaitFor(done, milliseconds);
}

/// An index with so many rows, as a place that a list can be read from.
class AnIndex {
public:
    explicit AnIndex(int count) : m_index(*ShopIndex::open(m_folder / "cache", "/srv/engines")) { add(0, count); }
    /// Those of these numbers; `customer`: of one customer, else of nine by turns.
    void add(int from, int to, const std::string& customer = {}) {
        EXPECT_TRUE(m_index.together([&]() -> Result<void> {
            for (int i = from; i < to; ++i) {
                ShopRow row;
                row.file.path = std::to_string(i) + ".caprail";
                row.reading = FileReading::assessed;
                row.summary.customer = customer.empty() ? std::string(shoptest::customers[i % 9]) : customer;
                row.summary.engine = "V8";
                row.summary.serial = "KL-" + std::to_string(i);
                row.summary.who = shoptest::workers[i % 3];
                row.summary.entries = 1;
                row.summary.state = JobState::locked;
                row.summary.lastEntry = {shoptest::morning.milliseconds - i * 1000LL};
                if (auto put = m_index.put(row, row.summary.customer + " " + row.summary.serial, {}); !put) {
                    return put;
                }
            }
            return {};
        }));
    }
    [[nodiscard]] DatabasePlace place() { return m_index.connection().place(); }

private:
    shoptest::Folder m_folder;
    ShopIndex m_index;
};

QString cellOf(const DatabaseModel& model, int row, int column) {
    return model.index(row, column).data().toString();
}

TEST(DatabaseList, is_read_a_page_at_a_time_as_it_comes_in_sight) {
    AnIndex index(950);
    DatabaseLink link(index.place());
    DatabaseModel model(link);
    model.ask();
    ASSERT_TRUE(until([&] { return model.total() == 950; }));
    EXPECT_EQ(model.rowCount(), 950);
    EXPECT_EQ(model.listed(), 950);
    const int serial = listColumn("engine");
    EXPECT_EQ(cellOf(model, 0, serial), "V8, KL-0") << "the last entry first";
    EXPECT_EQ(cellOf(model, 99, serial), "V8, KL-99");
    EXPECT_EQ(cellOf(model, 940, serial), QString()) << "nobody has seen it yet";
    EXPECT_EQ(cellOf(model, 940, 0), "reading…");
    ASSERT_TRUE(until([&] { return cellOf(model, 940, serial) == "V8, KL-940"; }));
    model.sort(serial, Qt::DescendingOrder);
    ASSERT_TRUE(until([&] { return cellOf(model, 0, serial) == "V8, KL-99"; })) << "by letters, in SQLite";
}

TEST(DatabaseList, is_searched_filtered_and_grouped_by_the_database) {
    AnIndex index(250);
    DatabaseLink link(index.place());
    DatabaseModel model(link);
    model.setSearch("kl 24");
    ASSERT_TRUE(until([&] { return model.total() == 250; }));
    EXPECT_EQ(model.listed(), 11) << "KL-24 and KL-240 to KL-249";
    model.setSearch({});
    ASSERT_TRUE(until([&] { return model.listed() == 250; }));
    ListFilter filter;
    filter.person = shoptest::workers[1];
    model.setFilter(filter);
    ASSERT_TRUE(until([&] { return model.listed() == 83; }));
    model.setGrouping(ListingWish::Grouping::customer);
    ASSERT_TRUE(until([&] { return model.rowCount() == 86; })) << "three customers among them";
    EXPECT_EQ(model.index(0, 0).data(ShopModel::acrossRole).toString(), "Halden Marine  (27)");
    EXPECT_FALSE(model.flags(model.index(0, 0)).testFlag(Qt::ItemIsSelectable));
    EXPECT_EQ(model.at(model.index(0, 0)), nullptr);
    EXPECT_EQ(cellOf(model, 27, 0), "Halden Marine");
    EXPECT_EQ(model.index(28, 0).data(ShopModel::acrossRole).toString(), "Ines Roth  (28)");
    EXPECT_EQ(cellOf(model, 29, 0), "Ines Roth");
    EXPECT_EQ(cellOf(model, 85, 0), "Kofi Ames");
}

TEST(DatabaseList, counts_its_groups_anew_when_records_came_in_behind_its_back) {
    AnIndex index(450);
    DatabaseLink link(index.place());
    DatabaseModel model(link);
    model.setGrouping(ListingWish::Grouping::customer);
    ASSERT_TRUE(until([&] { return model.total() == 450; }));
    ASSERT_EQ(model.rowCount(), 459);
    const QString head = model.index(0, 0).data(ShopModel::acrossRole).toString();
    ASSERT_TRUE(head.endsWith("  (50)")) << head.toStdString();
    const QString first = head.chopped(6);
    index.add(450, 460, first.toStdString());
    EXPECT_EQ(cellOf(model, 300, 0), "reading…"); // a page that is read only now
    ASSERT_TRUE(until([&] { return model.rowCount() == 469; }));
    EXPECT_EQ(model.index(0, 0).data(ShopModel::acrossRole).toString(), first + "  (60)");
}

TEST(DatabaseList, has_rested_when_an_answer_shows_a_box_that_stays) {
    AnIndex index(1);
    DatabaseLink link(index.place());
    QSignalSpy rested(&link, &DatabaseLink::rested);
    bool isTold = false;
    link.ask(
        "count", [](Connection& connection) { return ListingPages(connection).count({}); },
        [&](const Result<std::int64_t>& count) {
            EXPECT_EQ(count.value_or(0), 1);
            EXPECT_FALSE(link.isAsking());
            EXPECT_EQ(rested.count(), 1) << "else it would be said behind the box that the database is waited for";
            isTold = true;
        });
    EXPECT_TRUE(link.isAsking());
    ASSERT_TRUE(until([&] { return isTold; }));
}

TEST(DatabaseNotice, says_what_was_refused_until_the_same_is_answered) {
    AnIndex index(1);
    DatabaseLink link(index.place());
    DatabaseNotice notice(link);
    const auto* words = notice.findChild<QLabel*>();
    notice.fail("list", "The list took too long.");
    notice.answer("people");
    EXPECT_FALSE(notice.isHidden()) << "the list is still not what is there";
    notice.fail("count", "The database is lost.");
    EXPECT_EQ(words->text(), "⚑ The database is lost.");
    notice.answer("count");
    EXPECT_EQ(words->text(), "⚑ The list took too long.");
    notice.answer("list");
    EXPECT_TRUE(notice.isHidden());
}

TEST(ListTools, filter_by_the_person_that_they_show) {
    ShopTools tools("Folder…");
    tools.setPeople({"Ada Quell", "Mira Solheim"});
    auto* person = child<QComboBox>(tools, "person");
    person->setCurrentText("Mira Solheim");
    tools.setPeople({"Ada Quell"}); // she is in none of the records any more
    EXPECT_EQ(person->currentText(), "Mira Solheim");
    EXPECT_EQ(tools.filter().person, "Mira Solheim");
    person->setCurrentIndex(0);
    tools.setPeople({"Ada Quell"});
    EXPECT_EQ(person->count(), 2) << "Anyone, and who is there";
}

/// Takes connections and never answers.
class SilentServer {
public:
    explicit SilentServer(const std::string& path) : m_socket(::socket(AF_UNIX, SOCK_STREAM, 0)) {
        sockaddr_un address{};
        address.sun_family = AF_UNIX;
        EXPECT_LT(path.size(), sizeof address.sun_path);
        path.copy(address.sun_path, sizeof address.sun_path - 1);
        EXPECT_EQ(::bind(m_socket, reinterpret_cast<const sockaddr*>(&address), sizeof address), 0);
        EXPECT_EQ(::listen(m_socket, 8), 0);
    }
    SilentServer(const SilentServer&) = delete;
    SilentServer& operator=(const SilentServer&) = delete;
    ~SilentServer() { ::close(m_socket); }

private:
    int m_socket;
};

class DatabaseShop : public testing::Test {
protected:
    void SetUp() override { useSettingsIn(m_settings.path()); }
    static std::unique_ptr<DatabaseWindow> shown(const QString& name) {
        auto window = std::make_unique<DatabaseWindow>();
        window->setAttribute(Qt::WA_DeleteOnClose, false);
        window->show();
        window->showDatabase(name);
        return window;
    }
    static QString notice(const QWidget& window) {
        const auto* one = child<DatabaseNotice>(window, "databaseNotice");
        return one->isVisible() ? one->findChild<QLabel*>()->text() : QString();
    }
    QTemporaryDir m_settings;
};

TEST_F(DatabaseShop, says_that_a_server_is_away_and_tries_again_when_it_is_told_to) {
    const auto window = shown("host=/nowhere/at/all dbname=shop");
    ASSERT_TRUE(until([&] { return notice(*window).contains("does not answer"); }));
    auto* again = child<QPushButton>(*window, "tryAgain");
    EXPECT_TRUE(again->isVisible());
    EXPECT_EQ(DatabaseWindow::lastDatabase(), "host=/nowhere/at/all dbname=shop");
    again->click();
    EXPECT_EQ(notice(*window), QString());
    EXPECT_TRUE(until([&] { return notice(*window).contains("does not answer"); }));
}

TEST_F(DatabaseShop, stays_alive_while_a_server_says_nothing_and_closes_without_it) {
    const QString folder = m_settings.path();
    const SilentServer server((folder + "/.s.PGSQL.5432").toStdString());
    QElapsedTimer closing;
    {
        const auto window = shown("host=" + folder + " dbname=shop");
        qint64 longest = 0;
        QElapsedTimer frame;
        frame.start();
        ASSERT_TRUE(until([&] {
            longest = std::max(longest, frame.restart());
            return notice(*window).contains("Waiting for");
        }));
        EXPECT_LT(longest, 1000) << "milliseconds without a frame";
        EXPECT_FALSE(child<QPushButton>(*window, "tryAgain")->isVisible());
        closing.start();
    }
    EXPECT_LT(closing.elapsed(), 2000);
}

TEST_F(DatabaseShop, keeps_no_password) {
    const auto window = shown("postgresql://bench:secret@db/caprail");
    bool isSaid = false;
    for (const auto* label : window->findChildren<QLabel*>()) {
        isSaid = isSaid || (label->isVisible() && label->text().contains("~/.pgpass"));
    }
    EXPECT_TRUE(isSaid);
    EXPECT_EQ(DatabaseWindow::lastDatabase(), QString());
    EXPECT_EQ(window->database(), QString());
}

class DatabaseShopOnAServer : public servertest::Publishing {
protected:
    void SetUp() override {
        useSettingsIn(m_settings.path());
        qputenv("XDG_CACHE_HOME", m_settings.path().toUtf8());
        servertest::Publishing::SetUp();
        if (IsSkipped()) {
            return;
        }
        Connection bench = as("bench_1");
        RecordPublisher publisher(bench);
        for (int i = 0; i < 24; ++i) {
            const std::string path = folder / (std::to_string(i) + ".caprail");
            shoptest::write(path, shoptest::recordOf(i));
            const auto done = publisher.publish(path);
            ASSERT_TRUE(done) << done.error().sentence;
        }
    }
    QTemporaryDir m_settings;
};

TEST_F(DatabaseShopOnAServer, is_listed_on_the_command_line_as_a_folder_is) {
    const auto called = [&](const QStringList& arguments) {
        QProcess program;
        program.start(CAPRAIL_PROGRAM, QStringList{"shop"} + arguments);
        EXPECT_TRUE(program.waitForFinished(60'000));
        EXPECT_EQ(program.exitCode(), 0) << program.readAllStandardError().toStdString();
        return program.readAllStandardOutput();
    };
    const QStringList from{"--from", QString::fromStdString(service("reader_1"))};
    const QStringList in{QString::fromStdString(folder.path())};
    for (const QStringList& how : {QStringList{"--list"}, {"--json"}, {"--list", "--search", "marchetti v8"}}) {
        const QByteArray there = called(from + how);
        EXPECT_GT(there.size(), 100);
        EXPECT_EQ(there, called(in + how)) << how.join(' ').toStdString();
    }
}

TEST_F(DatabaseShopOnAServer, goes_by_what_its_tools_show_and_says_when_nothing_matches) {
    DatabaseWindow window;
    window.setAttribute(Qt::WA_DeleteOnClose, false);
    window.resize(1280, 800);
    window.show();
    const QString name = QString::fromStdString(service("reader_1"));
    window.showDatabase(name);
    ASSERT_TRUE(until([&] { return window.model()->total() == 24; }));
    child<QComboBox>(window, "group")->setCurrentIndex(2);
    ASSERT_TRUE(until([&] { return window.model()->rowCount() > 24; }));
    const int lines = window.model()->rowCount();
    for (const QString& again : {name, name + " application_name=other"}) {
        window.showDatabase(again);
        EXPECT_EQ(window.model()->wish().grouping, ListingWish::Grouping::state);
        ASSERT_TRUE(until([&] { return window.model()->total() == 24; }));
        EXPECT_EQ(window.model()->rowCount(), lines) << "in the groups that are chosen";
    }
    const auto* list = child<QTableView>(window, "records");
    QTest::keyClick(child<QLineEdit>(window, "search"), Qt::Key_Return);
    EXPECT_EQ(list->currentIndex().row(), 1) << "the first record, behind the head of its group";
    child<QLineEdit>(window, "search")->setText("nobody of this name");
    ASSERT_TRUE(until([&] { return window.model()->listed() == 0; }));
    EXPECT_TRUE(until([&] { return list->accessibleDescription().startsWith("No record matches"); }));
    picture(window, "shop-database-nothing");
    child<QLineEdit>(window, "search")->clear();
    EXPECT_TRUE(until([&] { return list->accessibleDescription().isEmpty(); }));
}

TEST_F(DatabaseShopOnAServer, compared_keeps_what_was_answered_and_says_what_was_not_until_it_is) {
    AcrossWindow across(*parseService(service("reader_1")), {}, shoptest::morning);
    across.setAttribute(Qt::WA_DeleteOnClose, false);
    across.show();
    auto* chart = across.findChild<AcrossChart*>();
    ASSERT_TRUE(until([&] { return !chart->points().empty(); }));
    const auto* notice = child<DatabaseNotice>(across, "databaseNotice");
    auto* by = child<QComboBox>(across, "by");
    takeConnections(false);
    cutOff("reader_1");
    by->setCurrentIndex(1);
    ASSERT_TRUE(until([&] { return notice->isVisible(); }));
    EXPECT_FALSE(chart->points().empty()) << "the spread was answered";
    takeConnections(true);
    by->setCurrentIndex(2);
    EXPECT_TRUE(until([&] { return !notice->isVisible(); })) << "the question after it was answered";
    EXPECT_FALSE(chart->points().empty());
}

TEST_F(DatabaseShopOnAServer, lists_searches_compares_and_fetches_and_keeps_the_list_when_the_server_is_lost) {
    for (const LookChoice look : {LookChoice::light, LookChoice::dark}) {
        applyLook(look);
        const QString name = look == LookChoice::dark ? "dark" : "light";
        DatabaseWindow window;
        window.setAttribute(Qt::WA_DeleteOnClose, false);
        window.resize(1280, 800);
        window.show();
        window.showDatabase(QString::fromStdString(service("reader_1")));
        ASSERT_TRUE(until([&] { return window.model()->total() == 24; }));
        QApplication::processEvents();
        picture(window, "shop-database-" + name);
        auto* search = child<QLineEdit>(window, "search");
        search->setText("lea marchetti");
        ASSERT_TRUE(until([&] { return window.model()->listed() == 3; }));
        EXPECT_EQ(cellOf(*window.model(), 0, 0), "Léa Marchetti");
        EXPECT_THAT(child<QStatusBar>(window)->findChild<QLabel*>()->text().toStdString(), HasSubstr("3 of 24"));
        search->clear();
        ASSERT_TRUE(until([&] { return window.model()->listed() == 24; }));

        const QString fetched = QString::fromStdString(folder / ("fetched " + name.toStdString() + ".caprail"));
        QSignalSpy opened(&window, &DatabaseWindow::openRequested);
        window.fetchInto(window.model()->at(window.model()->index(0, 0))->id, fetched);
        ASSERT_TRUE(until([&] { return opened.count() == 1; }));
        EXPECT_EQ(opened.front().front().toString(), fetched);
        EXPECT_TRUE(RecordFile::open(fetched.toStdString(), OpenMode::readOnly));

        AcrossWindow across(*parseService(service("reader_1")), {}, shoptest::morning);
        across.setAttribute(Qt::WA_DeleteOnClose, false);
        across.show();
        auto* chart = across.findChild<AcrossChart*>();
        ASSERT_TRUE(until([&] { return !chart->points().empty(); }));
        EXPECT_THAT(chart->accessibleDescription().toStdString(), HasSubstr("values at 3 places"));
        QTest::qWait(50); // drawn with the next frame
        picture(across, "shop-database-across-" + name);

        takeConnections(false);
        cutOff("reader_1");
        window.refresh();
        ASSERT_TRUE(until([&] { return child<DatabaseNotice>(window, "databaseNotice")->isVisible(); }));
        EXPECT_EQ(window.model()->rowCount(), 24) << "what was listed stays";
        QApplication::processEvents();
        picture(window, "shop-database-lost-" + name);
        takeConnections(true);
        child<QPushButton>(window, "tryAgain")->click();
        EXPECT_TRUE(until([&] { return !child<DatabaseNotice>(window, "databaseNotice")->isVisible(); }));
    }
    applyLook(LookChoice::light);
}

} // namespace
