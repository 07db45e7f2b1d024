// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_line.h"

#include "call.h"
#include "verbs.h"

#include <QFileInfo>
#include <algorithm>
#include <array>
#include <utility>

namespace caprail {

namespace {

std::optional<int> runNamedVerb(const QStringList& arguments) {
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
        verbs::print(verbs::usage());
        return done;
    }
    if (first == QLatin1String("--version")) {
        verbs::print(QStringLiteral("caprail " CAPRAIL_VERSION "\n"));
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

} // namespace

std::optional<int> runVerb(const QStringList& arguments) {
    const auto exitCode = runNamedVerb(arguments);
    return exitCode ? std::optional(verbs::finish(*exitCode)) : std::nullopt;
}

bool needsPainting(const QString& verb) {
    return verb == QLatin1String("sheet") || verb == QLatin1String("handover");
}

} // namespace caprail
