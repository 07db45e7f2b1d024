// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Phrases that the sentences of several kinds of entry share.
#include <initializer_list>
#include <ledger/entries.h>
#include <string>
#include <vector>

namespace caprail::sentence {

/// Those that are not empty, with `between` between them.
std::string joined(std::initializer_list<std::string> texts, const char* between);
/// With a capital first letter, where that is an ASCII letter.
std::string capitalised(std::string text);
/// A free text of the record, shown visibly; nothing where it is empty.
void add(std::vector<std::string>& parts, const std::string& text);
/// "with MIC-1"
void with(std::vector<std::string>& parts, const std::string& instrument);
/// "by the kit maker's instructions": who says so.
void source(std::vector<std::string>& parts, const std::string& whose);
/// "because another maker's sheet came": why what was judged by it was changed; nothing where that was not asked.
void because(std::vector<std::string>& parts, const Rare<std::string>& why);
/// "S014 + S022", or that there is none.
std::string stackText(const NameList& shims);
/// How a stack felt, as what it does: "drags", "is loose".
std::string feltText(Feel feel);

} // namespace caprail::sentence
