// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <map>
#include <session/record_session.h>
#include <text/label.h>

class QPushButton;

namespace caprail {

/// The closing steps in their order, each with how it stands, who did it and when; what is out says why. After the
/// sign-off, the way to a new build.
class ClosingSteps : public QWidget {
    Q_OBJECT
public:
    explicit ClosingSteps(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    /// A step's line, for tests.
    [[nodiscard]] QString line(ClosingStep step) const { return m_rows.at(step).text->text(); }
    [[nodiscard]] QPushButton* buildButton() const { return m_build; }

private:
    struct Row {
        Label* sign;
        Label* text;
    };
    void beginBuild();
    void refreshRow(ClosingStep step, const Row& row);
    RecordSession& m_session;
    std::map<ClosingStep, Row> m_rows;
    Label* m_signed;
    QPushButton* m_build;
    Seal m_verifiedAt{}; ///< of the ledger whose signatures were verified last
    QString m_signature; ///< what is said of the last of them; empty: there is none
};

} // namespace caprail
