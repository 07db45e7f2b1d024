// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/new_record_dialog.h>

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>
#include <session/filled.h>
#include <session/look.h>
#include <shop/entry_text.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

QString recordsFolder() {
    const QString last = QSettings().value("records-folder").toString();
    for (const QString& folder : {last, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)}) {
        if (!folder.isEmpty() && QFileInfo(folder).isDir()) {
            return folder;
        }
    }
    return QDir::homePath();
}

/// What may stand in a file name on any system; one dash where several signs are left out.
QString fileNamePart(const QString& text) {
    QString part;
    for (const QChar c : text.trimmed()) {
        const bool isKept = c.isLetterOrNumber() || c == '_';
        if (isKept || !part.endsWith(QLatin1Char('-'))) {
            part += isKept ? c : QLatin1Char('-');
        }
    }
    part = part.left(60);
    while (part.endsWith(QLatin1Char('-'))) {
        part.chop(1);
    }
    return part;
}

} // namespace

NewRecordDialog::NewRecordDialog(const QString& shop, QWidget* parent)
    : QDialog(parent), m_shop(new QLineEdit(shop)), m_customer(new QLineEdit), m_engine(new QLineEdit),
      m_serial(new QLineEdit), m_file(new QLineEdit), m_person(new QComboBox), m_template(new QComboBox),
      m_shelfToo(new QCheckBox), m_offered(offeredTemplates()), m_problem(new Label) {
    QString shelfProblem;
    m_shelf = loadShelf(&shelfProblem);
    m_problem->setText(shelfProblem);
    setWindowTitle(tr("New record"));
    for (const OfferedTemplate& offered : m_offered) {
        m_template->addItem(offered.title);
    }
    m_person->setEditable(true);
    m_person->setInsertPolicy(QComboBox::NoInsert);
    for (const PersonAdded& person : m_shelf.people) {
        m_person->addItem(QString::fromStdString(person.name));
    }
    m_person->setCurrentText(QSettings().value("person").toString());
    const bool hasShelf = !m_shelf.people.empty() || !m_shelf.instruments.empty();
    m_shelfToo->setText(tr("With the shop's &people and instruments"));
    m_shelfToo->setChecked(hasShelf);
    m_shelfToo->setVisible(hasShelf);
    m_template->addItem(tr("Empty: everything by hand"));
    m_engine->setPlaceholderText(tr("for example 6.2 V8, block 4417"));
    m_problem->setWordWrap(true);
    m_problem->setMinimumWidth(440);
    auto* browse = new QPushButton(tr("Choose…"));
    browse->setAutoDefault(false); // Enter in any field makes the record
    auto* fileRow = new QHBoxLayout;
    fileRow->addWidget(m_file, 1);
    fileRow->addWidget(browse);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    auto* create = buttons->addButton(tr("Make the record"), QDialogButtonBox::AcceptRole);
    create->setDefault(true);

    auto* form = new QFormLayout(this);
    addRow(form, tr("&Engine"), m_engine);
    addRow(form, tr("&Customer"), m_customer);
    addRow(form, tr("&Serial or block number"), m_serial);
    addRow(form, tr("S&hop"), m_shop);
    addRow(form, tr("&Who works on it"), m_person);
    addRow(form, tr("Te&mplate"), m_template);
    form->addRow(QString(), m_shelfToo);
    // A row that is a layout knows no buddy by itself, and would show the ampersand.
    auto* fileLabel = new Label(tr("&File"));
    fileLabel->setBuddy(m_file);
    form->addRow(fileLabel, fileRow);
    form->addRow(m_problem);
    form->addRow(buttons);

    connect(m_customer, &QLineEdit::textEdited, this, &NewRecordDialog::proposeFile);
    connect(m_engine, &QLineEdit::textEdited, this, &NewRecordDialog::proposeFile);
    connect(m_file, &QLineEdit::textEdited, this, [this] { m_isFileChosen = true; });
    connect(browse, &QPushButton::clicked, this, [this] {
        const QString path =
            QFileDialog::getSaveFileName(this, tr("New record"), m_file->text(), tr("Build records (*.caprail)"));
        if (!path.isEmpty()) {
            m_isFileChosen = true;
            m_file->setText(path);
        }
    });
    connect(create, &QPushButton::clicked, this, &NewRecordDialog::make);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    proposeFile();
}

void NewRecordDialog::proposeFile() {
    if (m_isFileChosen) {
        return;
    }
    const QString name =
        joined({fileNamePart(m_customer->text()), fileNamePart(m_engine->text())}, QStringLiteral("-"));
    m_file->setText(QDir(recordsFolder()).filePath((name.isEmpty() ? QStringLiteral("engine") : name) + ".caprail"));
    m_file->end(false); // the name is what matters, not the beginning of the path
}

/// What the record begins with, one entry a line: the template with its note, and what is copied from the shelf.
QByteArray NewRecordDialog::beginning() const {
    std::string lines;
    const int chosen = m_template->currentIndex();
    if (chosen >= 0 && static_cast<std::size_t>(chosen) < m_offered.size()) {
        lines = toLines(m_offered[static_cast<std::size_t>(chosen)].engineTemplate);
    }
    if (m_shelfToo->isChecked()) {
        Facts begun;
        const std::string who = m_person->currentText().trimmed().toStdString();
        begun.people.emplace(who, PersonAdded{who, {}});
        lines += entryLines(peopleToAdd(m_shelf, begun)) + entryLines(instrumentsToAdd(m_shelf, begun));
    }
    return QByteArray::fromStdString(lines);
}

void NewRecordDialog::make() {
    QString path = m_file->text().trimmed();
    if (!path.endsWith(QLatin1String(".caprail"))) {
        path += QStringLiteral(".caprail");
    }
    const EngineDescribed engine{m_shop->text().trimmed().toStdString(),
                                 m_customer->text().trimmed().toStdString(),
                                 m_engine->text().trimmed().toStdString(),
                                 m_serial->text().trimmed().toStdString(),
                                 {}};
    auto session = RecordSession::create(path, m_person->currentText(), engine, beginning());
    if (!session) {
        QPalette palette = m_problem->palette();
        palette.setColor(QPalette::WindowText, screenLook().out);
        m_problem->setPalette(palette);
        m_problem->setText(QStringLiteral("✕ ") + QString::fromStdString(session.error().sentence));
        return;
    }
    m_session = std::move(*session);
    QSettings settings;
    settings.setValue("person", m_person->currentText().trimmed());
    settings.setValue("records-folder", QFileInfo(path).absolutePath());
    accept();
}

} // namespace caprail
