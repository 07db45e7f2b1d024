// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <assessment/facts.h>
#include <vector>

namespace caprail {

/// A kit of shims as it lies in the shop, with what was measured.
struct ShelfKit {
    std::string name;
    std::vector<ShimAdded> shims;
    std::vector<ShimMeasured> readings; ///< `instrument` is empty: the record that measured it is another one
    friend bool operator==(const ShelfKit& a, const ShelfKit& b);
};

/// What a shop has for every engine: people, instruments and kits on the shelf. It is copied into a record when it is
/// used there, so that the record stands alone; changing the shelf changes no record.
struct Shelf {
    std::vector<PersonAdded> people;
    std::vector<InstrumentAdded> instruments;
    std::vector<ShelfKit> kits;

    /// One of the same name is replaced.
    void keep(const PersonAdded& person);
    void keep(const InstrumentAdded& instrument);
    void keep(const ShelfKit& kit);
    void removePerson(std::string_view name);
    void removeInstrument(std::string_view name);
    void removeKit(std::string_view name);
};

/// The shelf's file: JSON. A file that is not there is an empty shelf; refuses, naming it, one that cannot be read.
Result<Shelf> readShelf(const std::string& path);
Result<void> writeShelf(const std::string& path, const Shelf& shelf);

/// What to enter so that a record has these: those that it has already just so are left out; an instrument whose
/// calibration differs is entered anew.
std::vector<Body> peopleToAdd(const Shelf& shelf, const Facts& facts);
std::vector<Body> instrumentsToAdd(const Shelf& shelf, const Facts& facts);
/// Shims that the record has under the same name are left out.
std::vector<Body> shimsToAdd(const ShelfKit& kit, const Facts& facts);

/// A record's people and instruments onto the shelf, and its shims as a kit where `kitName` is not empty (those set
/// aside stay out; a shim's readings go with it).
void keepFrom(Shelf& shelf, const Facts& facts, const std::string& kitName);

} // namespace caprail
