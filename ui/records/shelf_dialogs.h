// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <session/record_session.h>
#include <shop/shelf.h>
#include <tables/table.h>
#include <text/label.h>

class QDialogButtonBox;
class QLineEdit;

namespace caprail {

/// A person, an instrument or a kit on the shelf, or the heading over all of one sort.
struct ShelfLine {
    enum class Sort { person, instrument, kit };
    Sort sort = Sort::person;
    std::string name; ///< empty: the heading
    QString shown, what;
    std::vector<Body> entries = {}; ///< that copy it into the record
    bool isTicked = false, isInRecord = false;
    using Key = std::pair<Sort, std::string>;
    [[nodiscard]] Key key() const { return {sort, name}; }
};
using ShelfTable = Table<ShelfLine, ShelfLine::Key>;

/// What the shop has on its shelf and this record not yet: ticked, it is copied into the record when accepted.
class AddFromShelfDialog : public QDialog {
    Q_OBJECT
public:
    AddFromShelfDialog(RecordSession& session, const Shelf& shelf, QWidget* parent = nullptr);

private:
    void add();
    RecordSession& m_session;
    ShelfTable* m_list;
    Label* m_problem;
};

/// People, instruments and kits on the shelf: looked at, taken off, and filled from a record.
class ShelfDialog : public QDialog {
    Q_OBJECT
public:
    /// `session` may be null: then nothing can be kept from a record.
    explicit ShelfDialog(RecordSession* session, QWidget* parent = nullptr);

private:
    void list(const Shelf& shelf);
    void keep();
    void removeCurrent();
    void store();
    RecordSession* m_session;
    Shelf m_shelf;
    ShelfTable* m_list;
    QLineEdit* m_kitName;
    Label* m_problem;
    bool m_isUsable = true;
};

} // namespace caprail
