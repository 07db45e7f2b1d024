// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <map>
#include <session/record_session.h>

class QLabel;
class QLineEdit;
class QListWidget;

namespace caprail {

struct PreparedPhoto;

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
    [[nodiscard]] QListWidget* list() const { return m_list; }
    [[nodiscard]] QString message() const;

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void chooseFiles();
    void store(const Result<PreparedPhoto>& photo);
    void showLarge();
    [[nodiscard]] QPixmap thumbnail(const AttachmentAdded& attachment);
    void say(const QString& sentence, bool isRefusal);
    RecordSession& m_session;
    QListWidget* m_list;
    QLineEdit* m_place;
    QLineEdit* m_caption;
    QLabel* m_message;
    std::map<std::string, QPixmap> m_thumbnails; ///< by hash: bytes are read once
};

} // namespace caprail
