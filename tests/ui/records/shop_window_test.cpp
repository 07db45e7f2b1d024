// SPDX-License-Identifier: GPL-3.0-or-later
/// The shop's window on a folder of records: listed, searched, sorted, grouped, watched, and looked at in both looks.
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSettings>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <gmock/gmock.h>
#include <session/record_session.h>
#include <records/shop_delegate.h>
#include <records/shop_window.h>
#include <store/file/path_text.h>
#include <window/preferences.h>

#include "../find.h"
#include "many_records.h"
#include "../pictures.h"

using namespace caprail;
using testing::HasSubstr;

namespace {

class Shop : public testing::Test {
protected:
    void SetUp() override {
        useSettingsIn(m_settings.path());
        qputenv("XDG_CACHE_HOME", m_settings.path().toUtf8());
    }
    std::unique_ptr<ShopWindow> shown(const std::string& path) const {
        auto window = std::make_unique<ShopWindow>();
        window->setAttribute(Qt::WA_DeleteOnClose, false);
        window->resize(1280, 800);
        window->show();
        QSignalSpy spy(window.get(), &ShopWindow::scanned);
        window->showFolder(QString::fromStdString(path));
        EXPECT_TRUE(spy.wait(20'000));
        QApplication::processEvents();
        return window;
    }
    static void type(ShopWindow& window, const QString& words) {
        auto* field = searchField(window);
        field->setText(words);
        QApplication::processEvents();
    }
    static QLineEdit* searchField(ShopWindow& window) {
        for (auto* field : window.findChildren<QLineEdit*>()) {
            if (field->accessibleName() == QLatin1String("Search")) {
                return field;
            }
        }
        return nullptr;
    }
    static QComboBox* box(ShopWindow& window, const char* name) {
        for (auto* one : window.findChildren<QComboBox*>()) {
            if (one->accessibleName() == QLatin1String(name)) {
                return one;
            }
        }
        return nullptr;
    }
    static QString cell(ShopWindow& window, int row, int column) {
        return window.model().index(row, column).data().toString();
    }
    shoptest::Folder folder;
    QTemporaryDir m_settings;
};

} // namespace

TEST_F(Shop, lists_finds_filters_sorts_and_groups_two_hundred_records) {
    shoptest::shopOf(folder.path(), qEnvironmentVariableIsSet("CAPRAIL_PICTURES") ? 200 : 60);
    const int count = qEnvironmentVariableIsSet("CAPRAIL_PICTURES") ? 203 : 63;
    const auto window = shown(folder.path());
    ShopModel& model = window->model();
    ASSERT_EQ(model.rowCount(), count);
    EXPECT_EQ(model.unreadable(), 2U);
    EXPECT_THAT(cell(*window, 0, ShopModel::lastEntry).toStdString(), HasSubstr("(future)"))
        << "the newest comes first, and a clock that was ahead is told";
    EXPECT_THAT(cell(*window, 0, ShopModel::file).toStdString(), HasSubstr("two↵lines"));

    type(*window, "burr vale");
    ASSERT_GT(model.rowCount(), 0);
    for (int row = 0; row < model.rowCount(); ++row) {
        EXPECT_EQ(cell(*window, row, ShopModel::customer), "Orrin Vale");
    }
    type(*window, "no such words");
    EXPECT_EQ(model.rowCount(), 0);
    type(*window, "↵");
    EXPECT_EQ(model.rowCount(), 1) << "signs that are no words are looked for in the lines";
    type(*window, "");
    EXPECT_EQ(model.rowCount(), count);

    box(*window, "State")->setCurrentIndex(static_cast<int>(ListFilter::State::signedOff));
    ASSERT_GT(model.rowCount(), 0);
    EXPECT_LT(model.rowCount(), count);
    for (int row = 0; row < model.rowCount(); ++row) {
        EXPECT_EQ(model.at(model.index(row, 0))->summary.state, JobState::signedOff);
    }
    box(*window, "State")->setCurrentIndex(static_cast<int>(ListFilter::State::unreadable));
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_THAT(model.index(0, 0).data(Qt::AccessibleTextRole).toString().toStdString(), HasSubstr(".caprail — "));
    box(*window, "State")->setCurrentIndex(0);
    box(*window, "Person")->setCurrentText("Jon Berg");
    for (int row = 0; row < model.rowCount(); ++row) {
        EXPECT_EQ(model.at(model.index(row, 0))->summary.people, "Jon Berg");
    }
    box(*window, "Person")->setCurrentIndex(0);

    child<QTableView>(*window, "records")->sortByColumn(ShopModel::customer, Qt::AscendingOrder);
    EXPECT_THAT(cell(*window, 4, ShopModel::customer).toStdString(), HasSubstr("Ada"));
    box(*window, "Group")->setCurrentIndex(1);
    EXPECT_EQ(model.rowCount(), count + 10) << "nine customers and the files that are no records";
    EXPECT_EQ(model.at(model.index(0, 0)), nullptr);
    EXPECT_THAT(cell(*window, 0, 0).toStdString(), HasSubstr("Ada Okoro  ("));
}

TEST_F(Shop, opens_a_record_by_keyboard_alone_and_leaves_the_folder_as_it_was) {
    shoptest::write(folder / "a.caprail", shoptest::shortLedger("Orrin Vale", "V8"));
    shoptest::write(folder / "b.caprail", shoptest::shortLedger("Ines Roth", "six"));
    const auto before = shoptest::traceOf(folder.path());
    const auto window = shown(folder.path());
    QSignalSpy spy(window.get(), &ShopWindow::openRequested);
    QWidget* field = searchField(*window);
    QTest::keyClicks(field, "roth");
    QTest::keyClick(field, Qt::Key_Return);
    QTest::keyClick(child<QTableView>(*window, "records"), Qt::Key_Return);
    ASSERT_EQ(spy.size(), 1);
    EXPECT_EQ(spy.at(0).at(0).toString().toStdString(), folder / "b.caprail");
    EXPECT_EQ(shoptest::traceOf(folder.path()), before);
}

TEST_F(Shop, home_and_end_go_to_the_first_and_the_last_record) {
    for (const char* name : {"a", "b", "c"}) {
        shoptest::write(folder / (std::string(name) + ".caprail"), shoptest::shortLedger(name, "V8"));
    }
    const auto window = shown(folder.path());
    auto* table = child<QTableView>(*window, "records");
    table->selectRow(1);
    QTest::keyClick(table, Qt::Key_End);
    EXPECT_EQ(table->currentIndex().row(), 2);
    QTest::keyClick(table, Qt::Key_Home);
    EXPECT_EQ(table->currentIndex().row(), 0);
}

TEST_F(Shop, lists_and_opens_a_record_whose_name_is_no_text) {
    shoptest::write(folder / "plain", shoptest::shortLedger("Orrin Vale", "V8"));
    std::filesystem::rename(folder / "plain", folder / "bad \xFF.caprail");
    const auto window = shown(folder.path());
    EXPECT_EQ(cell(*window, 0, ShopModel::customer), "Orrin Vale");
    EXPECT_THAT(cell(*window, 0, ShopModel::file).toStdString(), HasSubstr("bad \xEF\xBF\xBD"));
    QSignalSpy spy(window.get(), &ShopWindow::openRequested);
    child<QTableView>(*window, "records")->selectRow(0);
    QTest::keyClick(child<QTableView>(*window, "records"), Qt::Key_Return);
    ASSERT_EQ(spy.size(), 1);
    EXPECT_EQ(pathBytes(spy.at(0).at(0).toString()), folder / "bad \xFF.caprail");
    const auto record = RecordSession::read(spy.at(0).at(0).toString());
    ASSERT_TRUE(record) << record.error().sentence;
    EXPECT_TRUE(record->file.isReadOnly());
}

TEST_F(Shop, notices_new_changed_and_removed_records) {
    shoptest::write(folder / "a.caprail", shoptest::shortLedger("Orrin Vale", "V8"));
    const auto window = shown(folder.path());
    const auto until = [&](auto condition) { return QTest::qWaitFor(condition, 10'000); };
    shoptest::write(folder / "b.caprail", shoptest::shortLedger("Ines Roth", "six"));
    EXPECT_TRUE(until([&] { return window->model().rowCount() == 2; }));
    {
        auto file = RecordFile::open(folder / "a.caprail", OpenMode::readWrite);
        ASSERT_TRUE(file->append({shoptest::morning.milliseconds + 90'000}, "Petra Nowak", NoteAdded{"", "x"}));
    }
    EXPECT_TRUE(until([&] { return cell(*window, 0, ShopModel::who) == "Petra Nowak"; }));
    std::filesystem::remove(folder / "b.caprail");
    EXPECT_TRUE(until([&] { return window->model().rowCount() == 1; }));
}

TEST_F(Shop, keeps_the_list_of_a_share_that_vanished_and_says_since_when) {
    shoptest::write(folder / "share/a.caprail", shoptest::shortLedger("Orrin Vale", "V8"));
    const auto window = shown(folder / "share");
    std::filesystem::rename(folder / "share", folder / "away");
    QSignalSpy spy(window.get(), &ShopWindow::scanned);
    window->refresh();
    ASSERT_TRUE(spy.wait(10'000));
    const auto says = [&](const char* words) {
        for (const auto* label : window->findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(QLatin1String(words))) {
                return true;
            }
        }
        return false;
    };
    EXPECT_TRUE(says("Not reachable since"));
    EXPECT_EQ(window->model().rowCount(), 1);
    picture(*window, "shop-vanished");
    // At the next start the folder is still away, and still listed.
    const auto next = shown(folder / "share");
    EXPECT_EQ(next->model().rowCount(), 1);
    std::filesystem::rename(folder / "away", folder / "share");
    window->refresh();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !says("Not reachable"); }, 10'000));
}

TEST_F(Shop, names_every_control_and_is_looked_at) {
    shoptest::shopOf(folder.path(), qEnvironmentVariableIsSet("CAPRAIL_PICTURES") ? 200 : 12);
    for (const LookChoice look : {LookChoice::light, LookChoice::dark}) {
        applyLook(look);
        const QString name = look == LookChoice::dark ? "dark" : "light";
        const auto window = shown(folder.path());
        child<QTableView>(*window, "records")->selectRow(3);
        picture(*window, "shop-list-" + name);
        box(*window, "Group")->setCurrentIndex(2);
        QApplication::processEvents();
        picture(*window, "shop-groups-" + name);
        for (QWidget* widget : window->findChildren<QWidget*>()) {
            const bool isControl = qobject_cast<QComboBox*>(widget) != nullptr ||
                                   qobject_cast<QTableView*>(widget) != nullptr ||
                                   (qobject_cast<QLineEdit*>(widget) != nullptr && widget->parentWidget() != nullptr);
            if (isControl && widget->isVisible()) {
                EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->metaObject()->className();
            }
        }
        EXPECT_LE(window->minimumSizeHint().width(), 1280);
    }
    applyLook(LookChoice::light);
}

TEST_F(Shop, works_without_a_cache_that_can_be_written_and_says_so) {
    shoptest::write(folder / "shop/a.caprail", shoptest::shortLedger("Orrin Vale", "V8", "burr on the rail"));
    std::ofstream(folder / "no-folder").flush();
    qputenv("XDG_CACHE_HOME", QByteArray::fromStdString(folder / "no-folder"));
    const auto window = shown(folder / "shop");
    EXPECT_EQ(window->model().rowCount(), 1);
    type(*window, "burr");
    EXPECT_EQ(window->model().rowCount(), 1);
    bool says = false;
    for (const auto* label : window->findChildren<QLabel*>()) {
        says = says || label->text().contains(QLatin1String("cannot be kept"));
    }
    EXPECT_TRUE(says);
}
