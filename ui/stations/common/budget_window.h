// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <session/record_session.h>

#include <assessment/budget_of.h>

namespace caprail {

/// Answers «why ± 0.0003?»: the uncertainty budget behind one figure as a table, what it comes to in a sentence, and
/// what is left out because nobody said how large it is. Any figure with an uncertainty opens one.
class BudgetWindow : public QDialog {
    Q_OBJECT
public:
    /// `figure` names what the budget is of: "gap at cap 3 right".
    BudgetWindow(const QString& figure, const UncertaintyBudget& budget, const RecordSession& session,
                 QWidget* parent = nullptr);

    /// Opens one that deletes itself when it is closed; the work behind it goes on.
    static BudgetWindow* open(const QString& figure, const UncertaintyBudget& budget, const RecordSession& session,
                              QWidget* parent);
};

} // namespace caprail
