// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QDialog>
#include <session/record_session.h>
#include <shop/build_comparison.h>
#include <tables/table.h>
#include <text/label.h>

class QComboBox;

namespace caprail {

struct DifferenceLine;

/// Two builds of the record's engine side by side: what each measured, the difference, and whether it is one beyond the
/// uncertainty of both. The earlier build stays as it was; this only reads.
class BuildsDialog : public QDialog {
    Q_OBJECT
public:
    explicit BuildsDialog(RecordSession& session, QWidget* parent = nullptr);
    /// The comparison that is shown; none while the record has one build.
    [[nodiscard]] const Result<BuildComparison>& comparison() const { return m_comparison; }

signals:
    void sheetRequested(); ///< of the comparison, as PDF

private:
    void compare();
    RecordSession& m_session;
    QComboBox *m_then, *m_now;
    Label* m_words;
    Table<DifferenceLine, std::size_t>* m_tables;
    Result<BuildComparison> m_comparison;
};

} // namespace caprail
