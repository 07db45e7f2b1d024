// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/sign_actions.h>

#include <QAction>
#include <QMenu>
#include <QTimer>
#include <algorithm>
#include <assessment/signatures.h>
#include <session/filled.h>
#include <session/now.h>
#include <session/signing.h>
#include <shop/key_folder.h>
#include <text/ask.h>
#include <window/main_window.h>

namespace caprail {

namespace {

QString qt(const std::string& text) {
    return QString::fromStdString(text);
}

QString title() {
    return MainWindow::tr("Sign the record");
}

/// A new key as the person wishes it; nothing when it was called off or refused.
std::optional<SigningKey> newKey(MainWindow& window) {
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
    auto key = makeRandomKey(name->trimmed().toStdString(), {}, {}, passphrase->toStdString());
    const auto kept = key ? KeyFolder(keyFolderPath()).keep(*key) : Result<void>(tl::unexpected(key.error()));
    if (!kept) {
        warn(&window, title(), qt(kept.error().sentence));
        return {};
    }
    inform(&window, title(),
           filled(MainWindow::tr("The key of %1 was made. Its fingerprint is\n\n%2\n\nTell it to whoever is to know your "
                                 "signature, by another way than with the record. The key lies in %3: copy that folder to a "
                                 "safe place, since a lost key cannot be made again."),
                  qt(key->note.name), qt(fingerprint(key->note.publicKey)), qt(keyFolderPath())));
    return *key;
}

/// One of the keys, or none of them.
std::optional<SigningKey> chosenKey(MainWindow& window, const std::vector<SigningKey>& keys) {
    if (keys.size() == 1) {
        const auto answer = ask(&window, title(),
                                filled(MainWindow::tr("Sign all %1 entries of this record with the key of %2 (%3)?"),
                                       window.session()->ledger().size(), qt(keys.front().note.name),
                                       qt(fingerprint(keys.front().note.publicKey))),
                                QMessageBox::Yes | QMessageBox::No, QMessageBox::Yes);
        return answer == QMessageBox::Yes ? std::optional(keys.front()) : std::nullopt;
    }
    QStringList names;
    for (const SigningKey& key : keys) {
        names << qt(key.note.name);
    }
    const auto name = askChoice(&window, title(), MainWindow::tr("Which key signs this record?"), names, 0, false);
    const qsizetype at = name ? names.indexOf(*name) : -1;
    return at < 0 ? std::nullopt : std::optional(keys[static_cast<std::size_t>(at)]);
}

std::optional<SecretKey> unlocked(MainWindow& window, const SigningKey& key) {
    for (;;) {
        QString passphrase;
        if (key.isProtected()) {
            const auto typed =
                askSecret(&window, title(), filled(MainWindow::tr("The passphrase of the key of %1:"), qt(key.note.name)));
            if (!typed) {
                return {};
            }
            passphrase = *typed;
        }
        const auto secret = unlock(key, passphrase.toStdString());
        if (secret) {
            return *secret;
        }
        warn(&window, title(), qt(secret.error().sentence));
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
    std::optional<SigningKey> key;
    if (listing.keys.empty()) {
        const QString why = listing.problems.empty() ? QString() : qt(listing.problems.front()) + QStringLiteral("\n\n");
        const auto answer =
            ask(&window, title(),
                why + MainWindow::tr("There is no key of yours that is valid today. A key of your own shows a customer that a "
                                     "record is from you and was not altered since. Make one now?"),
                QMessageBox::Yes | QMessageBox::No, QMessageBox::Yes);
        key = answer == QMessageBox::Yes ? newKey(window) : std::nullopt;
    } else {
        key = chosenKey(window, listing.keys);
    }
    const auto secret = key ? unlocked(window, *key) : std::nullopt;
    if (secret) {
        if (const auto entry = signRecord(*window.session(), key->note, *secret); !entry) {
            warn(&window, title(), qt(entry.error().sentence));
        }
    }
}

void addSigning(MainWindow& window, QMenu* file) {
    QAction* action = file->addAction(MainWindow::tr("Si&gn the record…"));
    action->setObjectName(QStringLiteral("signRecord"));
    action->setEnabled(false);
    QObject::connect(action, &QAction::triggered, &window, [&window] { offerSignature(window, true); });
    QObject::connect(&window, &MainWindow::recordChanged, action, [&window, action] {
        action->setEnabled(window.session() != nullptr);
        if (window.session() == nullptr) {
            return;
        }
        QObject::connect(window.session(), &RecordSession::stored, action, [&window](qint64 sequence) {
            if (std::holds_alternative<SignedOff>(window.session()->ledger().at(sequence).body)) {
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
