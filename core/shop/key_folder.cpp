// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/key_folder.h>

#include <QByteArray>
#include <algorithm>
#include <base/say.h>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <shop/entry_text.h>
#include <store/file/new_file.h>
#include <store/file/read_file.h>
#include <sys/stat.h>

namespace caprail {

namespace {

constexpr std::int64_t largestKeyFile = 4096;
constexpr const char* keyEnding = ".key";

Result<SigningKey> readKey(const std::string& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0) {
        return refuse(Core::say("The key file %1 cannot be looked at: %2.", path, std::strerror(errno)));
    }
    if ((status.st_mode & 077) != 0) {
        return refuse(Core::say("The key file %1 can be read by others, who may have copied it: make it yours alone "
                                "(chmod 600), or make a new key.",
                                path));
    }
    const auto text = readWholeFile(path, largestKeyFile);
    if (!text) {
        return tl::unexpected(text.error());
    }
    auto key = keyFromText(*text);
    return key ? key : Result<SigningKey>(refuse(path + ": " + key.error().sentence));
}

std::string namesOf(const std::vector<SigningKey>& keys) {
    std::string names;
    for (const SigningKey& key : keys) {
        names += (names.empty() ? "“" : ", “") + key.note.name + "”";
    }
    return names;
}

} // namespace

KeyFolder::Listing KeyFolder::list() const {
    Listing listing;
    std::error_code error;
    std::vector<std::string> paths;
    for (const auto& file : std::filesystem::directory_iterator(m_path, error)) {
        if (file.path().extension() == keyEnding) {
            paths.push_back(file.path().string());
        }
    }
    std::ranges::sort(paths);
    for (const std::string& path : paths) {
        if (auto key = readKey(path)) {
            listing.keys.push_back(std::move(*key));
        } else {
            listing.problems.push_back(key.error().sentence);
        }
    }
    std::ranges::sort(listing.keys, {}, [](const SigningKey& key) { return key.note.name; });
    return listing;
}

const SigningKey* KeyFolder::Listing::named(std::string_view name) const {
    const auto at = std::ranges::find(keys, name, [](const SigningKey& key) { return std::string_view(key.note.name); });
    return at == keys.end() ? nullptr : &*at;
}

Result<void> KeyFolder::keep(const SigningKey& key) const {
    std::error_code error;
    std::filesystem::create_directories(m_path, error);
    if (::chmod(m_path.c_str(), 0700) != 0) {
        return refuse(Core::say("The folder of keys, %1, cannot be made: %2.", m_path, std::strerror(errno)));
    }
    if (list().named(key.note.name) != nullptr) {
        return refuse(Core::say("There is a key “%1” already, and it is not written over: give the new one another "
                                "name.",
                                key.note.name));
    }
    const std::string path = m_path + "/" + safeName(key.note.name, "key") + keyEnding;
    auto written = makeNewFile(path, keyText(key));
    if (written && ::chmod(path.c_str(), 0600) != 0) { // others could not enter the folder meanwhile
        return refuse(Core::say("The key file %1 cannot be made yours alone: %2.", path, std::strerror(errno)));
    }
    return written;
}

Result<SigningKey> KeyFolder::choose(const std::string& name, Date today) const {
    const Listing listing = list();
    if (listing.keys.empty()) {
        return refuse(listing.problems.empty()
                          ? Core::say("There is no signing key in %1 yet: “caprail key new” makes one.", m_path)
                          : listing.problems.front());
    }
    if (!name.empty()) {
        const SigningKey* const at = listing.named(name);
        if (at == nullptr) {
            return refuse(Core::say("There is no key “%1” here; there is %2. A lost key cannot be made again: make a new "
                                    "one and tell its fingerprint. What the lost one signed stays signed.",
                                    name, namesOf(listing.keys)));
        }
        const auto valid = mayBeUsedOn(at->note, today);
        return valid ? Result<SigningKey>(*at) : Result<SigningKey>(tl::unexpected(valid.error()));
    }
    std::vector<SigningKey> usable;
    std::ranges::copy_if(listing.keys, std::back_inserter(usable),
                         [&](const SigningKey& key) { return mayBeUsedOn(key.note, today).has_value(); });
    if (usable.empty()) {
        return tl::unexpected(mayBeUsedOn(listing.keys.back().note, today).error());
    }
    if (usable.size() > 1) {
        return refuse(Core::say("There are several keys: %1. Say which one signs.", namesOf(usable)));
    }
    return usable.front();
}

std::string publicKeyPem(const PublicKey& key) {
    // SubjectPublicKeyInfo of id-Ed25519 (RFC 8410, section 4): this much, and then the key.
    static constexpr std::uint8_t head[] = {0x30, 0x2a, 0x30, 0x05, 0x06, 0x03, 0x2b, 0x65, 0x70, 0x03, 0x21, 0x00};
    QByteArray der(reinterpret_cast<const char*>(head), sizeof head);
    der.append(reinterpret_cast<const char*>(key.bytes.data()), static_cast<qsizetype>(key.bytes.size()));
    return "-----BEGIN PUBLIC KEY-----\n" + der.toBase64().toStdString() + "\n-----END PUBLIC KEY-----\n";
}

} // namespace caprail
