// SPDX-License-Identifier: GPL-3.0-or-later
/// An entry in one line, as it is said at the bench: every kind has its sentence, and nothing that was written is left out.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <ledger/history_line.h>
#include <ledger/kinds.h>
#include <utility>

namespace caprail {
namespace {

using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

/// Puts a text of its own into every member of an entry that takes one, and notes it.
class Filler {
public:
    std::vector<std::string> written;

    void fill(std::string& text) { text = next(); }
    void fill(NameList& list) { list.names = {next()}; }
    void fill(std::int64_t& number) { number = 7; }
    template <class Q> void fill(Entered<Q>& entered) { entered.typed = next(); }
    template <class T> void fill(Rare<T>& rare) {
        rare = T{};
        fill(*rare);
    }
    template <class T> void fill(std::optional<T>& optional) { optional = T{}; }
    template <class Other> void fill(Other&) {}

private:
    std::string next() { return written.emplace_back("Wort" + std::to_string(written.size() + 1) + "."); }
};

template <class S> std::pair<Body, std::vector<std::string>> filled() {
    S entry;
    Filler filler;
    std::apply([&](const auto&... fields) { (filler.fill(entry.*(fields.member)), ...); }, S::fields());
    return {Body(std::move(entry)), filler.written};
}

template <std::size_t... i> auto everyKind(std::index_sequence<i...>) {
    return std::vector{filled<Body::Type<i>>()...};
}

TEST(HistoryLine, has_a_sentence_for_every_kind_and_leaves_no_text_out) {
    const auto all = everyKind(std::make_index_sequence<Body::count>());
    EXPECT_EQ(all.size(), allKinds().size());
    for (const auto& [body, written] : all) {
        const std::string line = historyLine(body, {});
        const KindInfo& info = kindOf(body);
        EXPECT_THAT(line, Not(StartsWith(std::string(info.title) + ": " + info.columns.front().name))) << "a list of fields";
        EXPECT_THAT(line, Not(HasSubstr("_"))) << info.kind;
        EXPECT_THAT(line, Not(testing::ContainsRegex("%[1-9]"))) << "a place in the sentence was not filled: " << info.kind;
        for (const std::string& text : written) {
            EXPECT_THAT(line, HasSubstr(text)) << info.kind << ": " << line;
        }
    }
}

/// Puts something else into a member, if it has more than one thing to say; texts have their own test above.
class Alterer {
public:
    template <class T> bool alter(Rare<T>& rare) { return std::exchange(rare, Rare<T>()).has_value(); }
    template <class T> bool alter(std::optional<T>& optional) {
        return std::exchange(optional, std::nullopt).has_value();
    }
    template <class Q> bool alter(Entered<Q>& entered) { return alter(entered.value); }
    template <class Tag> bool alter(Quantity<Tag>& quantity) {
        quantity = Quantity<Tag>(quantity.value() + 100'000'000);
        return true;
    }
    template <Worded E> bool alter(E& word) {
        const auto& all = allWords<E>();
        const auto at = std::ranges::find(all, word, [](const auto& one) { return one.value; });
        word = at + 1 == all.end() ? all.front().value : (at + 1)->value;
        return true;
    }
    bool alter(std::int64_t& number) {
        ++number;
        return true;
    }
    bool alter(bool& isSo) {
        isSo = !isSo;
        return true;
    }
    template <class Other> bool alter(Other&) { return false; }
};

/// The names of the members of a kind that its sentence does not tell.
template <class S> std::vector<std::string> untold() {
    const Body whole = filled<S>().first;
    std::vector<std::string> names;
    const auto look = [&](const auto& field) {
        S other = whole.get<S>();
        if (Alterer().alter(other.*(field.member)) && historyLine(Body(other), {}) == historyLine(whole, {})) {
            names.push_back(std::string(S::kind) + "." + std::string(field.name));
        }
    };
    std::apply([&](const auto&... fields) { (look(fields), ...); }, S::fields());
    return names;
}
template <std::size_t... i> std::vector<std::string> untoldOfEveryKind(std::index_sequence<i...>) {
    std::vector<std::string> all;
    const auto add = [&](const std::vector<std::string>& names) { all.insert(all.end(), names.begin(), names.end()); };
    (add(untold<Body::Type<i>>()), ...);
    return all;
}

TEST(HistoryLine, tells_every_value_of_every_kind) {
    // Of these, another member of the filled entry speaks: the places of a named group, a dipstick, which has no throw,
    // and its clearance; the step that a check holds; the value that answers it. Below they speak for themselves.
    EXPECT_THAT(untoldOfEveryKind(std::make_index_sequence<Body::count>()),
                testing::UnorderedElementsAre("fastener_group_set.ring", "trial_fit_result.throw_number",
                                              "trial_fit_result.result", "own_check_set.holds",
                                              "own_check_answered.answer"));
    const auto line = [](Body body) { return historyLine(body, {}); };
    FastenerGroupSet ring;
    ring.ring = Ring::outer;
    EXPECT_NE(line(ring), line(FastenerGroupSet()));
    OwnCheckSet check;
    check.ownCheck = "tray";
    const std::string closing = line(check);
    check.holds = OwnCheckHolds::trialFit;
    EXPECT_NE(line(check), closing);
    OwnCheckAnswered answer;
    answer.answer = YesNo::yes;
    EXPECT_THAT(line(answer), HasSubstr("at place 1: yes"));
    answer.answer = YesNo::no;
    EXPECT_THAT(line(answer), HasSubstr("at place 1: no"));
    answer.answer = {};
    EXPECT_THAT(line(answer), HasSubstr("at place 1: see its photo"));
}

TEST(HistoryLine, says_it_as_it_is_said_at_the_bench) {
    const auto line = [](Body body) { return historyLine(body, {}); };
    const FastenerId main3R{FastenerKind::mainCap, 3, Side::right, Ring::inner};
    LayoutSet layout;
    layout.tiedLast = 4;
    EXPECT_THAT(line(layout), StartsWith("Girdle now ties caps 1 to 4"));
    EXPECT_THAT(line(layout), testing::Not(HasSubstr("thick")));
    layout.plateThickness = inches(0.25);
    layout.plateMetal = PlateMetal::steel;
    layout.windowAlong = inches(2.6);
    EXPECT_THAT(line(layout), HasSubstr("girdle 0.2500 in thick · of steel · windows 2.6000 in along"));
    layout.plateModulus = 71'000;
    layout.platePoisson = 330;
    EXPECT_THAT(line(layout), HasSubstr("elastic modulus 71000 MPa · Poisson's ratio 330 thousandths"));
    EXPECT_EQ(line(GapReading{{3, Side::right}, 1, {thou(57.5), "57.5 thou"}, "FEELER-1"}),
              "Gap at cap 3 right, pass 1: 0.0575 in (typed “57.5 thou”) · with FEELER-1");
    EXPECT_EQ(line(GapReading{{3, Side::right}, 1, {thou(57.5), "0.0575 in"}, ""}), "Gap at cap 3 right, pass 1: 0.0575 in");
    EXPECT_EQ(line(StackMoved{{1, Side::left}, StackMove::takenOff}), "Stack at cap 1 left taken off");
    EXPECT_EQ(line(StackBuilt{{1, Side::left}, {{"S014", "S022"}}}), "Stack built at cap 1 left: S014 + S022");
    EXPECT_EQ(line(StackBuilt{{1, Side::left}, {}}), "Stack built at cap 1 left: no shim");
    EXPECT_EQ(line(RecheckMade{{3, Side::right}, Feel::loose, ""}), "Recheck at cap 3 right: it is loose");
    EXPECT_EQ(line(TrialFitResult{TrialItem::dipstick, 0, TrialResult::measured, Entered<Length>{thou(80), ""}, ""}),
              "Dipstick clear: 0.0800 in");
    EXPECT_EQ(line(TrialFitResult{TrialItem::dipstick, 0, TrialResult::pass, {}, ""}), "Dipstick clear: passed");
    EXPECT_EQ(line(TrialFitResult{TrialItem::counterweights, 3, TrialResult::fail, {}, "touches the nut"}),
              "Not so: Counterweights clear at throw 3 · touches the nut");
    EXPECT_EQ(line(RoundOutcome{2, main3R, Outcome::held, {}, {}, "W1"}), "Main 3 right held in round 2 · with W1");
    EXPECT_EQ(line(RoundOutcome{2, main3R, Outcome::moved, Entered<Angle>{degrees(8), ""}, {}, ""}),
              "Main 3 right moved 8.0° in round 2");
    EXPECT_EQ(line(FastenerTightened{main3R, Entered<Torque>{poundFeet(70), ""}, {}, {}, ""}),
              "Main 3 right tightened to 70.0 lbf·ft");
    EXPECT_EQ(line(Struck{352, "left and right mixed up"}), "Entry 352 struck: left and right mixed up");
    const Units metric{LengthUnit::millimetre, TorqueUnit::newtonMetre, ','};
    EXPECT_THAT(historyLine(GapReading{{3, Side::right}, 1, {thou(57.5), ""}, ""}, metric), HasSubstr("1,4605 mm"));
}

} // namespace
} // namespace caprail
