// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <functional>
#include <shims/solver/column_store.h>
#include <shims/solver/decision.h>
#include <shims/solver/incumbent.h>
#include <shims/solver/neighbourhood.h>
#include <shims/solver/open_seats.h>
#include <shims/solver/whole_kits.h>

namespace caprail::solver {

/// What no plan betters, each figure given that those before it are reached; with what is pinned.
struct Bounds {
    int leftOut = 0; ///< open seats, at least
    int fewestShims = 0;
    std::int64_t largest = 0;
    std::int64_t twist = 0;
    std::int64_t sum = 0;
    std::int64_t load = 0;
    std::int64_t squares = 0;
};

/// What the aims work with. All of it belongs to the solve that they are part of.
struct Tools {
    const OpenSeats& open;
    ColumnStore& store;
    WholeKits& kits;
    Decision& decision;
    Incumbent& incumbent;
    LargeNeighbourhoodSearch& improver;
    WorkClock& clock;
    Bounds& bounds;
};

/// One aim in the order of importance, settled over what is left by those before it: lexicographic optimisation, one
/// figure at a time. An aim bounds its figure, improves the incumbent as far as that comes cheap, and then proves:
/// closes what is between the two.
class Aim {
public:
    explicit Aim(Tools tools) : m_tools(tools) {}
    virtual ~Aim() = default;
    Aim(const Aim&) = delete;
    Aim& operator=(const Aim&) = delete;

    /// Settles it, once; false while it is open. An aim that could not be settled is so when a better plan, found
    /// elsewhere, has reached its bound.
    bool settle();

protected:
    virtual void bound() = 0;
    virtual void improve() = 0;
    virtual void prove() = 0;
    [[nodiscard]] virtual bool isClosed() const = 0;

    [[nodiscard]] const Instance& instance() const { return m_tools.open.instance(); }
    [[nodiscard]] Figures best() const { return m_tools.incumbent.figures(); }
    /// What the plans have in common that are as good as the incumbent by the aims before.
    [[nodiscard]] virtual Question question() const;
    /// Searches for a plan whose figure is `most` at most, for so many steps.
    using Lower = std::function<SearchOutcome(std::int64_t most, std::int64_t steps, unsigned probe)>;
    /// Raises the bound of a figure to what the stacks on offer allow, each seat by itself, found by halving. All that
    /// the question wants must be listed.
    void boundByOffers(std::int64_t Figures::*figure, std::int64_t Bounds::*atLeast, const Lower& search);
    /// Closes the gap between a figure of the incumbent and its bound, by `search`; leaves it open where there is no
    /// room for the stacks.
    void closeGap(std::int64_t Figures::*figure, std::int64_t Bounds::*atLeast, const Lower& search);

    Tools m_tools;

private:
    void closeOverListed(std::int64_t Figures::*figure, std::int64_t Bounds::*atLeast, const Lower& search);
    bool m_isTried = false;
};

/// Most seats, then fewest shims: together, since the one is tried for at each number of the other.
class MostSeatsFewestShims : public Aim {
public:
    using Aim::Aim;

private:
    void bound() override;
    void improve() override {}
    void prove() override;
    [[nodiscard]] bool isClosed() const override;
    [[nodiscard]] bool isServed() const;
    bool proveServing(int leftOut);
    bool boundByPrices(int leftOut);
};

class SmallestLargestResidual : public Aim {
public:
    using Aim::Aim;

private:
    void bound() override;
    void improve() override {}
    void prove() override;
    [[nodiscard]] bool isClosed() const override { return m_tools.bounds.largest >= best().largest; }
};

class LeastTwist : public Aim {
public:
    using Aim::Aim;

private:
    void bound() override;
    void improve() override;
    void prove() override;
    [[nodiscard]] bool isClosed() const override { return m_tools.bounds.twist >= best().twist; }
    SearchOutcome search(std::int64_t twist, std::int64_t steps, unsigned probe);

    Failures m_failures;
};

/// Least load, by one of its two figures: the largest |force|, or, with that settled, the sum of the forces' squares.
class LeastLoad : public Aim {
public:
    /// Where the figure stands in what the aims know, and in what a search is held to and finds.
    struct Of {
        std::int64_t Figures::*figure;
        std::int64_t Bounds::*bound;
        std::int64_t Limits::*limit;
        std::int64_t Found::*found;
    };
    static constexpr Of largestForce{&Figures::load, &Bounds::load, &Limits::load, &Found::load};
    static constexpr Of sumOfSquares{&Figures::squares, &Bounds::squares, &Limits::squares, &Found::squares};
    LeastLoad(Tools tools, Of of) : Aim(tools), m_of(of) {}

private:
    void bound() override {}
    void improve() override {}
    void prove() override;
    [[nodiscard]] bool isClosed() const override { return m_tools.bounds.*m_of.bound >= best().*m_of.figure; }
    SearchOutcome search(std::int64_t most, std::int64_t steps, unsigned probe);

    Of m_of;
};

class SmallestSumOfResiduals : public Aim {
public:
    using Aim::Aim;

private:
    void bound() override;
    void improve() override;
    void prove() override;
    [[nodiscard]] bool isClosed() const override { return m_tools.bounds.sum >= best().sum; }
    [[nodiscard]] Limits limits() const;
    [[nodiscard]] Question question() const override { return m_question; }
    SearchOutcome search(std::int64_t most, std::int64_t steps, unsigned probe);
    void priceSum(const Columns& columns);
    bool hasTooFewShims(const Columns& columns, std::int64_t most);
    [[nodiscard]] std::int64_t boundByPrices(const Columns& columns, std::int64_t target);

    Question m_question;                    ///< no |residual| can exceed the sum
    Prices m_prices;                        ///< for the sum of |residual|
    std::optional<std::size_t> m_pricedFor; ///< the listing's revision
    Prices m_forShims;
    std::int64_t m_shimsPricedFor = -1;
    Failures m_failures;
};

} // namespace caprail::solver
