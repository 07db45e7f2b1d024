// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/templates.h>

#include <algorithm>
#include <assessment/admission.h>
#include <filesystem>
#include <ledger/entry_texts.h>
#include <shop/entry_text.h>
#include <store/sqlite/database.h>
#include <store/file/new_file.h>
#include <base/say.h>
#include <base/text.h>

namespace caprail {

namespace {

constexpr const char* ending = ".jsonl";

bool mayStand(const Body& body) {
    return isAnyOf<LayoutSet, BandSet, RulesSet, FastenerGroupSet, OwnCheckSet>(body);
}

/// Every entry is judged as a new record would judge it.
Result<void> judge(const EngineTemplate& t) {
    Ledger ledger;
    Facts facts;
    const auto make = [&](const Body& body) -> Result<void> {
        if (auto ok = admit(facts, "template", body); !ok) {
            return ok;
        }
        apply(facts, ledger.append({}, "template", body));
        return {};
    };
    if (auto seen = checkTexts("template", toNote(t.note)); !seen) {
        return seen;
    }
    for (const Body& body : t.entries) {
        if (auto ok = make(body); !ok) {
            return ok;
        }
    }
    return facts.layout ? Result<void>() : Result<void>(refuse(Core::say("A template needs an engine layout.")));
}

} // namespace

Result<EngineTemplate> templateFrom(const Ledger& ledger, const TemplateNote& note) {
    const Facts facts = fold(ledger);
    if (!facts.layout) {
        return refuse(
            Core::say("This record has no engine layout yet: set it at the engine station, then save the template."));
    }
    if (isBlank(note.name) || note.name.find('\n') != std::string::npos) {
        return refuse(Core::say("Give the template a name of one line."));
    }
    EngineTemplate t{note, {}};
    const auto take = [&](std::int64_t entry) {
        if (entry > 0) {
            t.entries.push_back(ledger.at(entry).body);
        }
    };
    take(facts.layoutEntry);
    take(facts.rulesEntry);
    for (const auto& [name, band] : facts.bands) {
        take(band.entry);
    }
    for (const auto& [key, group] : facts.groups) {
        if (group.what.places && group.what.places->names.empty()) {
            continue; // dissolved: it says nothing
        }
        take(group.entry);
    }
    for (const auto& check : facts.ownChecks) {
        if (check.what.places > 0) {
            take(check.entry);
        }
    }
    return t;
}

std::string toLines(const EngineTemplate& t) {
    return entryLine(toNote(t.note)) + "\n" + entryLines(t.entries);
}

Result<EngineTemplate> templateFromLines(std::string_view lines, const std::string& nameless) {
    auto bodies = entriesFrom(lines);
    if (!bodies) {
        return tl::unexpected(bodies.error());
    }
    EngineTemplate t{{nameless, 1, {}}, {}};
    for (Body& body : *bodies) {
        if (const auto* note = body.as<NoteAdded>()) {
            auto named = fromNote(*note);
            if (!named) {
                return tl::unexpected(named.error());
            }
            t.note = std::move(*named);
        } else if (mayStand(body)) {
            t.entries.push_back(std::move(body));
        } else {
            return refuse(
                Core::say("A template holds layout, bands, rules and fastener groups, and no “%1”: take that line out.",
                          kindOf(body).title));
        }
    }
    if (auto ok = judge(t); !ok) {
        return tl::unexpected(ok.error());
    }
    return t;
}

std::string TemplateFolder::pathOf(std::string_view name) const {
    // Names that differ only in what a file's name cannot hold still get files of their own.
    const std::string safe = safeName(name, "template");
    return m_folder + "/" + safe + (safe == name ? "" : "-" + sha256Hex(name).substr(0, 8)) + ending;
}

std::vector<EngineTemplate> TemplateFolder::all(std::vector<std::string>* problems) const {
    std::vector<EngineTemplate> list;
    std::error_code error;
    for (const auto& entry : std::filesystem::directory_iterator(m_folder, error)) {
        if (entry.path().extension() != ending) {
            continue;
        }
        const std::string path = entry.path().string();
        const auto lines = readText(path);
        auto t = lines ? templateFromLines(*lines, entry.path().stem().string()) : tl::unexpected(lines.error());
        if (t) {
            list.push_back(std::move(*t));
        } else if (problems != nullptr) {
            problems->push_back(Core::say("%1 is not a usable template: %2", inQuotes(path), t.error().sentence));
        }
    }
    std::ranges::sort(list, {}, [](const EngineTemplate& t) { return t.note.name; });
    return list;
}

std::optional<EngineTemplate> TemplateFolder::named(std::string_view name) const {
    auto list = all();
    const auto at =
        std::ranges::find(list, name, [](const EngineTemplate& t) { return std::string_view(t.note.name); });
    return at == list.end() ? std::nullopt : std::optional<EngineTemplate>(std::move(*at));
}

Result<std::int64_t> TemplateFolder::keep(EngineTemplate t) const {
    if (auto ok = judge(t); !ok) {
        return tl::unexpected(ok.error());
    }
    if (const auto before = named(t.note.name)) {
        t.note.revision = before->note.revision + 1;
    }
    if (auto written = writeText(pathOf(t.note.name), toLines(t)); !written) {
        return tl::unexpected(written.error());
    }
    return t.note.revision;
}

Result<void> TemplateFolder::remove(std::string_view name) const {
    std::error_code error;
    if (!std::filesystem::remove(pathOf(name), error)) {
        return refuse(Core::say("There is no template “%1” of the shop's own that could be removed.", name));
    }
    return {};
}

Result<EngineTemplate> TemplateFolder::importFile(const std::string& path) const {
    const auto lines = readText(path);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    auto t = templateFromLines(*lines, std::filesystem::path(path).stem().string());
    if (!t) {
        return refuse(Core::say("%1 is not a usable template: %2", inQuotes(path), t.error().sentence));
    }
    if (const auto here = named(t->note.name); here && here->note.revision > t->note.revision) {
        return refuse(Core::say("The shop has revision %1 of “%2” already, and the file holds revision %3: remove the "
                                "shop's first if the older one is wanted.",
                                here->note.revision, t->note.name, t->note.revision));
    }
    if (auto written = writeText(pathOf(t->note.name), toLines(*t)); !written) {
        return tl::unexpected(written.error());
    }
    return t;
}

Result<void> TemplateFolder::exportFile(std::string_view name, const std::string& path) const {
    const auto t = named(name);
    if (!t) {
        return refuse(Core::say("There is no template “%1” of the shop's own.", name));
    }
    return makeNewFile(path, toLines(*t));
}

} // namespace caprail
