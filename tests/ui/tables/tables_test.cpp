// SPDX-License-Identifier: GPL-3.0-or-later
/// The model of tables and lists: columns described once, rows that carry what they are about.
#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QClipboard>
#include <QHeaderView>
#include <QMimeData>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <gmock/gmock.h>
#include <ledger/qt_text.h>
#include <random>
#include <tables/table.h>
#include <tables/tsv.h>
#include <units/length.h>

namespace caprail {
namespace {

struct Part {
    std::string name;
    std::optional<Length> thickness;
    CheckState state = CheckState::good;
    RowKind kind = RowKind::usual;
    bool isTicked = false;
};

std::vector<TableColumn<Part>> partColumns() {
    return {{.title = "Part",
             .text = [](const Part& part) { return qtText(part.name); },
             .isTicked = [](const Part& part) { return part.isTicked; },
             .tick = [](Part& part, bool isTicked) { part.isTicked = isTicked; }},
            {.title = "Thickness",
             .text =
                 [](const Part& part) {
                     return part.thickness ? QString::number(inThou(*part.thickness)) + " thou" : QString("?");
                 },
             .value = [](const Part& part) { return valueOf(part.thickness); },
             .isFigure = true},
            {.title = "State",
             .text = [](const Part& part) { return stateWord(part.state); },
             .state = [](const Part& part) { return part.state; }}};
}

class PartTable : public Table<Part, std::string> {
public:
    explicit PartTable(QWidget* parent = nullptr) : Table("Parts", &Part::name, partColumns(), parent) {
        setKind([](const Part& part) { return part.kind; });
        resize(400, 200);
    }
    /// The names from the top.
    [[nodiscard]] std::string names() const {
        std::string list;
        for (int line = 0; line < model()->rowCount(); ++line) {
            list += (list.empty() ? "" : " ") + at(line)->name;
        }
        return list;
    }
    [[nodiscard]] QString cell(int line, int column) const { return model()->index(line, column).data().toString(); }
};

std::vector<Part> parts(const std::vector<std::string>& names) {
    std::vector<Part> list;
    for (const std::string& name : names) {
        list.push_back({name, {}});
    }
    return list;
}

TEST(Table, sorts_on_values_and_not_on_the_shown_text) {
    PartTable table;
    table.put({{"S10", thou(100), CheckState::good},
               {"S9", thou(20), CheckState::stale},
               {"s1", thou(3), CheckState::out},
               {"S2", {}, CheckState::notDone}});
    table.sortByColumn(1, Qt::AscendingOrder);
    EXPECT_EQ(table.names(), "s1 S9 S10 S2") << "3, 20, 100 thou; as text, 100 would come first";
    table.sortByColumn(1, Qt::DescendingOrder);
    EXPECT_EQ(table.names(), "S10 S9 s1 S2") << "what is not known comes last both ways";
    table.sortByColumn(0, Qt::AscendingOrder);
    EXPECT_EQ(table.names(), "s1 S2 S9 S10") << "9 before 10";
    table.sortByColumn(2, Qt::AscendingOrder);
    EXPECT_EQ(table.names(), "s1 S9 S2 S10") << "out, stale, not done, good";
    table.sortByColumn(-1, Qt::AscendingOrder);
    EXPECT_EQ(table.names(), "S10 S9 s1 S2") << "as they were given";
}

TEST(Table, keeps_a_sorted_order_and_the_selection_when_rows_come_and_go) {
    PartTable table;
    table.put({{"a", thou(3)}, {"b", thou(1)}, {"c", thou(2)}});
    table.sortByColumn(1, Qt::AscendingOrder);
    ASSERT_TRUE(table.select("c"));
    QSignalSpy selected(&table, &TableView::lineSelected);
    table.put({{"d", thou(0)}, {"a", thou(3)}, {"c", thou(5)}});
    EXPECT_EQ(table.names(), "d a c") << "c is the thickest now";
    EXPECT_EQ(table.selectedKey(), "c");
    EXPECT_EQ(table.selected()->thickness, thou(5)) << "the new one";
    EXPECT_TRUE(selected.isEmpty()) << "nobody selected anything";
}

TEST(Table, selects_nothing_when_the_selected_row_went) {
    PartTable table;
    table.show();
    table.put(parts({"a", "b", "c"}));
    ASSERT_TRUE(table.select("b"));
    QSignalSpy selected(&table, &TableView::lineSelected);
    table.put(parts({"a", "c"}));
    EXPECT_EQ(table.selectedLine(), -1) << "Qt would go on to its neighbour";
    EXPECT_FALSE(table.selectedKey());
    EXPECT_FALSE(table.currentIndex().isValid());
    EXPECT_TRUE(selected.isEmpty());
    EXPECT_FALSE(table.select("b")) << "it is not there";
}

TEST(Table, tells_of_what_is_selected_by_hand_and_what_is_gone_to) {
    PartTable table;
    table.put(parts({"a", "b"}));
    table.show();
    QSignalSpy selected(&table, &TableView::lineSelected), activated(&table, &TableView::lineActivated);
    QTest::keyClick(&table, Qt::Key_Return);
    EXPECT_TRUE(activated.isEmpty()) << "none is selected";
    QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, table.visualRect(table.model()->index(1, 0)).center());
    ASSERT_EQ(selected.size(), 1);
    EXPECT_EQ(selected[0][0].toInt(), 1);
    QTest::keyClick(&table, Qt::Key_Return);
    ASSERT_EQ(activated.size(), 1);
    EXPECT_EQ(table.at(activated[0][0].toInt())->name, "b");
}

TEST(Table, keeps_in_sight_what_was_in_sight) {
    PartTable table;
    std::vector<Part> many;
    for (int i = 100; i < 200; ++i) {
        many.push_back({"P" + std::to_string(i), {}});
    }
    table.put(many);
    table.show();
    table.verticalScrollBar()->setValue(50);
    const std::string top = table.at(table.indexAt({1, 1}).row())->name;
    many.insert(many.begin(), {"P099", {}});
    many.erase(many.begin() + 10);
    many.insert(many.begin() + 5, {"X", {}});
    table.put(many);
    EXPECT_EQ(table.at(table.indexAt({1, 1}).row())->name, top);
    table.verticalScrollBar()->setValue(0);
    many.insert(many.begin(), {"P098", {}});
    table.put(many);
    EXPECT_EQ(table.indexAt({1, 1}).row(), 0) << "at the top, the newest stays in sight";
}

TEST(Table, takes_rows_out_and_puts_them_in_without_beginning_anew) {
    PartTable table;
    const QAbstractItemModelTester tester(table.model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    table.put(parts({"a", "b", "c", "d"}));
    QSignalSpy reset(table.model(), &QAbstractItemModel::modelReset);
    QSignalSpy removed(table.model(), &QAbstractItemModel::rowsRemoved);
    QSignalSpy inserted(table.model(), &QAbstractItemModel::rowsInserted);
    table.put(parts({"a", "x", "y", "d", "z"}));
    EXPECT_EQ(table.names(), "a x y d z");
    EXPECT_TRUE(reset.isEmpty());
    EXPECT_EQ(removed.size(), 1) << "b and c together";
    EXPECT_EQ(inserted.size(), 2) << "x and y together, then z";
    table.put(parts({"other"}));
    EXPECT_EQ(reset.size(), 1) << "none stayed";
}

TEST(Table, follows_each_row_whatever_comes_goes_or_moves) {
    std::mt19937 random(20261128);
    PartTable table;
    const QAbstractItemModelTester tester(table.model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    int followed = 0;
    for (int round = 0; round < 300; ++round) {
        std::vector<Part> rows;
        for (int i = 0; i < 12; ++i) {
            if (random() % 3 != 0) {
                rows.push_back({"P" + std::to_string(i), thou(static_cast<double>(random() % 5))});
            }
        }
        std::ranges::shuffle(rows, random);
        std::map<std::string, QPersistentModelIndex> before;
        for (int line = 0; line < table.model()->rowCount(); ++line) {
            before.emplace(table.at(line)->name, table.model()->index(line, 1));
        }
        if (random() % 4 == 0) {
            table.sortByColumn(static_cast<int>(random() % 4) - 1,
                               random() % 2 == 0 ? Qt::AscendingOrder : Qt::DescendingOrder);
        }
        std::set<std::string> names;
        for (const Part& part : rows) {
            names.insert(part.name);
        }
        const bool isAnew = std::ranges::none_of(before, [&](const auto& one) { return names.contains(one.first); });
        table.put(rows);
        ASSERT_EQ(table.model()->rowCount(), static_cast<int>(rows.size()));
        for (const auto& [name, index] : before) {
            if (isAnew || !names.contains(name)) {
                EXPECT_FALSE(index.isValid()) << name << " went";
            } else {
                ASSERT_TRUE(index.isValid()) << name;
                EXPECT_EQ(table.at(index.row())->name, name);
                ++followed;
            }
        }
    }
    EXPECT_GT(followed, 1000);
}

TEST(Table, shows_rows_whose_keys_are_alike) {
    PartTable table;
    const QAbstractItemModelTester tester(table.model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    table.put(parts({"a", "a", "b"}));
    EXPECT_EQ(table.names(), "a a b");
    table.put(parts({"a", "b", "b"}));
    EXPECT_EQ(table.names(), "a b b");
    table.put(parts({"b", "c"}));
    EXPECT_EQ(table.names(), "b c");
}

TEST(Table, heads_are_set_as_their_cells_and_name_the_unit_of_bare_numbers) {
    Table<Part, std::string> table("Parts", &Part::name,
                                   {{.title = "Read",
                                     .text = [](const Part&) { return QString("0.0060"); },
                                     .unit = [] { return QString("in"); },
                                     .isFigure = true}},
                                   nullptr);
    table.put(parts({"a"}));
    EXPECT_EQ(table.model()->headerData(0, Qt::Horizontal).toString(), "Read (in)");
    EXPECT_EQ(table.model()->headerData(0, Qt::Horizontal, Qt::TextAlignmentRole),
              table.model()->index(0, 0).data(Qt::TextAlignmentRole));
    EXPECT_EQ(table.model()->headerData(0, Qt::Vertical), QVariant());
}

TEST(Table, shows_texts_letter_for_letter) {
    PartTable table;
    table.put(parts({"<b>GOOD</b>", "a\u202Eb"}));
    EXPECT_EQ(table.cell(0, 0), "<b>GOOD</b>");
    EXPECT_EQ(table.cell(1, 0), "a⟨U+202E⟩b");
    EXPECT_EQ(table.at(1)->name, "a\u202Eb") << "what the row is about is not what is shown of it";
    EXPECT_TRUE(isPlainTip(table.model()->index(0, 0).data(Qt::ToolTipRole).toString()));
}

TEST(Table, is_copied_for_a_spreadsheet_cell_by_cell_and_runs_nothing_there) {
    PartTable table;
    table.put({{"=1+1", thou(-2)}, {"two\nlines\tand a tab", {}}});
    QTest::keyClick(&table, Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QGuiApplication::clipboard()->text(), "'=1+1\t-2 thou\tgood\ntwo lines and a tab\t?\tgood\n");
    table.sortByColumn(0, Qt::DescendingOrder);
    copyToClipboard(*table.model());
    const QMimeData* copied = QApplication::clipboard()->mimeData();
    EXPECT_TRUE(copied->text().startsWith("two")) << "in the order in which it is shown";
    EXPECT_THAT(copied->html().toStdString(), testing::HasSubstr("<tr><th>"));
    EXPECT_THAT(copied->html().toStdString(), testing::HasSubstr("<td>'=1+1</td><td>-2 thou</td><td>good</td></tr>"))
        << "for a document, and no formula there either";
    EXPECT_EQ(tsvOf(*table.model(), {1}), "'=1+1\t-2 thou\tgood\n");
}

TEST(Table, inks_a_state_and_says_it_in_a_word) {
    PartTable table;
    table.put({{"a", {}, CheckState::out}});
    EXPECT_EQ(table.model()->index(0, 2).data(Qt::ForegroundRole).value<QColor>(), screenLook().out);
    EXPECT_FALSE(table.model()->index(0, 0).data(Qt::ForegroundRole).isValid());
    EXPECT_EQ(table.cell(0, 2), stateWord(CheckState::out));
}

TEST(Table, a_heading_goes_over_all_columns_and_keeps_its_rows_below_it) {
    PartTable table;
    std::vector<Part> rows = parts({"People", "Zoe", "Adam"});
    rows[0].kind = RowKind::heading;
    rows[2].kind = RowKind::off;
    table.put(rows);
    EXPECT_EQ(table.columnSpan(0, 0), 3);
    EXPECT_EQ(table.columnSpan(1, 0), 1);
    EXPECT_EQ(table.model()->flags(table.model()->index(0, 0)) & Qt::ItemIsSelectable, Qt::NoItemFlags);
    EXPECT_EQ(table.model()->flags(table.model()->index(2, 0)), Qt::NoItemFlags);
    EXPECT_TRUE(table.model()->index(0, 0).data(Qt::FontRole).value<QFont>().bold());
    table.sortByColumn(0, Qt::AscendingOrder);
    EXPECT_EQ(table.names(), "People Zoe Adam") << "sorted, they would leave their heading";
    rows.insert(rows.begin(), {"Kits", {}, CheckState::good, RowKind::heading});
    table.put(rows);
    EXPECT_EQ(table.columnSpan(0, 0), 3);
    EXPECT_EQ(table.columnSpan(1, 0), 3);
    EXPECT_EQ(table.columnSpan(2, 0), 1);
}

TEST(Table, a_box_is_ticked_in_the_row_itself_and_nothing_else_is_typed) {
    PartTable table;
    table.put(parts({"a", "b"}));
    const QModelIndex second = table.model()->index(1, 0);
    EXPECT_EQ(second.data(Qt::CheckStateRole).toInt(), Qt::Unchecked);
    EXPECT_TRUE(table.model()->setData(second, Qt::Checked, Qt::CheckStateRole));
    EXPECT_TRUE(table.rows()[1].isTicked);
    EXPECT_FALSE(table.rows()[0].isTicked);
    EXPECT_FALSE(table.model()->setData(second, "c", Qt::EditRole));
    EXPECT_FALSE(table.model()->setData(table.model()->index(1, 1), Qt::Checked, Qt::CheckStateRole));
}

TEST(Table, without_rows_says_why_to_the_eye_and_to_a_screen_reader) {
    PartTable table;
    table.setEmptyText("Nothing was measured yet.");
    const QImage empty = [&] {
        table.show();
        return table.grab().toImage();
    }();
    EXPECT_EQ(table.accessibleDescription(), "Nothing was measured yet.");
    table.setEmptyText({});
    EXPECT_NE(table.grab().toImage(), empty);
    table.setEmptyText("Nothing was measured yet.");
    table.put(parts({"a"}));
    (void)table.grab();
    EXPECT_EQ(table.accessibleDescription(), QString());
}

TEST(Table, is_read_out_by_its_name_its_cells_and_what_a_column_says_of_itself) {
    PartTable table;
    table.put({{"a", thou(2)}});
    table.show();
    QAccessibleInterface* reader = QAccessible::queryAccessibleInterface(&table);
    ASSERT_NE(reader, nullptr);
    EXPECT_EQ(reader->text(QAccessible::Name), "Parts");
    ASSERT_NE(reader->tableInterface(), nullptr);
    EXPECT_EQ(reader->tableInterface()->cellAt(0, 1)->text(QAccessible::Name), "2 thou");
}

TEST(ListOfRows, is_a_table_of_one_column_whose_rows_have_lines_pictures_and_words_for_a_screen_reader) {
    QPixmap picture(8, 8);
    picture.fill(Qt::red);
    List<Part, std::string> list("Parts", &Part::name,
                                 {{.text = [](const Part& part) { return qtText(part.name) + "\nbelow"; },
                                   .spoken = [](const Part& part) { return "part " + qtText(part.name); },
                                   .icon = [&](const Part&) { return QIcon(picture); }}},
                                 nullptr);
    list.setLineHeight(40);
    list.put(parts({"a", "b"}));
    const QModelIndex first = list.model()->index(0, 0);
    EXPECT_EQ(first.data().toString(), "a\nbelow");
    EXPECT_EQ(first.data(Qt::AccessibleTextRole).toString(), "part a");
    EXPECT_FALSE(first.data(Qt::DecorationRole).value<QIcon>().isNull());
    EXPECT_EQ(first.data(Qt::SizeHintRole).toSize().height(), 40);
    EXPECT_FALSE(first.data(Qt::ToolTipRole).isValid()) << "all of it is in sight";
    QSignalSpy activated(&list, &ListView::lineActivated);
    list.select("b");
    QTest::keyClick(&list, Qt::Key_Return);
    ASSERT_EQ(activated.size(), 1);
    EXPECT_EQ(list.at(activated[0][0].toInt())->name, "b");
    QTest::keyClick(&list, Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QGuiApplication::clipboard()->text(), "a below\nb below\n");
    list.put(parts({"b"}));
    EXPECT_EQ(list.selectedKey(), "b");
}

} // namespace
} // namespace caprail
