// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/fasteners/groups.h>

#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <algorithm>
#include <fasteners/joint.h>
#include <fasteners/lubricant.h>
#include <planview/plan_view.h>
#include <session/look.h>
#include <stations/fasteners/words.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <work/tightening.h>
#include <work/torque_working.h>

namespace caprail {

/// A group, and what its fasteners are brought to; nothing while it specifies none.
struct GroupRow {
    FastenerGroupSet what;
    std::int64_t count = 0; ///< of the fasteners that it speaks for
    QString places, specified;
};

namespace {

std::vector<FormField> groupFields() {
    QStringList known;
    for (const Lubricant& lubricant : lubricants()) {
        known << qtText(lubricant.name);
    }
    QStringList materials;
    for (const ClampedMaterial& material : clampedMaterials()) {
        materials << qtText(material.name);
    }
    const QStringList grades{QStringLiteral("SAE J429 grade 5"),     QStringLiteral("SAE J429 grade 8"),
                             QStringLiteral("ISO 898-1 class 8.8"),  QStringLiteral("ISO 898-1 class 10.9"),
                             QStringLiteral("ISO 898-1 class 12.9"), QStringLiteral("170 ksi")};
    return {{"fastener_group", FastenersGroups::tr("Group"), {}, {}},
            {"ring", FastenersGroups::tr("Only the pair"), {}, {}},
            {"count", FastenersGroups::tr("Count"), {}, {}},
            {"piece", FastenersGroups::tr("What is there"), {}, {}},
            {"thread", FastenersGroups::tr("Thread"), FastenersGroups::tr("7/16-20, M10x1.5"), {}},
            {"grade", FastenersGroups::tr("Grade"), FastenersGroups::tr("or the proof stress: 170 ksi"), grades},
            {"lubricant", FastenersGroups::tr("Lubricant"), {}, known},
            {"method", FastenersGroups::tr("Method"), {}, {}},
            {"torque", FastenersGroups::tr("Torque"), {}, {}},
            {"angle", FastenersGroups::tr("Then angle"), {}, {}},
            {"stretch", FastenersGroups::tr("Stretch"), {}, {}},
            {"stretch_tolerance", FastenersGroups::tr("Stretch within ±"), FastenersGroups::tr("0.0003 in"), {}},
            {"steps", FastenersGroups::tr("Steps"), {}, {}},
            {"verified_by", FastenersGroups::tr("Verified by"), {}, {}},
            {"is_single_use", FastenersGroups::tr("Used once"), {}, {}},
            {"grip", FastenersGroups::tr("Grip"), FastenersGroups::tr("clamped length"), {}},
            {"shank", FastenersGroups::tr("Shank"), FastenersGroups::tr("diameter without thread"), {}},
            {"thread_in_grip", FastenersGroups::tr("Thread in grip"), {}, {}},
            {"clamped", FastenersGroups::tr("It clamps"), {}, materials},
            {"source", FastenersGroups::tr("Who says so"), {}, {}, true},
            {"tightening_order",
             FastenersGroups::tr("Sequence"),
             FastenersGroups::tr("empty: from the centre outwards"),
             {},
             true}};
}

std::vector<TableColumn<GroupRow>> groupColumns() {
    return {{.title = FastenersGroups::tr("Group"), .text = [](const GroupRow& row) { return groupName(row.what); }},
            {.title = FastenersGroups::tr("Count"),
             .text = [](const GroupRow& row) { return QString::number(row.count); },
             .value = [](const GroupRow& row) { return valueOf(row.count); },
             .isFigure = true},
            {.title = FastenersGroups::tr("Places"), .text = [](const GroupRow& row) { return row.places; }},
            {.title = FastenersGroups::tr("What is there"),
             .text = [](const GroupRow& row) { return qtShown(pieceOf(row.what)); }},
            {.title = FastenersGroups::tr("Thread"),
             .text = [](const GroupRow& row) { return qtText(row.what.thread); }},
            {.title = FastenersGroups::tr("Specified"), .text = [](const GroupRow& row) { return row.specified; }},
            {.title = FastenersGroups::tr("Who says so"),
             .text = [](const GroupRow& row) { return qtText(row.what.source); }}};
}

QString sequenceText(const Facts& facts, const FastenerGroupSet& group) {
    QStringList names;
    for (const FastenerId& f : tighteningOrder(facts, group.group)) {
        names << qtText(code(f));
    }
    return names.join(QLatin1Char(' '));
}

QLineEdit* smallField(const QString& name, QWidget* parent) {
    auto* edit = new QLineEdit(parent);
    edit->setAccessibleName(name);
    edit->setPlaceholderText(name);
    return edit;
}

} // namespace

FastenersGroups::FastenersGroups(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session),
      m_table(new Table<GroupRow, GroupKey>(
          tr("Fastener groups"), [](const GroupRow& row) { return keyOf(row.what); }, groupColumns(), this)),
      m_form(new FormFor<FastenerGroupSet>(session, tr("A group"), tr("Store gro&up"), groupFields(), 3, this)),
      m_parts(new FastenersGroupParts(session, this)), m_warning(new Label(this)), m_working(new QPlainTextEdit(this)),
      m_plan(new PlanView(this)), m_order(new QPushButton(tr("Set the sequence on the &diagram"), this)),
      m_wrenchLength(smallField(tr("Wrench length"), this)), m_offset(smallField(tr("Extension"), this)),
      m_angle(smallField(tr("Angle"), this)), m_setting(new Label(this)) {
    build();
    refresh();
}

void FastenersGroups::build() {
    m_form->setObjectName(QStringLiteral("groupForm"));
    m_plan->setObjectName(QStringLiteral("groupPlan"));
    m_order->setObjectName(QStringLiteral("setSequence"));
    m_working->setObjectName(QStringLiteral("working"));
    m_warning->setObjectName(QStringLiteral("groupWarning"));
    m_warning->setWordWrap(true);
    m_warning->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_working->setReadOnly(true);
    m_working->setTabChangesFocus(true);
    m_working->setAccessibleName(tr("Working of the preload"));
    m_working->setFrameShape(QFrame::NoFrame);
    m_order->setCheckable(true);
    m_order->setAutoDefault(false);
    setTip(m_order, tr("Touch the fasteners in the order of tightening (or walk with the arrow keys and press Enter). "
                       "Those left out come last, from the centre outwards."));
    m_plan->setMinimumHeight(160);
    m_setting->setWordWrap(true);
    m_setting->setTextInteractionFlags(Qt::TextSelectableByMouse);
    // Three fields stand in a row: a box is as wide as there is room, and its list as wide as its words.
    for (const auto* field : {"fastener_group", "ring", "piece", "grade", "lubricant", "method", "verified_by", "clamped"}) {
        if (QComboBox* box = m_form->choice(field)) {
            box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
            box->setMinimumContentsLength(6);
        }
    }
    auto* left = new QVBoxLayout;
    left->addWidget(m_table, 2);
    left->addWidget(m_plan, 3);
    auto* tools = new QHBoxLayout;
    tools->addWidget(m_parts, 1);
    tools->addWidget(m_order);
    left->addLayout(tools);
    left->addWidget(m_form);
    auto* heading = new Label(tr("What it comes to"), this);
    auto* extension = new Label(tr("Wrench with an extension (0° straight on, 90° square)"), this);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    extension->setFont(bold);
    extension->setWordWrap(true); // else a small window scrolls sideways for it
    auto* fields = new QHBoxLayout;
    fields->addWidget(m_wrenchLength);
    fields->addWidget(m_offset);
    fields->addWidget(m_angle);
    auto* right = new QVBoxLayout;
    right->addWidget(heading);
    right->addWidget(m_warning);
    right->addWidget(m_working, 1);
    right->addWidget(extension);
    right->addLayout(fields);
    right->addWidget(m_setting);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(12);
    row->addLayout(left, 5);
    row->addLayout(right, 4);

    connect(m_table, &TableView::lineSelected, this, [this](int line) {
        if (line >= 0) {
            showGroup();
        }
    });
    connect(m_table, &TableView::lineActivated, this, [this] { m_form->focusField("torque"); });
    connect(m_form, &EntryForm::reverted, this, &FastenersGroups::showGroup);
    connect(m_form, &EntryForm::edited, this, &FastenersGroups::showWorking);
    connect(m_order, &QPushButton::toggled, this, &FastenersGroups::beginOrder);
    connect(m_plan, &PlanView::placeActivated, m_parts, &FastenersGroupParts::touch);
    connect(m_plan, &PlanView::placeClicked, m_parts, &FastenersGroupParts::touch);
    connect(m_parts, &FastenersGroupParts::changed, this, [this] {
        if (m_parts->isSplitting()) {
            m_order->setChecked(false);
            m_plan->setFocus();
        }
        m_order->setVisible(!m_parts->isSplitting());
        showDiagram();
    });
    connect(m_parts, &FastenersGroupParts::refused, m_form, &EntryForm::showProblem);
    connect(m_parts, &FastenersGroupParts::stored, this, [this](const GroupKey& key) {
        m_form->putBack();
        refresh();
        const auto group = m_session.facts().groups.find(key);
        if (group != m_session.facts().groups.end()) {
            selectGroup(groupName(group->second.what));
        }
    });
    connect(m_plan, &PlanView::placeActivated, this, &FastenersGroups::putNext);
    connect(m_plan, &PlanView::placeClicked, this, &FastenersGroups::putNext);
    for (QLineEdit* edit : {m_wrenchLength, m_offset, m_angle}) {
        connect(edit, &QLineEdit::textEdited, this, &FastenersGroups::showWorking);
    }
}

void FastenersGroups::refresh() {
    std::vector<GroupRow> rows;
    for (const auto& [key, group] : m_session.facts().groups) {
        if (group.what.places && group.what.places->names.empty()) {
            continue; // dissolved
        }
        // What counts is what it speaks for now; before there is a layout, what was typed.
        const auto members = membersOf(m_session.facts(), key);
        const auto count = m_session.facts().layout ? static_cast<std::int64_t>(members.size()) : group.what.count;
        const auto specified = members.empty() ? Result<FastenerTightened>(refuse(""))
                                               : asSpecified(m_session.facts(), members.front(), {});
        rows.push_back({group.what, count, qtText(describePlaces(members)),
                        specified ? broughtTo(*specified, m_session.units()) : tr("not specified yet")});
    }
    m_table->put(std::move(rows));
    if (m_table->selectedLine() < 0 && !m_table->rows().empty()) {
        m_table->selectLine(0);
    }
    showGroup();
}

void FastenersGroups::selectGroup(const QString& name) {
    for (const GroupRow& row : m_table->rows()) {
        if (groupName(row.what) == name) {
            m_table->select(keyOf(row.what));
            break;
        }
    }
    m_form->focusField("torque");
}

void FastenersGroups::showGroup() {
    m_order->setChecked(false);
    if (const GroupRow* row = m_table->selected()) {
        // Where the layout or the list of places counts, what was typed for the count says nothing.
        FastenerGroupSet asItIs = row->what;
        if (row->count > 0 && (hasSides(asItIs.group) || asItIs.places)) {
            asItIs.count = row->count;
        }
        m_form->load(asItIs);
        m_parts->setGroup(keyOf(row->what));
    }
    showWorking();
}

void FastenersGroups::showWorking() {
    const Look look = screenLook();
    const auto group = m_form->read();
    QStringList notes;
    QStringList warnings;
    if (!group) {
        m_working->setPlainText(qtText(group.error().sentence));
    } else {
        const Facts& facts = m_session.facts();
        const GroupWorking working = workingOf(*group, facts.rules.torqueScatterPercent, m_session.units());
        for (const std::string& warning : working.warnings) {
            warnings << qtText(warning);
        }
        for (const std::string& line : working.lines) {
            notes << qtText(line);
        }
        for (const std::string& missing : working.missing) {
            notes << QStringLiteral("○ ") + qtText(missing);
        }
        notes << tr("Sequence: %1")
                     .arg(group->sequence.names.empty() ? sequenceText(facts, *group)
                                                        : fieldText(group->sequence, m_session.units()));
        notes << tr("The part maker's instructions come first.");
        m_working->setPlainText(notes.join(QLatin1Char('\n')));
    }
    m_warning->setText(warnings.isEmpty() ? QString() : QStringLiteral("⚑ ") + warnings.join(QStringLiteral("\n⚑ ")));
    m_warning->setVisible(!warnings.isEmpty());
    QPalette palette = m_warning->palette();
    palette.setColor(QPalette::WindowText, look.out);
    m_warning->setPalette(palette);
    showDiagram();
    const bool isAsked = !m_wrenchLength->text().isEmpty() && !m_offset->text().isEmpty();
    m_setting->setText(group && group->torque && isAsked
                           ? extensionText(group->torque->value, m_wrenchLength->text(), m_offset->text(),
                                           m_angle->text().isEmpty() ? QStringLiteral("0") : m_angle->text(),
                                           m_session.units())
                           : QString());
}

void FastenersGroups::showDiagram() {
    const auto group = m_form->read();
    if (!m_session.facts().layout) {
        m_plan->setEmpty(tr("Set the engine layout at the engine station: the fasteners follow from it."));
    } else if (!group) {
        m_plan->setEmpty(qtText(group.error().sentence));
    } else {
        PlanContent content = groupContent(m_session.facts(), *group, m_session.units());
        if (m_order->isChecked()) {
            // Only what was touched so far carries a number.
            std::erase_if(content.sequence, [&](const auto& entry) {
                return std::ranges::find(group->sequence.names, coreText(entry.first)) == group->sequence.names.end();
            });
        }
        if (m_parts->isSplitting()) {
            content.marks.clear();
            for (const QString& place : std::as_const(content.order)) {
                const auto& chosen = m_parts->chosen();
                const auto fastener = parseFastener(coreText(place));
                const bool isChosen = fastener && std::ranges::find(chosen, *fastener) != chosen.end();
                PlanMark mark;
                mark.place = place;
                mark.state = isChosen ? CheckState::good : CheckState::notDone;
                mark.spoken = isChosen ? tr("goes into the new group") : tr("stays");
                content.marks.push_back(std::move(mark));
            }
        }
        content.selected = m_plan->selected();
        m_plan->setContent(std::move(content));
    }
    m_order->setEnabled(m_session.facts().layout && group);
}

void FastenersGroups::beginOrder(bool isOn) {
    m_order->setText(isOn ? tr("The sequence is right") : tr("Set the sequence on the &diagram"));
    if (isOn) {
        m_form->type("tightening_order", {});
        m_plan->setFocus();
    }
    showWorking();
}

void FastenersGroups::putNext(const QString& place) {
    const auto group = m_form->read();
    if (!m_order->isChecked() || !group || place.isEmpty()) {
        return;
    }
    QStringList names;
    for (const std::string& name : group->sequence.names) {
        names << qtText(name);
    }
    // Touched again, all that came after it is taken back.
    const auto at = names.indexOf(place);
    names = at >= 0 ? names.mid(0, at + 1) : names << place;
    m_form->type("tightening_order", names.join(QLatin1Char(' ')));
    if (names.size() == static_cast<qsizetype>(tighteningOrder(m_session.facts(), group->group, {*group}).size())) {
        m_order->setChecked(false);
    }
    showWorking();
}

void FastenersGroups::focusField() {
    m_form->focusField("torque");
}

} // namespace caprail
