// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_line.h"

#include "call.h"
#include "verb_table.h"
#include "verbs.h"

#include <QFileInfo>
#include <algorithm>
#include <array>

namespace caprail {

namespace {

/// Options of the window system's own, which QApplication takes for itself.
bool isQtOption(const QString& argument) {
    static constexpr std::array<const char*, 14> names{"platform", "platformpluginpath", "platformtheme", "plugin", "style",
                                                       "stylesheet", "qwindowgeometry", "qwindowicon", "qwindowtitle",
                                                       "geometry", "display", "reverse", "session", "title"};
    const QString name = argument.mid(argument.startsWith(QLatin1String("--")) ? 2 : 1).section(QLatin1Char('='), 0, 0);
    return argument.startsWith(QLatin1Char('-')) &&
           std::ranges::any_of(names, [&](const char* known) { return name == QLatin1String(known); });
}

std::optional<int> runNamedVerb(const QStringList& arguments) {
    if (arguments.isEmpty()) {
        return {};
    }
    const QString& first = arguments.front();
    if (const verbs::VerbText* verb = verbs::verbNamed(first)) {
        const QStringList behind = arguments.mid(1);
        const QStringList options = behind.mid(0, behind.indexOf(QStringLiteral("--"))); // -1: all of it
        if (options.contains(QStringLiteral("--help")) || options.contains(QStringLiteral("-h"))) {
            verbs::print(verbs::helpOf(*verb));
            return done;
        }
        return verb->run(behind);
    }
    if (first == QLatin1String("--help") || first == QLatin1String("-h")) {
        return verbs::help(arguments.mid(1));
    }
    if (first == QLatin1String("--version") || first == QLatin1String("-v") || first == QLatin1String("-V")) {
        verbs::print(QStringLiteral("caprail " CAPRAIL_VERSION "\n"));
        return done;
    }
    if (first == QLatin1String("--") || isQtOption(first)) {
        return {};
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
