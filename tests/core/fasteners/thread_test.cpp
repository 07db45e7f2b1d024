// SPDX-License-Identifier: GPL-3.0-or-later
#include "sentences.h"
#include <fasteners/thread.h>
#include <fasteners/threadtables.h>
#include <gtest/gtest.h>
#include <random>

using namespace caprail;
using testing::HasSubstr;

TEST(Thread, is_read_by_its_usual_inch_name) {
    for (const char* text :
         {"7/16-20", " 7/16-20 UNF", "7/16 unf", "7/16 fine", "0.4375-20", ".4375 - 20", "7/16-20 by hand"}) {
        const auto thread = parseThread(text);
        ASSERT_TRUE(thread) << text << ": " << thread.error().sentence;
        EXPECT_EQ(thread->name(), "7/16-20") << text;
        EXPECT_EQ(thread->nominal(), inches(0.4375));
        EXPECT_EQ(thread->pitch(), inches(0.05));
        EXPECT_EQ(thread->series(), ThreadSeries::fine);
    }
}

TEST(Thread, is_read_by_number_size_and_mixed_fraction) {
    EXPECT_EQ(parseThread("#10-32")->nominal(), inches(0.190));
    EXPECT_EQ(parseThread("10-24"), parseThread("#10-24"));
    EXPECT_EQ(parseThread("1 1/8-12")->nominal(), inches(1.125));
    EXPECT_EQ(parseThread("1-1/8-12"), parseThread("1 1/8 UNF"));
    EXPECT_EQ(parseThread("1-1/8 UNF"), parseThread("1 1/8 UNF"));
    EXPECT_EQ(parseThread("1-8")->nominal(), inches(1));
}

TEST(Thread, is_read_by_its_usual_metric_name) {
    for (const char* text : {"M10x1.25", "M10×1.25", "m10 X 1,25", "M10 × 1.25"}) {
        const auto thread = parseThread(text);
        ASSERT_TRUE(thread) << text << ": " << thread.error().sentence;
        EXPECT_EQ(thread->name(), "M10×1.25") << text;
        EXPECT_EQ(thread->pitch(), millimetres(1.25));
        EXPECT_EQ(thread->series(), ThreadSeries::fine);
    }
    EXPECT_EQ(parseThread("M12")->pitch(), millimetres(1.75));
    EXPECT_EQ(parseThread("M12"), parseThread("M12x1.75"));
    EXPECT_EQ(parseThread("M12")->series(), ThreadSeries::coarse);
}

TEST(Thread, that_does_not_exist_is_refused_with_those_that_do) {
    EXPECT_THAT(sentenceOf(parseThread("7/16-21")),
                testing::AllOf(IsOneSentence(), HasSubstr("14 (coarse) or 20 (fine)"), HasSubstr("7/16-21 special")));
    EXPECT_THAT(sentenceOf(parseThread("M10x0.9")),
                testing::AllOf(IsOneSentence(), HasSubstr("M10×1.5 (coarse)"), HasSubstr("M10×0.9 special")));
    EXPECT_THAT(sentenceOf(parseThread("7/16-20 UNC")), HasSubstr("contradicts itself"));
    EXPECT_THAT(sentenceOf(parseThread("7/16")), HasSubstr("leaves the pitch open"));
    EXPECT_THAT(sentenceOf(parseThread("M13")), HasSubstr("no coarse thread M13"));
}

TEST(Thread, text_that_is_none_is_refused_in_one_sentence) {
    for (const char* text : {"",
                             "  ",
                             "by hand",
                             "M",
                             "Mx",
                             "M10x",
                             "Mx1.5",
                             "M-10",
                             "M10x1.5x2",
                             "7/15-20",
                             "7/0-20",
                             "/16-20",
                             "7/16-",
                             "-20",
                             "7/16-20.5",
                             "7/16-0",
                             "7/16--20",
                             "#7-32",
                             "half inch",
                             "1e3-20",
                             "999999999999999-20",
                             "999999999999999-20 by hand",
                             "M999999999999999",
                             "M10x999999999",
                             "M0x0 by hand",
                             "1 1 1/8-12",
                             "0-20 by hand",
                             "7/16-999999 by hand",
                             "×",
                             "M×"}) {
        EXPECT_THAT(sentenceOf(parseThread(text)), IsOneSentence()) << text;
    }
}

TEST(Thread, by_hand_keeps_any_sensible_pitch_and_says_so_in_its_name) {
    const auto inch = parseThread("7/16-28 by hand");
    ASSERT_TRUE(inch);
    EXPECT_EQ(inch->series(), ThreadSeries::special);
    EXPECT_EQ(inch->name(), "7/16-28 special");
    const auto metric = parseThread("M10x0.9 by hand");
    ASSERT_TRUE(metric);
    EXPECT_EQ(metric->name(), "M10×0.9 special");
    EXPECT_EQ(parseThread("0.43-20 special")->name(), "0.43-20 special");
    EXPECT_EQ(parseThread("15/32-24 special")->name(), "15/32-24 special");
}

TEST(Thread, with_a_pitch_that_cannot_be_cut_is_not_built) {
    EXPECT_THAT(sentenceOf(Thread::inch(inches(0.5), 0)), IsOneSentence());
    EXPECT_THAT(sentenceOf(Thread::inch(inches(0.5), -13)), IsOneSentence());
    EXPECT_THAT(sentenceOf(Thread::inch(inches(0.5), 2)), HasSubstr("cannot be cut"));
    EXPECT_THAT(sentenceOf(Thread::inch(inches(50), 13)), HasSubstr("outside 0.05 to 4 in"));
    EXPECT_THAT(sentenceOf(Thread::metric(millimetres(10), Length())), HasSubstr("cannot be cut"));
    EXPECT_THAT(sentenceOf(Thread::metric(millimetres(10), millimetres(-1))), IsOneSentence());
    EXPECT_THAT(sentenceOf(Thread::metric(millimetres(0), millimetres(1))), HasSubstr("outside 1 to 100 mm"));
}

TEST(Thread, of_every_table_is_read_back_from_its_own_name) {
    int read = 0;
    for (const auto& size : threadtables::inchSizes) {
        for (const int threads : {size.coarse, size.fine}) {
            const auto thread = Thread::inch(size.nominal(), threads);
            ASSERT_TRUE(thread) << size.label;
            EXPECT_EQ(parseThread(thread->name()), thread) << thread->name();
            EXPECT_NE(thread->series(), ThreadSeries::special);
            ++read;
        }
    }
    for (const auto& size : threadtables::metricSizes) {
        for (const auto pitch :
             {size.coarseMicrons, size.fineMicrons[0], size.fineMicrons[1], size.fineMicrons[2], size.fineMicrons[3]}) {
            if (pitch > 0) {
                const auto thread = Thread::metric(microns(size.nominalMicrons), microns(pitch));
                ASSERT_TRUE(thread) << size.nominalMicrons;
                EXPECT_EQ(parseThread(thread->name()), thread) << thread->name();
                EXPECT_LT(thread->minorDiameter(), thread->pitchDiameter());
                EXPECT_LT(thread->pitchDiameter(), thread->nominal());
                ++read;
            }
        }
    }
    EXPECT_GT(read, 90);
}

TEST(Thread, of_any_text_is_read_back_from_its_name_or_refused_with_a_reason) {
    const std::vector<std::string> pieces{"M",  "m",  "x",   "×",   "-",       "/",      "#",    ".",
                                          ",",  " ",  "0",   "1",   "2",       "5",      "7",    "16",
                                          "10", "20", "UNF", "unc", "by hand", "999999", "\xff", "in"};
    std::mt19937 random(20'240'501); // the same texts every time
    std::uniform_int_distribution<std::size_t> piece(0, pieces.size() - 1);
    std::uniform_int_distribution<int> length(1, 9);
    int read = 0;
    for (int i = 0; i < 200'000; ++i) {
        std::string text;
        for (int n = length(random); n > 0; --n) {
            text += pieces[piece(random)];
        }
        const auto thread = parseThread(text);
        if (thread) {
            ++read;
            ASSERT_EQ(parseThread(thread->name()), thread) << text << " became " << thread->name();
            ASSERT_GT(thread->stressArea(), Area()) << text;
        } else {
            ASSERT_TRUE(thread.error().sentence.ends_with('.')) << text;
            ASSERT_LT(thread.error().sentence.size(), 300U) << text;
        }
    }
    EXPECT_GT(read, 100);
}

TEST(Thread, refusal_of_a_very_long_text_stays_short) {
    EXPECT_LT(sentenceOf(parseThread(std::string(1'000'000, 'x'))).size(), 300U);
}
