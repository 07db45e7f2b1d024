// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shelf_dialogs.h>

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <ledger/qt_text.h>
#include <session/look.h>
#include <records/shop_config.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

enum class Kind { person, instrument, kit };
constexpr int kindRole = Qt::UserRole;
constexpr int nameRole = Qt::UserRole + 1;

QString describe(const InstrumentAdded& instrument) {
    QStringList parts{qtShown(instrument.type)};
    if (!instrument.serial.empty()) {
        parts << ShelfDialog::tr("serial %1").arg(qtText(instrument.serial));
    }
    if (instrument.due) {
        parts << ShelfDialog::tr("calibration due %1").arg(qtText(format(*instrument.due)));
    } else if (instrument.calibrated) {
        parts << ShelfDialog::tr("calibrated %1").arg(qtText(format(*instrument.calibrated)));
    }
    return parts.join(QStringLiteral(", "));
}

QString describe(const ShelfKit& kit) {
    return ShelfDialog::tr("shims: %1").arg(kit.shims.size());
}

QTreeWidgetItem* group(QTreeWidget* list, const QString& title) {
    auto* item = new QTreeWidgetItem(list, {title});
    item->setFirstColumnSpanned(true);
    item->setSizeHint(0, {0, list->fontMetrics().height() + 9}); // the height of every line
    item->setFlags(Qt::ItemIsEnabled);
    QFont bold = list->font();
    bold.setBold(true);
    item->setFont(0, bold);
    item->setExpanded(true);
    return item;
}

QTreeWidgetItem* line(QTreeWidgetItem* parent, const std::string& name, const QString& what, Kind kind) {
    auto* item = new QTreeWidgetItem(parent, {qtText(name), what});
    item->setData(0, kindRole, static_cast<int>(kind));
    item->setData(0, nameRole, qtText(name));
    item->setData(0, Qt::AccessibleTextRole, qtText(name) + QStringLiteral(", ") + what);
    return item;
}

QTreeWidget* makeList(const QString& name) {
    auto* list = new QTreeWidget;
    list->setAccessibleName(name);
    list->setHeaderLabels({ShelfDialog::tr("Name"), ShelfDialog::tr("What it is")});
    list->setAlternatingRowColors(true);
    list->setUniformRowHeights(true);
    return list;
}

void complain(Label* label, const QString& sentence) {
    QPalette palette = label->palette();
    palette.setColor(QPalette::WindowText, screenLook().out);
    label->setPalette(palette);
    label->setText(QStringLiteral("✕ ") + sentence);
}

} // namespace

AddFromShelfDialog::AddFromShelfDialog(RecordSession& session, const Shelf& shelf, QWidget* parent)
    : QDialog(parent), m_session(session), m_list(makeList(tr("On the shelf and not in this record"))),
      m_problem(new Label) {
    setWindowTitle(tr("Add from the shop"));
    resize(640, 480);
    m_problem->setWordWrap(true);
    m_problem->setText(tr("Ticked ones are copied into this record, which then stands alone."));
    const auto addTick = [&](QTreeWidgetItem* parentItem, const std::string& name, const QString& what, Kind kind,
                             std::vector<Body> bodies, bool isTicked) {
        auto* item = line(parentItem, name, what, kind);
        item->setCheckState(0, isTicked ? Qt::Checked : Qt::Unchecked);
        item->setData(0, nameRole, static_cast<int>(m_bodies.size()));
        m_bodies.push_back(std::move(bodies));
    };
    auto* people = group(m_list, tr("People"));
    for (Body& body : peopleToAdd(shelf, session.facts())) {
        const auto person = std::get<PersonAdded>(body);
        addTick(people, person.name, qtText(person.role), Kind::person, {std::move(body)}, false);
    }
    auto* instruments = group(m_list, tr("Instruments"));
    for (Body& body : instrumentsToAdd(shelf, session.facts())) {
        const auto instrument = std::get<InstrumentAdded>(body);
        const bool isNew = !session.facts().instruments.contains(instrument.instrument);
        addTick(instruments, instrument.instrument,
                isNew ? describe(instrument) : tr("%1; this record has another state of it").arg(describe(instrument)),
                Kind::instrument, {std::move(body)}, true);
    }
    auto* kits = group(m_list, tr("Kits of shims"));
    for (const ShelfKit& kit : shelf.kits) {
        auto bodies = shimsToAdd(kit, session.facts());
        if (!bodies.empty()) {
            addTick(kits, kit.name, describe(kit), Kind::kit, std::move(bodies), false);
        }
    }
    m_list->resizeColumnToContents(0);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    auto* accept = buttons->addButton(tr("&Copy into the record"), QDialogButtonBox::AcceptRole);
    accept->setEnabled(!m_bodies.empty() && !session.isReadOnly());
    if (m_bodies.empty()) {
        m_problem->setText(tr("There is nothing on the shelf that this record does not have. Fill the shelf from a "
                              "record: Shop ▸ The shelf."));
    }
    connect(accept, &QPushButton::clicked, this, &AddFromShelfDialog::add);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_problem);
    column->addWidget(m_list, 1);
    column->addWidget(buttons);
}

void AddFromShelfDialog::add() {
    for (int g = 0; g < m_list->topLevelItemCount(); ++g) {
        QTreeWidgetItem* parentItem = m_list->topLevelItem(g);
        for (int i = 0; i < parentItem->childCount(); ++i) {
            QTreeWidgetItem* item = parentItem->child(i);
            if (item->checkState(0) != Qt::Checked || item->isDisabled()) {
                continue;
            }
            const auto at = static_cast<std::size_t>(item->data(0, nameRole).toInt());
            if (const auto added = m_session.appendAll(m_bodies[at]); !added) {
                complain(m_problem,
                         item->text(0) + QStringLiteral(": ") + QString::fromStdString(added.error().sentence));
                return;
            }
            item->setDisabled(true); // it is in the record now: a second try does not enter it twice
        }
    }
    accept();
}

ShelfDialog::ShelfDialog(RecordSession* session, QWidget* parent)
    : QDialog(parent), m_session(session), m_list(makeList(tr("On the shelf"))), m_kitName(new QLineEdit),
      m_problem(new Label) {
    setWindowTitle(tr("The shop's shelf"));
    resize(700, 520);
    m_problem->setWordWrap(true);
    m_problem->setText(tr("What the shop has for every engine. It is copied into a record when it is used there; a "
                          "change here changes no record."));
    QString problem;
    m_shelf = loadShelf(&problem);
    m_isUsable = problem.isEmpty();
    if (!m_isUsable) {
        complain(m_problem, problem);
    }
    m_kitName->setPlaceholderText(tr("name its shims' kit, or leave it empty"));
    m_kitName->setAccessibleName(tr("Name of the kit"));
    auto* keepButton = new QPushButton(tr("&Keep from this record"));
    setTip(keepButton, tr("Its people and instruments, and its shims under the name of a kit"));
    auto* removeButton = new QPushButton(tr("&Take off the shelf"));
    keepButton->setEnabled(m_session != nullptr && m_isUsable);
    removeButton->setEnabled(m_isUsable);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    auto* row = new QHBoxLayout;
    row->addWidget(keepButton);
    row->addWidget(m_kitName, 1);
    row->addWidget(removeButton);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_problem);
    column->addWidget(m_list, 1);
    column->addLayout(row);
    column->addWidget(buttons);
    connect(keepButton, &QPushButton::clicked, this, &ShelfDialog::keep);
    connect(removeButton, &QPushButton::clicked, this, &ShelfDialog::removeCurrent);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    list(m_shelf);
}

void ShelfDialog::list(const Shelf& shelf) {
    m_list->clear();
    auto* people = group(m_list, tr("People"));
    for (const PersonAdded& person : shelf.people) {
        line(people, person.name, qtText(person.role), Kind::person);
    }
    auto* instruments = group(m_list, tr("Instruments"));
    for (const InstrumentAdded& instrument : shelf.instruments) {
        line(instruments, instrument.instrument, describe(instrument), Kind::instrument);
    }
    auto* kits = group(m_list, tr("Kits of shims"));
    for (const ShelfKit& kit : shelf.kits) {
        line(kits, kit.name, describe(kit), Kind::kit);
    }
    m_list->resizeColumnToContents(0);
}

void ShelfDialog::keep() {
    keepFrom(m_shelf, m_session->facts(), m_kitName->text().trimmed().toStdString());
    store();
}

void ShelfDialog::removeCurrent() {
    const QTreeWidgetItem* item = m_list->currentItem();
    if (item == nullptr || !item->data(0, nameRole).isValid()) {
        return;
    }
    const std::string name = item->data(0, nameRole).toString().toStdString();
    switch (static_cast<Kind>(item->data(0, kindRole).toInt())) {
    case Kind::person:
        m_shelf.removePerson(name);
        break;
    case Kind::instrument:
        m_shelf.removeInstrument(name);
        break;
    case Kind::kit:
        m_shelf.removeKit(name);
        break;
    }
    store();
}

void ShelfDialog::store() {
    if (const auto written = writeShelf(shelfPath(), m_shelf); !written) {
        complain(m_problem, QString::fromStdString(written.error().sentence));
    }
    list(m_shelf);
}

} // namespace caprail
