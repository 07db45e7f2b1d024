// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/sign_actions.h>

#include <QAction>
#include <QMenu>
#include <QTimer>
#include <algorithm>
#include <assessment/signatures.h>
#include <ledger/qt_text.h>
#include <session/filled.h>
#include <session/now.h>
#include <session/signing.h>
#include <shop/key_folder.h>
#include <text/ask.h>
#include <window/main_window.h>
#include <window/menu_entry.h>

namespace caprail {

namespace {

QString title() {
    return MainWindow::tr("Sign the record");
}

/// A key that may sign now.
struct OpenKey {
    KeyNote note;
    SecretKey secret;
};

/// A new key as the person wishes it, open with the passphrase just given; nothing when it was called off or refused.
std::optional<OpenKey> newKey(MainWindow& window) {
    const auto name = askText(&window, title(),
                              MainWindow::tr("Whose key is it? Customers read this name beside each signature."),
                              window.preferences().shopName);
    if (!name) {
        return {};
    }
    const auto passphrase =
        askSecret(&window, title(), MainWindow::tr("A passphrase, without which nobody can sign with it; empty: none."));
    if (!passphrase) {
        return {};
    }
    if (!passphrase->isEmpty() && askSecret(&window, title(), MainWindow::tr("The same once more.")) != passphrase) {
        warn(&window, title(), MainWindow::tr("The two passphrases differ: no key was made."));
        return {};
    }
    const auto key = makeRandomKey(name->trimmed().toStdString(), {}, {}, passphrase->toStdString());
    const auto secret = key ? unlock(*key, passphrase->toStdString()) : Result<SecretKey>(tl::unexpected(key.error()));
    const auto kept = secret ? KeyFolder(keyFolderPath()).keep(*key) : Result<void>(tl::unexpected(secret.error()));
    if (!kept) {
        warn(&window, title(), qtText(kept.error().sentence));
        return {};
    }
    inform(&window, title(),
           filled(MainWindow::tr(
                      "The key of %1 was made. Its fingerprint is\n\n%2\n\nTell it to whoever is to know your "
                      "signature, by another way than with the record. The key lies in %3: copy that folder to a "
                      "safe place, since a lost key cannot be made again."),
                  qtText(key->note.name), qtText(fingerprint(key->note.publicKey)), qtText(keyFolderPath())));
    return OpenKey{key->note, *secret};
}

/// One of the keys, or none of them.
std::optional<SigningKey> chosenKey(MainWindow& window, const std::vector<SigningKey>& keys) {
    if (keys.size() == 1) {
        const auto answer = ask(&window, title(),
                                filled(MainWindow::tr("Sign all %1 entries of this record with the key of %2 (%3)?"),
                                       window.session()->ledger().size(), qtText(keys.front().note.name),
                                       qtText(fingerprint(keys.front().note.publicKey))),
                                QMessageBox::Yes | QMessageBox::No, QMessageBox::Yes);
        return answer == QMessageBox::Yes ? std::optional(keys.front()) : std::nullopt;
    }
    QStringList names;
    for (const SigningKey& key : keys) {
        names << qtText(key.note.name);
    }
    const auto name = askChoice(&window, title(), MainWindow::tr("Which key signs this record?"), names, 0, false);
    const qsizetype at = name ? names.indexOf(*name) : -1;
    return at < 0 ? std::nullopt : std::optional(keys[static_cast<std::size_t>(at)]);
}

std::optional<OpenKey> unlocked(MainWindow& window, const SigningKey& key) {
    for (;;) {
        QString passphrase;
        if (key.isProtected()) {
            const auto typed = askSecret(
                &window, title(), filled(MainWindow::tr("The passphrase of the key of %1:"), qtText(key.note.name)));
            if (!typed) {
                return {};
            }
            passphrase = *typed;
        }
        const auto secret = unlock(key, passphrase.toStdString());
        if (secret) {
            return OpenKey{key.note, *secret};
        }
        warn(&window, title(), qtText(secret.error().sentence));
    }
}

} // namespace

void offerSignature(MainWindow& window, bool mayMakeKey) {
    KeyFolder::Listing listing = KeyFolder(keyFolderPath()).list();
    std::erase_if(listing.keys,
                  [](const SigningKey& key) { return !mayBeUsedOn(key.note, dateOf(now())).has_value(); });
    if (listing.keys.empty() && !mayMakeKey) {
        return;
    }
    std::optional<OpenKey> key;
    if (listing.keys.empty()) {
        const QString why =
            listing.problems.empty() ? QString() : qtText(listing.problems.front()) + QStringLiteral("\n\n");
        const auto answer =
            ask(&window, title(),
                why + MainWindow::tr("There is no key of yours that is valid today. A key of your own shows a customer that a "
                                     "record is from you and was not altered since. Make one now?"),
                QMessageBox::Yes | QMessageBox::No, QMessageBox::Yes);
        key = answer == QMessageBox::Yes ? newKey(window) : std::nullopt;
    } else {
        const auto chosen = chosenKey(window, listing.keys);
        key = chosen ? unlocked(window, *chosen) : std::nullopt;
    }
    if (key) {
        if (const auto entry = signRecord(*window.session(), key->note, key->secret); !entry) {
            warn(&window, title(), qtText(entry.error().sentence));
        }
    }
}

void addSigning(MainWindow& window, QMenu* file) {
    QAction* action = addEntry(window, file, Needs::record, MainWindow::tr("Si&gn the record…"), {},
                               [](MainWindow& w) { offerSignature(w, true); });
    action->setObjectName(QStringLiteral("signRecord"));
    QObject::connect(&window, &MainWindow::recordChanged, action, [&window, action] {
        if (window.session() == nullptr) {
            return;
        }
        QObject::connect(window.session(), &RecordSession::stored, action, [&window](qint64 sequence) {
            if (window.session()->ledger().at(sequence).body.is<SignedOff>()) {
                // After everything that follows from the sign-off was shown.
                QTimer::singleShot(0, &window, [&window] {
                    if (window.session() != nullptr && window.session()->facts().isClosed()) {
                        offerSignature(window, false);
                    }
                });
            }
        });
    });
}

} // namespace caprail
