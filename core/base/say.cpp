// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/say.h>

#include <atomic>

namespace caprail {

namespace {

std::atomic<Translation> chosen = nullptr;

} // namespace

void Core::speak(Translation translation) {
    chosen = translation;
}

std::string Core::filled(std::string_view source, std::initializer_list<Said> texts) {
    const Translation translation = chosen;
    const std::string pattern = translation != nullptr ? translation(std::string(source).c_str()) : std::string(source);
    std::string sentence;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const auto placeholder = static_cast<std::size_t>(i + 1 < pattern.size() ? pattern[i + 1] - '1' : 9);
        if (pattern[i] == '%' && placeholder < texts.size()) {
            sentence += texts.begin()[placeholder].text();
            ++i;
        } else {
            sentence += pattern[i];
        }
    }
    return sentence;
}

} // namespace caprail
