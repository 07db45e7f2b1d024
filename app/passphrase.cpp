// SPDX-License-Identifier: GPL-3.0-or-later
#include "passphrase.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <session/now.h>
#include <session/signing.h>
#include <shop/key_folder.h>
#include <termios.h>
#include <unistd.h>

namespace caprail::verbs {

namespace {

constexpr std::size_t longestPassphrase = 1024;

/// The first line that a descriptor gives.
Result<Passphrase> readLine(int descriptor) {
    std::string line;
    line.reserve(longestPassphrase + 1); // so that growing leaves no copy behind
    char c = 0;
    ssize_t got = 0;
    while ((got = ::read(descriptor, &c, 1)) == 1 && c != '\n') {
        line += c;
        if (line.size() > longestPassphrase) {
            return refuse("The passphrase is longer than 1024 bytes: take a shorter one.");
        }
    }
    if (got < 0) {
        return refuse(std::string("The passphrase cannot be read: ") + std::strerror(errno) + ".");
    }
    return Passphrase(std::move(line));
}

/// The terminal, with what is typed not shown while this lives.
class SilentTerminal {
public:
    SilentTerminal() : m_file(::open("/dev/tty", O_RDWR | O_CLOEXEC | O_NOCTTY)) {
        if (m_file >= 0 && ::tcgetattr(m_file, &m_before) == 0) {
            termios silent = m_before;
            silent.c_lflag &= ~static_cast<tcflag_t>(ECHO);
            m_isSilent = ::tcsetattr(m_file, TCSAFLUSH, &silent) == 0;
        }
    }
    ~SilentTerminal() {
        if (m_isSilent) {
            (void)::tcsetattr(m_file, TCSAFLUSH, &m_before);
        }
        if (m_file >= 0) {
            ::close(m_file);
        }
    }
    SilentTerminal(const SilentTerminal&) = delete;
    SilentTerminal& operator=(const SilentTerminal&) = delete;

    [[nodiscard]] bool isGood() const { return m_isSilent; }
    [[nodiscard]] int file() const { return m_file; }
    void print(const std::string& text) const { (void)!::write(m_file, text.data(), text.size()); }

private:
    int m_file;
    termios m_before{};
    bool m_isSilent = false;
};

} // namespace

Passphrase::~Passphrase() {
    ::explicit_bzero(m_text.data(), m_text.size());
}

Result<Passphrase> askPassphrase(const Call& call, const QString& question) {
    if (call.has("passphrase-fd")) {
        bool isNumber = false;
        const int descriptor = call.value("passphrase-fd").toInt(&isNumber);
        if (!isNumber || descriptor < 0) {
            return refuse("--passphrase-fd takes the number of an open file, such as 3.");
        }
        return readLine(descriptor);
    }
    const SilentTerminal terminal;
    if (!terminal.isGood()) {
        return refuse("There is no terminal to ask for the passphrase on: give it through an open file and "
                      "--passphrase-fd.");
    }
    terminal.print((question + QStringLiteral(": ")).toStdString());
    auto typed = readLine(terminal.file());
    terminal.print("\n");
    return typed;
}

Result<OpenKey> openKey(const Call& call) {
    const auto key = KeyFolder(keyFolderPath()).choose(pathBytes(call.value("key")), dateOf(now()));
    if (!key) {
        return tl::unexpected(key.error());
    }
    Result<SecretKey> secret = refuse({});
    if (key->isProtected()) {
        const auto passphrase =
            askPassphrase(call, QStringLiteral("Passphrase of the key “%1”").arg(lineOf(key->note.name)));
        if (!passphrase) {
            return tl::unexpected(passphrase.error());
        }
        secret = unlock(*key, passphrase->text());
    } else {
        secret = unlock(*key, {});
    }
    return secret ? Result<OpenKey>(OpenKey{key->note, *secret}) : Result<OpenKey>(tl::unexpected(secret.error()));
}

} // namespace caprail::verbs
