// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/template_note.h>

#include <charconv>
#include <base/say.h>

namespace caprail {

namespace {
constexpr std::string_view beforeRevision = ", revision ";
}

NoteAdded toNote(const TemplateNote& note) {
    return {std::string(templatePlace), note.name + std::string(beforeRevision) + std::to_string(note.revision) +
                                            (note.sources.empty() ? "" : "\n" + note.sources)};
}

Result<TemplateNote> fromNote(const NoteAdded& note) {
    const auto end = note.text.find('\n');
    const std::string_view first = std::string_view(note.text).substr(0, end);
    const auto at = first.rfind(beforeRevision);
    TemplateNote result;
    if (note.place == templatePlace && at != std::string_view::npos && at > 0) {
        const std::string_view number = first.substr(at + beforeRevision.size());
        const auto [rest, error] = std::from_chars(number.data(), number.data() + number.size(), result.revision);
        if (error == std::errc() && rest == number.data() + number.size() && result.revision > 0) {
            result.name = first.substr(0, at);
            result.sources = end == std::string::npos ? std::string() : note.text.substr(end + 1);
            return result;
        }
    }
    return refuse(Core::say("The note “%1” names no template: it reads “NAME, revision 1”.", note.text.substr(0, 60)));
}

std::optional<TemplateNote> templateNoteOf(const Facts& facts) {
    std::optional<TemplateNote> last;
    for (const auto& written : facts.notes) {
        if (const auto note = fromNote(written.what)) {
            last = *note;
        }
    }
    return last;
}

} // namespace caprail
