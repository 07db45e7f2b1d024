// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <session/record_session.h>
#include <tables/table.h>
#include <text/label.h>

class QCheckBox;
class QLineEdit;
class QPushButton;

namespace caprail {

class EntryField;
class InstrumentBox;
struct KitRow;

/// The shim kit: every shim with its marked and measured thickness and where it is. Shims are added many at once;
/// micrometer readings go by name and value, or by value down the list.
class GirdleKit : public QWidget {
    Q_OBJECT
public:
    explicit GirdleKit(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void focusField();
    void selectShim(const std::string& shim);
    [[nodiscard]] std::string selectedShim() const;

private:
    void build();
    void askToAdd();
    void askToMeasure();
    void stepTo(int by);
    /// After a reading: the next shim of the list that has none.
    void selectNextUnmeasured(const std::string& after);
    void setAside();
    [[nodiscard]] QString summary() const;
    RecordSession& m_session;
    Table<KitRow, std::string>* m_table;
    Label* m_summary;
    EntryField* m_add;
    QLineEdit* m_bag;
    EntryField* m_measure;
    InstrumentBox* m_instrument;
    QPushButton* m_aside;
};

} // namespace caprail
