// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <session/record_session.h>
#include <shop/shelf.h>
#include <text/label.h>

class QDialogButtonBox;
class QLineEdit;
class QTreeWidget;

namespace caprail {

/// What the shop has on its shelf and this record not yet: ticked, it is copied into the record when accepted.
class AddFromShelfDialog : public QDialog {
    Q_OBJECT
public:
    AddFromShelfDialog(RecordSession& session, const Shelf& shelf, QWidget* parent = nullptr);

private:
    void add();
    RecordSession& m_session;
    QTreeWidget* m_list;
    Label* m_problem;
    std::vector<std::vector<Body>> m_bodies; ///< by tick
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
    QTreeWidget* m_list;
    QLineEdit* m_kitName;
    Label* m_problem;
    bool m_isUsable = true;
};

} // namespace caprail
