// SPDX-License-Identifier: GPL-3.0-or-later
/// Appends through the window's own session until it is killed, and prints each number once the session announces it.
/// Every tenth entry has a photo's bytes. Used by kill_test.cpp.
#include <QCoreApplication>
#include <cstdio>
#include <session/record_session.h>
#include <string>
#include <unistd.h>

int main(int argc, char** argv) {
    using namespace caprail;
    const QCoreApplication application(argc, argv);
    if (argc != 2) {
        return 64;
    }
    auto session = RecordSession::open(QString::fromLocal8Bit(argv[1]));
    if (!session || (*session)->isReadOnly()) {
        std::fprintf(stderr, "%s\n",
                     session ? qPrintable((*session)->readOnlyReason()) : session.error().sentence.c_str());
        return 2;
    }
    QObject::connect(session->get(), &RecordSession::stored, [](qint64 sequence) {
        const std::string line = std::to_string(sequence) + '\n';
        if (::write(STDOUT_FILENO, line.data(), line.size()) != static_cast<ssize_t>(line.size())) {
            std::_Exit(3);
        }
    });
    for (std::int64_t n = 1;; ++n) {
        const auto stored = n % 10 == 0 ? (*session)->attach({"", "photo.jpg", "image/jpeg", "", "", "", 0},
                                                             QByteArray(20'000, static_cast<char>(n / 10)))
                                        : (*session)->append(NoteAdded{"", "note " + std::to_string(n)});
        if (!stored) {
            std::fprintf(stderr, "%s\n", stored.error().sentence.c_str());
            return 1;
        }
    }
}
