// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QColor>
#include <QMainWindow>
#include <map>
#include <memory>
#include <session/record_session.h>
#include <text/label.h>
#include <window/preferences.h>

class QComboBox;
class QStackedWidget;
class QTemporaryDir;

namespace caprail {

class BenchView;
class Confirmation;
class Doorbell;
class NextBar;
class PlacePanel;
class StationList;
class StationPanel;
class Tour;

/// One window for one record, or the start page while none is open. It only wires: actions to the session, the session
/// to the panels.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    MainWindow();
    ~MainWindow() override;

    /// Opens in this window when it holds no record yet, else in a new one. False: refused, and the sentence was shown.
    bool openFile(const QString& path);
    /// The same with what reading the file gave.
    bool showRead(const QString& path, Result<ReadRecord> record);
    /// Takes over a record that is open already.
    void take(std::unique_ptr<RecordSession> session);
    [[nodiscard]] RecordSession* session() const { return m_session.get(); }
    [[nodiscard]] const Preferences& preferences() const { return m_preferences; }
    /// Whether its record is the practice build of the tour, which goes with the window.
    [[nodiscard]] bool isTour() const { return m_tourFolder != nullptr; }
    void showDestination(const Destination& destination);
    /// A station's panel, built when it is first asked for; null while no record is open.
    [[nodiscard]] StationPanel* panel(Station station);
    /// Whether the window may go: asks what is to become of a value that was typed and not stored, and of entries that
    /// wait for the disk. False: stay.
    bool mayClose();
    /// Whether nothing would be lost if it went now: no typed value, no entry that waits.
    [[nodiscard]] bool isAllStored() const;
    /// Closes as a signal asks for it, when nobody may be there to answer: what waits for the disk is tried once more.
    void closeUnasked();

public slots:
    void newRecord();
    void chooseFile();
    void openShop();
    void openSample(const QString& path);
    void saveCopy();
    void storeUnstored();
    void writeSheetFile();
    void writeSheetPictures();
    void writeCardFile();
    void printSheet();
    void previewSheet();
    void exportTables();
    void exportLedgerFile();
    void strikeLast();
    void find();
    void openFindingHere();
    void addPhotoHere();
    void pastePhotoHere();
    void editPreferences();
    void setUpGauges();
    void switchUnits();
    void toggleFullScreen();
    void toggleBench();
    /// Opens the manual at the page of the station in front, and of its view.
    void showManual();
    void showHelp();
    void showEntryKinds();
    /// Begins the tour in a window with a copy of its sample, which lies in a temporary folder and goes with the window;
    /// in the tour's window it ends or begins the tour again.
    void startTour();
    void showKeys();
    void showCautions();
    void about();

signals:
    void recordChanged(); ///< another record, or none, is shown now

protected:
    void showEvent(QShowEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void showStart();
    void refreshAll();
    void refreshPeople();
    void followPlace();
    void fitToWidth();
    [[nodiscard]] double textScale() const;
    void leaveBench();
    void announce(qint64 sequence, const QString& line);
    void complain(const QString& sentence);
    void sayOfGauge(const QString& sentence, bool isFault);
    [[nodiscard]] Station currentStation() const;
    [[nodiscard]] QString placeUnder(QPoint point) const;
    bool mayLeaveTypedValue();
    void nameRecord();

    Preferences m_preferences;
    std::unique_ptr<QTemporaryDir> m_tourFolder; ///< holds the record while the window is the tour's
    std::unique_ptr<RecordSession> m_session;
    NextBar* m_next = nullptr;
    StationList* m_list = nullptr;
    PlacePanel* m_place = nullptr;
    BenchView* m_bench = nullptr; ///< over everything else while it lasts
    Qt::WindowStates m_statesBefore;
    QColor m_paper; ///< of the look that everything is drawn in
    QStackedWidget* m_stack = nullptr;
    std::map<Station, StationPanel*> m_panels; ///< those that were shown
    QComboBox* m_person;
    Label* m_lastStored;
    int m_staleBefore = 0; ///< checks that were stale before what was stored last
    Confirmation* m_confirmation;
    Tour* m_tour = nullptr;
    Doorbell* m_doorbell;
    bool m_isUnasked = false; ///< it closes without questions
};

} // namespace caprail
