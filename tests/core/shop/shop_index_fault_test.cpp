// SPDX-License-Identifier: GPL-3.0-or-later
/// Each allocation that SQLite makes while a row is put into the index fails once, one after another, until none is
/// left to fail. What was put without a complaint is there whole: the row, the words that find it, and its figures.
#include "../store/faulty_memory.h"
#include "figures_of.h"
#include "shop_records.h"

#include <shop/shop_index.h>

namespace caprail {
namespace {

using namespace shoptest;

ShopRow rowOf(const std::string& path) {
    ShopRow r;
    r.file = {path, 4096, 7, 8, 9};
    r.reading = FileReading::assessed;
    return r;
}

/// Whether the index holds the row of this path with everything that belongs to it, and nothing of it else.
void expectWhole(ShopIndex& index, const std::string& path, const std::string& term, const RecordFigures& figures) {
    const auto row = index.find(path);
    ASSERT_TRUE(row && *row);
    const auto ids = index.search(term);
    ASSERT_TRUE(ids);
    EXPECT_EQ(*ids, std::vector<std::int64_t>{(*row)->id}) << "found by its word";
    EXPECT_EQ(figuresIn(index, (*row)->id), figures);
}

TEST(IndexOutOfMemory, what_was_put_without_a_complaint_has_its_words_and_its_figures) {
    const Folder folder;
    Maker maker;
    maker.begin("Orrin Vale", "V8");
    const RecordFigures figures = figuresOf(maker.ledger);
    int refusals = 0;
    for (int n = 1;; ++n) {
        const std::string root = "/srv/" + std::to_string(n); // a fresh one, whose statements are not prepared yet
        auto index = ShopIndex::open(folder / "cache", root);
        ASSERT_TRUE(index) << (index ? "" : index.error().sentence);
        ShopRow row = rowOf("a.caprail");
        FaultyMemory::failAt(n);
        const auto put = index->together([&] { return index->put(row, "spun a rod bearing", figures); });
        const bool hasFailed = FaultyMemory::calls >= n;
        FaultyMemory::failAt(0);
        if (put) {
            expectWhole(*index, "a.caprail", "spun", figures);
        } else {
            ++refusals;
            EXPECT_FALSE(put.error().sentence.empty());
            const auto rows = index->rows();
            EXPECT_TRUE(rows && rows->empty()) << "what was refused leaves nothing";
        }
        ASSERT_FALSE(testing::Test::HasFailure()) << "with allocation " << n << " failing";
        ShopIndex::discard(folder / "cache", root);
        if (!hasFailed) {
            break;
        }
    }
    EXPECT_GT(refusals, 50);
}

} // namespace
} // namespace caprail

int main(int argc, char** argv) {
    caprail::FaultyMemory::install();
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
