// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractItemView>
#include <tables/table_model.h>

namespace caprail {

/// Keeps the selected row of a view, and what is in sight, while the rows of its model are exchanged; and tells of
/// what a person or the program selects, but not of what Qt selects because the selected row went.
class KeptSelection : public QObject {
    Q_OBJECT
public:
    KeptSelection(QAbstractItemView* view, TableModel* model);
    /// The line that is selected; −1: none.
    [[nodiscard]] int line() const;
    /// Selects a line and brings it in sight; −1: none is selected.
    void select(int line);

signals:
    void selected(int line); ///< −1: none is any more

private:
    void note();
    void restore();
    QAbstractItemView* m_view;
    TableModel* m_model;
    bool m_isExchanging = false;
    std::function<int()> m_findSelected; ///< empty: nothing was selected
    std::function<int()> m_findTop;      ///< empty: the first line is in sight
    int m_top = 0;
};

} // namespace caprail
