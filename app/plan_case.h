// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QByteArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <shims/plan/stack_plan.h>

namespace caprail {

/// A stack-plan case as it stands in a JSON file: the request, and the length that one whole number in it means.
struct PlanCase {
    PlanRequest request;
    Length unit;
};

/// Reads a case: {"unit": "0.0001 in", "band": [lo, hi], "largest_stack": n, "positions": [{"id", "cap", "side", "gap",
/// optional "pinned": [shim…]}…], "shims": [{"id", "thickness", optional "set_aside": true}…], optional "caps",
/// optional "stiffness": [[…]…] in lbf per unit, rows in the order of the positions}; lengths are whole numbers of the
/// unit, and a band of one number n is [-n, n]. Other members are left alone. Refuses what is missing or of the wrong
/// type, by name.
Result<PlanCase> readPlanCase(const QByteArray& json);

/// JSON Schema (draft 2020-12) of such a case.
QJsonDocument planCaseSchema();

/// The answer as the command `plan` prints it, lengths in whole numbers of the case's unit.
QJsonObject planJson(const PlanCase& planCase, const StackPlan& plan);

} // namespace caprail
