// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/place_panel.h>

#include <QApplication>
#include <QClipboard>
#include <QDateTime>
#include <QLineEdit>
#include <QMimeData>
#include <QShortcut>
#include <QToolButton>
#include <QVBoxLayout>
#include <session/filled.h>
#include <session/look.h>
#include <session/now.h>
#include <stations/common/findings.h>
#include <stations/common/keep_last.h>
#include <stations/common/place_name.h>
#include <stations/common/station_text.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <work/parts.h>
#include <work/zero_checks.h>

namespace caprail {

/// A finding, a note or a photo of the place, or how many older ones are not listed.
struct PlaceRow {
    std::int64_t entry = 0;   ///< that made it; 0 for what is not listed
    std::string finding = {}; ///< its name; empty for all else
    bool isOpen = false;      ///< the finding
    std::string text = {};    ///< of a finding or note
    std::string done = {};    ///< about a settled finding
    std::optional<Seen<AttachmentAdded>> photo = {};
    std::string part = {}; ///< what is fitted here
    std::size_t leftOut = 0;
};

namespace {

constexpr QSize thumbnailSize(64, 48);

QString placeText(const PlaceRow& row) {
    if (!row.part.empty()) {
        return QStringLiteral("⚙ ") + capitalised(qtText(row.part));
    }
    if (row.photo) {
        const AttachmentAdded& photo = row.photo->what;
        const QString text = qtText(photo.caption.empty() ? photo.fileName : photo.caption);
        return photo.taken ? text + QStringLiteral(" · ") + qtText(shown(*photo.taken)) : text;
    }
    if (row.leftOut > 0) {
        return PlacePanel::tr("%n older ones are in the history.", "", static_cast<int>(row.leftOut));
    }
    return row.finding.empty() ? PlacePanel::tr("✎ %1").arg(qtText(row.text))
                               : sign(row.isOpen ? CheckState::out : CheckState::good) +
                                     filled(QStringLiteral(" %1: %2"), qtText(row.finding), qtText(row.text));
}

QString placeTip(const PlaceRow& row) {
    if (row.photo) {
        return filled(PlacePanel::tr("Entry %1, %2. Enter shows it large."), row.entry, qtText(row.photo->person));
    }
    return row.finding.empty() ? QString()
           : row.isOpen        ? PlacePanel::tr("Open. Enter or a double click settles it here: say what was done.")
                               : PlacePanel::tr("Settled: %1").arg(qtText(row.done));
}

} // namespace

PlacePanel::PlacePanel(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_title(new Label(this)),
      m_list(new List<PlaceRow, std::int64_t>(
          tr("Findings, notes and photos here"), &PlaceRow::entry,
          {{.text = placeText,
            .ink = [](const PlaceRow& row,
                      const Look& look) { return row.finding.empty() ? QColor()
                                                 : row.isOpen        ? look.out
                                                                     : look.quiet; },
            .tip = placeTip,
            .icon =
                [this](const PlaceRow& row) { return row.photo ? QIcon(m_thumbnails.of(row.photo->what)) : QIcon(); }}},
          this)),
      m_finding(new QLineEdit(this)), m_photo(new QToolButton(this)), m_message(new Label(this)), m_untried(new Label(this)),
      m_thumbnails(session, thumbnailSize) {
    build();
    refresh();
}

void PlacePanel::build() {
    m_list->setObjectName(QStringLiteral("here"));
    m_finding->setObjectName(QStringLiteral("findingHere"));
    m_message->setObjectName(QStringLiteral("placeMessage"));
    QFont bold = font();
    bold.setBold(true);
    m_title->setFont(bold);
    m_title->setWordWrap(true);
    m_list->setKind([](const PlaceRow& row) { return row.leftOut > 0 ? RowKind::off : RowKind::usual; });
    m_list->setIconSize(thumbnailSize);
    m_list->setWordWrap(true);
    m_list->setFrameShape(QFrame::NoFrame);
    askAbout({});
    auto* leave = new QShortcut(Qt::Key_Escape, m_finding);
    leave->setContext(Qt::WidgetShortcut);
    connect(leave, &QShortcut::activated, this, [this] {
        m_finding->clear();
        askAbout({});
    });
    m_photo->setText(tr("Photo here…"));
    setTip(m_photo, tr("Add photos of this place. They can be dropped anywhere, on a place of the drawing too, or pasted with Ctrl+Shift+V."));
    m_photo->setFocusPolicy(Qt::StrongFocus);
    m_untried->setObjectName(QStringLiteral("untried"));
    m_untried->setWordWrap(true);
    m_untried->setForegroundRole(QPalette::PlaceholderText);
    m_message->setWordWrap(true);
    m_message->hide();
    m_photo->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 8, 6, 8);
    column->addWidget(m_title);
    column->addWidget(m_finding);
    column->addWidget(m_photo);
    column->addWidget(m_message);
    column->addWidget(m_untried);
    column->addWidget(m_list, 1);
    column->addStretch(0);
    connect(m_finding, &QLineEdit::returnPressed, this, &PlacePanel::openFinding);
    connect(m_photo, &QToolButton::clicked, this, &PlacePanel::addPhotoFile);
    connect(m_list, &ListView::lineActivated, this, &PlacePanel::activate);
}

void PlacePanel::setPlace(const QString& placeCode) {
    if (m_place != placeCode) {
        m_place = placeCode;
        askAbout({});
        refresh();
    }
}

bool PlacePanel::isHere(const std::string& place) const {
    return m_place.isEmpty() ? place.empty() : isSamePlace(place, m_place);
}

/// Open findings first, then what was settled, then notes, the last of many.
std::vector<PlaceRow> PlacePanel::words() const {
    const Facts& facts = m_session.facts();
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
    std::vector<PlaceRow> rows;
    std::size_t leftOut = 0;
    for (auto* findings : {&open, &settled}) {
        leftOut += keepLast(*findings, [](const auto& one) { return one.second->opened.entry; });
        for (const auto& [name, finding] : *findings) {
            rows.push_back({.entry = finding->opened.entry,
                            .finding = *name,
                            .isOpen = !finding->settled,
                            .text = finding->opened.what.text,
                            .done = finding->settled ? finding->settled->what.done : std::string()});
        }
    }
    leftOut += keepLast(notes, [](const auto* note) { return note->entry; });
    for (const auto* note : notes) {
        rows.push_back({.entry = note->entry, .text = note->what.text});
    }
    if (leftOut > 0) {
        rows.push_back({.leftOut = leftOut});
    }
    return rows;
}

void PlacePanel::refresh() {
    m_title->setText(m_place.isEmpty() ? tr("The engine as a whole") : capitalised(placeName(m_place)));
    m_message->hide();
    std::vector<PlaceRow> rows = words();
    for (const auto& seen : m_session.facts().attachments) {
        if (isHere(seen.what.place)) {
            rows.push_back({.entry = seen.entry, .photo = seen});
        }
    }
    for (const auto* part : partsAt(m_session.facts(), coreText(m_place))) {
        rows.push_back({.entry = part->entry, .part = describe(part->what)});
    }
    showUntried();
    m_list->setVisible(!rows.empty());
    m_list->put(std::move(rows));
    m_finding->setEnabled(!m_session.isReadOnly());
    m_photo->setEnabled(!m_session.isReadOnly());
}

/// A quiet line and no question: it is asked once a day by standing there until the instrument was tried.
void PlacePanel::showUntried() {
    const QDateTime midnight(QDateTime::fromMSecsSinceEpoch(now().milliseconds).date(), QTime(0, 0));
    QStringList names;
    for (const auto& name : untriedSince(m_session.ledger(), m_session.facts(), {midnight.toMSecsSinceEpoch()})) {
        names << qtText(name);
    }
    m_untried->setVisible(!names.isEmpty());
    m_untried->setText(tr("Not tried on its standard today: %1. Zero checks are entered at Engine, People and instruments.")
                           .arg(names.join(QStringLiteral(", "))));
}

void PlacePanel::openFinding() {
    const std::string text = coreText(m_finding->text().trimmed());
    if (text.empty()) {
        return;
    }
    const auto stored =
        m_session.append(m_settling.empty()
                             ? Body(FindingOpened{nextFinding(m_session.facts()), coreText(m_place), text})
                             : Body(FindingSettled{m_settling, text}));
    if (stored) {
        m_finding->clear();
        askAbout({});
    }
    show(stored ? Result<void>() : Result<void>(tl::unexpected(stored.error())));
}

/// What Enter in the field does: open a finding here, or settle the one that was chosen.
void PlacePanel::askAbout(const std::string& finding) {
    if (finding != m_settling) {
        m_finding->clear(); // what was done about one is neither a new finding nor what was done about another
    }
    m_settling = finding;
    m_finding->setPlaceholderText(finding.empty() ? tr("Finding here…") : tr("Done about %1…").arg(qtText(finding)));
    m_finding->setAccessibleName(finding.empty() ? tr("Finding here: what was seen")
                                                 : tr("What was done about finding %1").arg(qtText(finding)));
    setTip(m_finding, finding.empty()
                          ? tr("Ctrl+D. Something seen that needs a decision: Enter opens the finding; it holds the "
                               "closing gate until it is settled.")
                          : tr("Enter settles it with what is typed here. Esc leaves it open."));
}

void PlacePanel::show(const Result<void>& added) {
    refresh();
    if (!added) {
        m_message->setText(QStringLiteral("✕ ") + qtText(added.error().sentence));
        QPalette palette = m_message->palette();
        palette.setColor(QPalette::WindowText, screenLook().out);
        m_message->setPalette(palette);
        m_message->show();
        emit refused();
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

void PlacePanel::takePhotos(const QMimeData& dropped, const QString& place) {
    show(addPhotos(m_session, &dropped, coreText(place), {}));
}

void PlacePanel::activate(int line) {
    const PlaceRow* row = m_list->at(line);
    if (row == nullptr) {
        return;
    }
    if (row->isOpen) {
        askAbout(row->finding);
        m_finding->setFocus();
        return;
    }
    if (!row->finding.empty()) {
        m_session.goTo({Station::closing, row->finding});
        return;
    }
    if (row->photo) {
        const AttachmentAdded photo = row->photo->what; // a copy: the list may be another one when it is closed
        if (const auto opened = showPhoto(m_session, photo, this); !opened) {
            show(opened);
        }
    }
}

void PlacePanel::focusFinding() {
    askAbout({});
    m_finding->setFocus();
}

} // namespace caprail
