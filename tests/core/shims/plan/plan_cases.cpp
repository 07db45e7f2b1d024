// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_cases.h"
#include <algorithm>
#include <boost/property_tree/json_parser.hpp>
#include <boost/property_tree/ptree.hpp>
#include <filesystem>
#include <stdexcept>

namespace caprail::plancases {

PlanCase readCase(const std::string& path) {
    boost::property_tree::ptree json;
    boost::property_tree::read_json(path, json);
    if (json.get<std::string>("unit") != "0.0001 in") {
        throw std::runtime_error(path + ": unknown unit");
    }
    PlanCase out;
    out.name = json.get<std::string>("name");
    out.family = json.get<std::string>("family");
    std::vector<std::int64_t> band;
    for (const auto& [key, value] : json.get_child("band")) {
        band.push_back(value.get_value<std::int64_t>());
    }
    if (band.empty()) { // one number: as much on both sides
        const auto half = json.get<std::int64_t>("band");
        band = {-half, half};
    }
    out.request.band = Band::between(tenths(band.at(0)), tenths(band.at(1))).value();
    out.request.largestStack = json.get<int>("largest_stack");
    for (const auto& [key, p] : json.get_child("positions")) {
        out.request.positions.push_back({p.get<std::string>("id"), p.get<int>("cap"),
                                         p.get<std::string>("side") == "left" ? -1 : 1,
                                         tenths(p.get<std::int64_t>("gap")), std::nullopt});
    }
    for (const auto& [key, s] : json.get_child("shims")) {
        out.request.shims.push_back({s.get<std::string>("id"), tenths(s.get<std::int64_t>("thickness"))});
    }
    if (const auto rows = json.get_child_optional("stiffness")) {
        for (const auto& [key, row] : *rows) {
            for (const auto& [inner, value] : row) {
                out.request.stiffness.push_back(value.get_value<double>() / inMillimetres(tenths(1)));
            }
        }
    }
    KnownBest best;
    if (const auto load = json.get_child_optional("best_with_least_load")) {
        best.inBand = load->get<int>("in_band");
        best.shims = load->get<int>("shims");
        best.leastLargestLoad = load->get<double>("largest_load");
        best.leastSumSquareLoad = load->get<double>("sum_square_load");
        out.best = best;
        return out;
    }
    best.inBand = json.get<int>("best.in_band");
    best.shims = json.get<int>("best.shims");
    best.largestResidual = json.get<std::int64_t>("best.largest_residual");
    best.sumResidual = json.get<std::int64_t>("best.sum_residual");
    if (const auto twist = json.get_optional<std::int64_t>("best_with_least_twist.twist_sum")) {
        best.leastTwistSum = *twist;
    }
    out.best = best;
    return out;
}

std::vector<PlanCase> readCases(const std::string& folder) {
    std::vector<std::string> paths;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().extension() == ".json") {
            paths.push_back(entry.path().string());
        }
    }
    std::sort(paths.begin(), paths.end());
    std::vector<PlanCase> cases;
    for (const std::string& path : paths) {
        cases.push_back(readCase(path));
    }
    return cases;
}

const char* nameOf(Family family) {
    switch (family) {
    case Family::plentiful:
        return "plentiful";
    case Family::measured40:
        return "measured, 40";
    case Family::measured80:
        return "measured, 80";
    case Family::measured120:
        return "measured, 120";
    case Family::scarce:
        return "scarce";
    case Family::exact:
        return "exact fit";
    case Family::tight:
        return "measured, 40, any gaps";
    case Family::unmet:
        return "cannot be met";
    case Family::parity:
        return "parity";
    case Family::triples:
        return "triples";
    case Family::noLimit:
        return "no stack limit";
    case Family::noLimitAny:
        return "no stack limit, any share";
    case Family::twins:
        return "twins";
    case Family::twinsAny:
        return "twins, any gap";
    case Family::tiny:
        return "tiny";
    case Family::large:
        return "20 × 200";
    case Family::thin:
        return "thin leaves, no stack limit";
    case Family::thinLimited:
        return "thin leaves, limit 12";
    }
    return "";
}

namespace {
const std::vector<int> markedSizes = {10,  20,  30,  40,  50,  60,  70,  80,  90,  100, 120, 150,
                                      200, 210, 220, 230, 240, 250, 260, 270, 280, 290, 300};

class Maker {
public:
    explicit Maker(unsigned seed) : m_random(seed) {}

    int between(int lo, int hi) { // not std::uniform_int_distribution: the same cases on every library
        return lo + static_cast<int>(m_random() % static_cast<unsigned>(hi - lo + 1));
    }
    int size(bool jitter) {
        const int marked = markedSizes[static_cast<std::size_t>(between(0, static_cast<int>(markedSizes.size()) - 1))];
        return marked + (jitter ? between(-4, 4) : 0);
    }
    void band(int lo, int hi) { request.band = Band::between(tenths(lo), tenths(hi)).value(); }
    void gap(int value) {
        const int n = static_cast<int>(request.positions.size());
        const int cap = n / 2 + 1;
        request.positions.push_back({"C" + std::to_string(cap) + (n % 2 == 0 ? "L" : "R"), cap, n % 2 == 0 ? -1 : 1,
                                     tenths(value), std::nullopt});
    }
    void shim(int thickness) {
        std::string number = std::to_string(request.shims.size() + 1);
        number.insert(0, 3 - std::min<std::size_t>(3, number.size()), '0');
        request.shims.push_back({"S" + number, tenths(thickness)});
    }
    void kit(int shims, bool jitter) {
        for (int i = 0; i < shims; ++i) {
            shim(size(jitter));
        }
    }
    /// A gap that a fresh stack of the kit to be would fill, give or take `off`.
    void planted(int stack, bool jitter, int off) {
        int total = 0;
        for (int i = 0; i < stack; ++i) {
            const int t = size(jitter);
            total += t;
            shim(t);
        }
        gap(total + between(-off, off));
    }
    /// A gap that shims already in the kit would fill.
    void fromKit(int stack) {
        std::int64_t total = 0;
        for (int i = 0; i < stack; ++i) {
            total += request.shims[m_random() % request.shims.size()].thickness.value();
        }
        gap(static_cast<int>(total / 2540));
    }

    PlanRequest request;

private:
    std::mt19937 m_random;
};
} // namespace

PlanCase makeCase(Family family, unsigned seed) {
    Maker make(seed * 7919 + static_cast<unsigned>(family) * 104729 + 17);
    PlanRequest& r = make.request;
    r.largestStack = 5;
    make.band(-5, 5);
    const int seats = seed % 2 == 0 ? 8 : 10;
    const int spread = family == Family::measured40 ? make.between(20, 60) : make.between(20, 250);
    const int middle = family == Family::measured40 ? make.between(270, 330) : make.between(300, 600);
    switch (family) {
    case Family::plentiful: {
        r.largestStack = 4;
        const int copies = make.between(3, 6);
        for (int size : markedSizes) {
            for (int i = 0; i < copies; ++i) {
                make.shim(size);
            }
        }
        for (int i = 0; i < seats; ++i) {
            make.gap(middle + make.between(-spread, spread));
        }
        break;
    }
    case Family::measured40:
    case Family::measured80:
    case Family::measured120:
    case Family::tight:
        make.kit(family == Family::measured80 ? 80 : family == Family::measured120 ? 120 : 40, true);
        for (int i = 0; i < seats; ++i) {
            make.gap(middle + make.between(-spread, spread));
        }
        break;
    case Family::scarce: {
        const bool jitter = seed % 3 == 0;
        for (int i = 0; i < seats; ++i) {
            make.planted(make.between(1, 4), jitter, 4);
        }
        make.kit(make.between(0, 6), jitter);
        break;
    }
    case Family::exact:
        make.band(0, 0);
        make.kit(make.between(2, 6) * 20, true);
        for (int i = 0; i < seats; ++i) {
            make.fromKit(make.between(2, 4));
        }
        break;
    case Family::unmet:
        if (seed % 2 == 0) {
            make.kit(80, true);
            for (int i = 0; i < seats; ++i) {
                make.gap(i % 5 == static_cast<int>(seed % 5) ? make.between(1300, 1700)
                                                             : middle + make.between(-spread, spread));
            }
        } else {
            make.band(-3, 3);
            make.kit(make.between(14, 22), true);
            for (int i = 0; i < seats; ++i) {
                make.gap(make.between(250, 500));
            }
        }
        break;
    case Family::parity:
        for (int i = 0; i < 80; ++i) {
            make.shim(make.size(true) / 2 * 2);
        }
        if (seed % 4 == 3) {
            make.band(-1, 1);
        }
        for (int i = 0; i < seats; ++i) {
            make.gap(make.between(150, 400) * 2 + 1);
        }
        break;
    case Family::triples:
        r.largestStack = 3;
        make.band(seed % 4 < 2 ? 0 : -1, seed % 4 < 2 ? 0 : 1);
        for (int i = 0; i < seats; ++i) {
            int total = 0;
            for (int k = 0; k < 3; ++k) {
                const int t = make.between(200, 300);
                total += t;
                make.shim(t);
            }
            make.gap(total);
        }
        break;
    case Family::noLimit:
    case Family::noLimitAny: {
        r.largestStack = 0;
        make.kit(40, true);
        std::int64_t total = 0;
        for (const PlanShim& s : r.shims) {
            total += s.thickness.value() / 2540;
        }
        const int each =
            static_cast<int>(total * (family == Family::noLimit ? 97 : make.between(80, 97)) / 100 / seats);
        for (int i = 0; i < seats; ++i) {
            make.gap(each + make.between(-20, 20));
        }
        break;
    }
    case Family::twins:
    case Family::twinsAny: {
        const int sizes = make.between(3, 6);
        for (int i = 0; i < sizes; ++i) {
            const int t = make.size(true);
            for (int k = make.between(4, 9); k > 0; --k) {
                make.shim(t);
            }
        }
        int gap = 0;
        if (family == Family::twinsAny) {
            r.largestStack = make.between(0, 5);
            gap = make.between(200, 700);
        } else {
            r.largestStack = seed % 2 == 0 ? 0 : 5;
            const std::vector<PlanShim>& kit = r.shims;
            std::int64_t sum = 0;
            for (int k = make.between(2, 4); k > 0; --k) {
                sum +=
                    kit[static_cast<std::size_t>(make.between(0, static_cast<int>(kit.size()) - 1))].thickness.value();
            }
            gap = static_cast<int>(sum / 2540);
        }
        for (int i = 0; i < seats; ++i) {
            make.gap(gap + make.between(0, 2));
        }
        break;
    }
    case Family::tiny:
        r.largestStack = seed % 2 == 0 ? 0 : 4;
        make.band(-make.between(0, 5), make.between(0, 5));
        for (int i = 0; i < 10; ++i) {
            make.shim(make.between(8, 60));
        }
        make.gap(make.between(-3, 120));
        make.gap(make.between(-3, 120));
        break;
    case Family::large:
        make.kit(200, true);
        for (int i = 0; i < 20; ++i) {
            make.gap(middle + make.between(-spread, spread));
        }
        break;
    case Family::thin:
    case Family::thinLimited: {
        r.largestStack = family == Family::thin ? 0 : 12;
        const int width = make.between(2, 5);
        make.band(-width, width);
        for (int n = make.between(60, 200); n > 0; --n) {
            make.shim(make.between(5, 60));
        }
        for (int n = make.between(8, 20); n > 0; --n) {
            make.gap(make.between(200, 600));
        }
        break;
    }
    }
    return {std::string(nameOf(family)) + " " + std::to_string(seed), nameOf(family), std::move(r), std::nullopt};
}

namespace {
void handOut(const PlanRequest& request, std::size_t shim, std::vector<Length>& residuals, std::vector<int>& sizes,
             const ShowHandOut& show) {
    if (shim == request.shims.size()) {
        show(residuals, sizes);
        return;
    }
    handOut(request, shim + 1, residuals, sizes, show);
    for (std::size_t p = 0; p < residuals.size(); ++p) {
        residuals[p] -= request.shims[shim].thickness;
        ++sizes[p];
        handOut(request, shim + 1, residuals, sizes, show);
        residuals[p] += request.shims[shim].thickness;
        --sizes[p];
    }
}
} // namespace

void handOutInEveryWay(const PlanRequest& request, const ShowHandOut& show) {
    std::vector<Length> residuals;
    for (const PlanPosition& p : request.positions) {
        residuals.push_back(p.gap);
    }
    std::vector<int> sizes(residuals.size(), 0);
    handOut(request, 0, residuals, sizes, show);
}

} // namespace caprail::plancases
