// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/closing_photos.h>

#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QDragEnterEvent>
#include <QFile>
#include <QFileDialog>
#include <QGridLayout>
#include <QImageReader>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMimeData>
#include <QPushButton>
#include <QUrl>
#include <session/look.h>
#include <stations/closing_photo.h>
#include <stations/station_text.h>

namespace caprail {

namespace {

constexpr QSize thumbnailSize(150, 112);

QStringList filesIn(const QMimeData* data) {
    QStringList paths;
    for (const QUrl& url : data->urls()) {
        if (url.isLocalFile()) {
            paths << url.toLocalFile();
        }
    }
    return paths;
}

QByteArray bytesOf(const std::string& text) {
    return {text.data(), static_cast<qsizetype>(text.size())};
}

} // namespace

ClosingPhotos::ClosingPhotos(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_list(new QListWidget(this)), m_place(new QLineEdit(this)),
      m_caption(new QLineEdit(this)), m_message(new QLabel(this)) {
    setAcceptDrops(true);
    setFocusProxy(m_list);
    m_list->setAccessibleName(tr("Photos"));
    m_list->setViewMode(QListView::IconMode);
    m_list->setIconSize(thumbnailSize);
    m_list->setGridSize({thumbnailSize.width() + 14, thumbnailSize.height() + fontMetrics().lineSpacing() * 2 + 10});
    m_list->setMovement(QListView::Static);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setWordWrap(true);
    m_place->setPlaceholderText(tr("Place: 3R, main-3, …"));
    m_place->setAccessibleName(tr("Place of the photo"));
    m_caption->setPlaceholderText(tr("What the photo shows"));
    m_caption->setAccessibleName(m_caption->placeholderText());
    m_message->setWordWrap(true);
    auto* add = new QPushButton(tr("Add pho&to…"), this);
    auto* pasteButton = new QPushButton(tr("Paste"), this);
    pasteButton->setToolTip(tr("Ctrl+V"));
    auto* grid = new QGridLayout(this);
    grid->addWidget(m_list, 0, 0, 1, 3);
    grid->addWidget(m_place, 1, 0);
    grid->addWidget(m_caption, 1, 1, 1, 2);
    grid->addWidget(m_message, 2, 0, 2, 1);
    grid->addWidget(add, 2, 1, Qt::AlignRight);
    grid->addWidget(pasteButton, 2, 2);
    grid->setColumnStretch(0, 2);
    grid->setColumnStretch(1, 3);
    connect(add, &QPushButton::clicked, this, &ClosingPhotos::chooseFiles);
    connect(pasteButton, &QPushButton::clicked, this, &ClosingPhotos::paste);
    connect(m_list, &QListWidget::itemActivated, this, &ClosingPhotos::showLarge);
    refresh();
}

QString ClosingPhotos::message() const {
    return m_message->text();
}

void ClosingPhotos::say(const QString& sentence, bool isRefusal) {
    m_message->setText((isRefusal ? QStringLiteral("✕ ") : QString()) + sentence);
    QPalette palette = m_message->palette();
    palette.setColor(QPalette::WindowText, isRefusal ? screenLook().out : screenLook().quiet);
    m_message->setPalette(palette);
}

QPixmap ClosingPhotos::thumbnail(const AttachmentAdded& attachment) {
    const auto known = m_thumbnails.find(attachment.sha256);
    if (known != m_thumbnails.end()) {
        return known->second;
    }
    QPixmap pixmap;
    if (const auto bytes = m_session.file().attachmentBytes(attachment.sha256)) {
        pixmap.loadFromData(bytesOf(*bytes));
        if (!pixmap.isNull()) {
            pixmap = pixmap.scaled(thumbnailSize, Qt::KeepAspectRatio, Qt::SmoothTransformation);
        }
    }
    return m_thumbnails.emplace(attachment.sha256, pixmap).first->second;
}

void ClosingPhotos::refresh() {
    const auto& attachments = m_session.facts().attachments;
    m_list->clear();
    std::int64_t total = 0;
    for (const auto& seen : attachments) {
        const AttachmentAdded& what = seen.what;
        total += what.size;
        QString text = qtText(what.caption.empty() ? what.fileName : what.caption);
        if (!what.place.empty()) {
            text = qtText(what.place) + QStringLiteral(": ") + text;
        }
        auto* item = new QListWidgetItem(QIcon(thumbnail(what)), text, m_list);
        item->setData(Qt::UserRole, qtText(what.sha256));
        item->setToolTip(tr("Entry %1, %2, %3 kB. Enter shows it large.")
                             .arg(seen.entry)
                             .arg(qtText(seen.person))
                             .arg((what.size + 999) / 1000));
    }
    if (attachments.empty()) {
        say(tr("Drop a photo here, paste one, or add a file."), false);
    } else if (total > largeAttachments) {
        say(tr("≈ Photos take %1 MB of this record: it grows too large to mail.").arg(total / 1'000'000), false);
    } else {
        say(tr("%1 kB of photos in this record").arg((total + 999) / 1000), false);
    }
}

void ClosingPhotos::store(const Result<PreparedPhoto>& photo) {
    if (!photo) {
        say(qtText(photo.error().sentence), true);
        return;
    }
    AttachmentAdded what = photo->what;
    what.place = coreText(m_place->text());
    what.caption = coreText(m_caption->text());
    if (const auto stored = m_session.attach(std::move(what), photo->bytes)) {
        m_caption->clear();
        refresh();
    } else {
        say(qtText(stored.error().sentence), true);
    }
}

void ClosingPhotos::addFiles(const QStringList& paths) {
    for (const QString& path : paths) {
        QFile file(path);
        if (file.open(QIODevice::ReadOnly)) {
            store(preparePhoto(file.readAll(), path));
        } else {
            say(tr("“%1” cannot be read: %2.").arg(path, file.errorString()), true);
        }
    }
}

void ClosingPhotos::chooseFiles() {
    addFiles(QFileDialog::getOpenFileNames(
        this, tr("Add photos"), {}, tr("Pictures (*.jpg *.jpeg *.png *.webp *.bmp *.tif *.tiff);;All files (*)")));
}

void ClosingPhotos::paste() {
    const QMimeData* copied = QApplication::clipboard()->mimeData();
    if (const QStringList paths = filesIn(copied); !paths.isEmpty()) {
        addFiles(paths);
    } else {
        store(preparePhoto(qvariant_cast<QImage>(copied->imageData()), tr("pasted")));
    }
}

void ClosingPhotos::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasImage() || !filesIn(event->mimeData()).isEmpty()) {
        event->acceptProposedAction();
    }
}

void ClosingPhotos::dropEvent(QDropEvent* event) {
    if (const QStringList paths = filesIn(event->mimeData()); !paths.isEmpty()) {
        addFiles(paths);
    } else {
        store(preparePhoto(qvariant_cast<QImage>(event->mimeData()->imageData()), tr("dropped")));
    }
    event->acceptProposedAction();
}

void ClosingPhotos::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Paste)) {
        paste();
    } else {
        QWidget::keyPressEvent(event);
    }
}

void ClosingPhotos::showLarge() {
    const auto bytes = m_session.file().attachmentBytes(coreText(m_list->currentItem()->data(Qt::UserRole).toString()));
    if (!bytes) {
        say(qtText(bytes.error().sentence), true);
        return;
    }
    QDialog dialog(this);
    dialog.setWindowTitle(m_list->currentItem()->text());
    auto* picture = new QLabel(&dialog);
    QPixmap pixmap;
    pixmap.loadFromData(bytesOf(*bytes));
    picture->setPixmap(pixmap.scaled(1000, 720, Qt::KeepAspectRatio, Qt::SmoothTransformation));
    (new QVBoxLayout(&dialog))->addWidget(picture);
    dialog.exec();
}

} // namespace caprail
