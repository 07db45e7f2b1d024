// SPDX-License-Identifier: GPL-3.0-or-later
/// The verb that judges a file: whole, sealed, allowed, and signed by whom.
#include "check_verb.h"

#include "call.h"
#include "verbs.h"

#include <assessment/review.h>
#include <assessment/signatures.h>
#include <base/hex.h>
#include <session/filled.h>
#include <session/signing.h>
#include <shop/key_folder.h>
#include <store/care/check.h>

namespace caprail::verbs {

namespace {

/// The digits of a key that `--signed-by` names: as given, or those of a key of one's own.
Result<std::string> digitsOfKey(const QString& given) {
    if (auto digits = readKeyDigits(pathBytes(given))) {
        return std::move(*digits);
    }
    const KeyFolder::Listing own = KeyFolder(keyFolderPath()).list();
    if (const SigningKey* key = own.named(pathBytes(given))) {
        return hexOf(key->note.publicKey.bytes);
    }
    return refuse("--signed-by takes the fingerprint of a key (eight groups of four digits), its public key (64 digits), or "
                  "the name of a key of your own, and “" +
                  pathBytes(given) + "” is none of these.");
}

} // namespace

int tellSignatures(const Ledger& ledger, const QString& path, const std::string& keyDigits) {
    for (const SignatureFact& one : signaturesOf(ledger)) {
        print(lineOf(sentenceOf(one)) + QLatin1Char('\n'));
    }
    if (keyDigits.empty()) {
        return done;
    }
    const SignedByAnswer answer = isSignedBy(ledger, keyDigits);
    return answer.isYes ? int(done) : complain(answerIsNo, path, Problem{answer.sentence});
}

int reviewed(const std::string& bytes, const std::string& keyDigits) {
    const QString path = qtPath(bytes);
    const auto file = RecordFile::open(bytes, OpenMode::readOnly);
    if (!file) {
        return complain(unusable, path, file.error());
    }
    print(remarksOn(file->ledger()));
    const int isSigned = tellSignatures(file->ledger(), path, keyDigits);
    const LedgerReview review = reviewLedger(file->ledger());
    if (!review.isWhole) {
        return complain(unusable, path, Problem{"It strikes and closes too often for every entry to be judged."});
    }
    return review.first ? complain(answerIsNo, path, Problem{sentenceOf(*review.first, CAPRAIL_VERSION)}) : isSigned;
}

int check(const QStringList& arguments) {
    const Call call("check", arguments, 1);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    std::string seal;
    if (call.has("seal")) {
        auto digits = readShortForm(call.value("seal").toStdString());
        if (!digits) {
            return complain(wrongUsage,
                            QStringLiteral("check: %1").arg(QString::fromStdString(digits.error().sentence)));
        }
        seal = std::move(*digits);
    }
    std::string keyDigits;
    if (call.has("signed-by")) {
        auto digits = digitsOfKey(call.value("signed-by"));
        if (!digits) {
            return complain(wrongUsage, QStringLiteral("check: %1").arg(qtPath(digits.error().sentence)));
        }
        keyDigits = std::move(*digits);
    }
    const CheckReport report = checkFile(call.path(0), seal);
    if (report.verdict == CheckVerdict::sound) {
        print(filled(QStringLiteral("%1 is sound: %2 entries, %3 attachments, seal %4.\n"), lineOf(call.path(0)),
                     report.entries, report.attachments, QString::fromStdString(shortForm(report.seal))));
        if (report.sealedEntry) {
            const auto added = report.entries - *report.sealedEntry;
            print(added == 0 ? QStringLiteral("The seal that was given is that of its last entry: nothing was added, "
                                              "removed or altered since it was taken down.\n")
                             : QStringLiteral("The seal that was given is that of entry %1: up to there nothing was "
                                              "altered since it was taken down, and %2 entries were added.\n")
                                   .arg(*report.sealedEntry)
                                   .arg(added));
        }
        for (const auto& remark : report.remarks) {
            print(QString::fromStdString(remark) + QLatin1Char('\n'));
        }
        return reviewed(call.path(0), keyDigits);
    }
    for (const auto& remark : report.remarks) {
        complain(unusable, QString::fromStdString(remark));
    }
    for (const auto& finding : report.findings) {
        complain(unusable, call.at(0), Problem{finding});
    }
    if (report.verdict != CheckVerdict::damagedOrAltered) {
        return unusable;
    }
    return complain(answerIsNo,
                    QStringLiteral("“caprail salvage %1 OUT” makes a new record from what can be read of it, "
                                   "which will say so.")
                        .arg(lineOf(call.path(0))));
}

} // namespace caprail::verbs
