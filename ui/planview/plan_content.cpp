// SPDX-License-Identifier: GPL-3.0-or-later
#include <planview/plan_content.h>

namespace caprail {

namespace {

/// How many fasteners the groups of a record count in each row.
std::map<FastenerKind, int> rowsOf(const Facts& facts) {
    std::map<FastenerKind, int> rows;
    for (const auto& [key, group] : facts.groups) {
        if (!hasSides(key.first)) {
            rows[key.first] = static_cast<int>(group.what.count);
        }
    }
    return rows;
}

} // namespace

PlanContent planContent(const Facts& facts) {
    PlanContent content{*facts.layout, {}, {}, {}, {}, {}, {}, {}, {}};
    content.rows = rowsOf(facts);
    return content;
}

} // namespace caprail
