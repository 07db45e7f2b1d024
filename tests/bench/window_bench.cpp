// SPDX-License-Identifier: GPL-3.0-or-later
/// The window and the sheet against the least that the same work can cost, in one run. Goals: started and drawn within
/// twice the wall time and 2.5 times the memory of a bare window with an empty plot; from a key to the picture of it
/// under 16 ms on an engine of nine caps; the sheet of the closed sample under a second.
#include <QApplication>
#include <QLineEdit>
#include <QPainter>
#include <QPdfWriter>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <array>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <resources/templates.h>
#include <sheet/sheet.h>
#include <stations/common/entry_field.h>
#include <stations/common/station.h>
#include <string>
#include <window/main_window.h>

namespace {

using namespace caprail;
using Clock = std::chrono::steady_clock;

[[noreturn]] void stop(const std::string& sentence) {
    std::fprintf(stderr, "window_bench: %s\n", sentence.c_str());
    std::exit(1);
}

const QString& scratch() {
    static const QTemporaryDir folder;
    static const QString path = folder.path();
    return path;
}

/// A writable copy of a sample.
QString copyOf(const char* sample) {
    const QString copy = scratch() + QLatin1Char('/') + QString::fromUtf8(sample) + QStringLiteral(".caprail");
    if (!QFile::exists(copy)) {
        if (!QFile::copy(QStringLiteral(SAMPLE_BUILDS "/%1.caprail").arg(QString::fromUtf8(sample)), copy)) {
            stop("the sample cannot be copied");
        }
        QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    }
    return copy;
}

/// The best of all runs so far of the two programs: what the machine does meanwhile only ever adds.
struct Best {
    double seconds = 1e9;
    double megabytes = 1e9;
};

/// From the call of a program to its first picture, when it prints its memory; closing it is not part of the start.
void started(benchmark::State& state, const std::string& command, Best& best) {
    for (auto _ : state) {
        const auto begun = Clock::now();
        FILE* pipe = popen(("exec " + command).c_str(), "r"); // NOLINT(cert-env33-c): our own programs
        long kilobytes = 0;
        const int read = pipe == nullptr ? 0 : std::fscanf(pipe, "%ld", &kilobytes);
        const double seconds = std::chrono::duration<double>(Clock::now() - begun).count();
        if (pipe == nullptr || pclose(pipe) != 0 || read != 1) {
            stop(command + " did not run");
        }
        state.SetIterationTime(seconds);
        best = {std::min(best.seconds, seconds), std::min(best.megabytes, static_cast<double>(kilobytes) / 1024)};
    }
    state.counters["best_ms"] = best.seconds * 1000;
    state.counters["peak_MiB"] = best.megabytes;
}

Best& bare() {
    static Best best;
    return best;
}

void BareWindow(benchmark::State& state) {
    started(state, BARE_WINDOW, bare());
}
BENCHMARK(BareWindow)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(15);

void OpenedWindow(benchmark::State& state, const char* sample) {
    Best best;
    started(state, std::string(OPENED_WINDOW) + " '" + copyOf(sample).toStdString() + "'", best);
    state.counters["x_wall"] = best.seconds / bare().seconds;       // goal: 2
    state.counters["x_memory"] = best.megabytes / bare().megabytes; // goal: 2.5
}
BENCHMARK_CAPTURE(OpenedWindow, mid_survey, "mid-survey")
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(15);
BENCHMARK_CAPTURE(OpenedWindow, closed, "closed")->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(15);

/// Nine caps, eighteen positions, two readings at each but the last: the one that the field then asks for.
std::unique_ptr<RecordSession> longestEngine() {
    const QString path = scratch() + QStringLiteral("/nine-caps.caprail");
    QFile::remove(path);
    auto session =
        RecordSession::create(path, "Ann Carpenter", {"", "", "V16", "", ""}, templateLines(templateTitles().front()));
    if (!session) {
        stop(session.error().sentence);
    }
    LayoutSet layout;
    layout.caps = 9;
    layout.fastenersPerCap = 4;
    layout.tiedLast = 9;
    layout.rods = 16;
    layout.throws = 8;
    layout.pickupCap = 8;
    layout.source = "invented";
    if (const auto set = (*session)->append(layout); !set) {
        stop(set.error().sentence);
    }
    for (int pass = 1; pass <= 2; ++pass) {
        for (const Position p : (*session)->facts().layout->positions()) {
            if (pass == 2 && code(p) == "5R") {
                continue;
            }
            GapReading reading;
            reading.pass = pass;
            reading.position = p;
            reading.gap = {thou(40 + p.cap), "typed"};
            if (const auto read = (*session)->append(reading); !read) {
                stop(read.error().sentence);
            }
        }
    }
    return std::move(*session);
}

void paintAll() {
    QCoreApplication::sendPostedEvents();
    QCoreApplication::processEvents();
}

/// From a key in a field of a bare window to the picture of it.
void KeyInBareField(benchmark::State& state) {
    QLineEdit field;
    field.resize(300, 40);
    field.show();
    field.setFocus();
    paintAll();
    bool isTyped = false;
    for (auto _ : state) {
        QTest::keyClick(&field, isTyped ? Qt::Key_Backspace : Qt::Key_5);
        isTyped = !isTyped;
        paintAll();
    }
}
BENCHMARK(KeyInBareField)->Unit(benchmark::kMillisecond)->UseRealTime();

/// The same in the girdle station's field, with all that follows a key there: echo, diagram, charts.
void KeyAtTheGirdle(benchmark::State& state) {
    MainWindow window;
    window.setAttribute(Qt::WA_DeleteOnClose, false);
    window.resize(1280, 800);
    window.take(longestEngine());
    window.show();
    window.showDestination({Station::girdle, "5R"});
    paintAll();
    const EntryField* entry = window.panel(Station::girdle)->entryField();
    if (entry == nullptr || !entry->isVisible()) {
        stop("there is no field at the girdle station");
    }
    QLineEdit* field = entry->lineEdit();
    const QString before = field->text();
    bool isTyped = false;
    double longest = 0;
    for (auto _ : state) {
        const auto begun = Clock::now();
        QTest::keyClick(field, isTyped ? Qt::Key_Backspace : Qt::Key_5);
        isTyped = !isTyped;
        paintAll();
        longest = std::max(longest, std::chrono::duration<double, std::milli>(Clock::now() - begun).count());
    }
    if (!isTyped && field->text() != before) {
        stop("the keys did not reach the field");
    }
    state.counters["longest_ms"] = longest; // goal: 16
}
BENCHMARK(KeyAtTheGirdle)->Unit(benchmark::kMillisecond)->UseRealTime();

/// A PDF/A of as many pages as the sheet of the closed sample, with one line on each.
void BarePdf(benchmark::State& state) {
    for (auto _ : state) {
        QPdfWriter writer(scratch() + QStringLiteral("/bare.pdf"));
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        QPainter painter(&writer);
        for (int page = 0; page < 7; ++page) {
            if (page > 0) {
                writer.newPage();
            }
            painter.drawText(200, 200, QStringLiteral("one line"));
        }
    }
}
BENCHMARK(BarePdf)->Unit(benchmark::kMillisecond)->UseRealTime();

void SheetOfTheClosedSample(benchmark::State& state) {
    const auto session = RecordSession::open(copyOf("closed"));
    if (!session) {
        stop(session.error().sentence);
    }
    const SheetSource source{(*session)->ledger(), (*session)->facts(), (*session)->assessment(), {}};
    for (auto _ : state) {
        if (const auto written = writeSheet(source, scratch() + QStringLiteral("/sheet.pdf"), {}); !written) {
            stop(written.error().sentence);
        }
    }
}
BENCHMARK(SheetOfTheClosedSample)->Unit(benchmark::kMillisecond)->UseRealTime(); // goal: 1000

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen"); // inherited by both programs
    qputenv("XDG_CONFIG_HOME", scratch().toUtf8());
    qputenv("QT_LOGGING_RULES", "*=false");
    const QApplication application(argc, argv);
    QCoreApplication::setOrganizationName(QStringLiteral("caprail-bench"));
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
