// SPDX-License-Identifier: GPL-3.0-or-later
/// Tells the sample records anew and writes each as text and as a file: tell_samples FOLDER.
#include "story.h"

#include <cstdio>
#include <filesystem>
#include <store/text/text_form.h>

using namespace caprail;
using namespace caprail::samples;

namespace {

constexpr const char* fiveMains = "V8, five mains, two fasteners per cap.jsonl";
/// 2026-06-01T06:40:40Z
constexpr UtcTime morning{1'780'296'040'000};

/// Up to the first pass over the gaps.
Story begun(const char* customer, const char* engine, const char* serial) {
    Story story(morning);
    story.people();
    story.engine(fiveMains, customer, engine, serial);
    story.rodBolts();
    story.girdlePlate();
    story.instruments();
    story.bottomEnd();
    story.fits();
    story.gapPass(1, story.positions());
    return story;
}

/// Up to the stacks taken off for the verify round.
Story fitted(const char* customer, const char* engine, const char* serial) {
    Story story = begun(customer, engine, serial);
    story.gapPass(2, story.positions());
    story.kit();
    story.stacks(story.positions());
    story.trialFit();
    story.pickup();
    story.stacksOff();
    return story;
}

Ledger midSurvey() {
    Story story = begun("Joren Maas", "5.7 V8, tow car", "KL-2194");
    const std::vector<Position> some{{1, Side::left}, {1, Side::right}, {2, Side::left}, {2, Side::right}, {3, Side::left}};
    story.gapPass(2, some);
    GapReading wrong{{3, Side::right}, 2, {thou(56), "29+27 thou"}, "LEAVES-2"};
    const std::int64_t entry = story.tell(wrong, 30);
    story.tell(Struck{entry, "read at 4 left by mistake"}, 40);
    return story.ledger();
}

Ledger movedInRound() {
    Story story = fitted("Ruta Lindqvist", "6.0 V8, boat", "KL-2201");
    story.round(1, "main-4R", 5);
    story.tell(NoteAdded{"main-4R", "turned five degrees before the wrench clicked; stud and nut look sound"}, 60);
    return story.ledger();
}

/// After a nut of this cap moved in the first round: what it spoiled done again, a second round, and the engine closed.
void closeAfterMovement(Story& story, int cap, const char* verifiedBy) {
    story.tell(JudgedAgain{"main-clearance:main-" + std::to_string(cap),
                           "the cap went down by some 0.0001 in at the most likely; the band leaves more at its tight end"},
               120);
    const std::vector<Position> again{{cap, Side::left}, {cap, Side::right}};
    for (const int pass : {1, 2}) {
        story.gapPass(pass, again);
    }
    story.stacksOn();
    story.stacks(again);
    story.trialFit();
    story.stacksOff();
    story.person(verifiedBy);
    story.round(2);
    story.person("Mira Solheim");
    story.partsAndChecks();
    story.close();
}

Ledger closed() {
    Story story = fitted("Ines Halloran", "6.2 V8, hill climb", "KL-2188");
    story.round(1, "main-2R", 4);
    closeAfterMovement(story, 2, "Mira Solheim");
    return story.ledger();
}

/// From the bare block to the sign-off: a rear cap on bolts, a girdle over the front four, and two people.
Ledger rearCapOnBolts() {
    Story story(morning);
    story.people();
    story.engine(fiveMains, "Noor Aldersey", "5.4 V8, hill climb", "KL-2212");
    story.rodBolts();
    story.rearCapOnBolts();
    story.instruments();
    story.bottomEnd();
    story.fits();
    for (const int pass : {1, 2}) {
        story.gapPass(pass, story.positions());
    }
    const std::vector<Position> turned{{1, Side::right}};
    story.washerTurned(turned.front());
    for (const int pass : {1, 2}) {
        story.gapPass(pass, turned);
    }
    story.kit();
    story.stacks(story.positions());
    story.trialFit();
    story.pickup();
    story.stacksOff();
    story.person("Teo Brandt");
    story.round(1, "main-3R", 4);
    story.person("Mira Solheim");
    closeAfterMovement(story, 3, "Teo Brandt");
    return story.ledger();
}

bool write(const std::string& folder, const std::string& name, const Ledger& ledger) {
    const std::string text = folder + "/" + name + ".jsonl";
    const std::string record = folder + "/" + name + ".caprail";
    std::filesystem::remove(text);
    std::filesystem::remove(record);
    const auto written = exportLedger(ledger, text);
    const auto done = written ? importLedger(text, record) : tl::unexpected(written.error());
    if (!done) {
        std::fprintf(stderr, "%s\n", done.error().sentence.c_str());
    }
    return done.has_value();
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fprintf(stderr, "tell_samples FOLDER\n");
        return 2;
    }
    const bool done = write(argv[1], "mid-survey", midSurvey()) &&
                      write(argv[1], "moved-in-verify-round", movedInRound()) && write(argv[1], "closed", closed()) &&
                      write(argv[1], "rear-cap-on-bolts", rearCapOnBolts());
    return done ? 0 : 1;
}
