// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/closing/photos.h>

#include <QApplication>
#include <QClipboard>
#include <QDragEnterEvent>
#include <QGridLayout>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <session/filled.h>
#include <session/look.h>
#include <stations/common/prepared_photo.h>
#include <stations/common/photo_tools.h>
#include <stations/common/station_text.h>
#include <stations/common/tab_order.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

constexpr QSize thumbnailSize(150, 112);

QString captionOf(const Seen<AttachmentAdded>& photo) {
    const AttachmentAdded& what = photo.what;
    const QString text = qtText(what.caption.empty() ? what.fileName : what.caption);
    const QString whole = what.place.empty() ? text : qtText(what.place) + QStringLiteral(": ") + text;
    return what.taken ? whole + QLatin1Char('\n') + qtText(shown(*what.taken)) : whole;
}

QString tipOf(const Seen<AttachmentAdded>& photo) {
    const AttachmentAdded& what = photo.what;
    const qint64 kilobytes = (what.size + 999) / 1000;
    return what.taken
               ? filled(ClosingPhotos::tr("Entry %1, %2, %3 kB, taken %4 by the camera's clock. Enter shows it large."),
                        photo.entry, qtText(photo.person), kilobytes, qtText(shown(*what.taken)))
               : filled(ClosingPhotos::tr("Entry %1, %2, %3 kB. Enter shows it large."), photo.entry,
                        qtText(photo.person), kilobytes);
}

} // namespace

ClosingPhotos::ClosingPhotos(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_list(new List<Seen<AttachmentAdded>, std::int64_t>(
          tr("Photos"), &Seen<AttachmentAdded>::entry,
          {{.text = captionOf,
            .tip = tipOf,
            .icon = [this](const auto& photo) { return QIcon(m_thumbnails.of(photo.what)); }}},
          this)),
      m_place(new QLineEdit(this)), m_caption(new QLineEdit(this)), m_message(new Label(this)),
      m_thumbnails(session, thumbnailSize) {
    m_list->setObjectName(QStringLiteral("photos"));
    m_message->setObjectName(QStringLiteral("photoMessage"));
    setAcceptDrops(true);
    setFocusProxy(m_list);
    putProxyFirst(*this);
    m_list->setViewMode(QListView::IconMode);
    m_list->setIconSize(thumbnailSize);
    m_list->setGridSize({thumbnailSize.width() + 14, thumbnailSize.height() + fontMetrics().lineSpacing() * 3 + 10});
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
    setTip(pasteButton, tr("Ctrl+V"));
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
    connect(m_list, &ListView::lineActivated, this, &ClosingPhotos::showLarge);
    refresh();
}

void ClosingPhotos::say(const QString& sentence, bool isRefusal) {
    m_message->setText((isRefusal ? QStringLiteral("✕ ") : QString()) + sentence);
    QPalette palette = m_message->palette();
    palette.setColor(QPalette::WindowText, isRefusal ? screenLook().out : screenLook().quiet);
    m_message->setPalette(palette);
}

void ClosingPhotos::refresh() {
    const auto& attachments = m_session.facts().attachments;
    std::int64_t total = 0;
    for (const auto& seen : attachments) {
        total += seen.what.size;
    }
    m_list->put({attachments.begin(), attachments.end()});
    if (attachments.empty()) {
        say(tr("Drop a photo here, paste one, or add a file."), false);
    } else if (total > largeAttachments) {
        say(tr("≈ Photos take %1 MB of this record: it grows too large to mail.").arg(total / 1'000'000), false);
    } else {
        say(tr("%1 kB of photos in this record").arg((total + 999) / 1000), false);
    }
}

void ClosingPhotos::show(const Result<void>& added) {
    if (added) {
        m_caption->clear();
        refresh();
    } else {
        say(qtText(added.error().sentence), true);
    }
}

void ClosingPhotos::addFiles(const QStringList& paths) {
    show(addPhotoFiles(m_session, paths, coreText(m_place->text()), coreText(m_caption->text())));
}

void ClosingPhotos::chooseFiles() {
    if (const QStringList paths = askForPhotos(this); !paths.isEmpty()) {
        addFiles(paths);
    }
}

void ClosingPhotos::take(const QMimeData* given) {
    show(addPhotos(m_session, given, coreText(m_place->text()), coreText(m_caption->text())));
}

void ClosingPhotos::paste() {
    take(QApplication::clipboard()->mimeData());
}

void ClosingPhotos::dragEnterEvent(QDragEnterEvent* event) {
    if (holdsPhotos(event->mimeData())) {
        event->acceptProposedAction();
    }
}

void ClosingPhotos::dropEvent(QDropEvent* event) {
    take(event->mimeData());
    event->acceptProposedAction();
}

void ClosingPhotos::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Paste)) {
        paste();
    } else {
        QWidget::keyPressEvent(event);
    }
}

void ClosingPhotos::showLarge(int line) {
    const Seen<AttachmentAdded>* photo = m_list->at(line);
    if (photo == nullptr) {
        return;
    }
    const AttachmentAdded what = photo->what; // a copy: the list may be another one when the photo is closed
    if (const auto opened = showPhoto(m_session, what, this); !opened) {
        say(qtText(opened.error().sentence), true);
    }
}

} // namespace caprail
