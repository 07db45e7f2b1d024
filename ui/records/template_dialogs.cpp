// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/template_dialogs.h>

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>
#include <ledger/history_line.h>
#include <ledger/qt_text.h>
#include <session/look.h>
#include <shop/entry_text.h>
#include <records/shop_config.h>
#include <stations/all_stations.h>
#include <stations/engine/layout.h>
#include <stations/engine/people.h>
#include <stations/engine/station.h>
#include <store/file/path_text.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

Label* problemLabel() {
    auto* label = new Label;
    label->setWordWrap(true);
    QPalette palette = label->palette();
    palette.setColor(QPalette::WindowText, screenLook().out);
    label->setPalette(palette);
    return label;
}

} // namespace

TemplateEditor::TemplateEditor(const Ledger& ledger, QWidget* parent)
    : QDialog(parent), m_ledger(&ledger), m_name(new QLineEdit), m_sources(new QLineEdit), m_problem(problemLabel()) {
    setWindowTitle(tr("Save as a template"));
    const Facts facts = fold(ledger);
    if (const auto note = templateNoteOf(facts)) {
        m_name->setText(qtText(note->name));
        m_sources->setText(qtText(note->sources));
    } else if (facts.engine) {
        m_name->setText(qtText(facts.engine->what.engine));
    }
    auto* words = new Label(tr("The layout, bands, rules and fastener groups that are in force in this record now. A "
                               "template of the same name gets the next revision; records begun from it stay as they "
                               "are."));
    words->setWordWrap(true);
    words->setMinimumWidth(46 * fontMetrics().averageCharWidth());
    lay(words);
}

TemplateEditor::TemplateEditor(const EngineTemplate& engineTemplate, QWidget* parent)
    : QDialog(parent), m_name(new QLineEdit(qtText(engineTemplate.note.name))),
      m_sources(new QLineEdit(qtText(engineTemplate.note.sources))), m_problem(problemLabel()) {
    setWindowTitle(tr("Template"));
    auto scratch = RecordSession::create(m_folder.filePath(QStringLiteral("template.caprail")), tr("template"),
                                         {{}, {}, engineTemplate.note.name, {}, {}},
                                         QByteArray::fromStdString(entryLines(engineTemplate.entries)));
    if (!scratch) {
        m_problem->setText(QStringLiteral("✕ ") + qtText(scratch.error().sentence));
        lay(new Label);
        return;
    }
    m_scratch = std::move(*scratch);
    auto* tabs = new QTabWidget;
    for (const auto& [station, title] : {std::pair(Station::engine, tr("Layout, bands and rules")),
                                         std::pair(Station::fasteners, tr("Fastener groups"))}) {
        StationPanel* panel = makeStation(station, *m_scratch, tabs);
        panel->refresh();
        tabs->addTab(panel, title);
        if (const auto* engine = qobject_cast<EngineStation*>(panel)) {
            // Whose engine it is, people and instruments are a record's, not a template's.
            engine->layoutPage()->engineForm()->hide();
            engine->tabs()->setTabVisible(engine->tabs()->indexOf(engine->peoplePage()), false);
        }
    }
    connect(m_scratch.get(), &RecordSession::refused, this,
            [this](const QString& sentence) { m_problem->setText(QStringLiteral("✕ ") + sentence); });
    connect(m_scratch.get(), &RecordSession::changed, this, [this, tabs] {
        m_problem->clear();
        if (auto* panel = qobject_cast<StationPanel*>(tabs->currentWidget())) {
            panel->refresh();
        }
    });
    connect(tabs, &QTabWidget::currentChanged, this, [tabs] {
        if (auto* panel = qobject_cast<StationPanel*>(tabs->currentWidget())) {
            panel->refresh();
        }
    });
    m_stations = tabs;
    resize(1160, 760);
    lay(tabs);
}

TemplateEditor::~TemplateEditor() {
    delete m_stations; // its panels hold the session by reference: they go first
}

void TemplateEditor::lay(QWidget* middle) {
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_name->setMinimumWidth(m_name->fontMetrics().averageCharWidth() * 64); // a name and its sources in sight as a whole
    addRow(form, tr("&Name"), m_name);
    addRow(form, tr("&Sources"), m_sources);
    m_sources->setPlaceholderText(tr("who says so: a document, a person"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    auto* keepButton = buttons->addButton(tr("&Keep the template"), QDialogButtonBox::AcceptRole);
    keepButton->setEnabled(m_ledger != nullptr || m_scratch != nullptr);
    connect(keepButton, &QPushButton::clicked, this, &TemplateEditor::keep);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(middle, 1);
    column->addWidget(m_problem);
    column->addWidget(buttons);
}

void TemplateEditor::keep() {
    const TemplateNote note{m_name->text().trimmed().toStdString(), 1, m_sources->text().trimmed().toStdString()};
    auto made = templateFrom(m_ledger != nullptr ? *m_ledger : m_scratch->ledger(), note);
    const auto kept = made ? ownTemplates().keep(std::move(*made)) : tl::unexpected(made.error());
    if (!kept) {
        m_problem->setText(QStringLiteral("✕ ") + qtText(kept.error().sentence));
        return;
    }
    accept();
}

TemplatesDialog::TemplatesDialog(QWidget* parent)
    : QDialog(parent),
      m_list(new List<OfferedTemplate, std::pair<bool, std::string>>(
          tr("Templates"),
          [](const OfferedTemplate& offered) {
              return std::pair(offered.isOwn, offered.engineTemplate.note.name);
          },
          {{.text = [](const OfferedTemplate& offered) { return offered.title; },
            .tip = [](const OfferedTemplate& offered) { return offered.isOwn ? tr("The shop's own") : QString(); }}},
          this)),
      m_words(new QPlainTextEdit), m_problem(problemLabel()),
      m_edit(new QPushButton(tr("&Edit…"))), m_export(new QPushButton(tr("E&xport…"))),
      m_remove(new QPushButton(tr("&Remove"))) {
    setWindowTitle(tr("Templates"));
    resize(860, 560);
    m_words->setReadOnly(true);
    m_words->setTabChangesFocus(true);
    m_words->setAccessibleName(tr("What the template sets"));
    auto* importButton = new QPushButton(tr("&Import…"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    auto* row = new QHBoxLayout;
    for (QPushButton* button : {m_edit, importButton, m_export, m_remove}) {
        row->addWidget(button);
    }
    row->addStretch(1);
    row->addWidget(buttons);
    auto* middle = new QHBoxLayout;
    middle->addWidget(m_list, 2);
    middle->addWidget(m_words, 3);
    auto* column = new QVBoxLayout(this);
    column->addLayout(middle, 1);
    column->addWidget(m_problem);
    column->addLayout(row);
    connect(m_list, &ListView::lineSelected, this, &TemplatesDialog::choose);
    connect(m_list, &ListView::lineActivated, this, &TemplatesDialog::edit);
    connect(m_edit, &QPushButton::clicked, this, &TemplatesDialog::edit);
    connect(importButton, &QPushButton::clicked, this, &TemplatesDialog::importFile);
    connect(m_export, &QPushButton::clicked, this, &TemplatesDialog::exportFile);
    connect(m_remove, &QPushButton::clicked, this, &TemplatesDialog::remove);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    list();
}

void TemplatesDialog::list(const std::string& select) {
    m_list->put(offeredTemplates());
    if (!m_list->select({true, select}) && m_list->selectedLine() < 0) {
        m_list->selectLine(0);
    }
    std::vector<std::string> problems;
    (void)ownTemplates().all(&problems); // the list above has them; here only what could not be read is wanted
    m_problem->setText(problems.empty() ? QString() : QStringLiteral("✕ ") + qtText(problems.front()));
    choose();
}

void TemplatesDialog::choose() {
    const OfferedTemplate* offered = m_list->selected();
    const bool isAny = offered != nullptr;
    const bool isOwn = isAny && offered->isOwn;
    m_edit->setEnabled(isAny);
    m_edit->setText(isOwn || !isAny ? tr("&Edit…") : tr("&Edit a copy…"));
    m_export->setEnabled(isOwn);
    m_remove->setEnabled(isOwn);
    if (!isAny) {
        m_words->clear();
        return;
    }
    const EngineTemplate& t = offered->engineTemplate;
    QStringList lines{isOwn ? tr("The shop's own, revision %1.").arg(t.note.revision) : tr("Carried by the program.")};
    if (!t.note.sources.empty()) {
        lines << tr("Sources: %1").arg(qtText(t.note.sources));
    }
    lines << QString();
    for (const Body& body : t.entries) {
        lines << qtText(historyLine(body, {}));
    }
    m_words->setPlainText(lines.join(QLatin1Char('\n')));
}

void TemplatesDialog::edit() {
    const OfferedTemplate* offered = m_list->selected();
    if (offered == nullptr) {
        return;
    }
    const std::string name = offered->engineTemplate.note.name;
    TemplateEditor editor(offered->engineTemplate, this);
    if (editor.exec() == QDialog::Accepted) {
        list(name);
    }
}

void TemplatesDialog::complain(const Problem& problem) {
    m_problem->setText(QStringLiteral("✕ ") + qtText(problem.sentence));
}

void TemplatesDialog::importFile() {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Import a template"), {}, tr("Templates (*.jsonl);;All files (*)"));
    if (path.isEmpty()) {
        return;
    }
    const auto imported = ownTemplates().importFile(pathBytes(path));
    if (!imported) {
        complain(imported.error());
        return;
    }
    list(imported->note.name);
}

void TemplatesDialog::exportFile() {
    const OfferedTemplate* offered = m_list->selected();
    if (offered == nullptr) {
        return;
    }
    const std::string name = offered->engineTemplate.note.name;
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Export the template"), qtText(safeName(name, "template")) + QStringLiteral(".jsonl"),
        tr("Templates (*.jsonl)"));
    if (path.isEmpty()) {
        return;
    }
    if (const auto written = ownTemplates().exportFile(name, pathBytes(path)); !written) {
        complain(written.error());
    }
}

void TemplatesDialog::remove() {
    const OfferedTemplate* offered = m_list->selected();
    if (offered == nullptr) {
        return;
    }
    if (const auto removed = ownTemplates().remove(offered->engineTemplate.note.name); !removed) {
        complain(removed.error());
        return;
    }
    list();
}

} // namespace caprail
