// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/findings.h>

#include <algorithm>
#include <charconv>

namespace caprail {

std::string nextFinding(const Facts& facts) {
    int largest = 0;
    for (const auto& [name, finding] : facts.findings) {
        int number = 0;
        if (name.size() > 1 && name.front() == 'F') {
            std::from_chars(name.data() + 1, name.data() + name.size(), number);
        }
        largest = std::max(largest, number);
    }
    return "F" + std::to_string(largest + 1);
}

} // namespace caprail
