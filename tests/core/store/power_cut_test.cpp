// SPDX-License-Identifier: GPL-3.0-or-later
/// The power is cut at every change of the disk, one after another, and what was not synced is kept, lost or torn by
/// chance: every acknowledged entry is there, no half one, seals hold.
#include "power_cut_vfs.h"
#include "samples.h"

#include <store/care/check.h>

namespace caprail {
namespace {

using namespace samples;

struct Outcome {
    std::int64_t acknowledged = 0;
    bool wasCut = false;
};

/// Opens the record of three entries on the disk and appends three more, one of them with an attachment.
Outcome work(PowerCutDisk& disk, const std::string& path, int cutAt) {
    disk.cutAt(cutAt);
    Outcome outcome{3, false};
    {
        auto file = RecordFile::open(path, OpenMode::readWrite);
        EXPECT_TRUE(file && !file->isReadOnly());
        const std::string bytes(9'000, 'p');
        const AttachmentAdded photo{"", "p.jpg", "image/jpeg", "", sha256Hex(bytes), sha256Hex(bytes), 9'000};
        for (int i = 0; file && i < 3; ++i) {
            const auto stored = i == 1 ? file->appendWithAttachment(morning, "Ann", photo, bytes)
                                       : file->append(morning, "Ann", gap(1, Side::left, 570 + i));
            if (stored && !disk.isCut()) { // after the cut there is nobody left to hear an answer
                outcome.acknowledged = *stored;
            }
        }
    }
    outcome.wasCut = disk.isCut();
    return outcome;
}

/// Cuts the power at each change; gives how many outcomes were looked at, or the first that lost something.
int cutEverywhere(int waysPerCut, std::string& loss) {
    const Folder folder;
    const std::string path = folder / "smith.caprail";
    makeRecord(path, 3); // on the real disk: locks and permissions are looked up there
    const std::string fresh = read(path);
    PowerCutDisk disk;
    std::mt19937 chance(42);
    int looked = 0;
    for (int n = 1;; ++n) {
        for (int way = 0; way < waysPerCut; ++way) {
            disk.start({{path, fresh}});
            const Outcome outcome = work(disk, path, n);
            if (!outcome.wasCut) {
                EXPECT_EQ(outcome.acknowledged, 6);
                return looked;
            }
            std::map<std::string, std::string> left;
            for (const std::string& name : {path, path + "-journal"}) {
                if (auto content = disk.afterCut(name, chance)) {
                    left[name] = std::move(*content);
                }
            }
            disk.start(left);
            ++looked;
            const auto file = RecordFile::open(path, OpenMode::readWrite);
            const std::string where = "cut " + std::to_string(n) + ", way " + std::to_string(way) + ": ";
            if (!file) {
                loss = where + file.error().sentence;
            } else if (file->ledger().size() < outcome.acknowledged) {
                loss = where + std::to_string(file->ledger().size()) + " of " + std::to_string(outcome.acknowledged) +
                       " acknowledged entries";
            } else if (const CheckReport report = checkFile(path); report.verdict != CheckVerdict::sound) {
                loss = where + report.findings.front();
            }
            if (!loss.empty()) {
                return looked;
            }
        }
    }
}

TEST(PowerCut, at_any_moment_loses_no_acknowledged_entry) {
    std::string loss;
    const int looked = cutEverywhere(8, loss);
    EXPECT_EQ(loss, "");
    std::printf("%d outcomes of a power cut\n", looked);
    EXPECT_GT(looked, 300);
}

} // namespace
} // namespace caprail
