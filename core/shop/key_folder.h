// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <signing/signing_key.h>
#include <string_view>
#include <vector>

namespace caprail {

/// The signing keys of one person: a folder of small text files (`NAME.key`), which nobody else may read.
class KeyFolder {
public:
    explicit KeyFolder(std::string path) : m_path(std::move(path)) {}

    struct Listing {
        std::vector<SigningKey> keys;      ///< by name
        std::vector<std::string> problems; ///< a sentence for each file that cannot be used
        /// Null where there is none of that name.
        [[nodiscard]] const SigningKey* named(std::string_view name) const;
    };
    /// Passes over files that cannot be used, and says why: no text of a key, or readable by others (it must be 0600).
    /// A folder that does not exist holds no key.
    [[nodiscard]] Listing list() const;

    /// Keeps a new key in a file of mode 0600, in a folder of mode 0700. Refuses a name that is taken: no key is ever
    /// written over.
    [[nodiscard]] Result<void> keep(const SigningKey& key) const;

    /// The key of that name; without one, the only key there is that is valid on `today`. Refuses, with a sentence that
    /// says what to do: where there is none, where that one is not there (lost, or on another computer), where there are
    /// several to choose from, where it is not valid on that day.
    [[nodiscard]] Result<SigningKey> choose(const std::string& name, Date today) const;

    [[nodiscard]] const std::string& path() const { return m_path; }

private:
    std::string m_path;
};

/// The public key as PEM (RFC 8410), as other programs take it.
std::string publicKeyPem(const PublicKey& key);

} // namespace caprail
