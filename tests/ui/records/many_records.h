// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Two hundred invented records of a shop in folders by year, for its window's tests and pictures.
#include "../../core/shop/shop_records.h"

namespace caprail::shoptest {

inline constexpr const char* customers[] = {"Orrin Vale",    "Ines Roth", "Bea Lund",      "Tomas Quist", "Kofi Ames",
                                            "Léa Marchetti", "Sven Haas", "Halden Marine", "Ada Okoro"};
inline constexpr const char* engines[] = {"6.2 V8", "3.0 straight six", "7.0 V8", "2.5 four"};
inline constexpr const char* workers[] = {"Mira Solheim", "Jon Berg", "Petra Nowak"};
inline constexpr const char* notes[] = {"burr on the rail at cap 2 stoned away", "oil hole chamfered",
                                        "customer asks for photos of every journal", "crank polished, second time",
                                        "thread insert at main 3 left"};

/// One of the few kinds of progress that records have.
inline Ledger recordOf(int i) {
    Maker maker(workers[i % 3], {morning.milliseconds - (i * 37 % 400) * 86'400'000LL - i * 61'000LL});
    maker.begin(customers[i % 9], engines[i % 4], "KL-" + std::to_string(2200 + i),
                i % 3 == 0 ? "Three mains" : "Three mains, race");
    maker.make(NoteAdded{"", notes[i % 5]});
    if (i % 6 == 0) {
        return maker.ledger;
    }
    maker.tightenAll();
    maker.bearings(2.4480 - (i % 7) * 0.00005, i % 8 == 5 ? 2.4509 : 2.4502);
    if (i % 6 == 1) {
        return maker.ledger;
    }
    maker.survey(50 + i % 4);
    maker.kit(50 + i % 4);
    maker.stacks();
    if (i % 6 == 2 || i % 8 == 5) {
        return maker.ledger;
    }
    maker.trialFit();
    maker.liftStacks();
    maker.round(i % 6 == 3 ? std::vector<std::string>{"main-2R", "rod-1L"} : std::vector<std::string>{});
    if (i % 6 == 5) {
        maker.close();
    }
    return maker.ledger;
}

/// So many records below `folder`; three files among them are no records that can be read, one was made by a clock
/// that was years ahead.
inline void shopOf(const std::string& folder, int count) {
    for (int i = 0; i < count; ++i) {
        const std::string path = folder + "/" + std::to_string(2024 + i % 3) + "/" + customers[i % 9] + "-" +
                                 std::to_string(2200 + i) + ".caprail";
        write(path, recordOf(i));
    }
    std::ofstream(folder + "/2024/letter.caprail") << "Dear sir, the crank is ready. " << std::string(200, '.');
    std::filesystem::copy_file(folder + "/2024/" + customers[0] + "-2200.caprail", folder + "/2025/torn.caprail");
    std::filesystem::resize_file(folder + "/2025/torn.caprail", 3'000);
    Maker ahead("Jon Berg", {morning.milliseconds + 4LL * 365 * 86'400'000});
    ahead.begin("Ada Okoro", "2.5 four", "KL-9");
    write(folder + "/2025/two\nlines.caprail", ahead.ledger);
}

} // namespace caprail::shoptest
