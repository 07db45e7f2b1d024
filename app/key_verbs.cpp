// SPDX-License-Identifier: GPL-3.0-or-later
/// The verbs of signing: keys made and told, a record signed.
#include "passphrase.h"
#include "verbs.h"

#include <algorithm>
#include <assessment/signatures.h>
#include <base/hex.h>
#include <ledger/qt_text.h>
#include <session/now.h>
#include <session/signing.h>
#include <shop/key_folder.h>
#include <window/preferences.h>

namespace caprail::verbs {

namespace {

/// A day of an option that may be left out.
Result<std::optional<Date>> dayOf(const Call& call, const char* option) {
    if (!call.has(option)) {
        return std::optional<Date>();
    }
    const auto day = parseDate(pathBytes(call.value(option)));
    return day ? Result<std::optional<Date>>(*day) : Result<std::optional<Date>>(tl::unexpected(day.error()));
}

/// How long a key may be used; empty: for ever.
QString validityOf(const KeyNote& note) {
    return (note.validFrom ? QStringLiteral(" from ") + qtText(format(*note.validFrom)) : QString()) +
           (note.validUntil ? QStringLiteral(" until ") + qtText(format(*note.validUntil)) : QString());
}

void tell(const SigningKey& key) {
    print(QStringLiteral("name         %1\nfingerprint  %2\npublic key   %3\n")
              .arg(lineOf(key.note.name), qtText(fingerprint(key.note.publicKey)), qtText(hexOf(key.note.publicKey.bytes))));
    const QString validity = validityOf(key.note);
    const auto usable = mayBeUsedOn(key.note, dateOf(now()));
    print(QStringLiteral("valid       %1\n").arg(validity.isEmpty() ? QStringLiteral(" always") : validity));
    print(QStringLiteral("secret       %1\n").arg(key.isProtected() ? QStringLiteral("behind a passphrase")
                                                                    : QStringLiteral("without a passphrase")));
    if (!usable) {
        print(lineOf(usable.error().sentence) + QLatin1Char('\n'));
    }
}

/// Asked twice on a terminal, since a slip could not be taken back.
Result<Passphrase> newPassphrase(const Call& call) {
    auto passphrase = askPassphrase(call, QStringLiteral("Passphrase for the new key"));
    if (passphrase && passphrase->text().empty()) {
        return refuse("The passphrase is empty: give one, or make the key without.");
    }
    if (passphrase && !call.has("passphrase-fd")) {
        const auto again = askPassphrase(call, QStringLiteral("The same once more"));
        if (!again || again->text() != passphrase->text()) {
            return again ? Result<Passphrase>(refuse("The two passphrases differ: no key was made."))
                         : Result<Passphrase>(tl::unexpected(again.error()));
        }
    }
    return passphrase;
}

Result<SigningKey> newKey(const Call& call) {
    const auto from = dayOf(call, "from");
    const auto until = dayOf(call, "until");
    if (!from || !until) {
        return tl::unexpected(from ? until.error() : from.error());
    }
    const QString shop = Preferences::load().shopName;
    const QString name = call.has("name") ? call.value("name") : shop.isEmpty() ? qEnvironmentVariable("USER") : shop;
    if (!call.has("passphrase") && !call.has("passphrase-fd")) {
        return makeRandomKey(pathBytes(name), *from, *until, {});
    }
    const auto passphrase = newPassphrase(call);
    return passphrase ? makeRandomKey(pathBytes(name), *from, *until, passphrase->text())
                      : Result<SigningKey>(tl::unexpected(passphrase.error()));
}

int makeNewKey(const Call& call) {
    const auto key = newKey(call);
    if (!key) {
        return complain(unusable, QStringLiteral("key: ") + qtText(key.error().sentence));
    }
    const KeyFolder folder(keyFolderPath());
    if (const auto kept = folder.keep(*key); !kept) {
        return complain(answerIsNo, QStringLiteral("key: ") + qtText(kept.error().sentence));
    }
    tell(*key);
    print(QStringLiteral("It is kept in %1. Copy that folder to a safe place: a lost key cannot be made again.\nTell the "
                         "fingerprint to whoever is to know your signature, by another way than with the record.\n")
              .arg(lineOf(folder.path())));
    return done;
}

int showKey(const QString& name) {
    const KeyFolder::Listing listing = KeyFolder(keyFolderPath()).list();
    if (const SigningKey* named = listing.named(pathBytes(name))) { // told even where it is not valid today
        tell(*named);
        return done;
    }
    if (name.isEmpty() && listing.keys.size() == 1) {
        tell(listing.keys.front());
        return done;
    }
    const auto chosen = KeyFolder(keyFolderPath()).choose(pathBytes(name), dateOf(now()));
    if (!chosen) {
        return complain(answerIsNo, QStringLiteral("key: ") + qtText(chosen.error().sentence));
    }
    tell(*chosen);
    return done;
}

int listKeys() {
    const KeyFolder::Listing listing = KeyFolder(keyFolderPath()).list();
    for (const SigningKey& key : listing.keys) {
        const bool isUsable = mayBeUsedOn(key.note, dateOf(now())).has_value();
        print(QStringLiteral("%1  %2%3%4\n")
                  .arg(qtText(fingerprint(key.note.publicKey)), lineOf(key.note.name),
                       validityOf(key.note).isEmpty() ? QString() : QStringLiteral(", valid") + validityOf(key.note),
                       isUsable ? QString() : QStringLiteral(" (not valid today)")));
    }
    for (const std::string& problem : listing.problems) {
        complain(unusable, qtText(problem));
    }
    return listing.problems.empty() ? int(done) : int(unusable);
}

} // namespace

int key(const QStringList& arguments) {
    const QString what = arguments.isEmpty() ? QString() : arguments.front();
    const bool isNamed = what == QLatin1String("show") && arguments.size() > 1;
    const Call call("key", arguments, isNamed ? 2 : 1);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    if (what == QLatin1String("new")) {
        return makeNewKey(call);
    }
    if (what == QLatin1String("show")) {
        return showKey(isNamed ? call.at(1) : QString());
    }
    return what == QLatin1String("list") ? listKeys() : call.refuseUsage();
}

std::optional<int> signNow(const Call& call) {
    const auto opened = openKey(call);
    if (!opened) {
        return complain(answerIsNo, qtText(opened.error().sentence));
    }
    auto session = RecordSession::open(call.at(0));
    if (!session) {
        return complain(unusable, call.at(0), session.error());
    }
    const auto before = signaturesOf((*session)->ledger());
    if (std::ranges::any_of(before, [&](const SignatureFact& one) {
            return one.coversAll && one.key.publicKey == opened->note.publicKey;
        })) {
        print(QStringLiteral("All of it is signed by %1 already: nothing was added.\n").arg(lineOf(opened->note.name)));
        return {};
    }
    const auto entry = signRecord(**session, opened->note, opened->secret);
    if (!entry) {
        return complain(answerIsNo, call.at(0), entry.error());
    }
    print(QStringLiteral("Signed by %1 (%2) in entry %3. The seal is now %4.\n")
              .arg(lineOf(opened->note.name), qtText(fingerprint(opened->note.publicKey)), QString::number(*entry),
                   qtText(shortForm((*session)->ledger().seal()))));
    return {};
}

int sign(const QStringList& arguments) {
    const Call call("sign", arguments, 1);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    return signNow(call).value_or(done);
}

} // namespace caprail::verbs
