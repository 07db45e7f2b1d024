// SPDX-License-Identifier: GPL-3.0-or-later
#include "call.h"
#include "command_line.h"
#include "verbs.h"

#include <QApplication>
#include <QIcon>
#include <QLocale>
#include <QUrl>
#include <algorithm>
#include <catalogue/place.h>
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <fcntl.h>
#include <session/language.h>
#include <session/signs.h>
#include <store/file/path_text.h>
#include <unistd.h>
#include <window/run.h>

namespace {

QStringList argumentsOf(int argc, char** argv) {
    QStringList list;
    for (int i = 1; i < argc; ++i) {
        const QString argument = caprail::qtPath(argv[i]); // a file's name may be no text
        // Some launchers and terminals hand over addresses.
        list << (argument.startsWith(QLatin1String("file://")) ? QUrl(argument).toLocalFile() : argument);
    }
    return list;
}

/// A window needs a display; Qt would end the process with a core dump.
bool hasDisplay(const QStringList& arguments) {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM") ||
           std::any_of(arguments.begin(), arguments.end(), [](const QString& argument) {
               return argument == QLatin1String("-platform") || argument == QLatin1String("--platform");
           });
}

/// The last word of Qt before it gives up, which is that the display cannot be opened: a sentence, and an exit code that
/// the man page knows.
void endOnFatal(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (type != QtFatalMsg) {
        std::fprintf(stderr, "%s\n", qPrintable(qFormatLogMessage(type, context, message)));
        return;
    }
    caprail::verbs::complain(caprail::unusable, QStringLiteral("the window cannot be opened: ") + message.simplified());
    std::_Exit(caprail::unusable);
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
    caprail::loadSigns();
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
    caprail::askForTls(); // before there are threads
    const QStringList arguments = argumentsOf(argc, argv);
    const bool isShop = !arguments.isEmpty() && arguments.front() == QLatin1String("shop");
    const QString shopFolder = isShop ? caprail::verbs::shopWindowFolder(arguments.mid(1)) : QString();
    const QString shopDatabase = isShop ? caprail::verbs::shopWindowDatabase(arguments.mid(1)) : QString();
    // What the launcher's actions call.
    const bool isNewRecord = arguments == QStringList{QStringLiteral("--new-record")};
    const bool isLastShop = arguments == QStringList{QStringLiteral("--shop")};
    const bool isBusService = arguments == QStringList{QStringLiteral("--bus-service")}; // what the session's bus calls
    if (!arguments.isEmpty() && shopFolder.isEmpty() && shopDatabase.isEmpty() && !isNewRecord && !isLastShop &&
        !isBusService) {
        if (const auto exitCode = runWithoutWindow(argc, argv, arguments)) {
            return *exitCode;
        }
    }
    if (!hasDisplay(arguments)) {
        return caprail::verbs::complain(caprail::unusable,
                                        QStringLiteral("there is no display for the window: set DISPLAY, or look at a record "
                                                       "with “caprail show FILE”. “caprail help” lists the verbs."));
    }
    qInstallMessageHandler(endOnFatal);
    const QApplication application(argc, argv); // takes its own options out of argv
    qInstallMessageHandler(nullptr);
    nameProgram();
    speakChosenLanguage();
    if (isBusService) {
        const auto ended = caprail::runBusService();
        return ended ? *ended
                     : caprail::verbs::complain(
                           caprail::unusable,
                           QStringLiteral("the desktop's calls cannot be answered: there is no session "
                                          "bus, or another Caprail answers them."));
    }
    if (isNewRecord) {
        return caprail::runNewRecord();
    }
    if (isLastShop || !shopFolder.isEmpty()) {
        return caprail::runShop(shopFolder);
    }
    if (!shopDatabase.isEmpty()) {
        return caprail::runShopDatabase(shopDatabase);
    }
    QStringList files = argumentsOf(argc, argv);
    if (const auto end = files.indexOf(QStringLiteral("--")); end >= 0) {
        files.removeAt(end);
    } else if (!files.isEmpty() && files.front().startsWith(QLatin1Char('-'))) {
        return caprail::verbs::complain(caprail::wrongUsage, QStringLiteral("there is no option ") + files.front());
    }
    return caprail::runWindows(files);
}
