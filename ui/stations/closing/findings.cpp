// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/closing/findings.h>

#include <QGridLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <session/filled.h>
#include <session/look.h>
#include <stations/common/findings.h>
#include <stations/common/keep_last.h>
#include <stations/common/station_text.h>

namespace caprail {

ClosingFindings::ClosingFindings(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_list(new QListWidget(this)), m_done(new QLineEdit(this)),
      m_settle(new QPushButton(tr("Sett&le"), this)), m_place(new QLineEdit(this)), m_text(new QLineEdit(this)) {
    m_list->setAccessibleName(tr("Findings and notes"));
    m_list->setWordWrap(true);
    m_list->setSpacing(2);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
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
    connect(m_list, &QListWidget::currentItemChanged, this, [this] {
        m_done->setEnabled(!selectedFinding().isEmpty());
        m_settle->setEnabled(!selectedFinding().isEmpty());
    });
    refresh();
}

QString ClosingFindings::selectedFinding() const {
    return m_list->currentItem() != nullptr ? m_list->currentItem()->data(Qt::UserRole).toString() : QString();
}

void ClosingFindings::addRow(const QString& name, const FindingFact& finding) {
    const FindingOpened& opened = finding.opened.what;
    QString text = sign(finding.settled ? CheckState::good : CheckState::out) + QStringLiteral(" ") + name;
    if (!opened.place.empty()) {
        text += tr(" at %1").arg(qtText(opened.place));
    }
    text += QStringLiteral(": ") + qtText(opened.text) +
            filled(tr("\n      opened by %1, entry %2"), qtText(finding.opened.person), finding.opened.entry);
    if (finding.settled) {
        text +=
            tr("\n      settled by %1: %2").arg(qtText(finding.settled->person), qtText(finding.settled->what.done));
    }
    auto* item = new QListWidgetItem(text, m_list);
    item->setData(Qt::UserRole, finding.settled ? QString() : name);
    const Look look = screenLook();
    item->setForeground(finding.settled ? look.quiet : look.out);
}

void ClosingFindings::refresh() {
    const QString selected = selectedFinding();
    m_list->clear();
    std::vector<std::pair<const std::string*, const FindingFact*>> open, settled;
    for (const auto& [name, finding] : m_session.facts().findings) {
        (finding.settled ? settled : open).emplace_back(&name, &finding);
    }
    std::size_t leftOut = 0;
    for (auto* findings : {&open, &settled}) {
        leftOut += keepLast(*findings, [](const auto& one) { return one.second->opened.entry; });
        for (const auto& [name, finding] : *findings) {
            addRow(qtText(*name), *finding);
        }
    }
    const auto& notes = m_session.facts().notes;
    const auto listed = static_cast<std::ptrdiff_t>(std::min(notes.size(), mostInList));
    leftOut += notes.size() - static_cast<std::size_t>(listed);
    for (auto note = notes.rbegin(); note != notes.rbegin() + listed; ++note) {
        const QString at = note->what.place.empty() ? QString() : tr(" at %1").arg(qtText(note->what.place));
        new QListWidgetItem(tr("✎ Note%1, %2: %3").arg(at, qtText(note->person), qtText(note->what.text)), m_list);
    }
    if (leftOut > 0) {
        auto* item =
            new QListWidgetItem(tr("%n older ones are in the history.", "", static_cast<int>(leftOut)), m_list);
        item->setFlags(Qt::NoItemFlags);
    }
    if (m_list->count() == 0) {
        auto* empty = new QListWidgetItem(tr("No finding and no note yet. A burr, an unknown\nstamping, a wrong "
                                             "marking: open a finding below."),
                                          m_list);
        empty->setFlags(Qt::NoItemFlags);
    }
    m_done->setEnabled(false);
    m_settle->setEnabled(false);
    for (int row = 0; row < m_list->count(); ++row) {
        if (!selected.isEmpty() && m_list->item(row)->data(Qt::UserRole) == selected) {
            m_list->setCurrentRow(row);
        }
    }
}

void ClosingFindings::selectFinding(const QString& name) {
    for (int row = 0; row < m_list->count(); ++row) {
        const QString here = m_list->item(row)->data(Qt::UserRole).toString();
        if (!here.isEmpty() && (name.isEmpty() || here == name)) {
            m_list->setCurrentRow(row);
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
    if (m_session.append(FindingSettled{coreText(selectedFinding()), coreText(m_done->text())})) {
        m_done->clear();
    }
}

} // namespace caprail
