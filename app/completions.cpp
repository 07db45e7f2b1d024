// SPDX-License-Identifier: GPL-3.0-or-later
/// Scripts for the shells, made from the table of verbs.
#include "verb_table.h"

namespace caprail::verbs {

namespace {

QString q(const char* utf8) {
    return QString::fromUtf8(utf8);
}

QStringList optionNames(const VerbText& verb) {
    QStringList names;
    for (const OptionText& option : verb.options) {
        names << QStringLiteral("--") + q(option.name);
    }
    return names;
}

QStringList verbNames() {
    QStringList names;
    for (const VerbText& verb : allVerbs()) {
        names << q(verb.name);
    }
    return names;
}

/// In single quotes for all three shells: what stands in the table holds no apostrophe but this turns it anyway.
QString quoted(QString text) {
    return QLatin1Char('\'') + text.replace(QLatin1Char('\''), QStringLiteral("’")) + QLatin1Char('\'');
}

QString forBash() {
    QString script = QStringLiteral("# bash completion for caprail; made by: caprail help --completions bash\n"
                                    "_caprail() {\n"
                                    "    local cur=${COMP_WORDS[COMP_CWORD]} options=\n"
                                    "    COMPREPLY=()\n"
                                    "    case ${COMP_WORDS[1]} in\n");
    for (const VerbText& verb : allVerbs()) {
        script += QStringLiteral("        %1) options='%2' ;;\n").arg(q(verb.name), optionNames(verb).join(QLatin1Char(' ')));
    }
    script += QStringLiteral("    esac\n"
                             "    if [[ $cur == -* ]]; then\n"
                             "        mapfile -t COMPREPLY < <(compgen -W \"$options --help\" -- \"$cur\")\n"
                             "        return\n"
                             "    fi\n"
                             "    compopt -o filenames 2>/dev/null\n"
                             "    mapfile -t COMPREPLY < <(compgen -f -- \"$cur\")\n"
                             "    if ((COMP_CWORD == 1)) || [[ ${COMP_WORDS[1]} == help ]]; then\n"
                             "        mapfile -t -O ${#COMPREPLY[@]} COMPREPLY < <(compgen -W '%1' -- \"$cur\")\n"
                             "    fi\n"
                             "}\n"
                             "complete -F _caprail caprail\n")
                  .arg(verbNames().join(QLatin1Char(' ')));
    return script;
}

QString forZsh() {
    QString script = QStringLiteral("#compdef caprail\n# made by: caprail help --completions zsh\nlocal -a verbs\nverbs=(\n");
    for (const VerbText& verb : allVerbs()) {
        script += QStringLiteral("    %1\n").arg(
            quoted(q(verb.name) + QLatin1Char(':') + q(verb.calls.front().purpose).replace(QLatin1Char(':'), QStringLiteral("\\:"))));
    }
    script += QStringLiteral(")\nif ((CURRENT == 2)); then\n    _describe verb verbs\n    _files\n    return\nfi\n"
                             "case $words[2] in\n");
    for (const VerbText& verb : allVerbs()) {
        QStringList specs;
        for (const OptionText& option : verb.options) {
            QString spec = QStringLiteral("--%1[%2]").arg(q(option.name), q(option.meaning).remove(QLatin1Char(']')));
            if (*option.value != '\0') {
                spec += QStringLiteral(":%1:_files").arg(q(option.value));
            }
            specs << quoted(spec);
        }
        specs << QStringLiteral("'*:file:_files'");
        script += QStringLiteral("    %1) _arguments %2 ;;\n").arg(q(verb.name), specs.join(QLatin1Char(' ')));
    }
    return script + QStringLiteral("    *) _files ;;\nesac\n");
}

QString forFish() {
    QString script = QStringLiteral("# fish completion for caprail; made by: caprail help --completions fish\n");
    for (const VerbText& verb : allVerbs()) {
        script += QStringLiteral("complete -c caprail -n __fish_use_subcommand -a %1 -d %2\n")
                      .arg(q(verb.name), quoted(q(verb.calls.front().purpose)));
        for (const OptionText& option : verb.options) {
            script += QStringLiteral("complete -c caprail -n '__fish_seen_subcommand_from %1' -l %2%3 -d %4\n")
                          .arg(q(verb.name), q(option.name), *option.value == '\0' ? QString() : QStringLiteral(" -r"),
                               quoted(q(option.meaning)));
        }
    }
    return script;
}

} // namespace

QString completionsFor(const QString& shell) {
    return shell == QLatin1String("bash")   ? forBash()
           : shell == QLatin1String("zsh")  ? forZsh()
           : shell == QLatin1String("fish") ? forFish()
                                            : QString();
}

} // namespace caprail::verbs
