// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_line.h"

#include "call.h"
#include "verbs.h"

#include <QFileInfo>
#include <algorithm>
#include <array>
#include <cstdio>
#include <utility>

namespace caprail {

std::optional<int> runVerb(const QStringList& arguments) {
    using Verb = int (*)(const QStringList&);
    static constexpr std::array<std::pair<const char*, Verb>, 10> table{{{"plan", verbs::plan},
                                                                         {"show", verbs::show},
                                                                         {"check", verbs::check},
                                                                         {"sheet", verbs::sheet},
                                                                         {"export", verbs::exportRecord},
                                                                         {"import", verbs::importLedger},
                                                                         {"append", verbs::append},
                                                                         {"salvage", verbs::salvage},
                                                                         {"shop", verbs::shop},
                                                                         {"handover", verbs::handOver}}};
    if (arguments.isEmpty()) {
        return {};
    }
    const QString& first = arguments.front();
    for (const auto& [name, run] : table) {
        if (first == QLatin1String(name)) {
            return run(arguments.mid(1));
        }
    }
    if (first == QLatin1String("--help") || first == QLatin1String("-h") || first == QLatin1String("help")) {
        std::fputs(qPrintable(verbs::usage()), stdout);
        return done;
    }
    if (first == QLatin1String("--version")) {
        std::puts("caprail " CAPRAIL_VERSION);
        return done;
    }
    if (first.startsWith(QLatin1Char('-'))) {
        return verbs::complain(wrongUsage, "there is no option " + first + "\n" + verbs::usage());
    }
    // A verb misspelt is no record to show in a window that a script would wait for.
    const bool isBareWord = std::ranges::all_of(first, [](QChar c) { return c.isLetter(); });
    if (isBareWord && !QFileInfo::exists(first)) {
        return verbs::complain(wrongUsage, "there is no verb and no record “" + first + "”\n" + verbs::usage());
    }
    return {};
}

bool needsPainting(const QString& verb) {
    return verb == QLatin1String("sheet") || verb == QLatin1String("handover");
}

} // namespace caprail
