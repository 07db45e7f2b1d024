// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/signing.h>

#include <QStandardPaths>
#include <assessment/signatures.h>
#include <base/say.h>
#include <cerrno>
#include <cstring>
#include <session/now.h>
#include <span>
#include <store/file/path_text.h>
#include <unistd.h>

namespace caprail {

namespace {

Result<void> fillRandom(std::span<std::uint8_t> bytes) {
    if (::getentropy(bytes.data(), bytes.size()) != 0) {
        return refuse(Core::say("The system gives no random numbers (%1), and without them there is no key.",
                                std::strerror(errno)));
    }
    return {};
}

} // namespace

std::string keyFolderPath() {
    return pathBytes(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)) + "/keys";
}

Result<SigningKey> makeRandomKey(const std::string& name, std::optional<Date> from, std::optional<Date> until,
                                 std::string_view passphrase) {
    std::array<std::uint8_t, 32> bytes{};
    std::array<std::uint8_t, 16> salt{};
    std::array<std::uint8_t, 12> nonce{};
    for (const auto& filled : {fillRandom(bytes), fillRandom(salt), fillRandom(nonce)}) {
        if (!filled) {
            return tl::unexpected(filled.error());
        }
    }
    auto key = makeKey(name, from, until, SecretKey(bytes));
    ::explicit_bzero(bytes.data(), bytes.size());
    return key && !passphrase.empty() ? protect(*key, passphrase, salt, nonce) : key;
}

Result<std::int64_t> signRecord(RecordSession& session, const KeyNote& key, const SecretKey& secret) {
    if (session.isReadOnly()) {
        return refuse(session.readOnlyReason().toStdString());
    }
    if (!session.unstored().empty()) {
        return refuse(Core::say("Entries wait to be stored: sign once they are, so that the signature is over them too."));
    }
    auto signature = signLastSeal(session.ledger(), key, secret, dateOf(now()));
    return signature ? session.append(std::move(*signature))
                     : Result<std::int64_t>(tl::unexpected(signature.error()));
}

} // namespace caprail
