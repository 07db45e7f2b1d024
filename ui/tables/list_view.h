// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QListView>
#include <tables/kept_selection.h>

namespace caprail {

/// A list of rows, each a text of one or more lines, perhaps with a picture: as `TableView`, with one column and no
/// head. `List` (table.h) is this with rows of one type.
class ListView : public QListView {
    Q_OBJECT
public:
    /// `name` is for screen readers. The model is taken over.
    ListView(const QString& name, TableModel* model, QWidget* parent);
    /// What stands in the list while it has no rows.
    void setEmptyText(const QString& sentence);
    [[nodiscard]] int selectedLine() const { return m_selection->line(); }
    void selectLine(int line) { m_selection->select(line); }
    [[nodiscard]] int count() const { return model()->rowCount(); }

signals:
    void lineSelected(int line); ///< −1: none is any more
    void lineActivated(int line);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    KeptSelection* m_selection;
    QString m_emptyText;
};

} // namespace caprail
