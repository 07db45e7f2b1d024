// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <stations/common/photo_tools.h>
#include <tables/table.h>
#include <text/label.h>

class QLineEdit;

namespace caprail {

/// Photos of the record as thumbnails; added by file, by dropping, or pasted. They are scaled down before they are
/// kept, so that the record can still be mailed.
class ClosingPhotos : public QWidget {
    Q_OBJECT
public:
    explicit ClosingPhotos(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    /// Adds picture files, with the place and caption typed; says at the bottom what was refused.
    void addFiles(const QStringList& paths);
    /// Adds what is on the clipboard: picture files, or a picture.
    void paste();

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void chooseFiles();
    void take(const QMimeData* given);
    void show(const Result<void>& added);
    void showLarge(int line);
    void say(const QString& sentence, bool isRefusal);
    RecordSession& m_session;
    List<Seen<AttachmentAdded>, std::int64_t>* m_list;
    QLineEdit* m_place;
    QLineEdit* m_caption;
    Label* m_message;
    Thumbnails m_thumbnails;
};

} // namespace caprail
