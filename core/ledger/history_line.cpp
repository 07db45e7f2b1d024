// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/history_line.h>

#include <ledger/entry_sentence.h>

namespace caprail {

std::string historyLine(const Body& body, const Units& units) {
    std::string line;
    for (const std::string& part : body.visit(EntryTeller(units))) {
        line += (line.empty() ? "" : " · ") + part;
    }
    return line;
}

} // namespace caprail
