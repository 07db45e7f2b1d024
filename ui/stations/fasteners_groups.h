// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/engine_form.h>

class QLabel;
class QPlainTextEdit;

namespace caprail {

class PlainTable;

/// What is specified for each group of fasteners, who says so, and what it comes to, with the working.
class FastenersGroups : public QWidget {
    Q_OBJECT
public:
    explicit FastenersGroups(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void focusField();
    /// Shows a group by its name in the table ("main", "main outer").
    void selectGroup(const QString& name);
    [[nodiscard]] FormFor<FastenerGroupSet>* form() const { return m_form; }
    [[nodiscard]] QString workingText() const;
    [[nodiscard]] QString warningText() const;

private:
    void build();
    void showGroup(const QString& name);
    void showWorking();
    RecordSession& m_session;
    PlainTable* m_table;
    FormFor<FastenerGroupSet>* m_form;
    QLabel* m_warning;
    QPlainTextEdit* m_working;
    QLineEdit *m_wrenchLength, *m_offset, *m_angle;
    QLabel* m_setting;
};

} // namespace caprail
