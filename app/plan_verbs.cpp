// SPDX-License-Identifier: GPL-3.0-or-later
// The stack plan of a case, and the load that the stacks of a record put into its block.
#include "call.h"
#include "load_text.h"
#include "plan_case.h"
#include "verbs.h"

#include <QElapsedTimer>

namespace caprail::verbs {

int plan(const QStringList& arguments) {
    const Call call("plan", arguments, 1);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    const auto json = readFile(call.at(0));
    if (!json) {
        return complain(unusable, call.at(0), json.error());
    }
    if (call.has("least-twist") && call.has("least-load")) {
        return complain(wrongUsage, QStringLiteral("plan: give --least-twist or --least-load, not both."));
    }
    auto planCase = readPlanCase(*json);
    if (!planCase) {
        return complain(unusable, call.at(0), planCase.error());
    }
    PlanOptions options;
    QElapsedTimer timer;
    timer.start();
    if (call.has("deadline-ms")) {
        bool isNumber = false;
        const qint64 deadline = call.value("deadline-ms").toLongLong(&isNumber);
        if (!isNumber || deadline < 0) {
            return complain(wrongUsage,
                            QStringLiteral("plan: --deadline-ms takes a whole number of milliseconds, not “%1”.")
                                .arg(call.value("deadline-ms")));
        }
        options.stop = [&timer, deadline] { return timer.elapsed() >= deadline; };
    }
    planCase->request.objective = call.has("least-twist")  ? Objective::leastTwist
                                  : call.has("least-load") ? Objective::leastLoad
                                                           : Objective::smallestResidual;
    if (call.has("least-load") && planCase->request.stiffness.empty()) {
        return complain(unusable, call.at(0), Problem{"--least-load needs “stiffness” in the case."});
    }
    const auto best = planStacks(planCase->request, options);
    if (!best) {
        return complain(unusable, call.at(0), best.error());
    }
    print(QJsonDocument(planJson(*planCase, *best)));
    return done;
}

int load(const QStringList& arguments) {
    const Call call("load", arguments, 1);
    if (!call.isGood()) {
        return call.refuseUsage();
    }
    const Units units = unitsOf(call);
    const auto record = openRecord(call.at(0), units);
    if (!record) {
        return complain(unusable, call.at(0), record.error());
    }
    const auto model = girdleModel(record->facts);
    if (!model) {
        return complain(unusable, call.at(0), model.error());
    }
    const BlockLoad load = blockLoad(*model, record->facts, record->assessment, units);
    if (call.has("json")) {
        print(QJsonDocument(loadJson(*model, load)));
    } else {
        print(loadText(*model, load, units));
    }
    return done;
}

} // namespace caprail::verbs
