// SPDX-License-Identifier: GPL-3.0-or-later
/// What an entry as JSON must have and may have, told to other programs by JSON Schema (draft 2020-12).
#include <ledger/entry_schema.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <ledger/kinds.h>
#include <ledger/qt_text.h>

namespace caprail {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;

std::vector<std::string> textsOf(const QJsonValue& list) {
    std::vector<std::string> texts;
    for (const QJsonValue& one : list.toArray()) {
        texts.push_back(one.toString().toStdString());
    }
    return texts;
}

/// The members that either of which is needed.
std::vector<std::vector<std::string>> choicesOf(const QJsonObject& schema) {
    std::vector<std::vector<std::string>> all;
    for (const QJsonValue& choice : schema["allOf"].toArray()) {
        std::vector<std::string> names;
        for (const QJsonValue& one : choice.toObject()["anyOf"].toArray()) {
            for (const std::string& name : textsOf(one.toObject()["required"])) {
                names.push_back(name);
            }
        }
        all.push_back(names);
    }
    return all;
}

class EntrySchema : public testing::Test {
protected:
    const QJsonObject whole = QJsonDocument::fromJson(QByteArray::fromStdString(entrySchema())).object();
    [[nodiscard]] QJsonObject of(std::string_view kind) const {
        return whole["$defs"].toObject()[qtText(kind)].toObject();
    }
};

TEST_F(EntrySchema, describes_every_column_of_every_kind_and_no_other) {
    EXPECT_EQ(static_cast<std::size_t>(whole["oneOf"].toArray().size()), allKinds().size());
    for (const KindInfo& info : allKinds()) {
        const QJsonObject schema = of(info.kind);
        const QJsonObject properties = schema["properties"].toObject();
        EXPECT_EQ(properties["kind"].toObject()["const"].toString(), qtText(info.kind));
        EXPECT_EQ(static_cast<std::size_t>(properties.size()), info.columns.size() + 5) << info.kind;
        EXPECT_FALSE(schema["additionalProperties"].toBool(true)) << info.kind;
        for (const Column& column : info.columns) {
            const QJsonObject value = properties[qtText(column.name)].toObject();
            EXPECT_EQ(value["type"].toString(), column.type == Column::Type::integer ? "integer" : "string")
                << column.name;
            EXPECT_EQ(static_cast<std::size_t>(value["enum"].toArray().size()), column.words.size()) << column.name;
        }
    }
}

TEST_F(EntrySchema, takes_a_quantity_by_its_number_or_by_what_was_typed) {
    const QJsonObject gap = of("gap_reading");
    EXPECT_THAT(choicesOf(gap), ElementsAre(ElementsAre("gap_nm", "gap_typed")));
    EXPECT_THAT(textsOf(gap["required"]), ElementsAre("kind", "pass"));
    EXPECT_THAT(choicesOf(of("turning_torque_read")), ElementsAre(ElementsAre("breakaway_mNm", "breakaway_typed"),
                                                                  ElementsAre("running_mNm", "running_typed")));
    EXPECT_THAT(textsOf(of("turning_torque_read")["required"]), ElementsAre("kind", "stage"));
    EXPECT_THAT(choicesOf(of("rules_set")), IsEmpty()) << "its lengths are not typed";
    EXPECT_THAT(textsOf(of("rules_set")["required"]), Contains("repeat_limit_nm"));
    EXPECT_THAT(textsOf(of("rules_set")["required"]), Not(Contains("pickup_tube_minimum_nm"))) << "it may be left out";
}

TEST(ColumnUnit, is_the_one_that_its_name_ends_with) {
    const auto unit = [](const std::string& name, Column::Type type = Column::Type::integer) {
        return std::string(unitOf(Column{name, type, false, {}}));
    };
    EXPECT_EQ(unit("gap_nm"), "nm");
    EXPECT_EQ(unit("torque_mNm"), "mN·m");
    EXPECT_EQ(unit("angle_mdeg"), "0.001°");
    EXPECT_EQ(unit("part_temperature_mdegC"), "0.001 °C");
    EXPECT_EQ(unit("pass"), "1");
    EXPECT_EQ(unit("gap_typed", Column::Type::text), "");
    EXPECT_EQ(meaningOf(Column{"outcome", Column::Type::text, false, {"held", "moved"}}), "one of: held, moved");
}

} // namespace
} // namespace caprail
