// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/entry_form.h>
#include <tables/table.h>
#include <text/label.h>

class QPlainTextEdit;
class QPushButton;

namespace caprail {

class PlanView;
struct GroupRow;

/// What is specified for each group of fasteners, who says so, and what it comes to, with the working; the sequence on
/// the diagram, where it can be set by touching the fasteners in turn.
class FastenersGroups : public QWidget {
    Q_OBJECT
public:
    explicit FastenersGroups(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void focusField();
    /// Shows a group by its name in the table ("main", "main outer").
    void selectGroup(const QString& name);

private:
    void build();
    void showGroup(); ///< the selected one
    void showWorking();
    void showDiagram();
    void beginOrder(bool isOn);
    void putNext(const QString& place);
    RecordSession& m_session;
    using GroupKey = std::pair<FastenerKind, std::optional<Ring>>;
    Table<GroupRow, GroupKey>* m_table;
    FormFor<FastenerGroupSet>* m_form;
    Label* m_warning;
    QPlainTextEdit* m_working;
    PlanView* m_plan;
    QPushButton* m_order;
    QLineEdit *m_wrenchLength, *m_offset, *m_angle;
    Label* m_setting;
};

} // namespace caprail
