// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Photos in and out of a record, for every panel that shows or takes them.
#include <QPixmap>
#include <QStringList>
#include <map>
#include <session/record_session.h>

class QMimeData;
class QWidget;

namespace caprail {

/// The files of a drop or of the clipboard.
struct GivenFiles {
    QStringList records; ///< by their name
    QStringList photos;  ///< by their first bytes, whatever the name says
    QStringList others;
};
GivenFiles sortFiles(const QMimeData& data);
/// Why nothing is done with a file that is one of the `others`.
QString neitherRecordNorPhoto(const QString& path);

/// Whether something dropped or copied may become photos here: a picture, or files, of which none is a record.
bool holdsPhotos(const QMimeData* data);
/// Keeps every picture of a drop or of the clipboard at a place, scaled down. The first refusal ends it and is given
/// back; what came before it is stored. Refuses a file that is no picture, once the pictures beside it are stored.
Result<void> addPhotos(RecordSession& session, const QMimeData* data, const std::string& place,
                       const std::string& caption);
/// As above, for picture files.
Result<void> addPhotoFiles(RecordSession& session, const QStringList& paths, const std::string& place,
                           const std::string& caption);
/// Asks for picture files; empty: none were chosen.
QStringList askForPhotos(QWidget* parent);

/// Small pictures of attachments. Bytes are read once.
class Thumbnails {
public:
    Thumbnails(RecordSession& session, QSize size) : m_session(session), m_size(size) {}
    /// Null for what is no picture.
    const QPixmap& of(const AttachmentAdded& attachment);

private:
    RecordSession& m_session;
    QSize m_size;
    std::map<std::string, QPixmap> m_known;
};

/// Shows a photo as large as the screen around `parent` allows, until Escape. Refuses bytes that are damaged.
Result<void> showPhoto(RecordSession& session, const AttachmentAdded& photo, QWidget* parent);

} // namespace caprail
