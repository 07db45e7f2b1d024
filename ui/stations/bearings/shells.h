// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <session/record_session.h>
#include <stations/common/entry_form.h>
#include <text/label.h>
#include <work/shells.h>

class QPushButton;

namespace caprail {

class PlainTable;

/// The half shells on the shelf, which lie in which bearing, and the choice of the best pairs from what there is.
class BearingsShells : public QWidget {
    Q_OBJECT
public:
    explicit BearingsShells(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void focusField();
    [[nodiscard]] FormFor<ShellMeasured>* shellForm() const { return m_shell; }
    [[nodiscard]] FormFor<ShellsFitted>* fittedForm() const { return m_fitted; }
    [[nodiscard]] QPushButton* chooseButton() const { return m_choose; }
    [[nodiscard]] QPushButton* takeOverButton() const { return m_takeOver; }
    [[nodiscard]] QString sentence() const;

private:
    void build();
    void chooseShells();
    void takeOver();
    void showBearings();
    static QString leftOutText(const ShellRequest& request);
    RecordSession& m_session;
    PlainTable* m_shelf;
    FormFor<ShellMeasured>* m_shell;
    PlainTable* m_bearings;
    FormFor<ShellsFitted>* m_fitted;
    Label* m_words;
    QPushButton* m_choose;
    QPushButton* m_takeOver;
    std::optional<ShellSelection> m_selection;
    std::int64_t m_selectedAt = 0; ///< entries in the ledger when it was chosen
};

} // namespace caprail
