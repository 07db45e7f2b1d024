// SPDX-License-Identifier: GPL-3.0-or-later
/// One engine lies on the stand: turning one diagram turns all, and layers are the same at every station.
#include "station_record.h"

#include <planview/plan_view.h>
#include <stations/fasteners/station.h>
#include <stations/girdle/station.h>
#include <stations/common/diagram_setting.h>

namespace caprail {
namespace {

class DiagramSettingTest : public testing::Test {
protected:
    DiagramSettingTest() : bench(3), girdle(*bench.session), fasteners(*bench.session) {}
    ~DiagramSettingTest() override {
        DiagramSetting::shared().setOrientation({});
        DiagramSetting::shared().resetLayers();
    }
    StationRecord bench;
    GirdleStation girdle;
    FastenersStation fasteners;
};

TEST_F(DiagramSettingTest, turns_every_diagram_with_one) {
    child<PlanView>(girdle, "plan")->turn();
    EXPECT_EQ(child<PlanView>(fasteners, "plan")->orientation().quarterTurns % 4, child<PlanView>(girdle, "plan")->orientation().quarterTurns % 4);
    child<PlanView>(fasteners, "plan")->flip();
    EXPECT_TRUE(child<PlanView>(girdle, "plan")->orientation().isFlipped);
    GirdleStation later(*bench.session);
    EXPECT_EQ(child<PlanView>(later, "plan")->orientation(), child<PlanView>(girdle, "plan")->orientation());
}

TEST_F(DiagramSettingTest, adds_and_takes_away_layers_until_they_are_reset) {
    ASSERT_TRUE(child<PlanView>(girdle, "plan")->content()->layers.testFlag(PlanLayer::girdle));
    ASSERT_FALSE(child<PlanView>(girdle, "plan")->content()->layers.testFlag(PlanLayer::throws));
    DiagramSetting::shared().setLayer(PlanLayer::girdle, false);
    DiagramSetting::shared().setLayer(PlanLayer::throws, true);
    EXPECT_FALSE(child<PlanView>(girdle, "plan")->content()->layers.testFlag(PlanLayer::girdle));
    EXPECT_TRUE(child<PlanView>(girdle, "plan")->content()->layers.testFlag(PlanLayer::throws));
    girdle.refresh();
    EXPECT_FALSE(child<PlanView>(girdle, "plan")->content()->layers.testFlag(PlanLayer::girdle)) << "a refresh keeps it so";
    DiagramSetting::shared().resetLayers();
    EXPECT_TRUE(child<PlanView>(girdle, "plan")->content()->layers.testFlag(PlanLayer::girdle));
    EXPECT_FALSE(child<PlanView>(girdle, "plan")->content()->layers.testFlag(PlanLayer::throws));
}

TEST_F(DiagramSettingTest, keeps_the_selected_place_when_a_layer_changes) {
    girdle.select("2R");
    DiagramSetting::shared().setLayer(PlanLayer::throws, true);
    EXPECT_EQ(child<PlanView>(girdle, "plan")->selected(), "2R");
}

} // namespace
} // namespace caprail
