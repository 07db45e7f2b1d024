// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What signing needs of the computer: the user's folder of keys, random bytes, and the session that stores a signature.
#include <session/record_session.h>
#include <signing/signing_key.h>

namespace caprail {

/// In the user's own data folder.
std::string keyFolderPath();

/// A new key of random bytes (getentropy), behind a passphrase unless that is empty. Refuses what `makeKey` refuses.
Result<SigningKey> makeRandomKey(const std::string& name, std::optional<Date> from, std::optional<Date> until,
                                 std::string_view passphrase);

/// Signs the last seal of the record and stores that as an entry. Refuses while entries wait to be stored, which a
/// signature could not be over, a record that may only be read, and what `signLastSeal` refuses.
Result<std::int64_t> signRecord(RecordSession& session, const KeyNote& key, const SecretKey& secret);

} // namespace caprail
