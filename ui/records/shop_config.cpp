// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shop_config.h>

#include <QCoreApplication>
#include <QStandardPaths>
#include <resources/templates.h>
#include <session/filled.h>

namespace caprail {

namespace {

std::string configFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation).toStdString();
}

} // namespace

std::string shelfPath() {
    return configFolder() + "/shelf.json";
}

TemplateFolder ownTemplates() {
    return TemplateFolder(configFolder() + "/templates");
}

Shelf loadShelf(QString* problem) {
    auto shelf = readShelf(shelfPath());
    if (!shelf) {
        if (problem != nullptr) {
            *problem = QString::fromStdString(shelf.error().sentence);
        }
        return {};
    }
    return std::move(*shelf);
}

std::vector<OfferedTemplate> offeredTemplates() {
    std::vector<OfferedTemplate> offered;
    for (EngineTemplate& own : ownTemplates().all()) {
        const QString name = QString::fromStdString(own.note.name);
        offered.push_back(
            {filled(QCoreApplication::translate("ShopConfig", "%1 (revision %2)"), name, own.note.revision),
             std::move(own), true});
    }
    for (const QString& title : templateTitles()) {
        auto carried = templateFromLines(templateLines(title).toStdString(), title.toStdString());
        if (carried) {
            carried->note.sources =
                "carried by the program, version " + QCoreApplication::applicationVersion().toStdString();
            offered.push_back({title, std::move(*carried), false});
        }
    }
    return offered;
}

} // namespace caprail
