// SPDX-License-Identifier: GPL-3.0-or-later
/// The whole window on a record: opened, worked in by keyboard, looked at in both looks.
#include "../every_view.h"
#include "../find.h"
#include "../pictures.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QDropEvent>
#include <QImage>
#include <QMenu>
#include <QMimeData>
#include <QPushButton>
#include <QScrollBar>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <planview/plan_view.h>
#include <resources/templates.h>
#include <stations/common/entry_field.h>
#include <stations/common/station.h>
#include <stations/girdle/board.h>
#include <stations/girdle/station.h>
#include <window/bench_view.h>
#include <window/main_window.h>
#include <window/next_bar.h>
#include <window/panel_scroller.h>
#include <window/station_list.h>

using namespace caprail;

namespace {

class Window : public testing::Test {
protected:
    void SetUp() override { useSettingsIn(m_folder.path()); }
    /// A writable copy of a sample record.
    [[nodiscard]] QString copyOf(const QString& sample) const {
        const QString copy = m_folder.filePath(sample + QStringLiteral(".caprail"));
        EXPECT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/") + sample + QStringLiteral(".caprail"), copy));
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
        return copy;
    }
    static MainWindow* shown() {
        auto* window = new MainWindow;
        window->setAttribute(Qt::WA_DeleteOnClose, false);
        window->resize(1280, 800);
        window->show();
        return window;
    }
    QTemporaryDir m_folder;
};

constexpr Station allStations[] = {Station::engine,   Station::bearings, Station::fasteners, Station::girdle,
                                   Station::trialFit, Station::pickup,   Station::closing,   Station::history};

} // namespace

TEST_F(Window, every_template_makes_a_record_that_asks_for_the_first_thing) {
    ASSERT_GE(templateTitles().size(), 4);
    for (const QString& title : templateTitles()) {
        const QString path = m_folder.filePath(title + ".caprail");
        auto session =
            RecordSession::create(path, "Mira Solheim", {"", "Orrin Vale", "V8", "", ""}, templateLines(title));
        ASSERT_TRUE(session) << title.toStdString() << ": " << session.error().sentence;
        EXPECT_TRUE((*session)->facts().layout);
        EXPECT_FALSE((*session)->assessment().next.sentence.empty());
        EXPECT_FALSE((*session)->assessment().gate(GateKind::closing).isOpen);
    }
}

TEST_F(Window, a_record_begun_without_a_template_asks_for_the_layout_and_takes_the_starting_values_as_they_are) {
    const QString path = m_folder.filePath("bare.caprail");
    ASSERT_TRUE(RecordSession::create(path, "Mira Solheim", {"", "Orrin Vale", "V8", "", ""}, {}));
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(path));
    QApplication::processEvents();
    QPushButton* store = nullptr;
    QStringList gates;
    for (QPushButton* button : window->findChildren<QPushButton*>()) {
        const QString text = button->text().remove(QLatin1Char('&'));
        store = text == QLatin1String("Store layout") ? button : store;
        gates +=
            button->menu() != nullptr && text.contains(QStringLiteral("locked")) ? QStringList{text} : QStringList();
    }
    EXPECT_EQ(gates, (QStringList{"Trial fit: locked", "Closing: locked"})) << "nothing at a place holds them yet";
    ASSERT_TRUE(store != nullptr && store->isVisible() && store->isEnabled());
    store->click();
    EXPECT_TRUE(window->session()->facts().layout);
    EXPECT_FALSE(store->isEnabled()) << "nothing more to store";
}

TEST_F(Window, a_refused_beginning_leaves_no_file) {
    const QString path = m_folder.filePath("none.caprail");
    EXPECT_FALSE(RecordSession::create(path, "", {"", "", "V8", "", ""}, {}));
    EXPECT_FALSE(RecordSession::create(path, "Mira", {"", "", "", "", ""}, {}));
    EXPECT_FALSE(RecordSession::create(path, "Mira", {"", "", "V8", "", ""}, "{\"kind\":\"nonsense\"}"));
    EXPECT_FALSE(QFile::exists(path));
}

TEST_F(Window, every_station_of_every_sample_is_drawn_in_both_looks_without_scroll_bars) {
    for (const LookChoice look : {LookChoice::light, LookChoice::dark}) {
        applyLook(look);
        for (const char* sample : {"mid-survey", "moved-in-verify-round", "closed"}) {
            QFile::remove(m_folder.filePath(QString::fromUtf8(sample) + ".caprail"));
            const std::unique_ptr<MainWindow> window(shown());
            ASSERT_TRUE(window->openFile(copyOf(QString::fromUtf8(sample))));
            for (const Station station : allStations) {
                window->showDestination({station, {}});
                QApplication::processEvents();
                ASSERT_TRUE(window->panel(station)->isVisible());
                EXPECT_EQ(window->size(), QSize(1280, 800)) << static_cast<int>(station);
                const auto* room = window->findChild<PanelScroller*>();
                EXPECT_FALSE(room->horizontalScrollBar()->isVisible()) << static_cast<int>(station);
                EXPECT_FALSE(room->verticalScrollBar()->isVisible()) << static_cast<int>(station);
                picture(*window, QStringLiteral("window-%1-%2-%3")
                                     .arg(QString::fromUtf8(sample))
                                     .arg(static_cast<int>(station) + 1)
                                     .arg(look == LookChoice::dark ? "dark" : "light"));
            }
        }
    }
    applyLook(LookChoice::light);
}

TEST_F(Window, a_small_screen_holds_the_window_and_the_field_that_is_typed_into_is_in_sight) {
    // What a laptop of 1920 × 1080 has at 200 %, less the desktop's own bars.
    constexpr QSize screen(960, 500);
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(copyOf("mid-survey")));
    for (const Station station : allStations) {
        window->showDestination({station, {}});
        window->resize(screen);
        QApplication::processEvents();
        EXPECT_EQ(window->size(), screen) << static_cast<int>(station);
        picture(*window, QStringLiteral("small-%1").arg(static_cast<int>(station)));
        const EntryField* field = window->panel(station)->entryField();
        if (field != nullptr && field->isVisible()) {
            field->lineEdit()->setFocus();
            QApplication::processEvents();
            EXPECT_EQ(field->lineEdit()->visibleRegion().boundingRect(), field->lineEdit()->rect())
                << static_cast<int>(station);
        }
    }
}

TEST_F(Window, a_record_opens_without_a_complaint_of_the_toolkit) {
    static QStringList complaints;
    complaints.clear();
    const auto before = qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString& message) {
        if (message.startsWith(QLatin1String("Q"))) { // "QWidget::setMinimumSize: …"
            complaints << message;
        }
    });
    {
        const std::unique_ptr<MainWindow> window(shown());
        window->openFile(copyOf(QStringLiteral("mid-survey")));
        for (const Station station : allStations) {
            window->showDestination({station, {}});
            QApplication::processEvents();
        }
    }
    qInstallMessageHandler(before);
    EXPECT_TRUE(complaints.isEmpty()) << complaints.join(QLatin1Char('\n')).toStdString();
}

TEST_F(Window, the_next_thing_is_done_by_keyboard_alone_and_is_on_disk) {
    const QString path = copyOf("mid-survey");
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(path));
    const auto before = window->session()->ledger().size();
    const auto next = parsePosition(window->session()->assessment().next.destination.subject);
    ASSERT_TRUE(next) << "another pass over the gaps is next";
    const Length read = window->session()->facts().gaps.at(*next).front().what.value();
    const std::string typed = formatBare(read, {});
    QTest::keyClick(window.get(), Qt::Key_Return, Qt::ControlModifier); // go to the next thing
    QApplication::processEvents();
    // The keyboard is in the field already: a gauge that types value and Enter needs no more.
    QWidget* field = window->focusWidget();
    ASSERT_NE(field, nullptr);
    QTest::keyClicks(field, QString::fromStdString(typed));
    QTest::keyClick(field, Qt::Key_Return);
    QApplication::processEvents();
    ASSERT_EQ(window->session()->ledger().size(), before + 1);
    const auto& reading = window->session()->ledger().entries().back().body.get<GapReading>();
    EXPECT_EQ(reading.position, *next);
    EXPECT_EQ(reading.gap.typed, typed);
    const auto other = RecordFile::open(path.toStdString(), OpenMode::readOnly);
    ASSERT_TRUE(other);
    EXPECT_EQ(other->ledger().size(), before + 1);
}

TEST_F(Window, an_ambiguous_value_stays_in_the_field_and_is_not_stored) {
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(copyOf("mid-survey")));
    const auto before = window->session()->ledger().size();
    window->showDestination(Destination(window->session()->assessment().next.destination));
    QApplication::processEvents();
    auto* field = qobject_cast<QLineEdit*>(window->focusWidget());
    ASSERT_NE(field, nullptr);
    QTest::keyClicks(field, "9");
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(window->session()->ledger().size(), before);
    EXPECT_EQ(field->text(), "9") << "nothing typed is lost";
}

TEST_F(Window, units_switch_everywhere_at_once) {
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(copyOf("closed")));
    EXPECT_NE(window->session()->assessment().find("gap:1L")->sentence.find(" in,"), std::string::npos);
    window->switchUnits();
    EXPECT_NE(window->session()->assessment().find("gap:1L")->sentence.find(" mm,"), std::string::npos);
    window->switchUnits();
}

TEST_F(Window, gates_say_what_holds_them_and_each_reason_is_a_jump) {
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(copyOf("moved-in-verify-round")));
    QApplication::processEvents();
    for (const Check& check : window->session()->assessment().checks) {
        if (!check.isGood()) {
            EXPECT_FALSE(check.remedy.empty()) << check.code;
            window->session()->goTo(Destination(check.destination));
            EXPECT_TRUE(window->panel(check.destination.station)->isVisible()) << check.code;
        }
    }
}

TEST_F(Window, the_bench_view_comes_and_goes_with_one_key) {
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(copyOf("mid-survey")));
    window->showDestination({Station::girdle, "4R"});
    QApplication::processEvents();
    QTest::keyClick(window->focusWidget() != nullptr ? window->focusWidget() : window.get(), Qt::Key_F9);
    QApplication::processEvents();
    ASSERT_TRUE(child<BenchView>(*window)->isActive());
    EXPECT_TRUE(child<BenchView>(*window)->isVisible());
    EXPECT_EQ(child<QLabel>(child<BenchView>(*window), "place")->text(), "Cap 4 right");
    const EntryField* field = child<BenchView>(*window)->field();
    EXPECT_TRUE(QTest::qWaitFor([&] { return field->rect().contains(field->lineEdit()->geometry()); }, 2000))
        << "the whole field is on the screen";
    picture(*window, "window-bench-view");
    QTest::keyClick(window->focusWidget(), Qt::Key_Escape);
    QApplication::processEvents();
    EXPECT_FALSE(child<BenchView>(*window)->isActive());
    EXPECT_FALSE(child<BenchView>(*window)->isVisible());
}

TEST_F(Window, a_refusal_moves_nothing_and_goes_when_something_else_succeeds_or_another_place_is_looked_at) {
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(copyOf("mid-survey")));
    window->showDestination({Station::girdle, "4L"});
    QApplication::processEvents();
    const StationPanel* panel = window->panel(Station::girdle);
    const auto top = [&] { return panel->mapTo(window.get(), QPoint()).y(); };
    const int before = top();
    const auto refusal = [&]() -> QString {
        for (const QLabel* label : child<NextBar>(*window)->findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().startsWith(QStringLiteral("✕"))) {
                return label->text();
            }
        }
        return {};
    };
    RecordSession& session = *window->session();
    EXPECT_FALSE(session.append(NoteAdded{"", ""}));
    QApplication::processEvents();
    EXPECT_FALSE(refusal().isEmpty());
    EXPECT_EQ(top(), before) << "what lies under the mouse stays there";
    ASSERT_TRUE(session.append(NoteAdded{"", "something else"}));
    QApplication::processEvents();
    EXPECT_EQ(refusal().toStdString(), "");
    EXPECT_FALSE(session.append(NoteAdded{"", ""}));
    window->showDestination({Station::girdle, "3R"});
    QApplication::processEvents();
    EXPECT_EQ(refusal().toStdString(), "") << "it was about another place";
    EXPECT_EQ(top(), before);
}

TEST_F(Window, a_photo_dropped_on_a_position_goes_there_and_elsewhere_to_the_selected_place) {
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(copyOf("mid-survey")));
    window->showDestination({Station::girdle, "4L"});
    QApplication::processEvents();
    QImage image(320, 200, QImage::Format_RGB32);
    image.fill(Qt::darkCyan);
    const auto drop = [&](QPoint at) {
        QMimeData data;
        data.setImageData(image);
        image.fill(image.pixelColor(0, 0).darker(110)); // another picture each time
        QDragEnterEvent enter(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(window.get(), &enter);
        EXPECT_TRUE(enter.isAccepted());
        QDropEvent event(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(window.get(), &event);
    };
    const auto* plan = child<PlanView>(window->panel(Station::girdle), "plan");
    QPoint there; // a place is no rectangle: its stud and its callout
    for (int x = 0; x < plan->width() && there.isNull(); x += 4) {
        for (int y = 0; y < plan->height() && there.isNull(); y += 4) {
            there = plan->placeAt(QPointF(x, y)) == QLatin1String("2R") ? QPoint(x, y) : QPoint();
        }
    }
    ASSERT_FALSE(there.isNull());
    drop(plan->mapTo(window.get(), there));
    ASSERT_EQ(window->session()->facts().attachments.size(), 1U);
    EXPECT_EQ(window->session()->facts().attachments.back().what.place, "2R");
    drop({5, 5}); // on the bar above
    ASSERT_EQ(window->session()->facts().attachments.size(), 2U);
    EXPECT_EQ(window->session()->facts().attachments.back().what.place, "4L");
}

TEST_F(Window, what_is_dropped_and_is_neither_record_nor_photo_gets_one_sentence_in_sight) {
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(copyOf("mid-survey")));
    window->resize(960, 540);
    QApplication::processEvents();
    auto* message = child<QLabel>(window.get(), "placeMessage");
    ASSERT_FALSE(message->isVisible());
    const auto entries = window->session()->ledger().size();
    const QString backup = m_folder.filePath("smith.caprail-backup");
    ASSERT_TRUE(QFile::copy(QStringLiteral(SAMPLE_BUILDS "/closed.caprail"), backup));
    const QString photo = m_folder.filePath("no-suffix");
    QImage image(320, 200, QImage::Format_RGB32);
    image.fill(Qt::darkCyan);
    ASSERT_TRUE(image.save(photo, "PNG"));
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(backup), QUrl::fromLocalFile(photo)});
    QDragEnterEvent enter(QPoint(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent event(QPoint(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &event);
    EXPECT_TRUE(message->isVisible()) << "the panel that says it is out of sight in a small window";
    EXPECT_THAT(message->text().toStdString(), testing::HasSubstr("smith.caprail-backup"));
    EXPECT_THAT(message->text().toStdString(), testing::HasSubstr("neither a build record"));
    EXPECT_EQ(window->session()->ledger().size(), entries + 1) << "the photo beside it, told by its bytes, is kept";
}

TEST_F(Window, a_look_switched_while_it_is_open_leaves_no_ink_of_the_other) {
    applyLook(LookChoice::light);
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(copyOf("moved-in-verify-round")));
    for (const Station station : allStations) {
        applyLook(LookChoice::light);
        window->showDestination({station, {}});
        QApplication::processEvents();
        applyLook(LookChoice::dark);
        QApplication::processEvents();
        const Look old = lightLook();
        for (const QWidget* widget : window->findChildren<QWidget*>()) {
            if (!widget->isVisible()) {
                continue;
            }
            for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::ButtonText, QPalette::Text}) {
                const QColor ink = widget->palette().color(role);
                for (const QColor& left : {old.ink, old.quiet, old.accent, old.good, old.out, old.close, old.stale}) {
                    EXPECT_NE(ink.name().toStdString(), left.name().toStdString())
                        << static_cast<int>(station) << " " << widget->metaObject()->className() << " "
                        << widget->accessibleName().toStdString();
                }
            }
        }
    }
    applyLook(LookChoice::light);
}

TEST_F(Window, of_960_by_540_shows_every_view_without_scrolling_sideways) {
    applyLook(LookChoice::light);
    const std::unique_ptr<MainWindow> window(shown());
    window->resize(960, 540);
    ASSERT_TRUE(window->openFile(copyOf("mid-survey")));
    EXPECT_TRUE(child<StationList>(*window)->isCompact());
    int views = 0;
    inEveryView(*window, [&](const std::string& view) {
        const auto* scroller = child<PanelScroller>(*window);
        EXPECT_EQ(scroller->horizontalScrollBar()->maximum(), 0) << view;
        picture(*window, QStringLiteral("window-small-") + QString::fromStdString(view));
        ++views;
    });
    EXPECT_GT(views, 20);
    window->resize(1280, 800);
    QApplication::processEvents();
    EXPECT_FALSE(child<StationList>(*window)->isCompact());
}

TEST_F(Window, recent_records_are_told_with_engine_and_customer) {
    const std::unique_ptr<MainWindow> window(shown());
    const QString file = copyOf("closed");
    ASSERT_TRUE(window->openFile(file));
    const auto& engine = window->session()->facts().engine->what;
    EXPECT_EQ(whoseRecord(file).toStdString(), engine.engine + " · " + engine.customer);
}

/// A signed-off record is read for what is in the engine: no other shims may be drawn there.
TEST_F(Window, a_closed_record_draws_the_stacks_that_are_in_the_engine_and_offers_no_plan) {
    const std::unique_ptr<MainWindow> window(shown());
    ASSERT_TRUE(window->openFile(copyOf("closed")));
    auto* girdle = qobject_cast<GirdleStation*>(window->panel(Station::girdle));
    ASSERT_NE(girdle, nullptr);
    window->showDestination({Station::girdle, "2L"});
    girdle->setMode(GirdleMode::stacks);
    ASSERT_TRUE(QTest::qWaitFor([&] { return girdle->planRunner().outcome() != nullptr; }, 9000));
    const Facts& facts = window->session()->facts();
    for (const BoardCell& cell : boardCells(*window->session(), girdle->planRunner().outcome())) {
        const auto built = facts.stacks.find(cell.position);
        ASSERT_EQ(cell.isBuilt, built != facts.stacks.end());
        EXPECT_FALSE(cell.plannedResidual) << code(cell.position);
        ASSERT_EQ(cell.leaves.size(), built->second.shims.size());
        for (std::size_t i = 0; i < cell.leaves.size(); ++i) {
            EXPECT_EQ(cell.leaves[i].name.toStdString(), built->second.shims[i]);
        }
    }
    EXPECT_FALSE(child<QPushButton>(*girdle, "takeOverPlan")->isEnabled());
    EXPECT_FALSE(child<QPushButton>(*girdle, "planAllAnew")->isEnabled());
    picture(*window, "window-closed-stacks");
}
