// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shop/template_note.h>
#include <vector>

namespace caprail {

/// What a new record begins with: the engine's layout, its bands, rules and fastener groups, and the note that names
/// the template. A record gets the entries themselves, so that a template changed later changes nothing in it.
struct EngineTemplate {
    TemplateNote note;
    std::vector<Body> entries; ///< LayoutSet, BandSet, RulesSet and FastenerGroupSet; no note
};

/// What is in force in a record now, as a template. Refuses a record without a layout, and an empty name.
Result<EngineTemplate> templateFrom(const Ledger& ledger, const TemplateNote& note);

/// A template as text: its note and its entries, one JSON object a line, as `caprail append` takes them. The lines of a
/// template are what RecordSession::create begins a record from.
std::string toLines(const EngineTemplate& engineTemplate);
/// Reads such a text. Refuses entries of other kinds, a text without layout, and entries that no record would take.
/// A text without a note gets `nameless` as its name and revision 1.
Result<EngineTemplate> templateFromLines(std::string_view lines, const std::string& nameless);

/// The shop's own templates: a folder of files, one per template, that may be copied and mailed as they are.
class TemplateFolder {
public:
    explicit TemplateFolder(std::string folder) : m_folder(std::move(folder)) {}
    /// In alphabetical order. What cannot be read is left out and told in `problems`.
    [[nodiscard]] std::vector<EngineTemplate> all(std::vector<std::string>* problems = nullptr) const;
    [[nodiscard]] std::optional<EngineTemplate> named(std::string_view name) const;
    /// Keeps a template. One of the same name gets the next revision in its place; gives the revision kept.
    Result<std::int64_t> keep(EngineTemplate engineTemplate) const;
    Result<void> remove(std::string_view name) const;
    /// From and to a file anywhere. An imported one keeps its revision unless a newer one of its name is here already:
    /// then it is refused. Exporting never overwrites.
    Result<EngineTemplate> importFile(const std::string& path) const;
    Result<void> exportFile(std::string_view name, const std::string& path) const;

private:
    [[nodiscard]] std::string pathOf(std::string_view name) const;
    std::string m_folder;
};

} // namespace caprail
