// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <catalogue/connection.h>

namespace caprail {

/// The file of a folder's index: made, known again, thrown away. See ShopIndex.
std::string indexPath(const std::string& cacheFolder, const std::string& root);
void discardIndex(const std::string& cacheFolder, const std::string& root);
/// Open, with its tables, at most after it was made anew once. Refuses when the cache cannot be written.
Result<Connection> openIndex(const std::string& cacheFolder, const std::string& root);
Result<Connection> openIndexInMemory(const std::string& root);

} // namespace caprail
