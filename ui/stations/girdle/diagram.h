// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <planview/plan_content.h>
#include <session/record_session.h>
#include <work/block_load.h>

namespace caprail {

/// What the girdle station's diagram writes beside each position.
enum class GirdleMode { gaps, shims, stacks, recheck, feel, load };

/// Gaps as the assembler writes them beside the stud, each with the state of its check and how many readings stand.
/// Needs a layout.
PlanContent gapContent(const RecordSession& session, const std::vector<Position>& order);
/// Residuals and how the straightedge felt, with the heights under the plate as tints. Needs a layout.
PlanContent recheckContent(const RecordSession& session);
/// The load on each cap as an arrow, with its pounds and its direction in words. Needs a layout; a `load` of null, or
/// one that is not known yet, leaves the places bare.
PlanContent loadContent(const RecordSession& session, const BlockLoad* load, Rail rail);

} // namespace caprail
