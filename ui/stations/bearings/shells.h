// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <session/record_session.h>
#include <session/shell_runner.h>
#include <stations/common/entry_form.h>
#include <tables/table.h>
#include <text/label.h>
#include <work/shells.h>

class QPushButton;

namespace caprail {

struct ShelfRow;
struct BearingRow;

/// The half shells on the shelf, which lie in which bearing, and the choice of the best pairs from what there is.
class BearingsShells : public QWidget {
    Q_OBJECT
public:
    explicit BearingsShells(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void focusField();

private:
    void build();
    void chooseShells();
    void showChosen(const ShellOutcome& outcome);
    void takeOver();
    void showBearings();
    /// The selected shell or bearing in its form; an empty form where none is.
    void showShell();
    void showFitting();
    [[nodiscard]] QString leftOutText() const;
    RecordSession& m_session;
    Table<ShelfRow, std::string>* m_shelf;
    FormFor<ShellMeasured>* m_shell;
    Table<BearingRow, JournalId>* m_bearings;
    FormFor<ShellsFitted>* m_fitted;
    Label* m_words;
    QPushButton* m_choose;
    QPushButton* m_takeOver;
    ShellRunner m_runner;
    std::optional<ShellSelection> m_selection;
    std::int64_t m_selectedAt = 0; ///< entries in the ledger when the choice began
    std::vector<std::string> m_leftOut; ///< bearings and shells that could not be part of it, and why
};

} // namespace caprail
