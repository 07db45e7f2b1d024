// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/engine/parts.h>

#include <QHBoxLayout>
#include <QPushButton>
#include <stations/common/photo_tools.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <work/parts.h>

namespace caprail {

namespace {

std::vector<FormField> partFields() {
    return {{"sort", EngineParts::tr("Part"), {}, {}},
            {"what", EngineParts::tr("Which one"), EngineParts::tr("where there are several: assembly oil"), {}},
            {"maker", EngineParts::tr("Maker"), {}, {}},
            {"part_number", EngineParts::tr("Number"), {}, {}},
            {"serial", EngineParts::tr("Serial"), {}, {}},
            {"lot", EngineParts::tr("Lot"), {}, {}},
            {"stamped", EngineParts::tr("Cast or stamped"), {}, {}},
            {"place", EngineParts::tr("Fitted at"), EngineParts::tr("3R, main-3, main-3R; empty: the engine"), {}},
            {"is_new", EngineParts::tr("New"), {}, {}},
            {"times_tightened", EngineParts::tr("Tightened before"), EngineParts::tr("times; used fasteners"), {}},
            {"machined", EngineParts::tr("Machined"), EngineParts::tr("honed, ground 0.010 under"), {}},
            {"machined_by", EngineParts::tr("By"), {}, {}},
            {"machined_on", EngineParts::tr("On"), EngineParts::tr("2026-05-04"), {}},
            {"note", EngineParts::tr("Note"), {}, {}}};
}

Table<Seen<PartEntered>, std::string>::Columns partColumns() {
    return {{.title = EngineParts::tr("Part"),
             .text =
                 [](const Seen<PartEntered>& part) {
                     const QString which = qtText(part.what.what);
                     return which.isEmpty() ? qtShown(part.what.sort) : qtShown(part.what.sort) + QStringLiteral(": ") + which;
                 },
             .value = [](const Seen<PartEntered>& part) { return valueOf(static_cast<std::int64_t>(part.what.sort)); }},
            {.title = EngineParts::tr("Maker"),
             .text = [](const Seen<PartEntered>& part) { return qtText(part.what.maker); }},
            {.title = EngineParts::tr("Number"),
             .text = [](const Seen<PartEntered>& part) { return qtText(part.what.number); }},
            {.title = EngineParts::tr("Serial"),
             .text = [](const Seen<PartEntered>& part) { return qtText(part.what.serial.value_or("")); }},
            {.title = EngineParts::tr("Lot"),
             .text = [](const Seen<PartEntered>& part) { return qtText(part.what.lot); }},
            {.title = EngineParts::tr("Cast or stamped"),
             .text = [](const Seen<PartEntered>& part) { return qtText(part.what.stamped.value_or("")); }},
            {.title = EngineParts::tr("At"),
             .text = [](const Seen<PartEntered>& part) { return qtText(part.what.place); }},
            {.title = EngineParts::tr("New"),
             .text =
                 [](const Seen<PartEntered>& part) {
                     return !part.what.isNew ? EngineParts::tr("not said")
                            : *part.what.isNew ? EngineParts::tr("new")
                                               : EngineParts::tr("used");
                 }},
            {.title = EngineParts::tr("Photo"), .text = [](const Seen<PartEntered>& part) {
                 return part.what.photo ? EngineParts::tr("yes") : QString();
             }}};
}

} // namespace

EngineParts::EngineParts(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_table(new Table<Seen<PartEntered>, std::string>(
          tr("Parts"), [](const Seen<PartEntered>& part) { return photoPlaceOf(part.what); }, partColumns(), this)),
      m_form(new FormFor<PartEntered>(session, {}, tr("Store par&t"), partFields(), 3, this)),
      m_photo(new QPushButton(tr("Photo of its number…"), this)) {
    m_table->setObjectName(QStringLiteral("parts"));
    m_form->setObjectName(QStringLiteral("partForm"));
    m_table->setEmptyText(tr("No part was entered yet. A lot or a serial number entered here is found in the shop's search."));
    auto* fresh = new QPushButton(tr("&New part"), this);
    for (QPushButton* button : {fresh, m_photo}) {
        button->setAutoDefault(false);
    }
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(fresh);
    buttons->addWidget(m_photo);
    buttons->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_table, 1);
    column->addLayout(buttons);
    column->addWidget(m_form);
    connect(m_table, &TableView::lineSelected, this, &EngineParts::showPart);
    connect(m_table, &TableView::lineActivated, this, [this] { m_form->focusField("maker"); });
    connect(m_form, &EntryForm::reverted, this, &EngineParts::showPart);
    connect(m_photo, &QPushButton::clicked, this, &EngineParts::addPhoto);
    connect(fresh, &QPushButton::clicked, this, [this] {
        m_table->selectLine(-1);
        m_form->putBack();
        m_form->load(PartEntered{});
        m_form->focusField("sort");
    });
    refresh();
}

void EngineParts::refresh() {
    m_table->put(m_session.facts().parts);
    if (!m_form->isTouched()) {
        showPart();
    }
}

void EngineParts::selectFirst() {
    if (m_table->selectedLine() < 0) {
        m_table->selectLine(0);
    }
    m_form->focusField("maker");
}

void EngineParts::showPart() {
    const Seen<PartEntered>* part = m_table->selected();
    m_form->load(part == nullptr ? PartEntered{} : part->what);
    m_photo->setEnabled(part != nullptr && !m_session.isReadOnly());
}

void EngineParts::addPhoto() {
    const Seen<PartEntered>* selected = m_table->selected();
    const QStringList paths = selected == nullptr ? QStringList() : askForPhotos(this);
    if (paths.isEmpty()) {
        return;
    }
    PartEntered part = selected->what;
    const auto added = addPhotoFiles(m_session, paths.mid(0, 1), photoPlaceOf(part), describe(part));
    if (!added) {
        m_form->showProblem(qtText(added.error().sentence));
        return;
    }
    part.photo = m_session.facts().attachments.back().what.sha256;
    m_session.appendAndSay(std::move(part));
}

} // namespace caprail
