// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <shims/shim_kit.h>
#include <string>
#include <units/length.h>
#include <base/problem.h>
#include <vector>

namespace caprail {

/// The shims under one place of the girdle. The same shim twice cannot be built.
class ShimStack {
public:
    /// Takes shims of the kit by id, none for a bare place; refuses one that the kit does not have, that is set aside,
    /// or that is named twice.
    static Result<ShimStack> of(const ShimKit& kit, const std::vector<std::string>& ids);

    [[nodiscard]] const std::vector<Shim>& shims() const { return m_shims; }
    /// Sum of the shims, each measured where there is a measurement, else as marked.
    [[nodiscard]] Length thickness() const;
    /// Gap minus thickness: positive loose, negative proud.
    [[nodiscard]] Length residual(Length gap) const { return gap - thickness(); }
    /// Every shim has a micrometer reading; a stack of which that is not true does not pass its check.
    [[nodiscard]] bool isFullyMeasured() const { return unmeasured().empty(); }
    /// The ids of the shims that still lack a reading.
    [[nodiscard]] std::vector<std::string> unmeasured() const;

private:
    std::vector<Shim> m_shims;
};

} // namespace caprail
