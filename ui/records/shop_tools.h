// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <shop/listing_pages.h>
#include <text/label.h>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace caprail {

class ShopTable;

/// What stands over a list of records: the search, what is shown of it and in which groups, and where the records are.
class ShopTools : public QWidget {
    Q_OBJECT
public:
    /// `choose` is what the button says that chooses another place.
    explicit ShopTools(const QString& choose, QWidget* parent = nullptr);

    [[nodiscard]] QLineEdit* search() const { return m_search; }
    [[nodiscard]] QString typed() const;
    [[nodiscard]] ListFilter filter() const;
    [[nodiscard]] ListingWish::Grouping grouping() const;
    void setPlace(const QString& place);
    /// Who may be chosen; the one that is chosen stays, also where these do not name it.
    void setPeople(const QStringList& names);
    void focusSearch();

signals:
    void searched();
    void filtered();
    void grouped();
    void chooseClicked();

private:
    QLineEdit* m_search;
    QComboBox *m_state, *m_due, *m_person, *m_group;
    Label* m_place;
};

/// What an empty list says where there are records and none of them is to be listed.
QString noneMatches();

/// Columns as wide as their names and usual values, or as they were left. `table` has its model.
void fitColumns(ShopTable& table);

} // namespace caprail
