// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <shop/shelf.h>
#include <shop/templates.h>
#include <vector>

namespace caprail {

/// Where the shop's own data lie: in the user's configuration folder, beside the settings. The shop's name and logo are
/// preferences (window/preferences.h); everything else that a shop has for all engines is reached from here.
std::string shelfPath();
TemplateFolder ownTemplates();

/// The shelf, with a sentence in `problem` when its file cannot be used; then it is empty and must not be written.
Shelf loadShelf(QString* problem = nullptr);

/// A template that a new record may begin with: the shop's own first, then those that the program carries.
struct OfferedTemplate {
    QString title;
    EngineTemplate engineTemplate;
    bool isOwn = false;
};
std::vector<OfferedTemplate> offeredTemplates();

} // namespace caprail
