// SPDX-License-Identifier: GPL-3.0-or-later
/// The girdle's forces against an independent finite-element program: CalculiX (Debian package calculix-ccx), shells
/// S8R (eight nodes, reduced integration) on a mesh of its own, with in-plane motion and shear that the program's thin
/// plate leaves out. The forces that F = K·r says are laid on its shell, whose heights at the nuts must be the
/// residuals again, within 3 %. The plates are thin, so that shear counts for little.
#include "../girdles.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <load/plate_grid.h>
#include <map>
#include <sstream>
#include <unistd.h>

namespace {

using namespace caprail;
using load::GridPoint;

/// A shell model in CalculiX's text form. Corner nodes, then those in the middle of edges, as they come up.
class ShellMesh {
public:
    ShellMesh(const load::PlateGrid& grid, const GirdlePlate& plate) {
        m_text << "*NODE, NSET=ALL\n";
        std::ostringstream elements;
        int element = 0;
        for (std::size_t j = 0; j < grid.cellsY(); ++j) {
            for (std::size_t i = 0; i < grid.cellsX(); ++i) {
                if (grid.metal(i, j) < 0.5) {
                    continue;
                }
                const double x1 = grid.x()[i], x2 = grid.x()[i + 1], y1 = grid.y()[j], y2 = grid.y()[j + 1];
                const std::array<int, 8> nodes{node(x1, y1),
                                               node(x2, y1),
                                               node(x2, y2),
                                               node(x1, y2),
                                               node((x1 + x2) / 2, y1),
                                               node(x2, (y1 + y2) / 2),
                                               node((x1 + x2) / 2, y2),
                                               node(x1, (y1 + y2) / 2)};
                elements << ++element;
                for (const int n : nodes) {
                    elements << "," << n;
                }
                elements << "\n";
            }
        }
        m_text << "*ELEMENT, TYPE=S8R, ELSET=PLATE\n"
               << elements.str() << "*MATERIAL, NAME=METAL\n*ELASTIC\n"
               << inMegapascals(plate.youngsModulus) << "," << plate.poissonRatio
               << "\n*SHELL SECTION, ELSET=PLATE, MATERIAL=METAL\n"
               << inMillimetres(plate.thickness) << "\n";
    }

    /// The node at a corner of the mesh, whatever way its coordinates were rounded; 0: none.
    int at(GridPoint p) const {
        for (const auto& [place, node] : m_nodes) {
            constexpr double reach = 1e-3;
            if (std::hypot(static_cast<double>(place.first) / perMillimetre - p.x,
                           static_cast<double>(place.second) / perMillimetre - p.y) < reach) {
                return node;
            }
        }
        return 0;
    }
    std::ostringstream& text() { return m_text; }

private:
    static constexpr double perMillimetre = 1e4;
    static std::pair<long, long> key(double x, double y) {
        return {std::lround(x * perMillimetre), std::lround(y * perMillimetre)};
    }
    int node(double x, double y) {
        const auto [at, isNew] = m_nodes.emplace(key(x, y), static_cast<int>(m_nodes.size()) + 1);
        if (isNew) {
            m_text << at->second << "," << x << "," << y << ",0\n";
        }
        return at->second;
    }
    std::ostringstream m_text;
    std::map<std::pair<long, long>, int> m_nodes;
};

bool hasCalculix() {
    return std::system("command -v ccx > /dev/null 2>&1") == 0;
}

/// Heights at the nuts under each set of forces, as CalculiX works them out.
std::vector<std::vector<double>> heightsByCalculix(ShellMesh& mesh, const std::vector<GridPoint>& nuts,
                                                   const std::vector<GridPoint>& fasteners,
                                                   const std::vector<std::vector<Force>>& loads) {
    auto& text = mesh.text();
    text << "*NSET, NSET=NUTS\n";
    for (const GridPoint& nut : nuts) {
        text << mesh.at(nut) << ",\n";
    }
    text << "*BOUNDARY\n";
    for (const GridPoint& fastener : fasteners) {
        text << mesh.at(fastener) << ",3,3\n";
    }
    // Nothing pulls along the plate: three supports keep it from drifting.
    text << mesh.at(fasteners.front()) << ",1,2\n" << mesh.at(fasteners.back()) << ",2,2\n";
    for (const auto& forces : loads) {
        text << "*STEP\n*STATIC\n*CLOAD, OP=NEW\n";
        for (std::size_t i = 0; i < nuts.size(); ++i) {
            text << mesh.at(nuts[i]) << ",3," << inNewtons(forces[i]) << "\n";
        }
        text << "*NODE PRINT, NSET=NUTS\nU\n*END STEP\n";
    }
    const auto folder =
        std::filesystem::temp_directory_path() / ("plate-" + std::to_string(static_cast<long>(::getpid())));
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "plate.inp") << text.str();
    const std::string command = "cd '" + folder.string() + "' && OMP_NUM_THREADS=1 ccx -i plate > plate.log 2>&1";
    EXPECT_EQ(std::system(command.c_str()), 0);
    std::map<int, std::size_t> index;
    for (std::size_t i = 0; i < nuts.size(); ++i) {
        index[mesh.at(nuts[i])] = i;
    }
    std::vector<std::vector<double>> heights;
    std::ifstream in(folder / "plate.dat");
    for (std::string line; std::getline(in, line);) {
        if (line.find("displacements") != std::string::npos) {
            heights.emplace_back(nuts.size(), std::nan(""));
            continue;
        }
        std::istringstream row(line);
        int node = 0;
        double x = 0, y = 0, z = 0;
        if (row >> node >> x >> y >> z && index.count(node) == 1 && !heights.empty()) {
            heights.back()[index[node]] = z;
        }
    }
    std::filesystem::remove_all(folder);
    return heights;
}

struct LayoutCase {
    const char* name;
    LayoutDescription description;
    GirdlePlate plate;
    int panFasteners = 0;
};

std::vector<LayoutCase> layouts() {
    const GirdlePlate steel{inches(0.08), psi(30e6), 0.292};
    LayoutCase outer{"five caps of four fasteners, the girdle on the outer ones", described(5, 1, 5), steel, 24};
    outer.description.fastenersPerCap = 4;
    outer.description.girdleRing = Ring::outer;
    outer.description.railSpan = inches(9.4);
    LayoutCase windows{"four caps, small windows, an overhang of 1.8 in", described(4, 1, 4), steel, 20};
    windows.plate.shape = {inches(1.5), inches(2.0), inches(1.8)};
    return {{"five caps", described(5, 1, 5), steel, 18},
            {"three caps in aluminium", described(3, 1, 3), {inches(0.1), psi(10.4e6), 0.333}, 16},
            {"seven caps, the second to the sixth tied", described(7, 2, 6), steel, 30},
            outer,
            windows};
}

/// Finer where the round cutout is, which the shells follow in steps.
load::PlateGrid meshFor(const GirdleOutline& outline, const std::vector<GridPoint>& nuts,
                        std::vector<GridPoint> lines) {
    constexpr int steps = 20;
    for (int i = 0; i <= steps; ++i) {
        const double way = outline.cutout.radius * (2.0 * i / steps - 1);
        lines.push_back({std::clamp(outline.cutout.x + way, outline.plate.x1, outline.plate.x2),
                         std::clamp(outline.cutout.y + way, outline.plate.y1, outline.plate.y2)});
    }
    return load::fitGrid(outline, nuts, lines, 16, 1e-3).grid;
}

class LoadAgainstCalculix : public testing::TestWithParam<std::size_t> {};

TEST_P(LoadAgainstCalculix, agrees_within_three_per_cent) {
    if (!hasCalculix()) {
        GTEST_SKIP() << "CalculiX is not installed (Debian package calculix-ccx): nothing to compare with.";
    }
    const LayoutCase given = layouts()[GetParam()];
    const EngineLayout layout = *EngineLayout::from(given.description);
    const Springs rigid(layout.positions().size(), newtonsPerMillimetre(1e12));
    const auto model = girdleOf(layout, given.plate, given.panFasteners, rigid);
    ASSERT_TRUE(model) << model.error().sentence;
    std::vector<GridPoint> nuts;
    for (const Position p : model->places()) {
        nuts.push_back({inMillimetres(layout.at(p).x), inMillimetres(layout.at(p).y)});
    }
    std::vector<GridPoint> fasteners;
    for (const PlanPoint f : model->railFasteners()) {
        fasteners.push_back({inMillimetres(f.x), inMillimetres(f.y)});
    }
    const load::PlateGrid grid = meshFor(girdleOutline(layout, given.plate.shape), nuts, fasteners);
    ShellMesh mesh(grid, given.plate);
    // One place alone; a twist; a spread as it is found.
    std::vector<std::vector<Length>> residuals(3, std::vector<Length>(nuts.size()));
    residuals[0][2] = thou(10);
    for (std::size_t i = 0; i < nuts.size(); ++i) {
        residuals[1][i] = thou((i % 2 == 0 ? 1.0 : -1.0) * (static_cast<double>(i / 2) - 1.0));
        residuals[2][i] = thou(static_cast<double>(i * i * 7 % 11) - 4.0);
    }
    std::vector<std::vector<Force>> loads;
    for (const auto& r : residuals) {
        loads.push_back(model->forces(r, Rail::held));
    }
    const auto heights = heightsByCalculix(mesh, nuts, fasteners, loads);
    ASSERT_EQ(heights.size(), residuals.size());
    double worst = 0;
    for (std::size_t k = 0; k < residuals.size(); ++k) {
        double largest = 0;
        for (const Length r : residuals[k]) {
            largest = std::max(largest, std::abs(inMillimetres(r)));
        }
        for (std::size_t i = 0; i < nuts.size(); ++i) {
            const double off = (heights[k][i] - inMillimetres(residuals[k][i])) / largest;
            EXPECT_LT(std::abs(off), 0.03) << given.name << ", question " << k << ", " << describe(model->places()[i]);
            worst = std::max(worst, std::abs(off));
        }
    }
    RecordProperty("worst", std::to_string(worst));
    std::printf("%s: %.2f %%\n", given.name, 100 * worst);
}

INSTANTIATE_TEST_SUITE_P(FiveLayouts, LoadAgainstCalculix, testing::Range<std::size_t>(0, 5));

} // namespace
