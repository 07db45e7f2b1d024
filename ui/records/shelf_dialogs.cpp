// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shelf_dialogs.h>

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <ledger/qt_text.h>
#include <records/shop_config.h>
#include <session/look.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

using Sort = ShelfLine::Sort;

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

ShelfLine headingOf(Sort sort, const QString& title) {
    return {.sort = sort, .name = {}, .shown = title, .what = {}};
}

ShelfLine lineOf(Sort sort, const std::string& name, const QString& what) {
    return {.sort = sort, .name = name, .shown = qtText(name), .what = what};
}

/// With boxes to tick where it is chosen what goes into a record.
ShelfTable* makeList(const QString& name, bool isChosenFrom, QWidget* parent) {
    TableColumn<ShelfLine> first{.title = ShelfDialog::tr("Name"),
                                 .text = [](const ShelfLine& line) { return line.shown; },
                                 .spoken =
                                     [](const ShelfLine& line) {
                                         return line.name.empty() ? line.shown
                                                                  : line.shown + QStringLiteral(", ") + line.what;
                                     }};
    if (isChosenFrom) {
        first.isTicked = [](const ShelfLine& line) { return line.isTicked; };
        first.tick = [](ShelfLine& line, bool isTicked) { line.isTicked = isTicked; };
    }
    auto* list = new ShelfTable(
        name, &ShelfLine::key,
        {first, {.title = ShelfDialog::tr("What it is"), .text = [](const ShelfLine& line) { return line.what; }}},
        parent);
    list->setKind([](const ShelfLine& line) {
        return line.name.empty() ? RowKind::heading : line.isInRecord ? RowKind::off : RowKind::usual;
    });
    list->setSortingEnabled(false); // by sort, under headings
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
    : QDialog(parent), m_session(session), m_list(makeList(tr("On the shelf and not in this record"), true, this)),
      m_problem(new Label) {
    setWindowTitle(tr("Add from the shop"));
    resize(640, 480);
    m_problem->setWordWrap(true);
    m_problem->setText(tr("Ticked ones are copied into this record, which is then complete by itself."));
    std::vector<ShelfLine> lines;
    std::size_t offered = 0;
    const auto offer = [&](ShelfLine line, std::vector<Body> entries, bool isTicked) {
        line.entries = std::move(entries);
        line.isTicked = isTicked;
        lines.push_back(std::move(line));
        ++offered;
    };
    lines.push_back(headingOf(Sort::person, tr("People")));
    for (Body& body : peopleToAdd(shelf, session.facts())) {
        const auto person = body.get<PersonAdded>();
        offer(lineOf(Sort::person, person.name, qtText(person.role)), {std::move(body)}, false);
    }
    lines.push_back(headingOf(Sort::instrument, tr("Instruments")));
    for (Body& body : instrumentsToAdd(shelf, session.facts())) {
        const auto instrument = body.get<InstrumentAdded>();
        const bool isNew = !session.facts().instruments.contains(instrument.instrument);
        offer(lineOf(Sort::instrument, instrument.instrument,
                     isNew ? describe(instrument)
                           : tr("%1; this record has another state of it").arg(describe(instrument))),
              {std::move(body)}, true);
    }
    lines.push_back(headingOf(Sort::kit, tr("Kits of shims")));
    for (const ShelfKit& kit : shelf.kits) {
        auto bodies = shimsToAdd(kit, session.facts());
        if (!bodies.empty()) {
            offer(lineOf(Sort::kit, kit.name, describe(kit)), std::move(bodies), false);
        }
    }
    m_list->put(std::move(lines));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    auto* accept = buttons->addButton(tr("&Copy into the record"), QDialogButtonBox::AcceptRole);
    accept->setEnabled(offered > 0 && !session.isReadOnly());
    if (offered == 0) {
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
    std::vector<ShelfLine> lines = m_list->rows();
    for (ShelfLine& line : lines) {
        if (!line.isTicked || line.isInRecord) {
            continue;
        }
        if (const auto added = m_session.appendAll(line.entries); !added) {
            complain(m_problem, line.shown + QStringLiteral(": ") + qtText(added.error().sentence));
            m_list->put(std::move(lines));
            return;
        }
        line.isInRecord = true; // a second try does not enter it twice
    }
    accept();
}

ShelfDialog::ShelfDialog(RecordSession* session, QWidget* parent)
    : QDialog(parent), m_session(session), m_list(makeList(tr("On the shelf"), false, this)), m_kitName(new QLineEdit),
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
    std::vector<ShelfLine> lines{headingOf(Sort::person, tr("People"))};
    for (const PersonAdded& person : shelf.people) {
        lines.push_back(lineOf(Sort::person, person.name, qtText(person.role)));
    }
    lines.push_back(headingOf(Sort::instrument, tr("Instruments")));
    for (const InstrumentAdded& instrument : shelf.instruments) {
        lines.push_back(lineOf(Sort::instrument, instrument.instrument, describe(instrument)));
    }
    lines.push_back(headingOf(Sort::kit, tr("Kits of shims")));
    for (const ShelfKit& kit : shelf.kits) {
        lines.push_back(lineOf(Sort::kit, kit.name, describe(kit)));
    }
    m_list->put(std::move(lines));
}

void ShelfDialog::keep() {
    keepFrom(m_shelf, m_session->facts(), m_kitName->text().trimmed().toStdString());
    store();
}

void ShelfDialog::removeCurrent() {
    const ShelfLine* line = m_list->selected();
    if (line == nullptr) {
        return;
    }
    switch (line->sort) {
    case Sort::person:
        m_shelf.removePerson(line->name);
        break;
    case Sort::instrument:
        m_shelf.removeInstrument(line->name);
        break;
    case Sort::kit:
        m_shelf.removeKit(line->name);
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
