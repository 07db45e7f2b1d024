// SPDX-License-Identifier: GPL-3.0-or-later
/// The built program, called as a person or a script would.
#include "program.h"

#include <QDir>
#include <QJsonArray>
#include <unistd.h>

using namespace called;
using testing::HasSubstr;
using testing::StartsWith;

namespace {

class Cli : public Folder {};

} // namespace

TEST_F(Cli, wrong_usage_is_answered_with_64_and_the_usage) {
    for (const QStringList& arguments : {QStringList{"show"},
                                         {"plan", "a", "b"},
                                         {"sheet", "x"},
                                         {"--nonsense"},
                                         {"help", "nonsense"},
                                         {"shwo", "x"},
                                         {"plan", "x", "--fast"}}) {
        const Answer answer = caprail(arguments);
        EXPECT_EQ(answer.exitCode, 64) << arguments.join(' ').toStdString();
        EXPECT_THAT(answer.err, testing::AnyOf(HasSubstr("caprail plan CASE.json"),
                                               HasSubstr("caprail " + arguments.front().toStdString() + " ")))
            << "all verbs, or the one that was meant";
        EXPECT_THAT(answer.err, testing::Not(HasSubstr("..")));
    }
    EXPECT_EQ(caprail({"--help"}).exitCode, 0);
}

TEST_F(Cli, every_sample_is_sound_and_made_from_its_readable_source) {
    for (const QString& sample :
         {QStringLiteral("mid-survey"), QStringLiteral("moved-in-verify-round"), QStringLiteral("closed")}) {
        const QString record = copyOf(sample);
        EXPECT_EQ(caprail({"check", record}).exitCode, 0) << sample.toStdString();
        const QString again = at("again-" + sample + ".caprail");
        EXPECT_EQ(caprail({"import", QStringLiteral(SAMPLE_BUILDS "/") + sample + ".jsonl", again}).exitCode, 0);
        const QString first = at(sample + "-1.jsonl");
        const QString second = at(sample + "-2.jsonl");
        EXPECT_EQ(caprail({"export", record, "--ledger", first}).exitCode, 0);
        EXPECT_EQ(caprail({"export", again, "--ledger", second}).exitCode, 0);
        EXPECT_EQ(bytesOf(first), bytesOf(second)) << "the text form gives byte-equal seals";
    }
}

TEST_F(Cli, show_names_what_holds_each_gate) {
    const Answer moved = caprail({"show", copyOf("moved-in-verify-round"), "--json"});
    ASSERT_EQ(moved.exitCode, 0);
    const QJsonArray gates = moved.json()["gates"].toArray();
    ASSERT_EQ(gates.size(), 2);
    const QJsonObject closing = gates[1].toObject();
    EXPECT_EQ(closing["open"], false);
    EXPECT_TRUE(closing["held_by"].toArray().contains("gap:4R"));
    EXPECT_TRUE(closing["held_by"].toArray().contains("gap:4L"));
    EXPECT_TRUE(closing["held_by"].toArray().contains("verify-round"));
    EXPECT_FALSE(closing["held_by"].toArray().contains("gap:3R"));
    const Answer closed = caprail({"show", copyOf("closed"), "--json"});
    EXPECT_EQ(closed.json()["closed"], true);
    EXPECT_EQ(closed.json()["gates"].toArray()[1].toObject()["open"], true);
    const QJsonObject steps = closed.json()["closing"].toObject();
    EXPECT_EQ(steps.size(), 7);
    EXPECT_EQ(steps["pan fastened"].toObject()["state"], "good");
    EXPECT_EQ(moved.json()["closing"].toObject()["shims counted back"].toObject()["state"], "not done");
    EXPECT_THAT(caprail({"show", copyOf("mid-survey")}).out, HasSubstr("Gate “Closing” is locked"));
}

TEST_F(Cli, show_speaks_in_millimetres_when_asked) {
    const QString record = copyOf("mid-survey");
    const std::string inches = caprail({"show", record}).out;
    const std::string metric = caprail({"show", record, "--metric"}).out;
    EXPECT_THAT(inches, testing::AllOf(HasSubstr(" in"), testing::Not(HasSubstr(" mm"))));
    EXPECT_THAT(metric, testing::AllOf(HasSubstr(" mm"), HasSubstr("spread "), testing::Not(testing::ContainsRegex("[0-9] in[ ,.;)]"))));
}

TEST_F(Cli, show_tells_for_whom_each_fastener_group_speaks) {
    const Answer shown = caprail({"show", copyOf("rear-cap-on-bolts"), "--json"});
    ASSERT_EQ(shown.exitCode, 0) << shown.err;
    QJsonObject rear;
    QJsonObject girdle;
    for (const QJsonValue& value : shown.json()["fastener_groups"].toArray()) {
        const QJsonObject group = value.toObject();
        rear = group["name"] == "rear cap" ? group : rear;
        girdle = group["group"] == "girdle" ? group : girdle;
    }
    EXPECT_EQ(rear["piece"], "bolt");
    EXPECT_EQ(rear["places"], (QJsonArray{"main-5L", "main-5R"}));
    EXPECT_EQ(rear["verified_by"], "torque");
    EXPECT_LT(rear["share_of_proof_at_low_friction"].toDouble(1), 0.9);
    EXPECT_EQ(girdle["places"].toArray().size(), 8) << "it ties the front four caps";
}

TEST_F(Cli, append_takes_a_turning_torque_and_a_check_of_the_shops_as_typed) {
    const QString record = copyOf("moved-in-verify-round");
    const Answer done = caprail(
        {"append", record, "-"},
        R"({"kind":"own_check_set","person":"Mira Solheim","own_check":"seal","words":"rear main seal in","sort":"yes or no","holds":"closing","places":1,"source":"the shop"}
{"kind":"own_check_answered","person":"Mira Solheim","own_check":"seal","place":1,"answer":"yes","instrument":"","note":""}
{"kind":"turning_torque_read","person":"Mira Solheim","stage":"before the girdle","breakaway_typed":"11 lbf·ft","running_typed":"7.5 lbf·ft","instrument":"WRENCH-15"}
)");
    EXPECT_EQ(done.exitCode, 0) << done.err;
    const Answer shown = caprail({"show", record});
    EXPECT_THAT(shown.out, HasSubstr("rear main seal in: Yes."));
    EXPECT_THAT(shown.out, HasSubstr("Turning torque, before the girdle"));
    const Answer bound = caprail(
        {"append", record, "-"},
        R"({"kind":"turning_torque_read","person":"Mira Solheim","stage":"girdle at torque","breakaway_typed":"14 lbf·ft","running_typed":"9 lbf·ft","instrument":"WRENCH-15"})");
    EXPECT_NE(bound.exitCode, 0);
    EXPECT_THAT(bound.err, HasSubstr("nuts at torque"));
}

TEST_F(Cli, show_prints_probability_and_capability_beside_each_verdict_and_what_carries_a_stack) {
    const QString record = copyOf("closed");
    const std::string text = caprail({"show", record}).out;
    EXPECT_THAT(text, HasSubstr("by the bracketed recheck. [p 9"));
    EXPECT_THAT(text, HasSubstr("%, C "));
    const QJsonObject shown = caprail({"show", record, "--json"}).json();
    EXPECT_EQ(shown["positions"].toObject()["3R"].toObject()["carried_by"], "bracket");
    std::size_t judged = 0;
    for (const auto check : shown["checks"].toArray()) {
        for (const auto one : check.toObject()["judged"].toArray()) {
            ++judged;
            EXPECT_GT(one.toObject()["probability_of_conformity"].toDouble(), 0.5) << judged;
            EXPECT_GT(one.toObject()["capability"].toDouble(), 0) << judged;
        }
    }
    EXPECT_GT(judged, 20U);
    // Of a band that is narrower than four times u it says so.
    const double weak = shown["weakly_measured"].toDouble();
    EXPECT_EQ(weak > 0, text.find("weakly measured") != std::string::npos);
}

TEST_F(Cli, jq_reads_the_json_that_show_prints) {
    const Answer shown = caprail({"show", copyOf("closed"), "--json"});
    const Answer states =
        run("jq", {"-r", "[.checks[].state] | unique | join(\",\")"}, QByteArray::fromStdString(shown.out));
    EXPECT_EQ(states.exitCode, 0) << states.err;
    EXPECT_EQ(states.out, "good\n");
}

TEST_F(Cli, append_takes_a_good_entry_and_refuses_a_bad_one_leaving_the_file_as_it_was) {
    const QString record = copyOf("mid-survey");
    const QString good = write(
        "good.json",
        R"({"kind":"gap_reading","person":"Mira Solheim","position":"4R","pass":2,"gap_typed":"64.8 thou","instrument":"LEAVES-2"})");
    const Answer taken = caprail({"append", record, good});
    EXPECT_EQ(taken.exitCode, 0) << taken.err;
    const QByteArray before = bytesOf(record);
    const std::pair<const char*, const char*> bad[] = {
        {R"({"kind":"gap_reading","person":"Mira Solheim","position":"9R","pass":2,"gap_typed":"64.8 thou"})",
         "caps 1 to 5"},
        {R"({"kind":"fastener_tightened","person":"Mira Solheim","fastener":"main-1L","torque_typed":"170 lbf·ft","instrument":"WRENCH-90"})",
         "far over"},
        {R"({"kind":"fastener_tightened","person":"Mira Solheim","fastener":"main-1L","torque_typed":"8 lbf·ft","instrument":"WRENCH-90"})",
         "outside the range of WRENCH-90"},
        {R"({"kind":"fastener_tightened","person":"Mira Solheim","fastener":"main-1L","torque_typed":"70 lbf·ft","instrument":"MIC-25"})",
         "MIC-25 is a micrometer"},
        {R"({"kind":"gap_reading","person":"Mira Solheim","position":"4R","pass":2,"gap_typed":"9"})", "9 thousandths"},
        {R"({"kind":"gap_reading","person":"Mira Solheim","position":"4R","pass":2,"gap_typed":"0.648"})",
         "expected within"},
        {R"({"kind":"gap_reading","person":"Mira Solheim","position":"4R","pass":2,"gap_nm":1173480,"gap_typed":"99.9 thou"})",
         "one of them is wrong"},
        {R"({"kind":"gap_reading","person":"Mira Solheim","position":"4R","pass":2,"gap_nm":1,"gap_typed":"57.5 thou"})",
         "one of them is wrong"},
        {R"({"kind":"gap_reading","person":"Mira Solheim","position":"4R","pass":2,"gap_nm":22860000})",
         "not plausible"},
        {R"({"kind":"gap_reading","person":"Mira Solheim","position":"4R","pass":2,"gap_typed":"51 thou"})",
         "far from the pass before it"},
        {R"({"kind":"closing_step_done","person":"Mira Solheim","step":"girdle lowered"})", "Closing is locked"},
        {R"({"kind":"signed_off","person":"Mira Solheim","statement":"done"})", "Closing is locked"},
        {R"({"kind":"trial_fit_result","person":"Mira Solheim","item":"dipstick clear","throw_number":0,"result":"pass"})",
         "trial fit is locked"},
        {R"({"kind":"stack_built","person":"Mira Solheim","position":"4R","shims":"S77"})", "no shim S77"},
        {R"({"kind":"gap_reading","person":"Nobody","position":"4R","pass":2,"gap_typed":"64.8 thou"})",
         "knows no person"},
        {R"({"kind":"gap_reeding"})", "gap_reeding"},
        {"not json at all", "not JSON"},
        {R"({"kind":"struck","person":"Mira Solheim","entry":999999,"why":"x"})", "no entry 999999"},
    };
    for (const auto& [json, sentence] : bad) {
        const Answer refused = caprail({"append", record, "-"}, json);
        EXPECT_NE(refused.exitCode, 0) << json;
        EXPECT_THAT(refused.err, HasSubstr(sentence)) << json;
        EXPECT_THAT(refused.err, StartsWith("caprail: "));
        EXPECT_EQ(std::count(refused.err.begin(), refused.err.end(), '\n'), 1) << "one sentence: " << refused.err;
        EXPECT_EQ(bytesOf(record), before) << json;
    }
    EXPECT_EQ(caprail({"check", record}).exitCode, 0);
}

TEST_F(Cli, a_whole_job_is_done_by_append_alone) {
    const QString record = copyOf("moved-in-verify-round");
    QByteArray lines;
    const auto add = [&](const char* json) { lines += QByteArray(json) + "\n"; };
    for (const char* pass : {"3", "4"}) {
        for (const char* gap : {R"("4L","gap_typed":"55.5 thou")", R"("4R","gap_typed":"65.2 thou")"}) {
            add(("{\"kind\":\"gap_reading\",\"person\":\"Mira Solheim\",\"instrument\":\"LEAVES-2\",\"pass\":" +
                 std::string(pass) + ",\"position\":" + gap + "}")
                    .c_str());
        }
    }
    ASSERT_EQ(caprail({"append", record, "-"}, lines).exitCode, 0);
    const Answer shown = caprail({"show", record, "--json"});
    const QJsonArray held = shown.json()["gates"].toArray()[1].toObject()["held_by"].toArray();
    EXPECT_FALSE(held.contains("gap:4R"));
    EXPECT_TRUE(held.contains("stack:4R")) << "the next in the right order";
    EXPECT_TRUE(held.contains("recheck:4R"));
}

TEST_F(Cli, check_tells_sound_from_altered_and_from_foreign) {
    const QString record = copyOf("closed");
    EXPECT_EQ(caprail({"check", record}).exitCode, 0);
    EXPECT_EQ(caprail({"check", write("foreign.caprail", "just a text")}).exitCode, 2);
    EXPECT_EQ(caprail({"check", at("not-there.caprail")}).exitCode, 2);
    // The ledger's triggers refuse to change it, even to the sqlite3 shell.
    const Answer shell = run("sqlite3", {record, "UPDATE gap_reading SET gap_nm = gap_nm + 2540"});
    EXPECT_NE(shell.exitCode, 0);
    EXPECT_EQ(caprail({"check", record}).exitCode, 0);
    QByteArray bytes = bytesOf(copyOf("mid-survey"));
    const qsizetype place = bytes.indexOf("LEAVES-2");
    ASSERT_GT(place, 0);
    bytes[place + 7] = '3';
    const Answer altered = caprail({"check", write("altered.caprail", bytes)});
    EXPECT_EQ(altered.exitCode, 1) << altered.out << altered.err;
    EXPECT_FALSE(altered.err.empty());
}

TEST_F(Cli, import_refuses_to_overwrite_and_leaves_nothing_behind_when_refused) {
    const QString record = copyOf("closed");
    const QByteArray before = bytesOf(record);
    const Answer over = caprail({"import", QStringLiteral(SAMPLE_BUILDS "/mid-survey.jsonl"), record});
    EXPECT_NE(over.exitCode, 0);
    EXPECT_EQ(bytesOf(record), before);
    const Answer bad = caprail({"import", write("bad.jsonl", "{\"kind\":\"nonsense\"}\n"), at("new.caprail")});
    EXPECT_NE(bad.exitCode, 0);
    EXPECT_THAT(bad.err, HasSubstr("nonsense"));
    EXPECT_FALSE(QFile::exists(at("new.caprail")));
}

TEST_F(Cli, import_of_a_text_without_seals_says_so_and_so_does_show) {
    const QString text = write("bare.jsonl", R"({"kind":"person_added","person":"Ann","time":"2026-05-04T09:30:00Z","name":"Ann","role":""}
{"kind":"note_added","person":"Ann","time":"2026-05-04T09:31:00Z","place":"","text":"x"}
)");
    const Answer made = caprail({"import", text, at("new.caprail")});
    EXPECT_EQ(made.exitCode, 0) << made.err;
    EXPECT_THAT(made.out, HasSubstr("2 of them came without seals"));
    const Answer shown = caprail({"show", at("new.caprail")});
    EXPECT_THAT(shown.out, HasSubstr("Entries 2 to 3 came in from a text without seals (“bare.jsonl”)"));
    EXPECT_THAT(shown.out, HasSubstr("from outside: 1"));
    const Answer struck = caprail({"append", at("new.caprail"), "-"},
                                  R"({"kind":"struck","person":"Ann","entry":1,"why":"hide it"})");
    EXPECT_NE(struck.exitCode, 0);
    EXPECT_THAT(struck.err, HasSubstr("that stays"));
}

TEST_F(Cli, append_refuses_a_time_of_its_own_and_a_change_without_a_reason) {
    const QString record = copyOf("mid-survey");
    const Answer timed = caprail({"append", record, "-"},
                                 R"({"kind":"note_added","person":"Mira Solheim","text":"x","time":"2020-01-01T00:00:00Z"})");
    EXPECT_NE(timed.exitCode, 0);
    EXPECT_THAT(timed.err, HasSubstr("time"));
    const Answer silent = caprail({"append", record, "-"},
                                  R"({"kind":"band_set","person":"Mira Solheim","band":"residual","lo_typed":"-0.1 in","hi_typed":"0.1 in","source":"me"})");
    EXPECT_NE(silent.exitCode, 0);
    EXPECT_THAT(silent.err, HasSubstr("a reason is required"));
    const Answer said = caprail({"append", record, "-"},
                                R"({"kind":"band_set","person":"Mira Solheim","band":"residual","lo_typed":"-0.1 in","hi_typed":"0.1 in","source":"me","why":"asked for"})");
    EXPECT_EQ(said.exitCode, 0) << said.err;
    const QJsonArray deviations = caprail({"show", record, "--json"}).json()["deviations"].toArray();
    ASSERT_EQ(deviations.size(), 2) << "the sample struck a reading";
    EXPECT_EQ(deviations[1].toObject()["sort"], "limits or rules");
    EXPECT_THAT(deviations[1].toObject()["what"].toString().toStdString(), HasSubstr("asked for"));
}

TEST_F(Cli, show_tells_values_parts_sittings_and_zero_checks) {
    const QString record = copyOf("closed");
    const QJsonObject json = caprail({"show", record, "--json"}).json();
    QJsonObject residual;
    for (const QJsonValue& value : json["values"].toArray()) {
        residual = value.toObject()["value"] == "band:residual" ? value.toObject() : residual;
    }
    EXPECT_EQ(residual["confirmed"], true);
    EXPECT_EQ(residual["source"], "shim kit maker's sheet");
    EXPECT_EQ(json["parts"].toArray()[2].toObject()["lot"], "7731");
    EXPECT_EQ(json["parts"].toArray()[2].toObject()["is_new"], true);
    EXPECT_EQ(json["sittings"].toArray().size(), 1);
    EXPECT_GT(json["sittings"].toArray()[0].toObject()["minutes"].toInt(), 60);
    EXPECT_EQ(json["zero_checks"].toArray()[0].toObject()["days_used_without_zero_check"], 1);
    EXPECT_THAT(caprail({"show", record}).out, HasSubstr("were confirmed by nobody"));
}

TEST_F(Cli, a_read_only_file_is_shown_but_not_appended_to) {
    const QString record = copyOf("mid-survey");
    QFile::setPermissions(record, QFile::ReadOwner);
    EXPECT_EQ(caprail({"show", record}).exitCode, 0);
    const Answer refused =
        caprail({"append", record, "-"}, R"({"kind":"note_added","person":"Mira Solheim","text":"x"})");
    if (geteuid() != 0) { // root may write to any file
        EXPECT_EQ(refused.exitCode, 1);
        EXPECT_FALSE(refused.err.empty());
    }
    EXPECT_EQ(caprail({"check", record}).exitCode, 0);
}

TEST_F(Cli, plan_gives_the_best_stacks_in_the_units_of_its_case) {
    const QString planCase = write("case.json", R"({"unit":"0.0001 in","band":[-5,5],"largest_stack":0,
        "positions":[{"id":"A","cap":1,"side":"left","gap":575},{"id":"B","cap":1,"side":"right","gap":9000}],
        "shims":[{"id":"S1","thickness":300},{"id":"S2","thickness":275},{"id":"S3","thickness":577},{"id":"S4","thickness":575,"set_aside":true}]})");
    const Answer answer = caprail({"plan", planCase});
    ASSERT_EQ(answer.exitCode, 0) << answer.err;
    const QJsonObject plan = answer.json();
    // Common practice, no source: of two stacks of equal thickness the one with fewer shims is right.
    EXPECT_EQ(plan["stacks"].toObject()["A"], QJsonArray{"S3"});
    EXPECT_EQ(plan["in_band"], 1);
    EXPECT_EQ(plan["shims"], 1);
    EXPECT_EQ(plan["largest_residual"], 2);
    EXPECT_EQ(plan["proven"], true);
    EXPECT_EQ(plan["unmet"].toArray(), QJsonArray{"B"});
    EXPECT_EQ(caprail({"plan", write("bad.json", "{\"unit\":\"0.0001 in\"}")}).exitCode, 2);
    EXPECT_EQ(caprail({"plan", write("worse.json", "[")}).exitCode, 2);
}

TEST_F(Cli, plan_aims_at_the_least_load_with_the_stiffness_of_its_case) {
    const QString planCase = QStringLiteral(TEST_DATA "/load/L02.json");
    const Answer answer = caprail({"plan", "--least-load", planCase});
    ASSERT_EQ(answer.exitCode, 0) << answer.err;
    const QJsonObject plan = answer.json();
    const QJsonObject best = QJsonDocument::fromJson(bytesOf(planCase)).object()["best_with_least_load"].toObject();
    EXPECT_EQ(plan["in_band"], best["in_band"]);
    EXPECT_EQ(plan["shims"], best["shims"]);
    EXPECT_NEAR(plan["largest_load"].toDouble(), best["largest_load"].toDouble(), 1e-6);
    EXPECT_NEAR(plan["sum_square_load"].toDouble(), best["sum_square_load"].toDouble(), 1e-3);
    EXPECT_EQ(plan["proven"], true);
    EXPECT_EQ(plan["loads"].toObject().size(), 4);
    EXPECT_EQ(caprail({"plan", "--least-load", "--least-twist", planCase}).exitCode, 64);
    const QString bare =
        write("bare.json", R"({"unit":"0.0001 in","band":5,"largest_stack":0,"positions":[],"shims":[]})");
    EXPECT_THAT(caprail({"plan", "--least-load", bare}).err, HasSubstr("needs “stiffness”"));
    const QString crooked = write("crooked.json", R"({"unit":"0.0001 in","band":5,"largest_stack":0,"shims":[],
        "positions":[{"id":"A","cap":1,"side":"left","gap":5}],"stiffness":[[1,2]]})");
    EXPECT_THAT(caprail({"plan", crooked}).err, HasSubstr("“stiffness” must be a list of 1 rows"));
}

TEST_F(Cli, load_says_what_the_stacks_put_into_the_block_once_the_plate_is_described) {
    const Answer without = caprail({"load", copyOf("rear-cap-on-bolts")});
    EXPECT_EQ(without.exitCode, 2);
    EXPECT_THAT(without.err, HasSubstr("needs the girdle's thickness and metal"));
    const QString built = copyOf("closed");
    const QJsonObject closed = caprail({"load", built, "--json"}).json();
    EXPECT_EQ(closed["loads_lbf"].toObject().size(), 10);
    EXPECT_GT(closed["largest_load_lbf"].toDouble(), 0.1);
    EXPECT_LT(closed["largest_load_lbf"].toDouble(), 100) << "its stacks are in band";
    EXPECT_GT(closed["largest_stress_psi"].toDouble(), 10);
    EXPECT_TRUE(closed["missing"].toArray().isEmpty());
    const QString started = at("started.caprail");
    const QByteArray lines =
        R"({"kind":"person_added","person":"Mira","time":"2026-05-04T08:00:00.000Z","name":"Mira","role":""})";
    ASSERT_EQ(caprail({"import", write("first.jsonl", lines + "\n"), started}).exitCode, 0);
    const QByteArray layout =
        R"({"kind":"layout_set","person":"Mira","caps":3,"fasteners_per_cap":2,"girdle_ring":"inner",
        "tied_first":1,"tied_last":3,"rods":4,"throws":2,"cap_spacing_nm":111760000,"stud_span_nm":91440000,
        "outer_stud_span_nm":142240000,"rail_span_nm":208280000,"pickup_cap":2,"pickup_side":"right","dipstick_cap":1,
        "dipstick_side":"left","source":"drawing","plate_thickness_nm":6350000,"plate_metal":"steel"})";
    const Answer entered = caprail({"append", started, write("layout.json", layout)});
    ASSERT_EQ(entered.exitCode, 0) << entered.err;
    const Answer answer = caprail({"load", started, "--json"});
    ASSERT_EQ(answer.exitCode, 0) << answer.err;
    const QJsonObject json = answer.json();
    EXPECT_EQ(json["places"].toArray().size(), 6);
    EXPECT_EQ(json["stiffness_lbf_per_thou"].toArray().size(), 6);
    const QJsonArray first = json["stiffness_lbf_per_thou"].toArray()[0].toArray();
    EXPECT_GT(first[0].toDouble(), 10);
    EXPECT_EQ(json["stiffness_free_lbf_per_thou"].toArray()[0].toArray().size(), 6);
    EXPECT_TRUE(json["loads_lbf"].toObject()["1L"].isNull()) << "no gap was read yet";
    EXPECT_TRUE(json["largest_stress_psi"].isNull());
    EXPECT_EQ(json["missing"].toArray().size(), 6);
    EXPECT_GT(json["assumptions"].toArray().size(), 3);
    EXPECT_THAT(json["not_known"].toString().toStdString(), StartsWith("No load is known yet"));
    EXPECT_THAT(caprail({"load", started}).out, HasSubstr("Assumptions"));
    const Answer metric = caprail({"load", built, "--metric"});
    EXPECT_THAT(metric.out, HasSubstr(" MPa at "));
    EXPECT_THAT(metric.out, HasSubstr(" kN/mm"));
    EXPECT_THAT(metric.out, testing::Not(testing::AnyOf(HasSubstr("psi"), HasSubstr("lbf"))));
}

TEST_F(Cli, film_looks_ahead_at_the_clearances_and_the_films_under_a_load_that_is_named) {
    const QString record = copyOf("closed");
    const Answer unloaded = caprail({"film", record});
    ASSERT_EQ(unloaded.exitCode, 0) << unloaded.err;
    EXPECT_THAT(unloaded.out, StartsWith("main 1    clearance "));
    EXPECT_THAT(unloaded.out, HasSubstr("No load is named, so no film is worked out"));
    EXPECT_THAT(unloaded.out, testing::Not(HasSubstr("; film")));
    const QJsonObject json =
        caprail({"film", record, "--load", "3000 lbf", "--oil", "20W-50", "--block-at", "100 °C", "--json"}).json();
    EXPECT_TRUE(json["not_known"].isNull());
    EXPECT_EQ(json["asked"].toObject()["block_at_celsius"].toDouble(), 100);
    EXPECT_THAT(unloaded.out, HasSubstr("At 6000 revolutions a minute, shells 0.8500 in wide; measured at 20.0 °C"));
    const QJsonObject main1 = json["bearings"].toObject()["main-1"].toObject();
    EXPECT_NE(main1["clearance_warm_nm"].toInteger(), main1["clearance_nm"].toInteger());
    EXPECT_GT(main1["film_warm_nm"].toInteger(), 100);
    EXPECT_EQ(json["assumptions"].toArray().size(), 2);
    EXPECT_THAT(caprail({"film", record, "--load", "13 kN", "--metric"}).out, HasSubstr(" µm (h0/c "));
    EXPECT_EQ(caprail({"film", copyOf("mid-survey"), "--load", "3000 lbf", "--oil", "grease"}).exitCode, 64);
    EXPECT_THAT(caprail({"film", record, "--oil", "grease"}).err, HasSubstr("--at40 and --at100"));
    EXPECT_THAT(caprail({"film", record, "--at40", "110"}).err, HasSubstr("needs both"));
    EXPECT_THAT(caprail({"film", record, "--crank-of", "wood"}).err,
                HasSubstr("“wood” is not a coefficient for the crank"));
}

TEST_F(Cli, plan_refuses_a_unit_that_is_no_length_to_count_in) {
    for (const QString& unit : {QStringLiteral("0 in!"), QStringLiteral("-1 in!"), QStringLiteral("2 in!")}) {
        const Answer answer = caprail({"plan", write("unit.json", R"({"unit":")" + unit.toUtf8() + R"(","band":[0,0],
            "largest_stack":0,"positions":[{"id":"A","cap":1,"side":"left","gap":5}],"shims":[]})")});
        EXPECT_EQ(answer.exitCode, 2) << unit.toStdString();
        EXPECT_THAT(answer.err, HasSubstr("“unit” must be a length above zero"));
    }
}

TEST_F(Cli, plan_takes_no_word_for_set_aside) {
    const Answer answer = caprail({"plan", write("aside.json", R"({"unit":"0.0001 in","band":[0,0],"largest_stack":0,
        "positions":[],"shims":[{"id":"S1","thickness":10,"set_aside":"yes"}]})")});
    EXPECT_EQ(answer.exitCode, 2);
    EXPECT_THAT(answer.err, HasSubstr("“set_aside” must be true or false"));
}

TEST_F(Cli, plan_says_how_near_to_its_bound_an_unproven_plan_is) {
    QByteArray shims;
    for (int i = 0; i < 60; ++i) { // gaps that end in 5, shims that end in 0: nothing fits, and no table shows it
        shims += (i > 0 ? "," : "") + QByteArray("{\"id\":\"S") + QByteArray::number(i) + "\",\"thickness\":" +
                 QByteArray::number(10 * (100 + i * 37 % 211)) + "}";
    }
    const Answer answer = caprail(
        {"plan", "--deadline-ms", "16", write("parity.json", R"({"unit":"0.00001 in","band":[0,0],"largest_stack":0,
        "positions":[{"id":"A","cap":1,"side":"left","gap":0},{"id":"B","cap":1,"side":"right","gap":10005}],
        "shims":[{"id":"odd","thickness":20001},)" + shims + "]}")});
    ASSERT_EQ(answer.exitCode, 0) << answer.err;
    EXPECT_EQ(answer.json()["proven"], false);
    EXPECT_EQ(answer.json()["share_of_bound"].toObject(), (QJsonObject{{"figure", "in_band"}, {"share", 0.5}}));
}

TEST_F(Cli, export_writes_a_table_per_kind) {
    ASSERT_EQ(caprail({"export", copyOf("closed"), at("tables")}).exitCode, 0);
    const QStringList tables = QDir(at("tables")).entryList({"*.csv"});
    EXPECT_TRUE(tables.contains("gap_reading.csv")) << tables.join(' ').toStdString();
    EXPECT_THAT(bytesOf(at("tables/gap_reading.csv")).toStdString(), HasSubstr("gap_nm"));
}

/// A data person's way: the tables read by another program are, number by number, what `show --json` says.
TEST_F(Cli, exported_results_are_read_elsewhere_as_the_numbers_that_show_says) {
    for (const char* sample : {"closed", "mid-survey", "moved-in-verify-round"}) {
        const QString record = copyOf(sample);
        const QString folder = at(QStringLiteral("tables-") + sample);
        ASSERT_EQ(caprail({"export", record, folder, "--bom"}).exitCode, 0);
        write("show.json", QByteArray::fromStdString(caprail({"show", record, "--json"}).out));
        const Answer compared = run("python3", {"-c", R"(
import csv, json, sys
show = json.load(open(sys.argv[1]))
assert show["schema"] == "caprail show 1"
def read(name):
    with open(f"{sys.argv[2]}/{name}.csv", encoding="utf-8-sig", newline="") as file:
        rows = list(csv.DictReader(file))
    return [{k: v[1:] if v.startswith("'") else v for k, v in row.items()} for row in rows]
unit = {(r["table"], r["column"]): r["unit"] for r in read("dictionary")}
compared = 0
for table, rows in show["results"].items():
    cells = read(table)
    assert len(cells) == len(rows), table
    for cell, row in zip(cells, rows):
        assert set(cell) == set(row), table
        for column, value in row.items():
            text = cell[column]
            number = unit[table, column] not in ("", "UTC")
            if value is None:
                assert text == "", (table, column, text)
            elif number:
                assert not isinstance(value, str), (table, column, value)
                assert float(text) == value, (table, column, text, value)
                compared += 1
            else:
                assert text == value, (table, column, text, value)
for position, said in show["positions"].items():
    row = next(r for r in read("results_gaps") if r["position"] == position)
    assert (row["gap_nm"] == "" and said["gap_nm"] is None) or int(row["gap_nm"]) == said["gap_nm"], position
print(compared)
)",
                                                at("show.json"), folder});
        EXPECT_EQ(compared.exitCode, 0) << sample << ": " << compared.err;
        EXPECT_GT(std::stoi("0" + compared.out), 50) << sample;
    }
}

TEST_F(Cli, exported_texts_run_as_no_formula_and_are_read_back_as_they_were) {
    const QString record = copyOf("closed");
    const QStringList notes{"=1+1", "+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "'quoted'", "'=1", "plain"};
    for (const QString& note : notes) {
        const QJsonObject entry{{"kind", "note_added"}, {"place", ""}, {"text", note}};
        ASSERT_EQ(caprail({"append", record, "-"}, QJsonDocument(entry).toJson()).exitCode, 0) << note.toStdString();
    }
    ASSERT_EQ(caprail({"export", record, at("tables")}).exitCode, 0);
    const Answer read = run("python3", {"-c", R"(
import csv, json, sys
with open(sys.argv[1], encoding="utf-8", newline="") as file:
    cells = [row["text"] for row in csv.DictReader(file)][-7:]
assert not any(cell[0] in "=+-@" for cell in cells), cells
print(json.dumps({"texts": [cell[1:] if cell.startswith("'") else cell for cell in cells]}))
)",
                                        at("tables/note_added.csv")});
    ASSERT_EQ(read.exitCode, 0) << read.err;
    EXPECT_EQ(read.json()["texts"].toVariant().toStringList(), notes);
}

TEST_F(Cli, sheet_is_a_clean_pdf_of_several_pages_with_selectable_text) {
    const QString pdf = at("sheet.pdf");
    const Answer made = caprail({"sheet", copyOf("closed"), pdf});
    ASSERT_EQ(made.exitCode, 0) << made.err;
    EXPECT_EQ(run("qpdf", {"--check", pdf}).exitCode, 0);
    const std::string text = run("pdftotext", {"-layout", pdf, "-"}).out;
    for (const char* wanted :
         {"Ines Halloran", "KL-2188", "signed off by Teo Brandt", "moved 4.0°", "S41", "Page 1 of"}) {
        EXPECT_THAT(text, HasSubstr(wanted));
    }
    EXPECT_NE(caprail({"sheet", copyOf("mid-survey"), "/no/such/folder/sheet.pdf"}).exitCode, 0);
}

TEST_F(Cli, a_dash_is_standard_output_where_one_file_is_made_and_refused_where_there_are_many) {
    const QString record = copyOf("closed");
    const Answer pdf = caprail({"sheet", record, "-"});
    EXPECT_EQ(pdf.exitCode, 0) << pdf.err;
    EXPECT_THAT(pdf.out, StartsWith("%PDF-"));
    EXPECT_EQ(run("qpdf", {"--check", write("piped.pdf", QByteArray::fromStdString(pdf.out))}).exitCode, 0);

    ASSERT_EQ(caprail({"export", record, "--ledger", at("ledger.jsonl")}).exitCode, 0);
    const Answer ledger = caprail({"export", record, "--ledger", "-"});
    EXPECT_EQ(ledger.exitCode, 0) << ledger.err;
    EXPECT_EQ(ledger.out, bytesOf(at("ledger.jsonl")).toStdString());
    EXPECT_EQ(ledger.err.find("photos") != std::string::npos, QDir(at("")).entryList({"ledger*"}).size() > 1)
        << "what is left out is said: " << ledger.err;

    const Answer tables = run("sh", {"-c", "cd \"$1\" && \"$2\" export \"$3\" -", "sh", at(""), CAPRAIL_PROGRAM, record});
    EXPECT_EQ(tables.exitCode, 64);
    EXPECT_THAT(tables.err, HasSubstr("name a folder"));
    EXPECT_FALSE(QFile::exists(at("-")));
    EXPECT_EQ(caprail({"sheet", record, at("sheet")}).exitCode, 64) << "a name that says no format";
}

TEST_F(Cli, without_a_font_no_sheet_of_empty_boxes_is_written) {
    const QString fonts = write("fonts.conf", "<?xml version=\"1.0\"?><fontconfig><cachedir>" + at("cache").toUtf8() +
                                                  "</cachedir></fontconfig>");
    const Answer answer =
        run("env", {"FONTCONFIG_FILE=" + fonts, CAPRAIL_PROGRAM, "sheet", copyOf("closed"), at("sheet.pdf")});
    EXPECT_EQ(answer.exitCode, 1);
    EXPECT_THAT(answer.err, HasSubstr("no usable font"));
    EXPECT_FALSE(QFile::exists(at("sheet.pdf")));
}
