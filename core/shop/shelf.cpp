// SPDX-License-Identifier: GPL-3.0-or-later
#include <shop/shelf.h>

#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <ledger/qt_text.h>
#include <ledger/strict_json.h>
#include <shop/entry_text.h>
#include <store/sqlite/database.h>
#include <base/say.h>

namespace caprail {

namespace {

constexpr int fileVersion = 1;

QJsonArray jsonOf(const std::vector<Body>& bodies) {
    QJsonArray array;
    for (const Body& body : bodies) {
        array.append(QJsonDocument::fromJson(QByteArray::fromStdString(entryLine(body))).object());
    }
    return array;
}

template <class T> std::vector<Body> bodiesOf(const std::vector<T>& list) {
    return {list.begin(), list.end()};
}

/// The entries of one kind out of an array; refuses others.
template <class T> Result<std::vector<T>> entriesOf(const QJsonArray& array) {
    std::vector<T> list;
    for (const auto& value : array) {
        auto draft = fromJson(QJsonDocument(value.toObject()).toJson(QJsonDocument::Compact).toStdString());
        if (!draft) {
            return tl::unexpected(draft.error());
        }
        auto* body = draft->body.as<T>();
        if (body == nullptr) {
            return refuse(Core::say("“%1” does not belong there.", Core::say(kindOf(draft->body).title)));
        }
        list.push_back(std::move(*body));
    }
    return list;
}

template <class T> void keepIn(std::vector<T>& list, const T& one, std::string T::*name) {
    const auto at = std::ranges::find(list, one.*name, name);
    if (at == list.end()) {
        list.push_back(one);
    } else {
        *at = one;
    }
}

/// What a statement corrects is a matter of the record in which it was made, and of no other.
InstrumentAdded asOnShelf(InstrumentAdded instrument) {
    instrument.corrects.reset();
    return instrument;
}

/// Whether two entries say the same in every field.
template <class T> bool isSame(const T& a, const T& b) {
    return cellsOf(Body(a)) == cellsOf(Body(b));
}

Result<Shelf> shelfFrom(const QJsonObject& root) {
    auto people = entriesOf<PersonAdded>(root.value("people").toArray());
    auto instruments = entriesOf<InstrumentAdded>(root.value("instruments").toArray());
    if (!people || !instruments) {
        return tl::unexpected(people ? instruments.error() : people.error());
    }
    Shelf shelf{std::move(*people), std::move(*instruments), {}};
    for (const auto& value : root.value("kits").toArray()) {
        const QJsonObject kit = value.toObject();
        auto shims = entriesOf<ShimAdded>(kit.value("shims").toArray());
        auto readings = entriesOf<ShimMeasured>(kit.value("readings").toArray());
        if (!shims || !readings) {
            return tl::unexpected(shims ? readings.error() : shims.error());
        }
        shelf.kits.push_back({kit.value("name").toString().toStdString(), std::move(*shims), std::move(*readings)});
    }
    return shelf;
}

} // namespace

bool operator==(const ShelfKit& a, const ShelfKit& b) {
    const auto same = [](const auto& x, const auto& y) { return isSame(x, y); };
    return a.name == b.name && std::ranges::equal(a.shims, b.shims, same) &&
           std::ranges::equal(a.readings, b.readings, same);
}

void Shelf::keep(const PersonAdded& person) {
    keepIn(people, person, &PersonAdded::name);
}
void Shelf::keep(const InstrumentAdded& instrument) {
    keepIn(instruments, asOnShelf(instrument), &InstrumentAdded::instrument);
}
void Shelf::keep(const ShelfKit& kit) {
    keepIn(kits, kit, &ShelfKit::name);
}
void Shelf::removePerson(std::string_view name) {
    std::erase_if(people, [&](const PersonAdded& p) { return p.name == name; });
}
void Shelf::removeInstrument(std::string_view name) {
    std::erase_if(instruments, [&](const InstrumentAdded& i) { return i.instrument == name; });
}
void Shelf::removeKit(std::string_view name) {
    std::erase_if(kits, [&](const ShelfKit& k) { return k.name == name; });
}

Result<Shelf> readShelf(const std::string& path) {
    if (!QFileInfo::exists(qtText(path))) {
        return Shelf();
    }
    const auto json = readText(path);
    if (!json) {
        return tl::unexpected(json.error());
    }
    const auto good = checkJson(*json);
    const QJsonDocument document = QJsonDocument::fromJson(QByteArray::fromStdString(*json));
    const int version = document.object().value("version").toInt();
    auto shelf =
        !good ? Result<Shelf>(tl::unexpected(good.error()))
        : version == fileVersion
            ? shelfFrom(document.object())
            : Result<Shelf>(refuse(version > fileVersion ? Core::say("it is of a newer version of this program.")
                                                         : Core::say("it is not a file of this program.")));
    return shelf ? shelf
                 : Result<Shelf>(refuse(Core::say("The shop's people and instruments in %1 cannot be used: %2 Mend the "
                                                  "file or move it away to start over.",
                                                  inQuotes(path), shelf.error().sentence)));
}

Result<void> writeShelf(const std::string& path, const Shelf& shelf) {
    QJsonArray kits;
    for (const ShelfKit& kit : shelf.kits) {
        kits.append(QJsonObject{{"name", qtText(kit.name)},
                                {"shims", jsonOf(bodiesOf(kit.shims))},
                                {"readings", jsonOf(bodiesOf(kit.readings))}});
    }
    const QJsonObject root{{"version", fileVersion},
                           {"people", jsonOf(bodiesOf(shelf.people))},
                           {"instruments", jsonOf(bodiesOf(shelf.instruments))},
                           {"kits", kits}};
    return writeText(path, QJsonDocument(root).toJson().toStdString());
}

std::vector<Body> peopleToAdd(const Shelf& shelf, const Facts& facts) {
    std::vector<Body> bodies;
    for (const PersonAdded& person : shelf.people) {
        if (!facts.people.contains(person.name)) {
            bodies.emplace_back(person);
        }
    }
    return bodies;
}

std::vector<Body> instrumentsToAdd(const Shelf& shelf, const Facts& facts) {
    std::vector<Body> bodies;
    for (const InstrumentAdded& instrument : shelf.instruments) {
        const auto here = facts.instruments.find(instrument.instrument);
        if (here == facts.instruments.end() || !isSame(asOnShelf(here->second.latest()), instrument)) {
            bodies.emplace_back(instrument);
        }
    }
    return bodies;
}

std::vector<Body> shimsToAdd(const ShelfKit& kit, const Facts& facts) {
    std::vector<Body> bodies;
    for (const ShimAdded& shim : kit.shims) {
        if (facts.shims.contains(shim.shim)) {
            continue;
        }
        bodies.emplace_back(shim);
        for (const ShimMeasured& reading : kit.readings) {
            if (reading.shim == shim.shim) {
                bodies.emplace_back(reading);
            }
        }
    }
    return bodies;
}

void keepFrom(Shelf& shelf, const Facts& facts, const std::string& kitName) {
    for (const auto& [name, person] : facts.people) {
        shelf.keep(person);
    }
    for (const auto& [name, instrument] : facts.instruments) {
        shelf.keep(instrument.latest());
    }
    if (kitName.empty()) {
        return;
    }
    ShelfKit kit{kitName, {}, {}};
    for (const auto& [name, shim] : facts.shims) {
        if (shim.isSetAside) {
            continue;
        }
        kit.shims.push_back(shim.added.what);
        for (const auto& reading : shim.readings) {
            kit.readings.push_back(reading.what);
            kit.readings.back().instrument.clear();
        }
    }
    shelf.keep(kit);
}

} // namespace caprail
