// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/entry_sentence_parts.h>

#include <base/plain_text.h>
#include <base/say.h>

namespace caprail::sentence {

std::string joined(std::initializer_list<std::string> texts, const char* between) {
    std::string all;
    for (const std::string& text : texts) {
        all += text.empty() ? "" : (all.empty() ? "" : between) + text;
    }
    return all;
}

std::string capitalised(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    }
    return text;
}

void add(std::vector<std::string>& parts, const std::string& text) {
    if (!text.empty()) {
        parts.push_back(visibly(text));
    }
}

void with(std::vector<std::string>& parts, const std::string& instrument) {
    if (!instrument.empty()) {
        parts.push_back(Core::say("with %1", instrument));
    }
}

void source(std::vector<std::string>& parts, const std::string& whose) {
    if (!whose.empty()) {
        parts.push_back(Core::say("says: %1", whose));
    }
}

void because(std::vector<std::string>& parts, const Rare<std::string>& why) {
    if (why && !why->empty()) {
        parts.push_back(Core::say("because: %1", visibly(*why)));
    }
}

std::string stackText(const NameList& shims) {
    std::string all;
    for (const std::string& shim : shims.names) {
        all += (all.empty() ? "" : " + ") + visibly(shim);
    }
    return all.empty() ? Core::say("no shim") : all;
}

std::string feltText(Feel feel) {
    return feel == Feel::loose ? Core::say("is loose") : shown(feel);
}

} // namespace caprail::sentence
