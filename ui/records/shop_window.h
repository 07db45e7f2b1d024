// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QMainWindow>
#include <functional>
#include <memory>
#include <optional>
#include <records/shop_model.h>
#include <shop/shop_index.h>
#include <text/label.h>

class QProgressBar;
class QPushButton;

namespace caprail {

class ShopTable;
class ShopTools;
class ShopWatcher;
struct ScanProgress;
struct ScanReport;

/// The records of one folder and the folders in it: searched as one types, filtered, sorted, grouped, opened. It only
/// looks: nothing in the folder is changed by it.
class ShopWindow : public QMainWindow {
    Q_OBJECT
public:
    explicit ShopWindow(QWidget* parent = nullptr);
    ~ShopWindow() override;

    /// Shows a folder; a sentence in the window when it cannot be read.
    void showFolder(const QString& folder);
    [[nodiscard]] QString folder() const { return m_folder; }
    [[nodiscard]] ShopModel& model() { return *m_model; }
    /// The folder that was shown last, from the user's configuration; empty: none yet.
    static QString lastFolder();
    /// For the windows that compare many records: asked when one is opened.
    void setUnits(std::function<Units()> units) { m_units = std::move(units); }
    /// Where the indexes are kept.
    static std::string cacheFolder();

public slots:
    void chooseFolder();
    void refresh();
    void focusSearch();

signals:
    void openRequested(const QString& path);
    void publishRequested();  ///< its records are to be sent to the shop's database
    void databaseRequested(); ///< the records of a shop's database are wished for
    void scanned(); ///< a scan came to its end

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    void makeMenu();
    void search();
    void filter();
    void open(const QModelIndex& index);
    void takeRows();
    void takeReport(const ScanReport& report);
    void showProgress(const ScanProgress& progress);
    void showCounts();
    void tell(const QString& sentence);
    void saveList();
    void showAcross();

    QString m_folder;
    std::function<Units()> m_units = [] { return Units(); };
    ShopModel* m_model;
    ShopTable* m_table;
    ShopTools* m_tools;
    Label *m_notice, *m_counts;
    QPushButton* m_stop;
    QProgressBar* m_progress;
    std::unique_ptr<ShopWatcher> m_watcher;
    std::optional<ShopIndex> m_index; ///< for searches
    QString m_indexProblem;           ///< why what is read is not kept
    std::vector<ShopRow> m_waiting;   ///< read, not shown yet
    bool m_isEmpty = false;           ///< the whole folder was read, and holds no record
    std::optional<qint64> m_unreachableSince;
};

} // namespace caprail
