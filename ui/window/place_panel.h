// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <stations/common/photo_tools.h>
#include <tables/table.h>
#include <text/label.h>

class QLineEdit;
class QToolButton;

class QMimeData;

namespace caprail {

struct PlaceRow;

/// What is known of the place that is selected, at every station: its findings, notes and photos, and a line to open a
/// finding there, or to settle one, without leaving the work. A photo is added by file, dropped or pasted. With no place selected it is
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
    /// Keeps what was dropped somewhere at the station at a place.
    void takePhotos(const QMimeData& dropped, const QString& place);

signals:
    /// Something was not taken, and the panel says why: it is to be in sight.
    void refused();

private:
    void build();
    void openFinding();
    void showUntried();
    void askAbout(const std::string& finding);
    void activate(int line);
    void show(const Result<void>& added);
    [[nodiscard]] bool isHere(const std::string& place) const;
    /// Findings and notes of this place.
    [[nodiscard]] std::vector<PlaceRow> words() const;
    RecordSession& m_session;
    QString m_place;
    std::string m_settling; ///< the finding that Enter in the field settles; empty: it opens one
    Label* m_title;
    List<PlaceRow, std::int64_t>* m_list;
    QLineEdit* m_finding;
    QToolButton* m_photo;
    Label* m_message;
    Label* m_untried; ///< instruments of today that were not tried on their standard
    Thumbnails m_thumbnails;
};

} // namespace caprail
