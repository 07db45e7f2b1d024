// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What an index holds of one record's figures, read back by hand.
#include <shop/shop_index.h>

namespace caprail::shoptest {

inline RecordFigures figuresIn(ShopIndex& index, std::int64_t id) {
    RecordFigures figures;
    const auto each = [&](const char* sql, auto take) {
        auto query = index.connection().prepare(sql);
        ASSERT_TRUE(query) << query.error().sentence;
        query->bind(1, id);
        for (auto more = query->step();; more = query->step()) {
            ASSERT_TRUE(more) << more.error().sentence;
            if (!*more) {
                return;
            }
            take(*query);
        }
    };
    const auto dayAt = [](const Query& q, int at) {
        return q.isNull(at) ? std::nullopt : std::optional(Date{q.integer(at)});
    };
    each("SELECT build, band, place, value_nm, state, lower_nm, upper_nm FROM banded WHERE listing = ? ORDER BY rowid",
         [&](const Query& q) {
             figures.banded.push_back(
                 {q.integer(0), q.text(1), q.text(2), Length(q.integer(3)), static_cast<CheckState>(q.integer(4)),
                  q.isNull(5) ? std::nullopt
                              : std::optional(*Band::between(Length(q.integer(5)), Length(q.integer(6))))});
         });
    each(
        "SELECT fastener, wrench, person, pulled, moved, largest_mdeg FROM movement WHERE listing = ? ORDER BY rowid",
        [&](const Query& q) {
            figures.pulls.push_back({q.text(0), q.text(1), q.text(2), q.integer(3), q.integer(4), Angle(q.integer(5))});
        });
    each("SELECT name, serial, kind, calibrated, due, due_cycles, cycles FROM instrument WHERE listing = ? ORDER BY "
         "rowid",
         [&](const Query& q) {
             figures.instruments.push_back({q.text(0), q.text(1), static_cast<InstrumentType>(q.integer(2)),
                                            dayAt(q, 3), dayAt(q, 4),
                                            q.isNull(5) ? std::nullopt : std::optional(q.integer(5)), q.integer(6)});
         });
    return figures;
}

} // namespace caprail::shoptest
