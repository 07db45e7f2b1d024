// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Keys and their passphrases on the command line.
#include "call.h"

#include <signing/signing_key.h>

namespace caprail::verbs {

/// A passphrase that is wiped from memory when it is let go of.
class Passphrase {
public:
    explicit Passphrase(std::string text) : m_text(std::move(text)) {}
    Passphrase(Passphrase&&) noexcept = default;
    Passphrase(const Passphrase&) = delete;
    Passphrase& operator=(const Passphrase&) = delete;
    Passphrase& operator=(Passphrase&&) = delete;
    ~Passphrase();
    [[nodiscard]] const std::string& text() const { return m_text; }

private:
    std::string m_text;
};

/// From the open file that `--passphrase-fd` names (its first line), else asked on the terminal without being shown.
/// Refuses where there is neither, and one longer than 1024 bytes.
Result<Passphrase> askPassphrase(const Call& call, const QString& question);

/// A key that is open, to sign with.
struct OpenKey {
    KeyNote note;
    SecretKey secret;
};
/// The key that `--key` names, or the only one there is; asks for its passphrase where it has one.
Result<OpenKey> openKey(const Call& call);

/// Signs the record `call.at(0)` with that key and says so; the exit code where it could not be signed, else nothing.
std::optional<int> signNow(const Call& call);

} // namespace caprail::verbs
