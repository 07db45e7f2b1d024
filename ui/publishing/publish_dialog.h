// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <publishing/publish_settings.h>
#include <text/label.h>

class QComboBox;
class QDialogButtonBox;
class QFormLayout;
class QLineEdit;
class QPlainTextEdit;
class QProgressBar;
class QPushButton;

namespace caprail {

/// Publishing by hand: where to, what, how far it is and what came of each record. It may be closed meanwhile: what was
/// begun goes on.
class PublishDialog : public QDialog {
    Q_OBJECT
public:
    /// `record`: the file that is open here, `folder`: the one whose records are shown or were last; either may be
    /// empty.
    PublishDialog(const QString& record, const QString& folder, QWidget* parent = nullptr);
    /// Offers these, the record first; a folder that was chosen here stays among them.
    void offer(const QString& record, const QString& folder);
    /// Keeps the database that was typed; one that cannot be kept is told of, and given up only when it is left again.
    void reject() override;

private:
    QFormLayout* makeForm();
    QDialogButtonBox* makeButtons();
    void offerFolder(const QString& folder);
    void chooseFolder();
    void publish();
    bool keep();
    void refresh();
    void tell(const QString& sentence);
    QStringList m_chosen; ///< folders
    QString m_refused;    ///< the database that could not be kept when the dialog was to be closed
    QLineEdit* m_service;
    QComboBox *m_what, *m_schedule;
    Label* m_state;
    QProgressBar* m_progress;
    QPlainTextEdit* m_told;
    QPushButton *m_publish, *m_stop;
};

/// The choice of a schedule, with its words; for the preferences too.
QComboBox* scheduleChoice(PublishSchedule current);

/// Shows it for the window that asks, with what there is to publish from there now; one dialog a window.
void showPublishDialog(const QString& record, const QString& folder, QWidget* window);

} // namespace caprail
