// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <QTemporaryDir>
#include <memory>
#include <session/record_session.h>
#include <shop/templates.h>
#include <tables/table.h>
#include <text/label.h>

class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace caprail {

class StationPanel;
struct OfferedTemplate;

/// A template's name and sources, and, where it is edited, its layout, bands, rules and fastener groups at the engine
/// and fasteners stations of a record that is kept nowhere. Kept in the shop's own folder when accepted.
class TemplateEditor : public QDialog {
    Q_OBJECT
public:
    /// Of what is in force in a record: only name and sources are asked.
    explicit TemplateEditor(const Ledger& ledger, QWidget* parent = nullptr);
    /// Of an existing template, to be edited.
    explicit TemplateEditor(const EngineTemplate& engineTemplate, QWidget* parent = nullptr);
    ~TemplateEditor() override;

private:
    void lay(QWidget* middle);
    void keep();
    const Ledger* m_ledger = nullptr;
    QTemporaryDir m_folder;
    std::unique_ptr<RecordSession> m_scratch;
    QLineEdit *m_name, *m_sources;
    Label* m_problem;
    QWidget* m_stations = nullptr;
};

/// The templates at hand: the shop's own and those that the program carries; edited, shared as files, removed.
class TemplatesDialog : public QDialog {
    Q_OBJECT
public:
    explicit TemplatesDialog(QWidget* parent = nullptr);

private:
    /// `select`: the shop's own of this name.
    void list(const std::string& select = {});
    void choose();
    void edit();
    void importFile();
    void exportFile();
    void remove();
    void complain(const Problem& problem);
    List<OfferedTemplate, std::pair<bool, std::string>>* m_list; ///< by whether it is the shop's own, and its name
    QPlainTextEdit* m_words;
    Label* m_problem;
    QPushButton *m_edit, *m_export, *m_remove;
};

} // namespace caprail
