// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QMainWindow>
#include <functional>
#include <memory>
#include <records/database_model.h>
#include <text/label.h>

namespace caprail {

class DatabaseNotice;
class ShopTable;
class ShopTools;

/// The records of a shop's database: searched as one types, filtered, sorted, grouped, compared, and fetched as a file
/// to be opened. The database is asked in the background: while it does not answer, the window says so and keeps what
/// it shows.
class DatabaseWindow : public QMainWindow {
    Q_OBJECT
public:
    explicit DatabaseWindow(QWidget* parent = nullptr);
    ~DatabaseWindow() override;

    /// Shows a database by its service name or URL; a sentence in the window when it is none.
    void showDatabase(const QString& name);
    [[nodiscard]] QString database() const { return m_name; }
    [[nodiscard]] DatabaseModel* model() { return m_model; }
    /// The database that was shown last, from the user's configuration; empty: none yet.
    static QString lastDatabase();
    /// For the windows that compare many records: asked when one is opened.
    void setUnits(std::function<Units()> units) { m_units = std::move(units); }

public slots:
    void chooseDatabase();
    void refresh();
    /// Asks where the record of the line is to lie, fetches it as a new file and asks to open that.
    void fetch(const QModelIndex& index);
    /// The same for the record of this id in the list, as a new file at `path`.
    void fetchInto(std::int64_t id, const QString& path);

signals:
    void openRequested(const QString& path);
    void folderRequested(); ///< the records of a folder are wished for

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    void makeMenu();
    void connectModel();
    void askPeople();
    void showCounts();
    void saveList();
    void showAcross();

    QString m_name;
    std::function<Units()> m_units = [] { return Units(); };
    std::unique_ptr<DatabaseLink> m_link;
    DatabaseModel* m_model = nullptr;
    DatabaseNotice* m_notice = nullptr;
    ShopTable* m_table;
    ShopTools* m_tools;
    Label *m_none, *m_counts, *m_fetching;
};

} // namespace caprail
