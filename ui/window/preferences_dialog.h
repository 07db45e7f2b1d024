// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <publishing/publish_settings.h>
#include <window/preferences.h>

class QComboBox;
class QLineEdit;
class QSpinBox;

namespace caprail {

/// Units, decimal mark, look, text size, language, shop name and logo, paper; and where records are published to and
/// when, which is kept by itself (PublishSettings).
class PreferencesDialog : public QDialog {
    Q_OBJECT
public:
    explicit PreferencesDialog(const Preferences& preferences, QWidget* parent = nullptr);
    [[nodiscard]] Preferences preferences() const;
    /// Keeps what was changed of publishing; stays, and says why, when it cannot be kept.
    void accept() override;

private:
    PublishSettings m_publishing; ///< as they were when it was opened
    QComboBox *m_length, *m_torque, *m_mark, *m_look, *m_textSize, *m_language, *m_confirmation, *m_paper;
    QComboBox* m_schedule;
    QLineEdit *m_shop, *m_logo, *m_database;
    QSpinBox *m_smallFrom, *m_smallTo, *m_bigNear;
};

} // namespace caprail
