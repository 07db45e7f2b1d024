// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_line.h"
#include "verbs.h"

#include <QApplication>
#include <QIcon>
#include <QLocale>
#include <cerrno>
#include <csignal>
#include <fcntl.h>
#include <session/language.h>
#include <store/file/path_text.h>
#include <unistd.h>
#include <window/run.h>

namespace {

QStringList argumentsOf(int argc, char** argv) {
    QStringList list;
    for (int i = 1; i < argc; ++i) {
        list << caprail::qtPath(argv[i]); // a file's name may be no text
    }
    return list;
}

/// Standard input or output that was closed by whoever called (`>&-`) would be the number of the next file that is
/// opened, and what is printed would go into that one. Each is given to something that cannot be used that way, so that
/// it is refused as before.
void keepStandardNumbers() {
    for (const int number : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO}) {
        if (::fcntl(number, F_GETFD) < 0 && errno == EBADF) {
            (void)::open("/dev/null", number == STDIN_FILENO ? O_WRONLY : O_RDONLY); // takes the lowest free number
        }
    }
}

void nameProgram() {
    QCoreApplication::setApplicationName(QStringLiteral("caprail"));
    QCoreApplication::setOrganizationName(QStringLiteral("caprail"));
    QCoreApplication::setApplicationVersion(QStringLiteral(CAPRAIL_VERSION));
}

/// Window and documents are in the chosen language. The command line speaks English everywhere, so that scripts can
/// read it.
void speakChosenLanguage() {
    caprail::speak(caprail::languageFor(caprail::chosenLanguage(), QLocale::system()));
}

/// A verb runs without a display: the sheet paints on Qt's offscreen platform, the others need no painting at all.
std::optional<int> runWithoutWindow(int argc, char** argv, const QStringList& arguments) {
    if (!arguments.isEmpty() && caprail::needsPainting(arguments.front())) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        const QApplication application(argc, argv);
        nameProgram();
        speakChosenLanguage();
        return caprail::runVerb(arguments);
    }
    const QCoreApplication application(argc, argv);
    nameProgram();
    return caprail::runVerb(arguments);
}

} // namespace

int main(int argc, char** argv) {
    keepStandardNumbers();
    // A file that may not grow as large is refused in a sentence, like a full disk.
    (void)std::signal(SIGXFSZ, SIG_IGN);
    const QStringList arguments = argumentsOf(argc, argv);
    const bool isShop = !arguments.isEmpty() && arguments.front() == QLatin1String("shop");
    const QString shopFolder = isShop ? caprail::verbs::shopWindowFolder(arguments.mid(1)) : QString();
    if (!arguments.isEmpty() && shopFolder.isEmpty()) {
        if (const auto exitCode = runWithoutWindow(argc, argv, arguments)) {
            return *exitCode;
        }
    }
    const QApplication application(argc, argv);
    nameProgram();
    speakChosenLanguage();
    return shopFolder.isEmpty() ? caprail::runWindows(arguments) : caprail::runShop(shopFolder);
}
