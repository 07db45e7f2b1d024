// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <stations/common/photo_tools.h>
#include <text/label.h>

class QLineEdit;
class QListWidget;
class QToolButton;

namespace caprail {

/// What is known of the place that is selected, at every station: its findings, notes and photos, and a line to open a
/// finding there without leaving the work. A photo is added by file, dropped or pasted. With no place selected it is
/// about the engine as a whole.
class PlacePanel : public QWidget {
    Q_OBJECT
public:
    explicit PlacePanel(RecordSession& session, QWidget* parent = nullptr);
    /// The code of a place; empty: the engine as a whole.
    void setPlace(const QString& placeCode);
    [[nodiscard]] QString place() const { return m_place; }
    void refresh();
    /// Puts the keyboard on the line that opens a finding.
    void focusFinding();
    void addPhotoFile();
    void pastePhoto();
    [[nodiscard]] QListWidget* list() const { return m_list; }
    [[nodiscard]] QLineEdit* findingEdit() const { return m_finding; }
    [[nodiscard]] QString message() const;

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void build();
    void openFinding();
    void activate();
    void show(const Result<void>& added);
    [[nodiscard]] bool isHere(const std::string& place) const;
    void listWords();
    RecordSession& m_session;
    QString m_place;
    Label* m_title;
    QListWidget* m_list;
    QLineEdit* m_finding;
    QToolButton* m_photo;
    Label* m_message;
    Thumbnails m_thumbnails;
};

} // namespace caprail
