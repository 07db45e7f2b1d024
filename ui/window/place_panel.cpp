// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/place_panel.h>

#include <QApplication>
#include <QClipboard>
#include <QDropEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QMimeData>
#include <QToolButton>
#include <QVBoxLayout>
#include <session/filled.h>
#include <session/look.h>
#include <stations/common/findings.h>
#include <stations/common/keep_last.h>
#include <stations/common/place_name.h>
#include <stations/common/station_text.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

constexpr QSize thumbnailSize(64, 48);
constexpr int findingRole = Qt::UserRole;
constexpr int photoRole = Qt::UserRole + 1;

} // namespace

PlacePanel::PlacePanel(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_title(new Label(this)), m_list(new QListWidget(this)),
      m_finding(new QLineEdit(this)), m_photo(new QToolButton(this)), m_message(new Label(this)),
      m_thumbnails(session, thumbnailSize) {
    build();
    refresh();
}

void PlacePanel::build() {
    setAcceptDrops(true);
    QFont bold = font();
    bold.setBold(true);
    m_title->setFont(bold);
    m_title->setWordWrap(true);
    m_list->setAccessibleName(tr("Findings, notes and photos here"));
    m_list->setIconSize(thumbnailSize);
    m_list->setWordWrap(true);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_finding->setPlaceholderText(tr("Finding here…"));
    m_finding->setAccessibleName(tr("Open a finding here"));
    setTip(m_finding,
           tr("Ctrl+D. Something seen that needs a decision: Enter opens the finding; it holds the closing gate "
              "until it is settled."));
    m_photo->setText(tr("Photo here…"));
    setTip(m_photo, tr("Add photos of this place. They can be dropped here, or pasted with Ctrl+Shift+V."));
    m_photo->setFocusPolicy(Qt::StrongFocus);
    m_message->setWordWrap(true);
    m_message->hide();
    m_photo->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 8, 6, 8);
    column->addWidget(m_title);
    column->addWidget(m_finding);
    column->addWidget(m_photo);
    column->addWidget(m_message);
    column->addWidget(m_list, 1);
    column->addStretch(0);
    connect(m_finding, &QLineEdit::returnPressed, this, &PlacePanel::openFinding);
    connect(m_photo, &QToolButton::clicked, this, &PlacePanel::addPhotoFile);
    connect(m_list, &QListWidget::itemActivated, this, &PlacePanel::activate);
}

void PlacePanel::setPlace(const QString& placeCode) {
    if (m_place != placeCode) {
        m_place = placeCode;
        refresh();
    }
}

bool PlacePanel::isHere(const std::string& place) const {
    return m_place.isEmpty() ? place.empty() : isSamePlace(place, m_place);
}

/// Findings and notes of this place: open ones first, then what was settled, then notes, the last of many.
void PlacePanel::listWords() {
    const Facts& facts = m_session.facts();
    const Look look = screenLook();
    std::vector<std::pair<const std::string*, const FindingFact*>> open, settled;
    for (const auto& [name, finding] : facts.findings) {
        if (isHere(finding.opened.what.place)) {
            (finding.settled ? settled : open).emplace_back(&name, &finding);
        }
    }
    std::vector<const Seen<NoteAdded>*> notes;
    for (const auto& note : facts.notes) {
        if (isHere(note.what.place)) {
            notes.push_back(&note);
        }
    }
    std::size_t leftOut = 0;
    for (auto* findings : {&open, &settled}) {
        leftOut += keepLast(*findings, [](const auto& one) { return one.second->opened.entry; });
        for (const auto& [name, finding] : *findings) {
            const bool isOpen = !finding->settled;
            auto* item =
                new QListWidgetItem(sign(isOpen ? CheckState::out : CheckState::good) +
                                        QStringLiteral(" %1: %2").arg(qtText(*name), qtText(finding->opened.what.text)),
                                    m_list);
            item->setForeground(isOpen ? look.out : look.quiet);
            item->setData(findingRole, qtText(*name));
            setTip(item, isOpen ? tr("Open. Enter goes there to settle it.")
                                : tr("Settled: %1").arg(qtText(finding->settled->what.done)));
        }
    }
    leftOut += keepLast(notes, [](const auto* note) { return note->entry; });
    for (const auto* note : notes) {
        new QListWidgetItem(tr("✎ %1").arg(qtText(note->what.text)), m_list);
    }
    if (leftOut > 0) {
        auto* item =
            new QListWidgetItem(tr("%n older ones are in the history.", "", static_cast<int>(leftOut)), m_list);
        item->setFlags(Qt::NoItemFlags);
    }
}

void PlacePanel::refresh() {
    m_title->setText(m_place.isEmpty() ? tr("The engine as a whole") : capitalised(placeName(m_place)));
    m_message->hide();
    m_list->clear();
    const Facts& facts = m_session.facts();
    listWords();
    for (const auto& seen : facts.attachments) {
        if (isHere(seen.what.place)) {
            auto* item =
                new QListWidgetItem(QIcon(m_thumbnails.of(seen.what)),
                                    qtText(seen.what.caption.empty() ? seen.what.fileName : seen.what.caption), m_list);
            item->setData(photoRole, qtText(seen.what.sha256));
            setTip(item, filled(tr("Entry %1, %2. Enter shows it large."), seen.entry, qtText(seen.person)));
        }
    }
    m_list->setVisible(m_list->count() > 0);
    m_finding->setEnabled(!m_session.isReadOnly());
    m_photo->setEnabled(!m_session.isReadOnly());
}

void PlacePanel::openFinding() {
    const std::string text = coreText(m_finding->text().trimmed());
    if (text.empty()) {
        return;
    }
    const auto stored = m_session.append(FindingOpened{nextFinding(m_session.facts()), coreText(m_place), text});
    if (stored) {
        m_finding->clear();
    }
    show(stored ? Result<void>() : Result<void>(tl::unexpected(stored.error())));
}

void PlacePanel::show(const Result<void>& added) {
    refresh();
    if (!added) {
        m_message->setText(QStringLiteral("✕ ") + qtText(added.error().sentence));
        QPalette palette = m_message->palette();
        palette.setColor(QPalette::WindowText, screenLook().out);
        m_message->setPalette(palette);
        m_message->show();
    }
}

void PlacePanel::addPhotoFile() {
    if (const QStringList paths = askForPhotos(this); !paths.isEmpty()) {
        show(addPhotoFiles(m_session, paths, coreText(m_place), {}));
    }
}

void PlacePanel::pastePhoto() {
    show(addPhotos(m_session, QApplication::clipboard()->mimeData(), coreText(m_place), {}));
}

void PlacePanel::activate() {
    const QListWidgetItem* item = m_list->currentItem();
    if (const QString finding = item->data(findingRole).toString(); !finding.isEmpty()) {
        m_session.goTo({Station::closing, coreText(finding)});
        return;
    }
    const std::string photo = coreText(item->data(photoRole).toString());
    for (const auto& seen : m_session.facts().attachments) {
        if (!photo.empty() && seen.what.sha256 == photo) {
            if (const auto shown = showPhoto(m_session, seen.what, this); !shown) {
                show(shown);
            }
            return;
        }
    }
}

void PlacePanel::focusFinding() {
    m_finding->setFocus();
}

QString PlacePanel::message() const {
    return m_message->isHidden() ? QString() : m_message->text();
}

void PlacePanel::dragEnterEvent(QDragEnterEvent* event) {
    if (holdsPhotos(event->mimeData()) && !m_session.isReadOnly()) {
        event->acceptProposedAction();
    }
}

void PlacePanel::dropEvent(QDropEvent* event) {
    show(addPhotos(m_session, event->mimeData(), coreText(m_place), {}));
    event->acceptProposedAction();
}

} // namespace caprail
