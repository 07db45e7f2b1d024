// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// What the closing page says and draws about the one thing that comes next.
#include <planview/plan_content.h>
#include <session/record_session.h>
#include <work/closing_work.h>

namespace caprail {

/// One line of the list beside the drawing.
struct TaskLine {
    int number = 0;
    QString text;
    bool isDone = false;
    bool isNext = false;
};

/// "Girdle nut 3 right: 35 lbf·ft": the thing itself, read at arm's length.
QString taskTitle(const RecordSession& session, const ClosingTask& task);
/// What it takes: the steps of the torque, which way the girdle goes, how a bead is laid. May be empty.
QString taskHow(const RecordSession& session, const ClosingTask& task);
/// Which stack goes where, or one fastener after another; empty where there is nothing to go through.
std::vector<TaskLine> taskLines(const RecordSession& session, const ClosingTask& task);
/// The drawing of it, the next place selected. Needs a layout.
PlanContent taskContent(const RecordSession& session, const ClosingTask& task);
/// What is asked for in the field: "Enter when it is on".
QString taskField(const RecordSession& session, const ClosingTask& task);
/// The code of the place that the task is about; may be empty.
QString taskPlace(const ClosingTask& task);
/// What was read of the typed text, for the echo.
QString taskEcho(const Body& entry, const Units& units);

} // namespace caprail
