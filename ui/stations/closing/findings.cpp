// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/closing/findings.h>

#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>
#include <session/filled.h>
#include <session/look.h>
#include <stations/common/findings.h>
#include <stations/common/keep_last.h>
#include <stations/common/station_text.h>

namespace caprail {

/// A finding, a note, or how many older ones are not listed.
struct FindingRow {
    std::int64_t entry = 0;   ///< that made it; 0 for what is not listed
    std::string finding = {}; ///< its name; empty: a note
    std::optional<FindingFact> fact = {};
    std::optional<Seen<NoteAdded>> note = {};
    std::size_t leftOut = 0;
    [[nodiscard]] bool isOpen() const { return fact && !fact->settled; }
};

namespace {

QString findingText(const FindingRow& row) {
    const FindingOpened& opened = row.fact->opened.what;
    const QString name =
        sign(row.isOpen() ? CheckState::out : CheckState::good) + QStringLiteral(" ") + qtText(row.finding);
    QStringList lines{opened.place.empty() ? filled(ClosingFindings::tr("%1: %2"), name, qtText(opened.text))
                                           : filled(ClosingFindings::tr("%1 at %2: %3"), name, qtText(opened.place),
                                                    qtText(opened.text))};
    lines << filled(ClosingFindings::tr("opened by %1, entry %2"), qtText(row.fact->opened.person),
                    row.fact->opened.entry);
    if (const auto& settled = row.fact->settled) {
        lines << filled(ClosingFindings::tr("settled by %1: %2"), qtText(settled->person), qtText(settled->what.done));
    }
    return lines.join(QStringLiteral("\n      "));
}

QString rowText(const FindingRow& row) {
    if (row.fact) {
        return findingText(row);
    }
    if (row.note) {
        const NoteAdded& note = row.note->what;
        return note.place.empty()
                   ? filled(ClosingFindings::tr("✎ Note, %1: %2"), qtText(row.note->person), qtText(note.text))
                   : filled(ClosingFindings::tr("✎ Note at %1, %2: %3"), qtText(note.place), qtText(row.note->person),
                            qtText(note.text));
    }
    return ClosingFindings::tr("%n older ones are in the history.", "", static_cast<int>(row.leftOut));
}

} // namespace

ClosingFindings::ClosingFindings(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_list(new List<FindingRow, std::int64_t>(
          tr("Findings and notes"), &FindingRow::entry,
          {{.text = rowText,
            .ink =
                [](const FindingRow& row, const Look& look) {
                    return row.isOpen() ? look.out : row.fact ? look.quiet : QColor();
                }}},
          this)),
      m_done(new QLineEdit(this)), m_settle(new QPushButton(tr("Sett&le"), this)), m_place(new QLineEdit(this)),
      m_text(new QLineEdit(this)) {
    m_place->setObjectName(QStringLiteral("findingPlace"));
    m_text->setObjectName(QStringLiteral("findingText"));
    m_done->setObjectName(QStringLiteral("findingDone"));
    m_list->setObjectName(QStringLiteral("findings"));
    m_list->setKind([](const FindingRow& row) { return row.leftOut > 0 ? RowKind::off : RowKind::usual; });
    m_list->setEmptyText(tr("No finding and no note yet. A burr, an unknown\nstamping, a wrong "
                            "marking: open a finding below."));
    m_list->setWordWrap(true);
    m_list->setSpacing(2);
    m_done->setPlaceholderText(tr("What was done about the selected finding"));
    m_done->setAccessibleName(m_done->placeholderText());
    m_place->setPlaceholderText(tr("Place: 3R, main-3, …"));
    m_place->setAccessibleName(tr("Place of the finding or note"));
    m_text->setPlaceholderText(tr("What was seen"));
    m_text->setAccessibleName(m_text->placeholderText());
    auto* open = new QPushButton(tr("Open f&inding"), this);
    auto* note = new QPushButton(tr("Add &note"), this);
    auto* grid = new QGridLayout(this);
    grid->addWidget(m_list, 0, 0, 1, 3);
    grid->addWidget(m_done, 1, 0, 1, 2);
    grid->addWidget(m_settle, 1, 2);
    auto* line = new QFrame(this);
    line->setFrameShape(QFrame::HLine);
    grid->addWidget(line, 2, 0, 1, 3);
    grid->addWidget(m_place, 3, 0);
    grid->addWidget(m_text, 3, 1, 1, 2);
    grid->addWidget(open, 4, 1, Qt::AlignRight);
    grid->addWidget(note, 4, 2);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 2);
    m_place->setMinimumWidth(m_place->fontMetrics().horizontalAdvance(m_place->placeholderText()) + 20);
    connect(m_done, &QLineEdit::returnPressed, this, &ClosingFindings::settle);
    connect(m_settle, &QPushButton::clicked, this, &ClosingFindings::settle);
    connect(m_text, &QLineEdit::returnPressed, this, &ClosingFindings::openFinding);
    connect(open, &QPushButton::clicked, this, &ClosingFindings::openFinding);
    connect(note, &QPushButton::clicked, this, &ClosingFindings::addNote);
    connect(m_list, &ListView::lineSelected, this, &ClosingFindings::offer);
    refresh();
}

std::string ClosingFindings::selectedFinding() const {
    const FindingRow* row = m_list->selected();
    return row != nullptr && row->isOpen() ? row->finding : std::string();
}

/// Only an open finding can be settled.
void ClosingFindings::offer() {
    const bool isOpen = !selectedFinding().empty();
    m_done->setEnabled(isOpen);
    m_settle->setEnabled(isOpen);
}

void ClosingFindings::refresh() {
    std::vector<std::pair<const std::string*, const FindingFact*>> open, settled;
    for (const auto& [name, finding] : m_session.facts().findings) {
        (finding.settled ? settled : open).emplace_back(&name, &finding);
    }
    std::vector<FindingRow> rows;
    std::size_t leftOut = 0;
    for (auto* findings : {&open, &settled}) {
        leftOut += keepLast(*findings, [](const auto& one) { return one.second->opened.entry; });
        for (const auto& [name, finding] : *findings) {
            rows.push_back({.entry = finding->opened.entry, .finding = *name, .fact = *finding});
        }
    }
    const auto& notes = m_session.facts().notes;
    const auto listed = static_cast<std::ptrdiff_t>(std::min(notes.size(), mostInList));
    leftOut += notes.size() - static_cast<std::size_t>(listed);
    for (auto note = notes.rbegin(); note != notes.rbegin() + listed; ++note) {
        rows.push_back({.entry = note->entry, .note = *note});
    }
    if (leftOut > 0) {
        rows.push_back({.leftOut = leftOut});
    }
    m_list->put(std::move(rows));
    offer();
}

void ClosingFindings::selectFinding(const QString& name) {
    for (const FindingRow& row : m_list->rows()) {
        if (row.isOpen() && (name.isEmpty() || row.finding == coreText(name))) {
            m_list->select(row.entry);
            m_done->setFocus();
            return;
        }
    }
    m_place->setFocus();
}

void ClosingFindings::openFinding() {
    if (m_session.append(
            FindingOpened{nextFinding(m_session.facts()), coreText(m_place->text()), coreText(m_text->text())})) {
        m_place->clear();
        m_text->clear();
    }
}

void ClosingFindings::addNote() {
    if (m_session.append(NoteAdded{coreText(m_place->text()), coreText(m_text->text())})) {
        m_place->clear();
        m_text->clear();
    }
}

void ClosingFindings::settle() {
    if (m_session.append(FindingSettled{selectedFinding(), coreText(m_done->text())})) {
        m_done->clear();
    }
}

} // namespace caprail
