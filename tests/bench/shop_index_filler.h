// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// The index of a folder with many invented records, for the benchmarks: filled without the records themselves.
#include <cstdio>
#include <cstdlib>
#include <shop/shop_index.h>

namespace caprail::shopbench {

inline constexpr const char* firstNames[] = {"Orrin", "Ines", "Bea",  "Jon", "Mira",
                                             "Tomas", "Léa",  "Sven", "Ada", "Kofi"};
inline constexpr const char* lastNames[] = {"Vale",  "Roth",      "Lund",  "Berg", "Solheim",
                                            "Okoro", "Marchetti", "Quist", "Ames", "Haas"};

/// Makes the index of a folder that is not there, and gives the folder's path.
inline std::string fillIndex(const std::string& cacheFolder, int count, const RecordFigures& figures) {
    constexpr UtcTime morning{1'777'887'000'000};
    std::string path = "/srv/no-such-folder-" + std::to_string(count);
    auto index = ShopIndex::open(cacheFolder, path);
    auto done = !index ? Result<void>(tl::unexpected(index.error())) : index->together([&]() -> Result<void> {
        for (int i = 0; i < count; ++i) {
            ShopRow row;
            row.file = {std::to_string(i / 500) + "/" + lastNames[i % 10] + "-" + std::to_string(i) + ".caprail",
                        40'000 + i, i, i, i};
            row.reading = FileReading::assessed;
            RecordSummary& s = row.summary;
            s.customer = std::string(firstNames[i / 10 % 10]) + " " + lastNames[i % 10];
            s.engine = "Engine " + std::to_string(i % 97);
            s.serial = "KL-" + std::to_string(i);
            s.who = std::string(firstNames[i / 7 % 10]) + " " + lastNames[i / 3 % 10];
            s.people = s.who + "\n" + s.customer;
            s.lastEntry = {morning.milliseconds + (i * 7919 % count) * 60'000LL};
            s.entries = 200 + i % 300;
            s.state = static_cast<JobState>(1 + i % 4);
            s.round = i % 5;
            s.out = i % 3;
            s.stale = i % 11;
            s.templateName = "Template " + std::to_string(i % 6);
            s.layout = "5 mains of 2, 8 rods, 4 throws";
            const std::string words = s.customer + "\n" + s.engine + "\n" + s.serial + "\n" + s.people +
                                      "\nburr on the rail at cap " + std::to_string(i % 5) +
                                      ", settled by stoning\nnote " + std::to_string(i);
            if (auto put = index->put(row, words, figures); !put) {
                return put;
            }
        }
        return {};
    });
    if (!done) {
        std::fprintf(stderr, "%s\n", done.error().sentence.c_str());
        std::exit(1);
    }
    return path;
}

} // namespace caprail::shopbench
