// SPDX-License-Identifier: GPL-3.0-or-later
/// What was changed and why, whose figures the values are, parts and zero checks, as a person meets them in the window.
#include "../pictures.h"
#include "panel_test.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QTabWidget>
#include <QTableView>
#include <assessment/unconfirmed.h>
#include <gmock/gmock.h>
#include <stations/closing/station.h>
#include <stations/common/entry_form.h>
#include <stations/engine/parts.h>
#include <stations/engine/people.h>
#include <stations/engine/station.h>
#include <stations/engine/values.h>
#include <stations/history/changes.h>
#include <stations/history/station.h>
#include <window/place_panel.h>

namespace caprail {
namespace {

using EngineChanges = PanelTest<EngineStation>;
using HistoryOfChanges = PanelTest<HistoryStation>;

void retype(QLineEdit* edit, const char* text) {
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, QString::fromUtf8(text));
}

QString textOf(const QObject& parent, const char* name) {
    return child<QLabel>(parent, name)->text();
}

TEST_F(HistoryOfChanges, are_listed_with_person_sort_and_reason) {
    panel.select("changes");
    EXPECT_EQ(lines(child<QTableView>(panel, "changes")), 0);
    EXPECT_EQ(textOf(panel, "changesLine"), "Nothing was changed after something had been judged by it.");
    bench.survey();
    BandSet wide = drafts::band(bands::residual, -5, 5);
    wide.why = "leaves are coarse";
    bench.make(wide);
    panel.refresh();
    ASSERT_EQ(lines(child<QTableView>(panel, "changes")), 1);
    EXPECT_EQ(cell(child<QTableView>(panel, "changes"), 0, 2), "Mira");
    EXPECT_EQ(cell(child<QTableView>(panel, "changes"), 0, 3), "limits or rules");
    EXPECT_TRUE(cell(child<QTableView>(panel, "changes"), 0, 4).contains("leaves are coarse"));
    EXPECT_TRUE(textOf(panel, "changesLine").contains("limits or rules: 1"));
    EXPECT_TRUE(textOf(panel, "work").contains("1 sitting"));
}

TEST_F(EngineChanges, a_reason_is_asked_for_once_and_stored_with_the_change) {
    bench.survey();
    int asked = 0;
    bench.session->setReasonAsker([&](qint64 judged) -> std::optional<QString> {
        ++asked;
        EXPECT_GT(judged, 0);
        return QStringLiteral(" the customer's wish ");
    });
    bench.band(bands::residual, -5, 5);
    EXPECT_EQ(asked, 1);
    EXPECT_EQ(*bench.lastAs<BandSet>().why, "the customer's wish");
    bench.make(NoteAdded{"", "nothing is asked here"});
    EXPECT_EQ(asked, 1);
    bench.session->setReasonAsker([](qint64) { return std::optional<QString>(); });
    const auto before = entries();
    EXPECT_FALSE(bench.session->append(drafts::band(bands::residual, -9, 9))) << "cancelled";
    EXPECT_EQ(entries(), before);
}

TEST_F(EngineChanges, values_that_nobody_confirmed_are_walked_through_with_one_enter_each) {
    panel.select("values");
    auto* form = child<EntryForm>(panel, "confirmForm");
    const auto open = countUnconfirmed(valuesOf(facts()));
    ASSERT_GT(open, 1U);
    EXPECT_TRUE(textOf(panel, "unconfirmed").contains("confirmed by nobody"));
    retype(form->edit("source"), "the shop's sheet 4");
    QTest::keyClick(form->edit("source"), Qt::Key_Return);
    EXPECT_EQ(countUnconfirmed(valuesOf(facts())), open - 1);
    const std::string first = bench.lastAs<ValueConfirmed>().value;
    EXPECT_TRUE(form->edit("source")->text().isEmpty()) << "the next one waits";
    retype(form->edit("source"), "common practice");
    QTest::keyClick(form->edit("source"), Qt::Key_Return);
    EXPECT_EQ(countUnconfirmed(valuesOf(facts())), open - 1) << "that is nobody's";
    retype(form->edit("source"), "the shop's sheet 4");
    QTest::keyClick(form->edit("source"), Qt::Key_Return);
    EXPECT_NE(bench.lastAs<ValueConfirmed>().value, first);
    EXPECT_EQ(countUnconfirmed(valuesOf(facts())), open - 2);
}

TEST_F(EngineChanges, a_part_is_entered_and_stands_beside_the_place_that_it_is_fitted_at) {
    panel.select("parts");
    auto* form = child<EntryForm>(panel, "partForm");
    form->type("sort", "main shells");
    form->type("maker", "Norwood");
    form->type("lot", "7731");
    form->type("is_new", "yes");
    form->save();
    EXPECT_TRUE(form->problem().isEmpty()) << form->problem().toStdString();
    ASSERT_EQ(facts().parts.size(), 1U);
    EXPECT_EQ(facts().parts.front().what.lot, "7731");
    EXPECT_EQ(cell(child<QTableView>(panel, "parts"), 0), "main shells");
    PlacePanel place(*bench.session);
    place.setPlace("main-2");
    ASSERT_EQ(lines(child<QListView>(place, "here")), 1);
    EXPECT_TRUE(cell(child<QListView>(place, "here"), 0).contains("lot 7731"));
}

TEST_F(EngineChanges, an_instrument_that_measured_untried_is_named_quietly_until_its_zero_check) {
    bench.shim("S1", 10, 10.1);
    PlacePanel place(*bench.session);
    QObject::connect(bench.session.get(), &RecordSession::changed, &place, [&] { place.refresh(); });
    place.setVisible(true);
    EXPECT_TRUE(textOf(place, "untried").contains("MIC-1"));
    EXPECT_FALSE(child<QLabel>(place, "untried")->isHidden());
    panel.select("zero checks");
    auto* form = child<EntryForm>(panel, "zeroForm");
    form->type("instrument", "MIC-1");
    form->type("standard", "closed anvils");
    form->type("nominal", "0");
    form->type("reading", "0.0001");
    form->save();
    EXPECT_TRUE(form->problem().isEmpty()) << form->problem().toStdString();
    EXPECT_EQ(facts().zeroChecks.at("MIC-1").size(), 1U);
    EXPECT_TRUE(child<QLabel>(place, "untried")->isHidden());
}

TEST_F(EngineChanges, closing_lists_what_nobody_confirmed_and_is_not_held_by_it) {
    ClosingStation closing(*bench.session);
    closing.show();
    EXPECT_FALSE(child<QLabel>(closing, "unconfirmed")->isHidden());
    EXPECT_TRUE(textOf(closing, "unconfirmed").contains("confirmed by nobody"));
    const auto& holding = bench.session->assessment().gate(GateKind::closing).holding;
    EXPECT_FALSE(holding.empty()) << "closing must be held by something, or this shows nothing";
    for (const std::size_t i : holding) {
        EXPECT_EQ(bench.session->assessment().checks[i].code.find("confirm"), std::string::npos);
    }
    for (const ValueStanding& value : valuesOf(facts())) {
        if (!value.isConfirmed) {
            bench.make(ValueConfirmed{value.code, "the shop's sheet 4"});
        }
    }
    closing.refresh();
    EXPECT_TRUE(child<QLabel>(closing, "unconfirmed")->isHidden());
}

/// Not checked but looked at, with CAPRAIL_PICTURES set; here: that it fits the window of 1280 × 800.
TEST_F(EngineChanges, pages_of_values_parts_and_zero_checks_fit_the_window) {
    PartEntered part;
    part.maker = "Norwood";
    part.number = "7312 P";
    for (const PartSort sort : {PartSort::block, PartSort::crank, PartSort::mainShells, PartSort::rodBolts}) {
        part.sort = sort;
        part.lot = "77" + std::to_string(static_cast<int>(sort));
        bench.make(part);
    }
    for (const char* page : {"values", "parts", "zero checks", "engine"}) {
        panel.select(QString::fromUtf8(page));
        QApplication::processEvents();
        EXPECT_LE(panel.minimumSizeHint().height(), 680) << page;
        EXPECT_LE(panel.minimumSizeHint().width(), 1060) << page;
        picture(panel, QStringLiteral("engine-") + QString::fromUtf8(page).replace(QLatin1Char(' '), QLatin1Char('-')));
    }
}

TEST_F(HistoryOfChanges, fit_the_window) {
    bench.survey();
    bench.band(bands::residual, -5, 5);
    panel.select("changes");
    QApplication::processEvents();
    EXPECT_LE(panel.minimumSizeHint().width(), 1060);
    picture(panel, QStringLiteral("history-changes"));
}

} // namespace
} // namespace caprail
