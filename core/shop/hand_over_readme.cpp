// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/hand_over_readme.h>

#include <algorithm>
#include <base/say.h>

namespace caprail {

namespace {

/// A paragraph in lines of at most 96 characters, each behind the indent.
std::string wrapped(const std::string& paragraph, const std::string& indent = {}) {
    constexpr std::size_t width = 96;
    std::string text, line = indent;
    std::size_t at = 0;
    while (at < paragraph.size()) {
        const std::size_t end = std::min(paragraph.find(' ', at), paragraph.size());
        const std::string word = paragraph.substr(at, end - at);
        if (line.size() > indent.size() && line.size() + 1 + word.size() > width) {
            text += line + "\n";
            line = indent;
        }
        line += (line.size() > indent.size() ? " " : "") + word;
        at = end + 1;
    }
    return text + line + "\n";
}

std::string heading(const std::string& words) {
    return "\n" + words + "\n\n";
}

std::string file(const std::string& name, const std::string& meaning) {
    return "  " + name + "\n" + wrapped(meaning, "      ");
}

std::string beginning(const Facts& facts) {
    const EngineDescribed engine = facts.engine ? facts.engine->what : EngineDescribed{};
    std::string text = wrapped(Core::say("Build record: %1, build %2",
                                         (engine.engine.empty() ? Core::say("engine not described") : engine.engine) +
                                             (engine.serial.empty() ? "" : ", " + engine.serial),
                                         facts.build));
    if (!engine.customer.empty()) {
        text += wrapped(Core::say("For %1", engine.customer));
    }
    if (!engine.shop.empty()) {
        text += wrapped(Core::say("By %1", engine.shop));
    }
    text += "\n";
    return text + wrapped(facts.signedOff
                              ? Core::say("This build was closed and signed off by %1 on %2.", facts.signedOff->person,
                                          format(dateOf(facts.signedOff->time)))
                              : Core::say("NOT FINISHED: this build is not signed off. Do not run the engine on the "
                                          "strength of this record."));
}

std::string filesText(const Ledger& ledger, bool isSigned, bool hasTables) {
    std::string text = heading(Core::say("What is in this folder"));
    text += file("build-sheet.pdf", Core::say("The build sheet, to read and to print: what was built, measured and "
                                              "verified, and how it stands."));
    text += file("history.txt", Core::say("Everything that was entered while the engine was built, a line each, in "
                                          "order. What was taken back stays in it, marked."));
    text += file("ledger.jsonl", Core::say("The same for another program, with the seal of each entry. Caprail makes the "
                                           "record again from it: caprail import ledger.jsonl NEW.caprail"));
    if (std::ranges::any_of(ledger.entries(), [](const Entry& entry) { return entry.body.is<AttachmentAdded>(); })) {
        text += file("photos/", Core::say("The photos; the number in front of each name is that of its entry."));
    }
    if (hasTables) {
        text += file("tables/", Core::say("Tables for a spreadsheet. dictionary.csv tells what each column is and in "
                                          "which unit."));
    }
    if (isSigned) {
        text += file("signature/", Core::say("The shop's signature, its public key, and the few lines that are signed."));
    }
    return text + file("SHA256SUMS", Core::say("A check sum of every file here."));
}

std::string chainText(const Ledger& ledger) {
    std::string text = heading(Core::say("How to see that nothing was altered, without Caprail"));
    text += wrapped("1. " + Core::say("The files. In this folder, type (Linux; on a Mac: shasum -a 256 -c SHA256SUMS; on "
                                      "Windows compare by eye what certutil -hashfile NAME SHA256 prints):"));
    text += "\n    sha256sum -c SHA256SUMS\n\n";
    text += wrapped("2. " + Core::say("The seal. The last line of ledger.jsonl ends with the seal of the whole record. It "
                                      "begins with the twenty digits that stand at the foot of every page of the printed "
                                      "sheet: %1",
                                      shortForm(ledger.seal())));
    text += "\n    tail -n 1 ledger.jsonl\n\n";
    text += wrapped("3. " + Core::say("The chain. Each seal is the SHA-256 of the 32 bytes of the seal before (zeros "
                                      "before the first) and of the entry's line without its seal. These lines of Python "
                                      "go through all of them and print the last:"));
    return text + R"(
    import hashlib
    seal = bytes(32)
    for line in open("ledger.jsonl", "rb"):
        entry, stated = line.rstrip(b"\r\n").rsplit(b',"seal":"', 1)
        seal = hashlib.sha256(seal + entry + b"}").digest()
        assert seal.hex() == stated[:64].decode(), "altered: " + line.decode()
    print(seal.hex())
)";
}

std::string signatureText(const SignatureFact* signature, const std::vector<SignatureFact>& all) {
    if (signature == nullptr) {
        return "\n" + wrapped("4. " + (all.empty() ? Core::say("This record is not signed with a key: nothing in it shows "
                                                               "who made it.")
                                                   : sentenceOf(all.back())));
    }
    std::string text = "\n" + wrapped("4. " + sentenceOf(*signature));
    text += "\n    openssl pkeyutl -verify -pubin -inkey signature/public-key.pem -rawin \\\n"
            "        -in signature/statement.txt -sigfile signature/signature.bin\n\n";
    text += wrapped(Core::say("says whether the signature is good. Then look whether the statement names the seal of line "
                              "%1 of ledger.jsonl, and whether the key is the shop's: its fingerprint, which the shop "
                              "tells you by another way than with this folder, is the first 32 digits that this prints:",
                              signature->signedEntry),
                    "   ");
    return text + "\n    openssl pkey -pubin -in signature/public-key.pem -outform DER | tail -c 32 | sha256sum\n";
}

} // namespace

const SignatureFact* toldSignature(const std::vector<SignatureFact>& signatures) {
    const SignatureFact* told = nullptr;
    for (const SignatureFact& one : signatures) {
        if (one.holds() && (told == nullptr || one.coversAll || !told->coversAll)) {
            told = &one;
        }
    }
    return told;
}

std::string handOverReadme(const Ledger& ledger, const Facts& facts, const std::vector<SignatureFact>& signatures,
                           bool hasTables) {
    const SignatureFact* signature = toldSignature(signatures);
    std::string text = beginning(facts) + filesText(ledger, signature != nullptr, hasTables) + chainText(ledger) +
                       signatureText(signature, signatures);
    text += heading(Core::say("What this proves, and what not"));
    text += wrapped(Core::say("If the seal is the one on a sheet that you kept apart from these files, no entry and no photo "
                              "was altered, removed, put in or put in another order since that sheet was printed."));
    text += wrapped(Core::say("A signature shows that whoever has the shop's secret key signed exactly these entries. It does "
                              "not show when: the times are those of the shop's own clock."));
    text += wrapped(Core::say("Neither proves that what was entered is true. A whole record can be written anew, with seals of "
                              "its own; only the sheet in your hands, or a fingerprint that you had before, tells then."));
    return text;
}

} // namespace caprail
