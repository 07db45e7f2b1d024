// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>

namespace caprail {

/// What a record keeps of the template that it was begun from: a note at the place "template" whose text is
/// "NAME, revision N", and the template's sources on the lines under it. The entries themselves are the record's own,
/// so a template that is changed later changes nothing in it.
struct TemplateNote {
    std::string name;
    std::int64_t revision = 1;
    std::string sources;
    friend bool operator==(const TemplateNote&, const TemplateNote&) = default;
};

inline constexpr std::string_view templatePlace = "template";

NoteAdded toNote(const TemplateNote& note);
/// Refuses a note at another place, or one whose text has no name and revision.
Result<TemplateNote> fromNote(const NoteAdded& note);
/// The newest such note of a record.
std::optional<TemplateNote> templateNoteOf(const Facts& facts);

} // namespace caprail
