// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <shims/shim_stack.h>
#include <base/say.h>

namespace caprail {

Result<ShimStack> ShimStack::of(const ShimKit& kit, const std::vector<std::string>& ids) {
    ShimStack stack;
    for (const std::string& id : ids) {
        const Shim* shim = kit.find(id);
        if (shim == nullptr) {
            return refuse(Core::say("The kit has no shim %1: add it to the kit first.", id));
        }
        if (shim->state() == ShimState::setAside) {
            return refuse(Core::say("Shim %1 is set aside: put it back into the kit or take another.", id));
        }
        const auto same = [&id](const Shim& s) { return s.id() == id; };
        if (std::any_of(stack.m_shims.begin(), stack.m_shims.end(), same)) {
            return refuse(Core::say("Shim %1 is named twice in one stack: there is only one of it.", id));
        }
        stack.m_shims.push_back(*shim);
    }
    return stack;
}

Length ShimStack::thickness() const {
    Length sum;
    for (const Shim& shim : m_shims) {
        sum += shim.thickness();
    }
    return sum;
}

std::vector<std::string> ShimStack::unmeasured() const {
    std::vector<std::string> ids;
    for (const Shim& shim : m_shims) {
        if (!shim.isMeasured()) {
            ids.push_back(shim.id());
        }
    }
    return ids;
}

} // namespace caprail
