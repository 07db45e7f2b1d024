// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <ledger/entry_json.h>
#include <vector>

namespace caprail {

/// Entries as text that stands by itself, without number, time, person and seal: the form of templates and of the
/// shop's shelf, one JSON object a line, as `caprail append` takes them.
std::string entryLine(const Body& body);
std::string entryLines(const std::vector<Body>& bodies);
/// Reads such a text; empty lines are passed over. Refuses, naming the line, what is no entry.
Result<std::vector<Body>> entriesFrom(std::string_view lines);

/// Reads a whole file of at most 4 MiB; refuses, naming it, what cannot be read.
Result<std::string> readText(const std::string& path);
/// Writes a whole text so that it is there as it was or as it is now, also after a power cut: new, or in place of the
/// text that stands there. Makes its folder if need be; refuses, naming it, what cannot be written, and to write over
/// anything that is no text, such as a record.
Result<void> writeText(const std::string& path, std::string_view text);
/// What may stand in a file's name on any system: letters, digits, '-', '_', spaces and dots inside; at most 80 bytes
/// of UTF-8. `otherwise` when nothing is left.
std::string safeName(std::string_view text, std::string_view otherwise);

} // namespace caprail
