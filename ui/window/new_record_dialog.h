// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <memory>
#include <session/record_session.h>
#include <records/shop_config.h>
#include <text/label.h>

class QCheckBox;
class QComboBox;
class QLineEdit;
class QPlainTextEdit;

namespace caprail {

/// Whose engine, who works on it, from which template, with the shop's people and instruments or without, and in which
/// file. The record is made when the dialog is
/// accepted; a refusal is shown in it and nothing typed is lost.
class NewRecordDialog : public QDialog {
    Q_OBJECT
public:
    explicit NewRecordDialog(const QString& shop, QWidget* parent = nullptr);
    /// The record that was made; null unless accepted. Hands it over.
    [[nodiscard]] std::unique_ptr<RecordSession> takeSession() { return std::move(m_session); }

private:
    void make();
    void proposeFile();
    [[nodiscard]] QByteArray beginning() const;
    QLineEdit *m_shop, *m_customer, *m_engine, *m_serial, *m_file;
    QComboBox *m_person, *m_template;
    QCheckBox* m_shelfToo;
    std::vector<OfferedTemplate> m_offered;
    Shelf m_shelf;
    Label* m_problem;
    bool m_isFileChosen = false;
    std::unique_ptr<RecordSession> m_session;
};

} // namespace caprail
